// A changed protocol over past and invented courses, before it is signed.
#include "core/desk/invented_past.h"
#include "core/desk/protocol_rehearsal.h"
#include "tests/core/desk/clinic_world.h"

using namespace ebbline;

namespace {

const rehearsal::KindFigures& of(const std::vector<rehearsal::KindFigures>& all, const std::string& kind)
{
    for (const auto& figures : all)
        if (figures.kind == kind)
            return figures;
    FAIL("no figures of " << kind);
    return all.front();
}

}  // namespace

TEST_CASE("a protocol against itself changes nothing, and an eager one flags more", "[desk][rehearsal]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    REQUIRE(desk::addInventedPast(world.desk, world.zone, {.courses = 24, .now = world.zone.moment(world.clock.now())}));
    const auto material = world.desk.rehearsalMaterial();
    CHECK(material.past.size() > 15);
    CHECK(material.treatedLately > 0);
    CHECK(material.past.front().input.treated.at > material.past.back().input.treated.at);
    const auto usual = triggers::defaultProtocol();

    const auto same = desk::rehearseProtocol(material, usual, usual, {});
    REQUIRE(same);
    CHECK(same->differences.empty());
    CHECK(same->inventedDifferences == 0);
    CHECK(same->before.pastAlerts == same->after.pastAlerts);
    REQUIRE(same->after.perWeek);
    CHECK(*same->after.perWeek == *same->before.perWeek);
    for (const auto& model : same->after.invented)
        CHECK(of(model, "plain").courses == desk::inventedPlain);

    auto eager = usual;
    eager.thresholds.level = 1;
    eager.thresholds.levelGuard = 1;
    const auto more = desk::rehearseProtocol(material, usual, eager, {});
    REQUIRE(more);
    for (std::size_t model = 0; model < desk::inventedModels.size(); ++model) {
        CHECK(of(more->after.invented[model], "plain").flagged > of(more->before.invented[model], "plain").flagged);
        CHECK(of(more->before.invented[model], "plain").flagged == of(same->before.invented[model], "plain").flagged);
    }
    CHECK(more->inventedDifferences > 0);
    // The two models share no formula, and what one protocol makes of them differs.
    CHECK(of(more->after.invented[0], "plain").alerts != of(more->after.invented[1], "plain").alerts);
}

TEST_CASE("who stands on the silent list, and how urgent a finding is, are compared too", "[desk][rehearsal]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    REQUIRE(desk::addInventedPast(world.desk, world.zone, {.courses = 24, .now = world.zone.moment(world.clock.now())}));
    const auto material = world.desk.rehearsalMaterial();
    const auto usual = triggers::defaultProtocol();

    auto patient = usual;
    patient.thresholds.silentDays = 6;
    patient.thresholds.silentDaysWhenHigh = 6;
    const auto later = desk::rehearseProtocol(material, usual, patient, {});
    REQUIRE(later);
    REQUIRE_FALSE(later->differences.empty());
    for (const auto& course : later->differences)
        CHECK(course.in == rehearsal::Respects{.silentList = true});
    CHECK(of(later->after.invented[0], "plain").silent < of(later->before.invented[0], "plain").silent);
    CHECK(of(later->after.invented[0], "plain").flagged == of(later->before.invented[0], "plain").flagged);
}

TEST_CASE("without a past course the invented ones speak alone, and a rehearsal stops when asked", "[desk][rehearsal]")
{
    const auto usual = triggers::defaultProtocol();
    const auto alone = desk::rehearseProtocol({}, usual, usual, {});
    REQUIRE(alone);
    CHECK_FALSE(alone->after.perWeek);
    CHECK(alone->pastCourses == 0);

    double last = -1;
    int asked = 0;
    const auto stopped = desk::rehearseProtocol({}, usual, usual, [&](double part) {
        CHECK(part >= last);
        last = part;
        return ++asked < 10;
    });
    REQUIRE_FALSE(stopped);
    CHECK(stopped.error().reason == Reason::refused);
    CHECK(asked == 10);
}

