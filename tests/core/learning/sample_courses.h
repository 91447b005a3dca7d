#pragma once
/// \file
/// Courses that are over, for tests: by hand, and by chance.

#include "core/learning/past_course.h"

#include <rapidcheck.h>

namespace ebbline::test {

/// So many courses of a technique, the first ones complicated; one treatment a day.
inline std::vector<learning::PastCourse> coursesOf(const std::string& technique, int complicated, int known, int unknown = 0)
{
    std::vector<learning::PastCourse> courses;
    for (int i = 0; i < known + unknown; ++i) {
        learning::PastCourse course;
        course.name = technique + "-" + std::to_string(1000 + i);
        course.treated.at = clock::Instant{std::chrono::hours(24 * i)};
        course.technique = technique;
        if (i < known)
            course.outcome = learning::Outcome{i < complicated, {}};
        courses.push_back(std::move(course));
    }
    return courses;
}

/// Pain of one side, day by day from day 0; -1 is a day without an entry.
inline bands::TaughtCourse painOn(const std::vector<int>& points)
{
    bands::TaughtCourse days;
    for (std::size_t day = 0; day < points.size(); ++day)
        if (points[day] >= 0)
            days.push_back({recovery::Symptom::pain, recovery::Side::left, static_cast<int>(day), points[day]});
    return days;
}

/// A course that may be anything: few entries, no outcome, zones and lots at random.
inline learning::PastCourse anyCourse(int number)
{
    learning::PastCourse course;
    course.name = std::to_string(number);
    course.treated.at = clock::Instant{std::chrono::hours(*rc::gen::inRange(0, 2000))};
    course.clinic = *rc::gen::elementOf(std::vector<std::string>{"Mole", "Reed", "Weir", ""});
    course.technique = *rc::gen::elementOf(std::vector<std::string>{"a", "b", ""});
    course.zones = *rc::gen::elementOf(std::vector<std::vector<std::string>>{{}, {"cheek"}, {"cheek", "neck"}});
    course.lots = *rc::gen::elementOf(std::vector<std::vector<learning::PackLot>>{{}, {{"TH-1", ""}}, {{"th1", ""}, {"TH 2", "09506000134352"}}});
    if (*rc::gen::inRange(0, 5) > 0)
        course.outcome = learning::Outcome{*rc::gen::inRange(0, 8) == 0, {}};
    const int days = *rc::gen::inRange(0, 24);
    for (int day = 0; day < days; ++day)
        if (*rc::gen::inRange(0, 4) > 0)
            course.days.push_back({*rc::gen::elementOf(recovery::allSymptoms), *rc::gen::elementOf(recovery::bothSides), day,
                                   *rc::gen::inRange(0, 6)});
    return course;
}

inline std::vector<learning::PastCourse> anyCourses(int most)
{
    std::vector<learning::PastCourse> courses;
    const int count = *rc::gen::inRange(0, most);
    for (int i = 0; i < count; ++i)
        courses.push_back(anyCourse(i));
    return courses;
}

}  // namespace ebbline::test
