#pragma once
/// \file
/// Runs a protocol over past courses: whom it would have flagged, when, and at what burden; and one
/// protocol against another, course by course.
///
/// An alert is a finding that asks somebody to act before the review. A note for the review counts
/// only where that is all the rules promise: for folds that stay (`puckering`, `worsening-puckering`, and a follow-up's
/// `lasting puckering`). Of those the trigger for folds may tell before the onset as well, and no other trigger may.
/// Silence has a list of its own and counts only for courses that fell silent; of those nobody came to the visit, and they are judged past it.

#include "core/rehearsal/invented_course.h"
#include "core/statistics/count_rate.h"
#include "core/statistics/paired_counts.h"
#include "core/statistics/proportions.h"

#include <span>

namespace ebbline::rehearsal {

/// What a protocol made of one course.
struct CourseVerdict {
    std::string name;
    std::string kind;                              ///< of the truth
    std::optional<triggers::Finding> first;        ///< first alert at all
    std::optional<triggers::Finding> sinceOnset;   ///< first alert from the onset on; plain: as first
    std::optional<double> delayHours;              ///< from the onset to sinceOnset
    bool timed = false;                            ///< the truth has an onset
    bool beforeOnset = false;                      ///< there was an alert before the onset
    bool sided = false;                            ///< the truth has a side
    bool rightSide = false;                        ///< and sinceOnset names it
    int alerts = 0;
    bool callNow = false;                          ///< one of them asks for a call now
    bool reviewNote = false;
    bool silent = false;                           ///< it stood on the silent list at some time
    std::vector<triggers::Finding> raised;         ///< everything, alert or not, oldest first
};

CourseVerdict verdictOn(const KnownCourse& course, const triggers::Protocol& protocol);

/// Figures over the courses of one kind. "Strict" leaves out courses that had an alert before the
/// onset, from numerator and denominator alike.
struct KindFigures {
    std::string kind;
    long courses = 0;
    long flagged = 0;       ///< since the onset; plain: at any time
    long timed = 0;         ///< whose onset is known: of these the times speak, and beforeOnset
    long withinDay = 0;     ///< 24 hours of the onset
    long withinThreeDays = 0;
    long beforeOnset = 0;
    long strictFlagged = 0;
    long strictWithinDay = 0;
    long strictWithinThreeDays = 0;
    long sided = 0;         ///< flagged, and the truth has a side: of these rightSide speaks
    long rightSide = 0;     ///< the alert since the onset names it
    long callNow = 0;
    long reviewNotes = 0;   ///< courses with a note for the review
    long silent = 0;
    long alerts = 0;        ///< findings, all courses together
    std::optional<statistics::CountRate> burden;  ///< alerts a course
    std::optional<double> medianDelayHours;  ///< of the flagged
};

/// One row a kind, plain first, then by name.
std::vector<KindFigures> figuresOf(std::span<const CourseVerdict> verdicts);

/// Wilson, 95 %; empty without a course.
std::optional<statistics::Interval> share(long part, long whole);

/// In what two protocols differ on a course.
struct Respects {
    bool alerts = false;      ///< one is raised by one of them alone, or at another time, before the onset or after it
    bool urgency = false;     ///< the same is raised at the same time, and asks for something else
    bool silentList = false;  ///< on it at another time, or by one of them alone
    bool notes = false;       ///< for the review: at another time, or by one of them alone
    bool any() const { return alerts || urgency || silentList || notes; }
    bool operator==(const Respects&) const = default;
};

/// A course on which two protocols differ.
struct Difference {
    std::size_t course;  ///< index
    Respects in;
    std::optional<triggers::Finding> before;  ///< the first that the other protocol does not raise so; empty: none
    std::optional<triggers::Finding> after;
};

/// Of two verdicts on one course; empty if everything is raised alike: the same triggers on the same streams at the same
/// times with the same urgency.
std::optional<Difference> differenceOf(std::size_t course, const CourseVerdict& before, const CourseVerdict& after);

struct Rehearsal {
    std::vector<CourseVerdict> before;  ///< in the order of the courses
    std::vector<CourseVerdict> after;
    std::vector<Difference> differences;
};

/// Courses of one kind under both protocols.
struct KindChange {
    std::string kind;
    long courses = 0;
    long bothFlagged = 0;
    long firstOnly = 0;
    long secondOnly = 0;
    long otherAlerts = 0;      ///< courses by what they differ in (Respects); one may differ in several
    long otherUrgency = 0;
    long otherSilentList = 0;
    long otherNotes = 0;
    std::optional<statistics::PairedDifference> flagged;  ///< share flagged by the second minus by the first
};

/// One row a kind, plain first, then by name.
std::vector<KindChange> changesOf(const Rehearsal& rehearsal);

/// \returns Reason::notEnough without a course.
Result<Rehearsal> rehearse(std::span<const KnownCourse> courses, const triggers::Protocol& before,
                           const triggers::Protocol& after);

}  // namespace ebbline::rehearsal
