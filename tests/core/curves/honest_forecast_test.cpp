// How honest a forecast is: on courses that taught nothing, it misses no more often than it says.

#include "core/bands/learn_band.h"
#include "core/curves/curve.h"
#include "core/rehearsal/invented_course.h"
#include "core/rehearsal/taught.h"
#include "core/statistics/proportions.h"

#include <catch2/catch_get_random_seed.hpp>
#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <cmath>
#include <iostream>
#include <optional>
#include <vector>

using namespace ebbline;
using rehearsal::Kind;
using rehearsal::KnownCourse;
using rehearsal::Model;

namespace {

constexpr int taught = 300;
constexpr int heldOut = 400;
constexpr int madeOn = 10;      // from what was written until then
constexpr double missed = 0.1;  // at most above, and at most below: 80 % between

std::vector<KnownCourse> courses(Model model, std::uint64_t seed, int from, int count)
{
    std::vector<KnownCourse> all;
    for (int i = from; i < from + count; ++i)
        all.push_back(rehearsal::invent({model, rehearsal::Rhythm::daily, seed}, Kind::plain, i));
    return all;
}

bands::Band bandFrom(const std::vector<KnownCourse>& teachers)
{
    std::vector<bands::TaughtCourse> days;
    std::vector<const triggers::CourseInput*> inputs;
    for (const KnownCourse& course : teachers) {
        days.push_back(rehearsal::taughtBy(course.input));
        inputs.push_back(&course.input);
    }
    const auto band = bands::learnBand(days, bands::seedBand(), bands::seedBand().provenance(),
                                       rehearsal::sidesMovement(inputs, bands::seedBand()));
    REQUIRE(band);
    return *band;
}

struct Tally {
    long made = 0;
    long above = 0;
    long below = 0;
    long width = 0;  ///< sum of high - low
    long threeOrMore = 0;         ///< courses that then scored three or more
    double threeExpected = 0;     ///< as many as the forecasts make likely
    double threeVariance = 0;
    long usualWidth = 0;  ///< of the band's own 10th to 90th centile
};

/// One stream of each course, in turn: streams of one patient are not independent, patients are.
Tally forecastsOf(const std::vector<KnownCourse>& judged, const bands::Band& band, int target)
{
    std::vector<recovery::Stream> streams;
    for (const auto symptom : {recovery::Symptom::pain, recovery::Symptom::swelling, recovery::Symptom::bruising,
                               recovery::Symptom::tightness, recovery::Symptom::twinges, recovery::Symptom::puckering})
        for (const auto side : {recovery::Side::left, recovery::Side::right})
            streams.push_back({symptom, side});
    Tally tally;
    for (std::size_t i = 0; i < judged.size(); ++i) {
        const recovery::Stream stream = streams[i % streams.size()];
        const triggers::CourseInput& input = judged[i].input;
        std::vector<curves::Sample> past;
        std::optional<int> then;
        for (const auto& observation : input.observations)
            for (const auto& [scored, score] : observation.scores) {
                const int day = clock::dayOfRecovery(input.treated, observation.at);
                if (scored == stream && day <= madeOn)
                    past.push_back({observation.at, score, false, false});
                else if (scored == stream && day == target)
                    then = score.points();
            }
        const auto curve = curves::curveOf(stream, input.treated, past, band, target);
        if (!then || !curve.forecast)
            continue;
        ++tally.made;
        tally.above += *then > curve.forecast->high;
        tally.below += *then < curve.forecast->low;
        tally.width += curve.forecast->high - curve.forecast->low;
        const double three = curve.forecast->probabilityOfThreeOrMore;
        tally.threeOrMore += *then >= 3;
        tally.threeExpected += three;
        tally.threeVariance += three * (1 - three);
        const bands::Range usual = band.inner(stream.symptom, target);
        tally.usualWidth += usual.high - usual.low;
    }
    return tally;
}

}  // namespace

TEST_CASE("on held-out courses a forecast is missed above and below no more often than it promises", "[curves][forecast]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    const std::uint64_t seed = Catch::getSeed();
    std::cout << "model " << (model == Model::decay ? "decay" : "steps") << ", seed " << seed
              << " (repeat with --rng-seed " << seed << ")\n";
    CAPTURE(seed);
    const bands::Band band = bandFrom(courses(model, seed, 0, taught));
    const std::vector<KnownCourse> judged = courses(model, seed, taught, heldOut);

    long misses = 0;
    for (const int target : {14, 21}) {
        const Tally tally = forecastsOf(judged, band, target);
        std::cout << "day " << target << ": " << tally.made << " forecasts, " << tally.above << " above, " << tally.below
                  << " below, mean width " << static_cast<double>(tally.width) / static_cast<double>(tally.made) << " against "
                  << static_cast<double>(tally.usualWidth) / static_cast<double>(tally.made) << "\n";
        CAPTURE(target, tally.made, tally.above, tally.below);
        REQUIRE(tally.made > heldOut / 3);
        misses += tally.above + tally.below;
        std::cout << "  three or more: " << tally.threeOrMore << ", expected " << tally.threeExpected << " +- "
                  << std::sqrt(tally.threeVariance) << "\n";
        // How likely three or more is said to be errs towards more, never towards fewer than come.
        CHECK(static_cast<double>(tally.threeOrMore) < tally.threeExpected + 4 * std::sqrt(tally.threeVariance));
        // What is promised must not lie below what the exact interval of 99.9 % says of the misses.
        CHECK(statistics::clopperPearson(tally.above, tally.made, 0.999).value().low <= missed);
        CHECK(statistics::clopperPearson(tally.below, tally.made, 0.999).value().low <= missed);
    }
    CHECK(misses > 0);  // a forecast that nothing ever falls out of says nothing
}
