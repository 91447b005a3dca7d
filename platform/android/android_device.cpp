#include "platform/android/android_keeper.h"
#include "platform/android/android_ringer.h"
#include "platform/device/device.h"
#include "platform/notifications/ringer_bells.h"

#include <QDir>
#include <QFileInfo>

namespace ebbline::device {

/// The window is kept out of screenshots and recent programs by DiaryActivity, the files out of backups by
/// the package's rules; both hold before any of this runs.
Device openDevice(const clock::Clock&, const QString& folder)
{
    QDir().mkpath(QFileInfo(folder).absolutePath());
    return {std::make_unique<notifications::RingerBells>(android::makeRinger()), android::makeKeeper()};
}

}  // namespace ebbline::device
