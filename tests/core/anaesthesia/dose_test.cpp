// Lidocaine against the label.
//
// Source: US labels as openFDA gives their text. Lidocaine HCl injection: plain, adult, at most 4.5 mg/kg (2 mg/lb), in general
// not over 300 mg in all. Lidocaine HCl with and without epinephrine: with it 7 mg/kg, in general not over 500 mg in all. The
// labels' tables: 0.5, 1, 1.5 and 2 % are 5, 10, 15 and 20 mg/mL; 1:100,000 and 1:200,000 are 10 and 5 micrograms/mL. Of
// whose label and of which year the text was is not on record, nor the sections of the maxima.
// The figures below are these numbers multiplied out.

#include "core/anaesthesia/dose.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <limits>

using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::anaesthesia;
using recovery::Drug;

namespace {

recovery::Treatment treatmentWith(Drug drug, double percent, std::optional<double> weightKg, double ml)
{
    recovery::Treatment treatment;
    treatment.anaesthetic.drug = drug;
    treatment.anaesthetic.percent = percent;
    treatment.anaesthetic.epinephrineOneIn = drug == Drug::lidocaine ? 0 : 200'000;
    treatment.anaesthetic.extraMl = ml;
    treatment.weightKg = weightKg;
    return treatment;
}

}  // namespace

TEST_CASE("the maximum is the label's, in milligrams and millilitres", "[anaesthesia][published]")
{
    struct Row { Drug drug; double weight; double mg; double mlOfOnePercent; bool capped; };
    const auto row = GENERATE(Row{Drug::lidocaine, 60, 270, 27.0, false}, Row{Drug::lidocaine, 70, 300, 30.0, true},
                              Row{Drug::lidocaineWithEpinephrine, 60, 420, 42.0, false},
                              Row{Drug::lidocaineWithEpinephrine, 80, 500, 50.0, true});

    const auto dose = doseOf(treatmentWith(row.drug, 1.0, row.weight, 5));

    REQUIRE(dose);
    CHECK_THAT(dose->maximumMg.value(), WithinRel(row.mg, 1e-12));
    CHECK_THAT(dose->maximumMl.value(), WithinRel(row.mlOfOnePercent, 1e-12));
    CHECK(dose->capped == row.capped);
}

TEST_CASE("the cap starts at 300/4.5 and 500/7 kilograms", "[anaesthesia]")
{
    CHECK(maximumMg(Drug::lidocaine, 66.66).value() < 300);
    CHECK(maximumMg(Drug::lidocaine, 66.67).value() == 300);
    CHECK(maximumMg(Drug::lidocaineWithEpinephrine, 71.42).value() < 500);
    CHECK(maximumMg(Drug::lidocaineWithEpinephrine, 71.43).value() == 500);
}

TEST_CASE("percent becomes milligrams a millilitre, and buffering only dilutes", "[anaesthesia]")
{
    CHECK_THAT(concentration(0.5).value(), WithinRel(5.0, 1e-12));
    CHECK_THAT(concentration(2.0).value(), WithinRel(20.0, 1e-12));
    CHECK_THAT(concentration(1.0, 1.0 / 9).value(), WithinRel(9.0, 1e-12));
    CHECK_THAT(concentration(1.0, 1.0 / 10).value(), WithinRel(9.0909, 1e-4));
    CHECK_THAT(concentration(1.0, 1.0 / 3).value(), WithinRel(7.5, 1e-12));

    auto buffered = treatmentWith(Drug::lidocaine, 1.0, 60, 10);
    buffered.anaesthetic.bicarbonatePart = 1.0 / 9;
    CHECK_THAT(doseOf(buffered)->givenMg, WithinRel(90.0, 1e-12));  // 9 mL of 1 % and 1 mL bicarbonate
}

