#include "core/triggers/course_watch.h"

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
constexpr double ownStartShare = 0.5;  // who starts high may stay higher: that much is her own

constexpr std::array pooledSymptoms{Symptom::pain, Symptom::swelling, Symptom::tightness};
constexpr std::array healingSymptoms{Symptom::pain, Symptom::swelling, Symptom::bruising, Symptom::tightness};

std::size_t rowOf(Symptom symptom)
{
    return static_cast<std::size_t>(symptom) - 1;
}

std::size_t columnOf(Side side)
{
    return static_cast<std::size_t>(side);
}

/// `left` and `right` as they stand for side 0 (left) or 1 (right): own minus other.
int lead(const std::array<std::optional<int>, 2>& scores, std::size_t side)
{
    return scores[0] && scores[1] ? *scores[side] - *scores[1 - side] : 0;
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
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const Observation* a, const Observation* b) { return a->at.at < b->at.at; });
    return ordered;
}

double hoursSince(const clock::Moment& treated, const clock::Moment& at)
{
    return std::max(0.0, std::chrono::duration<double, std::ratio<3600>>(at.at - treated.at).count());
}

SideScores sidesOf(const std::map<Stream, recovery::Score>& scores)
{
    SideScores sides{};
    for (const auto& [stream, score] : scores)
        if (stream.side != Side::none)
            sides[rowOf(stream.symptom)][columnOf(stream.side) - 1] = score.points();
    return sides;
}

std::array<std::vector<std::pair<double, double>>, 4> sideReadings(const CourseInput& course)
{
    std::array<std::vector<std::pair<double, double>>, 4> readings;
    const auto add = [&](double days, const SideScores& scores) {
        const SideDifferences differences = differencesOf(scores);
        for (std::size_t i = 0; i < differences.size(); ++i)
            if (differences[i])
                readings[i].emplace_back(days, *differences[i]);
    };
    add(0, sidesOf(course.baseline));
    clock::Moment end = course.treated;
    for (const Observation& observation : course.observations)
        end.at = std::max(end.at, observation.at.at);
    for (const Observation* observation : inOrder(course, end))
        add(hoursSince(course.treated, observation->at) / 24, sidesOf(observation->scores));
    return readings;
}

CourseWatch::CourseWatch(const CourseInput& course, const Protocol& protocol)
    : m_course(course), m_protocol(protocol), m_filling(protocol.band.movements().sides)
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
    m_filling.feed(0, differencesOf(baseline));
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
    for (const auto& [stream, score] : observation.scores) {
        Highest& highest = m_highest[rowOf(stream.symptom)][columnOf(stream.side)];
        highest.points = highest.day == m_day ? std::max(highest.points, score.points()) : score.points();
        highest.day = m_day;
        auto& watched = m_streams[rowOf(stream.symptom)][columnOf(stream.side)];
        if (!watched)
            watched.emplace(stream.symptom, m_protocol.band);
        judgeStream(stream, watched->feed(m_day, highest.points));
        m_endedHigh = m_endedHigh
                      || ((stream.symptom == Symptom::pain || stream.symptom == Symptom::swelling)
                          && score.points() >= treatFrom
                          && score.points() > m_protocol.band.inner(stream.symptom, m_day).high);
    }
    const SideScores entry = sidesOf(observation.scores);
    judgeSides(entry);
    judgeFilling(entry, hoursSince(m_course.treated, observation.at));
    judgeSideRebound(entry);
    judgeOverall();
    for (std::size_t row = 0; row < entry.size(); ++row)
        for (std::size_t side = 0; side < 2; ++side)
            if (entry[row][side])
                m_lastScores[row][side] = entry[row][side];
    return m_candidates;
}

void CourseWatch::judgeStream(const Stream& stream, const StreamReading& reading)
{
    const bool pain = stream.symptom == Symptom::pain;
    Candidate candidate{.trigger = Trigger::level, .statistic = {}, .stream = stream, .score = reading.points,
                        .lowest = reading.lowest};
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
    if (reading.day >= limits().slowFirstDay && reading.observedDays >= fewestForSlow
        && reading.peak >= limits().slowPeakGuard && reading.lastThree >= limits().slowGuard) {
        candidate.trigger = Trigger::slowRecovery;
        candidate.urgency = Urgency::nextWorkingDay;
        candidate.statistic = Statistic::slowRecovery;
        candidate.value = reading.lastThreeZ - ownStartShare * reading.early
                          + beyondBand(stream.symptom, reading.day, reading.lastThree);
        m_candidates.push_back(candidate);
    }
    if (stream.symptom == Symptom::puckering)
        judgePuckering(stream, reading);
}

