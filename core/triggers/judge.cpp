#include "core/triggers/judge.h"

#include "core/triggers/stream_watch.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace ebbline::triggers {

namespace {

using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using recovery::Urgency;

constexpr double sideWeight = 0.3;
constexpr int strongRebound = 3;        // points above the own minimum
constexpr int reboundCallScore = 4;     // Gerbershagen et al., Br J Anaesth 2011: treat from 4
constexpr int firstDaysOfSides = 3;     // a side that fills in the first days is called about now
constexpr int worseByPoints = 2;        // Farrar et al., Pain 2001
constexpr int longPuckeringDay = 28;

/// How far the two sides of an ordinary course lie apart, score points, by their mean level.
/// An assumption (docs/statistics/triggers.md).
double usualSideSpread(double meanLevel)
{
    return 0.5 + 0.2 * meanLevel;
}

/// Left against right of one symptom.
struct SideState {
    int day = -1;
    double before = 0;  ///< EWMA at the end of the day before
    double now = 0;
};

class Judge {
public:
    Judge(const CourseInput& course, const Protocol& protocol) : m_course(course), m_protocol(protocol)
    {
        for (const Symptom symptom : {Symptom::swelling, Symptom::bruising, Symptom::pain})
            seedSides(symptom);
    }

    std::vector<Finding> run(const clock::Moment& now)
    {
        std::vector<Observation> ordered;
        for (const Observation& observation : m_course.observations)
            if (observation.at.at <= now.at)
                ordered.push_back(observation);
        std::stable_sort(ordered.begin(), ordered.end(),
                         [](const Observation& a, const Observation& b) { return a.at.at < b.at.at; });
        clock::Moment last = m_course.treated;
        for (const Observation& observation : ordered) {
            silence(last, observation.at);
            take(observation);
            last = observation.at;
        }
        silence(last, now);
        return std::move(m_findings);
    }

private:
    const Thresholds& limits() const { return m_protocol.thresholds; }

    /// The practitioner's scores right after the treatment start the comparison of the sides.
    void seedSides(Symptom symptom)
    {
        const auto left = m_course.baseline.find({symptom, Side::left});
        const auto right = m_course.baseline.find({symptom, Side::right});
        if (left == m_course.baseline.end() || right == m_course.baseline.end())
            return;
        const int difference = left->second.points() - right->second.points();
        const double mean = (left->second.points() + right->second.points()) / 2.0;
        m_sides[symptom].before = sideWeight * difference / usualSideSpread(mean);
    }

    void take(const Observation& observation)
    {
        // Days never run backwards, even when somebody travels west across midnight.
        m_day = std::max(m_day, std::max(0, clock::dayOfRecovery(m_course.treated, observation.at)));
        for (const auto& [stream, score] : observation.scores) {
            auto& [day, highest] = m_highest[stream];
            if (day != m_day)
                highest = score.points();
            day = m_day;
            highest = std::max(highest, score.points());
            auto watch = m_watches.find(stream);
            if (watch == m_watches.end())
                watch = m_watches.emplace(stream, StreamWatch(stream.symptom, m_protocol)).first;
            judgeStream(observation.at, stream, watch->second.feed(m_day, highest));
        }
        for (const Symptom symptom : recovery::allSymptoms)
            judgeSides(observation, symptom);
    }

    void judgeStream(const clock::Moment& at, const Stream& stream, const StreamReading& reading)
    {
        const bool pain = stream.symptom == Symptom::pain;
        const double usualHigh = m_protocol.band.inner(stream.symptom, reading.day).high;
        if (reading.level > limits().level && reading.points >= limits().levelGuard)
            fire(Trigger::level, Urgency::nextWorkingDay, stream, at,
                 {{"score", reading.points}, {"usualHigh", usualHigh}, {"statistic", reading.level},
                  {"threshold", limits().level}});

        const int rise = reading.points - reading.lowest;
        const bool guarded = reading.day >= limits().reboundFirstDay && reading.observedDays > 1
                             && rise >= limits().reboundGuard;
        const bool strong = pain && rise >= strongRebound && reading.points >= reboundCallScore
                            && reading.declinedTwoDays;
        if (guarded && (reading.rebound > limits().rebound || strong))
            fire(Trigger::rebound,
                 pain && reading.points >= reboundCallScore ? Urgency::callNow : Urgency::nextWorkingDay, stream, at,
                 {{"score", reading.points}, {"lowest", reading.lowest}, {"statistic", reading.rebound},
                  {"threshold", limits().rebound}});

        if (reading.slow > limits().slowRecovery && reading.peak >= limits().slowPeakGuard
            && reading.lastThree >= limits().slowGuard)
            fire(Trigger::slowRecovery, Urgency::nextWorkingDay, stream, at,
                 {{"score", reading.points}, {"usualHigh", usualHigh}, {"statistic", reading.slow},
                  {"threshold", limits().slowRecovery}});

        if (stream.symptom == Symptom::puckering && reading.points >= limits().puckeringGuard
            && reading.day >= limits().puckeringDay) {
            const bool worse = reading.aWeekBefore && reading.points - *reading.aWeekBefore >= worseByPoints;
            fire(Trigger::persistentPuckering,
                 worse || reading.day > longPuckeringDay ? Urgency::nextWorkingDay : Urgency::atReview, stream, at,
                 {{"score", reading.points}});
        }
    }

