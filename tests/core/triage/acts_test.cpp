// Who is on a row, since when it waits, and which reason stands first.

#include "tests/core/triage/course_writer.h"

#include <catch2/catch_test_macros.hpp>

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
    void actOnAll(Act act, double hours)
    {
        const auto found = row(hours);
        for (const auto& finding : found.findings)
            journal.add(desk.write(actOn(finding.key, act, hoursAfter(hours)), ++time));
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
    CHECK_FALSE(triage::isOverdue(course.row(81), hoursAfter(200)));
}

TEST_CASE("a second reason of the same urgency asks for somebody of its own", "[triage]")
{
    OneCourse course;
    course.tell(1, 30, {Sign::thickFluid});
    course.actOnAll(Act::taken, 31);
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
