#include "app/tool/learn_report.h"

#include "app/tool/number_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <ostream>

namespace ebbline::tool {

namespace {

using Json = nlohmann::ordered_json;
using namespace learning;

Json lackJson(const NotEnough& lack)
{
    return {{"notEnough", sentence(lack)}, {"have", lack.have}, {"want", lack.want}};
}

Json limitsJson(double value, double low, double high)
{
    return {{"value", value}, {"low", low}, {"high", high}};
}

Json shareJson(const GroupShare& group)
{
    Json json{{"group", group.group}, {"complicated", group.complicated}, {"known", group.known}, {"unknown", group.unknown}};
    json["share"] = group.share ? limitsJson(group.share->share, group.share->limits.low, group.share->limits.high)
                                : lackJson(group.share.error());
    return json;
}

Json sharesJson(const std::vector<GroupShare>& groups)
{
    Json json = Json::array();
    for (const GroupShare& group : groups)
        json.push_back(shareJson(group));
    return json;
}

Json medianJson(const std::optional<Median>& median)
{
    if (!median)
        return nullptr;
    Json json{{"days", median->days}};
    json["low"] = median->low ? Json(*median->low) : Json(nullptr);
    json["high"] = median->high ? Json(*median->high) : Json(nullptr);
    return json;
}

Json resolutionJson(const Resolution& resolution)
{
    Json json{{"symptom", recovery::word(resolution.symptom)},
              {"courses", resolution.courses},
              {"resolved", resolution.resolved},
              {"never", resolution.never}};
    if (!resolution.times) {
        json["times"] = lackJson(resolution.times.error());
        return json;
    }
    const Times& times = *resolution.times;
    json["times"] = {{"median", medianJson(times.median)}, {"medianLater", medianJson(times.medianLater)}};
    json["times"]["meanToDay20"] =
        times.mean ? limitsJson(times.mean->days, times.mean->low, times.mean->high) : lackJson(times.mean.error());
    return json;
}

Json comparisonJson(const Comparison& comparison)
{
    Json json{{"caution", caution}, {"first", shareJson(comparison.first)}, {"second", shareJson(comparison.second)}};
    if (const auto& shares = comparison.shares) {
        json["shares"] = {{"difference", limitsJson(shares->difference.difference, shares->difference.low, shares->difference.high)},
                          {"reference", shares->reference},
                          {"powerForDouble", shares->powerForDouble},
                          {"smallestFound", shares->smallestFound ? Json(*shares->smallestFound) : Json(nullptr)}};
        if (shares->probability)
            setProbability(json["shares"], "fisher", *shares->probability);
        else
            json["shares"]["fisher"] = nullptr;
        setIntegrated(json["shares"], "firstLower", shares->firstLower, statistics::probabilityLowerError);
    } else {
        json["shares"] = lackJson(shares.error());
    }
    json["times"] = Json::array();
    for (const auto& [symptom, times] : comparison.symptoms) {
        Json row{{"symptom", recovery::word(symptom)}};
        if (times) {
            row["times"] = {{"first", limitsJson(times->first.days, times->first.low, times->first.high)},
                            {"second", limitsJson(times->second.days, times->second.low, times->second.high)},
                            {"difference", limitsJson(times->difference, times->low, times->high)},
                            {"smallestFound", times->smallestFound}};
            setProbability(row["times"], "logRank", times->probability);
        } else {
            row["times"] = lackJson(times.error());
        }
        json["times"].push_back(std::move(row));
    }
    return json;
}

Json watchJson(const LearnReport& report)
{
    const PracticeWatch& watch = report.watch;
    Json json{{"risk", report.design.risk},
              {"oddsRatio", report.design.oddsRatio},
              {"decision", report.design.decision},
              {"courses", watch.points.size()},
              {"unknown", watch.unknown},
              {"settled", watch.settled},
              {"signals", watch.signalCount},
              {"signalledAt", report.signalledAt}};
    json["sum"] = watch.points.empty() ? Json(nullptr) : Json(watch.points.back().sum);
    json["expectedMinusObserved"] = watch.points.empty() ? Json(nullptr) : Json(watch.points.back().expectedMinusObserved);
    const bool oneRisk = !watch.points.empty() && !report.risks;
    const bool canSignal = !watch.points.empty() && (report.risks ? report.risks->found.second : watch.found) > 0;
    json["canSignal"] = canSignal;
    json["falseSignal"] = oneRisk && canSignal ? Json(watch.falseSignal) : Json(nullptr);
    json["found"] = oneRisk && canSignal ? Json(watch.found) : Json(nullptr);
    json["ownRisks"] = watch.ownRisks;
    if (const auto& risks = report.risks) {
        json["lowestRisk"] = risks->lowest;
        json["highestRisk"] = risks->highest;
        json["falseSignalLeast"] = risks->falseSignal.first;
        json["falseSignalMost"] = risks->falseSignal.second;
        json["foundLeast"] = risks->found.first;
        json["foundMost"] = risks->found.second;
    }
    return json;
}

Json poolJson(const learning::Answer<Pool>& pool)
{
    if (!pool)
        return lackJson(pool.error());
    Json json;
    json["differ"] = pool->between.has_value();
    json["clinics"] = Json::array();
    for (const PooledClinic& clinic : pool->clinics)
        json["clinics"].push_back({{"clinic", clinic.counts.name},
                                   {"complicated", clinic.counts.complicated},
                                   {"known", clinic.counts.known},
                                   {"own", clinic.own ? limitsJson(clinic.own->share, clinic.own->limits.low, clinic.own->limits.high)
                                                      : lackJson(clinic.own.error())},
                                   {"pooled", limitsJson(clinic.share, clinic.limits.low, clinic.limits.high)}});
    return json;
}

Json lotJson(const LotTrace& lot)
{
    Json json{{"lot", lot.key}, {"courses", Json::array()}, {"share", shareJson(lot.share)}};
    for (const LotCourse& course : lot.courses)
        json["courses"].push_back({{"course", course.course},
                                   {"printed", course.printed},
                                   {"complicated", course.complicated ? Json(*course.complicated) : Json(nullptr)}});
    return json;
}

RiskRange rangeOf(const PracticeWatch& watch, const WatchDesign& design)
{
    const auto [lowest, highest] = std::ranges::minmax(watch.points, {}, &WatchPoint::risk);
    const auto allAt = [&](double risk) {
        PracticeWatch all = watch;
        WatchDesign at = design;
        at.risk = risk;
        watchOdds(all, at);
        return std::pair(all.falseSignal, all.found);
    };
    const auto low = allAt(lowest.risk);
    const auto high = allAt(highest.risk);
    return {lowest.risk, highest.risk, std::minmax({low.first, high.first}), std::minmax({low.second, high.second})};
}

}  // namespace

Result<LearnReport> learnReport(const std::vector<PastCourse>& courses, const WatchDesign& design)
{
    LearnReport report;
    report.courses = courses.size();
    report.all = complicationShares(courses, By::nothing);
    for (GroupShare& group : report.all)
        group.group = "all";
    report.kinds = complicationKinds(courses);
    report.techniques = complicationShares(courses, By::technique);
    report.zones = complicationShares(courses, By::zone);
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        report.resolutions.push_back(resolutionOf(courses, symptom));
    report.design = design;
    auto watch = watchPoints(courses, design);
    if (!watch)
        return fail(watch.error());
    if (watch->ownRisks > 0)
        report.risks = rangeOf(*watch, design);
    else
        watchOdds(*watch, design);
    for (const WatchPoint& point : watch->points)
        if (point.signal)
            report.signalledAt.push_back(point.course);
    report.watch = std::move(*watch);
    if (const auto counts = countsByClinic(courses); counts.size() > 1)
        report.pool = poolClinics(counts);
    // Not drawn together, each still has its own share.
    if (report.pool && !*report.pool)
        report.clinics = complicationShares(courses, By::clinic);
    return report;
}

void printJson(const LearnReport& report, std::ostream& out)
{
    Json json{{"courses", report.courses}};
    json["complicated"] = report.all.empty() ? shareJson({}) : shareJson(report.all.front());
    json["kinds"] = sharesJson(report.kinds);
    json["techniques"] = sharesJson(report.techniques);
    json["zones"] = sharesJson(report.zones);
    json["resolution"] = Json::array();
    for (const Resolution& resolution : report.resolutions)
        json["resolution"].push_back(resolutionJson(resolution));
    json["practice"] = watchJson(report);
    if (report.pool)
        json["clinics"] = poolJson(*report.pool);
    if (!report.clinics.empty())
        json["clinicShares"] = sharesJson(report.clinics);
    if (report.comparison)
        json["comparison"] = comparisonJson(*report.comparison);
    if (report.lot)
        json["lot"] = lotJson(*report.lot);
    out << json.dump(1) << "\n";
}

}  // namespace ebbline::tool
