// What is said, and what people do, after the follow-up was recorded.
#include "tests/core/desk/clinic_world.h"

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

bool tellsOfSilence(desk::Desk& desk)
{
    return std::ranges::any_of(desk.queue(), [](const triage::Row& row) {
        return std::ranges::any_of(row.findings, [](const triage::Finding& finding) {
            const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
            return trigger && trigger->trigger == triggers::Trigger::silence;
        });
    });
}

const records::FollowUpRecorded goodEnd{{}, records::GlobalChange::muchBetter, 4, {}, true, "", "in a year", "", {}};

}  // namespace

TEST_CASE("what asks for a call after an early follow-up asks for it at the desk as well, and no silence is told", "[desk][follow-up][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto tell = [&](int points) {
        auto entry = phone.blankEntry();
        for (const auto side : {recovery::Side::left, recovery::Side::right})
            entry.scores.insert_or_assign({recovery::Symptom::pain, side}, *recovery::Score::of(points));
        const auto saved = phone.record(entry);
        REQUIRE(saved);
        world.syncPhone(phone);
        world.syncDesk();
        return saved->findings;
    };
    for (const int points : {4, 3, 2, 1, 1, 1}) {
        tell(points);
        world.clock.advance(24h);
    }
    records::FollowUpRecorded followUp = goodEnd;
    followUp.course = course;
    REQUIRE(world.desk.recordFollowUp(followUp));
    REQUIRE(world.desk.queue().empty());
    world.clock.advance(24h);
    tell(1);
    CHECK(world.desk.queue().empty());
    world.clock.advance(24h);

    const auto raised = tell(6);
    const auto urgent = std::ranges::find_if(raised, [](const triage::Finding& finding) {
        return !finding.entry && finding.urgency == recovery::Urgency::callNow;
    });
    REQUIRE(urgent != raised.end());
    for (int days = 0; days < 10; ++days) {
        const auto queue = world.desk.queue();
        REQUIRE(queue.size() == 1);
        CHECK(queue.front().urgency == recovery::Urgency::callNow);
        CHECK(std::ranges::any_of(queue.front().findings, [&](const triage::Finding& finding) { return finding.key == urgent->key; }));
        CHECK_FALSE(tellsOfSilence(world.desk));
        world.clock.advance(24h);
    }
}

TEST_CASE("a finding that is reopened after the follow-up stands in the queue until it is closed", "[desk][follow-up][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.tellOfFluid(phone);
    REQUIRE(world.desk.queue().size() == 1);
    const std::string key = world.desk.queue().front().findings.front().key;
    REQUIRE(world.desk.openEntries(course));
    world.clock.advance(1h);
    records::FollowUpRecorded followUp = goodEnd;
    followUp.course = course;
    REQUIRE(world.desk.recordFollowUp(followUp));
    REQUIRE(world.desk.queue().empty());
    world.clock.advance(1h);

    REQUIRE(world.desk.act(course, key, records::Act::reopened, records::Outcome::none, ""));
    REQUIRE(world.desk.queue().size() == 1);
    CHECK(world.desk.queue().front().findings.front().key == key);
    REQUIRE(world.desk.act(course, key, records::Act::closed, records::Outcome::reassured, ""));
    CHECK(world.desk.queue().empty());
}
