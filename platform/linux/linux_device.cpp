#include "platform/device/device.h"
#include "platform/linux/secret_service_keeper.h"
#include "platform/notifications/desktop_bells.h"
#include "platform/notifications/portal_bells.h"

#include <QDir>
#include <QFileInfo>

namespace ebbline::device {

/// A file that every Flatpak finds at its root, and nobody else (flatpak-run(1)).
Device openDevice(const clock::Clock& clock, const QString& folder)
{
    QDir().mkpath(QFileInfo(folder).absolutePath());
    const bool sandboxed = QFileInfo::exists(QStringLiteral("/.flatpak-info"));
    const QString moments = folder + QStringLiteral(".bells");
    Device device;
    if (sandboxed)
        device.bells = std::make_unique<notifications::PortalBells>(clock, moments);
    else
        device.bells = std::make_unique<notifications::DesktopBells>(clock, moments);
    device.secrets = std::make_unique<keyring::SecretServiceKeeper>(std::make_shared<keyring::KeyringThread>(), keyring::entryFor(folder),
                                                                    sandboxed ? keyring::Where::sandbox : keyring::Where::session);
    return device;
}

}  // namespace ebbline::device
