#include "tests/bench/pictures/picture.h"

#include "core/statistics/clustered_share.h"
#include "core/statistics/fisher.h"
#include "core/statistics/fisher_power.h"
#include "core/statistics/proportions.h"
#include "core/statistics/two_proportions.h"

#include <cmath>

namespace ebbline::bench {

namespace {

using namespace statistics;

double binomial(long k, long n, double p)
{
    const auto real = [](long value) { return static_cast<double>(value); };
    return std::exp(std::lgamma(real(n) + 1) - std::lgamma(real(k) + 1) - std::lgamma(real(n - k) + 1) + real(k) * std::log(p)
                    + real(n - k) * std::log1p(-p));
}

Picture coverage()
{
    constexpr long trials = 20;
    Picture picture("How often three intervals for a share hold the true one, with twenty trials.",
                    axis("true share", 0, 1, 0.2, 1), axis("share of intervals that hold it", 0.80, 1, 0.05, 2));
    const auto curve = [&](auto method) {
        Points points;
        for (int i = 2; i <= 398; ++i) {
            const double p = i / 400.0;
            double held = 0;
            for (long k = 0; k <= trials; ++k)
                if (const Interval limits = method(k, trials, 0.95).value(); limits.low <= p && p <= limits.high)
                    held += binomial(k, trials, p);
            points.emplace_back(p, held);
        }
        return points;
    };
    picture.across(0.95, {ink::edge, Dash::dotted, 1.2}, "nominal 95 %");
    picture.line(curve(clopperPearson), {ink::edge, Dash::solid, 1.2}, "Clopper-Pearson: never below, often far above");
    picture.line(curve(jeffreys), {ink::right, Dash::dashed, 1.4}, "Jeffreys");
    picture.line(curve(wilson), {ink::tide, Dash::solid, 1.8}, "Wilson");
    return picture;
}

Picture differences()
{
    struct Row {
        const char* name;
        Counts first;
        Counts second;
    };
    constexpr Row rows[]{{"56/70 - 48/80", {56, 70}, {48, 80}},
                         {"9/10 - 3/10", {9, 10}, {3, 10}},
                         {"10/10 - 0/20", {10, 10}, {0, 20}},
                         {"1/30 - 5/30", {1, 30}, {5, 30}}};
    Axis up{"", 0, 5, {}};
    for (std::size_t i = 0; i < std::size(rows); ++i)
        up.ticks.emplace_back(4.0 - static_cast<double>(i), std::to_string(i + 1));
    Picture picture("Four differences of two shares, each with its limits after Newcombe.",
                    axis("first share minus second", -0.4, 1, 0.2, 1), up);
    picture.upright(0, {ink::edge, Dash::dotted, 1.2}, "no difference");
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        const double y = 4.0 - static_cast<double>(i);
        const Difference found = newcombe(rows[i].first, rows[i].second).value();
        picture.reach(y, found.low, found.high, {ink::tide, Dash::solid, 2});
        picture.marks({{found.difference, y}}, Mark::round, ink::tide, std::to_string(i + 1) + ": " + rows[i].name);
    }
    return picture;
}

Picture tea()
{
    Picture picture("Probability of each possible number of cups in the tea tasting, given the margins.",
                    {"cups with milk first that were named so, of four", -0.5, 4.5,
                     {{0, "0"}, {1, "1"}, {2, "2"}, {3, "3"}, {4, "4"}}},
                    axis("probability", 0, 0.6, 0.1, 1));
    const double seen = fisherExact({3, 1, 1, 3}).value().twoSided;
    double before = 0;
    Points counted, others;
    for (long cups = 0; cups <= 4; ++cups) {
        const FisherTest test = fisherExact({cups, 4 - cups, 4 - cups, cups}).value();
        const double own = test.less - before;
        before = test.less;
        const bool asUnlikely = test.twoSided <= seen + 1e-12;
        picture.bar(static_cast<double>(cups), 0, own, {asUnlikely ? ink::tide : ink::edge, Dash::solid, 14});
        (asUnlikely ? counted : others).emplace_back(static_cast<double>(cups), own);
    }
    picture.marks(counted, Mark::round, ink::tide, "at most as likely as 3 of 4: together p = 34/70");
    picture.marks(others, Mark::hollow, ink::edge, "more likely");
    return picture;
}

Picture power()
{
    Picture picture("How often Fisher's test finds a difference from 5 %, by the size of the groups.",
                    axis("true share of the second group", 0.05, 0.65, 0.1, 2), axis("found", 0, 1, 0.2, 1));
    picture.across(0.8, {ink::edge, Dash::dotted, 1.2}, "80 %");
    struct Size { long each; Stroke stroke; };
    for (const auto& [each, stroke] : {Size{20, {ink::left, Dash::solid, 2}}, Size{40, {ink::right, Dash::dashed, 2}},
                                       Size{60, {ink::tide, Dash::dotted, 2.4}}}) {
        const FisherPower groups = FisherPower::create(each, each).value();
        Points points;
        for (int i = 0; i <= 60; ++i)
            points.emplace_back(0.05 + 0.01 * i, groups.power(0.05, 0.05 + 0.01 * i).value());
        picture.line(points, stroke, std::to_string(each) + " in each group");
    }
    picture.note("the first group's true share is 5 %");
    return picture;
}

Picture lower()
{
    Picture picture("Probability that the first of two shares is the lower one, by the events of the second.",
                    axis("events among 30 in the second group", 0, 12, 2), axis("P(first is lower)", 0, 1, 0.2, 1));
    struct First { long events; std::string_view colour; Mark mark; };
    for (const auto& [events, colour, mark] : {First{1, ink::tide, Mark::round}, First{4, ink::right, Mark::square}}) {
        Points points;
        for (long second = 0; second <= 12; ++second)
            points.emplace_back(static_cast<double>(second), probabilityLower({events, 30}, {second, 30}).value());
        picture.line(points, {colour, Dash::solid, 1.2});
        picture.marks(points, mark, colour, "first group: " + std::to_string(events) + " among 30");
    }
    return picture;
}

Picture clustered()
{
    Picture picture("How many readings an interval may count, the more the readings of a course resemble each other.",
                    axis("courses in which all ten readings say the same, of 40", 0, 40, 10),
                    axis("readings that count, of 400", 0, 400, 100));
    Points effective;
    for (long alike = 0; alike <= 40; ++alike) {
        std::vector<Group> groups;
        for (long i = 0; i < 40; ++i)
            groups.push_back({i < alike ? (i % 5 == 0 ? 10L : 0L) : 2L, 10});
        effective.emplace_back(static_cast<double>(alike), clusteredShare(groups).value().effective);
    }
    picture.line(effective, {ink::tide, Dash::solid, 2}, "effective number, a share near 20 %");
    picture.across(400, {ink::edge, Dash::dotted, 1.2}, "all readings");
    picture.across(40, {ink::edge, Dash::dashed, 1.2}, "courses");
    return picture;
}

}  // namespace

std::vector<Named> proportionPictures()
{
    return {{"coverage", coverage()}, {"differences", differences()}, {"fisher", tea()},
            {"fisher-power", power()}, {"lower", lower()}, {"clustered", clustered()}};
}

}  // namespace ebbline::bench
