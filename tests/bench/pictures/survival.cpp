#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/log_rank.h"
#include "core/statistics/survival.h"

#include <algorithm>
#include <cmath>

namespace ebbline::bench {

namespace {

using namespace statistics;

const Axis weeks = axis("weeks", 0, 35, 5);
const Axis share = axis("share still in remission", 0, 1, 0.2, 1);

Points fall(const SurvivalCurve& curve, double until)
{
    Points points{{0, 1}};
    for (const SurvivalStep& step : curve.steps)
        if (step.time <= until)
            points.emplace_back(step.time, step.survival);
    points.emplace_back(std::min(until, curve.lastSeen), points.back().second);
    return points;
}

Picture kaplanMeierPicture()
{
    Picture picture("Remission under treatment and in the control group, with limits for the treated.", weeks, share);
    const SurvivalCurve treated = kaplanMeier(treatedWeeks).value();
    const SurvivalCurve control = kaplanMeier(controlWeeks).value();
    Points low{{0, 1}}, high{{0, 1}};
    const auto stepTo = [](Points& points, double time, double value) {
        points.emplace_back(time, points.back().second);
        points.emplace_back(time, value);
    };
    for (const SurvivalStep& step : treated.steps) {
        stepTo(low, step.time, step.limits->low);
        stepTo(high, step.time, step.limits->high);
    }
    low.emplace_back(treated.lastSeen, low.back().second);
    high.emplace_back(treated.lastSeen, high.back().second);
    picture.band(low, high, ink::sand, "95 % by log(-log), treated");
    picture.across(0.5, {ink::edge, Dash::dotted, 1.2}, "half: the medians are 23 and 8");
    picture.steps(fall(treated, 99), {ink::tide, Dash::solid, 2}, "treated");
    picture.steps(fall(control, 99), {ink::right, Dash::dashed, 2}, "control");
    Points left;
    for (const Followed& one : treatedWeeks)
        if (!one.event)
            left.emplace_back(one.time, treated.at(one.time).value_or(0));
    picture.marks(left, Mark::cross, ink::tide, "last seen in remission");
    return picture;
}

Picture greenwood()
{
    Picture picture("Greenwood's standard error of the treated group's curve.", weeks, axis("standard error", 0, 0.16, 0.04, 2));
    const SurvivalCurve curve = kaplanMeier(treatedWeeks).value();
    Points errors, binomial;
    for (const SurvivalStep& step : curve.steps) {
        errors.emplace_back(step.time, *step.standardError);
        binomial.emplace_back(step.time, std::sqrt(step.survival * (1 - step.survival) / static_cast<double>(treatedWeeks.size())));
    }
    picture.steps(errors, {ink::tide, Dash::solid, 2}, "Greenwood: fewer and fewer are at risk");
    picture.steps(binomial, {ink::edge, Dash::dotted, 1.6}, "if all 21 had been followed");
    return picture;
}

Picture restricted()
{
    constexpr double horizon = 21;
    Picture picture("Mean time in remission up to week 21: the areas under both curves.", weeks, share);
    const auto areaOf = [&](const SurvivalCurve& curve) {
        Points top;
        for (const auto& [time, value] : fall(curve, horizon)) {
            if (!top.empty())
                top.emplace_back(time, top.back().second);
            top.emplace_back(time, value);
        }
        top.emplace_back(horizon, top.back().second);
        return top;
    };
    const SurvivalCurve treated = kaplanMeier(treatedWeeks).value();
    const SurvivalCurve control = kaplanMeier(controlWeeks).value();
    const auto text = [&](const SurvivalCurve& curve) {
        return std::to_string(std::lround(10 * restrictedMean(curve, horizon).value().mean));
    };
    const auto tenths = [&](const SurvivalCurve& curve) {
        const std::string digits = text(curve);
        return digits.substr(0, digits.size() - 1) + "." + digits.back() + " weeks";
    };
    picture.band({{0, 0}, {horizon, 0}}, areaOf(treated), ink::sand, "treated: " + tenths(treated));
    picture.band({{0, 0}, {horizon, 0}}, areaOf(control), ink::wetSand, "control: " + tenths(control));
    picture.upright(horizon, {ink::edge, Dash::dotted, 1.2}, "horizon");
    return picture;
}

/// As it would have stood had everybody been looked at for the last time in that week.
std::vector<Followed> until(const std::vector<Followed>& followed, double week)
{
    std::vector<Followed> known = followed;
    for (Followed& one : known)
        if (one.time > week)
            one = {week, false};
    return known;
}

Picture logRankPicture()
{
    Picture picture("How the evidence that the groups differ grows with the weeks that are known.", weeks,
                    axis("chi-square", 0, 18, 3));
    Points equal, early;
    for (int week = 1; week <= 35; ++week) {
        const auto first = until(treatedWeeks, week), second = until(controlWeeks, week);
        if (const auto found = logRank(first, second))
            equal.emplace_back(week, found->chiSquare);
        if (const auto found = logRank(first, second, Emphasis::early))
            early.emplace_back(week, found->chiSquare);
    }
    picture.across(3.841, {ink::edge, Dash::dotted, 1.2}, "5 % (3.84)");
    picture.line(equal, {ink::tide, Dash::solid, 2}, "log-rank, 16.79 in the end");
    picture.line(early, {ink::right, Dash::dashed, 2}, "Peto and Peto, 14.46 in the end");
    return picture;
}

}  // namespace

std::vector<Named> survivalPictures()
{
    return {{"kaplan-meier", kaplanMeierPicture()}, {"greenwood", greenwood()}, {"restricted-mean", restricted()},
            {"log-rank", logRankPicture()}};
}

}  // namespace ebbline::bench
