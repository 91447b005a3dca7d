// How honest a forecast is: on courses that taught nothing it misses no more often than it says, and a score of three
// or more comes about as often as it says; on courses drawn from its own model it is exact.

#include "core/bands/learn_band.h"
#include "core/clock/iso8601.h"
#include "core/curves/daily.h"
#include "core/rehearsal/invented_course.h"
#include "core/rehearsal/taught.h"
#include "core/statistics/distributions.h"
#include "core/statistics/proportions.h"

#include <catch2/catch_get_random_seed.hpp>
#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>
#include <optional>
#include <random>
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

/// Forecasts of three or more between two edges, and how often it came.
struct Bin {
    double upTo;
    long made = 0;
    long came = 0;
    double said = 0;  ///< sum of what was said to be likely
};
using Bins = std::array<Bin, 6>;
constexpr Bins noBins{{{.upTo = 0.01}, {.upTo = 0.03}, {.upTo = 0.08}, {.upTo = 0.2}, {.upTo = 0.4}, {.upTo = 1}}};

void take(Bins& bins, double said, bool came)
{
    Bin& bin = *std::find_if(bins.begin(), bins.end() - 1, [&](const Bin& each) { return said <= each.upTo; });
    ++bin.made;
    bin.came += came;
    bin.said += said;
}

/// What the exact interval says of how often it comes where so much was said.
statistics::Interval seenIn(const Bin& bin, double confidence)
{
    return statistics::clopperPearson(bin.came, bin.made, confidence).value();
}

void print(const Bins& bins)
{
    for (const Bin& bin : bins)
        if (bin.made > 0) {
            const auto seen = seenIn(bin, 0.95);
            std::cout << "  up to " << bin.upTo << ": " << bin.made << " forecasts, said "
                      << bin.said / static_cast<double>(bin.made) << ", came " << bin.came << " (" << seen.low << " to "
                      << seen.high << ")\n";
        }
}

/// Randomised probability integral transform of an answer: uniform if the forecast is right.
/// C. Czado, T. Gneiting, L. Held, "Predictive Model Assessment for Count Data", Biometrics 2009;65:1254-1261, on the
/// probability integral transform; a place is drawn evenly within the answer's own probability.
double transformed(const bands::Distribution& scores, int answer, double uniform)
{
    double below = 0;
    for (int k = 0; k < answer; ++k)
        below += scores[static_cast<std::size_t>(k)];
    return below + uniform * scores[static_cast<std::size_t>(answer)];
}

/// Kolmogorov's distance from uniform, times the root of the number: above 2.23 once in ten thousand times,
/// 2 exp(-2 d^2), if they are.
double distance(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const auto n = static_cast<double>(values.size());
    double furthest = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
        furthest = std::max({furthest, static_cast<double>(i + 1) / n - values[i], values[i] - static_cast<double>(i) / n});
    return furthest * std::sqrt(n);
}
constexpr double onceInTenThousand = 2.2254;

struct Tally {
    long made = 0;
    long above = 0;
    long below = 0;
    long width = 0;  ///< sum of high - low
    long threeOrMore = 0;         ///< courses that then scored three or more
    double threeExpected = 0;     ///< as many as the forecasts make likely
    double threeByBand = 0;       ///< as many as the band alone would have
    double threeVariance = 0;
    Bins bins = noBins;
    std::vector<double> transforms;
    long usualWidth = 0;  ///< of the band's own 10th to 90th centile
};

/// One stream of each course, in turn: streams of one patient are not independent, patients are.
Tally forecastsOf(const std::vector<KnownCourse>& judged, const bands::Band& band, int target, std::mt19937_64& random)
{
    std::uniform_real_distribution<double> share;
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
        take(tally.bins, three, *then >= 3);
        tally.transforms.push_back(transformed(curve.forecast->scores, *then, share(random)));
        for (std::size_t k = 3; k <= 10; ++k)
            tally.threeByBand += band.at(stream.symptom, target)[k];
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

    std::mt19937_64 random(seed);
    long misses = 0;
    for (const int target : {14, 21}) {
        const Tally tally = forecastsOf(judged, band, target, random);
        std::cout << "day " << target << ": " << tally.made << " forecasts, " << tally.above << " above, " << tally.below
                  << " below, mean width " << static_cast<double>(tally.width) / static_cast<double>(tally.made) << " against "
                  << static_cast<double>(tally.usualWidth) / static_cast<double>(tally.made) << "\n";
        CAPTURE(target, tally.made, tally.above, tally.below);
        REQUIRE(tally.made > heldOut / 3);
        misses += tally.above + tally.below;
        std::cout << "  three or more: " << tally.threeOrMore << ", expected " << tally.threeExpected << " +- "
                  << std::sqrt(tally.threeVariance) << ", by the band alone " << tally.threeByBand << "; distance of the transforms "
                  << distance(tally.transforms) << "\n";
        print(tally.bins);
        // Over all patients a forecast says as much as the band. Bounds: our choice; what wanders on and never returns
        // says two to four times as much.
        CHECK(tally.threeExpected < 1.5 * tally.threeByBand + 2);
        CHECK(tally.threeExpected > tally.threeByBand / 1.5 - 2);
        // How likely three or more is said to be is not far off to either side: four standard deviations.
        CHECK(std::abs(static_cast<double>(tally.threeOrMore) - tally.threeExpected) < 4 * std::sqrt(tally.threeVariance) + 1);
        // What is promised must not lie below what the exact interval of 99.9 % says of the misses.
        CHECK(statistics::clopperPearson(tally.above, tally.made, 0.999).value().low <= missed);
        CHECK(statistics::clopperPearson(tally.below, tally.made, 0.999).value().low <= missed);
    }
    CHECK(misses > 0);  // a forecast that nothing ever falls out of says nothing
}

