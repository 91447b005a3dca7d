#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/agreement.h"
#include "core/statistics/rank_sum.h"
#include "core/statistics/signed_rank.h"
#include "core/statistics/theil_sen.h"

namespace ebbline::bench {

namespace {

using namespace statistics;

Picture limits()
{
    Picture picture("Two meters of peak flow: their differences by what they read on average, with bias and limits of agreement.",
                    axis("mean of both, l/min", 200, 700, 100), axis("difference, l/min", -120, 120, 40));
    Points points;
    std::vector<double> differences;
    for (std::size_t i = 0; i < largeMeter.size(); ++i) {
        differences.push_back(largeMeter[i] - smallMeter[i]);
        points.emplace_back((largeMeter[i] + smallMeter[i]) / 2, differences.back());
    }
    const LimitsOfAgreement found = limitsOfAgreement(differences).value();
    const auto zone = [&](const Interval& interval, const std::string& name) {
        picture.band({{200, interval.low}, {700, interval.low}}, {{200, interval.high}, {700, interval.high}}, ink::sand, name);
    };
    zone(found.lowerInterval, "95 % intervals of the limits");
    zone(found.upperInterval, {});
    picture.across(found.bias, {ink::tide, Dash::solid, 2}, "bias -2.1");
    picture.across(found.limits.low, {ink::right, Dash::dashed, 2}, "limits of agreement");
    picture.across(found.limits.high, {ink::right, Dash::dashed, 2});
    picture.marks(points, Mark::round, ink::soft, "17 people");
    return picture;
}

Picture kappas()
{
    Picture picture("Weighted kappa when the second rater is one category off in more and more of the cases.",
                    axis("of 100 cases, the second rater one category off", 0, 60, 10), axis("kappa", 0, 1, 0.2, 1));
    struct Weight { Disagreement kind; Stroke stroke; const char* name; };
    for (const auto& [kind, stroke, name] :
         {Weight{Disagreement::quadratic, {ink::tide, Dash::solid, 2}, "quadratic weights"},
          Weight{Disagreement::linear, {ink::right, Dash::dashed, 2}, "linear weights"},
          Weight{Disagreement::any, {ink::left, Dash::dotted, 2.2}, "not weighted"}}) {
        Points points;
        for (long off = 0; off <= 60; off += 2) {
            // Five categories of twenty cases; those that are off go up, the highest down.
            std::vector<std::vector<long>> counts(5, std::vector<long>(5, 0));
            for (std::size_t row = 0; row < 5; ++row) {
                const long own = off / 5 + (static_cast<long>(row) < off % 5 ? 1 : 0);
                counts[row][row] = 20 - own;
                counts[row][row < 4 ? row + 1 : row - 1] = own;
            }
            points.emplace_back(static_cast<double>(off), kappa(counts, kind).value().kappa);
        }
        picture.line(points, stroke, name);
    }
    picture.note("five categories, equally common");
    return picture;
}

/// P. E. Shrout, J. L. Fleiss, Psychological Bulletin 86 (1979) 420-428, table 2.
Picture intraclass()
{
    const std::vector<std::vector<double>> ratings{{9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}};
    Picture picture("Four raters on six subjects: they order the subjects alike, but stand at different heights.",
                    axis("subject", 0, 7, 1), axis("rating", 0, 10, 2));
    constexpr std::array colours{ink::tide, ink::left, ink::right, ink::next};
    constexpr std::array marks{Mark::round, Mark::hollow, Mark::square, Mark::cross};
    for (std::size_t rater = 0; rater < 4; ++rater) {
        Points points;
        for (std::size_t subject = 0; subject < ratings.size(); ++subject)
            points.emplace_back(static_cast<double>(subject + 1), ratings[subject][rater]);
        picture.line(points, {colours[rater], Dash::solid, 1});
        picture.marks(points, marks[rater], colours[rater], "rater " + std::to_string(rater + 1));
    }
    const IntraclassCorrelation found = intraclassCorrelation(ratings).value();
    const auto hundredths = [](double value) {
        const auto digits = std::to_string(static_cast<int>(100 * value + 0.5));
        return "0." + std::string(2 - std::min<std::size_t>(2, digits.size()), '0') + digits;
    };
    picture.note("one way " + hundredths(found.oneWay));
    picture.note("absolute agreement " + hundredths(found.absolute));
    picture.note("consistency " + hundredths(found.consistency));
    return picture;
}

/// M. Hollander, D. A. Wolfe, Nonparametric Statistical Methods, example 3.1.
Picture signedRanks()
{
    constexpr std::array before{1.83, .50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
    constexpr std::array after{.878, .647, .598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    Picture picture("Nine paired differences, their shift and its exact limits.", axis("pair", 0, 10, 2),
                    axis("before - after", -0.4, 1.2, 0.4, 1));
    std::vector<double> differences;
    Points points;
    for (std::size_t i = 0; i < before.size(); ++i) {
        differences.push_back(before[i] - after[i]);
        points.emplace_back(static_cast<double>(i + 1), differences.back());
    }
    const SignedRank found = signedRank(differences).value();
    picture.band({{0, found.limits->low}, {10, found.limits->low}}, {{0, found.limits->high}, {10, found.limits->high}}, ink::sand,
                 "limits of the shift, at least 95 %");
    picture.across(0, {ink::edge, Dash::dotted, 1.2}, "no shift");
    picture.across(found.shift, {ink::tide, Dash::solid, 2}, "shift 0.46 (Hodges and Lehmann)");
    picture.marks(points, Mark::round, ink::soft, "differences");
    return picture;
}

/// The same, example 4.1.
Picture rankSums()
{
    constexpr std::array first{.80, .83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, .73, 1.46};
    constexpr std::array second{1.15, .88, .90, .74, 1.21};
    const RankSum found = rankSum(first, second).value();
    Picture picture("Two groups, and how far the second must be moved to lie on the first.", axis("value", 0.6, 2.2, 0.4, 1),
                    {"", 0, 4, {{3, "first"}, {2, "second"}, {1, "moved"}}});
    Points one, two, moved;
    for (const double value : first)
        one.emplace_back(value, 3);
    for (const double value : second) {
        two.emplace_back(value, 2);
        moved.emplace_back(value + found.shift, 1);
    }
    picture.marks(one, Mark::round, ink::tide, "first group");
    picture.marks(two, Mark::square, ink::right, "second group");
    picture.marks(moved, Mark::hollow, ink::right, "second, moved by the shift of 0.305");
    picture.note("limits -0.15 to 0.76: the groups may be alike");
    return picture;
}

Picture robustLine()
{
    const std::vector<Point> points{{1, 1}, {2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 16}, {7, 7}};
    Picture picture("One wild point does not move the robust line.", axis("x", 0, 8, 2), axis("y", 0, 18, 3));
    const Line line = theilSen(points).value();
    Points seen;
    for (const Point& point : points)
        seen.emplace_back(point.x, point.y);
    picture.line({{0, line.intercept}, {8, line.intercept + 8 * line.slope}}, {ink::tide, Dash::solid, 2}, "Theil and Sen: slope 1");
    picture.marks(seen, Mark::round, ink::soft, "points, one of them wild");
    return picture;
}

}  // namespace

std::vector<Named> agreementPictures()
{
    return {{"limits-of-agreement", limits()}, {"kappa", kappas()}, {"intraclass", intraclass()},
            {"signed-rank", signedRanks()}, {"rank-sum", rankSums()}, {"robust-line", robustLine()}};
}

}  // namespace ebbline::bench
