// Grave steps: the passphrase once more, a second person where there is one, and a line in the journal.

#include "core/desk/traces.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using desk::Inviting;

namespace {

/// A clinic that names two people.
struct Room {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();

    Room() { REQUIRE(desk().describeClinic(described("+00 555 0110", {"Dr. Ada Lund", "Dr. Jonas Feld"}))); }
    desk::Desk& desk() { return world.desk; }
    static records::ClinicDescribed described(const char* phone, std::vector<std::string> people)
    {
        return {{"Practice on the Mole", phone, "+00 555 0119", "112"}, "Europe/Berlin", std::move(people)};
    }
    void allow() { REQUIRE(desk().allowStep(test::passphrase)); }
    std::vector<desk::Trace> steps()
    {
        auto all = desk::traces(desk().vault().state(), desk().vault().operations());
        std::erase_if(all, [](const desk::Trace& trace) { return !trace.step; });
        return all;
    }
    Inviting::Step invite()
    {
        Inviting inviting(desk(), world.clock, Inviting::NewDesk::plain);
        inviting.start(world.courier, [] {});
        return inviting.step();
    }
    Inviting::Step linkPhone()
    {
        Inviting inviting(desk(), world.clock, course, triggers::defaultProtocol(), world.inDays(21));
        inviting.start(world.courier, [] {});
        return inviting.step();
    }
    /// A second desk in the clinic's roster.
    envelope::DeviceId enlist()
    {
        desk::Desk other = *desk::Desk::create(world.folder.path() / "other", test::passphrase, test::cheap, world.clock, world.zone);
        allow();
        desk().setSecond("Dr. Jonas Feld");
        Inviting inviting(desk(), world.clock, Inviting::NewDesk::plain);
        inviting.start(world.courier, [] {});
        desk::Applying applying(other, world.clock);
        REQUIRE(applying.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            applying.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        inviting.confirm(world.courier, [] {});
        REQUIRE(inviting.step() == Inviting::Step::linked);
        return other.vault().device();
    }
};

}  // namespace

TEST_CASE("none of the grave steps is taken without the passphrase, and nothing changes", "[desk][steps]")
{
    Room room;
    const auto other = room.enlist();
    (void)room.world.join(room.course);
    const auto epoch = room.desk().vault().epochNumber();
    room.desk().setSecond("Dr. Jonas Feld");

    CHECK(room.desk().revokeDesk(other).error().reason == Reason::locked);
    CHECK(room.desk().beginEpoch().error().reason == Reason::locked);
    CHECK(room.desk().endPhone(room.course).error().reason == Reason::locked);
    CHECK(room.desk().describeClinic(Room::described("+00 555 0666", {"Dr. Ada Lund", "Dr. Jonas Feld"})).error().reason == Reason::locked);
    CHECK(room.invite() == Inviting::Step::failed);

    CHECK(room.desk().desks().size() == 2);
    CHECK(room.desk().vault().epochNumber() == epoch);
    CHECK(room.desk().endedDevices().empty());
    CHECK(room.desk().clinic()->contacts.clinicPhone == "+00 555 0110");
    CHECK(room.steps().size() == 1);  // the desk that was added
}

TEST_CASE("a wrong passphrase allows nothing and counts as an attempt", "[desk][steps][errors]")
{
    Room room;
    CHECK(room.desk().allowStep(bytes::viewOf("three calm herons wake")).error().reason == Reason::wrongKey);
    CHECK_FALSE(room.desk().isStepAllowed());
    CHECK(room.desk().beginEpoch().error().reason == Reason::locked);
    // One that was given before does not outlive a wrong one.
    room.allow();
    CHECK(room.desk().isStepAllowed());
    CHECK_FALSE(room.desk().allowStep(bytes::viewOf("wrong again")).has_value());
    CHECK_FALSE(room.desk().isStepAllowed());
    bool waits = false;
    for (int i = 0; i < 10 && !waits; ++i)
        waits = room.desk().allowStep(bytes::viewOf("wrong")).error().reason == Reason::tooSoon;
    CHECK(waits);
}

TEST_CASE("the passphrase holds for one step, for two minutes", "[desk][steps]")
{
    Room room;
    room.allow();
    REQUIRE(room.desk().beginEpoch());
    CHECK(room.desk().beginEpoch().error().reason == Reason::locked);
    room.allow();
    room.world.clock.advance(desk::stepHolds + 1s);
    CHECK(room.desk().beginEpoch().error().reason == Reason::locked);
    // A clock that is set back does not prolong it.
    room.allow();
    room.world.clock.turnWall(room.world.clock.now() - 1h);
    CHECK(room.desk().beginEpoch().error().reason == Reason::locked);
}

TEST_CASE("desks and phones in another's place are for two, where the clinic names more than one person", "[desk][steps]")
{
    Room room;
    CHECK(room.desk().seconds() == std::vector<std::string>{"Dr. Jonas Feld"});
    room.allow();
    CHECK(room.invite() == Inviting::Step::failed);  // alone
    room.desk().setSecond("Dr. Ada Lund");           // herself
    room.allow();
    CHECK(room.invite() == Inviting::Step::failed);
    room.desk().setSecond("Nobody we know");
    room.allow();
    CHECK(room.invite() == Inviting::Step::failed);
    const auto other = room.enlist();

    // A first phone is for one; another one in its place for two.
    (void)room.world.join(room.course);
    CHECK(room.linkPhone() == Inviting::Step::failed);
    room.desk().setSecond("Dr. Jonas Feld");
    CHECK(room.linkPhone() == Inviting::Step::shown);
    CHECK(room.linkPhone() == Inviting::Step::failed);  // for each anew

    room.allow();
    CHECK(room.desk().revokeDesk(other).error().reason == Reason::notEnough);
    room.desk().setSecond("Dr. Jonas Feld");
    CHECK(room.desk().revokeDesk(other));

    // Who works alone has nobody to ask.
    REQUIRE(room.desk().describeClinic(Room::described("+00 555 0110", {"Dr. Ada Lund"})));
    CHECK(room.desk().seconds().empty());
    room.allow();
    CHECK(room.invite() == Inviting::Step::shown);
}

TEST_CASE("every grave step leaves a line that says who took it and who stood by", "[desk][steps]")
{
    Room room;
    const auto other = room.enlist();
    room.allow();
    room.desk().setSecond("Dr. Jonas Feld");
    REQUIRE(room.desk().revokeDesk(other));
    room.allow();
    REQUIRE(room.desk().beginEpoch());
    room.allow();
    REQUIRE(room.desk().describeClinic(Room::described("+00 555 0111", {"Dr. Ada Lund"})));
    (void)room.world.join(room.course);
    (void)room.world.join(room.course);
    room.allow();
    REQUIRE(room.desk().endPhone(room.course));

    using records::Step;
    const auto steps = room.steps();
    std::vector<Step> taken;
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        taken.push_back(*step->step);
        CHECK(step->by == "Dr. Ada Lund");
    }
    CHECK(taken == std::vector{Step::deskAdded, Step::deskShutOut, Step::freshKey, Step::numbersChanged, Step::phoneReplaced, Step::phoneEnded});
    REQUIRE(steps.size() == 6);
    CHECK(steps[5].with == "Dr. Jonas Feld");
    CHECK(steps[4].with == "Dr. Jonas Feld");
    CHECK(steps[3].with.empty());
    CHECK(steps[1].patient == "Ines Varga");
    // Names of people and a zone that change need no passphrase.
    REQUIRE(room.desk().describeClinic(Room::described("+00 555 0111", {"Dr. Ada Lund", "Mina Roth"})));
    CHECK(room.steps().size() == 6);
}
