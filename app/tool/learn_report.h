#pragma once
/// \file
/// What many courses teach, gathered for an auditor, and as text or JSON.

#include "core/learning/clinics.h"
#include "core/learning/comparison.h"
#include "core/learning/lots.h"
#include "core/learning/practice_watch.h"

#include <iosfwd>
#include <utility>

namespace ebbline::tool {

/// What a chart says where courses have risks of their own: with all at the lowest of them, and with all at the highest.
struct RiskRange {
    double lowest;
    double highest;
    std::pair<double, double> falseSignal;  ///< as PracticeWatch has it, smaller first
    std::pair<double, double> found;
};

struct LearnReport {
    std::size_t courses = 0;
    std::vector<learning::GroupShare> all;  ///< one, or none without a course
    std::vector<learning::GroupShare> kinds;
    std::vector<learning::GroupShare> techniques;
    std::vector<learning::GroupShare> zones;
    std::vector<learning::Resolution> resolutions;  ///< in the order of recovery::allSymptoms
    learning::WatchDesign design;
    learning::PracticeWatch watch;
    std::optional<RiskRange> risks;         ///< if courses have risks of their own; the watch then has no odds
    std::vector<std::string> signalledAt;  ///< courses at which the practice signalled
    std::optional<learning::Answer<learning::Pool>> pool;  ///< with more than one clinic
    std::vector<learning::GroupShare> clinics;             ///< each by itself, where they can not be pooled
    std::optional<learning::Comparison> comparison;
    std::optional<learning::LotTrace> lot;
};

/// \returns as learning::watchPoints().
Result<LearnReport> learnReport(const std::vector<learning::PastCourse>& courses, const learning::WatchDesign& design);

void printText(const LearnReport& report, std::ostream& out);
void printJson(const LearnReport& report, std::ostream& out);

}  // namespace ebbline::tool
