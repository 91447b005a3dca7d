// Care plan to due moments: none missing, none before the treatment, none in the night, none after the evening it is about.

#include "core/aftercare/care_plan.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace ebbline;
using namespace ebbline::aftercare;

namespace {

const Zone berlin = *Zone::find("Europe/Berlin");
constexpr QuietHours noQuiet{0, 0, false};

clock::Moment treatedAt(const char* text)
{
    return berlin.moment(clock::parseIso8601(text)->at);
}

CarePlan planOf(Instruction instruction)
{
    return {{std::move(instruction)}, 21};
}

}  // namespace

TEST_CASE("the plan that a clinic starts from is sound and takes the dressings off this evening", "[aftercare]")
{
    const CarePlan plan = defaultCarePlan();
    REQUIRE(check(plan));
    const auto reminders = remindersOf(plan, treatedAt("2027-03-01T10:00:00+01:00"), berlin, {});

    const auto dressings = std::find_if(reminders.begin(), reminders.end(), [](const Reminder& reminder) {
        return reminder.kind == InstructionKind::dressingsOff;
    });
    REQUIRE(dressings != reminders.end());
    CHECK(clock::toIso8601(berlin.moment(dressings->due)) == "2027-03-01T19:00:00+01:00");
    CHECK(dressings->key == "dressings-off/0/1140");
}

TEST_CASE("reminders keep the wall clock when the clocks change", "[aftercare]")
{
    const auto plan = planOf({"evening", InstructionKind::custom, 0, 2, {20 * 60}, 1, {}, false});
    const auto reminders = remindersOf(plan, treatedAt("2027-03-27T10:00:00+01:00"), berlin, noQuiet);

    REQUIRE(reminders.size() == 3);
    CHECK(clock::toIso8601(berlin.moment(reminders[0].due)) == "2027-03-27T20:00:00+01:00");
    CHECK(clock::toIso8601(berlin.moment(reminders[1].due)) == "2027-03-28T20:00:00+02:00");
    CHECK(reminders[1].due - reminders[0].due == std::chrono::hours(23));
}

TEST_CASE("what falls into quiet hours rings when they end, on either side of midnight", "[aftercare]")
{
    const QuietHours quiet{22 * 60, 7 * 60, true};
    const auto treated = treatedAt("2027-03-01T10:00:00+01:00");
    const auto late = remindersOf(planOf({"late", InstructionKind::custom, 1, 1, {23 * 60}, 1, {}, false}), treated, berlin, quiet);
    const auto early = remindersOf(planOf({"early", InstructionKind::custom, 1, 1, {5 * 60}, 1, {}, false}), treated, berlin, quiet);
    const auto loud = remindersOf(planOf({"loud", InstructionKind::custom, 1, 1, {5 * 60}, 1, {}, true}), treated, berlin, quiet);

    CHECK(clock::toIso8601(berlin.moment(late.front().due)) == "2027-03-03T07:00:00+01:00");
    CHECK(late.front().movedByQuietHours);
    CHECK(clock::toIso8601(berlin.moment(early.front().due)) == "2027-03-02T07:00:00+01:00");
    CHECK(clock::toIso8601(berlin.moment(loud.front().due)) == "2027-03-02T05:00:00+01:00");
    CHECK_FALSE(loud.front().movedByQuietHours);
}

TEST_CASE("a late treatment moves the evening's reminder and drops the morning's entry", "[aftercare]")
{
    const CarePlan plan{{{"off", InstructionKind::dressingsOff, 0, 0, {19 * 60}, 1, {}, false},
                         {"write", InstructionKind::diaryEntry, 0, 0, {9 * 60}, 1, {}, false}},
                        21};
    const auto reminders = remindersOf(plan, treatedAt("2027-03-01T18:45:00+01:00"), berlin, noQuiet);

    REQUIRE(reminders.size() == 1);
    CHECK(clock::toIso8601(berlin.moment(reminders.front().due)) == "2027-03-01T19:45:00+01:00");
    CHECK(reminders.front().key == "off/0/1140");
}

TEST_CASE("quiet hours leave no dressings on overnight: this evening stays this evening", "[aftercare][safety]")
{
    const auto quietly = [](const char* treated) {
        const auto reminders = remindersOf(defaultCarePlan(), treatedAt(treated), berlin, {});
        const auto off = std::find_if(reminders.begin(), reminders.end(), [](const Reminder& reminder) {
            return reminder.kind == InstructionKind::dressingsOff;
        });
        REQUIRE(off != reminders.end());
        CHECK_FALSE(off->movedByQuietHours);
        return clock::toIso8601(berlin.moment(off->due));
    };
    CHECK(quietly("2027-03-01T20:45:00+01:00") == "2027-03-01T21:45:00+01:00");
    CHECK(quietly("2027-03-01T21:15:00+01:00") == "2027-03-01T22:15:00+01:00");
    CHECK(quietly("2027-03-01T23:30:00+01:00") == "2027-03-02T00:30:00+01:00");
}

