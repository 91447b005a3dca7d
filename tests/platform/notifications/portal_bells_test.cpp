// Bells in a sandbox: they reach the desktop's portal, say nothing of health, and never claim more leave than is known.
#include "platform/notifications/portal_bells.h"
#include "tests/platform/notifications/portal_service.h"
#include "tests/platform/notifications/private_bus.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;
using aftercare::Leave;
using notifications::PortalBells;

namespace {

constexpr clock::Instant start{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}};

struct Desktop {
    explicit Desktop(bool withPortal = true) : portal(bus.connection(QStringLiteral("portal")))
    {
        if (withPortal)
            REQUIRE(portal.start());
    }
    ~Desktop()
    {
        QDBusConnection::disconnectFromBus(QStringLiteral("portal"));
        QDBusConnection::disconnectFromBus(QStringLiteral("program"));
    }
    std::unique_ptr<PortalBells> program()
    {
        auto bells = std::make_unique<PortalBells>(clock, folder.filePath(QStringLiteral("bells")), bus.connection(QStringLiteral("program")));
        bells->setWords({QStringLiteral("Diary"), QStringLiteral("Reminder"), QStringLiteral("Your diary has something for you."),
                         QStringLiteral("Open your diary, so that it can go on."), QStringLiteral("Open"), QStringLiteral("Later")});
        return bells;
    }
    /// The program, with her yes, once the portal answered.
    std::unique_ptr<PortalBells> ringing()
    {
        auto bells = program();
        bells->allow(true);
        REQUIRE(comesTo(*bells, Leave::granted));
        return bells;
    }
    static bool comesTo(const PortalBells& bells, Leave leave)
    {
        return QTest::qWaitFor([&] { return bells.leave() == leave; }, 5000);
    }
    bool heard(qsizetype count) { return QTest::qWaitFor([&] { return portal.shown().size() >= count; }, 5000) && portal.shown().size() == count; }

    QTemporaryDir folder;
    clock::ManualClock clock{start};
    notifications::PrivateBus bus;
    notifications::PortalService portal;
};

}  // namespace

TEST_CASE("a bell goes through the desktop's portal when its time has come, and not before", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.ringing();
    QSignalSpy rang(bells.get(), &PortalBells::rang);
    REQUIRE(bells->book({start + 1h, false}));
    desktop.clock.advance(59min);
    bells->look();
    QTest::qWait(100);
    CHECK(desktop.portal.shown().isEmpty());

    desktop.clock.advance(1min);
    bells->look();
    REQUIRE(desktop.heard(1));
    const auto& shown = desktop.portal.shown().first();
    CHECK(shown.what.value(QStringLiteral("title")).toString() == QLatin1String("Reminder"));
    CHECK(shown.what.value(QStringLiteral("body")).toString() == QLatin1String("Your diary has something for you."));
    CHECK(bells->pending()->empty());
    CHECK(QTest::qWaitFor([&] { return rang.size() == 1; }, 5000));
}

TEST_CASE("what came due while the program was closed rings through the portal once when it starts", "[bells]")
{
    Desktop desktop;
    {
        const auto bells = desktop.ringing();
        REQUIRE(bells->book({start + 1h, false}));
        REQUIRE(bells->book({start + 2h, true}));
    }
    desktop.clock.advance(3h);
    const auto bells = desktop.program();
    bells->allow(true);  // before the portal answered
    REQUIRE(desktop.heard(1));
    CHECK(desktop.portal.shown().first().what.value(QStringLiteral("body")).toString() == QLatin1String("Open your diary, so that it can go on."));
    CHECK(bells->pending()->empty());
}

TEST_CASE("without a portal a sandbox has no bell, and notices when it gets one", "[bells]")
{
    Desktop desktop(false);
    const auto bells = desktop.program();
    bells->allow(true);
    REQUIRE(bells->book({start - 1h, false}));
    QTest::qWait(200);
    CHECK(bells->leave() == Leave::noBell);
    CHECK(bells->pending()->size() == 1);

    QSignalSpy changes(bells.get(), &PortalBells::leaveChanged);
    REQUIRE(desktop.portal.start());
    CHECK(Desktop::comesTo(*bells, Leave::granted));
    CHECK_FALSE(changes.isEmpty());
    CHECK(desktop.heard(1));  // what waited rings

    desktop.portal.stop();
    CHECK(Desktop::comesTo(*bells, Leave::noBell));
}

TEST_CASE("her word to the diary counts first", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.program();
    REQUIRE(Desktop::comesTo(*bells, Leave::notAsked));
    bells->allow(false);
    CHECK(bells->leave() == Leave::denied);
    REQUIRE(bells->book({start - 1h, false}));
    bells->look();
    QTest::qWait(100);
    CHECK(desktop.portal.shown().isEmpty());
}

TEST_CASE("a portal that refuses is told as a refusal, and a yes that is said again tries anew", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.ringing();
    QSignalSpy failed(bells.get(), &PortalBells::failed);
    QSignalSpy rang(bells.get(), &PortalBells::rang);
    desktop.portal.refusal = QStringLiteral("org.freedesktop.portal.Error.NotAllowed");
    bells->ringNow();
    REQUIRE(failed.wait());
    CHECK(bells->leave() == Leave::denied);

    desktop.portal.refusal.clear();
    bells->allow(true);
    CHECK(bells->leave() == Leave::granted);
    bells->ringNow();
    REQUIRE(rang.wait());
    CHECK(failed.size() == 1);
}

TEST_CASE("a portal that fails for another reason takes no leave away", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.ringing();
    QSignalSpy failed(bells.get(), &PortalBells::failed);
    desktop.portal.refusal = QStringLiteral("org.freedesktop.DBus.Error.Failed");
    bells->ringNow();
    REQUIRE(failed.wait());
    CHECK(bells->leave() == Leave::granted);
}

TEST_CASE("the acts of a bell come back through the portal, and a second bell takes the place of the first", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.ringing();
    QSignalSpy opened(bells.get(), &PortalBells::openAsked);
    QSignalSpy later(bells.get(), &PortalBells::laterAsked);
    bells->ringNow();
    REQUIRE(desktop.heard(1));
    bells->ringNow();
    REQUIRE(desktop.heard(2));
    const auto& shown = desktop.portal.shown();
    CHECK(shown.first().id == shown.last().id);
    REQUIRE(shown.last().buttons.size() == 1);
    const QVariantMap button = shown.last().buttons.first();
    CHECK(button.value(QStringLiteral("label")).toString() == QLatin1String("Later"));

    desktop.portal.touch(button.value(QStringLiteral("action")).toString());
    REQUIRE(later.wait());
    desktop.portal.touchOther();
    desktop.portal.touch(shown.last().what.value(QStringLiteral("default-action")).toString());
    REQUIRE(opened.wait());
    CHECK(opened.size() == 1);
    CHECK(later.size() == 1);
}

TEST_CASE("a bell in the portal offers only the acts that have a word", "[bells]")
{
    Desktop desktop;
    const auto bells = desktop.ringing();
    bells->setWords({QStringLiteral("Diary"), QStringLiteral("Reminder"), QStringLiteral("There is something."), {}, {}, {}});
    bells->ringNow();
    REQUIRE(desktop.heard(1));
    CHECK_FALSE(desktop.portal.shown().first().what.contains(QStringLiteral("default-action")));
    CHECK(desktop.portal.shown().first().buttons.isEmpty());
}
