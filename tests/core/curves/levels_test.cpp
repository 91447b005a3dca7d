// The smoother by days, the sides against each other, and how a forecast widens.

#include "core/clock/iso8601.h"
#include "core/curves/daily.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <array>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::curves;
using recovery::Symptom;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

Sample sampleOn(int day, int hour, int points)
{
    clock::Moment at = treated;
    at.at += std::chrono::hours(24 * day + hour - 10);
    return {at, *recovery::Score::of(points), false, false};
}

std::vector<Sample> evenings(const std::vector<int>& points)
{
    std::vector<Sample> samples;
    for (std::size_t day = 0; day < points.size(); ++day)
        if (points[day] >= 0)
            samples.push_back(sampleOn(static_cast<int>(day), 20, points[day]));
    return samples;
}

}  // namespace

TEST_CASE("the smoother by days agrees with the textbook one, entry by entry", "[curves][property]")
{
    // core/statistics runs one update per entry; here a day enters as its mean.
    CHECK(rc::check("same levels", [] {
        std::vector<Sample> samples;
        const int count = *rc::gen::inRange(1, 40);
        for (int i = 0; i < count; ++i)
            samples.push_back(sampleOn(*rc::gen::inRange(0, 22), *rc::gen::inRange(11, 23), *rc::gen::inRange(0, 11)));
        const Daily daily = dailyOf(samples, treated);
        const bands::Band& band = bands::seedBand();
        const auto ours = levelsOf(daily, band, Symptom::swelling);

        const bands::Movement& movement = band.movement(Symptom::swelling);
        std::vector<std::vector<double>> steps(ours.size());
        for (const DayOfScores& day : daily.days)
            for (std::size_t i = 0; i < day.count; ++i)
                steps[static_cast<std::size_t>(day.day - daily.days.front().day)].push_back(
                    band.z(Symptom::swelling, day.day, daily.scores[day.first + i]));
        const auto theirs = statistics::smooth({movement.noise, movement.drift, 0, movement.start}, steps);
        RC_ASSERT(theirs.has_value());
        RC_ASSERT(theirs->size() == ours.size());
        for (std::size_t i = 0; i < ours.size(); ++i) {
            RC_ASSERT(std::abs(ours[i].mean - (*theirs)[i].mean) < 1e-9);
            RC_ASSERT(std::abs(ours[i].variance - (*theirs)[i].variance) < 1e-9);
        }
    }));
}

TEST_CASE("the lower median of a day stays on the scale", "[curves]")
{
    const Daily daily = dailyOf(std::vector{sampleOn(2, 9, 5), sampleOn(2, 20, 2), sampleOn(0, 20, 4)}, treated);

    REQUIRE(daily.days.size() == 2);
    CHECK(daily.days[0].median == 4);
    CHECK(daily.days[1].median == 2);
}

TEST_CASE("a smoothed day without an entry is wider than its neighbours", "[curves]")
{
    const auto curve = smoothedCourse({Symptom::swelling, recovery::Side::left}, treated,
                                      evenings({4, 4, 4, -1, -1, -1, 3, 3}), bands::seedBand());

    REQUIRE(curve.size() == 8);
    CHECK_FALSE(curve[4].observed);
    CHECK(curve[1].high - curve[1].low < curve[4].high - curve[4].low);
    for (const Smoothed& day : curve) {
        CHECK(day.low <= day.points);
        CHECK(day.points <= day.high);
        CHECK((day.low >= 0 && day.high <= 10));
    }
}

TEST_CASE("the sides are compared on the days that have both", "[curves][asymmetry]")
{
    const auto asymmetry = asymmetryOf(evenings({4, 6, 5, -1, 3}), evenings({3, 2, 3, 3, 3}), treated);

    REQUIRE(asymmetry);
    CHECK(asymmetry->days == 4);
    CHECK_THAT(asymmetry->meanDifference, WithinAbs((1 + 4 + 2 + 0) / 4.0, 1e-12));
    CHECK(asymmetry->largest == 4);
    CHECK(asymmetry->largestDay == 1);
    CHECK_THAT(asymmetry->index.value_or(0), WithinAbs(7.0 / 29.0, 1e-12));
}

