#pragma once
/// \file
/// What this kind of device gives to the diary. Which kind it is was decided when the program was built:
/// platform/linux, platform/android or platform/ios holds the one definition of openDevice().

#include "platform/keystore/secret_keeper.h"
#include "platform/notifications/bells.h"

#include <QString>

#include <memory>

namespace ebbline::device {

struct Device {
    std::unique_ptr<notifications::Bells> bells;       ///< null: this device has none
    std::unique_ptr<keystore::SecretKeeper> secrets;   ///< never null
};

/// Call once, after the QApplication was made and before anything is shown: what a phone needs so that
/// pages do not show among its recent programs, and the diary's files stay out of backups, happens here.
/// \param folder  of the diary; the folder around it exists afterwards, or cannot be made
Device openDevice(const clock::Clock& clock, const QString& folder);

}  // namespace ebbline::device