TEST_CASE("every signed version is kept, and a draft outlives the program", "[desk][protocol]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    auto protocol = triggers::defaultProtocol();
    CHECK(world.desk.protocolVersions(protocol.name).empty());
    for (int version = 1; version <= 3; ++version) {
        protocol.version = version;
        protocol.thresholds.silentDays = 2 + version;
        REQUIRE(world.desk.signProtocol(protocol));
    }
    const auto versions = world.desk.protocolVersions(protocol.name);
    REQUIRE(versions.size() == 3);
    CHECK(versions.front().protocol.version == 1);
    CHECK(versions.back().protocol == world.desk.protocols().front());

    CHECK_FALSE(world.desk.protocolDraft());
    protocol.carePlan.followUpDay = 24;
    REQUIRE(world.desk.keepProtocolDraft(protocol));
    REQUIRE(world.desk.protocolDraft());
    CHECK(world.desk.protocolDraft()->carePlan.followUpDay == 24);
    REQUIRE(world.desk.discardProtocolDraft());
    CHECK_FALSE(world.desk.protocolDraft());
}

TEST_CASE("a plan is kept beside the treatment and belongs to its course alone", "[desk][treatment]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    auto plan = world.desk.blankTreatment(recovery::PatientId{crypto::randomArray<16>()});
    plan.placements.push_back({});
    REQUIRE(world.desk.keepPlan(plan));
    CHECK(world.desk.plan(plan.course) == plan);
    CHECK_FALSE(world.desk.plan(recovery::CourseId{crypto::randomArray<16>()}));
    REQUIRE(world.desk.discardPlan(plan.course));
    CHECK_FALSE(world.desk.plan(plan.course));
}

TEST_CASE("recording a treatment takes its plan along, and keeps what an earlier record of it said", "[desk][treatment]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    auto treatment = world.desk.course(course)->state->treatment->treatment;
    CHECK(treatment.planned.empty());
    REQUIRE(world.desk.keepPlan(treatment));
    treatment.placements.pop_back();
    REQUIRE(world.desk.recordTreatment(treatment));
    CHECK_FALSE(world.desk.plan(course));
    const auto recorded = world.desk.course(course)->state->treatment->treatment;
    CHECK(recorded.planned.size() == treatment.placements.size() + 1);
    REQUIRE(world.desk.recordTreatment(recorded));
    CHECK(world.desk.course(course)->state->treatment->treatment.planned == recorded.planned);
}

TEST_CASE("each patient has a draft of her own, and nobody's becomes that of whoever is chosen", "[desk][treatment][draft]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    const auto enrol = [&](const char* name) {
        const auto made = world.desk.registerPatient(name, {}, "en");
        REQUIRE(made);
        return *made;
    };
    const auto first = enrol("Ada Quill");
    const auto second = enrol("Berta Lind");
    const auto drafted = [&] { return world.desk.drafted().value(); };
    CHECK(world.desk.draft(first).error().reason == Reason::notFound);
    CHECK(drafted().empty());

    auto hers = world.desk.blankTreatment(first);
    hers.weightKg = 80;
    auto anybodys = world.desk.blankTreatment({});
    anybodys.note = "of nobody";
    REQUIRE(world.desk.keepDraft(hers));
    REQUIRE(world.desk.keepDraft(anybodys));
    CHECK(drafted().size() == 2);
    CHECK(drafted().front().isNull());
    CHECK(world.desk.draft(first) == hers);
    CHECK(world.desk.draft(second).error().reason == Reason::notFound);

    anybodys.patient = second;
    REQUIRE(world.desk.handDraft(anybodys));
    CHECK(world.desk.draft(second) == anybodys);
    CHECK(world.desk.draft({}).error().reason == Reason::notFound);
    REQUIRE(world.desk.discardDraft(second));
    CHECK(drafted() == std::vector{first});
}

