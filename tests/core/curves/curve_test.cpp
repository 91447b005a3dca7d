// A curve: what was scored, the smoothed course, the forecast, and figures that are only given
// when there is enough to say.

#include "core/curves/curve.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::curves;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");
constexpr recovery::Stream swelling{recovery::Symptom::swelling, recovery::Side::left};

/// Evening entries; -1 is a day without one.
Curve curveFrom(const std::vector<int>& days)
{
    std::vector<Sample> samples;
    for (std::size_t day = 0; day < days.size(); ++day) {
        if (days[day] < 0)
            continue;
        clock::Moment at = treated;
        at.at += std::chrono::hours(24 * day + 10);
        samples.push_back({at, *recovery::Score::of(days[day]), false, false});
    }
    return curveOf(swelling, treated, samples, bands::seedBand(), 21);
}

}  // namespace

TEST_CASE("a course without entries has a band and nothing else", "[curves]")
{
    const Curve curve = curveFrom({});

    CHECK(curve.band.size() == 22);
    CHECK(curve.provenance.assumption);
    CHECK(curve.points.empty());
    CHECK(curve.smoothed.empty());
    CHECK_FALSE(curve.forecast);
    CHECK_FALSE(curve.peak);
    CHECK_FALSE(curve.area);
    CHECK_FALSE(curve.halfLifeDays);
    CHECK_FALSE(curve.resolvedOnDay);
}

TEST_CASE("peak, area, half-life and resolution of a falling course", "[curves]")
{
    const Curve curve = curveFrom({4, 8, 6, 4, 3, 2, 1, 1, 0});

    REQUIRE(curve.peak);
    CHECK(curve.peak->points == 8);
    CHECK(static_cast<int>(curve.peak->day) == 1);
    // Trapezoids: 6 + 7 + 5 + 3.5 + 2.5 + 1.5 + 1 + 0.5.
    CHECK_THAT(curve.area.value(), WithinAbs(27.0, 1e-12));
    CHECK(curve.resolvedOnDay == 6);
    REQUIRE(curve.halfLifeDays);
    CHECK(*curve.halfLifeDays > 1.0);
    CHECK(*curve.halfLifeDays < 3.0);
}

TEST_CASE("a rise after resolving takes the resolution back", "[curves]")
{
    CHECK_FALSE(curveFrom({4, 1, 0, 3}).resolvedOnDay);
    CHECK(curveFrom({4, 1, 0, 3, 1, 1}).resolvedOnDay == 4);
}

TEST_CASE("missing days are marked, not filled with zeros", "[curves]")
{
    const Curve curve = curveFrom({4, -1, -1, 3, 3});

    REQUIRE(curve.smoothed.size() == 5);
    CHECK(curve.smoothed[0].observed);
    CHECK_FALSE(curve.smoothed[1].observed);
    CHECK_FALSE(curve.smoothed[2].observed);
    CHECK(curve.smoothed[1].points > 1.0);
}

TEST_CASE("a forecast needs three observed days and widens with silence", "[curves]")
{
    CHECK_FALSE(curveFrom({4, 5}).forecast);
    const Curve curve = curveFrom({3, 4, 4, 4, 3});
    REQUIRE(curve.forecast);
    CHECK(curve.forecast->day == 21);
    CHECK((curve.forecast->low <= curve.forecast->median && curve.forecast->median <= curve.forecast->high));
    CHECK((curve.forecast->probabilityOfThreeOrMore >= 0 && curve.forecast->probabilityOfThreeOrMore <= 1));

    const Curve high = curveFrom({6, 8, 8, 8, 8});
    REQUIRE(high.forecast);
    CHECK(high.forecast->high >= curve.forecast->high);
    CHECK(high.forecast->probabilityOfThreeOrMore > curve.forecast->probabilityOfThreeOrMore);
}

TEST_CASE("smoothed scores stay on the scale", "[curves]")
{
    for (const auto& days : {std::vector<int>{0, 0, 0, 0, 0}, std::vector<int>{10, 10, 10, 10, 10}})
        for (const Smoothed& day : curveFrom(days).smoothed) {
            CHECK(day.points >= 0);
            CHECK(day.points <= 10);
            CHECK(std::isfinite(day.points));
        }
}
