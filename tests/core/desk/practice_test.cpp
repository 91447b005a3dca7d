// What the clinic's work added up to, over a clinic of invented courses.
#include "core/desk/invented_past.h"
#include "core/desk/practice.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using desk::AlertTally;

namespace {

constexpr int courseCount = 40;

struct PastWorld : test::ClinicWorld {
    PastWorld()
    {
        desk.setPerson("Ilan Osei");
        REQUIRE(desk::addInventedPast(desk, zone, {.courses = courseCount, .now = zone.moment(clock.now())}));
    }
    std::vector<desk::CourseTally> tallies() const
    {
        std::vector<desk::CourseTally> all;
        for (const auto& id : desk.courseIds())
            if (auto tally = desk.tally(id))
                all.push_back(std::move(*tally));
        return all;
    }
    clock::Moment now() const { return zone.moment(clock.now()); }
};

}  // namespace

TEST_CASE("every alert is counted once, by urgency and by what became of it", "[desk][practice]")
{
    PastWorld world;
    const auto tallies = world.tallies();
    REQUIRE(tallies.size() == courseCount);

    const auto burden = desk::burdenOf(tallies, world.clock.now());

    CHECK(burden.courses == courseCount);
    long byUrgency = 0;
    for (const long count : burden.byUrgency)
        byUrgency += count;
    long closed = 0;
    for (const long count : burden.byOutcome)
        closed += count;
    CHECK(burden.alerts > 10);
    CHECK(byUrgency == burden.alerts);
    CHECK(closed + burden.open + burden.atFollowUp == burden.alerts);
    CHECK(burden.byUrgency[static_cast<std::size_t>(recovery::Urgency::atReview)] == 0);
    CHECK(burden.worth > 0);
    CHECK(burden.worth <= closed);
    CHECK(burden.alertedCourses <= burden.courses);
    if (closed >= learning::fewestCourses) {
        REQUIRE(burden.worthShare);
        CHECK(burden.worthShare->share == static_cast<double>(burden.worth) / static_cast<double>(closed));
    }
}

TEST_CASE("reassurance alone is not counted as worth it, and an earlier visit is", "[desk][practice]")
{
    AlertTally alert;
    alert.answer = AlertTally::Answer::closed;
    alert.outcome = records::Outcome::reassured;
    CHECK_FALSE(alert.worthIt());
    alert.broughtForward = true;
    CHECK(alert.worthIt());
    alert.broughtForward = false;
    for (const auto outcome : {records::Outcome::advised, records::Outcome::treatedInClinic, records::Outcome::sentToUrgentCare}) {
        alert.outcome = outcome;
        CHECK(alert.worthIt());
    }
    alert.outcome = records::Outcome::notReached;
    CHECK_FALSE(alert.worthIt());
}

TEST_CASE("a few closed alerts are not enough to say what they were worth", "[desk][practice]")
{
    std::vector<desk::CourseTally> courses(1);
    AlertTally alert;
    alert.answer = AlertTally::Answer::closed;
    alert.outcome = records::Outcome::advised;
    courses[0].alerts.assign(3, alert);
    const auto burden = desk::burdenOf(courses, clock::Instant{});
    CHECK(burden.worth == 3);
    REQUIRE_FALSE(burden.worthShare);
    CHECK(burden.worthShare.error().have == 3);
    CHECK(desk::burdenOf({}, clock::Instant{}).alerts == 0);
}

TEST_CASE("days and reminders that were asked for are counted, and what was done of them", "[desk][practice]")
{
    PastWorld world;
    const auto adherence = desk::adherenceOf(world.tallies());
    CHECK(adherence.courses == courseCount);
    CHECK(adherence.askedDays > 0);
    CHECK(adherence.toldDays > 0);
    CHECK(adherence.toldDays <= adherence.askedDays);
    REQUIRE_FALSE(adherence.kept.empty());
    for (const auto& kept : adherence.kept) {
        CHECK(kept.kind != aftercare::InstructionKind::diaryEntry);
        CHECK(kept.done + kept.notDone <= kept.due);
        CHECK(kept.done > 0);
    }
}

