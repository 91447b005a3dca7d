// How a program keeps in touch with its hub while it is open: at once when something comes, honest when nothing can, and
// silent when it is closed.

#include "app/pulse/hub_pulse.h"
#include "tests/core/sync/holding_courier.h"

#include <catch2/catch_test_macros.hpp>

#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Phone {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& diary = world.join(course);
    test::HoldingCourier hub{world};
    bool isOpen = true;
    pulse::HubPulse pulse{{[this]() -> sync::Courier* { return isOpen ? &hub : nullptr; },
                           [this]() -> vault::Vault& { return diary.vault(); },
                           [this](sync::Courier& way, std::function<void(const sync::Report&)> done) { diary.syncNow(way, std::move(done)); }}};
    std::vector<sync::Report> runs;

    Phone()
    {
        for (int i = 0; i < 2; ++i) {
            world.syncDesk();
            world.syncPhone(diary);
        }
        QObject::connect(&pulse, &pulse::HubPulse::ended, [this](const sync::Report& report) { runs.push_back(report); });
    }
    void open(std::chrono::milliseconds interval = 1h)
    {
        pulse.setInterval(interval);
        pulse.begin();
        REQUIRE(QTest::qWaitFor([this] { return hub.isHolding(); }, 5000));
        runs.clear();
    }
    void write()
    {
        REQUIRE(world.desk.writeMessage(course, "How is it?"));
        world.syncDesk();
    }
    void answer429(std::int64_t seconds)
    {
        world.courier.tamper = [seconds](const mailbox::Request&, mailbox::Response& response) {
            response = {429, {}, seconds, response.hubTime};
        };
    }
};

}  // namespace

TEST_CASE("what comes is fetched at once, and the waiting goes on", "[pulse]")
{
    Phone it;
    it.open();
    for (int i = 0; i < 3; ++i) {
        it.write();
        it.hub.look();
        REQUIRE(QTest::qWaitFor([&] { return !it.runs.empty(); }, 5000));
        CHECK(it.runs[0].envelopesReceived == 1);
        REQUIRE(QTest::qWaitFor([&] { return it.hub.isHolding(); }, 5000));
        it.runs.clear();
    }
}

TEST_CASE("closing ends all of it: nobody is called, no timer runs, and nothing is asked", "[pulse]")
{
    Phone it;
    it.open();
    it.pulse.end();
    CHECK_FALSE(it.pulse.isWaiting());
    CHECK(it.pulse.untilNext() < 0ms);
    const auto asked = it.hub.asked.size();
    it.write();
    it.hub.look();
    QTest::qWait(100);
    CHECK(it.runs.empty());
    CHECK(it.hub.asked.size() == asked);
    // Opened again it looks, finds what came, and waits.
    it.pulse.begin();
    REQUIRE(QTest::qWaitFor([&] { return !it.runs.empty() && it.hub.isHolding(); }, 5000));
    CHECK(it.runs[0].envelopesReceived == 1);
}

TEST_CASE("with no network it draws back, says so in each run, and a person's wish or a network that is back asks at once", "[pulse]")
{
    Phone it;
    it.open();
    it.world.courier.offline = true;
    it.hub.breakOff();
    CHECK_FALSE(it.pulse.isWaiting());
    REQUIRE(QTest::qWaitFor([&] { return !it.runs.empty(); }, 5000));
    REQUIRE(it.runs[0].problem);
    CHECK(it.runs[0].problem->reason == Reason::unreachable);
    CHECK_FALSE(it.pulse.isWaiting());
    CHECK(it.pulse.untilNext() >= 0ms);
    // Something that was written is tried at once, whatever failed before.
    it.runs.clear();
    it.pulse.nudge();
    REQUIRE(it.runs.size() == 1);
    CHECK(it.runs[0].problem);
    CHECK(it.pulse.runNow());
    CHECK(it.runs.size() == 2);

    it.world.courier.offline = false;
    it.runs.clear();
    it.pulse.networkIsBack();
    REQUIRE(QTest::qWaitFor([&] { return it.hub.isHolding(); }, 5000));
    REQUIRE_FALSE(it.runs.empty());
    CHECK_FALSE(it.runs.back().problem);
}

