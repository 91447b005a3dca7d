// An ordinal level: held to the closed forms of normal variables cut at their medians, and to laws.

#include "core/statistics/ordinal_level.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

using namespace ebbline;
using namespace ebbline::statistics;
using Catch::Matchers::WithinAbs;

namespace {

constexpr std::array halves{0.5, 0.5};
constexpr std::array late{0.90, 0.06, 0.02, 0.012, 0.004, 0.002, 0.001, 0.0005, 0.0003, 0.0001, 0.0001};
constexpr std::array early{0.05, 0.10, 0.15, 0.2, 0.2, 0.1, 0.08, 0.05, 0.04, 0.02, 0.01};
constexpr OrdinalLevelModel usual{.share = 0.78, .kept = 0.96};

OrdinalLevelFilter filterOf(const OrdinalLevelModel& model)
{
    auto filter = OrdinalLevelFilter::create(model);
    REQUIRE(filter);
    return *filter;
}

double mean(const std::vector<double>& likely)
{
    double sum = 0;
    for (std::size_t k = 0; k < likely.size(); ++k)
        sum += static_cast<double>(k) * likely[k];
    return sum;
}

}  // namespace

TEST_CASE("before anything was seen, and after a long silence, every answer is as likely as its share", "[statistics]")
{
    OrdinalLevelFilter filter = filterOf(usual);
    const auto isUsual = [&](double off) {
        for (const auto& shares : {early, late}) {
            const std::vector<double> likely = filter.likely(shares);
            for (std::size_t k = 0; k < shares.size(); ++k)
                CHECK_THAT(likely[k], WithinAbs(shares[k], off));
        }
    };
    isUsual(1e-8);
    filter.advance(9);
    isUsual(1e-8);
    REQUIRE(filter.observe(early, 9));
    CHECK(filter.likely(early)[9] > 2 * early[9]);
    filter.advance(700);
    isUsual(1e-8);
}

TEST_CASE("two and three answers above the median agree with Sheppard's closed form", "[statistics]")
{
    // W. F. Sheppard, Phil Trans R Soc A 1899;192:101 (from memory): two standard normal variables of correlation r are both
    // above 0 with 1/4 + asin(r) / (2 pi); three with 1/8 + (asin(r12) + asin(r13) + asin(r23)) / (4 pi), because of
    // signs that turn together.
    const OrdinalLevelModel model = GENERATE(usual, OrdinalLevelModel{0.3, 0.5}, OrdinalLevelModel{0.98, 0.999},
                                             OrdinalLevelModel{0.9, 1}, OrdinalLevelModel{0.6, 0}, OrdinalLevelModel{0, 0.9});
    const int firstGap = GENERATE(1, 2, 7), secondGap = GENERATE(0, 1, 5);
    CAPTURE(model.share, model.kept, firstGap, secondGap);
    const auto angle = [&](int steps) { return std::asin(model.share * std::pow(model.kept, steps)); };
    const double two = 0.25 + angle(firstGap) / (2 * std::numbers::pi);
    const double three = 0.125 + (angle(firstGap) + angle(secondGap) + angle(firstGap + secondGap)) / (4 * std::numbers::pi);

    OrdinalLevelFilter filter = filterOf(model);
    REQUIRE(filter.observe(halves, 1));
    filter.advance(firstGap);
    CHECK_THAT(filter.likely(halves)[1], WithinAbs(two / 0.5, 1e-6));
    REQUIRE(filter.observe(halves, 1));
    filter.advance(secondGap);
    CHECK_THAT(filter.likely(halves)[1], WithinAbs(three / two, 1e-6));
}

TEST_CASE("as many steps at once as one after the other, and answers of a step in any order", "[statistics]")
{
    OrdinalLevelFilter one = filterOf(usual), other = filterOf(usual);
    REQUIRE(one.observe(early, 6));
    REQUIRE(one.observe(early, 3));
    REQUIRE(other.observe(early, 3));
    REQUIRE(other.observe(early, 6));
    one.advance(5);
    for (int i = 0; i < 5; ++i)
        other.advance();
    const auto all = one.likely(late), stepwise = other.likely(late);
    for (std::size_t k = 0; k < all.size(); ++k)
        CHECK_THAT(all[k], WithinAbs(stepwise[k], 1e-9));
}

