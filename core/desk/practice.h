#pragma once
/// \file
/// What the clinic's work added up to: how often it was alerted and whether that was worth it, what
/// patients did of what they were asked, and the figures of core/learning over all courses. Courses are
/// tallied one by one and copied, so that the figures can be worked out beside the open vault.
/// docs/statistics/practice.md.

#include "core/aftercare/care_plan.h"
#include "core/learning/comparison.h"
#include "core/learning/lots.h"
#include "core/learning/practice_watch.h"
#include "core/triage/queue.h"

#include <array>

namespace ebbline::desk {

/// A finding that asked somebody to act before the review, and what became of it.
struct AlertTally {
    enum class Answer : std::uint8_t {
        open,        ///< nobody has closed it
        atFollowUp,  ///< nobody closed it before the follow-up did
        closed,      ///< by a person, with an outcome
    };
    recovery::Urgency urgency = recovery::Urgency::nextWorkingDay;
    clock::Instant raised;
    bool silence = false;  ///< only that nothing was heard
    Answer answer = Answer::open;
    records::Outcome outcome = records::Outcome::none;
    bool broughtForward = false;

    /// Something was done because of it: advice, a treatment, urgent care, or an earlier visit. To have
    /// reassured somebody may be worth a lot, but it is what would have been said without it too.
    bool worthIt() const;
};

/// What was asked and what was done, of one kind of instruction.
struct KeptTally {
    aftercare::InstructionKind kind = aftercare::InstructionKind::custom;
    long due = 0;      ///< reminders that rang
    long done = 0;     ///< answered "done"
    long notDone = 0;  ///< answered "not done"; the others were not answered
};

/// One course that a phone was linked to.
struct CourseTally {
    recovery::CourseId course;
    clock::Instant treated;
    std::vector<AlertTally> alerts;
    std::vector<KeptTally> kept;  ///< reminders, by kind; without the diary's own
    long askedDays = 0;           ///< days on which the plan asks for an entry, so far
    long toldDays = 0;            ///< of them, with an entry
};

/// Empty for a course without a linked phone: nobody could alert or be asked.
std::optional<CourseTally> tallyOf(const recovery::CourseId& id, const journal::CourseState& course, const clock::Moment& now,
                                   const aftercare::Zone& zone);

/// Changes whenever a tally could: a course that is over keeps its stamp.
struct TallyStamp {
    std::size_t spoken = 0;  ///< operations of the course that count
    int day = 0;             ///< of recovery; stands still once the course is over
    bool operator==(const TallyStamp&) const = default;
};
TallyStamp tallyStampOf(const journal::CourseState& course, const clock::Moment& now);

inline constexpr int burdenWeeks = 12;  ///< over which alerts a week are counted

/// Alerts of all courses.
struct Burden {
    long courses = 0;
    long alertedCourses = 0;            ///< with at least one alert
    long alerts = 0;
    long silences = 0;                  ///< apart: nothing was heard
    std::array<long, 5> byUrgency{};    ///< by recovery::Urgency
    std::array<long, 6> byOutcome{};    ///< by records::Outcome, of those closed
    long open = 0;
    long atFollowUp = 0;
    long worth = 0;
    double perWeek = 0;                 ///< over the last burdenWeeks weeks
    learning::Answer<learning::Share> worthShare = std::unexpected(learning::NotEnough{learning::Lack::outcomes});  ///< of those closed
};
Burden burdenOf(std::span<const CourseTally> courses, clock::Instant now);

/// Of all courses.
struct Adherence {
    long courses = 0;
    long askedDays = 0;
    long toldDays = 0;
    std::vector<KeptTally> kept;  ///< most asked first
};
Adherence adherenceOf(std::span<const CourseTally> courses);

/// What core/learning says of the clinic's courses.
struct PracticeFigures {
    std::size_t courses = 0;
    learning::GroupShare all;
    std::vector<learning::GroupShare> kinds;
    std::vector<learning::GroupShare> zones;
    std::vector<learning::Resolution> resolutions;  ///< in the order of recovery::allSymptoms
    learning::WatchDesign design;
    learning::PracticeWatch watch;                  ///< without its odds: learning::watchOdds()
    std::array<std::vector<learning::GroupShare>, learning::allWays.size()> ways;  ///< groups that may be compared
    std::vector<learning::LotTrace> lots;
};
PracticeFigures practiceFigures(std::span<const learning::PastCourse> courses);

}  // namespace ebbline::desk
