// The EWMA against a published worked example.
//
// Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.4 "EWMA Control Charts",
// doi:10.18434/M32189. The page prints averages to 0.01, and limits to 0.0001 without rounding up.

#include "core/statistics/ewma.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <array>
#include <cmath>
#include <limits>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

constexpr EwmaDesign nistDesign{.weight = 0.3, .centre = 50.0, .spread = 2.0539, .width = 3.0};

constexpr std::array nistObservations{52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
                                      49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
constexpr std::array nistAverages{50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33,
                                  50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99};
constexpr double halfOfLastPrintedDigit = 0.005;
constexpr double oneOfLastPrintedDigit = 0.0001;  // the page truncates

Ewma made(const EwmaDesign& design)
{
    const auto ewma = Ewma::create(design);
    REQUIRE(ewma);
    return *ewma;
}

}  // namespace

TEST_CASE("EWMA follows the NIST example through all 20 observations", "[statistics][published]")
{
    Ewma ewma = made(nistDesign);

    for (std::size_t i = 0; i < nistObservations.size(); ++i) {
        CAPTURE(i);
        CHECK(ewma.observe(nistObservations[i]).value() == Verdict::within);
        CHECK_THAT(ewma.average(), WithinAbs(nistAverages[i], halfOfLastPrintedDigit + 1e-9));
    }
    CHECK_THAT(ewma.steadyLimits().upper, WithinAbs(52.5884, oneOfLastPrintedDigit));
    CHECK_THAT(ewma.steadyLimits().lower, WithinAbs(47.4115, oneOfLastPrintedDigit));
}

TEST_CASE("EWMA of the NIST example to all digits", "[statistics]")
{
    // The page prints two decimals; these are R's, filter(0.3 * x, 0.7, "recursive", init = 50), R 4.2.2.
    constexpr std::array<std::pair<std::size_t, double>, 7> full{
        {{2, 50.564}, {3, 50.1848}, {4, 50.15936}, {5, 49.211552}, {17, 51.22906787}, {18, 51.94034751}, {19, 51.98824326}}};
    Ewma ewma = made(nistDesign);
    auto next = full.begin();
    for (std::size_t i = 0; i < nistObservations.size(); ++i) {
        REQUIRE(ewma.observe(nistObservations[i]));
        if (next != full.end() && next->first == i) {
            CAPTURE(i);
            CHECK_THAT(ewma.average(), WithinAbs(next->second, 5e-7));
            ++next;
        }
    }
    CHECK(next == full.end());
}

TEST_CASE("the first limits lie width times weight times spread from the centre", "[statistics]")
{
    // i = 1: weight / (2 - weight) * (1 - (1 - weight)^2) = weight^2.
    Ewma ewma = made(nistDesign);
    REQUIRE(ewma.observe(50.0));

    CHECK_THAT(ewma.limits().upper - 50.0, WithinAbs(3.0 * 0.3 * 2.0539, 1e-12));
}

TEST_CASE("limits widen with the observations to those of the equation, digit for digit", "[statistics]")
{
    // The handbook's example; the equation with R 4.2.2. The page truncates the last two.
    constexpr std::array lower{48.1515, 47.7436, 47.5686};
    constexpr std::array upper{51.8485, 52.2564, 52.4314};
    Ewma ewma = made(nistDesign);
    for (std::size_t i = 0; i < lower.size(); ++i) {
        CAPTURE(i);
        REQUIRE(ewma.observe(50.0));
        CHECK_THAT(ewma.limits().lower, WithinAbs(lower[i], 0.00005 + 1e-9));
        CHECK_THAT(ewma.limits().upper, WithinAbs(upper[i], 0.00005 + 1e-9));
    }
    CHECK_THAT(ewma.steadyLimits().upper, WithinAbs(52.588431738, 0.5e-9));
    CHECK_THAT(ewma.steadyLimits().lower, WithinAbs(47.411568262, 0.5e-9));
}

TEST_CASE("an average exactly on a limit is within", "[statistics]")
{
    const double edge = GENERATE(-2.0, 2.0);
    Ewma ewma = made({.weight = 1.0, .centre = 0.0, .spread = 1.0, .width = 2.0});

    CHECK(ewma.observe(edge).value() == Verdict::within);
    CHECK(ewma.observe(edge * 1.001).value() != Verdict::within);
}

TEST_CASE("a value that is not a number is refused and changes nothing", "[statistics][errors]")
{
    const double bad = GENERATE(std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity());
    Ewma ewma = made(nistDesign);
    REQUIRE(ewma.observe(52.0));

    CHECK(ewma.observe(bad).error().reason == Reason::notFinite);
    CHECK(ewma.observationCount() == 1);
    CHECK_THAT(ewma.average(), WithinAbs(50.6, 1e-12));
}

TEST_CASE("a design outside its bounds is refused by name", "[statistics][errors]")
{
    struct Row { EwmaDesign design; const char* field; };
    const auto row = GENERATE(Row{{0.0, 0, 1, 3}, "weight"}, Row{{1.1, 0, 1, 3}, "weight"},
                              Row{{0.3, NAN, 1, 3}, "centre"}, Row{{0.3, 0, 0, 3}, "spread"},
                              Row{{0.3, 0, 1, -1}, "width"});

    const auto refused = Ewma::create(row.design);

    REQUIRE_FALSE(refused);
    CHECK(refused.error().detail.starts_with(row.field));
}
