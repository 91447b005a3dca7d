// Bells on a phone: what the person said to the program and to the phone, and what is really booked.
#include "platform/notifications/ringer_bells.h"
#include "tests/platform/notifications/fake_ringer.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;
using aftercare::Leave;
using notifications::RingerEvent;
using notifications::SystemLeave;

namespace {

constexpr clock::Instant noon{std::chrono::milliseconds{1'803'891'600'000}};

struct Phone {
    explicit Phone(const test::SystemKind& kind = test::plainPhone)
        : phone(kind, noon), bells(std::make_unique<test::FakeRinger>(phone))
    {
        QObject::connect(&bells, &notifications::Bells::leaveChanged, [this] { ++leaveChanged; });
    }
    test::FakePhone phone;
    notifications::RingerBells bells;
    int leaveChanged = 0;
};

std::vector<clock::Instant> hourly(int count)
{
    std::vector<clock::Instant> dues;
    for (int i = 1; i <= count; ++i)
        dues.push_back(noon + std::chrono::hours(i));
    return dues;
}

}  // namespace

TEST_CASE("the phone is not asked before the person says yes to the program", "[bells]")
{
    Phone it;
    CHECK(it.bells.leave() == Leave::notAsked);
    CHECK(it.phone.asked == 0);
    it.bells.allow(false);
    CHECK(it.bells.leave() == Leave::denied);
    CHECK(it.phone.asked == 0);
    it.bells.allow(true);
    CHECK(it.phone.asked == 1);
    CHECK(it.bells.leave() == Leave::denied);  // nothing rings while the question is open
    it.phone.say(SystemLeave::granted);
    CHECK(it.bells.leave() == Leave::granted);
    CHECK(it.leaveChanged == 3);
}

TEST_CASE("a phone that was told no is not asked again: a yes that is repeated leads to its settings", "[bells]")
{
    Phone it;
    it.bells.allow(true);
    it.phone.say(SystemLeave::denied);
    CHECK(it.bells.leave() == Leave::denied);
    CHECK(it.phone.settingsOpened == 0);
    it.bells.allow(true);
    CHECK(it.phone.settingsOpened == 1);
    CHECK(it.phone.asked == 1);
    it.phone.say(SystemLeave::granted);  // given there
    CHECK(it.bells.leave() == Leave::granted);
}

TEST_CASE("the yes of last time, told at the start, opens no settings", "[bells]")
{
    Phone it;
    it.phone.leave = SystemLeave::denied;
    it.bells.allow(true);
    CHECK(it.phone.settingsOpened == 0);
    CHECK(it.phone.asked == 0);
    CHECK(it.bells.leave() == Leave::denied);
}

TEST_CASE("leave that is taken back in the phone's settings takes the bells back, and given again brings them", "[bells]")
{
    Phone it;
    it.bells.allow(true);
    it.phone.say(SystemLeave::granted);
    CHECK(aftercare::bringUpToDate(it.bells, hourly(5), noon).booked == 5);
    it.phone.say(SystemLeave::denied);
    const auto silent = aftercare::bringUpToDate(it.bells, hourly(5), noon);
    CHECK(silent.leave == Leave::denied);
    CHECK(it.bells.pending()->empty());
    it.phone.say(SystemLeave::granted);
    CHECK(aftercare::bringUpToDate(it.bells, hourly(5), noon).complete);
}

TEST_CASE("on every kind of phone no more is said to be booked than the phone holds", "[bells]")
{
    const auto* kind = GENERATE(&test::plainPhone, &test::cappedPhone, &test::forgetfulPhone, &test::sleepyPhone, &test::tinyPhone,
                                &test::lyingPhone);
    CAPTURE(kind->name);
    Phone it(*kind);
    it.bells.allow(true);
    it.phone.say(SystemLeave::granted);
    const auto state = aftercare::bringUpToDate(it.bells, hourly(200), noon);
    const auto held = it.bells.pending();
    REQUIRE(held);
    CHECK(state.booked <= held->size());
    CHECK(state.booked <= aftercare::mostBooked);
    CHECK(it.phone.system.mostHeld() <= kind->capacity);
    CHECK_FALSE(state.complete);
    CHECK((state.goodUntil == held->at(state.booked - 1).at));
    it.phone.answers = false;
    CHECK(aftercare::bringUpToDate(it.bells, hourly(200), noon).problem.has_value());
}

TEST_CASE("what the person touches and what the phone tells comes through", "[bells]")
{
    Phone it;
    std::vector<int> heard;
    QObject::connect(&it.bells, &notifications::Bells::openAsked, [&] { heard.push_back(1); });
    QObject::connect(&it.bells, &notifications::Bells::laterAsked, [&] { heard.push_back(2); });
    QObject::connect(&it.bells, &notifications::Bells::leaveChanged, [&] { heard.push_back(3); });
    QObject::connect(&it.bells, &notifications::Bells::rang, [&] { heard.push_back(4); });
    QObject::connect(&it.bells, &notifications::Bells::zoneChanged, [&] { heard.push_back(5); });
    for (const auto event : {RingerEvent::openTouched, RingerEvent::laterTouched, RingerEvent::leaveChanged, RingerEvent::rang,
                             RingerEvent::zoneChanged})
        it.phone.hear(event);
    CHECK(heard == std::vector{1, 2, 3, 4, 5});
}

TEST_CASE("a try rings or says that the phone refused it", "[bells]")
{
    Phone it;
    int rang = 0, failed = 0;
    QObject::connect(&it.bells, &notifications::Bells::rang, [&] { ++rang; });
    QObject::connect(&it.bells, &notifications::Bells::failed, [&] { ++failed; });
    it.bells.ringNow();
    it.phone.silent = true;
    it.bells.ringNow();
    CHECK(rang == 1);
    CHECK(failed == 1);
    CHECK(it.phone.rang == 1);
}

TEST_CASE("a phone that may ring late says so, and leads to where that can be changed", "[bells]")
{
    Phone it;
    CHECK(it.bells.isPunctual());
    it.phone.punctual = false;
    CHECK_FALSE(it.bells.isPunctual());
    it.bells.askPunctual();
    CHECK(it.phone.punctualSettingsOpened == 1);
}

TEST_CASE("the words are handed to the phone, which shows them when the program does not run", "[bells]")
{
    Phone it;
    it.bells.setWords({QStringLiteral("Diary"), QStringLiteral("Reminder"), QStringLiteral("There is something for you."),
                       QStringLiteral("Please open your diary."), QStringLiteral("Open"), QStringLiteral("Later")});
    CHECK(it.phone.words.title == QLatin1String("Reminder"));
    CHECK(it.phone.words.later == QLatin1String("Later"));
}
