// A record of a treatment is corrected: what holds then, what stays, what the phone is told, and who may.

#include "core/bytes/text.h"
#include "core/desk/traces.h"
#include "tests/core/desk/clinic_world.h"

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Room {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();

    desk::Desk& desk() { return world.desk; }
    const journal::CourseState& state() { return *desk().course(course)->state; }
    desk::TreatmentCorrection begun(const char* reason = "the lot of the other tray")
    {
        auto correction = desk().beginCorrection(course);
        REQUIRE(correction);
        correction->treatment.corrected->reason = reason;
        return *correction;
    }
    desk::TreatmentCorrection otherLot(const char* lot = "TH-9")
    {
        auto correction = begun();
        correction.treatment.placements[0].lot = lot;
        return correction;
    }
    std::size_t operations() { return desk().vault().state().operations; }
};

bool asksForACall(const std::vector<triage::Finding>& findings)
{
    return std::ranges::any_of(findings, [](const triage::Finding& finding) { return finding.urgency == recovery::Urgency::callNow && finding.open; });
}

}  // namespace

TEST_CASE("a corrected record stands wherever the treatment does, and the former one stays on record", "[desk][correction]")
{
    Room room;
    const auto former = room.state().treatment->treatment;
    REQUIRE(room.desk().correctTreatment(room.otherLot()));
    const auto& state = room.state();
    REQUIRE(state.treatmentVersions.size() == 2);
    CHECK(state.treatmentVersions[0].value.treatment == former);
    CHECK(state.treatment->treatment.placements[0].lot == "TH-9");
    CHECK(state.treatment->treatment.corrected == recovery::Correction{"the lot of the other tray", "Dr. Ada Lund"});
    CHECK(state.treatmentVersions[1].supersedes == state.treatmentVersions[0].operation);
    CHECK_FALSE(state.isTreatmentCrossed());

    // What is learned from, told of a lot, and given to other programs.
    const auto past = room.desk().pastCourse(room.course);
    REQUIRE(past.has_value());
    CHECK(std::ranges::any_of(past->lots, [](const learning::PackLot& lot) { return lot.printed == "TH-9"; }));
    const auto bundle = room.desk().bundle(room.course, "Ebbline");
    REQUIRE(bundle);
    CHECK(bundle->find("TH-9") != std::string::npos);

    const auto traces = desk::traces(room.desk().vault().state(), room.desk().vault().operations());
    CHECK(traces.front().kind == records::Kind::treatmentRecorded);
    CHECK(traces.front().corrected);
    CHECK(traces.front().by == "Dr. Ada Lund");
}

TEST_CASE("a correction of a record that cannot be is refused, and nothing is written", "[desk][correction]")
{
    Room room;
    const auto before = room.operations();
    const auto reason = [&](const desk::TreatmentCorrection& correction) { return room.desk().correctTreatment(correction).error().reason; };
    CHECK(reason(room.begun()) == Reason::alreadyExists);
    auto correction = room.otherLot();
    correction.treatment.corrected->reason.clear();
    CHECK(reason(correction) == Reason::notEnough);
    correction.treatment.corrected.reset();
    CHECK(reason(correction) == Reason::notEnough);
    correction = room.otherLot();
    correction.treatment.patient = test::idOf<recovery::PatientTag>(77);
    CHECK(reason(correction) == Reason::refused);
    correction = room.otherLot();
    correction.treatment.course = test::idOf<recovery::CourseTag>(77);
    CHECK(reason(correction) == Reason::notFound);
    correction = room.otherLot();
    correction.treatment.placements.clear();
    CHECK(reason(correction) == Reason::outOfRange);
    room.desk().setPerson({});
    CHECK(reason(room.otherLot()) == Reason::invalidState);
    CHECK(room.operations() == before);
}

