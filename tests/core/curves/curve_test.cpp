// A curve: what was scored, the smoothed course, the forecast, and figures that are only given
// when there is enough to say.

#include "core/curves/curve.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
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
    // By hand, days since the peak against the logarithm of score + 1/2, up to the first zero:
    //   t           0       1       2       3       4        5        6        7
    //   score       8       6       4       3       2        1        1        0
    //   y = ln   2.14007 1.87180 1.50408 1.25276 0.91629  0.40547  0.40547 -0.69315
    //   mean t = 3.5, sum (t - 3.5)^2 = 2 (12.25 + 6.25 + 2.25 + 0.25) = 42
    //   sum (t - 3.5) y = 3.5 (-0.69315 - 2.14007) + 2.5 (0.40547 - 1.87180) + 1.5 (0.40547 - 1.50408)
    //                     + 0.5 (0.91629 - 1.25276) = -9.9162 - 3.6658 - 1.6479 - 0.1682 = -15.3982
    //   slope = -15.3982 / 42 = -0.36662, half-life = 0.693147 / 0.36662 = 1.8906
    CHECK_THAT(curve.halfLifeDays.value(), WithinAbs(1.8906, 5e-5));
}

TEST_CASE("the figures of a course shifted by some days are the same, their days shifted", "[curves][property]")
{
    CHECK(rc::check("shifted days", [] {
        // With gaps; the first day is an entry, so that the shift is of the whole course.
        std::vector<int> days = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-1, 11));
        days.resize(std::min<std::size_t>(days.size(), 15));
        days.insert(days.begin(), *rc::gen::inRange(0, 11));
        const int shift = *rc::gen::inRange(1, 7);
        std::vector<int> later(static_cast<std::size_t>(shift), -1);
        later.insert(later.end(), days.begin(), days.end());

        const Curve one = curveFrom(days);
        const Curve other = curveFrom(later);
        RC_ASSERT(one.peak && other.peak);
        RC_ASSERT(one.peak->points == other.peak->points);
        RC_ASSERT(static_cast<int>(one.peak->day) + shift == static_cast<int>(other.peak->day));
        RC_ASSERT(one.area == other.area);
        RC_ASSERT(one.halfLifeDays == other.halfLifeDays);
        RC_ASSERT(one.resolvedOnDay.has_value() == other.resolvedOnDay.has_value());
        RC_ASSERT(!one.resolvedOnDay || *one.resolvedOnDay + shift == *other.resolvedOnDay);
        RC_CLASSIFY(one.halfLifeDays.has_value(), "with a half-life");
    }));
}

TEST_CASE("a rise after resolving takes the resolution back", "[curves]")
{
    CHECK_FALSE(curveFrom({4, 1, 0, 3}).resolvedOnDay);
    CHECK(curveFrom({4, 1, 0, 3, 1, 1}).resolvedOnDay == 4);
}

TEST_CASE("what was never there has not resolved", "[curves]")
{
    CHECK_FALSE(curveFrom({0, 0, 0}).resolvedOnDay);
    CHECK_FALSE(curveFrom({1, 0, 1, 1}).resolvedOnDay);
    CHECK(curveFrom({2, 0, 0}).resolvedOnDay == 1);
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

TEST_CASE("a forecast needs three observed days, and is higher after a high course", "[curves]")
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