TEST_CASE("a level that hardly moves returns all the same, however often it is looked at", "[statistics]")
{
    // One step of it is narrower than the grid; two hundred leave 0.98 of the level.
    const OrdinalLevelModel slow{.share = 0.9, .kept = 0.9999};
    OrdinalLevelFilter once = filterOf(slow), often = filterOf(slow), still = filterOf(slow);
    for (auto* filter : {&once, &often, &still})
        REQUIRE(filter->observe(early, 9));
    once.advance(4000);
    for (int i = 0; i < 4000; ++i)
        often.advance();
    // The grid rounds each move that it makes; what is lost is small beside what comes back.
    CHECK(std::abs(mean(once.likely(early)) - mean(often.likely(early))) < 0.1 * (mean(still.likely(early)) - mean(once.likely(early))));
}

TEST_CASE("turning the scale round turns the answers round", "[statistics]")
{
    std::array<double, early.size()> turned = early;
    std::reverse(turned.begin(), turned.end());
    OrdinalLevelFilter filter = filterOf(usual), mirror = filterOf(usual);
    for (const std::size_t answer : {7u, 2u, 10u}) {
        REQUIRE(filter.observe(early, answer));
        REQUIRE(mirror.observe(turned, turned.size() - 1 - answer));
        filter.advance();
        mirror.advance();
    }
    const auto likely = filter.likely(early), mirrored = mirror.likely(turned);
    for (std::size_t k = 0; k < likely.size(); ++k)
        CHECK_THAT(likely[k], WithinAbs(mirrored[likely.size() - 1 - k], 1e-10));
}

TEST_CASE("a higher answer makes high answers likelier, a usual one hardly", "[statistics]")
{
    double before = -1;
    for (std::size_t answer = 0; answer < late.size(); ++answer) {
        CAPTURE(answer);
        OrdinalLevelFilter filter = filterOf(usual);
        REQUIRE(filter.observe(late, answer));
        filter.advance();
        const auto likely = filter.likely(early);
        CHECK_THAT(std::accumulate(likely.begin(), likely.end(), 0.0), WithinAbs(1, 1e-12));
        // Three answers that are rarer than what counts as rarest may say the same.
        CHECK(mean(likely) > before - 1e-9);
        before = mean(likely);
    }
    // Nine in ten answer 0: it moves the expected score by less than a fifth of what a 1 does.
    OrdinalLevelFilter zero = filterOf(usual), one = filterOf(usual);
    REQUIRE(zero.observe(late, 0));
    REQUIRE(one.observe(late, 1));
    const double usualMean = mean(filterOf(usual).likely(early));
    CHECK(std::abs(mean(zero.likely(early)) - usualMean) < 0.2 * std::abs(mean(one.likely(early)) - usualMean));
}

TEST_CASE("an answer that has no share, or that nothing before allows, is taken in all the same", "[statistics]")
{
    constexpr std::array never{0.5, 0.5, 0.0};
    OrdinalLevelFilter filter = filterOf(usual);
    REQUIRE(filter.observe(never, 2));
    CHECK(filter.likely(never)[1] > 0.9);
    CHECK(filter.likely(never)[2] == 0);

    // Without noise and without a way back, up after down cannot be.
    OrdinalLevelFilter stiff = filterOf({.share = 0.99999, .kept = 1});
    for (int i = 0; i < 3; ++i) {
        REQUIRE(stiff.observe(halves, 0));
        stiff.advance();
    }
    for (int i = 0; i < 60; ++i)
        REQUIRE(stiff.observe(early, 10));
    const double up = stiff.likely(halves)[1];
    CHECK(std::isfinite(up));
    CHECK(up > 0.5);
}

TEST_CASE("what is no model, no shares or no answer is refused by name, and changes nothing", "[statistics]")
{
    for (const OrdinalLevelModel& model : {OrdinalLevelModel{1, 0.5}, OrdinalLevelModel{-0.1, 0.5}, OrdinalLevelModel{NAN, 0.5}})
        CHECK(OrdinalLevelFilter::create(model).error().detail.starts_with("share"));
    for (const OrdinalLevelModel& model : {OrdinalLevelModel{0.5, 1.1}, OrdinalLevelModel{0.5, -0.1}, OrdinalLevelModel{0.5, NAN}})
        CHECK(OrdinalLevelFilter::create(model).error().detail.starts_with("kept"));
    OrdinalLevelFilter filter = filterOf(usual);
    const auto before = filter.likely(early);
    CHECK(filter.observe(early, early.size()).error().reason == Reason::outOfRange);
    CHECK(filter.observe(std::array{0.5, 0.4}, 0).error().reason == Reason::outOfRange);
    CHECK(filter.observe(std::array{1.5, -0.5}, 0).error().reason == Reason::outOfRange);
    CHECK(filter.likely(early) == before);
}
