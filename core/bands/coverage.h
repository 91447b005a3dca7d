#pragma once
/// \file
/// Does a learned band hold what it says, on courses that it has not seen?
///
/// Ten-fold cross-validation by whole courses, in the order of their ids: each tenth is judged by the
/// band learned from the other nine. Counted is the share of readings above the 90th and above the
/// 97th centile, because that side raises alerts. Scores are whole numbers, so a band promises less
/// than 10 % and 3 %; what it promises for exactly these readings is added up from its own
/// distributions and compared. Intervals allow for readings of a course resembling each other
/// (core/statistics/clustered_share), at a nominal 95 % over all symptoms and both centiles together
/// (Bonferroni). Criterion and limits: docs/statistics/band.md.

#include "core/bands/learn_band.h"
#include "core/recovery/entry.h"
#include "core/statistics/proportions.h"

#include <optional>
#include <span>
#include <vector>

namespace ebbline::bands {

/// A course that teaches, under its name.
struct Taught {
    recovery::CourseId course;
    TaughtCourse days;
    bytes::Array<32> told{};  ///< digest of all that the days and the movements are made of (rehearsal::toldBy)
};

inline constexpr int folds = 10;
inline constexpr int fewestForSymptom = 10;      ///< courses with a reading; below: not enough to say
inline constexpr double tolerated90 = 0.02;      ///< share of readings by which a promise may be missed
inline constexpr double tolerated97 = 0.01;
inline constexpr double mostAbove90 = 0.20;      ///< upper limit over all symptoms, above the 90th

/// Stored: never renumber.
enum class Fit : std::uint8_t {
    notEnough = 0,  ///< too few courses score it: the band is nearly the seed's there
    holds = 1,
    tooNarrow = 2,  ///< more readings lie above than it promises: false alerts
    tooWide = 3,    ///< fewer do: it would look late
};

/// Held-out readings above one centile.
struct Above {
    double promised = 0;  ///< share, by the bands that did not see them
    double seen = 0;      ///< share
    double low = 0;       ///< interval of the seen share
    double high = 0;
    bool operator==(const Above&) const = default;
};

struct SymptomCoverage {
    recovery::Symptom symptom = recovery::Symptom::pain;
    std::int32_t courses = 0;   ///< with a reading of it
    std::int32_t readings = 0;
    Above above90;  ///< both empty where fit is notEnough
    Above above97;
    Fit fit = Fit::notEnough;
    bool operator==(const SymptomCoverage&) const = default;
};

struct Coverage {
    std::int32_t courses = 0;
    std::array<SymptomCoverage, 7> symptoms{};  ///< in the order of recovery::allSymptoms
    Above overall90;  ///< all symptoms together, interval at 95 %
    bool operator==(const Coverage&) const = default;
};

/// Empty if the band may be used. Otherwise why not, in words for a log: fewer than fewestCourses
/// courses; a symptom that is too narrow or too wide; or more than mostAbove90 not excluded.
std::optional<Error> objection(const Coverage& coverage);

/// \returns Reason::notEnough with fewer than `folds` courses, Reason::outOfRange for points outside
///          0..10, Reason::alreadyExists if a course is given twice.
Result<Coverage> crossValidate(std::span<const Taught> courses, const Band& seed);

/// The same figures of a band that was learned elsewhere, on courses that it has not seen. Too few of them are an
/// answer, too: objection() says so. \returns Reason::alreadyExists if a course is given twice.
Result<Coverage> coverageOf(std::span<const Taught> courses, const Band& band);

}  // namespace ebbline::bands
