#pragma once
/// \file
/// Learns band and thresholds from courses whose truth is known, to a budget of false alerts.
///
/// The budget counts uncomplicated courses with at least one alert in their 22 days, over all
/// triggers together: what a practitioner feels. An alert is a finding that asks somebody to act
/// before the review; silence has a list of its own. docs/statistics/calibration.md.

#include "core/bands/coverage.h"
#include "core/rehearsal/invented_course.h"
#include "core/triggers/statistic.h"

#include <functional>
#include <span>

namespace ebbline::rehearsal {

/// The largest value that each guarded statistic reaches in a course.
struct Peaks {
    std::array<double, triggers::allStatistics.size()> values{};  ///< `never` if its guard never held
    bool byRule = false;  ///< a rule in points alerts whatever the thresholds
};
inline constexpr double never = -1e9;

Peaks peaksOf(const triggers::CourseInput& course, const triggers::Protocol& protocol, const clock::Moment& until);

/// How much of the budget each statistic may spend, in relation to the others.
using Shares = std::array<double, triggers::allStatistics.size()>;
inline constexpr Shares usualShares{0.4, 0.6, 0.25, 0.15, 2.2, 3.0, 0.4, 2.2};

struct CalibrationSettings {
    double budget = 10;       ///< uncomplicated courses with an alert, per 100; 0.5 .. 50
    std::uint64_t seed = 1;   ///< of the resampling; the same seed gives the same protocol
    int resamples = 60;       ///< 10 .. 1000
    bool learnBand = true;    ///< otherwise the thresholds alone
    std::optional<Shares> shares{};  ///< empty: divided by what assumed trouble on these courses would find
    std::function<void(int done, int of)> progress;  ///< may be empty
};

struct Calibration {
    triggers::Protocol protocol;
    int plainCourses = 0;
    /// Share of courses outside a resample that alert under the thresholds that would come of it, drawn
    /// towards the start's where courses are few: the more honest figure, and a little too good all the same, since all
    /// courses taught the band and the division of the budget (docs/statistics/calibration.md). Below enoughForThresholds courses
    /// it may lie above the budget.
    double heldOutRate = 0;
    double fittedRate = 0;   ///< share of the courses it was fitted to
    Shares shares = usualShares;  ///< how the budget was divided; the usual below enoughForThresholds
    double ruleRate = 0;     ///< share that alerts by rules in points alone
    Shares statisticRate{};  ///< share of courses by statistic
    /// False: too few courses, drawn towards the thresholds it started from and not shown to hold the budget.
    bool ownThresholds = true;
    /// The strictest thresholds that these courses give: even they alert more often outside of the resamples than was
    /// aimed at, so that a smaller budget would change nothing. With few courses only.
    bool strictest = false;
    /// Of the learned band on courses that it has not seen; empty if none was to be learned.
    std::optional<bands::Coverage> coverage{};
    /// Why the learned band was not taken: the protocol keeps the band it started from. Empty: it was.
    std::string bandObjection{};
};

inline constexpr int fewestToCalibrate = 20;     ///< uncomplicated courses
inline constexpr int enoughForThresholds = 300;  ///< below: thresholds are drawn towards the start's

/// Uses the uncomplicated courses only, and of them what was written up to the evening of day 21 (endOf()). `start` gives care
/// plan and guards, and the band that holds if none is learned or the learned one fails its check. A band is learned from
/// bands::seedBand() whatever band `start` has: one that these courses taught already would count them twice. A learned band
/// is called "calibrated-", the last day of a treatment and eight digits of the hash of what stands
/// behind it (bands::groundsHash; a course's id is taken from its name), and is used only if it holds on
/// courses that it has not seen (bands::objection).
/// \returns Reason::notEnough with fewer than fewestToCalibrate of them, Reason::outOfRange for a
///          setting, Reason::alreadyExists if two courses have one name, Reason::refused if the rules in
///          points alone spend the budget or no thresholds hold it.
Result<Calibration> calibrate(std::span<const KnownCourse> courses, const triggers::Protocol& start,
                              const CalibrationSettings& settings);

}  // namespace ebbline::rehearsal