/// z ends where the band ends; beyond that the points themselves tell how far a score is above.
double CourseWatch::beyondBand(Symptom symptom, int day, double points) const
{
    return beyondWeight * std::max(0.0, points - m_protocol.band.outer(symptom, day).high);
}

void CourseWatch::judgePuckering(const Stream& stream, const StreamReading& reading)
{
    const bool late = reading.day >= limits().puckeringDay && reading.points >= limits().puckeringGuard;
    const bool stuck = reading.day >= limits().puckeringStuckDay
                       && reading.lastTwoLowest >= limits().puckeringStuckGuard && reading.aWeekBefore
                       && *reading.aWeekBefore >= limits().puckeringStuckGuard
                       && reading.points >= *reading.aWeekBefore;
    if (!late && !stuck)
        return;
    const bool worse = late && reading.aWeekBefore && reading.lastTwoLowest - *reading.aWeekBefore >= worseByPoints;
    m_candidates.push_back({.trigger = Trigger::persistentPuckering, .statistic = {},
                            .urgency = worse || reading.day > longPuckeringDay ? Urgency::nextWorkingDay
                                                                               : Urgency::atReview,
                            .stream = stream, .score = reading.points, .lowest = reading.lowest});
}

void CourseWatch::judgeSides(const SideScores& entry)
{
    for (const Symptom symptom : recovery::allSymptoms) {
        const auto& now = entry[rowOf(symptom)];
        const Highest& left = m_highest[rowOf(symptom)][columnOf(Side::left)];
        const Highest& right = m_highest[rowOf(symptom)][columnOf(Side::right)];
        if ((!now[0] && !now[1]) || left.day != m_day || right.day != m_day)
            continue;
        const int difference = left.points - right.points;
        const double average = m_sides[rowOf(symptom)].feed(m_day, left.points, right.points);
        if (std::abs(difference) < limits().sideGuard || (difference > 0) != (average > 0))
            continue;
        const std::size_t side = difference > 0 ? 0 : 1;
        const auto& before = m_lastScores[rowOf(symptom)][side];
        const bool rising = now[side] && before && *now[side] > *before;
        const bool urgent = (symptom == Symptom::swelling || symptom == Symptom::pain) && rising
                            && lead(entry[rowOf(Symptom::swelling)], side) >= limits().sideGuard;
        m_candidates.push_back({.trigger = Trigger::sideDivergence, .statistic = Statistic::sideDivergence,
                                .value = std::abs(average),
                                .urgency = urgent ? Urgency::callNow : Urgency::nextWorkingDay,
                                .stream = {symptom, recovery::bothSides[side]},
                                .score = std::max(left.points, right.points), .left = left.points,
                                .right = right.points});
    }
}

void CourseWatch::judgeFilling(const SideScores& entry, double hours)
{
    const SideDifferences differences = differencesOf(entry);
    if (std::none_of(differences.begin(), differences.end(), [](const auto& d) { return d.has_value(); }))
        return;
    const std::array<double, 2> sums = m_filling.feed(hours, differences);
    if (m_day > limits().fillingLastDay)
        return;
    for (std::size_t side = 0; side < 2; ++side) {
        int total = 0;
        int clear = 0;
        int wide = 0;
        for (const Symptom symptom : healingSymptoms) {
            const int ahead = lead(entry[rowOf(symptom)], side);
            total += ahead;
            clear += ahead >= worseByPoints ? 1 : 0;
            wide += ahead >= limits().sideGuard ? 1 : 0;
        }
        if (total >= limits().fillingGuard && (wide >= 1 || clear >= 2)) {
            const auto& swelling = entry[rowOf(Symptom::swelling)];
            const Symptom shown = swelling[0] && swelling[1] ? Symptom::swelling : Symptom::pain;
            const auto& scores = entry[rowOf(shown)];
            m_candidates.push_back({.trigger = Trigger::sideDivergence, .statistic = Statistic::filling,
                                    .value = sums[side], .urgency = Urgency::callNow,
                                    .stream = {shown, recovery::bothSides[side]}, .score = scores[side].value_or(0),
                                    .left = scores[0].value_or(0), .right = scores[1].value_or(0)});
        }
        fillsVisibly(entry, side);
    }
}