TEST_CASE("the stamp of a tally stands still for a course that is over, and moves with every act", "[desk][practice]")
{
    PastWorld world;
    recovery::CourseId closed;
    std::string finding;
    for (const auto& id : world.desk.courseIds()) {
        const auto view = world.desk.course(id);
        if (view->state->followUp && !view->findings.empty()) {
            closed = id;
            finding = view->findings.front().key;
        }
    }
    REQUIRE_FALSE(closed.isNull());
    const auto stamp = world.desk.tallyStamp(closed);
    world.clock.advance(std::chrono::hours(24 * 3));
    CHECK(world.desk.tallyStamp(closed) == stamp);
    REQUIRE(world.desk.act(closed, finding, records::Act::seen));
    CHECK_FALSE(world.desk.tallyStamp(closed) == stamp);
}

TEST_CASE("course by course, the practice sees what it sees all at once", "[desk][practice]")
{
    PastWorld world;
    const auto all = world.desk.pastCourses();
    std::vector<learning::PastCourse> single;
    for (const auto& id : world.desk.courseIds())
        if (auto course = world.desk.pastCourse(id))
            single.push_back(std::move(*course));
    REQUIRE(all.size() == single.size());
    const auto figures = desk::practiceFigures(single);
    CHECK(figures.courses == courseCount);
    CHECK(figures.all.known + figures.all.unknown == courseCount);
    CHECK(figures.all.unknown > 0);
    CHECK(figures.resolutions.size() == recovery::allSymptoms.size());
    CHECK(figures.watch.points.size() == static_cast<std::size_t>(figures.all.known));
    CHECK(figures.ways[static_cast<std::size_t>(learning::Way::area)].size() == 2);
    CHECK(figures.ways[static_cast<std::size_t>(learning::Way::epinephrine)].size() == 2);
    // Two ways to write a lot are one lot.
    CHECK(figures.lots.size() == 3);
    CHECK_FALSE(world.desk.pastCourse(recovery::CourseId{}));
}

TEST_CASE("nobody who is over stands in the queue, and whoever says something after the follow-up does", "[desk][triage]")
{
    PastWorld world;
    for (const auto& row : world.desk.queue())
        CHECK_FALSE(world.desk.course(row.course)->state->followUp);
    recovery::CourseId closed;
    for (const auto& id : world.desk.courseIds())
        if (world.desk.course(id)->state->followUp)
            closed = id;
    recovery::Entry late;
    late.id = recovery::EntryId{crypto::randomArray<16>()};
    late.course = closed;
    late.at = late.recordedAt = world.now();
    late.present = {recovery::Sign::thickFluid};
    REQUIRE(world.desk.vault().append({records::EntryRecorded{late}}, world.now()));

    const auto queue = world.desk.queue();

    CHECK(std::any_of(queue.begin(), queue.end(), [&](const auto& row) { return row.course == closed; }));
}

TEST_CASE("a row nobody touches is overdue after its time, not for the next hour once somebody reached her, and still when nobody did", "[desk][triage]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    REQUIRE(desk::addInventedToday(world.desk, world.zone, world.zone.moment(world.clock.now())));
    auto queue = world.desk.queue();
    REQUIRE(queue.size() >= 5);
    const auto emergency = queue.front();
    CHECK(emergency.urgency == recovery::Urgency::emergency);
    CHECK_FALSE(emergency.touched);
    CHECK(triage::isOverdue(emergency, world.zone.moment(emergency.since.at + std::chrono::minutes(6))));
    CHECK_FALSE(triage::isOverdue(emergency, world.zone.moment(emergency.since.at + std::chrono::minutes(4))));

    for (const auto& finding : emergency.findings)
        REQUIRE(world.desk.act(emergency.course, finding.key, records::Act::called, records::Outcome::notReached));
    queue = world.desk.queue();
    CHECK_FALSE(queue.front().touched);
    CHECK(triage::isOverdue(queue.front(), world.zone.moment(emergency.since.at + std::chrono::minutes(6))));

    for (const auto& finding : emergency.findings)
        REQUIRE(world.desk.act(emergency.course, finding.key, records::Act::called));

    queue = world.desk.queue();
    CHECK(queue.front().touched);
    CHECK_FALSE(triage::isOverdue(queue.front(), world.zone.moment(world.clock.now() + std::chrono::minutes(59))));
    CHECK(triage::isOverdue(queue.front(), world.zone.moment(world.clock.now() + std::chrono::minutes(61))));
}
