// A ratio of hazards, a plane through medians, and means drawn together.

#include "core/statistics/hazard_ratio.h"
#include "core/statistics/median_regression.h"
#include "core/statistics/shrinkage.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

// E. A. Gehan, Biometrika 52 (1965) 203-223, as R's MASS::gehan: weeks of remission.
const std::vector<Followed> treated{{6, true},  {6, true},   {6, true},   {6, false},  {7, true},   {9, false},  {10, true},
                                    {10, false}, {11, false}, {13, true},  {16, true},  {17, false}, {19, false}, {20, false},
                                    {22, true}, {23, true},  {25, false}, {32, false}, {32, false}, {34, false}, {35, false}};
const std::vector<Followed> control{{1, true}, {1, true}, {2, true},  {2, true},  {3, true},  {4, true},  {4, true},
                                    {5, true}, {5, true}, {8, true},  {8, true},  {8, true},  {8, true},  {11, true},
                                    {11, true}, {12, true}, {12, true}, {15, true}, {17, true}, {22, true}, {23, true}};

// K. A. Brownlee, Statistical Theory and Methodology, 1965, as R's `stackloss`.
const std::vector<std::vector<double>> stack{{80, 27, 89}, {80, 27, 88}, {75, 25, 90}, {62, 24, 87}, {62, 22, 87}, {62, 23, 87}, {62, 24, 93},
                                             {62, 24, 93}, {58, 23, 87}, {58, 18, 80}, {58, 18, 89}, {58, 17, 88}, {58, 18, 82}, {58, 19, 93},
                                             {50, 18, 89}, {50, 18, 86}, {50, 19, 72}, {50, 19, 79}, {50, 20, 80}, {56, 20, 82}, {70, 20, 91}};
constexpr std::array loss{42., 37., 37., 28., 18., 18., 19., 20., 15., 14., 14., 13., 11., 12., 8., 7., 8., 8., 9., 15., 15.};

}  // namespace

TEST_CASE("the controls' hazard is that many times the treated's, with both ways of ties", "[statistics]")
{
    // R 4.2.2, package survival 3.5-3: coxph(ties = "efron"), coxph(ties = "breslow").
    const auto efron = hazardRatio(treated, control);
    REQUIRE(efron);
    CHECK_THAT(efron->logRatio, WithinAbs(1.5721251, 5e-8));
    CHECK_THAT(hazardRatio(treated, control, Ties::breslow)->logRatio, WithinAbs(1.5091914, 5e-8));
    CHECK_THAT(efron->ratio, WithinRel(std::exp(efron->logRatio), 1e-14));
    // The same package's standard error and limits of 95 %.
    CHECK_THAT(efron->error, WithinAbs(0.4123967, 5e-8));
    CHECK_THAT(efron->limits.low, WithinAbs(2.146508, 5e-7));
    CHECK_THAT(efron->limits.high, WithinAbs(10.80931, 5e-6));
    // Named the other way round the logarithm changes its sign and nothing else.
    const auto other = hazardRatio(control, treated);
    REQUIRE(other);
    CHECK_THAT(other->logRatio, WithinAbs(-efron->logRatio, 1e-10));
    CHECK_THAT(other->error, WithinAbs(efron->error, 1e-10));
}

TEST_CASE("the ratio of hazards is where the likelihood is highest, whatever the data", "[statistics][property]")
{
    CHECK(rc::check("a maximum", [] {
        const auto anybody = [] {
            std::vector<Followed> followed;
            // At full size from the first case on: in tiny groups there is often no ratio to find.
            const auto upTo = [](int end) { return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, end)); };
            for (int i = 1 + upTo(19); i > 0; --i)
                followed.push_back({upTo(22) * 1.0, upTo(4) > 0});
            return followed;
        };
        const auto first = anybody(), second = anybody();
        const auto found = hazardRatio(first, second, Ties::breslow);
        RC_PRE(found.has_value());
        // Breslow's likelihood, written out once more.
        const auto likelihood = [&](double logRatio) {
            double sum = 0;
            for (const auto* group : {&first, &second})
                for (const Followed& one : *group) {
                    if (!one.event)
                        continue;
                    double atRisk = 0;
                    for (const Followed& other : first)
                        atRisk += other.time >= one.time ? 1 : 0;
                    for (const Followed& other : second)
                        atRisk += other.time >= one.time ? std::exp(logRatio) : 0;
                    sum += (group == &second ? logRatio : 0) - std::log(atRisk);
                }
            return sum;
        };
        const double here = likelihood(found->logRatio);
        for (const double step : {-0.1, -0.01, 0.01, 0.1})
            RC_ASSERT(likelihood(found->logRatio + step) < here + 1e-10);
    }));
}

