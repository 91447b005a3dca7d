// The queue remembers what it said of courses that had their follow-up. It never differs from judging them anew.

#include "tests/core/triage/course_writer.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::test;
using triage::SettledCourses;

namespace {

records::FollowUpRecorded followUpAt(double hours)
{
    records::FollowUpRecorded followUp;
    followUp.course = sampleCourse;
    followUp.by = "Dr. Ada Lund";
    followUp.at = hoursAfter(hours);
    return followUp;
}

records::EntriesOpened openingOf(std::uint8_t entry, double hours)
{
    return {sampleCourse, {idOf<recovery::EntryTag>(entry)}, "Dr. Ada Lund", hoursAfter(hours)};
}

bool sameRow(const triage::Row& x, const triage::Row& y)
{
    return x.course == y.course && x.urgency == y.urgency && x.since.at == y.since.at && x.silent == y.silent && x.day == y.day
           && x.takenBy == y.takenBy && x.touched == y.touched && (x.touched || x.untouchedSince.at == y.untouchedSince.at)
           && x.overdueAt == y.overdueAt && x.lastAct == y.lastAct
           && std::ranges::equal(x.findings, y.findings, [](const triage::Finding& a, const triage::Finding& b) {
                  return a.key == b.key && a.open == b.open && a.acts == b.acts && a.changedSince == b.changedSince;
              });
}

bool same(const std::vector<triage::Row>& a, const std::vector<triage::Row>& b)
{
    return std::ranges::equal(a, b, sameRow);
}

bool inQueue(SettledCourses& settled, const journal::Journal& journal, double hours)
{
    return settled.rowOf(sampleCourse, journal.state().courses.at(sampleCourse), hoursAfter(hours)).has_value();
}

}  // namespace

TEST_CASE("a course that was over is judged anew when something arrives", "[triage][queue]")
{
    journal::Journal journal;
    Writer phone{1}, desk{2};
    SettledCourses settled;
    journal.add(desk.write(openedCourse(), 1));
    auto fine = entryAt(1, 24);
    setScore(fine, recovery::Symptom::pain, recovery::Side::left, 1);
    journal.add(phone.write(records::EntryRecorded{fine}, 2));
    CHECK_FALSE(inQueue(settled, journal, 30));

    journal.add(desk.write(openingOf(1, 400), 3));
    journal.add(desk.write(followUpAt(500), 4));
    CHECK_FALSE(inQueue(settled, journal, 510));

    auto ill = entryAt(2, 600);
    ill.present = {recovery::Sign::thickFluid};
    journal.add(phone.write(records::EntryRecorded{ill}, 5));
    CHECK(inQueue(settled, journal, 601));
}

TEST_CASE("an operation that arrives late, before others of its course, is judged too", "[triage][queue]")
{
    journal::Journal journal;
    Writer phone{1}, desk{2};
    SettledCourses settled;
    auto ill = entryAt(1, 24);
    ill.present = {recovery::Sign::thickFluid};
    const auto late = phone.write(records::EntryRecorded{ill}, 2);
    journal.add(desk.write(openedCourse(), 1));
    journal.add(desk.write(followUpAt(500), 4));
    CHECK_FALSE(inQueue(settled, journal, 510));

    journal.add(late);
    CHECK(inQueue(settled, journal, 601));
}

namespace {

/// A phone that tells and corrects, and a desk that opens, follows up, acts on what it finds and takes back.
class Chance {
public:
    std::vector<journal::Operation> written{m_desk.write(openedCourse(), 1)};

    void step(std::uint64_t time)
    {
        const auto number = *rc::gen::inRange<std::uint8_t>(1, 5);
        const double hours = *rc::gen::inRange(1, 700);
        switch (*rc::gen::inRange(0, 7)) {
        case 0: written.push_back(m_desk.write(openingOf(number, hours), time)); break;
        case 1: written.push_back(m_desk.write(followUpAt(hours), time)); break;
        case 2: act(hours, time); break;
        case 3: takeBack(hours, time); break;
        default: tell(number, hours, time);
        }
    }

private:
    void tell(std::uint8_t number, double hours, std::uint64_t time)
    {
        auto entry = entryAt(number, hours);
        setScore(entry, recovery::Symptom::pain, recovery::Side::left, *rc::gen::inRange(0, 11));
        if (*rc::gen::inRange(0, 3) == 0)
            entry.present = {recovery::Sign::thickFluid};
        written.push_back(m_phone.write(records::EntryRecorded{entry}, time));
    }

    void act(double hours, std::uint64_t time)
    {
        const auto found = findingsIn(journal::fold(written), hoursAfter(hours));
        if (found.empty())
            return;
        const auto& finding = found[*rc::gen::inRange<std::size_t>(0, found.size())];
        const auto what = *rc::gen::element(records::Act::taken, records::Act::called, records::Act::closed, records::Act::reopened);
        written.push_back(m_desk.write(actOn(finding.key, what, hoursAfter(hours)), time));
    }

    void takeBack(double hours, std::uint64_t time)
    {
        const auto& any = written[*rc::gen::inRange<std::size_t>(0, written.size())].id;
        written.push_back(m_desk.write(records::ActTakenBack{sampleCourse, {any.device, any.number}, "Dr. Ada Lund", hoursAfter(hours)}, time));
    }

    Writer m_phone{1}, m_desk{2};
};

}  // namespace

TEST_CASE("whatever arrives in whatever order, the queue is that of judging anew", "[triage][queue][property]")
{
    CHECK(rc::check("remembered or not", [] {
        Chance chance;
        for (std::uint64_t time = 2, end = *rc::gen::inRange<std::uint64_t>(3, 25); time < end; ++time)
            chance.step(time);
        auto written = chance.written;
        journal::Journal journal;
        SettledCourses settled;
        while (!written.empty()) {
            const auto at = *rc::gen::inRange<std::size_t>(0, written.size());
            journal.add(written[at]);
            written.erase(written.begin() + static_cast<std::ptrdiff_t>(at));
            const auto now = hoursAfter(*rc::gen::inRange(1, 800));
            RC_ASSERT(same(triage::queueOf(journal.state(), now, settled), triage::queueOf(journal.state(), now)));
        }
    }));
}

TEST_CASE("a phone whose clock runs ahead is judged by the follow-up alike at its very moment and after it", "[triage][queue]")
{
    journal::Journal journal;
    Writer phone{1}, desk{2};
    SettledCourses settled;
    journal.add(desk.write(openedCourse(), 1));
    auto ahead = entryAt(1, 501);
    for (const auto side : recovery::bothSides)
        setScore(ahead, recovery::Symptom::swelling, side, 10);
    journal.add(phone.write(records::EntryRecorded{ahead}, 2));
    journal.add(desk.write(followUpAt(500), 3));
    for (const double hours : {500.0, 500.001, 520.0}) {
        CAPTURE(hours);
        CHECK(same(triage::queueOf(journal.state(), hoursAfter(hours), settled), triage::queueOf(journal.state(), hoursAfter(hours))));
    }
}