TEST_CASE("two days with both sides, or almost no points, are not enough to say", "[curves][asymmetry]")
{
    CHECK_FALSE(asymmetryOf(evenings({4, 6}), evenings({3, 2}), treated));
    CHECK_FALSE(asymmetryOf({}, evenings({3, 2, 1}), treated));
    const auto faint = asymmetryOf(evenings({1, 0, 0}), evenings({0, 0, 1}), treated);
    REQUIRE(faint);
    CHECK_FALSE(faint->index);
}

TEST_CASE("exchanging the sides changes the sign of the asymmetry and nothing else", "[curves][asymmetry]")
{
    const auto left = evenings({4, 6, 5, 4, 3});
    const auto right = evenings({3, 2, 3, 3, 1});
    const auto one = asymmetryOf(left, right, treated);
    const auto other = asymmetryOf(right, left, treated);

    REQUIRE((one && other));
    CHECK(one->meanDifference == -other->meanDifference);
    CHECK(one->largest == -other->largest);
    CHECK(*one->index == -*other->index);
}

TEST_CASE("with every day of silence a forecast goes from her own scores towards the band's", "[curves]")
{
    // One distribution on all days, every answer as usual as any other: what differs from day to day is
    // the forecast alone.
    bands::Band::Table table = bands::seedBand().table();
    for (auto& days : table)
        for (bands::Distribution& day : days)
            day.fill(1.0 / 11);
    const auto band = bands::Band::create(bands::seedBand().provenance(), table);
    REQUIRE(band);
    const recovery::Stream stream{Symptom::twinges, recovery::Side::left};
    constexpr int lastEntry = 3;
    const auto farFromBand = [](const Forecast& forecast) {
        double apart = 0;
        for (const double likely : forecast.scores)
            apart += std::abs(likely - 1.0 / 11) / 2;
        return apart;
    };
    for (const auto& points : {std::vector<int>{5, 5, 5, 5}, std::vector<int>{8, 9, 8, 8}, std::vector<int>{0, 1, 0, 0}}) {
        const auto samples = evenings(points);
        const auto forecastTo = [&](int day) { return curveOf(stream, treated, samples, *band, day).forecast.value(); };
        const bool usual = points.front() == 5;
        for (int day = lastEntry + 2; day <= 21; ++day) {
            CAPTURE(points, day);
            const Forecast yesterday = forecastTo(day - 1);
            const Forecast today = forecastTo(day);
            CHECK(farFromBand(today) < farFromBand(yesterday));
            // Around the middle it widens; high or low scores go back to it, and never past it.
            if (usual) {
                CHECK((today.low <= yesterday.low && today.median == 5 && today.high >= yesterday.high));
                CHECK(today.scores[0] > yesterday.scores[0]);
                CHECK(today.scores[10] > yesterday.scores[10]);
            }
            CHECK(std::abs(today.median - 5) <= std::abs(yesterday.median - 5));
        }
        CHECK(farFromBand(forecastTo(4)) > 0.2);
        CHECK(farFromBand(forecastTo(200)) < 0.01);
        if (!usual)
            CHECK(forecastTo(21).high - forecastTo(21).low > forecastTo(4).high - forecastTo(4).low);
    }
}

TEST_CASE("a place in the band is kept as the movement says, and lies in its bounds whatever that is", "[curves]")
{
    // By hand: share 0.6 / (0.6 + 0.2), kept^2 = 1 - 0.06 / 0.6.
    const auto place = placeOf({.noise = 0.2, .drift = 0.06, .start = 0.6});
    CHECK_THAT(place.share, WithinAbs(0.75, 1e-12));
    CHECK_THAT(place.kept * place.kept, WithinAbs(0.9, 1e-12));
    // No spread between patients: the band alone speaks. More drift than spread: nothing is kept.
    CHECK(placeOf({.noise = 0.2, .drift = 0.06, .start = 0}).share == 0);
    CHECK(placeOf({.noise = 0.2, .drift = 0.9, .start = 0.6}).kept == 0);
    const bands::Movement nearlyNoiseless{.noise = 1e-300, .drift = 0, .start = 1};
    bands::Movements movements = bands::assumedMovements();
    movements.score.fill(nearlyNoiseless);
    const auto band = bands::Band::create(bands::seedBand().provenance(), bands::seedBand().table(), movements);
    REQUIRE(band);
    // A patient without noise stays where she is: above the band, where 3, 3, 2 lie above it.
    CHECK(placeOf(nearlyNoiseless).share < 1);
    CHECK(scoresExpected(dailyOf(evenings({3, 3, 2}), treated), *band, Symptom::pain, 9) != band->at(Symptom::pain, 9));
}
