#include "platform/device/device.h"
#include "platform/notifications/desktop_bells.h"

#include <QDir>
#include <QFileInfo>

namespace ebbline::device {

/// A desktop has a key store only for as long as a session runs a service for it, and then opens it to
/// every program of that session: the passphrase carries the diary alone here.
Device openDevice(const clock::Clock& clock, const QString& folder)
{
    QDir().mkpath(QFileInfo(folder).absolutePath());
    return {std::make_unique<notifications::DesktopBells>(clock, folder + QStringLiteral(".bells")),
            std::make_unique<keystore::NoKeeper>()};
}

std::unique_ptr<notifications::Bells> openNotices(const clock::Clock& clock)
{
    return std::make_unique<notifications::DesktopBells>(clock, QString());
}

}  // namespace ebbline::device
