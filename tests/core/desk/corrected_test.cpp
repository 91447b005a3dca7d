// What was raised stays raised: a correction, or an entry about an earlier moment, takes nothing out of anybody's sight.
#include "core/triage/course_curve.h"
#include "tests/core/desk/clinic_world.h"

#include <algorithm>
#include <random>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

constexpr const char* sidesApart = "t/side-divergence/swelling/L/1";

/// Those of a trigger, stream and day, whatever else their keys tell.
std::vector<const triage::Finding*> named(const std::vector<triage::Finding>& findings, const std::string& subject)
{
    std::vector<const triage::Finding*> found;
    for (const triage::Finding& finding : findings)
        if (finding.key == subject || finding.key.starts_with(subject + "/"))
            found.push_back(&finding);
    return found;
}

std::vector<std::string> linesOf(const std::vector<triage::Finding>& findings)
{
    std::vector<std::string> lines;
    for (const triage::Finding& finding : findings)
        lines.push_back(finding.key + " " + std::to_string(static_cast<int>(finding.urgency)) + " " + triage::explain(finding));
    return lines;
}

/// Even sides on the evening of the treatment; the day after, one is swollen 7 against 3 and hurts: a rule in points.
struct OneSided : test::ClinicWorld {
    recovery::CourseId course = treat();
    patient::Diary& phone = join(course);
    recovery::EntryId entry;

    OneSided()
    {
        clock.advance(6h);
        REQUIRE(phone.record(told(2, 2, 1, 1)));
        clock.advance(24h);
        const auto saved = phone.record(told(7, 3, 5, 1));
        REQUIRE(saved);
        entry = saved->entry;
        REQUIRE(named(saved->findings, sidesApart).size() == 1);
        REQUIRE(named(saved->findings, sidesApart).front()->urgency == recovery::Urgency::callNow);
        CHECK_FALSE(named(saved->findings, sidesApart).front()->changedSince);
        clock.advance(10min);
    }

    recovery::Entry told(int swellingLeft, int swellingRight, int painLeft, int painRight)
    {
        auto made = entryOf(phone, swellingLeft, swellingRight);
        made.scores.insert({{recovery::Symptom::pain, recovery::Side::left}, *recovery::Score::of(painLeft)});
        made.scores.insert({{recovery::Symptom::pain, recovery::Side::right}, *recovery::Score::of(painRight)});
        return made;
    }

    /// The entry of the second day as she would rather have it.
    recovery::Entry corrected(int swellingLeft, int swellingRight, int painLeft, int painRight)
    {
        auto changed = told(swellingLeft, swellingRight, painLeft, painRight);
        changed.at = phone.history().front().history.current().at;
        return changed;
    }

    void bringOver()
    {
        syncPhone(phone);
        syncDesk();
    }
};

}  // namespace

TEST_CASE("what a trigger raised stays on phone and desk when the scores are corrected, until an act closes it", "[triage][safety]")
{
    OneSided world;
    REQUIRE(world.phone.amend(world.entry, world.corrected(3, 3, 1, 1)));

    const auto standing = world.phone.today().standing;
    REQUIRE(named(standing, sidesApart).size() == 1);
    CHECK(named(standing, sidesApart).front()->changedSince);
    const auto history = world.phone.history();
    CHECK(named(history.front().findings, sidesApart).size() == 1);

    world.bringOver();
    const auto queue = world.desk.queue();
    REQUIRE(queue.size() == 1);
    REQUIRE(named(queue.front().findings, sidesApart).size() == 1);
    const triage::Finding finding = *named(queue.front().findings, sidesApart).front();
    CHECK(finding.urgency == recovery::Urgency::callNow);
    CHECK(finding.changedSince);
    CHECK(triage::explain(finding).find("left 7, right 3") != std::string::npos);
    CHECK(triage::explain(finding).ends_with("corrected or added to since"));

    for (const triage::Finding& open : queue.front().findings)
        REQUIRE(world.desk.act(world.course, open.key, records::Act::closed, records::Outcome::reassured, "Called: a slip."));
    CHECK(world.desk.queue().empty());
}

TEST_CASE("a correction of the moment leaves the warning where it can be read and confirmed", "[triage][safety]")
{
    OneSided world;
    auto moved = world.corrected(3, 3, 1, 1);
    moved.at.at -= 4h;
    REQUIRE(world.phone.amend(world.entry, moved));

    const auto standing = world.phone.today().standing;
    REQUIRE(named(standing, sidesApart).size() == 1);
    const auto history = world.phone.history();
    CHECK(named(history.front().findings, sidesApart).size() == 1);
    for (const triage::Finding& finding : standing)
        REQUIRE(world.phone.confirmWarning(finding));
    CHECK(world.phone.today().standing.empty());
}