TEST_CASE("what is for an evening or its night rings before quiet hours that end after it, not the next morning", "[aftercare][safety]")
{
    const auto treated = treatedAt("2027-03-01T10:00:00+01:00");
    const auto ringsAt = [](InstructionKind kind, int day, int minute, const clock::Moment& from, const QuietHours& quiet) {
        const auto reminders = remindersOf(planOf({"one", kind, day, day, {minute}, 1, {}, false}), from, berlin, quiet);
        REQUIRE(reminders.size() == 1);
        const Reminder& one = reminders.front();
        CHECK(one.movedByQuietHours == (one.due != one.planned));
        return clock::toIso8601(berlin.moment(one.due)).substr(0, 16);
    };
    const QuietHours nine{21 * 60, 7 * 60, true};
    for (const auto kind : {InstructionKind::sleepOnBack, InstructionKind::cleanEntryPoints, InstructionKind::dressingsOff}) {
        CAPTURE(static_cast<int>(kind));
        CHECK(ringsAt(kind, 0, 21 * 60 + 30, treated, nine) == "2027-03-01T20:59");
        CHECK(ringsAt(kind, 2, 23 * 60, treated, nine) == "2027-03-03T20:59");
        // After midnight it is still that night.
        CHECK(ringsAt(kind, 2, 30, treated, nine) == "2027-03-02T20:59");
        // Quiet hours that end before midnight leave time that evening; a morning is no evening.
        CHECK(ringsAt(kind, 2, 20 * 60, treated, {19 * 60, 21 * 60, true}) == "2027-03-03T21:00");
        CHECK(ringsAt(kind, 2, 6 * 60, treated, nine) == "2027-03-03T07:00");
        // Never nearer to the treatment than an hour.
        CHECK(ringsAt(kind, 0, 21 * 60 + 30, treatedAt("2027-03-01T20:10:00+01:00"), nine) == "2027-03-01T21:10");
        CHECK(ringsAt(kind, 0, 21 * 60 + 30, treatedAt("2027-03-01T19:40:00+01:00"), nine) == "2027-03-01T20:59");
    }
    for (const auto kind : {InstructionKind::diaryEntry, InstructionKind::spareFace, InstructionKind::custom, InstructionKind::coldPack}) {
        CAPTURE(static_cast<int>(kind));
        CHECK(ringsAt(kind, 2, 21 * 60 + 30, treated, nine) == "2027-03-04T07:00");
    }
}

TEST_CASE("instructions in force are those of the day", "[aftercare]")
{
    const auto kinds = [](int day) {
        std::set<InstructionKind> found;
        for (const Instruction& instruction : inForce(defaultCarePlan(), day))
            found.insert(instruction.kind);
        return found;
    };
    CHECK(kinds(0).contains(InstructionKind::dressingsOff));
    CHECK_FALSE(kinds(1).contains(InstructionKind::dressingsOff));
    CHECK(kinds(13).contains(InstructionKind::spareFace));
    CHECK_FALSE(kinds(14).contains(InstructionKind::spareFace));
    CHECK(kinds(27).contains(InstructionKind::noMassage));
}

TEST_CASE("a plan out of its bounds is refused by name", "[aftercare][errors]")
{
    const auto refused = [](Instruction instruction) {
        const Done checked = check(planOf(std::move(instruction)));
        REQUIRE_FALSE(checked);
        return checked.error().detail;
    };
    CHECK(refused({"Upper", InstructionKind::custom, 0, 0, {}, 1, {}, false}).find("id") != std::string::npos);
    CHECK(refused({"a", InstructionKind::custom, 3, 2, {}, 1, {}, false}).find("day") != std::string::npos);
    CHECK(refused({"a", InstructionKind::custom, 0, 0, {600, 500}, 1, {}, false}).find("times") != std::string::npos);
    CHECK(refused({"a", InstructionKind::custom, 0, 0, {1440}, 1, {}, false}).find("times") != std::string::npos);
    CHECK(refused({"a", InstructionKind::custom, 0, 0, {}, 0, {}, false}).find("every") != std::string::npos);
}

TEST_CASE("reminders are sorted, unique, complete and never before the treatment", "[aftercare][property]")
{
    CHECK(rc::check("any start", [] {
        const char* names[] = {"Europe/Berlin", "Australia/Lord_Howe", "Asia/Kathmandu", "America/St_Johns", "Pacific/Apia"};
        const Zone zone = *Zone::find(names[*rc::gen::inRange(0, 5)]);
        const auto minutes = *rc::gen::inRange<std::int64_t>(0, 7 * 366 * 1440);  // 2024 to 2030
        const clock::Moment treated = zone.moment(clock::Instant{std::chrono::sys_days{std::chrono::year{2024} / 1 / 1} + std::chrono::minutes(minutes)});
        const QuietHours quiet{*rc::gen::inRange(0, 1440), *rc::gen::inRange(0, 1440), *rc::gen::arbitrary<bool>()};
        const CarePlan plan = defaultCarePlan();
        const auto reminders = remindersOf(plan, treated, zone, quiet);
        std::set<std::string> keys;
        clock::Instant before{};
        for (const Reminder& reminder : reminders) {
            RC_ASSERT(reminder.due >= treated.at);
            RC_ASSERT(reminder.due >= before);
            before = reminder.due;
            RC_ASSERT(keys.insert(reminder.key).second);
            const clock::Moment due = zone.moment(reminder.due);
            if (reminder.kind == InstructionKind::sleepOnBack)  // of its own evening, or of the night after it
                RC_ASSERT(due.day() - std::chrono::days(due.minuteOfDay() < 4 * 60 ? 1 : 0) == treated.day() + std::chrono::days(reminder.day));
        }
        std::size_t wanted = 0, missable = 0;
        for (const Instruction& instruction : plan.instructions)
            for (int day = instruction.firstDay; day <= instruction.lastDay; day += instruction.everyDays) {
                wanted += instruction.minutesOfDay.size();
                if (day == 0 && instruction.kind == InstructionKind::diaryEntry)
                    missable += instruction.minutesOfDay.size();
            }
        RC_ASSERT(reminders.size() <= wanted && reminders.size() >= wanted - missable);
    }));
}
