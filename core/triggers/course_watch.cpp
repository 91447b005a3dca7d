#include "core/triggers/course_watch.h"

#include "core/triggers/stuck.h"

#include <algorithm>
#include <cmath>

namespace ebbline::triggers {

namespace {

using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using recovery::Urgency;

constexpr int strongRebound = 3;     // points above the own minimum
constexpr int treatFrom = 4;         // Gerbershagen et al., Br J Anaesth 2011: treat pain from 4
constexpr int severeFrom = 7;        // Serlin et al., Pain 1995: severe is 7 to 10
constexpr double beyondWeight = 0.25;  // of a point beyond the 97th centile, in z
constexpr int worseByPoints = 2;     // Farrar et al., Pain 2001: two points are a change that matters
constexpr int longPuckeringDay = 28;
constexpr int staleDays = 4;         // an answer older than this no longer speaks for the course
constexpr int fewestForSlow = 3;     // observed days
constexpr double ownStartShare = 0.5;   // who starts high may stay higher: that much is her own,
constexpr double ownStartOverall = 0.55;  // and over all symptoms
constexpr double keptShare = 0.75;   // of its beginning: an ordinary fold is below half by then

constexpr std::array healingSymptoms{Symptom::pain, Symptom::swelling, Symptom::bruising, Symptom::tightness};

std::size_t rowOf(Symptom symptom)
{
    return static_cast<std::size_t>(symptom) - 1;
}

std::size_t columnOf(Side side)
{
    return static_cast<std::size_t>(side);
}

}  // namespace

bool asksForEntryOn(const aftercare::CarePlan& plan, int day)
{
    bool ever = false;
    for (const aftercare::Instruction& instruction : plan.instructions) {
        if (instruction.kind != aftercare::InstructionKind::diaryEntry)
            continue;
        ever = true;
        if (day >= instruction.firstDay && day <= instruction.lastDay
            && (day - instruction.firstDay) % std::max(1, instruction.everyDays) == 0)
            return true;
    }
    return !ever;
}

std::vector<const Observation*> inOrder(const CourseInput& course, const clock::Moment& until)
{
    std::vector<const Observation*> ordered;
    ordered.reserve(course.observations.size());
    for (const Observation& observation : course.observations)
        if (observation.at.at <= until.at)
            ordered.push_back(&observation);
    const auto earlier = [](const Observation* a, const Observation* b) { return a->at.at < b->at.at; };
    if (!std::is_sorted(ordered.begin(), ordered.end(), earlier))
        std::stable_sort(ordered.begin(), ordered.end(), earlier);
    return ordered;
}

double hoursSince(const clock::Moment& treated, const clock::Moment& at)
{
    return std::max(0.0, std::chrono::duration<double, std::ratio<3600>>(at.at - treated.at).count());
}

CourseWatch::CourseWatch(const CourseInput& course, const Protocol& protocol)
    : m_course(course), m_protocol(protocol), m_bleeding(protocol.band.movements(), bleeding),
      m_inflaming(protocol.band.movements(), inflaming)
{
    startSides();
}

void CourseWatch::startSides()
{
    if (m_course.baseline.empty())
        return;
    const SideScores baseline = sidesOf(m_course.baseline);
    for (std::size_t row = 0; row < baseline.size(); ++row)
        if (baseline[row][0] && baseline[row][1])
            m_sides[row].start(*baseline[row][0], *baseline[row][1]);
    // A fold of the treatment itself, also where the sides were not told apart.
    for (const auto& [stream, score] : m_course.baseline)
        if (stream.symptom == Symptom::puckering)
            m_streams[rowOf(stream.symptom)][columnOf(stream.side)].emplace(stream.symptom, m_protocol.band).start(score.points());
    m_bleeding.start(differencesOf(baseline));
    m_inflaming.start(differencesOf(baseline));
    m_lastScores = baseline;
}

std::optional<StreamWatch>& CourseWatch::watch(Symptom symptom, std::size_t side)
{
    return m_streams[rowOf(symptom)][side + 1];
}

std::span<const Candidate> CourseWatch::take(const Observation& observation)
{
    m_candidates.clear();
    // Days never run backwards, even when somebody travels west across midnight.
    m_day = std::max(m_day, std::max(0, clock::dayOfRecovery(m_course.treated, observation.at)));
    if (!observation.scores.empty())
        m_endedHigh = false;
    SideScores entry{};
    for (const auto& [stream, score] : observation.scores) {
        if (stream.side != Side::none)
            entry[rowOf(stream.symptom)][columnOf(stream.side) - 1] = score.points();
        Highest& highest = m_highest[rowOf(stream.symptom)][columnOf(stream.side)];
        highest.points = highest.day == m_day ? std::max(highest.points, score.points()) : score.points();
        highest.day = m_day;
        auto& watched = m_streams[rowOf(stream.symptom)][columnOf(stream.side)];
        if (!watched)
            watched.emplace(stream.symptom, m_protocol.band);
        watched->feed(m_day, highest.points, m_gains[rowOf(stream.symptom)]);
        judgeStream(stream, *watched);
        m_endedHigh = m_endedHigh
                      || ((stream.symptom == Symptom::pain || stream.symptom == Symptom::swelling)
                          && score.points() >= treatFrom
                          && score.points() > m_protocol.band.inner(stream.symptom, m_day).high);
    }
    judgeSides(entry);
    judgeOneSide(entry, hoursSince(m_course.treated, observation.at));
    judgeOverall();
    for (std::size_t row = 0; row < entry.size(); ++row)
        for (std::size_t side = 0; side < 2; ++side)
            if (entry[row][side])
                m_lastScores[row][side] = entry[row][side];
    return m_candidates;
}

void CourseWatch::judgeStream(const Stream& stream, const StreamWatch& watched)
{
    const StreamReading& reading = watched.reading();
    const bool pain = stream.symptom == Symptom::pain;
    Candidate candidate{.trigger = Trigger::level, .statistic = {}, .stream = stream, .score = reading.points,
                        .lowest = reading.lowest, .neverFell = !reading.cameDown};
    if (reading.points >= limits().levelGuard) {
        candidate.statistic = Statistic::level;
        candidate.value = reading.level + beyondBand(stream.symptom, reading.day, reading.points);
        candidate.urgency = pain && reading.points >= severeFrom ? Urgency::callNow : Urgency::nextWorkingDay;
        m_candidates.push_back(candidate);
    }
    if (reading.day >= limits().reboundFirstDay && reading.observedDays > 1
        && reading.points - reading.lowest >= limits().reboundGuard) {
        candidate.trigger = Trigger::rebound;
        candidate.urgency = pain && reading.points >= treatFrom ? Urgency::callNow : Urgency::nextWorkingDay;
        candidate.statistic = Statistic::rebound;
        candidate.value = reading.rebound;
        m_candidates.push_back(candidate);
        // Pain that had turned and rises by three to where it needs treatment speaks for itself.
        if (pain && reading.points - reading.lowest >= strongRebound && reading.points >= treatFrom
            && reading.declinedTwoDays) {
            candidate.statistic.reset();
            m_candidates.push_back(candidate);
        }
    }
    judgeSlow(stream, reading);
    if (stream.symptom == Symptom::puckering)
        judgePuckering(stream, watched);
}

void CourseWatch::judgeSlow(const Stream& stream, const StreamReading& reading)
{
    if (reading.observedDays < fewestForSlow)
        return;
    Candidate candidate{.trigger = Trigger::slowRecovery, .statistic = {}, .stream = stream, .score = reading.points,
                        .lowest = reading.lowest, .mean = reading.lastThree()};
    if (reading.day >= limits().slowFirstDay && reading.peak >= limits().slowPeakGuard && reading.lastThree() >= limits().slowGuard) {
        candidate.statistic = Statistic::slowRecovery;
        candidate.value = reading.lastThreeZ() - ownStartShare * reading.early
                          + beyondBand(stream.symptom, reading.day, reading.lastThree());
        m_candidates.push_back(candidate);
        candidate.statistic.reset();
    }
    // A high score that stays speaks for itself: neither a high beginning nor a wide band makes it ordinary.
    const auto stuck = stuckOf(stream.symptom);
    if (stuck && reading.day >= stuck->firstDay && reading.lastThree() >= stuck->from && reading.lastTwoLowest >= stuck->from)
        m_candidates.push_back(candidate);
}

/// z ends where the band ends; beyond that the points themselves tell how far a score is above.
double CourseWatch::beyondBand(Symptom symptom, int day, double points) const
{
    return beyondWeight * std::max(0.0, points - m_protocol.band.outer(symptom, day).high);
}

void CourseWatch::judgePuckering(const Stream& stream, const StreamWatch& watched)
{
    const StreamReading& reading = watched.reading();
    const std::optional<int> aWeekBefore = watched.aWeekBefore();
    const bool late = reading.day >= limits().puckeringDay && reading.points >= limits().puckeringGuard;
    const bool stuck = reading.day >= limits().puckeringStuckDay
                       && reading.lastTwoLowest >= limits().puckeringStuckGuard && aWeekBefore
                       && *aWeekBefore >= limits().puckeringStuckGuard
                       && reading.points >= *aWeekBefore;
    const bool deep = reading.observedDays > 2 && reading.lastThreeSum >= limits().puckeringTogether
                      && reading.lastTwoLowest >= limits().puckeringGuard;
    const bool kept = deep && reading.day >= limits().puckeringKeptDay && reading.beginning
                      && reading.lastThreeSum >= 3 * keptShare * *reading.beginning;
    const bool stays = deep && reading.day >= limits().puckeringLateDay;
    if (!late && !stuck && !kept && !stays)
        return;
    const bool worse = late && aWeekBefore && reading.lastTwoLowest - *aWeekBefore >= worseByPoints;
    Candidate candidate{.trigger = Trigger::persistentPuckering, .statistic = {},
                        .urgency = worse || reading.day > longPuckeringDay ? Urgency::nextWorkingDay : Urgency::atReview,
                        .stream = stream, .score = reading.points, .lowest = reading.lowest};
    if (worse || stuck)
        candidate.weekBefore = aWeekBefore;
    if (kept || stays)
        candidate.together = reading.lastThreeSum;
    if (kept)
        candidate.beginning = reading.beginning;
    m_candidates.push_back(candidate);
}

void CourseWatch::judgeOverall()
{
    double level = 0;
    double slow = 0;
    int levelStreams = 0;
    int slowStreams = 0;
    // The symptom with the highest score speaks for all, be it 0 today; of its sides the one that was higher before.
    std::optional<Candidate> high;
    std::optional<Candidate> late;
    const auto shows = [](std::optional<Candidate>& candidate, const Candidate& shown) {
        if (!candidate || shown.score > candidate->score
            || (shown.score == candidate->score && shown.stream == candidate->stream && shown.mean > candidate->mean))
            candidate = shown;
    };
    for (const Symptom symptom : healingSymptoms)
        for (const auto& watched : m_streams[rowOf(symptom)]) {
            if (!watched || m_day - watched->reading().day > staleDays)
                continue;
            const StreamReading& reading = watched->reading();
            level += reading.level;
            ++levelStreams;
            if (reading.points >= limits().levelGuard)
                shows(high, {.trigger = Trigger::level, .statistic = Statistic::levelOverall,
                             .stream = {symptom, Side::none}, .score = reading.points, .overall = true});
            if (m_day < limits().slowFirstDay || reading.observedDays < fewestForSlow)
                continue;
            slow += reading.lastThreeZ() - ownStartOverall * reading.early;
            ++slowStreams;
            if (reading.peak >= limits().slowPeakGuard && reading.lastThree() >= limits().slowGuard)
                shows(late, {.trigger = Trigger::slowRecovery, .statistic = Statistic::slowOverall,
                             .stream = {symptom, Side::none}, .score = reading.points, .mean = reading.lastThree(),
                             .overall = true});
        }
    // As if one more stream were ordinary: who scores little is not believed as much.
    if (high) {
        high->value = level / (levelStreams + 1);
        m_candidates.push_back(*high);
    }
    if (late) {
        late->value = slow / (slowStreams + 1);
        m_candidates.push_back(*late);
    }
}

}  // namespace ebbline::triggers
