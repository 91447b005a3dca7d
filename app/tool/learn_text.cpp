// The report of `ebbline learn` as a person reads it.

#include "app/tool/learn_report.h"

#include "app/tool/number_words.h"

#include "core/clock/iso8601.h"

#include <cmath>
#include <cstdarg>
#include <cstdio>
#include <ostream>

namespace ebbline::tool {

namespace {

using namespace learning;

/// One formatted piece; longer names are cut.
[[gnu::format(printf, 1, 2)]] std::string formatted(const char* format, ...)
{
    char text[256];
    std::va_list values;
    va_start(values, format);
    std::vsnprintf(text, sizeof text, format, values);
    va_end(values);
    return text;
}

/// To one decimal, and a small negative number as 0.0 rather than -0.0.
double tenth(double value)
{
    return std::round(10 * value) / 10 + 0.0;
}

std::string percent(double share, double low, double high)
{
    return formatted("%.1f %% (%.1f to %.1f)", 100 * share, 100 * low, 100 * high);
}

std::string shown(const learning::Answer<Share>& share)
{
    return share ? percent(share->share, share->limits.low, share->limits.high) : sentence(share.error());
}

/// `0.961`; `below 0.001` and `above 0.999` rather than 0.000 and 1.000.
std::string thousandths(double p)
{
    if (p < 0.0005)
        return "below 0.001";
    return p > 0.9995 ? "above 0.999" : formatted("%.3f", p);
}

/// `12.3 of 100`; `fewer than 0.1 of 100` rather than 0.0.
std::string ofHundred(double p)
{
    return p > 0 && p < 0.0005 ? "fewer than 0.1 of 100" : formatted("%.1f of 100", 100 * p);
}

void printShares(const char* title, const std::vector<GroupShare>& groups, std::ostream& out)
{
    if (groups.empty())
        return;
    out << title << "\n";
    for (const GroupShare& group : groups)
        out << formatted("  %-28s %5ld of %-6ld ", group.group.empty() ? "not told" : group.group.c_str(), group.complicated,
                         group.known)
            << shown(group.share) << (group.unknown > 0 ? formatted(", %ld not known", group.unknown) : "") << "\n";
}

std::string shown(const std::optional<Median>& median)
{
    if (!median)
        return "not reached";
    return formatted("%.1f (%s to %s)", median->days, median->low ? formatted("%.1f", *median->low).c_str() : "-",
                     median->high ? formatted("%.1f", *median->high).c_str() : "-");
}

void printResolution(const std::vector<Resolution>& resolutions, std::ostream& out)
{
    out << "Days until it is gone: 1 or below on two days in a row that last, worse side (95 %)\n"
        << "  symptom     courses  gone  median, middle of gaps   median, end of gaps      mean to day 20\n";
    for (const Resolution& resolution : resolutions) {
        out << formatted("  %-11s %7ld %5ld  ", std::string(recovery::word(resolution.symptom)).c_str(), resolution.courses,
                         resolution.resolved);
        if (!resolution.times) {
            out << sentence(resolution.times.error()) << "\n";
            continue;
        }
        const Times& times = *resolution.times;
        out << formatted("%-24s %-24s ", shown(times.median).c_str(), shown(times.medianLater).c_str())
            << (times.mean ? formatted("%.1f (%.1f to %.1f)", times.mean->days, times.mean->low, times.mean->high)
                           : sentence(times.mean.error()))
            << "\n";
    }
}

/// How often the chart signals by chance, and how often if there is something.
void printChance(const LearnReport& report, std::ostream& out)
{
    if (const auto& risks = report.risks)
        out << "  with all at the lowest or all at the highest of these risks: by chance alone at least one signal in "
            << ofHundred(risks->falseSignal.first) << " to " << ofHundred(risks->falseSignal.second) << " such series; in "
            << ofHundred(risks->found.first) << " to " << ofHundred(risks->found.second);
    else
        out << "  by chance alone at least one signal in " << ofHundred(report.watch.falseSignal) << " such series; in "
            << ofHundred(report.watch.found);
    out << formatted(" if the odds are %g times as large\n", report.design.oddsRatio);
}

void printWatch(const LearnReport& report, std::ostream& out)
{
    const PracticeWatch& watch = report.watch;
    out << formatted("Practice over time: risk %g, odds ratio %g, decision %g\n", report.design.risk, report.design.oddsRatio,
                     report.design.decision);
    if (!report.risks)
        out << "  the same risk is taken for every course: what a patient brings along is not adjusted for\n";
    else
        out << formatted("  %ld of %zu courses have a risk of their own (all risks: %g to %g)", watch.ownRisks, watch.points.size(),
                         report.risks->lowest, report.risks->highest)
            << "; adjusted for what these risks tell, and for nothing else\n";
    if (watch.points.empty()) {
        out << "  no course with a known outcome\n";
        return;
    }
    out << formatted("  courses %zu, signals %ld; expected - observed %.2f; sum now %.2f\n", watch.points.size(), watch.signalCount,
                     watch.points.back().expectedMinusObserved, watch.points.back().sum);
    for (const WatchPoint& point : watch.points)
        if (point.signal)
            out << "  signal at " << point.course << ", treated " << clock::toIso8601(point.treated)
                << formatted(", sum %.2f\n", point.sum);
    if ((report.risks ? report.risks->found.second : watch.found) <= 0)
        out << "  so few courses can not bring this sum to a signal, whatever became of them: that there is none says nothing\n";
    else
        printChance(report, out);
    if (!watch.settled)
        out << formatted("  not settled: %ld courses have no known outcome, some of them before the last one shown\n", watch.unknown);
}

void printPool(const learning::Answer<Pool>& pool, std::ostream& out)
{
    out << "Clinics pooled\n";
    if (!pool) {
        out << "  " << sentence(pool.error()) << "\n";
        return;
    }
    if (!pool->between)
        out << "  they differ no more than chance makes them: one share for all\n";
    for (const PooledClinic& clinic : pool->clinics)
        out << formatted("  %-28s %5ld of %-6ld ", clinic.counts.name.empty() ? "not told" : clinic.counts.name.c_str(),
                         clinic.counts.complicated, clinic.counts.known)
            << shown(clinic.own) << "; pooled " << percent(clinic.share, clinic.limits.low, clinic.limits.high) << "\n";
}

void printComparison(const Comparison& comparison, std::ostream& out)
{
    out << comparison.first.group << " against " << comparison.second.group << ": " << caution << "\n";
    for (const GroupShare* group : {&comparison.first, &comparison.second})
        out << formatted("  %-28s %5ld of %-6ld ", group->group.c_str(), group->complicated, group->known)
            << shown(group->share) << "\n";
    if (const auto& shares = comparison.shares) {
        out << formatted("  difference %.1f points of 100 (%.1f to %.1f); ", tenth(100 * shares->difference.difference),
                         tenth(100 * shares->difference.low), tenth(100 * shares->difference.high))
            << (shares->probability ? "Fisher's " + probabilityText(*shares->probability) + "; "
                                    : std::string("no test: all ended alike; "))
            << "P(first lower) " << thousandths(shares->firstLower) << "\n"
            << formatted("  so many courses find a doubling of %.1f %% in %.0f of 100 cases, and ", 100 * shares->reference,
                         100 * shares->powerForDouble)
            << (shares->smallestFound ? formatted("%.1f %% or more in 80\n", 100 * *shares->smallestFound)
                                      : std::string("nothing at all in 80\n"));
    } else {
        out << "  complications: " << sentence(shares.error()) << "\n";
    }
    for (const auto& [symptom, times] : comparison.symptoms) {
        out << formatted("  %-11s ", std::string(recovery::word(symptom)).c_str());
        if (times)
            out << formatted("days to day 20: %.1f - %.1f = %.1f (%.1f to %.1f); log-rank %s; found in 80 of 100: %.1f days\n",
                             times->first.days, times->second.days, tenth(times->difference), tenth(times->low), tenth(times->high),
                             probabilityText(times->probability).c_str(), times->smallestFound);
        else
            out << sentence(times.error()) << "\n";
    }
    out << "  each symptom is a test of its own: among seven, one p below 0.05 is common if nothing differs\n";
}

void printLot(const LotTrace& lot, std::ostream& out)
{
    out << "Lot " << lot.key << ": courses " << lot.courses.size() << "\n";
    for (const LotCourse& course : lot.courses)
        out << "  " << course.course << ", treated " << clock::toIso8601(course.treated) << ", written " << course.printed << ": "
            << (!course.complicated ? "outcome not known" : *course.complicated ? "complicated" : "uncomplicated") << "\n";
}

}  // namespace

void printText(const LearnReport& report, std::ostream& out)
{
    out << "Courses: " << report.courses << "\n";
    printShares("Complicated courses of those whose outcome is known (Wilson, 95 %)", report.all, out);
    printShares("By kind; a course with two counts in both", report.kinds, out);
    printShares("By technique", report.techniques, out);
    printShares("By zone; a course counts in every zone that it has", report.zones, out);
    printResolution(report.resolutions, out);
    printWatch(report, out);
    if (report.pool)
        printPool(*report.pool, out);
    printShares("Clinics, each by itself", report.clinics, out);
    if (report.comparison)
        printComparison(*report.comparison, out);
    if (report.lot)
        printLot(*report.lot, out);
}

}  // namespace ebbline::tool
