// Roles at the desk: what a role does not allow is refused before anything is done, and a patient is called by anybody.

#include "core/desk/traces.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/core/photos/sample_jpeg.h"

#include <algorithm>

using namespace ebbline;
using records::Act;
using records::Outcome;
using records::Role;
using records::Task;

namespace {

const std::string ada = "Dr. Ada Lund";
const std::string jonas = "Dr. Jonas Feld";
const std::string mina = "Mina Roth";

records::ClinicDescribed described(std::vector<std::string> people, const char* phone = "+00 555 0110")
{
    return {{"Practice on the Mole", phone, "+00 555 0119", "112"}, "Europe/Berlin", std::move(people)};
}

/// A clinic of three: the one in charge, a colleague on call, and an assistant; a patient with a finding.
struct House {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    std::string finding;

    House()
    {
        patient::Diary& phone = world.join(course);
        world.clock.advance(std::chrono::hours(30));
        auto entry = world.entryOf(phone, 3, 3);
        entry.present = {recovery::Sign::bleeding};
        REQUIRE(phone.record(entry));
        world.syncPhone(phone);
        world.syncDesk();
        REQUIRE_FALSE(desk().queue().empty());
        finding = desk().queue().front().findings.front().key;
        REQUIRE(desk().describeClinic(described({ada, jonas, mina})));
    }
    void giveRoles()
    {
        REQUIRE(desk().giveRole(ada, Role::inCharge));
        REQUIRE(desk().giveRole(jonas, Role::onCall));
        REQUIRE(desk().giveRole(mina, Role::assistant));
    }
    desk::Desk& desk() { return world.desk; }
    std::size_t operations() { return desk().vault().state().operations; }
    std::vector<desk::Trace> traces() { return desk::traces(desk().vault().state(), desk().vault().operations()); }
};

}  // namespace

TEST_CASE("until somebody sets a role everybody may do everything, and nothing more is written", "[desk][roles]")
{
    House house;
    house.desk().setPerson(mina);
    for (int task = 1; task <= static_cast<int>(records::newestTask); ++task)
        CHECK(house.desk().mayDo(static_cast<Task>(task)));
    const auto before = house.operations();
    REQUIRE(house.desk().signProtocol(triggers::defaultProtocol()));
    CHECK(house.operations() == before + 1);
}

TEST_CASE("taking and calling a patient, noting it and reopening are open to every role", "[desk][roles]")
{
    House house;
    house.giveRoles();
    REQUIRE(house.desk().act(house.course, house.finding, Act::closed, Outcome::reassured));
    for (const Role role : {Role::practitioner, Role::onCall, Role::assistant, Role::machines}) {
        house.desk().setPerson(ada);
        REQUIRE(house.desk().giveRole(mina, role));
        house.desk().setPerson(mina);
        CHECK(house.desk().act(house.course, house.finding, Act::reopened));
        CHECK(house.desk().act(house.course, house.finding, Act::seen));
        CHECK(house.desk().act(house.course, house.finding, Act::taken));
        CHECK(house.desk().act(house.course, house.finding, Act::called, Outcome::notReached, "nobody answered"));
        CHECK(house.desk().act(house.course, house.finding, Act::visitBroughtForward));
        CHECK(house.desk().openEntries(house.course));
        CHECK(house.desk().writeMessage(house.course, "Please ring us."));
        CHECK(house.desk().handOver("Ring her again at eight."));
    }
}

TEST_CASE("what a role does not allow is refused, and nothing is written", "[desk][roles]")
{
    House house;
    const auto patient = house.desk().registerPatient("Odile Brandt", "+00 555 0102", "en");
    REQUIRE(patient);
    auto treatment = house.desk().blankTreatment(*patient);
    treatment.placements = test::sampleTreatment().placements;
    treatment.weightKg = 62;
    house.giveRoles();
    house.desk().setPerson(mina);
    const auto before = house.operations();
    const auto refused = [](const Done& done) { return !done && done.error().reason == Reason::refused; };

    CHECK(refused(house.desk().recordTreatment(treatment)));
    CHECK(refused(house.desk().recordFollowUp({house.course, records::GlobalChange::better, 4, {}, true, "none", "in a year", "", {}})));
    CHECK(refused(house.desk().act(house.course, house.finding, Act::closed, Outcome::reassured)));
    CHECK(refused(house.desk().signProtocol(triggers::defaultProtocol())));
    CHECK(refused(house.desk().useBand("seed-1", "because")));
    CHECK(refused(house.desk().signWithBand(triggers::defaultProtocol(), "because")));
    CHECK(refused(house.desk().limitDose({.plainCapMg = 200})));
    CHECK(refused(house.desk().describeClinic(described({ada, jonas, mina, "Odo Lind"}))));
    CHECK(refused(house.desk().giveRole(jonas, Role::inCharge)));
    REQUIRE(house.desk().allowStep(test::passphrase));
    CHECK(refused(house.desk().describeClinic(described({ada, jonas, mina}, "+00 555 0666"))));
    CHECK(refused(house.desk().beginEpoch()));
    desk::Inviting inviting(house.desk(), house.world.clock, desk::Inviting::NewDesk::plain);
    inviting.start(house.world.courier, [] {});
    CHECK(inviting.step() == desk::Inviting::Step::failed);
    CHECK(house.operations() == before);

    // The draft is kept: who may record it finds it.
    CHECK(house.desk().keepDraft(treatment));
    house.desk().setPerson(ada);
    CHECK(house.desk().recordTreatment(treatment));
}