TEST_CASE("tracks and what was given beside them are summed, and tracks over half a millilitre are named", "[anaesthesia]")
{
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 60, 2);
    for (const double ml : {0.4, 0.5, 0.6}) {
        recovery::Placement placement;
        placement.anaestheticMl = ml;
        treatment.placements.push_back(placement);
    }

    const auto dose = doseOf(treatment);

    REQUIRE(dose);
    CHECK_THAT(dose->givenMl, WithinRel(3.5, 1e-12));
    CHECK_THAT(dose->givenMg, WithinRel(35.0, 1e-12));
    CHECK_THAT(dose->epinephrineUg, WithinRel(17.5, 1e-12));
    CHECK(dose->tracksOverHalfMl == std::vector<int>{3});
    CHECK_FALSE(dose->overMaximum);
}

TEST_CASE("without a weight no maximum is shown, and with a wrong one none either", "[anaesthesia][errors]")
{
    CHECK_FALSE(doseOf(treatmentWith(Drug::lidocaine, 1.0, {}, 5))->maximumMg);
    for (const double weight : {0.0, -60.0, 29.9, std::numeric_limits<double>::quiet_NaN()})
        CHECK_FALSE(doseOf(treatmentWith(Drug::lidocaine, 1.0, weight, 5)));
    CHECK_FALSE(doseOf(treatmentWith(Drug::lidocaine, 0.0, 60, 5)));
}

TEST_CASE("more than the maximum is said, exactly the maximum is not", "[anaesthesia]")
{
    CHECK_FALSE(doseOf(treatmentWith(Drug::lidocaine, 1.0, 60, 27))->overMaximum);
    CHECK(doseOf(treatmentWith(Drug::lidocaine, 1.0, 60, 27.1))->overMaximum);
}

TEST_CASE("tracks that sum to exactly the maximum are not over it, however the sum rounds", "[anaesthesia]")
{
    // 90 tracks of 0.3 mL of 1 % are 270 mg, the maximum for 60 kg plain; added one by one they are a little more.
    const auto tracks = [](double percent, double ml, int count) {
        auto treatment = treatmentWith(Drug::lidocaine, percent, 60, 0);
        treatment.placements.resize(static_cast<std::size_t>(count));
        for (recovery::Placement& placement : treatment.placements)
            placement.anaestheticMl = ml;
        return treatment;
    };
    REQUIRE(doseOf(tracks(1.0, 0.3, 90))->givenMg > 270.0);
    CHECK_FALSE(doseOf(tracks(1.0, 0.3, 90))->overMaximum);
    CHECK_FALSE(doseOf(tracks(1.5, 0.3, 60))->overMaximum);
    // A hundredth of a millilitre more is seen.
    auto over = tracks(1.0, 0.3, 90);
    over.placements.front().anaestheticMl = 0.31;
    CHECK(doseOf(over)->overMaximum);
}

TEST_CASE("1.5 % and 1:100,000 are counted as what they are", "[anaesthesia]")
{
    // 1.5 % is 15 mg/mL; 1:100,000 is 1 g in 100,000 mL, 10 micrograms/mL.
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.5, 60, 12);
    treatment.anaesthetic.epinephrineOneIn = 100'000;

    const auto dose = doseOf(treatment);

    REQUIRE(dose);
    CHECK_THAT(dose->concentrationMgPerMl, WithinRel(15.0, 1e-12));
    CHECK_THAT(dose->givenMg, WithinRel(180.0, 1e-12));
    CHECK_THAT(dose->epinephrineUg, WithinRel(120.0, 1e-12));
    CHECK_THAT(dose->maximumMl.value(), WithinRel(28.0, 1e-12));  // 420 mg
    CHECK_FALSE(dose->overMaximum);
    treatment.anaesthetic.extraMl = 28;
    CHECK_FALSE(doseOf(treatment)->overMaximum);
    treatment.anaesthetic.extraMl = 28.1;
    CHECK(doseOf(treatment)->overMaximum);
}

