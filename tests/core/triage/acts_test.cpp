// Who is on a row, since when it waits, and which reason stands first.

#include "tests/core/triage/course_writer.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <utility>

using namespace ebbline;
using namespace ebbline::test;
using namespace std::chrono_literals;
using records::Act;
using recovery::Side;
using recovery::Sign;
using recovery::Symptom;
using recovery::Urgency;

namespace {

struct OneCourse {
    Writer phone{1}, desk{2};
    journal::Journal journal;
    std::uint64_t time = 10;

    OneCourse() { journal.add(desk.write(openedCourse(), 1)); }

    void tell(const recovery::Entry& entry) { journal.add(phone.write(records::EntryRecorded{entry}, ++time)); }
    void tell(std::uint8_t number, double hours, recovery::Signs present)
    {
        auto entry = entryAt(number, hours);
        entry.present = std::move(present);
        tell(entry);
    }
    void actOnAll(Act act, double hours, records::Outcome outcome = records::Outcome::none)
    {
        const auto found = row(hours);
        for (const auto& finding : found.findings) {
            auto acted = actOn(finding.key, act, hoursAfter(hours));
            acted.outcome = outcome;
            journal.add(desk.write(acted, ++time));
        }
    }
    void moveVisit(double hours, double visit)
    {
        auto moved = openedCourse();
        moved.followUp = hoursAfter(visit);
        auto operation = desk.write(moved, ++time);
        operation.entered = hoursAfter(hours);
        journal.add(operation);
    }
    /// As the desk does it: the course once more with another day, and the acts in the same step.
    void bringForward(double hours, double visit)
    {
        moveVisit(hours, visit);
        actOnAll(Act::visitBroughtForward, hours);
    }
    triage::Row row(double hours) const
    {
        auto rows = triage::queueOf(journal.state(), hoursAfter(hours));
        REQUIRE(rows.size() == 1);
        return rows.front();
    }
};

}  // namespace

TEST_CASE("an emergency that comes after an old finding was taken is taken by nobody and waits from its own hour", "[triage]")
{
    OneCourse course;
    course.tell(1, 30, {Sign::threadLump});
    course.actOnAll(Act::taken, 31);
    course.actOnAll(Act::called, 31);
    CHECK(course.row(31).touched);
    CHECK(course.row(31).takenBy == "Dr. Ada Lund");

    course.tell(2, 80, {Sign::breathing});

    const auto row = course.row(80);
    CHECK(row.urgency == Urgency::emergency);
    CHECK_FALSE(row.touched);
    CHECK_FALSE(row.takenBy);
    CHECK(row.since == hoursAfter(80));
    CHECK_FALSE(triage::isOverdue(row, hoursAfter(80 + 4.0 / 60)));
    CHECK(triage::isOverdue(row, hoursAfter(80 + 6.0 / 60)));

    course.actOnAll(Act::taken, 80.05);
    CHECK(course.row(81).touched);
    CHECK(course.row(81).takenBy == "Dr. Ada Lund");
    CHECK_FALSE(triage::isOverdue(course.row(81), hoursAfter(80.05 + 4.0 / 60)));
    CHECK(triage::isOverdue(course.row(81), hoursAfter(80.05 + 6.0 / 60)));
}

TEST_CASE("what somebody took and forgot waits too long again, as long after the taking as after a raising", "[triage][safety]")
{
    const auto [sign, urgency] = GENERATE(std::pair(Sign::breathing, Urgency::emergency), std::pair(Sign::thickFluid, Urgency::callNow),
                                          std::pair(Sign::threadLump, Urgency::nextWorkingDay));
    const double hours = std::chrono::duration<double, std::ratio<3600>>(triage::untouchedFor(urgency)).count();
    OneCourse course;
    course.tell(1, 80, {sign});
    REQUIRE(course.row(80).urgency == urgency);
    CHECK_FALSE(course.row(80).lastAct);
    course.actOnAll(Act::taken, 80.05);

    const auto row = course.row(80.05);

    CHECK(row.touched);
    REQUIRE(row.lastAct);
    CHECK(row.lastAct->act == Act::taken);
    CHECK_FALSE(triage::isOverdue(row, hoursAfter(80.05 + hours - 0.01)));
    CHECK(triage::isOverdue(row, hoursAfter(80.05 + hours + 0.01)));

    // Whoever takes it anew has that time anew; whoever spoke with her has longer, and not for ever.
    course.actOnAll(Act::taken, 80.05 + hours);
    CHECK_FALSE(triage::isOverdue(course.row(81), hoursAfter(80.05 + 2 * hours - 0.01)));
    course.actOnAll(Act::called, 80.05 + 2 * hours);
    const double spoken = std::chrono::duration<double, std::ratio<3600>>(triage::spokenFor(urgency)).count();
    CHECK(spoken > hours);
    CHECK(course.row(81).lastAct->act == Act::called);
    CHECK_FALSE(triage::isOverdue(course.row(81), hoursAfter(80.05 + 2 * hours + spoken - 0.01)));
    CHECK(triage::isOverdue(course.row(81), hoursAfter(80.05 + 2 * hours + spoken + 0.01)));
}

