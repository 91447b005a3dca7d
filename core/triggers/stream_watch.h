#pragma once
/// \file
/// The running statistics of one stream (one symptom on one side), fed day by day.
///
/// Inside of core/triggers. A day may be fed several times, each time with the highest score so
/// far: only what stood at the end of the day before is kept, so re-feeding a day is exact.

#include "core/statistics/local_level.h"
#include "core/triggers/protocol.h"

#include <optional>
#include <vector>

namespace ebbline::triggers {

/// What the statistics say at one moment.
struct StreamReading {
    int day = 0;
    int points = 0;
    double z = 0;
    double level = 0;        ///< EWMA of z
    double rebound = 0;      ///< upper CUSUM of standardised innovations
    double slow = 0;         ///< mean of the last three observed z, from the first slow day on
    int lowest = 10;         ///< lowest score of the days before today
    int peak = 0;            ///< highest score so far
    double lastThree = 0;    ///< mean of the last three observed scores
    int observedDays = 0;
    bool declinedTwoDays = false;  ///< the minimum came after at least two days of falling
    std::optional<int> aWeekBefore;  ///< score six to eight days ago
};

class StreamWatch {
public:
    StreamWatch(recovery::Symptom symptom, const Protocol& protocol);

    /// Days never go backwards. Same day again: with the highest score so far.
    StreamReading feed(int day, int points);

private:
    struct State {
        int day = -1;
        double level = 0;
        double rebound = 0;
        statistics::LocalLevelFilter filter;
    };
    State advanced(int day, double z) const;

    recovery::Symptom m_symptom;
    const Protocol& m_protocol;
    State m_before;                              ///< at the end of the last finished day
    std::optional<std::pair<int, int>> m_today;  ///< day and points not yet finished
    std::vector<std::pair<int, int>> m_days;     ///< finished days
};

}  // namespace ebbline::triggers