TEST_CASE("what was given otherwise counts, and with any of it the plain maximum holds for all", "[anaesthesia]")
{
    // 60 kg: 420 mg with epinephrine, 270 mg plain. 20 mL of 1 % are 200 mg.
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 60, 20);
    CHECK(doseOf(treatment)->limitedAs == Drug::lidocaineWithEpinephrine);
    treatment.otherwiseMg = 50;

    const auto dose = doseOf(treatment);

    REQUIRE(dose);
    CHECK_THAT(dose->solutionMg, WithinRel(200.0, 1e-12));
    CHECK_THAT(dose->otherwiseMg, WithinRel(50.0, 1e-12));
    CHECK_THAT(dose->givenMg, WithinRel(250.0, 1e-12));
    CHECK_THAT(dose->givenMl, WithinRel(20.0, 1e-12));
    CHECK(dose->limitedAs == Drug::lidocaine);
    CHECK_THAT(dose->maximumMg.value(), WithinRel(270.0, 1e-12));
    CHECK_THAT(dose->maximumMl.value(), WithinRel(22.0, 1e-12));  // beside the 50 mg
    CHECK_FALSE(dose->overMaximum);

    treatment.otherwiseMg = 70;
    CHECK_FALSE(doseOf(treatment)->overMaximum);
    treatment.otherwiseMg = 70.1;
    CHECK(doseOf(treatment)->overMaximum);
    treatment.otherwiseMg = 400;  // nothing is left of this solution, never less than nothing
    CHECK(doseOf(treatment)->maximumMl.value() == 0);
}

TEST_CASE("where a clinic set the maximum with epinephrine below the plain one, giving some otherwise does not raise it", "[anaesthesia]")
{
    Limits limits;
    limits.epinephrineCapMg = 200;
    // 70 kg, 25 mL of 1 % are 250 mg: over the clinic's 200, under the 300 plain.
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 70, 25);
    CHECK(doseOf(treatment, limits)->overMaximum);
    treatment.otherwiseMg = 5;

    const auto dose = doseOf(treatment, limits);

    REQUIRE(dose);
    CHECK(dose->limitedAs == Drug::lidocaineWithEpinephrine);
    CHECK_THAT(dose->maximumMg.value(), WithinRel(200.0, 1e-12));
    CHECK(dose->overMaximum);
}

TEST_CASE("where some of the solution held epinephrine and some did not, the plain maximum holds for all of it", "[anaesthesia]")
{
    using recovery::EpinephrineAt;
    // 60 kg: 420 mg with epinephrine, 270 mg plain. 20 mL beside three tracks of 0.5 mL, of 1 % and 1:200,000.
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 60, 20);
    recovery::Placement thread;
    thread.anaestheticMl = 0.5;
    treatment.placements.assign(3, thread);
    const auto all = [&](std::optional<EpinephrineAt> at) {
        for (recovery::Placement& placement : treatment.placements)
            placement.epinephrineAt = at;
    };
    // Nobody says where, as in the treatments of an older program: the solution's word stands. Or all say that it was in all of it.
    for (const auto& whole : {std::optional<EpinephrineAt>(), std::optional(EpinephrineAt::both)}) {
        all(whole);
        const auto dose = doseOf(treatment);
        REQUIRE(dose);
        CHECK(dose->limitedAs == Drug::lidocaineWithEpinephrine);
        CHECK_FALSE(dose->epinephrineInPart);
        CHECK_THAT(dose->maximumMg.value(), WithinRel(420.0, 1e-12));
        CHECK_THAT(dose->epinephrineUg, WithinRel(107.5, 1e-12));  // 21.5 mL of 5 micrograms
    }

    // One thread alone says otherwise, or does not say where the others do.
    struct Row { std::optional<EpinephrineAt> at; double mostUg; };
    const auto row = GENERATE(Row{EpinephrineAt::nowhere, 105.0}, Row{EpinephrineAt::entryPoint, 107.5}, Row{EpinephrineAt::track, 107.5},
                              Row{std::nullopt, 107.5});
    treatment.placements[1].epinephrineAt = row.at;
    const auto dose = doseOf(treatment);
    REQUIRE(dose);
    CHECK(dose->epinephrineInPart);
    CHECK(dose->limitedAs == Drug::lidocaine);
    CHECK_THAT(dose->givenMg, WithinRel(215.0, 1e-12));
    CHECK_THAT(dose->maximumMg.value(), WithinRel(270.0, 1e-12));
    CHECK_THAT(dose->epinephrineUg, WithinRel(row.mostUg, 1e-12));
    CHECK_FALSE(dose->overMaximum);
    treatment.anaesthetic.extraMl = 26;  // 275 mg: within 420, over 270
    CHECK(doseOf(treatment)->overMaximum);
}

