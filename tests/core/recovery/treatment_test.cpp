// What a treatment may hold, and what mirroring a placement does.

#include "core/recovery/treatment.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <cmath>

using namespace ebbline;
using namespace ebbline::recovery;

namespace {

Placement soundPlacement()
{
    Placement placement;
    placement.side = Side::left;
    placement.zone = Zone::jawline;
    placement.view = ChartView::leftOblique;
    placement.entry = {250, 120};
    placement.end = {230, 340};
    placement.lot = "K-2207";
    placement.expiry = "2028-02-29";
    placement.anaestheticMl = 0.4;
    return placement;
}

Treatment soundTreatment()
{
    Treatment treatment;
    treatment.course.value[0] = 1;
    treatment.patient.value[0] = 2;
    treatment.placements = {soundPlacement(), mirrored(soundPlacement())};
    treatment.weightKg = 62.5;
    treatment.baseline.emplace(Stream{Symptom::swelling, Side::left}, *Score::of(2));
    return treatment;
}

}  // namespace

TEST_CASE("a treatment with a placement on each side is accepted", "[recovery][treatment]")
{
    CHECK(check(soundTreatment()));
}

TEST_CASE("a placement that breaks a bound is refused by the field's name", "[recovery][treatment][errors]")
{
    struct Row {
        void (*breakIt)(Placement&);
        std::string field;
    };
    const auto row = GENERATE(
        Row{[](Placement& p) { p.side = Side::none; }, "side"},
        Row{[](Placement& p) { p.zone = static_cast<Zone>(10); }, "zone"},
        Row{[](Placement& p) { p.zone = static_cast<Zone>(0); }, "zone"},
        Row{[](Placement& p) { p.view = static_cast<ChartView>(4); }, "view"},
        Row{[](Placement& p) { p.entry.x = -0.1; }, "entry or end"},
        Row{[](Placement& p) { p.entry.x = 400.1; }, "entry or end"},
        Row{[](Placement& p) { p.end.y = 560.1; }, "entry or end"},
        Row{[](Placement& p) { p.end.y = std::nan(""); }, "entry or end"},
        Row{[](Placement& p) { p.end = p.entry; }, "end"},
        Row{[](Placement& p) { p.ending = static_cast<Ending>(0); }, "ending"},
        Row{[](Placement& p) { p.material = static_cast<Material>(6); }, "material"},
        Row{[](Placement& p) { p.form = static_cast<Form>(7); }, "form"},
        Row{[](Placement& p) { p.gauge = 13; }, "gauge"},
        Row{[](Placement& p) { p.gauge = 33; }, "gauge"},
        Row{[](Placement& p) { p.lengthMm = 9; }, "length"},
        Row{[](Placement& p) { p.lengthMm = 501; }, "length"},
        Row{[](Placement& p) { p.lot = std::string(41, 'x'); }, "lot"},
        Row{[](Placement& p) { p.lot = "\xff"; }, "lot"},
        Row{[](Placement& p) { p.expiry = "2027-02-29"; }, "expiry"},
        Row{[](Placement& p) { p.expiry = "06/2029"; }, "expiry"},
        Row{[](Placement& p) { p.expiry = ""; }, "expiry"},
        Row{[](Placement& p) { p.anaestheticMl = -0.01; }, "anaesthetic"},
        Row{[](Placement& p) { p.anaestheticMl = 20.01; }, "anaesthetic"},
        Row{[](Placement& p) { p.anaestheticMl = INFINITY; }, "anaesthetic"},
        Row{[](Placement& p) { p.instrument = static_cast<Instrument>(0); }, "instrument"},
        Row{[](Placement& p) { p.instrument = static_cast<Instrument>(3); }, "instrument"},
        Row{[](Placement& p) { p.instrumentLengthMm = 9; }, "instrument length"},
        Row{[](Placement& p) { p.instrumentLengthMm = 501; }, "instrument length"},
        Row{[](Placement& p) { p.epinephrineAt = static_cast<EpinephrineAt>(0); }, "epinephrine"},
        Row{[](Placement& p) { p.epinephrineAt = static_cast<EpinephrineAt>(5); }, "epinephrine"});
    Treatment treatment = soundTreatment();
    row.breakIt(treatment.placements[1]);

    const Done alone = check(treatment.placements[1]);
    const Done inTreatment = check(treatment);

    REQUIRE_FALSE(alone);
    CHECK(alone.error().detail.starts_with(row.field + ":"));
    REQUIRE_FALSE(inTreatment);
    CHECK(inTreatment.error().detail.starts_with("placement 2: " + row.field + ":"));
}

