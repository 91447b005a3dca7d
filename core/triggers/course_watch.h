#pragma once
/// \file
/// One course, fed entry by entry: every statistic whose guard in raw points holds, and every rule
/// that needs no threshold. The judge compares with the thresholds; calibration collects the
/// largest values of ordinary courses. Both see exactly the same numbers.
///
/// Inside of core/triggers and core/rehearsal.

#include "core/triggers/judge.h"
#include "core/triggers/one_side.h"
#include "core/triggers/statistic.h"
#include "core/triggers/stream_watch.h"

#include <span>

namespace ebbline::triggers {

/// Something an entry could raise.
struct Candidate {
    Trigger trigger;
    std::optional<Statistic> statistic;  ///< empty: a rule in points, which fires by itself
    double value = 0;
    recovery::Urgency urgency = recovery::Urgency::nextWorkingDay;
    recovery::Stream stream{recovery::Symptom::pain, recovery::Side::none};
    int score = 0;   ///< of the stream, or of the symptom that is shown
    int lowest = 0;  ///< of the stream before today
    bool neverFell = false;  ///< the stream had not come down to its lowest: it began there
    int left = 0;    ///< of the symptom, where sides are compared
    int right = 0;
    int apart = 0;   ///< points between the sides over several symptoms together
    double mean = 0;                      ///< of the stream's last three scores, where those are judged
    std::optional<int> weekBefore = {};   ///< what a fold is held against, if that is why it is noted
    std::optional<int> together = {};     ///< points of its last three days, the same
    std::optional<double> beginning = {}; ///< its mean score up to day 4, the same
    std::optional<recovery::Symptom> shown = {};  ///< what is told, which may be another symptom than the stream's
    bool overall = false;  ///< over all symptoms; the stream is that of the symptom that leads
};

class CourseWatch {
public:
    /// Both must outlive the watch.
    CourseWatch(const CourseInput& course, const Protocol& protocol);

    /// Entries come in order of time. An entry that says it was made before the treatment counts
    /// as made right after it: clocks differ, and an answer is never dropped.
    /// \returns what this entry could raise, until the next call.
    std::span<const Candidate> take(const Observation& observation);

    int day() const { return m_day; }  ///< of recovery, of the last entry

    /// Pain or swelling of the last entry stood above the usual range.
    bool endedHigh() const { return m_endedHigh; }

private:
    struct Highest {
        int day = -1;
        int points = 0;
    };
    using Streams = std::array<std::array<std::optional<StreamWatch>, 3>, 7>;

    void startSides();
    void judgeStream(const recovery::Stream& stream, const StreamWatch& watched);
    void judgeSlow(const recovery::Stream& stream, const StreamReading& reading);
    double beyondBand(recovery::Symptom symptom, int day, double points) const;
    void judgePuckering(const recovery::Stream& stream, const StreamWatch& watched);
    void judgeSides(const SideScores& entry);
    void judgeOneSide(const SideScores& entry, double hours);
    void judgeFilling(const SideScores& entry, std::size_t side);
    void judgeWorsening(const SideScores& entry, std::size_t side);
    Candidate risenMost(const SideScores& entry, std::size_t side);
    void judgeOverall();
    void fillsVisibly(const SideScores& entry, std::size_t side);
    std::optional<StreamWatch>& watch(recovery::Symptom symptom, std::size_t side);
    const Thresholds& limits() const { return m_protocol.thresholds; }

    const CourseInput& m_course;
    const Protocol& m_protocol;
    int m_day = 0;
    bool m_endedHigh = false;
    Streams m_streams;
    std::array<StreamGain, 7> m_gains;  ///< of each symptom
    std::array<std::array<Highest, 3>, 7> m_highest{};
    std::array<SideWatch, 7> m_sides;
    OneSideWatch m_bleeding;
    OneSideWatch m_inflaming;
    SideScores m_lastScores{};  ///< of each stream, the last reading before this entry
    std::vector<Candidate> m_candidates;
};

/// Whether a plan asks for an entry on a day; one that never asks is taken for one that asks daily.
bool asksForEntryOn(const aftercare::CarePlan& plan, int day);

/// The course's entries up to a moment in order of time, oldest first.
std::vector<const Observation*> inOrder(const CourseInput& course, const clock::Moment& until);

/// Hours since the treatment, 0 for an entry that says it was made before it.
double hoursSince(const clock::Moment& treated, const clock::Moment& at);

/// Both sides of an entry.
SideScores sidesOf(const recovery::Scores& scores);

/// One series of (days, value) for each of sideSymptoms.
using SideSeries = std::array<std::vector<std::pair<double, double>>, sideSymptoms.size()>;

/// The differences between the sides, the practitioner's scores first, and the sums of the sides
/// above what the band expects: what the movements of the sides are learned from.
SideSeries differencesIn(const CourseInput& course);
SideSeries sumsIn(const CourseInput& course, const bands::Band& band);

}  // namespace ebbline::triggers