/// One side swollen three points over the other and rising, with pain rising on that side alone.
void CourseWatch::fillsVisibly(const SideScores& entry, std::size_t side)
{
    const auto& swelling = entry[rowOf(Symptom::swelling)];
    const auto& pain = entry[rowOf(Symptom::pain)];
    const auto& swellingBefore = m_lastScores[rowOf(Symptom::swelling)][side];
    const auto& painBefore = m_lastScores[rowOf(Symptom::pain)];
    if (lead(swelling, side) < limits().sideGuard || lead(pain, side) < 1 || !swellingBefore || !painBefore[side]
        || !painBefore[1 - side])
        return;
    if (*swelling[side] <= *swellingBefore || *pain[side] <= *painBefore[side]
        || *pain[1 - side] > *painBefore[1 - side])
        return;
    m_candidates.push_back({.trigger = Trigger::sideDivergence, .statistic = {}, .urgency = Urgency::callNow,
                            .stream = {Symptom::swelling, recovery::bothSides[side]}, .score = *swelling[side],
                            .left = *swelling[0], .right = *swelling[1]});
}

void CourseWatch::judgeSideRebound(const SideScores& entry)
{
    SidePool::Surprises surprises{};
    bool any = false;
    for (std::size_t i = 0; i < pooledSymptoms.size(); ++i)
        for (std::size_t side = 0; side < 2; ++side)
            if (entry[rowOf(pooledSymptoms[i])][side]) {
                surprises[i][side] = watch(pooledSymptoms[i], side)->reading().surprise;
                any = true;
            }
    if (!any || m_day < limits().reboundFirstDay - 1)
        return;
    const std::array<double, 2> sums = m_pool.feed(m_day, surprises);
    if (m_day < limits().reboundFirstDay)
        return;
    for (std::size_t side = 0; side < 2; ++side) {
        Candidate candidate{.trigger = Trigger::rebound, .statistic = Statistic::sideRebound, .value = sums[side]};
        int risen = 0;
        for (const Symptom symptom : pooledSymptoms) {
            if (!entry[rowOf(symptom)][side])
                continue;
            const StreamReading& reading = watch(symptom, side)->reading();
            const int rise = reading.points - reading.lowest;
            if (reading.observedDays < 2 || rise < limits().reboundGuard || rise <= risen)
                continue;
            risen = rise;
            candidate.stream = {symptom, recovery::bothSides[side]};
            candidate.score = reading.points;
            candidate.lowest = reading.lowest;
        }
        const auto& pain = entry[rowOf(Symptom::pain)][side];
        const bool needsCall = candidate.score >= treatFrom && pain && *pain >= treatFrom;
        candidate.urgency = needsCall ? Urgency::callNow : Urgency::nextWorkingDay;
        if (risen > 0)
            m_candidates.push_back(candidate);
    }
}

void CourseWatch::judgeOverall()
{
    double level = 0;
    double slow = 0;
    int levelStreams = 0;
    int slowStreams = 0;
    Candidate high{.trigger = Trigger::level, .statistic = Statistic::levelOverall};
    Candidate late{.trigger = Trigger::slowRecovery, .statistic = Statistic::slowOverall};
    const auto shows = [](Candidate& candidate, Symptom symptom, int points) {
        if (points <= candidate.score)
            return;
        candidate.score = points;
        candidate.stream = {symptom, Side::none};
    };
    for (const Symptom symptom : healingSymptoms)
        for (const auto& watched : m_streams[rowOf(symptom)]) {
            if (!watched || m_day - watched->reading().day > staleDays)
                continue;
            const StreamReading& reading = watched->reading();
            level += reading.level;
            ++levelStreams;
            if (reading.points >= limits().levelGuard)
                shows(high, symptom, reading.points);
            if (m_day < limits().slowFirstDay || reading.observedDays < fewestForSlow)
                continue;
            slow += reading.lastThreeZ - ownStartShare * reading.early;
            ++slowStreams;
            if (reading.peak >= limits().slowPeakGuard && reading.lastThree >= limits().slowGuard)
                shows(late, symptom, reading.points);
        }
    // As if one more stream were ordinary: who scores little is not believed as much.
    if (high.score > 0) {
        high.value = level / (levelStreams + 1);
        m_candidates.push_back(high);
    }
    if (late.score > 0) {
        late.value = slow / (slowStreams + 1);
        m_candidates.push_back(late);
    }
}

}  // namespace ebbline::triggers
