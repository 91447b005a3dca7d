// Agreement against published examples, and its laws.
//
// Sources: J. M. Bland, D. G. Altman, Lancet 327 (1986) 307-310, table 1, first readings of two peak flow
// meters. P. E. Shrout, J. L. Fleiss, Psychological Bulletin 86 (1979) 420-428, table 2. The standard
// errors of kappa and all figures with more digits were computed with R 4.2.2 (the errors by numerical
// derivatives of kappa over the table's shares).

#include "core/statistics/agreement.h"

#include "core/statistics/distributions.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

using Table = std::vector<std::vector<long>>;
using Ratings = std::vector<std::vector<double>>;

std::vector<double> peakFlowDifferences()
{
    constexpr double wright[]{494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427};
    constexpr double mini[]{512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451};
    std::vector<double> differences;
    for (std::size_t i = 0; i < std::size(wright); ++i)
        differences.push_back(wright[i] - mini[i]);
    return differences;
}

const Ratings fourJudges{{9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}};
const Table three{{44, 5, 1}, {7, 20, 3}, {9, 5, 6}};

}  // namespace

TEST_CASE("two peak flow meters agree as published", "[statistics][published]")
{
    const auto agreement = limitsOfAgreement(peakFlowDifferences());

    REQUIRE(agreement);
    CHECK_THAT(agreement->bias, WithinAbs(-2.1176470588, 0.5e-10));
    CHECK_THAT(agreement->deviation, WithinAbs(38.7651298736, 0.5e-10));
    CHECK_THAT(agreement->limits.low, WithinAbs(-78.0959054671, 1e-9));
    CHECK_THAT(agreement->limits.high, WithinAbs(73.8606113495, 1e-9));
    // With the quantile cut to nine decimals.
    CHECK_THAT(agreement->bias - 1.959963985 * agreement->deviation, WithinAbs(-78.0959054849, 1e-9));
    CHECK_THAT(agreement->bias + 1.959963985 * agreement->deviation, WithinAbs(73.8606113673, 1e-9));
    // The paper takes 2 deviations and rounded figures: -79.7 and 75.5.
    CHECK_THAT(agreement->bias - 2 * agreement->deviation, WithinAbs(-79.6479, 0.00005));
    CHECK_THAT(agreement->bias + 2 * agreement->deviation, WithinAbs(75.4127, 0.0001));
    CHECK_THAT(agreement->biasInterval.low, WithinAbs(-22.0488376966, 1e-8));
    CHECK_THAT(agreement->biasInterval.high, WithinAbs(17.8135435790, 1e-8));
    CHECK_THAT(agreement->lowerInterval.low, WithinAbs(-112.6177403072, 1e-8));
    CHECK_THAT(agreement->upperInterval.high, WithinAbs(108.3824461895, 1e-8));
}

TEST_CASE("kappa of a small table is 0.4 exactly", "[statistics]")
{
    const Table two{{20, 5}, {10, 15}};
    for (const Disagreement each : {Disagreement::any, Disagreement::linear, Disagreement::quadratic}) {
        CHECK_THAT(kappa(two, each)->kappa, WithinRel(0.4, 1e-12));
        CHECK_THAT(kappa(two, each)->standardError.value(), WithinRel(0.126996062932, 1e-8));
    }
}

TEST_CASE("weighted kappa counts how far apart the two raters are", "[statistics]")
{
    CHECK_THAT(kappa(three, Disagreement::any)->kappa, WithinRel(0.491525423729, 1e-11));
    CHECK_THAT(kappa(three, Disagreement::linear)->kappa, WithinRel(0.473684210526, 1e-11));
    CHECK_THAT(kappa(three, Disagreement::quadratic)->kappa, WithinRel(0.454545454545, 1e-11));
    CHECK_THAT(kappa(three, Disagreement::any)->standardError.value(), WithinRel(0.0721274592913, 1e-8));
    CHECK_THAT(kappa(three, Disagreement::linear)->standardError.value(), WithinRel(0.0769789098705, 1e-8));
    CHECK_THAT(kappa(three, Disagreement::quadratic)->standardError.value(), WithinRel(0.0939796977747, 1e-8));
}

TEST_CASE("complete agreement is kappa 1, and no error is claimed for it", "[statistics]")
{
    const auto complete = kappa(Table{{7, 0, 0}, {0, 4, 0}, {0, 0, 2}}, Disagreement::quadratic);
    REQUIRE(complete);
    CHECK_THAT(complete->kappa, WithinRel(1.0, 1e-12));
    CHECK_FALSE(complete->standardError);
}

TEST_CASE("kappa does not care who is first, and is at most 1", "[statistics][property]")
{
    CHECK(rc::check("exchange", [] {
        const auto k = *rc::gen::inRange<std::size_t>(2, 7);
        Table table(k, std::vector<long>(k)), exchanged = table;
        for (std::size_t i = 0; i < k; ++i)
            for (std::size_t j = 0; j < k; ++j)
                exchanged[j][i] = table[i][j] = *rc::gen::inRange(0L, 30L);
        for (const Disagreement each : {Disagreement::any, Disagreement::linear, Disagreement::quadratic}) {
            const auto own = kappa(table, each), other = kappa(exchanged, each);
            RC_ASSERT(own.has_value() == other.has_value());
            if (!own)
                continue;
            RC_ASSERT(std::abs(own->kappa - other->kappa) < 1e-12);
            RC_ASSERT(own->kappa <= 1 + 1e-12);
            RC_ASSERT(!own->standardError || *own->standardError > 0);
        }
    }));
}

