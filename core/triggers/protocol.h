#pragma once
/// \file
/// A protocol: care plan, triggers with their thresholds, and band, as one versioned thing that
/// the clinic signs and the phone carries, so that it works offline.

#include "core/aftercare/care_plan.h"
#include "core/bands/band.h"

namespace ebbline::triggers {

/// Stored and sent: never renumber.
enum class Trigger : std::uint8_t {
    level = 1,
    rebound = 2,
    sideDivergence = 3,
    slowRecovery = 4,
    persistentPuckering = 5,
    silence = 6,
};

/// `level`, `rebound`, `side-divergence`, `slow-recovery`, `persistent-puckering`, `silence`.
std::string_view word(Trigger trigger);
Result<Trigger> triggerFromWord(std::string_view text);

/// Thresholds of the running statistics (core/triggers/statistic.h) and the guards in raw points.
/// Each has its ground in docs/clinical/thresholds.md; calibration replaces the statistics'
/// thresholds only. These are calibrated to 10 false alerts per 100 uncomplicated courses of the
/// invented cohort under the seed band.
struct Thresholds {
    double level = 4.46;           ///< of one stream's level of z and the points beyond the band
    double levelOverall = 1.69;    ///< of the level of z over all symptoms
    double rebound = 9.32;         ///< of one stream's cumulative sum
    double sideDivergence = 3.64;  ///< of one symptom's average difference
    double oneSideFills = 5.56;    ///< of the logarithm of the likelihood ratio, first days
    double oneSideWorsens = 6.42;  ///< of the logarithm of the likelihood ratio
    double slowRecovery = 3.06;    ///< of one stream
    double slowOverall = 1.05;     ///< over all symptoms
    int levelGuard = 3;              ///< score points
    int reboundGuard = 2;            ///< points above the own minimum (Farrar 2001)
    int reboundFirstDay = 3;
    int sideGuard = 3;               ///< points between the sides
    int fillingLastDay = 4;          ///< a side fills with blood in the first days
    int fillingGuard = 5;            ///< points between the sides, all four symptoms together
    int worseningGuard = 4;          ///< points between the sides, pain, swelling and tightness together
    int slowFirstDay = 8;
    int slowPeakGuard = 3;
    int slowGuard = 2;
    int puckeringDay = 21;
    int puckeringGuard = 2;
    int puckeringStuckDay = 10;      ///< from here on a deep fold that has not moved for a week is noted
    int puckeringStuckGuard = 3;
    int puckeringKeptDay = 8;        ///< from here on a fold that keeps most of its beginning is noted
    int puckeringLateDay = 12;       ///< from here on a fold is noted whatever it was
    int puckeringTogether = 7;       ///< points of its last three days together
    int silentDays = 3;              ///< days without an entry
    int silentDaysWhenHigh = 2;      ///< the same after an entry above the usual range
    double falseAlertBudget = 10;    ///< per 100 uncomplicated courses, what it was calibrated to
    std::string calibratedOn = "8000 invented courses";
    bool operator==(const Thresholds&) const = default;
};

/// Bounds of a threshold of a statistic, above the first and up to the second, and of the budget: our choice.
/// At 0 or less every entry past the guard would alert; far above what 22 days of scores can reach, nothing.
inline constexpr double lowestThreshold = 0;
inline constexpr double highestThreshold = 100;
inline constexpr double smallestBudget = 0.5;
inline constexpr double largestBudget = 50;

/// \returns Reason::notFinite or Reason::outOfRange naming the threshold. The guards in points and days are the
///          file's and the journal's to hold, each to its own bounds.
Done check(const Thresholds& thresholds);

/// What a protocol of the first form carried for two statistics that are judged no longer: kept so
/// that the bytes which a clinic signed can be made again.
struct FormerThresholds {
    double sideRebound = 0;
    double filling = 0;
    bool operator==(const FormerThresholds&) const = default;
};

struct Protocol {
    std::string name;       ///< "Face, standard"
    int version = 1;
    aftercare::CarePlan carePlan;
    Thresholds thresholds;
    bands::Band band = bands::seedBand();
    std::optional<FormerThresholds> former{};  ///< it came in the first form (docs/formats/protocol.md)

    bool operator==(const Protocol&) const = default;
};

Protocol defaultProtocol();

}  // namespace ebbline::triggers
