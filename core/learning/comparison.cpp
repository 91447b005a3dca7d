#include "core/learning/comparison.h"

#include "core/statistics/fisher.h"
#include "core/statistics/fisher_power.h"
#include "core/statistics/log_rank.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace ebbline::learning {

namespace {

constexpr double reach = 1.959963984540054;        // normal quantile of 0.975
constexpr double powerReach = 0.8416212335729143;  // of wantedPower

template <typename GroupOf>
std::vector<PastCourse> ofGroup(std::span<const PastCourse> courses, const GroupOf& groupOf, const std::string& group)
{
    std::vector<PastCourse> chosen;
    std::copy_if(courses.begin(), courses.end(), std::back_inserter(chosen),
                 [&](const PastCourse& course) { return groupOf(course) == group; });
    return chosen;
}

GroupShare shareOf(std::span<const PastCourse> courses, const std::string& group)
{
    auto shares = complicationShares(courses, By::nothing);
    GroupShare share = shares.empty() ? GroupShare{} : std::move(shares.front());
    share.group = group;
    return share;
}

template <typename GroupOf>
Comparison compare(std::span<const PastCourse> courses, const GroupOf& groupOf, const std::string& first, const std::string& second)
{
    const auto one = ofGroup(courses, groupOf, first);
    const auto other = ofGroup(courses, groupOf, second);
    Comparison comparison;
    comparison.first = shareOf(one, first);
    comparison.second = shareOf(other, second);
    comparison.shares = compareShares(comparison.first, comparison.second);
    for (std::size_t row = 0; row < comparison.symptoms.size(); ++row) {
        const recovery::Symptom symptom = recovery::allSymptoms[row];
        comparison.symptoms[row] = {symptom, compareTimes(followed(one, symptom, Gap::middle),
                                                          followed(other, symptom, Gap::middle))};
    }
    return comparison;
}

}  // namespace

Answer<ShareComparison> compareShares(const GroupShare& first, const GroupShare& second)
{
    const long fewer = std::min(first.known, second.known);
    const auto lacking = [&](Lack lack) { return std::unexpected(NotEnough{lack, fewer, fewestCourses}); };
    if (fewer < fewestCourses)
        return lacking(Lack::outcomes);
    const statistics::Counts one{first.complicated, first.known};
    const statistics::Counts other{second.complicated, second.known};
    const auto difference = statistics::newcombe(one, other);
    const auto lower = statistics::probabilityLower(one, other);
    if (!difference || !lower)
        return lacking(Lack::outcomes);
    const auto test = statistics::fisherExact({first.complicated, first.known - first.complicated, second.complicated,
                                               second.known - second.complicated});

    ShareComparison comparison{*difference, {}, *lower, 0, 0, {}};
    if (test)
        comparison.probability = test->twoSided;
    comparison.reference = (static_cast<double>(one.events + other.events) + 0.5)
                           / (static_cast<double>(one.total + other.total) + 1);
    constexpr long most = statistics::FisherPower::mostTrials;
    const auto power = statistics::FisherPower::create(std::min(one.total, most), std::min(other.total, most));
    if (!power)
        return lacking(Lack::outcomes);
    comparison.powerForDouble =
        power->power(comparison.reference, std::min(1.0, 2 * comparison.reference)).value_or(0);
    comparison.smallestFound = power->smallestAbove(comparison.reference, wantedPower).value_or(std::nullopt);
    return comparison;
}

Answer<TimeComparison> compareTimes(std::span<const statistics::Followed> first,
                                    std::span<const statistics::Followed> second)
{
    const long fewer = static_cast<long>(std::min(first.size(), second.size()));
    if (fewer < fewestCourses)
        return std::unexpected(NotEnough{Lack::courses, fewer, fewestCourses});
    const auto test = statistics::logRank(first, second);
    if (!test)
        return std::unexpected(NotEnough{Lack::events});
    const auto one = statistics::kaplanMeier(first);
    const auto other = statistics::kaplanMeier(second);
    if (!one || !other)
        return std::unexpected(NotEnough{Lack::courses, fewer, fewestCourses});
    const auto oneMean = meanOf(*one);
    if (!oneMean)
        return std::unexpected(oneMean.error());
    const auto otherMean = meanOf(*other);
    if (!otherMean)
        return std::unexpected(otherMean.error());
    const double difference = oneMean->days - otherMean->days;
    const double error = std::sqrt(oneMean->variance + otherMean->variance);
    return TimeComparison{*oneMean,           *otherMean,      difference, difference - reach * error, difference + reach * error,
                          test->probability, test->chiSquare, (reach + powerReach) * error};
}

Comparison compareTechniques(std::span<const PastCourse> courses, const std::string& first, const std::string& second)
{
    return compare(courses, [](const PastCourse& course) -> const std::string& { return course.technique; }, first, second);
}

Comparison compareWays(std::span<const PastCourse> courses, Way way, const std::string& first, const std::string& second)
{
    return compare(courses, [way](const PastCourse& course) -> const std::string& { return course.group(way); }, first, second);
}

std::vector<GroupShare> groupsOf(std::span<const PastCourse> courses, Way way)
{
    std::map<std::string, GroupShare> groups;
    for (const PastCourse& course : courses) {
        if (course.group(way).empty() || course.group(way) == "mixed")
            continue;
        GroupShare& group = groups[course.group(way)];
        group.group = course.group(way);
        group.known += course.outcome ? 1 : 0;
        group.unknown += course.outcome ? 0 : 1;
        group.complicated += course.outcome && course.outcome->complicated ? 1 : 0;
    }
    std::vector<GroupShare> ordered;
    for (auto& [name, group] : groups) {
        group.share = learning::shareOf(group.complicated, group.known);
        ordered.push_back(std::move(group));
    }
    std::stable_sort(ordered.begin(), ordered.end(), [](const GroupShare& a, const GroupShare& b) {
        return a.known + a.unknown > b.known + b.unknown;
    });
    return ordered;
}

}  // namespace ebbline::learning