TEST_CASE("groups that never meet have no ratio", "[statistics][errors]")
{
    const std::vector<Followed> early{{1, true}, {2, true}}, late{{5, true}, {6, true}};
    CHECK(hazardRatio(early, late).error().reason == Reason::notEnough);
    CHECK(hazardRatio(early, std::vector<Followed>{}).error().reason == Reason::notEnough);
    CHECK(hazardRatio(std::vector<Followed>{{1, false}}, std::vector<Followed>{{1, false}}).error().reason == Reason::notEnough);
    CHECK(hazardRatio(std::vector<Followed>{{-1, true}}, late).error().reason == Reason::outOfRange);
    CHECK(hazardRatio(early, late, Ties::efron, 1).error().reason == Reason::outOfRange);
}

TEST_CASE("the plane through the medians of the stack loss is the published one", "[statistics][published]")
{
    const auto plane = medianRegression(stack, loss);

    REQUIRE(plane);
    REQUIRE(plane->size() == 4);
    CHECK_THAT((*plane)[0], WithinAbs(-39.68985507, 5e-9));
    CHECK_THAT((*plane)[1], WithinAbs(0.83188406, 5e-9));
    CHECK_THAT((*plane)[2], WithinAbs(0.57391304, 5e-9));
    CHECK_THAT((*plane)[3], WithinAbs(-0.06086957, 5e-9));
}

TEST_CASE("no plane close by is nearer to the points than the returned one", "[statistics][property]")
{
    CHECK(rc::check("least absolute", [] {
        std::vector<std::vector<double>> rows;
        std::vector<double> values;
        for (int i = *rc::gen::inRange(4, 15); i > 0; --i) {
            rows.push_back({*rc::gen::inRange(-20, 21) / 2.0});
            values.push_back(*rc::gen::inRange(-20, 21) / 2.0);
        }
        const auto line = medianRegression(rows, values);
        RC_PRE(line.has_value());
        const auto distance = [&](double constant, double slope) {
            double sum = 0;
            for (std::size_t i = 0; i < rows.size(); ++i)
                sum += std::abs(values[i] - constant - slope * rows[i][0]);
            return sum;
        };
        const double least = distance((*line)[0], (*line)[1]);
        for (const double a : {-0.1, 0.0, 0.1})
            for (const double b : {-0.05, 0.0, 0.05})
                RC_ASSERT(distance((*line)[0] + a, (*line)[1] + b) >= least - 1e-9);
    }));
}

TEST_CASE("rows that cannot be, or say nothing, are refused", "[statistics][errors]")
{
    CHECK(medianRegression(stack, std::array{1., 2.}).error().reason == Reason::outOfRange);
    CHECK(medianRegression(std::vector<std::vector<double>>{{1}, {2, 3}, {4}}, std::array{1., 2., 3.}).error().reason == Reason::outOfRange);
    CHECK(medianRegression(std::vector<std::vector<double>>{{1}, {NAN}, {4}}, std::array{1., 2., 3.}).error().reason == Reason::notFinite);
    CHECK(medianRegression(std::vector<std::vector<double>>{{1}, {2}}, std::array{1., 2.}).error().reason == Reason::notEnough);
    CHECK(medianRegression(std::vector<std::vector<double>>{{1}, {1}, {1}}, std::array{1., 2., 3.}).error().reason == Reason::notEnough);
    CHECK(medianRegression(std::vector<std::vector<double>>(3000, {1}), std::vector<double>(3000, 1)).error().reason == Reason::tooLarge);
    CHECK(medianRegression({}, {}).error().reason == Reason::notEnough);
}

TEST_CASE("eighteen batting averages are drawn together as published", "[statistics][published]")
{
    // B. Efron, C. Morris, Scientific American 236 (1977) 119-127: hits in the first 45 times at bat;
    // the paper prints the mean .265 and the factor .212.
    std::vector<double> averages;
    double mean = 0;
    for (const int hits : {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7}) {
        averages.push_back(hits / 45.0);
        mean += hits / 45.0 / 18;
    }

    const auto together = shrunkMeans(averages, mean * (1 - mean) / 45);

    REQUIRE(together);
    CHECK_THAT(together->mean, WithinAbs(.265, 0.0005));
    CHECK_THAT(together->factor, WithinAbs(.212, 0.0005));
    CHECK_THAT(together->mean, WithinAbs(.2654321, 5e-8));
    CHECK_THAT(together->factor, WithinAbs(.2116534, 5e-8));
    CHECK_THAT(together->shrunk.front(), WithinAbs(.2939, 0.00005));
    CHECK_THAT(together->shrunk.back(), WithinAbs(.2422, 0.00005));
    // Values that spread no more than chance makes them all become the mean.
    CHECK(shrunkMeans(averages, 1)->factor == 0);
    CHECK(shrunkMeans(std::array{1., 2., 3.}, 1).error().reason == Reason::notEnough);
    CHECK(shrunkMeans(averages, 0).error().reason == Reason::outOfRange);
    CHECK(shrunkMeans(std::vector<double>{1, 2, NAN, 3}, 1).error().reason == Reason::notFinite);
}
