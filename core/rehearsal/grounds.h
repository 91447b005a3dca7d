#pragma once
/// \file
/// What the thresholds of a protocol rest on, kept in it as a text of its own form
/// (triggers::Thresholds::calibratedOn): how many courses, and whether the rules in points, or the days
/// on which the care plan asks, were changed afterwards. Whether a budget was shown to hold follows from it.

#include "core/triggers/protocol.h"

#include <optional>
#include <string>

namespace ebbline::rehearsal {

struct Grounds {
    std::optional<int> courses;  ///< none: the text is not of our form
    bool brought = false;        ///< they came in a file: other patients may stand behind them
    bool invented = false;       ///< of invented courses
    bool changed = false;        ///< rules in points, or the days that are asked about, were changed since

    /// Fewer than enoughForThresholds: drawn towards the thresholds before.
    bool isFew() const;
    /// Enough courses of real patients of this clinic, and judged beside the rules that they were calibrated with. Invented
    /// courses show how a budget holds for invented courses, a file how it held elsewhere.
    bool isBudgetShown() const;
};

Grounds groundsOf(const std::string& calibratedOn);

/// "300 uncomplicated courses".
std::string calibratedOn(std::size_t courses);

/// The same text with the mark of a change; once is enough.
std::string withChange(const std::string& calibratedOn);

/// The same text with the mark that it came in a file; once is enough.
std::string withFile(const std::string& calibratedOn);

/// All but the thresholds of the statistics, the budget and what they rest on.
bool sameRules(const triggers::Thresholds& a, const triggers::Thresholds& b);

/// Both ask for entries on the same days, as often: what patients write is what was calibrated on.
bool sameAsking(const aftercare::CarePlan& a, const aftercare::CarePlan& b);

}  // namespace ebbline::rehearsal
