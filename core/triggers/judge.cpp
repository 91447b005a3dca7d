#include "core/triggers/judge.h"

#include "core/triggers/course_watch.h"

#include <algorithm>
#include <map>
#include <optional>
#include <span>

namespace ebbline::triggers {

namespace {

using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using recovery::Urgency;

class Judge {
public:
    Judge(const CourseInput& course, const Protocol& protocol, Visit visit)
        : m_course(course), m_protocol(protocol), m_visit(visit), m_watch(course, protocol)
    {
    }

    /// Entries up to `until`, silence up to `now`.
    std::vector<Finding> run(const clock::Moment& until, const clock::Moment& now)
    {
        const clock::Moment* last = &m_course.treated;
        for (const Observation* observation : inOrder(m_course, until)) {
            // An entry of before the treatment counts as made right after it, and so does the wait for the next.
            if (observation->at.at <= now.at && observation->at.at > last->at) {
                silence(*last, observation->at);
                last = &observation->at;
            }
            const std::span<const Candidate> candidates = m_watch.take(*observation);
            if (observation->at.at <= now.at)
                m_endedHigh = m_watch.endedHigh();
            enterDay(m_watch.day());
            m_passed.clear();
            for (const Candidate& candidate : candidates)
                if (passes(candidate))
                    m_passed.push_back(&candidate);
            // The most urgent reading of one entry speaks for all of its kind.
            std::stable_sort(m_passed.begin(), m_passed.end(), [](const Candidate* a, const Candidate* b) {
                return a->urgency < b->urgency;
            });
            for (const Candidate* candidate : m_passed)
                raise(*candidate, observation->at);
        }
        silence(*last, now);
        return std::move(m_findings);
    }

private:
    const Thresholds& limits() const { return m_protocol.thresholds; }

    double threshold(const Candidate& candidate) const
    {
        return candidate.statistic ? thresholdOf(limits(), *candidate.statistic) : 0;
    }

    bool passes(const Candidate& candidate) const
    {
        return !candidate.statistic || candidate.value > threshold(candidate);
    }

    void raise(const Candidate& candidate, const clock::Moment& at)
    {
        Finding* finding = fire(candidate.trigger, candidate.urgency, candidate.stream, at, candidate.overall);
        if (!finding)
            return;
        finding->shown = candidate.shown;
        auto& numbers = finding->numbers;
        if (candidate.overall || isOverall(*finding))
            numbers["overall"] = candidate.overall ? 1 : 0;
        numbers["score"] = candidate.score;
        numbers["usualHigh"] = m_protocol.band.inner(finding->symptom(), m_watch.day()).high;
        if (candidate.trigger == Trigger::rebound) {
            numbers["lowest"] = candidate.lowest;
            if (candidate.neverFell)
                numbers["neverFell"] = 1;
        }
        if (candidate.trigger == Trigger::sideDivergence) {
            numbers["left"] = candidate.left;
            numbers["right"] = candidate.right;
            if (candidate.apart > 0)
                numbers["apart"] = candidate.apart;
        }
        if (candidate.trigger == Trigger::slowRecovery)
            numbers["mean"] = candidate.mean;
        if (candidate.weekBefore)
            numbers["weekBefore"] = *candidate.weekBefore;
        if (candidate.together)
            numbers["together"] = *candidate.together;
        if (candidate.beginning)
            numbers["beginning"] = *candidate.beginning;
        if (candidate.statistic) {
            numbers["statistic"] = candidate.value;
            numbers["threshold"] = threshold(candidate);
        }
    }

    /// One finding for each stretch of days without an entry, at the moment it grows long enough.
    void silence(const clock::Moment& last, const clock::Moment& next)
    {
        const auto spoken = next.at - last.at;
        if (spoken < std::chrono::days(std::min(limits().silentDays, limits().silentDaysWhenHigh)))
            return;  // nearly always
        const int lastDay = clock::dayOfRecovery(m_course.treated, last);
        const int days = m_endedHigh && asksForEntryOn(m_protocol.carePlan, lastDay + 1)
                             ? std::min(limits().silentDays, limits().silentDaysWhenHigh)
                             : limits().silentDays;
        const auto wait = std::chrono::days(days);
        if (spoken < wait)
            return;
        clock::Moment raised = last;
        raised.at += wait;
        if (lastDay + days < m_protocol.carePlan.followUpDay)
            raiseSilence(last, raised, next);
        missedVisit(last, raised, next);
    }

