#pragma once
/// \file
/// Time until something happens, when some were last seen before it did (right censoring).
///
/// At the same time events come before those last seen: whoever leaves at t was at risk at t.
/// Assumes that who leaves early is no different from who stays; people who feel well and stop
/// writing break that.
/// Sources: E. L. Kaplan, P. Meier, "Nonparametric estimation from incomplete observations", Journal of
/// the American Statistical Association 53 (1958) 457-481; J. P. Klein, M. L. Moeschberger, "Survival
/// Analysis", 2nd ed., Springer 2003, sections 4.2 to 4.5. Unit of time: whatever the caller has.

#include "core/result/result.h"
#include "core/statistics/proportions.h"

#include <optional>
#include <span>
#include <vector>

namespace ebbline::statistics {

/// One that was followed.
struct Followed {
    double time;  ///< of the event, or when last seen; >= 0
    bool event;
};

/// The curve from one time of events on.
struct SurvivalStep {
    double time;
    long atRisk;   ///< just before
    long events;
    double survival;                      ///< share without the event after `time`
    std::optional<double> standardError;  ///< Greenwood's; none once the curve is at 0
    std::optional<Interval> limits;       ///< by log(-log); none once the curve is at 0
};

struct SurvivalCurve {
    std::vector<SurvivalStep> steps;  ///< by time; none without an event
    long followed = 0;
    double lastSeen = 0;              ///< the longest time; nothing is known beyond it

    /// Share without the event after `time`; none beyond lastSeen unless the curve is at 0 by then.
    std::optional<double> at(double time) const;
    /// First time at which at most half are without the event; none if that is not reached.
    std::optional<double> median() const;
};

/// Product-limit curve.
/// \returns Reason::outOfRange for a time that is negative or not finite or a confidence not within
///          0..1; Reason::notEnough without anybody.
Result<SurvivalCurve> kaplanMeier(std::span<const Followed> followed, double confidence = 0.95);

/// Mean time without the event up to a horizon.
struct RestrictedMean {
    double mean;
    std::optional<double> variance;  ///< none if nothing varied before the horizon: not enough to say
};

/// Area under the curve from 0 to `horizon`, variance by Greenwood's sum. Needs no proportional
/// hazards. Source: Klein and Moeschberger 2003, section 4.5.
/// \returns Reason::outOfRange unless horizon > 0; Reason::notEnough if nobody was followed that long.
Result<RestrictedMean> restrictedMean(const SurvivalCurve& curve, double horizon);

}  // namespace ebbline::statistics
