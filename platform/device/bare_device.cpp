#include "platform/device/device.h"

#include <QDir>
#include <QFileInfo>

namespace ebbline::device {

/// A device of no known kind: no bells and no key store, and the program says so.
Device openDevice(const clock::Clock&, const QString& folder)
{
    QDir().mkpath(QFileInfo(folder).absolutePath());
    return {nullptr, std::make_unique<keystore::NoKeeper>()};
}

}  // namespace ebbline::device
