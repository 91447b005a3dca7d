// The anaesthetic in words. The amounts themselves are core's, checked there against the label.
#include "app/desk/model/dose_words.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;

namespace {

deskapp::DoseWords doseWords(const recovery::Treatment& treatment, const anaesthesia::Limits& limits = {})
{
    return deskapp::doseWords(treatment, limits);
}

recovery::Treatment given(double extraMl, std::optional<double> weightKg)
{
    recovery::Treatment treatment;
    treatment.anaesthetic.drug = recovery::Drug::lidocaineWithEpinephrine;
    treatment.anaesthetic.epinephrineOneIn = 200'000;
    treatment.anaesthetic.percent = 1;
    treatment.anaesthetic.extraMl = extraMl;
    treatment.weightKg = weightKg;
    return treatment;
}

}  // namespace

TEST_CASE("the limit is shown with whose limit it is", "[desk][dose]")
{
    // US prescribing information, lidocaine with epinephrine: 7 mg/kg, in general not over 500 mg;
    // so 420 mg for 60 kg.
    const auto words = doseWords(given(12, 60));

    CHECK(words.source.contains(QLatin1String("US label")));
    CHECK(words.maximum.contains(QLatin1String("420 mg")));
    CHECK(words.given.contains(QLatin1String("120 mg")));
    CHECK(words.warning.isEmpty());
}

TEST_CASE("without a weight no maximum is shown, and the weight is asked for", "[desk][dose]")
{
    const auto words = doseWords(given(12, std::nullopt));

    CHECK_FALSE(words.maximum.contains(QLatin1String("mg")));
    CHECK(words.share.isEmpty());
    CHECK(words.part == 0);
}

TEST_CASE("a weight that cannot be right gives no number at all", "[desk][dose]")
{
    const auto words = doseWords(given(12, 6));

    CHECK(words.given.isEmpty());
    CHECK(words.maximum.isEmpty());
    CHECK_FALSE(words.problem.isEmpty());
}

TEST_CASE("going over the maximum says so and by how much", "[desk][dose]")
{
    const auto words = doseWords(given(45, 60));  // 450 mg of 420

    CHECK(words.warning.contains(QLatin1String("30 mg")));
    CHECK(words.part > 1);
}

TEST_CASE("a lower limit of the clinic is named beside the label's, and never as the label's", "[desk][dose]")
{
    CHECK(doseWords(given(12, 60)).clinic.isEmpty());

    const auto words = doseWords(given(12, 60), {.epinephrineMgPerKg = 6.5, .epinephrineCapMg = 350});

    CHECK(words.source.contains(QLatin1String("Limit by US label, with epinephrine: 7.0 mg/kg, in general not over 500 mg")));
    CHECK(words.clinic.contains(QLatin1String("Your clinic's limit, with epinephrine: 6.5 mg/kg, not over 350 mg")));
    CHECK(words.maximum.contains(QLatin1String("At most 350 mg")));
    CHECK(words.maximum.contains(QLatin1String("(your clinic's cap)")));
    // What the clinic lowered for plain lidocaine alone says nothing of this solution.
    CHECK(doseWords(given(12, 60), {.plainMgPerKg = 4}).clinic.isEmpty());
}

TEST_CASE("what was given otherwise stands in the sum, and the lower limit says why it holds", "[desk][dose]")
{
    auto treatment = given(20, 60);  // 200 mg with epinephrine, of 420
    treatment.otherwiseMg = 83.5;    // and the plain maximum, 270 mg, holds for all

    const auto words = doseWords(treatment);

    CHECK(words.given.contains(QLatin1String("200 mg lidocaine")));
    CHECK(words.given.contains(QLatin1String("83.5 mg given otherwise, 284 mg in all")));
    CHECK(words.source.contains(QLatin1String("plain, the lower one, as some was given otherwise: 4.5 mg/kg")));
    CHECK(words.maximum.contains(QLatin1String("At most 270 mg, 18.6 mL")));
    CHECK(words.warning.contains(QLatin1String("14 mg")));
}

TEST_CASE("where not all of it had epinephrine, the lower limit says why it holds, and the epinephrine is at most so much", "[desk][dose]")
{
    auto treatment = given(20, 60);
    recovery::Placement thread;
    thread.anaestheticMl = 0.5;
    thread.epinephrineAt = recovery::EpinephrineAt::both;
    treatment.placements = {thread, thread};
    const auto whole = doseWords(treatment);
    CHECK(whole.given.contains(QLatin1String("210 mg lidocaine")));
    CHECK(whole.given.endsWith(QStringLiteral(" · 105 µg epinephrine")));
    CHECK(whole.maximum.contains(QLatin1String("At most 420 mg")));

    treatment.placements[1].epinephrineAt = recovery::EpinephrineAt::entryPoint;
    const auto words = doseWords(treatment);

    CHECK(words.given.endsWith(QStringLiteral(" · at most 105 µg epinephrine")));
    CHECK(words.source.contains(QLatin1String("plain, the lower one, as not all of it had epinephrine: 4.5 mg/kg")));
    CHECK(words.maximum.contains(QLatin1String("At most 270 mg")));
    treatment.anaesthetic.extraMl = 30;  // 310 mg of 270
    CHECK(doseWords(treatment).warning.contains(QLatin1String("40 mg")));
}

TEST_CASE("what many tracks sum to is neither over nor more over because the sum rounds", "[desk][dose]")
{
    const auto tracks = [](double ml, std::size_t count) {
        auto treatment = given(0, 60);
        treatment.placements.resize(count);
        for (recovery::Placement& placement : treatment.placements)
            placement.anaestheticMl = ml;
        return doseWords(treatment);
    };
    CHECK(tracks(0.1, 420).warning.isEmpty());  // 420 mg of 420
    CHECK(tracks(0.6, 75).warning.contains(QLatin1String("30 mg")));  // 450 mg of 420
}

TEST_CASE("a shown maximum is never larger than the limit", "[desk][dose]")
{
    // 61.3 kg * 7 mg/kg = 429.1 mg: 429 is shown, not 430.
    CHECK(doseWords(given(1, 61.3)).maximum.contains(QLatin1String("429 mg")));
}

TEST_CASE("a track with more than half a millilitre is named", "[desk][dose]")
{
    auto treatment = given(0, 60);
    recovery::Placement thin;
    thin.anaestheticMl = 0.4;
    recovery::Placement thick = thin;
    thick.anaestheticMl = 0.6;
    treatment.placements = {thin, thick};

    const auto words = doseWords(treatment);

    CHECK(words.tracks.contains(QLatin1String("track 2")));
    CHECK(words.tracks.contains(QLatin1String("common practice, no source")));
}