TEST_CASE("every bound itself is still accepted", "[recovery][treatment][boundary]")
{
    Placement placement = soundPlacement();
    placement.entry = {0, 0};
    placement.end = {chartWidth, chartHeight};
    placement.gauge = GENERATE(14, 32);
    placement.lengthMm = GENERATE(10, 500);
    placement.anaestheticMl = GENERATE(0.0, 20.0);
    placement.instrumentLengthMm = GENERATE(10, 500);
    placement.lot = std::string(40, 'x');
    placement.expiry.reset();
    CHECK(check(placement));
}

TEST_CASE("a treatment that breaks a bound is refused by the field's name", "[recovery][treatment][errors]")
{
    struct Row {
        void (*breakIt)(Treatment&);
        std::string field;
    };
    const auto row = GENERATE(
        Row{[](Treatment& t) { t.course = {}; }, "treatment"},
        Row{[](Treatment& t) { t.patient = {}; }, "treatment"},
        Row{[](Treatment& t) { t.placements.clear(); }, "placements"},
        Row{[](Treatment& t) { t.placements.assign(61, soundPlacement()); }, "placements"},
        Row{[](Treatment& t) { t.anaesthetic.drug = static_cast<Drug>(3); }, "drug"},
        Row{[](Treatment& t) { t.anaesthetic.percent = 0; }, "percent"},
        Row{[](Treatment& t) { t.anaesthetic.percent = 4.1; }, "percent"},
        Row{[](Treatment& t) { t.anaesthetic.percent = std::nan(""); }, "percent"},
        Row{[](Treatment& t) { t.anaesthetic.epinephrineOneIn = 200'000; }, "epinephrine"},
        Row{[](Treatment& t) { t.anaesthetic.drug = Drug::lidocaineWithEpinephrine; }, "epinephrine"},
        Row{[](Treatment& t) { t.anaesthetic.bicarbonatePart = 1.1; }, "bicarbonate"},
        Row{[](Treatment& t) { t.anaesthetic.extraMl = 100.5; }, "extra"},
        Row{[](Treatment& t) { t.weightKg = 29.9; }, "weight"},
        Row{[](Treatment& t) { t.weightKg = 300.1; }, "weight"},
        Row{[](Treatment& t) { t.weightKg = std::nan(""); }, "weight"},
        Row{[](Treatment& t) { t.otherwiseMg = -0.1; }, "given otherwise"},
        Row{[](Treatment& t) { t.otherwiseMg = 1000.1; }, "given otherwise"},
        Row{[](Treatment& t) { t.otherwiseMg = std::nan(""); }, "given otherwise"},
        Row{[](Treatment& t) { t.baseline.emplace(Stream{Symptom::pain, Side::none}, *Score::of(1)); }, "side"},
        Row{[](Treatment& t) { t.note = std::string(4001, 'x'); }, "note"});
    Treatment treatment = soundTreatment();
    row.breakIt(treatment);

    const Done checked = check(treatment);

    REQUIRE_FALSE(checked);
    CHECK(checked.error().detail.starts_with(row.field + ":"));
}

TEST_CASE("without a weight the treatment is still recorded", "[recovery][treatment]")
{
    Treatment treatment = soundTreatment();
    treatment.weightKg.reset();
    CHECK(check(treatment));
}

TEST_CASE("the mirrored placement lies on the other side, as far from the middle", "[recovery][mirror]")
{
    const Placement other = mirrored(soundPlacement());

    CHECK(other.side == Side::right);
    CHECK(other.entry == ChartPoint{150, 120});
    CHECK(other.end == ChartPoint{170, 340});
}

TEST_CASE("an oblique view is exchanged for the other, the front view stays", "[recovery][mirror]")
{
    Placement placement = soundPlacement();
    CHECK(mirrored(placement).view == ChartView::rightOblique);
    placement.view = ChartView::rightOblique;
    CHECK(mirrored(placement).view == ChartView::leftOblique);
    placement.view = ChartView::front;
    CHECK(mirrored(placement).view == ChartView::front);
}

TEST_CASE("mirroring twice is mirroring never, and keeps a sound placement sound", "[recovery][mirror][property]")
{
    CHECK(rc::check("mirror", [] {
        Placement placement = soundPlacement();
        // Quarter units are exact in binary, so that the law holds to the last bit.
        const auto point = [] {
            return ChartPoint{*rc::gen::inRange(0, 1601) / 4.0, *rc::gen::inRange(0, 2241) / 4.0};
        };
        placement.entry = point();
        placement.end = point();
        placement.side = *rc::gen::elementOf(bothSides);
        placement.view = static_cast<ChartView>(*rc::gen::inRange(1, 4));

        RC_ASSERT(mirrored(mirrored(placement)) == placement);
        RC_ASSERT(check(mirrored(placement)).has_value() == check(placement).has_value());
        RC_ASSERT(mirrored(placement).lot == placement.lot);
        RC_ASSERT(mirrored(placement).anaestheticMl == placement.anaestheticMl);
    }));
}

TEST_CASE("a thread that was redone needs its reason, and its twin on the other side was not redone", "[recovery][redone]")
{
    Placement placement = soundPlacement();
    placement.redone = Redone{Redoing::replaced, "it stood under the skin"};
    CHECK(check(placement));
    CHECK_FALSE(mirrored(placement).redone);

    placement.redone->reason.clear();
    CHECK(check(placement).error().reason == Reason::malformed);
    placement.redone = Redone{static_cast<Redoing>(3), "why"};
    CHECK(check(placement).error().reason == Reason::outOfRange);
    placement.redone = Redone{Redoing::added, std::string(401, 'x')};
    CHECK(check(placement).error().reason == Reason::malformed);
}

TEST_CASE("a thread has no epinephrine of a solution without, and its twin says what it says", "[recovery][treatment][errors]")
{
    Treatment treatment = soundTreatment();
    Placement& thread = treatment.placements[1];
    thread.instrument = Instrument::bluntCannula;
    thread.instrumentLengthMm = 90;
    thread.epinephrineAt = EpinephrineAt::nowhere;
    CHECK(check(treatment));
    thread.epinephrineAt = GENERATE(EpinephrineAt::entryPoint, EpinephrineAt::track, EpinephrineAt::both);
    const Done checked = check(treatment);
    REQUIRE_FALSE(checked);
    CHECK(checked.error().detail.starts_with("placement 2: epinephrine:"));
    treatment.anaesthetic.drug = Drug::lidocaineWithEpinephrine;
    treatment.anaesthetic.epinephrineOneIn = 200'000;
    CHECK(check(treatment));

    const Placement twin = mirrored(thread);
    CHECK(twin.instrument == thread.instrument);
    CHECK(twin.instrumentLengthMm == thread.instrumentLengthMm);
    CHECK(twin.epinephrineAt == thread.epinephrineAt);
}

TEST_CASE("the product of a lot is 14 digits whose last one checks the others, and stands only beside a lot", "[recovery][treatment][errors]")
{
    // By hand, weights 3 and 1 in turn: 0 + 9 + 15 + 0 + 18 + 0 + 0 + 0 + 3 + 3 + 12 + 3 + 15 = 78, so the last digit is 2.
    Placement placement = soundPlacement();
    placement.article = "09506000134352";
    CHECK(check(placement));
    for (const char* wrong : {"", "09506000134353", "9506000134352", "0950600013435A", "009506000134352"}) {
        CAPTURE(wrong);
        placement.article = wrong;
        CHECK(check(placement).error().reason == Reason::malformed);
    }
    placement.article = "09506000134352";
    CHECK(mirrored(placement).article == placement.article);
    placement.lot.clear();
    CHECK(check(placement).error().reason == Reason::malformed);
}

TEST_CASE("a plan that names a pack, an anaesthetic or a redoing is none, nor is one of more threads than a face takes", "[recovery][treatment][errors]")
{
    Treatment treatment = soundTreatment();
    treatment.planned = {asPlanned(soundPlacement())};
    CHECK(check(treatment));
    treatment.planned[0].lot = "TH-1";
    CHECK(check(treatment).error().detail.starts_with("planned 1: "));
    treatment.planned[0] = asPlanned(soundPlacement());
    treatment.planned[0].gauge = 40;
    CHECK(check(treatment).error().reason == Reason::outOfRange);
    treatment.planned.assign(61, asPlanned(soundPlacement()));
    CHECK(check(treatment).error().reason == Reason::outOfRange);
}
