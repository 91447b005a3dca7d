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