TEST_CASE("a call that reached nobody is the newest act and covers nothing, before a taking and after it", "[triage][safety]")
{
    OneCourse course;
    course.tell(1, 80, {Sign::thickFluid});
    course.actOnAll(Act::called, 80.1, records::Outcome::notReached);
    CHECK_FALSE(course.row(81).touched);
    REQUIRE(course.row(81).lastAct);
    CHECK(course.row(81).lastAct->outcome == records::Outcome::notReached);
    CHECK(triage::isOverdue(course.row(81), hoursAfter(81.01)));

    course.actOnAll(Act::taken, 81);
    course.actOnAll(Act::called, 81.5, records::Outcome::notReached);

    CHECK(course.row(81.5).lastAct->outcome == records::Outcome::notReached);
    CHECK_FALSE(triage::isOverdue(course.row(81.5), hoursAfter(81.9)));
    CHECK(triage::isOverdue(course.row(81.5), hoursAfter(82.1)));
}

TEST_CASE("a visit brought forward covers up to the end of its day, an emergency no longer than a call, and without a day as a call", "[triage][safety]")
{
    OneCourse course;
    course.tell(1, 80, {Sign::thickFluid});
    course.actOnAll(Act::visitBroughtForward, 81);
    CHECK_FALSE(triage::isOverdue(course.row(81), hoursAfter(104.9)));
    CHECK(triage::isOverdue(course.row(81), hoursAfter(105.1)));

    course.bringForward(100, 130);  // at ten in the morning it is treated: hour 130 is 20 o'clock of day 5
    CHECK_FALSE(triage::isOverdue(course.row(100), hoursAfter(133.9)));
    CHECK(triage::isOverdue(course.row(100), hoursAfter(134.1)));

    course.tell(2, 101, {Sign::breathing});
    CHECK_FALSE(course.row(101).lastAct);
    course.bringForward(101, 128);
    CHECK_FALSE(triage::isOverdue(course.row(101), hoursAfter(101.9)));
    CHECK(triage::isOverdue(course.row(101), hoursAfter(102.1)));
}

TEST_CASE("a visit that was brought forward and put off again covers no longer than it did, and one brought forward further less", "[triage][safety]")
{
    OneCourse course;
    course.tell(1, 80, {Sign::thickFluid});
    course.bringForward(100, 130);  // as above: up to hour 134
    course.moveVisit(105, 500);
    CHECK_FALSE(triage::isOverdue(course.row(105), hoursAfter(133.9)));
    CHECK(triage::isOverdue(course.row(105), hoursAfter(134.1)));

    course.moveVisit(106, 108);  // to the day before: 22 o'clock of day 4, which is over at hour 110
    CHECK_FALSE(triage::isOverdue(course.row(106), hoursAfter(109.9)));
    CHECK(triage::isOverdue(course.row(106), hoursAfter(110.1)));

    // What was agreed before the act is none that it brought about.
    course.bringForward(107, 200);
    CHECK(triage::isOverdue(course.row(107), hoursAfter(206.1)));
    CHECK_FALSE(triage::isOverdue(course.row(107), hoursAfter(205.9)));
}

TEST_CASE("a second reason of the same urgency asks for somebody of its own", "[triage]")
{
    OneCourse course;
    course.tell(1, 30, {Sign::thickFluid});
    course.actOnAll(Act::taken, 31);
    course.actOnAll(Act::called, 31);  // which answers for the first reason for a day
    course.tell(2, 50, {Sign::bleeding});

    const auto row = course.row(50);

    CHECK(row.since == hoursAfter(30));
    CHECK_FALSE(row.touched);
    CHECK_FALSE(row.takenBy);
    CHECK(row.untouchedSince == hoursAfter(50));
    CHECK_FALSE(triage::isOverdue(row, hoursAfter(50.9)));
    CHECK(triage::isOverdue(row, hoursAfter(51.1)));
}

TEST_CASE("of the same urgency a sign stands before a trigger, and the newest before the older", "[triage]")
{
    OneCourse course;
    course.tell(10, 70, {Sign::threadLump});  // older than the triggers, and as urgent
    for (int day = 1; day <= 4; ++day) {
        auto entry = entryAt(static_cast<std::uint8_t>(day), 24 * day - 1);
        for (const Side side : recovery::bothSides)
            setScore(entry, Symptom::swelling, side, day < 3 || side == Side::right ? 2 : 9);
        course.tell(entry);
    }
    course.tell(11, 96, {Sign::thickFluid});
    course.tell(12, 97, {Sign::bleeding});
    auto last = entryAt(13, 98);
    setScore(last, Symptom::swelling, Side::left, 10);
    course.tell(last);

    const auto row = course.row(99);

    REQUIRE(row.findings.size() >= 3);
    CHECK(row.findings[0].raisedAt == hoursAfter(97));
    CHECK(row.findings[1].raisedAt == hoursAfter(96));
    bool both = false;
    for (std::size_t i = 0; i + 1 < row.findings.size(); ++i) {
        const auto& a = row.findings[i];
        const auto& b = row.findings[i + 1];
        CHECK(a.urgency <= b.urgency);
        if (a.urgency == b.urgency)
            CHECK((a.entry || !b.entry));
        both = both || (a.urgency == b.urgency && a.entry && !b.entry);
    }
    CHECK(both);
}