TEST_CASE("a correction that still raises it is no change", "[triage]")
{
    OneSided world;
    REQUIRE(world.phone.amend(world.entry, world.corrected(8, 3, 5, 1)));
    const auto standing = world.phone.today().standing;
    REQUIRE(named(standing, sidesApart).size() == 1);
    CHECK_FALSE(named(standing, sidesApart).front()->changedSince);
    CHECK(triage::explain(*named(standing, sidesApart).front()).find("left 8, right 3") != std::string::npos);
}

TEST_CASE("a forgotten moment that is written later takes nothing back", "[triage][safety]")
{
    OneSided world;
    world.bringOver();
    const auto before = world.desk.queue();
    REQUIRE(before.size() == 1);
    REQUIRE(named(before.front().findings, sidesApart).size() == 1);
    REQUIRE(world.desk.act(world.course, named(before.front().findings, sidesApart).front()->key, records::Act::taken));
    auto late = world.told(7, 3, 5, 1);
    late.at.at -= 19h;
    REQUIRE(world.phone.record(late));
    world.bringOver();

    // Judged on what stands now, the sides part on the day before, and go on.
    const auto& course = world.desk.vault().state().courses.at(world.course);
    for (const auto& finding : triggers::judgeArrived(triage::courseInput(course), course.opened->protocol, world.now()))
        if (finding.trigger == triggers::Trigger::sideDivergence && finding.stream.symptom == recovery::Symptom::swelling)
            REQUIRE(finding.day == 0);
    REQUIRE(world.desk.queue().size() == 1);
    const auto found = world.desk.queue().front().findings;
    REQUIRE(named(found, sidesApart).size() == 1);
    CHECK(named(found, sidesApart).front()->changedSince);
    CHECK(named(found, sidesApart).front()->acts.size() == 1);
    // What the forgotten moment raises besides, as urgent, is nobody's yet.
    CHECK(named(found, sidesApart).front()->acts.front().by == "Dr. Ada Lund");
    CHECK_FALSE(world.desk.queue().front().takenBy);
}

TEST_CASE("a warning sign that was taken back says so", "[triage]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(30h);
    auto entry = world.entryOf(phone, 3, 3);
    entry.present = {recovery::Sign::thickFluid};
    const auto saved = phone.record(entry);
    REQUIRE(saved);
    CHECK_FALSE(phone.today().standing.front().changedSince);
    entry.present.clear();
    REQUIRE(phone.amend(saved->entry, entry));
    REQUIRE(phone.today().standing.size() == 1);
    CHECK(phone.today().standing.front().changedSince);
}

TEST_CASE("phone and desk find the same after corrections, in whatever order the operations arrive", "[triage]")
{
    OneSided world;
    REQUIRE(world.phone.amend(world.entry, world.corrected(3, 3, 1, 1)));
    world.clock.advance(20h);
    REQUIRE(world.phone.record(world.entryOf(world.phone, 4, 3)));
    world.clock.advance(10min);
    REQUIRE(world.phone.amend(world.entry, world.corrected(2, 6, 1, 1)));
    world.bringOver();

    const auto findings = [&](const journal::State& state) { return linesOf(triage::findingsOf(state.courses.at(world.course), world.now())); };
    auto operations = world.desk.vault().operations();
    const auto expected = findings(journal::fold(operations));
    REQUIRE(std::ranges::any_of(expected, [](const std::string& line) { return line.starts_with(sidesApart); }));
    CHECK(findings(world.desk.vault().state()) == expected);
    CHECK(findings(world.phone.vault().state()) == expected);
    std::mt19937 chance(7);
    for (int round = 0; round < 50; ++round) {
        std::shuffle(operations.begin(), operations.end(), chance);
        REQUIRE(findings(journal::fold(operations)) == expected);
    }
}

TEST_CASE("a band learns from what stands, not from what was corrected", "[triage]")
{
    OneSided world;
    REQUIRE(world.phone.amend(world.entry, world.corrected(3, 3, 1, 1)));
    const auto input = triage::courseInput(world.phone.vault().state().courses.at(world.course));
    REQUIRE(input.observations.size() == 2);
    for (const auto& observation : input.observations)
        for (const auto& [stream, score] : observation.scores)
            CHECK(score.points() <= 3);
}