TEST_CASE("of a solution without, nothing that a thread says raises the maximum", "[anaesthesia]")
{
    using recovery::EpinephrineAt;
    auto treatment = treatmentWith(Drug::lidocaine, 1.0, 60, 20);
    treatment.placements.resize(2);
    const auto at = GENERATE(EpinephrineAt::nowhere, EpinephrineAt::both);
    for (recovery::Placement& placement : treatment.placements)
        placement.epinephrineAt = at;
    const auto dose = doseOf(treatment);
    REQUIRE(dose);
    CHECK(dose->limitedAs == Drug::lidocaine);
    CHECK_FALSE(dose->epinephrineInPart);
    CHECK_THAT(dose->maximumMg.value(), WithinRel(270.0, 1e-12));
    CHECK(dose->epinephrineUg == 0);
}

TEST_CASE("where a clinic set the maximum with epinephrine below the plain one, giving some without does not raise it", "[anaesthesia]")
{
    Limits limits;
    limits.epinephrineCapMg = 200;
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 70, 25);  // 250 mg: over the clinic's 200, under the 300 plain
    treatment.placements.resize(1);
    treatment.placements[0].epinephrineAt = recovery::EpinephrineAt::entryPoint;
    const auto dose = doseOf(treatment, limits);
    REQUIRE(dose);
    CHECK(dose->limitedAs == Drug::lidocaineWithEpinephrine);
    CHECK_THAT(dose->maximumMg.value(), WithinRel(200.0, 1e-12));
    CHECK(dose->overMaximum);
}

TEST_CASE("none given otherwise, or nothing said of it, changes no number", "[anaesthesia]")
{
    auto treatment = treatmentWith(Drug::lidocaineWithEpinephrine, 1.0, 60, 20);
    treatment.otherwiseMg = GENERATE(std::optional<double>(), std::optional(0.0));
    const auto dose = doseOf(treatment);
    REQUIRE(dose);
    CHECK_THAT(dose->givenMg, WithinRel(200.0, 1e-12));
    CHECK_THAT(dose->maximumMg.value(), WithinRel(420.0, 1e-12));
    for (const double wrong : {-1.0, 1000.1, std::numeric_limits<double>::quiet_NaN()}) {
        treatment.otherwiseMg = wrong;
        CHECK(doseOf(treatment).error().reason == Reason::outOfRange);
    }
}

TEST_CASE("a clinic lowers the limit but never raises it", "[anaesthesia]")
{
    Limits lower;
    lower.plainMgPerKg = 4.0;
    CHECK_THAT(maximumMg(Drug::lidocaine, 60, lower).value(), WithinRel(240.0, 1e-12));
    Limits higher;
    higher.plainMgPerKg = 9.0;
    higher.plainCapMg = 900;
    CHECK_THAT(maximumMg(Drug::lidocaine, 60, higher).value(), WithinRel(270.0, 1e-12));
    CHECK(maximumMg(Drug::lidocaine, 100, higher).value() == 300);
}

TEST_CASE("a clinic's limits are each above nothing and at most the label's", "[anaesthesia][boundary]")
{
    CHECK(check(Limits{}));
    CHECK(check(Limits{0.1, 1, 0.1, 1}));
    struct Row { Limits limits; std::string field; };
    const auto row = GENERATE(Row{{4.51, 300, 7, 500}, "plain:"}, Row{{0.09, 300, 7, 500}, "plain:"}, Row{{4.5, 300.1, 7, 500}, "plain, in all:"},
                              Row{{4.5, 0.9, 7, 500}, "plain, in all:"}, Row{{4.5, 300, 7.01, 500}, "with epinephrine:"},
                              Row{{4.5, 300, std::numeric_limits<double>::quiet_NaN(), 500}, "with epinephrine:"},
                              Row{{4.5, 300, 7, 501}, "with epinephrine, in all:"}, Row{{4.5, 300, 7, 0}, "with epinephrine, in all:"});
    const Done checked = check(row.limits);
    REQUIRE_FALSE(checked);
    CHECK(checked.error().reason == Reason::outOfRange);
    CHECK(checked.error().detail.starts_with(row.field));
}