namespace {

/// Courses of one stream drawn from the forecast's own model: the place in the band wanders and returns, days are
/// left out and answered twice.
struct Drawn {
    std::vector<double> transforms;
    Bins bins = noBins;
};

Drawn drawn(const bands::Band& truth, const bands::Band& believed, int count, std::mt19937_64& random)
{
    const clock::Moment treated = clock::parseIso8601("2027-03-01T10:00:00+01:00").value();
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> share;
    Drawn all;
    for (int i = 0; i < count; ++i) {
        const recovery::Symptom symptom = recovery::allSymptoms[static_cast<std::size_t>(i) % recovery::allSymptoms.size()];
        const statistics::OrdinalLevelModel place = curves::placeOf(truth.movement(symptom));
        const int madeAfter = std::uniform_int_distribution<int>(3, 14)(random);
        const int target = madeAfter + std::uniform_int_distribution<int>(1, 10)(random);
        double level = std::sqrt(place.share) * normal(random);
        const auto answer = [&](int day) {
            const double u = level + std::sqrt(1 - place.share) * normal(random);
            double upTo = 0;
            int points = 0;
            for (; points < 10; ++points)
                if (statistics::normalCdf(u) < (upTo += truth.at(symptom, day)[static_cast<std::size_t>(points)]))
                    break;
            return points;
        };
        std::vector<curves::Sample> past;
        for (int day = 0; day < target; ++day) {
            clock::Moment at = treated;
            at.at += std::chrono::hours(24 * day + 6);
            const bool writes = day <= madeAfter && (day < 3 || share(random) < 0.85);
            for (int times = writes ? share(random) < 0.2 ? 2 : 1 : 0; times > 0; --times)
                past.push_back({at, *recovery::Score::of(answer(day)), false, false});
            level = place.kept * level + std::sqrt((1 - place.kept * place.kept) * place.share) * normal(random);
        }
        const auto curve = curves::curveOf({symptom, recovery::Side::left}, treated, past, believed, target);
        REQUIRE(curve.forecast);
        const int then = answer(target);
        all.transforms.push_back(transformed(curve.forecast->scores, then, share(random)));
        take(all.bins, curve.forecast->probabilityOfThreeOrMore, then >= 3);
    }
    return all;
}

}  // namespace

TEST_CASE("on courses drawn from its own model a forecast is exact, and the same test finds one that is not", "[curves][forecast]")
{
    std::mt19937_64 random(Catch::getSeed());
    CAPTURE(Catch::getSeed());
    const bands::Band& band = bands::seedBand();
    const Drawn own = drawn(band, band, 4000, random);
    std::cout << "drawn from the model: distance of the transforms " << distance(own.transforms) << "\n";
    print(own.bins);
    CHECK(distance(own.transforms) < onceInTenThousand);
    int told = 0;
    for (const Bin& bin : own.bins) {
        if (bin.made == 0)
            continue;
        const auto seen = seenIn(bin, 0.9999);
        const double said = bin.said / static_cast<double>(bin.made);
        CAPTURE(bin.upTo, bin.made, bin.came, said);
        CHECK((seen.low <= said && said <= seen.high));
        told += bin.made > 100 ? 1 : 0;
    }
    CHECK(told >= 5);

    // Patients who do not keep the place that is believed: every score is drawn from the band anew.
    bands::Movements loose = band.movements();
    for (bands::Movement& movement : loose.score)
        movement.start = 0;
    const auto other = bands::Band::create(band.provenance(), band.table(), loose);
    REQUIRE(other);
    CHECK(distance(drawn(*other, band, 4000, random).transforms) > onceInTenThousand);
}
