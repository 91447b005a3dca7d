// Clocks that disagree: whichever is wrong, what was written is judged on the phone and at the desk.
#include "tests/core/desk/clinic_world.h"

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

recovery::Entry emergencyOf(patient::Diary& phone)
{
    auto entry = phone.blankEntry();
    entry.present = {recovery::Sign::breathing};
    return entry;
}

std::vector<std::string> keysOf(const std::vector<triage::Finding>& findings)
{
    std::vector<std::string> keys;
    for (const triage::Finding& finding : findings)
        keys.push_back(finding.key);
    std::sort(keys.begin(), keys.end());
    return keys;
}

}  // namespace

TEST_CASE("an emergency of a phone whose clock is ahead stands in the queue as it arrives", "[triage][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(30h);
    const clock::Instant truly = world.clock.now();

    world.clock.turnWall(truly + 50h);
    REQUIRE(phone.record(emergencyOf(phone)));
    world.clock.turnWall(truly);
    world.syncPhone(phone);
    world.syncDesk();

    const auto queue = world.desk.queue();
    REQUIRE(queue.size() == 1);
    CHECK(queue.front().urgency == recovery::Urgency::emergency);
}

TEST_CASE("an emergency stands in the queue of a desk whose clock is behind", "[triage][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(100h);
    REQUIRE(phone.record(emergencyOf(phone)));
    world.syncPhone(phone);
    world.syncDesk();

    // Behind the entry, and behind the treatment.
    for (const auto behind : {std::chrono::hours(40), std::chrono::hours(24 * 365)}) {
        world.clock.turnWall(world.clock.now() - behind);
        const auto queue = world.desk.queue();
        REQUIRE(queue.size() == 1);
        CHECK(queue.front().urgency == recovery::Urgency::emergency);
    }
}

TEST_CASE("what a trigger found has one name on phone and desk, whatever the desk's clock says", "[triage][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    for (const int swelling : {3, 3, 8}) {
        world.clock.advance(24h);
        REQUIRE(phone.record(world.entryOf(phone, swelling, 1)));
    }
    world.syncPhone(phone);
    world.syncDesk();
    const auto findings = keysOf(phone.history().front().findings);
    REQUIRE_FALSE(findings.empty());
    const auto atDesk = keysOf(world.desk.course(course)->findings);
    CHECK(std::includes(atDesk.begin(), atDesk.end(), findings.begin(), findings.end()));

    world.clock.turnWall(world.clock.now() - 60h);

    CHECK(keysOf(world.desk.course(course)->findings) == atDesk);
}

TEST_CASE("an entry of a phone whose clock is before the treatment is kept as dated, and warns", "[diary][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(2h);
    const clock::Instant truly = world.clock.now();
    world.clock.turnWall(truly - 48h);
    const auto entry = emergencyOf(phone);

    const auto saved = phone.record(entry);

    REQUIRE(saved);
    REQUIRE(saved->findings.size() == 1);
    CHECK(saved->findings.front().urgency == recovery::Urgency::emergency);
    CHECK(saved->findings.front().day == 0);
    CHECK(phone.history().front().history.current().at == entry.at);
    CHECK(phone.history().front().day == 0);
    CHECK(phone.today().standing.size() == 1);
    world.clock.turnWall(truly);
    world.syncPhone(phone);
    world.syncDesk();
    REQUIRE(world.desk.queue().size() == 1);
    CHECK(world.desk.queue().front().urgency == recovery::Urgency::emergency);
}

TEST_CASE("an entry during which the phone's clock was set back is about now", "[diary][safety]")
{
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    world.clock.advance(30h);
    const auto entry = emergencyOf(phone);
    world.clock.turnWall(world.clock.now() - 3h);

    const auto saved = phone.record(entry);

    REQUIRE(saved);
    CHECK(saved->findings.size() == 1);
    CHECK(phone.history().front().history.current().at == world.now());
}

TEST_CASE("what an entry raises can be asked for without storing it", "[diary][safety]")
{
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());
    world.clock.advance(30h);
    auto entry = emergencyOf(phone);
    entry.note = std::string(recovery::Entry::maximumNote + 1, 'x');

    REQUIRE_FALSE(phone.record(entry));
    const auto raised = phone.judged(entry);

    REQUIRE(raised.size() == 1);
    CHECK(raised.front().urgency == recovery::Urgency::emergency);
    CHECK(phone.history().empty());
}