TEST_CASE("four judges of six subjects correlate as published", "[statistics][published]")
{
    const auto icc = intraclassCorrelation(fourJudges);

    REQUIRE(icc);
    CHECK_THAT(icc->oneWay, WithinAbs(.17, .005));  // printed
    CHECK_THAT(icc->absolute, WithinAbs(.29, .005));
    CHECK_THAT(icc->consistency, WithinAbs(.71, .005));
    CHECK_THAT(icc->oneWay, WithinAbs(.16574177, 0.5e-8));
    CHECK_THAT(icc->absolute, WithinAbs(.28976378, 0.5e-8));
    CHECK_THAT(icc->consistency, WithinAbs(.71484071, 0.5e-8));
    CHECK_THAT(icc->oneWayMean, WithinAbs(.44279713, 0.5e-8));
    CHECK_THAT(icc->absoluteMean.value(), WithinAbs(.62005055, 0.5e-8));
    CHECK_THAT(icc->consistencyMean, WithinAbs(.90931554, 0.5e-8));
    CHECK_THAT(icc->betweenSubjects, WithinAbs(11.2416667, 0.5e-7));
    CHECK_THAT(icc->withinSubjects, WithinAbs(6.2638889, 0.5e-7));
    CHECK_THAT(icc->betweenRaters, WithinAbs(32.4861111, 0.5e-7));
    CHECK_THAT(icc->residual, WithinAbs(1.0194444, 0.5e-7));
    REQUIRE(icc->absoluteInterval);
    CHECK_THAT(icc->absoluteInterval->low, WithinAbs(0.0187865133747, 1e-7));
    CHECK_THAT(icc->absoluteInterval->high, WithinAbs(0.761084369649, 1e-7));
}

TEST_CASE("a constant of one rater lowers absolute agreement and leaves consistency", "[statistics][property]")
{
    CHECK(rc::check("constant", [] {
        Ratings ratings(5, std::vector<double>(3)), shifted;
        for (auto& row : ratings)
            for (double& rating : row)
                rating = *rc::gen::inRange(0, 11);
        shifted = ratings;
        for (auto& row : shifted)
            row[0] += 25;
        const auto own = intraclassCorrelation(ratings), other = intraclassCorrelation(shifted);
        RC_PRE(own.has_value() && other.has_value());
        RC_ASSERT(std::abs(own->consistency - other->consistency) < 1e-9);
        RC_ASSERT(own->consistency <= 1 + 1e-12 && other->absolute <= std::max(0.0, own->consistency) + 1e-9);
    }));
}

TEST_CASE("the quantiles behind the intervals are those of R 4.2.2", "[statistics]")
{
    CHECK_THAT(studentQuantile(.975, 10).value(), WithinRel(2.228138851986274, 1e-12));  // qt(.975, 10)
    CHECK_THAT(fQuantile(.95, 1, 10).value(), WithinRel(4.964602743730711, 1e-10));      // qf(.95, 1, 10)
    CHECK_FALSE(studentQuantile(.5, 0));
    CHECK_FALSE(fQuantile(1, 1, 1));
}

TEST_CASE("too little or impossible data is refused by the agreement methods", "[statistics][errors]")
{
    CHECK(limitsOfAgreement(std::vector<double>{1, 2}).error().reason == Reason::notEnough);
    CHECK(limitsOfAgreement(std::vector<double>{2, 2, 2}).error().reason == Reason::notEnough);
    CHECK(limitsOfAgreement(std::vector<double>{2, NAN, 2}).error().reason == Reason::notFinite);
    CHECK(limitsOfAgreement(std::vector<double>{1, 2, 3}, 1).error().reason == Reason::outOfRange);
    CHECK(kappa(Table{{1}}, Disagreement::any).error().reason == Reason::outOfRange);
    CHECK(kappa(Table{{1, 2}, {3}}, Disagreement::any).error().reason == Reason::outOfRange);
    CHECK(kappa(Table{{1, 2}, {3, -1}}, Disagreement::any).error().reason == Reason::outOfRange);
    CHECK(kappa(Table{{0, 0}, {0, 0}}, Disagreement::any).error().reason == Reason::notEnough);
    CHECK(kappa(Table{{9, 0}, {0, 0}}, Disagreement::any).error().reason == Reason::notEnough);
    CHECK(intraclassCorrelation(Ratings{{1, 2}}).error().reason == Reason::notEnough);
    CHECK(intraclassCorrelation(Ratings{{1}, {2}}).error().reason == Reason::notEnough);
    CHECK(intraclassCorrelation(Ratings{{1, 2}, {2}}).error().reason == Reason::outOfRange);
    CHECK(intraclassCorrelation(Ratings{{1, NAN}, {2, 1}}).error().reason == Reason::notFinite);
    CHECK(intraclassCorrelation(Ratings{{1, 2}, {2, 1}}).error().reason == Reason::notEnough);
    // Between subjects 0.25, raters 0.25, residual 2.25: the denominator is 0.25 + (0.25 - 2.25) / 2.
    const auto opposed = intraclassCorrelation(Ratings{{0, 1}, {2, 0}});
    REQUIRE(opposed);
    CHECK_FALSE(opposed->absoluteMean);
    const auto alike = intraclassCorrelation(Ratings{{1, 1}, {2, 2}, {5, 5}});
    REQUIRE(alike);
    CHECK(alike->absolute == 1);
    CHECK_FALSE(alike->absoluteInterval);
}