TEST_CASE("a hub that asks to be left alone is, also by what is written and after a lock; not by a person", "[pulse]")
{
    Phone it;
    it.open();
    test::HoldingCourier& hub = it.hub;
    bool limited = true;
    pulse::Ways ways{[&]() -> sync::Courier* { return limited ? static_cast<sync::Courier*>(&it.world.courier) : &hub; },
                     [&]() -> vault::Vault& { return it.diary.vault(); },
                     [&](sync::Courier& way, std::function<void(const sync::Report&)> done) { it.diary.syncNow(way, std::move(done)); }};
    pulse::HubPulse pulse(ways);
    int runs = 0;
    QObject::connect(&pulse, &pulse::HubPulse::ended, [&] { ++runs; });
    pulse.setInterval(1h);
    it.answer429(120);
    CHECK(pulse.runNow());
    CHECK(runs == 1);
    CHECK(pulse.untilNext() >= 119s);
    // What it asked for, up to a second of chance so that not all come at once, and the rounding up of what is left.
    CHECK(pulse.untilNext() <= 121s + 1ms);
    pulse.nudge();
    CHECK(runs == 1);
    pulse.networkIsBack();
    pulse.end();
    pulse.begin();
    QTest::qWait(50);
    CHECK(runs == 1);
    CHECK(pulse.untilNext() >= 115s);
    CHECK(pulse.runNow());
    CHECK(runs == 2);
    // Once it serves again, everything goes as before.
    limited = false;
    it.world.courier.tamper = {};
    CHECK(pulse.runNow());
    CHECK(runs == 3);
    pulse.nudge();
    CHECK(runs == 4);
}

TEST_CASE("who comes back to the program just after a good look causes no other", "[pulse]")
{
    Phone it;
    it.open();
    it.pulse.networkIsBack();
    QTest::qWait(100);
    CHECK(it.runs.empty());
    CHECK(it.pulse.isWaiting());
}

TEST_CASE("with no hub it looks again later and asks nobody", "[pulse]")
{
    Phone it;
    it.isOpen = false;
    it.pulse.setInterval(100ms);
    const auto asked = it.hub.asked.size();
    it.pulse.begin();
    QTest::qWait(50);
    CHECK(it.hub.asked.size() == asked);
    CHECK_FALSE(it.pulse.runNow());
    it.isOpen = true;
    REQUIRE(QTest::qWaitFor([&] { return !it.runs.empty(); }, 5000));
}

TEST_CASE("without an interval nothing happens by itself", "[pulse]")
{
    Phone it;
    it.pulse.begin();
    QTest::qWait(50);
    CHECK(it.runs.empty());
    it.pulse.nudge();
    CHECK(it.runs.size() == 1);
    QTest::qWait(50);
    CHECK(it.runs.size() == 1);
    CHECK_FALSE(it.pulse.isWaiting());
}

TEST_CASE("what is written during a run goes in one that follows, and what is heard during it is not lost", "[pulse]")
{
    Phone it;
    it.pulse.setInterval(1h);
    // The run hangs in the air until it is let go.
    std::function<void(const sync::Report&)> hanging;
    pulse::HubPulse pulse({[&]() -> sync::Courier* { return &it.hub; }, [&]() -> vault::Vault& { return it.diary.vault(); },
                           [&](sync::Courier&, std::function<void(const sync::Report&)> done) { hanging = std::move(done); }});
    int began = 0;
    QObject::connect(&pulse, &pulse::HubPulse::began, [&] { ++began; });
    pulse.setInterval(1h);
    pulse.nudge();
    REQUIRE(began == 1);
    pulse.nudge();
    CHECK(began == 1);
    sync::Report good;
    good.reached = true;
    std::exchange(hanging, {})(good);
    REQUIRE(QTest::qWaitFor([&] { return began == 2; }, 5000));
    std::exchange(hanging, {})(good);
    REQUIRE(QTest::qWaitFor([&] { return it.hub.isHolding(); }, 5000));
    pulse.nudge();
    CHECK(began == 3);
    it.write();
    it.hub.look();
    std::exchange(hanging, {})(good);
    REQUIRE(QTest::qWaitFor([&] { return began == 4; }, 5000));
    // An answer to a run before the lock finds nobody.
    pulse.end();
    hanging(good);
    CHECK_FALSE(pulse.isBusy());
    CHECK(pulse.untilNext() < 0ms);
}
