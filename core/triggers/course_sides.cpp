#include "core/triggers/course_watch.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ebbline::triggers {

namespace {

using recovery::Side;
using recovery::Symptom;
using recovery::Urgency;

constexpr int treatFrom = 4;       // Gerbershagen et al., Br J Anaesth 2011: treat pain from 4
constexpr int clearlyApart = 2;    // Farrar et al., Pain 2001: two points are a change that matters

constexpr std::array inflamedSymptoms{Symptom::pain, Symptom::swelling, Symptom::tightness};

std::size_t rowOf(Symptom symptom)
{
    return static_cast<std::size_t>(symptom) - 1;
}

std::size_t columnOf(Side side)
{
    return static_cast<std::size_t>(side);
}

bool saysNothing(const SideReadings& readings)
{
    return std::none_of(readings.begin(), readings.end(), [](const auto& reading) { return reading.has_value(); });
}

/// `left` and `right` as they stand for side 0 (left) or 1 (right): own minus other.
int lead(const std::array<std::optional<int>, 2>& scores, std::size_t side)
{
    return scores[0] && scores[1] ? *scores[side] - *scores[1 - side] : 0;
}

/// How far a side stands above the other over some symptoms.
struct Gap {
    int total = 0;
    int widest = std::numeric_limits<int>::min();
    int clear = 0;  ///< symptoms clearly apart
    Symptom shown = Symptom::pain;  ///< the widest of those that both sides were answered for
};

Gap gapOf(const SideScores& entry, std::size_t side, std::span<const Symptom> symptoms)
{
    Gap gap;
    for (const Symptom symptom : symptoms) {
        const auto& scores = entry[rowOf(symptom)];
        if (!scores[0] || !scores[1])
            continue;
        const int ahead = lead(scores, side);
        gap.total += ahead;
        gap.clear += ahead >= clearlyApart ? 1 : 0;
        if (ahead > gap.widest) {
            gap.widest = ahead;
            gap.shown = symptom;
        }
    }
    return gap;
}

}  // namespace

SideScores sidesOf(const recovery::Scores& scores)
{
    SideScores sides{};
    for (const auto& [stream, score] : scores)
        if (stream.side != Side::none)
            sides[rowOf(stream.symptom)][columnOf(stream.side) - 1] = score.points();
    return sides;
}

namespace {

void add(SideSeries& series, double days, const SideReadings& readings)
{
    for (std::size_t i = 0; i < readings.size(); ++i)
        if (readings[i])
            series[i].emplace_back(days, *readings[i]);
}

std::vector<const Observation*> allInOrder(const CourseInput& course)
{
    clock::Moment end = course.treated;
    for (const Observation& observation : course.observations)
        end.at = std::max(end.at, observation.at.at);
    return inOrder(course, end);
}

}  // namespace

SideSeries differencesIn(const CourseInput& course)
{
    SideSeries series;
    add(series, 0, differencesOf(sidesOf(course.baseline)));
    for (const Observation* observation : allInOrder(course))
        add(series, hoursSince(course.treated, observation->at) / 24, differencesOf(sidesOf(observation->scores)));
    return series;
}

SideSeries sumsIn(const CourseInput& course, const bands::Band& band)
{
    SideSeries series;
    for (const Observation* observation : allInOrder(course)) {
        const int day = std::max(0, clock::dayOfRecovery(course.treated, observation->at));
        add(series, hoursSince(course.treated, observation->at) / 24, sumsOf(sidesOf(observation->scores), band, day));
    }
    return series;
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

void CourseWatch::judgeOneSide(const SideScores& entry, double hours)
{
    const SideReadings differences = differencesOf(entry);
    if (saysNothing(differences))
        return;
    const SideReadings sums = sumsOf(entry, m_protocol.band, m_day);
    m_inflaming.feed(hours, differences, sums);
    if (m_day >= limits().reboundFirstDay)
        for (std::size_t side = 0; side < 2; ++side)
            judgeWorsening(entry, side);
    if (m_day > limits().fillingLastDay)
        return;
    m_bleeding.feed(hours, differences, sums);
    for (std::size_t side = 0; side < 2; ++side) {
        judgeFilling(entry, side);
        fillsVisibly(entry, side);
    }
}

void CourseWatch::judgeFilling(const SideScores& entry, std::size_t side)
{
    const Gap gap = gapOf(entry, side, sideSymptoms);
    if (gap.total < limits().fillingGuard || (gap.widest < limits().sideGuard && gap.clear < 2))
        return;
    const auto& swelling = entry[rowOf(Symptom::swelling)];
    // It goes on, and acts name it, under one stream whichever symptom leads that day; told is one that made the gap.
    const Symptom named = swelling[0] && swelling[1] ? Symptom::swelling : Symptom::pain;
    const Symptom shown = lead(swelling, side) >= clearlyApart ? Symptom::swelling : gap.shown;
    const auto& scores = entry[rowOf(shown)];
    m_candidates.push_back({.trigger = Trigger::sideDivergence, .statistic = Statistic::oneSideFills,
                            .value = m_bleeding.ratio(side),
                            .urgency = Urgency::callNow, .stream = {named, recovery::bothSides[side]},
                            .score = *scores[side], .left = *scores[0], .right = *scores[1], .apart = gap.total,
                            .shown = shown});
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

/// The symptom of a side that has risen most above its own minimum, as a rebound; a score of 0 if
/// none has risen by the guard.
Candidate CourseWatch::risenMost(const SideScores& entry, std::size_t side)
{
    Candidate candidate{.trigger = Trigger::rebound, .statistic = Statistic::oneSideWorsens};
    int risen = 0;
    for (const Symptom symptom : inflamedSymptoms) {
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
        candidate.neverFell = !reading.cameDown;
    }
    return candidate;
}

/// It shows as a rebound, or as one side that stays behind while the other recovers.
void CourseWatch::judgeWorsening(const SideScores& entry, std::size_t side)
{
    const Gap gap = gapOf(entry, side, inflamedSymptoms);
    const auto& pain = entry[rowOf(Symptom::pain)];
    const bool sore = pain[side] && *pain[side] >= treatFrom;
    Candidate candidate = risenMost(entry, side);
    candidate.apart = gap.total;
    const bool rises = candidate.score > 0;
    const bool behind = !rises && gap.total >= limits().worseningGuard && gap.clear > 0;
    if (rises || behind)
        candidate.value = m_inflaming.ratio(side);
    if (rises) {
        candidate.urgency = sore && candidate.score >= treatFrom ? Urgency::callNow : Urgency::nextWorkingDay;
        m_candidates.push_back(candidate);
    } else if (behind) {
        const auto& scores = entry[rowOf(gap.shown)];
        candidate.trigger = Trigger::sideDivergence;
        candidate.urgency = sore && lead(pain, side) >= clearlyApart ? Urgency::callNow : Urgency::nextWorkingDay;
        candidate.stream = {gap.shown, recovery::bothSides[side]};
        candidate.score = scores[side].value_or(0);
        candidate.left = scores[0].value_or(0);
        candidate.right = scores[1].value_or(0);
        m_candidates.push_back(candidate);
    }
}

}  // namespace ebbline::triggers