TEST_CASE("recording lets go of the draft of its course, and of no other", "[desk][treatment][draft]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    const auto patient = world.desk.registerPatient("Ada Quill", {}, "en");
    REQUIRE(patient);
    auto treatment = test::sampleTreatment();
    treatment.patient = *patient;
    auto another = world.desk.blankTreatment(*patient);
    REQUIRE(world.desk.keepDraft(another));
    REQUIRE(world.desk.recordTreatment(treatment));
    CHECK(world.desk.draft(*patient) == another);

    another.course = treatment.course;
    REQUIRE(world.desk.keepDraft(another));
    REQUIRE(world.desk.recordTreatment(treatment));
    CHECK(world.desk.draft(*patient).error().reason == Reason::notFound);
}

TEST_CASE("an older program's draft moves to its patient once she has none, and what cannot be read stays", "[desk][treatment][draft]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    const auto patient = world.desk.registerPatient("Ada Quill", {}, "en");
    REQUIRE(patient);
    auto& vault = world.desk.vault();
    const auto adopted = world.desk.adoptFormerDraft();
    REQUIRE(adopted);
    CHECK_FALSE(adopted->has_value());

    const bytes::Bytes garbage{'g'};
    REQUIRE(vault.keep("treatment-draft", garbage));
    CHECK_FALSE(world.desk.adoptFormerDraft());
    CHECK(vault.kept("treatment-draft") == garbage);

    const auto own = world.desk.blankTreatment(*patient);
    auto former = world.desk.blankTreatment(*patient);
    former.note = "of before";
    REQUIRE(vault.keep("treatment-draft", records::encode(records::TreatmentRecorded{former})));
    REQUIRE(world.desk.keepDraft(own));
    const auto waits = world.desk.adoptFormerDraft();
    REQUIRE(waits);
    CHECK_FALSE(waits->has_value());
    CHECK(world.desk.draft(*patient) == own);

    REQUIRE(world.desk.discardDraft(*patient));
    const auto moved = world.desk.adoptFormerDraft();
    REQUIRE(moved);
    CHECK(*moved == *patient);
    CHECK(world.desk.draft(*patient) == former);
    CHECK(vault.kept("treatment-draft").error().reason == Reason::notFound);
}

TEST_CASE("a draft that cannot be read is told apart from none, and neither recording nor signing lets it go", "[desk][treatment][protocol][draft]")
{
    test::ClinicWorld world;
    world.desk.setPerson("Ilan Osei");
    auto treatment = test::sampleTreatment();
    const auto patient = world.desk.registerPatient("Ada Quill", {}, "en");
    REQUIRE(patient);
    treatment.patient = *patient;
    REQUIRE(world.desk.keepDraft(treatment));
    const auto name = world.desk.vault().keptUnder("treatment-draft/").value().front().first;
    const bytes::Bytes garbage{'g'};
    REQUIRE(world.desk.vault().keep(name, garbage));
    REQUIRE(world.desk.vault().keep("protocol-draft", garbage));

    CHECK(world.desk.draft(*patient).error().reason != Reason::notFound);
    CHECK(world.desk.protocolDraft().error().reason != Reason::notFound);
    REQUIRE(world.desk.recordTreatment(treatment));
    auto protocol = triggers::defaultProtocol();
    REQUIRE(world.desk.signProtocol(protocol));
    CHECK(world.desk.vault().kept(name) == garbage);
    CHECK(world.desk.vault().kept("protocol-draft") == garbage);

    protocol.carePlan.instructions.push_back({});
    protocol.carePlan.instructions.back().kind = aftercare::InstructionKind::custom;
    REQUIRE(world.desk.keepProtocolDraft(protocol));
    REQUIRE(world.desk.protocolDraft());
    CHECK(world.desk.protocolDraft()->carePlan == protocol.carePlan);
}
