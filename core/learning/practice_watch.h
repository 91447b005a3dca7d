#pragma once
/// \file
/// Has the odds of a complication changed? A risk-adjusted CUSUM over consecutive treatments, and beside
/// it expected - observed, which is for reading and not for deciding. docs/statistics/learning.md.

#include "core/learning/past_course.h"
#include "core/result/result.h"

#include <span>

namespace ebbline::learning {

struct WatchDesign {
    double risk = 0.05;       ///< of a course that has none of its own, 0 < risk < 1 (our choice)
    double oddsRatio = 2;     ///< to watch for; below 1 watches for fewer
    double decision = 3.5;    ///< with the two above: 5 false signals in 100 practices, in 200 patients each
};

/// After one course, in the order of treatment.
struct WatchPoint {
    std::string course;
    clock::Moment treated;
    bool complicated;
    double risk;
    double sum;                    ///< as it stood with this course, before a signal resets it
    double expectedMinusObserved;  ///< over all courses so far; goes on through signals
    bool signal;
    int segment;                   ///< 0 up to the first signal; one more after each: earlier ones stay visible
};

struct PracticeWatch {
    std::vector<WatchPoint> points;
    long unknown = 0;       ///< courses without an outcome: left out, and never taken for good ones
    bool settled = true;    ///< no course without an outcome was treated before the last point
    long signalCount = 0;
    double falseSignal = 0; ///< P(at least one signal in so many courses if nothing has changed), all at design.risk
    double found = 0;       ///< P(at least one if the odds really are oddsRatio times as large)
    long ownRisks = 0;      ///< points of courses that have a risk of their own
};

/// The points alone, at once: falseSignal and found stay 0 until watchOdds().
Result<PracticeWatch> watchPoints(std::span<const PastCourse> courses, const WatchDesign& design = {});

/// Follows the two probabilities exactly; a matter of seconds for thousands of courses.
void watchOdds(PracticeWatch& watch, const WatchDesign& design = {});

/// Both. Courses in any order. No course is a fine answer: no point, and no signal.
/// \returns Reason::outOfRange for a design or a course's own risk out of its bounds.
Result<PracticeWatch> watchPractice(std::span<const PastCourse> courses, const WatchDesign& design = {});

}  // namespace ebbline::learning
