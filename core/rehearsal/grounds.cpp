#include "core/rehearsal/grounds.h"

#include "core/rehearsal/calibrate.h"

#include <algorithm>
#include <charconv>
#include <tuple>
#include <vector>

namespace ebbline::rehearsal {

namespace {

constexpr std::string_view changedMark = ", rules changed since";
constexpr std::string_view fileMark = ", from a file";
constexpr std::string_view inventedCourses = " invented courses";
constexpr std::string_view uncomplicatedCourses = " uncomplicated courses";

}  // namespace

bool Grounds::isFew() const
{
    return courses && *courses < enoughForThresholds;
}

bool Grounds::isBudgetShown() const
{
    return courses && *courses >= enoughForThresholds && !changed && !invented && !brought;
}

Grounds groundsOf(const std::string& calibratedOn)
{
    Grounds grounds;
    std::string_view text = calibratedOn;
    if (text.ends_with(changedMark)) {
        grounds.changed = true;
        text.remove_suffix(changedMark.size());
    }
    if (text.ends_with(fileMark)) {
        grounds.brought = true;
        text.remove_suffix(fileMark.size());
    }
    int courses = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), courses);
    if (error != std::errc{} || courses < 0)
        return grounds;
    const std::string_view rest = text.substr(static_cast<std::size_t>(end - text.data()));
    grounds.invented = rest == inventedCourses;
    if (grounds.invented || rest == uncomplicatedCourses)
        grounds.courses = courses;
    return grounds;
}

std::string calibratedOn(std::size_t courses)
{
    return std::to_string(courses).append(uncomplicatedCourses);
}

std::string withChange(const std::string& calibratedOn)
{
    return groundsOf(calibratedOn).changed ? calibratedOn : calibratedOn + std::string(changedMark);
}

std::string withFile(const std::string& calibratedOn)
{
    const Grounds grounds = groundsOf(calibratedOn);
    if (grounds.brought)
        return calibratedOn;
    if (!grounds.changed)
        return calibratedOn + std::string(fileMark);
    return withChange(calibratedOn.substr(0, calibratedOn.size() - changedMark.size()) + std::string(fileMark));
}

bool sameRules(const triggers::Thresholds& a, const triggers::Thresholds& b)
{
    triggers::Thresholds other = b;
    for (const triggers::Statistic statistic : triggers::allStatistics)
        triggers::thresholdOf(other, statistic) = triggers::thresholdOf(a, statistic);
    other.falseAlertBudget = a.falseAlertBudget;
    other.calibratedOn = a.calibratedOn;
    return other == a;
}

bool sameAsking(const aftercare::CarePlan& a, const aftercare::CarePlan& b)
{
    const auto asking = [](const aftercare::CarePlan& plan) {
        std::vector<std::tuple<int, int, int, std::size_t>> all;
        for (const aftercare::Instruction& one : plan.instructions)
            if (one.kind == aftercare::InstructionKind::diaryEntry)
                all.emplace_back(one.firstDay, one.lastDay, one.everyDays, one.minutesOfDay.size());
        std::sort(all.begin(), all.end());
        return all;
    };
    return asking(a) == asking(b);
}

}  // namespace ebbline::rehearsal