    /// The visit answers for a silence that would end on its day or after it. Once that day is over and no follow-up
    /// was recorded, nothing does: raised one time, when it has been quiet for as long as a silence takes.
    void missedVisit(const clock::Moment& last, const clock::Moment& quietLongEnough, const clock::Moment& next)
    {
        if (m_visit != Visit::awaited || m_missed)
            return;
        const int visitDay = m_protocol.carePlan.followUpDay;
        clock::Moment raised = m_course.treated;
        raised.at += std::chrono::days(visitDay + 1) - std::chrono::minutes(m_course.treated.minuteOfDay());
        if (raised.at < quietLongEnough.at)
            raised = quietLongEnough;
        if (next.at < raised.at)
            return;
        m_missed = true;
        if (Finding* finding = raiseSilence(last, raised, next))
            finding->numbers["visit"] = visitDay;
    }

    Finding* raiseSilence(const clock::Moment& last, const clock::Moment& raised, const clock::Moment& next)
    {
        const auto wholeDays = [](auto span) { return static_cast<double>(std::chrono::floor<std::chrono::days>(span).count()); };
        Finding* finding = fire(Trigger::silence, Urgency::nextWorkingDay, {Symptom::pain, Side::none}, raised);
        if (finding) {
            finding->numbers["waited"] = wholeDays(raised.at - last.at);
            finding->numbers["days"] = wholeDays(next.at - last.at);
        }
        return finding;
    }

    void enterDay(int day)
    {
        if (day > m_entryDay) {
            m_entryDayBefore = m_entryDay;
            m_entryDay = day;
        }
    }

    /// Once per stream, or over all symptoms whichever leads, and again only after a day with an entry on which it
    /// did not fire, or when it has become more urgent: a day without an entry is no quiet day.
    /// \returns the new finding, or nothing if it goes on.
    Finding* fire(Trigger trigger, Urgency urgency, const Stream& stream, const clock::Moment& at, bool overall = false)
    {
        const int day = std::max(0, clock::dayOfRecovery(m_course.treated, at));
        auto& last = m_lastFired[{trigger, overall ? std::nullopt : std::optional(stream)}];
        const bool goesOn = last && last->day >= m_entryDayBefore && urgency >= last->urgency
                            && trigger != Trigger::silence;
        last = Fired{day, goesOn ? last->urgency : urgency};
        if (goesOn)
            return nullptr;
        m_findings.push_back({trigger, urgency, stream, at, day, {{"day", static_cast<double>(day)}}});
        return &m_findings.back();
    }

    struct Fired {
        int day;
        Urgency urgency;
    };

    const CourseInput& m_course;
    const Protocol& m_protocol;
    Visit m_visit;
    bool m_missed = false;  ///< the visit, and it was said
    CourseWatch m_watch;
    bool m_endedHigh = false;   ///< as of the last entry up to now; one that lies ahead says nothing of a silence
    int m_entryDay = -1;        ///< last day with an entry
    int m_entryDayBefore = -1;  ///< the one before it
    std::map<std::pair<Trigger, std::optional<Stream>>, std::optional<Fired>> m_lastFired;  ///< no stream: over all symptoms
    std::vector<const Candidate*> m_passed;
    std::vector<Finding> m_findings;
};

}  // namespace

std::vector<Finding> judge(const CourseInput& course, const Protocol& protocol, const clock::Moment& now)
{
    return Judge(course, protocol, Visit::unknown).run(now, now);
}

std::vector<Finding> judgeArrived(const CourseInput& course, const Protocol& protocol, const clock::Moment& now, Visit visit)
{
    clock::Moment until = now;
    for (const Observation& observation : course.observations)
        until.at = std::max(until.at, observation.at.at);
    std::vector<Finding> findings = Judge(course, protocol, visit).run(until, now);
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.raisedAt.at < b.raisedAt.at; });
    return findings;
}

}  // namespace ebbline::triggers
