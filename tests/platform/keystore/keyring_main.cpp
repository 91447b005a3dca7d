// Runs the cases on a session bus of their own. The library finds it as it finds a session's: by the environment.
#include "tests/platform/keystore/keyring_stage.h"
#include "tests/platform/notifications/private_bus.h"

#include <catch2/catch_session.hpp>

#include <QCoreApplication>

int main(int argc, char* argv[])
{
    using namespace ebbline;
    int count = 1;
    QCoreApplication application(count, argv);
    if (!crypto::initialise())
        return 1;
    Catch::Session session;
    if (const int wrong = session.applyCommandLine(argc, argv); wrong != 0)
        return wrong;
    // A build asks for the list of cases: that starts nothing.
    if (session.configData().listTests || session.configData().listTags || session.configData().listReporters)
        return session.run();
    const notifications::PrivateBus bus;
    qputenv("DBUS_SESSION_BUS_ADDRESS", bus.address().toUtf8());
    for (const char* name : {"XDG_CURRENT_DESKTOP", "DESKTOP_SESSION", "KDE_FULL_SESSION", "GNOME_DESKTOP_SESSION_ID", "SECRET_BACKEND"})
        qunsetenv(name);
    test::SecretService service(bus.connection(QStringLiteral("keyring")));
    test::KeyringStage stage{service, std::make_shared<keyring::KeyringThread>(), bus.connection(QStringLiteral("diary"))};
    test::keyringStage = &stage;
    return session.run();
}
