#pragma once
/// \file
/// How many courses were complicated, over all and by what was done. docs/statistics/learning.md.

#include "core/learning/answer.h"
#include "core/learning/past_course.h"
#include "core/statistics/proportions.h"

#include <span>

namespace ebbline::learning {

/// By what courses are told apart. A course with several zones counts in each of them: shares of zones
/// do not add up, and neighbouring zones share their patients.
enum class By { nothing, technique, zone, clinic };

struct Share {
    double share;
    statistics::Interval limits;  ///< Wilson, 95 %
};

struct GroupShare {
    std::string group;  ///< empty for all together, or where it is unknown
    long complicated = 0;
    long known = 0;     ///< courses whose outcome is known
    long unknown = 0;   ///< and those whose is not: in no share
    Answer<Share> share = std::unexpected(NotEnough{Lack::outcomes, 0, fewestCourses});
};

/// Of `known` courses; from fewestCourses on.
Answer<Share> shareOf(long complicated, long known);

/// In the order of the groups' names.
std::vector<GroupShare> complicationShares(std::span<const PastCourse> courses, By by);

/// Each kind of complication among all courses whose outcome is known, most frequent first; a course
/// with two kinds counts in both.
std::vector<GroupShare> complicationKinds(std::span<const PastCourse> courses);

}  // namespace ebbline::learning
