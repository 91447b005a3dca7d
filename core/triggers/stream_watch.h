#pragma once
/// \file
/// The running statistics of one stream (one symptom on one side), fed day by day.
///
/// Inside of core/triggers. A day may be fed several times, each time with the highest score so
/// far: only what stood at the end of the day before is kept, so re-feeding a day is exact.

#include "core/triggers/protocol.h"

#include <array>
#include <optional>

namespace ebbline::triggers {

/// What the statistics say at one moment.
struct StreamReading {
    int day = 0;
    int points = 0;
    double z = 0;
    double surprise = 0;     ///< standardised innovation of today's z, within +-3
    double level = 0;        ///< of z, filtered (local level)
    double rebound = 0;      ///< upper CUSUM of the surprises
    double sumOfThreeZ = 0;  ///< of the last three observed z, or of as many as there are
    int lastThreeSum = 0;    ///< of the scores of the same days
    int lastThreeDays = 1;   ///< how many those are
    int lowest = 10;         ///< lowest score of the days before today
    bool cameDown = false;   ///< a score before that lowest one was higher
    int peak = 0;            ///< highest score so far
    int observedDays = 0;
    bool declinedTwoDays = false;    ///< it had fallen over at least two days before
    std::optional<double> beginning;  ///< mean score up to day 4, the practitioner's included
    int lastTwoLowest = 0;   ///< lower of today's score and the last one before
    double early = 0;        ///< mean z of days 1 to 4, 0 if none was observed

    double lastThreeZ() const { return sumOfThreeZ / lastThreeDays; }
    double lastThree() const { return static_cast<double>(lastThreeSum) / lastThreeDays; }
};

/// What a variance of the level makes of a reading. Streams of a symptom that were read on the same days have the same:
/// it is reckoned for the first of them.
struct StreamGain {
    double before = -1;  ///< the level's variance on the day
    double root = 0;     ///< of the precision
    double gain = 0;
    double after = 0;
};

class StreamWatch {
public:
    StreamWatch(recovery::Symptom symptom, const bands::Band& band);

    /// The practitioner's score right after the treatment; before the first day is fed.
    void start(int points);

    /// Days never go backwards. Same day again: with the highest score so far.
    /// \param known  of this symptom and no other; the same for all its streams
    const StreamReading& feed(int day, int points, StreamGain& known);

    bool wasFed() const { return m_reading.observedDays > 0; }
    const StreamReading& reading() const { return m_reading; }
    /// Score six to eight days before the last reading.
    std::optional<int> aWeekBefore() const;

private:
    struct Day {
        int day = -1;
        int points = 0;
        double z = 0;
    };
    /// What stands at the end of a day.
    struct State {
        int day = 0;
        double rebound = 0;
        double mean = 0;      ///< of the local level of z
        double variance = 0;
    };
    void advance(StreamGain& known);
    void readBeginning();
    void finishDay();

    recovery::Symptom m_symptom;
    const bands::Band* m_band;
    State m_before;  ///< at the end of the last finished day
    State m_now;     ///< with today's highest score so far
    Day m_today;
    std::array<Day, 2> m_lastTwo{};   ///< finished days, the newest first
    int m_lowest = 10;
    int m_peak = 0;
    int m_finishedPeak = 0;  ///< of the days before today
    bool m_cameDown = false;
    int m_finished = 0;
    bool m_declined = false;
    double m_earlySum = 0;
    int m_earlyDays = 0;
    int m_beginningSum = 0;
    int m_beginningCount = 0;
    std::array<Day, 8> m_recent{};    ///< finished days by day modulo eight
    StreamReading m_reading;
};

}  // namespace ebbline::triggers
