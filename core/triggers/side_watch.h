#pragma once
/// \file
/// The running statistics that set one side against the other, or pool the symptoms of one side.
///
/// Inside of core/triggers. Exchanging left and right changes the sign and nothing else.

#include "core/bands/band.h"

#include <array>
#include <optional>
#include <vector>

namespace ebbline::triggers {

/// Left against right of one symptom, day by day: EWMA of the difference in usual spreads.
class SideWatch {
public:
    /// The practitioner's scores right after the treatment start the comparison.
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

/// The difference between the sides of pain, swelling, bruising and tightness, each on a scale on
/// which it is about equally noisy at any level, left positive; empty where a side is missing.
using SideDifferences = std::array<std::optional<double>, 4>;
SideDifferences differencesOf(const SideScores& scores);

/// Cumulative surprise of the pooled difference, reading by reading, on each side.
class FillingWatch {
public:
    explicit FillingWatch(const bands::Movement& movement);

    /// Readings come in order of time. One that follows within three hours replaces the last:
    /// it tells of the same state. \returns the sums of the left and the right side.
    std::array<double, 2> feed(double hours, const SideDifferences& differences);

private:
    struct Level {
        double hours = 0;
        double mean = 0;
        double variance = 0;
    };
    struct State {
        double hours = 0;
        std::array<Level, 4> levels{};
        std::array<double, 2> sums{};
    };
    bands::Movement m_movement;
    State m_before;  ///< before the last reading
    State m_now;
    bool m_fed = false;
};

/// Cumulative surprise over the symptoms of a side, day by day, less a share of the other side's.
class SidePool {
public:
    /// Surprises of the streams scored so far today, by symptom (pain, swelling, tightness) and
    /// side. \returns the sums of the left and the right side.
    using Surprises = std::array<std::array<std::optional<double>, 2>, 3>;
    std::array<double, 2> feed(int day, const Surprises& surprises);

private:
    int m_day = -1;
    std::array<double, 2> m_before{};
    std::array<double, 2> m_now{};
};

}  // namespace ebbline::triggers