TEST_CASE("correcting a treatment is for whom recording one is, and says who did it", "[desk][correction][roles]")
{
    Room room;
    REQUIRE(room.desk().describeClinic({{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, "Europe/Berlin", {"Dr. Ada Lund", "Mina Orr"}}));
    REQUIRE(room.desk().giveRole("Dr. Ada Lund", records::Role::inCharge));
    REQUIRE(room.desk().giveRole("Mina Orr", records::Role::assistant));
    room.desk().setPerson("Mina Orr");
    CHECK(room.desk().correctTreatment(room.otherLot()).error().reason == Reason::refused);
    CHECK(room.state().treatmentVersions.size() == 1);
    REQUIRE(room.desk().keepCorrection(room.otherLot()));  // for whoever records it

    room.desk().setPerson("Dr. Ada Lund");
    REQUIRE(room.desk().correctTreatment(*room.desk().correction(room.course)));
    const auto traces = desk::traces(room.desk().vault().state(), room.desk().vault().operations());
    CHECK(traces.front().by == "Dr. Ada Lund");
    CHECK_FALSE(traces.front().beyondRole);
}

TEST_CASE("a correction is a draft of its own, beside the patient's, and goes once it is recorded", "[desk][correction][draft]")
{
    Room room;
    auto next = room.desk().blankTreatment(room.state().treatment->treatment.patient);
    next.note = "brow, next month";
    REQUIRE(room.desk().keepDraft(next));
    CHECK(room.desk().correction(room.course).error().reason == Reason::notFound);
    auto correction = room.otherLot();
    correction.treatment.placements.clear();  // half written
    correction.treatment.corrected->reason.clear();
    REQUIRE(room.desk().keepCorrection(correction));
    CHECK(room.desk().correction(room.course) == correction);
    CHECK(room.desk().draft(next.patient) == next);
    CHECK(room.desk().drafted()->size() == 1);

    REQUIRE(room.desk().keepCorrection(room.otherLot()));
    REQUIRE(room.desk().correctTreatment(room.otherLot()));
    CHECK(room.desk().correction(room.course).error().reason == Reason::notFound);
    CHECK(room.desk().draft(next.patient) == next);

    REQUIRE(room.desk().vault().keep("treatment-correction/" + bytes::toHex(room.course.view()), bytes::viewOf("no draft")));
    CHECK(room.desk().correction(room.course).error().reason == Reason::malformed);
    REQUIRE(room.desk().correctTreatment(room.otherLot("TH-8")));
    CHECK(room.desk().vault().kept("treatment-correction/" + bytes::toHex(room.course.view())).has_value());
}

TEST_CASE("the plan that was recorded stays with a correction, unless it is dropped", "[desk][correction]")
{
    Room room;
    auto correction = room.begun();
    correction.treatment.planned = {recovery::asPlanned(correction.treatment.placements[0])};
    REQUIRE(room.desk().correctTreatment(correction));
    REQUIRE(room.desk().correctTreatment(room.otherLot()));
    CHECK(room.state().treatment->treatment.planned.size() == 1);
    correction = room.begun();
    correction.treatment.planned.clear();
    REQUIRE(room.desk().correctTreatment(correction));
    CHECK(room.state().treatment->treatment.planned.empty());
}

TEST_CASE("two corrections of one record are both kept, the newest holds, and that they crossed is told", "[desk][correction]")
{
    Room room;
    const auto first = room.otherLot("TH-8");
    auto second = room.begun("weighed again");
    second.treatment.weightKg = 70;
    REQUIRE(room.desk().correctTreatment(first));
    REQUIRE(room.desk().correctTreatment(second));
    CHECK(room.state().isTreatmentCrossed());
    REQUIRE(room.state().treatmentVersions.size() == 3);
    // It stands in place of what holds at its desk, though its writer had not seen that.
    CHECK(room.state().treatmentVersions[2].supersedes == room.state().treatmentVersions[1].operation);
    CHECK(room.state().treatment->treatment.placements[0].lot != "TH-8");
    CHECK(room.state().treatment->treatment.weightKg == 70);
}

TEST_CASE("a corrected day goes to the phone with the next sync, and one that is no matter of it does not", "[desk][correction][phone]")
{
    Room room;
    auto& phone = room.world.join(room.course);
    const auto agreed = phone.course();
    REQUIRE(room.desk().correctTreatment(room.otherLot()));
    room.world.syncDesk();
    room.world.syncPhone(phone);
    CHECK(phone.course() == agreed);
    CHECK(room.state().formerCounts.empty());

    auto correction = room.begun("a day early");
    correction.treatment.at.at -= 24h;
    correction.treatment.baseline = {{{recovery::Symptom::swelling, recovery::Side::left}, *recovery::Score::of(4)}};
    REQUIRE(room.desk().correctTreatment(correction));
    CHECK(room.desk().summary(room.course)->treated == correction.treatment.at);
    CHECK(room.desk().summary(room.course)->day == 1);
    room.world.syncDesk();
    room.world.syncPhone(phone);
    CHECK(phone.course().treated == correction.treatment.at);
    CHECK(phone.course().baseline == correction.treatment.baseline);
    CHECK(phone.today().day == 1);
    // Nothing else of it is told anew.
    CHECK(phone.course().followUp == agreed.followUp);
    CHECK(phone.course().protocol == agreed.protocol);
    CHECK(phone.course().protocolSignature == agreed.protocolSignature);
    CHECK(phone.course().contacts == agreed.contacts);
}

TEST_CASE("what was raised by a wrong day stays raised when the day is corrected, at the desk and on the phone", "[desk][correction][phone]")
{
    Room room;
    auto& phone = room.world.join(room.course);
    room.world.clock.advance(20h);
    auto entry = room.world.entryOf(phone, 2, 2);
    // Twenty hours on nothing speaks for the numbing; five hours after the treatment it does.
    entry.present = {recovery::Sign::faceWeakness};
    const auto saved = phone.record(entry);
    REQUIRE(saved);
    room.world.syncPhone(phone);
    room.world.syncDesk();
    REQUIRE(asksForACall(room.desk().course(room.course)->findings));

    room.world.clock.advance(1h);
    auto correction = room.begun("it was in the evening");
    correction.treatment.at.at += 15h;
    REQUIRE(room.desk().correctTreatment(correction));
    const auto findings = room.desk().course(room.course)->findings;
    CHECK(asksForACall(findings));
    CHECK(std::ranges::any_of(findings, [](const triage::Finding& finding) { return finding.urgency == recovery::Urgency::callNow && finding.changedSince && finding.recounted; }));
    room.world.syncDesk();
    room.world.syncPhone(phone);
    CHECK(phone.course().treated == correction.treatment.at);
    CHECK(asksForACall(triage::findingsOf(phone.vault().state().courses.at(room.course), room.world.now())));

    // What she writes from then on is judged by the day that holds.
    auto later = room.world.entryOf(phone, 2, 2);
    later.present = {recovery::Sign::faceWeakness};
    const auto again = phone.record(later);
    REQUIRE(again);
    CHECK_FALSE(std::ranges::any_of(again->findings, [&](const triage::Finding& finding) {
        return finding.entry == again->entry && finding.urgency == recovery::Urgency::callNow;
    }));
}

TEST_CASE("a call that was asked for stays when the day is corrected, though the phone's clock runs an hour ahead", "[desk][correction][phone]")
{
    Room room;
    auto& phone = room.world.join(room.course);
    room.world.clock.advance(20h);
    const auto set = [&](std::chrono::minutes by) { room.world.clock.turnWall(room.world.clock.now() + by); };
    set(1h);
    auto entry = room.world.entryOf(phone, 2, 2);
    entry.present = {recovery::Sign::faceWeakness};
    REQUIRE(phone.record(entry));
    set(-1h);
    room.world.syncPhone(phone);
    room.world.syncDesk();
    REQUIRE(asksForACall(room.desk().course(room.course)->findings));

    room.world.clock.advance(5min);
    auto correction = room.begun("it was in the evening");
    correction.treatment.at.at += 16h;
    REQUIRE(room.desk().correctTreatment(correction));
    REQUIRE(room.state().formerCounts.back().until < room.state().entries.begin()->second.versions[0].stamp);
    CHECK(asksForACall(room.desk().course(room.course)->findings));
    room.world.syncDesk();
    room.world.syncPhone(phone);
    REQUIRE(phone.course().treated == correction.treatment.at);
    CHECK(asksForACall(triage::findingsOf(phone.vault().state().courses.at(room.course), room.world.now())));
}

TEST_CASE("a call that a phone asked for before it heard of a corrected day stands at the desk and on the phone", "[desk][correction][phone]")
{
    Room room;
    auto& phone = room.world.join(room.course);
    room.world.clock.advance(19h);
    auto correction = room.begun("it was in the evening");
    correction.treatment.at.at += 15h;
    REQUIRE(room.desk().correctTreatment(correction));
    room.world.syncDesk();
    room.world.clock.advance(1h);
    auto entry = room.world.entryOf(phone, 2, 2);
    entry.present = {recovery::Sign::faceWeakness};
    const auto saved = phone.record(entry);
    REQUIRE(saved);
    REQUIRE(asksForACall(saved->findings));
    room.world.syncPhone(phone);
    room.world.syncDesk();
    REQUIRE(phone.course().treated == correction.treatment.at);
    CHECK(asksForACall(triage::findingsOf(phone.vault().state().courses.at(room.course), room.world.now())));
    CHECK(asksForACall(room.desk().course(room.course)->findings));
}

TEST_CASE("where a course is counted by another day than its record says, recording that once more sets it right", "[desk][correction]")
{
    Room room;
    auto& phone = room.world.join(room.course);
    records::CourseOpened older = *room.state().opened;
    older.treated.at -= 24h;
    REQUIRE(room.desk().vault().append({older}, room.world.now(), std::nullopt));
    REQUIRE(room.state().isCountedOtherwise());
    REQUIRE(room.desk().correctTreatment(room.begun("it is right as it stands")));
    CHECK_FALSE(room.state().isCountedOtherwise());
    CHECK(room.state().opened->treated == room.state().treatment->treatment.at);
    CHECK(room.desk().correctTreatment(room.begun()).error().reason == Reason::alreadyExists);
    room.world.syncDesk();
    room.world.syncPhone(phone);
    CHECK(phone.course().treated == room.state().treatment->treatment.at);
}