    void judgeSides(const Observation& observation, Symptom symptom)
    {
        const auto left = m_highest.find({symptom, Side::left});
        const auto right = m_highest.find({symptom, Side::right});
        const bool scored = observation.scores.contains({symptom, Side::left})
                            || observation.scores.contains({symptom, Side::right});
        if (!scored || left == m_highest.end() || right == m_highest.end() || left->second.first != m_day
            || right->second.first != m_day)
            return;
        const int difference = left->second.second - right->second.second;
        const double mean = (left->second.second + right->second.second) / 2.0;
        SideState& state = m_sides[symptom];
        if (state.day >= 0 && state.day != m_day)
            state.before = state.now;
        state.day = m_day;
        state.now = state.before + sideWeight * (difference / usualSideSpread(mean) - state.before);
        if (std::abs(difference) < limits().sideGuard || std::abs(state.now) <= limits().sideDivergence
            || (difference > 0) != (state.now > 0))
            return;
        const bool filling = symptom == Symptom::swelling || symptom == Symptom::bruising || symptom == Symptom::pain;
        fire(Trigger::sideDivergence,
             filling && m_day <= firstDaysOfSides ? Urgency::callNow : Urgency::nextWorkingDay,
             {symptom, difference > 0 ? Side::left : Side::right}, observation.at,
             {{"left", left->second.second}, {"right", right->second.second}, {"statistic", state.now},
              {"threshold", limits().sideDivergence}});
    }

    /// One finding for each stretch of days without an entry, at the moment it grows long enough.
    void silence(const clock::Moment& last, const clock::Moment& next)
    {
        const auto wait = std::chrono::days(limits().silentDays);
        const auto spoken = next.at - last.at;
        const int lastDay = clock::dayOfRecovery(m_course.treated, last);
        if (spoken < wait || lastDay + limits().silentDays > m_protocol.carePlan.followUpDay)
            return;
        clock::Moment raised = last;
        raised.at += wait;
        fire(Trigger::silence, Urgency::nextWorkingDay, {Symptom::pain, Side::none}, raised,
             {{"days", static_cast<double>(std::chrono::floor<std::chrono::days>(spoken).count())}});
    }

    /// Once per stream, and again only after a whole day on which it did not fire.
    void fire(Trigger trigger, Urgency urgency, const Stream& stream, const clock::Moment& at,
              std::map<std::string, double> numbers)
    {
        const int day = std::max(0, clock::dayOfRecovery(m_course.treated, at));
        auto& last = m_lastFired[{trigger, stream}];
        const bool goesOn = last && day - last->day <= 1 && urgency >= last->urgency;
        const bool fresh = !last || !goesOn;
        last = Fired{day, fresh ? urgency : std::min(urgency, last->urgency)};
        if (!fresh)
            return;
        numbers["day"] = day;
        m_findings.push_back({trigger, urgency, stream, at, day, std::move(numbers)});
    }

    struct Fired {
        int day;
        Urgency urgency;
    };

    const CourseInput& m_course;
    const Protocol& m_protocol;
    int m_day = 0;
    std::map<Stream, StreamWatch> m_watches;
    std::map<Stream, std::pair<int, int>> m_highest;  ///< day and highest score of that day
    std::map<Symptom, SideState> m_sides;
    std::map<std::pair<Trigger, Stream>, std::optional<Fired>> m_lastFired;
    std::vector<Finding> m_findings;
};

}  // namespace

std::vector<Finding> judge(const CourseInput& course, const Protocol& protocol, const clock::Moment& now)
{
    return Judge(course, protocol).run(now);
}

}  // namespace ebbline::triggers
