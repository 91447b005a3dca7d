#pragma once
/// \file
/// One symptom's sides against each other, and what both sides of an entry say together.
///
/// Inside of core/triggers. Exchanging left and right changes the sign and nothing else.

#include "core/bands/band.h"

#include <array>
#include <optional>

namespace ebbline::triggers {

/// Left against right of one symptom, day by day: EWMA of the difference in usual spreads.
class SideWatch {
public:
    /// The practitioner's scores right after the treatment start the comparison; scores are 0..10 here and below.
    void start(int left, int right);
    /// Days never go backwards; the same day again replaces itself. \returns the average, left positive.
    double feed(int day, int left, int right);

private:
    int m_day = -1;
    double m_before = 0;  ///< at the end of the day before
    double m_now = 0;
};

/// Scores of one moment by symptom and side; empty where nothing was answered.
using SideScores = std::array<std::array<std::optional<int>, 2>, 7>;

/// One number for each of swelling, pain, tightness and bruising, in this order; empty where a side
/// is missing.
using SideReadings = std::array<std::optional<double>, 4>;
inline constexpr std::array sideSymptoms{recovery::Symptom::swelling, recovery::Symptom::pain,
                                         recovery::Symptom::tightness, recovery::Symptom::bruising};

/// The difference between the sides on the even scale (bands::evenScale), left positive.
SideReadings differencesOf(const SideScores& scores);

/// Both sides together on the even scale, above what is expected of them on the day.
SideReadings sumsOf(const SideScores& scores, const bands::Band& band, int day);

}  // namespace ebbline::triggers
