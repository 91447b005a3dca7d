// Bells on a desktop: they reach the service of the session, say nothing of health, and what came due
// while the program was closed rings once.
#include "platform/notifications/desktop_bells.h"
#include "tests/platform/notifications/private_bus.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;
using aftercare::Booking;
using aftercare::Leave;
using notifications::DesktopBells;

namespace {

constexpr clock::Instant start{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}};

notifications::BellWords words()
{
    return {QStringLiteral("Diary"), QStringLiteral("Reminder"), QStringLiteral("Your diary has something for you."),
            QStringLiteral("Open your diary, so that it can go on."), QStringLiteral("Open"), QStringLiteral("Later")};
}

struct World {
    World() : service(bus.connection(QStringLiteral("service")))
    {
        REQUIRE(service.start());
    }
    ~World()
    {
        QDBusConnection::disconnectFromBus(QStringLiteral("service"));
        QDBusConnection::disconnectFromBus(QStringLiteral("program"));
    }
    std::unique_ptr<DesktopBells> program()
    {
        auto bells = std::make_unique<DesktopBells>(clock, folder.filePath(QStringLiteral("bells")),
                                                    bus.connection(QStringLiteral("program")));
        bells->setWords(words());
        return bells;
    }
    bool heard(qsizetype count) { return QTest::qWaitFor([&] { return service.shown().size() >= count; }, 5000) && service.shown().size() == count; }

    QTemporaryDir folder;
    clock::ManualClock clock{start};
    notifications::PrivateBus bus;
    notifications::NotificationService service;
};

}  // namespace

TEST_CASE("a bell rings when its time has come, and not before", "[bells]")
{
    World world;
    const auto bells = world.program();
    bells->allow(true);
    REQUIRE(bells->leave() == Leave::granted);
    REQUIRE(bells->book({start + 1h, false}));

    world.clock.advance(59min);
    bells->look();
    QTest::qWait(100);
    CHECK(world.service.shown().isEmpty());

    world.clock.advance(1min);
    bells->look();
    REQUIRE(world.heard(1));
    const auto& shown = world.service.shown().first();
    CHECK(shown.title == QLatin1String("Reminder"));
    CHECK(shown.text == QLatin1String("Your diary has something for you."));
    CHECK(bells->pending()->empty());
}

TEST_CASE("a bell rings by itself, without being asked to look", "[bells]")
{
    World world;
    const clock::SystemClock now;
    DesktopBells bells(now, {}, world.bus.connection(QStringLiteral("program")));
    bells.setWords(words());
    bells.allow(true);
    REQUIRE(bells.book({now.now() + 300ms, false}));
    CHECK(world.heard(1));
}

TEST_CASE("what came due while the program was closed rings once when it starts", "[bells]")
{
    World world;
    {
        const auto bells = world.program();
        bells->allow(true);
        for (const auto wait : {1h, 2h, 30h})
            REQUIRE(bells->book({start + wait, false}));
    }
    world.clock.advance(3h);
    const auto bells = world.program();
    bells->allow(true);

    REQUIRE(world.heard(1));
    CHECK(bells->pending() == std::vector<Booking>{{start + 30h, false}});
}

TEST_CASE("without leave nothing rings, and the moments are not lost", "[bells]")
{
    World world;
    const auto bells = world.program();
    CHECK(bells->leave() == Leave::notAsked);
    bells->allow(false);
    CHECK(bells->leave() == Leave::denied);
    REQUIRE(bells->book({start + 1h, false}));
    world.clock.advance(2h);
    bells->look();
    QTest::qWait(100);
    CHECK(world.service.shown().isEmpty());
    CHECK(bells->pending()->size() == 1);

    bells->allow(true);
    CHECK(world.heard(1));
}

TEST_CASE("a desktop without the service says that it has no bell, and notices when it gets one", "[bells]")
{
    World world;
    const auto bells = world.program();
    bells->allow(true);
    world.service.stop();
    QSignalSpy changes(bells.get(), &DesktopBells::leaveChanged);
    CHECK(bells->leave() == Leave::noBell);
    REQUIRE(world.service.start());
    CHECK(QTest::qWaitFor([&] { return !changes.isEmpty(); }, 5000));
    CHECK(bells->leave() == Leave::granted);
}

TEST_CASE("the acts of a bell reach the program, and a second bell takes the place of the first", "[bells]")
{
    World world;
    const auto bells = world.program();
    bells->allow(true);
    QSignalSpy opened(bells.get(), &DesktopBells::openAsked);
    QSignalSpy later(bells.get(), &DesktopBells::laterAsked);
    QSignalSpy rang(bells.get(), &DesktopBells::rang);
    bells->ringNow();
    REQUIRE(rang.wait());
    bells->ringNow();
    REQUIRE(rang.wait());
    CHECK(world.service.shown().last().replaces == world.service.shown().first().id);
    CHECK(world.service.shown().first().acts.contains(QLatin1String("Later")));

    world.service.touch(QStringLiteral("later"));
    REQUIRE(later.wait());
    bells->ringNow();
    REQUIRE(rang.wait());
    CHECK(world.service.shown().last().replaces == 0);
    world.service.touch(QStringLiteral("default"));
    CHECK(opened.wait());
    CHECK(opened.size() == 1);
    CHECK(later.size() == 1);
}

TEST_CASE("a bell offers only the acts that have a word", "[bells]")
{
    World world;
    const auto bells = world.program();
    auto notice = words();
    notice.later.clear();
    bells->setWords(notice);
    bells->ringNow();
    REQUIRE(world.heard(1));
    CHECK(world.service.shown().first().acts.contains(QLatin1String("Open")));
    CHECK(world.service.shown().first().acts.size() == 2);
}

TEST_CASE("the last bell that could be booked asks to open the diary", "[bells]")
{
    World world;
    const auto bells = world.program();
    bells->allow(true);
    REQUIRE(bells->book({start + 1h, true}));
    world.clock.advance(1h);
    bells->look();
    REQUIRE(world.heard(1));
    CHECK(world.service.shown().first().text == QLatin1String("Open your diary, so that it can go on."));
}

TEST_CASE("a file of moments that is not one is left aside", "[bells]")
{
    World world;
    QFile file(world.folder.filePath(QStringLiteral("bells")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("never a moment");
    file.close();
    CHECK(world.program()->pending()->empty());
}