TEST_CASE("an assistant ends a lost phone, and the colleague on call closes a finding", "[desk][roles]")
{
    House house;
    house.giveRoles();
    house.desk().setPerson(jonas);
    CHECK(house.desk().act(house.course, house.finding, Act::closed, Outcome::advised));
    house.desk().setPerson(mina);
    REQUIRE(house.desk().allowStep(test::passphrase));
    CHECK(house.desk().endPhone(house.course));
}

TEST_CASE("somebody always remains who may name people", "[desk][roles]")
{
    House house;
    REQUIRE(house.desk().giveRole(jonas, Role::onCall));
    REQUIRE(house.desk().giveRole(mina, Role::assistant));
    CHECK(house.desk().giveRole(ada, Role::practitioner).error().reason == Reason::notEnough);
    CHECK(house.desk().giveRole("Odo Lind", Role::inCharge).error().reason == Reason::notFound);
    CHECK(house.desk().describeClinic(described({jonas, mina})).error().reason == Reason::notEnough);
    CHECK(house.desk().whoMay(Task::people) == std::vector<std::string>{ada});

    REQUIRE(house.desk().giveRole(jonas, Role::inCharge));
    REQUIRE(house.desk().giveRole(ada, Role::practitioner));
    CHECK(house.desk().giveRole(mina, Role::onCall).error().reason == Reason::refused);
    house.desk().setPerson(jonas);
    REQUIRE(house.desk().describeClinic(described({jonas, mina})));
}

TEST_CASE("once roles are given, what carries no name is listed with who did it", "[desk][roles][traces]")
{
    House house;
    house.giveRoles();
    REQUIRE(house.desk().signProtocol(triggers::defaultProtocol()));
    (void)house.world.treat("Rosa Quint");

    for (const records::Kind kind : {records::Kind::protocolSigned, records::Kind::treatmentRecorded}) {
        const auto all = house.traces();
        const auto newest = std::ranges::find(all, kind, &desk::Trace::kind);
        REQUIRE(newest != all.end());
        CHECK(newest->by == ada);
        CHECK_FALSE(newest->beyondRole);
    }
    const auto all = house.traces();
    CHECK(std::ranges::none_of(all, [](const desk::Trace& trace) { return trace.kind == records::Kind::workDone; }));
    CHECK(std::ranges::any_of(all, [](const desk::Trace& trace) { return trace.person == mina && trace.role == Role::assistant; }));
}

TEST_CASE("what another desk wrote against a role is in the list and marked, and nothing of it is lost", "[desk][roles][traces]")
{
    House house;
    house.giveRoles();
    // As a desk writes it that has not heard of the roles.
    const auto now = house.desk().now();
    REQUIRE(house.desk().vault().append({records::FindingActed{house.course, house.finding, Act::closed, Outcome::reassured, mina, {}, now},
                                         records::FindingActed{house.course, house.finding, Act::called, Outcome::none, mina, {}, now}},
                                        now));

    const auto all = house.traces();
    REQUIRE(all.size() >= 2);
    CHECK(all[0].act == Act::called);
    CHECK_FALSE(all[0].beyondRole);
    CHECK(all[1].act == Act::closed);
    CHECK(all[1].beyondRole);
    CHECK(all[1].task == Task::close);
    CHECK(house.desk().course(house.course)->state->acts.size() == 2);
}

TEST_CASE("a photograph of the clinic's is put in by every role, undone by who put it in, and taken back by who may treat", "[desk][roles][photos]")
{
    House house;
    house.giveRoles();
    const bytes::Bytes picture = test::sampleJpegOf(1000);
    house.desk().setPerson(ada);
    const auto hers = house.desk().addClinicPhoto(house.course, picture, photos::Pose::front);
    house.desk().setPerson(mina);
    const auto own = house.desk().addClinicPhoto(house.course, picture, photos::Pose::leftOblique);
    REQUIRE(hers);
    REQUIRE(own);
    CHECK(house.desk().takeBackPhoto(house.course, *hers).error().reason == Reason::refused);
    CHECK(house.desk().photo(house.course, *hers));
    CHECK(house.desk().takeBackPhoto(house.course, *own));
    house.desk().setPerson(ada);
    CHECK(house.desk().takeBackPhoto(house.course, *hers));
}
