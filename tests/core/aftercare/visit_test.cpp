// The follow-up that was agreed: the day, perhaps a time, and what of the plan goes with it.

#include "core/aftercare/visit.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <set>

using namespace ebbline;
using namespace ebbline::aftercare;

namespace {

const Zone berlin = *Zone::find("Europe/Berlin");
constexpr QuietHours noQuiet{0, 0, false};

clock::Moment at(const char* text, const Zone& zone = berlin)
{
    return zone.moment(clock::parseIso8601(text)->at);
}

const clock::Moment treated = at("2027-03-01T10:00:00+01:00");

Visit onDay(int day, std::optional<int> minute = {})
{
    return {treated.day() + std::chrono::days(day), minute};
}

std::vector<Reminder> ofVisit(const Visit& visit, const QuietHours& quiet = noQuiet)
{
    auto reminders = remindersOf(defaultCarePlan(), treated, visit, berlin, quiet);
    std::erase_if(reminders, [](const Reminder& reminder) { return reminder.kind != InstructionKind::followUp; });
    return reminders;
}

}  // namespace

TEST_CASE("a visit comes back as it was agreed, with a time or without", "[aftercare][visit]")
{
    for (const auto& visit : {onDay(21), onDay(21, 10 * 60 + 30), onDay(27, 1), onDay(28)})
        CHECK(visitOf(momentOf(visit, berlin)) == visit);
    CHECK(clock::toIso8601(momentOf(onDay(21, 10 * 60 + 30), berlin)) == "2027-03-22T10:30:00+01:00");
}

TEST_CASE("a day whose midnight the clocks skip is still a day without a time", "[aftercare][visit]")
{
    // Cairo goes from 23:59 on 29 April 2027 to 01:00 on 30 April: tz database, Egypt since 2023.
    const Zone cairo = *Zone::find("Africa/Cairo");
    const Visit visit{at("2027-04-30T12:00:00+03:00", cairo).day(), {}};
    CHECK(visitOf(momentOf(visit, cairo)) == visit);
}

TEST_CASE("what was written before with an hour keeps its hour", "[aftercare][visit]")
{
    const Visit visit = visitOf(at("2027-03-22T09:00:00+01:00"));
    CHECK(visit.minute == 9 * 60);
    CHECK(visit.day == treated.day() + std::chrono::days(21));
}

TEST_CASE("a visit lies one to sixty days after the treatment", "[aftercare][visit]")
{
    for (const int day : {1, 21, 60})
        CHECK(check(onDay(day), treated));
    for (const int day : {-1, 0, 61, 400}) {
        const Done refused = check(onDay(day), treated);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().reason == Reason::outOfRange);
    }
    CHECK_FALSE(check(onDay(21, 1440), treated));
}

TEST_CASE("the reminder of the follow-up goes with the day that was chosen, under the key it always had", "[aftercare][visit]")
{
    const auto usual = ofVisit(onDay(21, 10 * 60));
    REQUIRE(usual.size() == 1);
    CHECK(clock::toIso8601(berlin.moment(usual.front().due)) == "2027-03-22T08:00:00+01:00");
    for (const int day : {14, 25, 40}) {
        const auto moved = ofVisit(onDay(day));
        REQUIRE(moved.size() == 1);
        CHECK(moved.front().key == "follow-up/21/480");
        CHECK(moved.front().day == day);
        CHECK(berlin.moment(moved.front().due).day() == onDay(day).day);
        CHECK(berlin.moment(moved.front().due).minuteOfDay() == 8 * 60);
    }
}

TEST_CASE("an early visit is rung before it, not after it", "[aftercare][visit]")
{
    const auto reminders = ofVisit(onDay(20, 7 * 60 + 30));
    REQUIRE(reminders.size() == 1);
    CHECK(clock::toIso8601(berlin.moment(reminders.front().due)) == "2027-03-21T06:30:00+01:00");
    CHECK(ofVisit(onDay(20, 6 * 60 + 30), {}).front().due < momentOf(onDay(20, 6 * 60 + 30), berlin).at);
}

TEST_CASE("a later visit is written for to its eve, an earlier one takes no instruction away", "[aftercare][visit]")
{
    const CarePlan plan = defaultCarePlan();
    const CarePlan later = planFor(plan, treated, onDay(30));
    CHECK(later.followUpDay == 30);
    REQUIRE(check(later));
    std::set<int> asked;
    for (const Reminder& reminder : remindersOf(plan, treated, onDay(30), berlin, noQuiet))
        if (reminder.kind == InstructionKind::diaryEntry)
            asked.insert(reminder.day);
    CHECK(asked.contains(20));
    CHECK(asked.contains(28));
    CHECK(*asked.rbegin() < 30);

    const CarePlan earlier = planFor(plan, treated, onDay(14));
    CHECK(earlier.followUpDay == 14);
    REQUIRE(earlier.instructions.size() == plan.instructions.size());
    for (std::size_t i = 0; i < plan.instructions.size(); ++i)
        if (plan.instructions[i].kind != InstructionKind::followUp)
            CHECK(earlier.instructions[i] == plan.instructions[i]);
}

TEST_CASE("a day that an old record names before the treatment leaves the plan as it is", "[aftercare][visit]")
{
    CHECK(planFor(defaultCarePlan(), treated, onDay(-3)) == defaultCarePlan());
    CHECK(remindersOf(defaultCarePlan(), treated, onDay(90), berlin, {}) == remindersOf(defaultCarePlan(), treated, berlin, {}));
}
