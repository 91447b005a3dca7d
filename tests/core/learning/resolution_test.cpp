// When a symptom is gone, and how long that takes.

#include "core/learning/resolution.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::learning;
using recovery::Symptom;
using test::painOn;

namespace {

std::optional<statistics::Followed> gone(const std::vector<int>& points, Gap gap = Gap::middle)
{
    return resolutionOf(painOn(points), Symptom::pain, gap);
}

/// Pain of 4 until it is gone on this day, or to this day if it was last seen then.
PastCourse courseOf(int day, bool resolved)
{
    PastCourse course;
    std::vector<int> points(static_cast<std::size_t>(day) + (resolved ? 2 : 1), 4);
    if (resolved)
        points[static_cast<std::size_t>(day)] = points[static_cast<std::size_t>(day) + 1] = 0;
    course.days = painOn(points);
    course.name = std::to_string(day);
    return course;
}

}  // namespace

TEST_CASE("gone is the first of two days at one or below that last", "[learning][resolution]")
{
    struct Row { std::vector<int> points; double later; double middle; bool event; };
    for (const Row& row : {Row{{5, 4, 3, 1, 0}, 3, 2.5, true},
                           Row{{5, 4, 3, 1, 2}, 4, 4, false},           // one day is none
                           Row{{5, 1, 1, 3, 1, 0}, 4, 3.5, true},       // came back: the last time counts
                           Row{{5, 1, 0, 1, 1, 4, 4}, 1, 0.5, true},    // three days count although it came back
                           Row{{5, 1, 0, 1, 4, 4}, 5, 5, false},        // two days and back do not
                           Row{{5, 4, -1, -1, 0, 0}, 4, 2.5, true},     // nobody saw when: between day 1 and day 4
                           Row{{0, 0, 0, 0, 5, 3, 1, 1}, 6, 5.5, true}, // before it began nothing could go
                           Row{{5, 4, 3}, 2, 2, false}}) {
        const auto later = gone(row.points, Gap::later);
        const auto middle = gone(row.points, Gap::middle);
        CAPTURE(row.points);
        REQUIRE((later && middle));
        CHECK(later->event == row.event);
        CHECK(later->time == row.later);
        CHECK(middle->time == row.middle);
    }
}

TEST_CASE("what never came cannot go, and one day is no course", "[learning][resolution]")
{
    CHECK_FALSE(gone({0, 1, 1, 0}));
    CHECK_FALSE(gone({7}));
    CHECK_FALSE(gone({}));
    CHECK_FALSE(resolutionOf(painOn({5, 4, 0, 0}), Symptom::swelling, Gap::later));
}

TEST_CASE("a day is as bad as its worse side", "[learning][resolution]")
{
    bands::TaughtCourse days = painOn({4, 1, 1, 1, 1});
    for (bands::DayScore score : painOn({4, 4, 4, 1, 0})) {
        score.side = recovery::Side::right;
        days.push_back(score);
    }
    CHECK(resolutionOf(days, Symptom::pain, Gap::later)->time == 3);
}

TEST_CASE("the median has the limits at which the curve's limits pass a half", "[learning][resolution]")
{
    // The treated arm of Gehan's trial, Biometrika 1965;52:203 (times in its own unit). Median 23 as
    // published; the limits from the log-log limits of R 4.2.2's survfit: 0.5033 at 10, 0.4316 at 13, and
    // the upper one is still 0.6801 at 23.
    std::vector<PastCourse> courses;
    for (const int day : {6, 6, 6, 7, 10, 13, 16, 22, 23})
        courses.push_back(courseOf(day, true));
    for (const int day : {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35})
        courses.push_back(courseOf(day, false));

    const Resolution resolution = resolutionOf(courses, Symptom::pain);

    CHECK(resolution.courses == 21);
    CHECK(resolution.resolved == 9);
    REQUIRE(resolution.times);
    REQUIRE(resolution.times->medianLater);
    CHECK(resolution.times->medianLater->days == 23);
    CHECK(resolution.times->medianLater->low == 13);
    CHECK_FALSE(resolution.times->medianLater->high);
    // The middle of a day's gap is half a day earlier.
    CHECK(resolution.times->median->days == 22.5);
}

TEST_CASE("without censoring the restricted mean is the mean of the days up to the horizon", "[learning][resolution]")
{
    std::vector<PastCourse> courses;
    double sum = 0;
    for (const int day : {3, 5, 5, 8, 9, 12, 12, 15, 18, 25}) {
        courses.push_back(courseOf(day, true));
        sum += std::min(day - 0.5, horizonDays);
    }
    const Resolution resolution = resolutionOf(courses, Symptom::pain);
    REQUIRE(resolution.times);
    REQUIRE(resolution.times->mean);
    CHECK_THAT(resolution.times->mean->days, WithinAbs(sum / 10, 1e-12));
    CHECK((resolution.times->mean->low < sum / 10 && sum / 10 < resolution.times->mean->high));
}

TEST_CASE("few courses, short ones and equal ones are not enough to say, each in its own way", "[learning][resolution]")
{
    std::vector<PastCourse> courses(9, courseOf(8, true));
    Resolution resolution = resolutionOf(courses, Symptom::pain);
    REQUIRE_FALSE(resolution.times);
    CHECK(resolution.times.error() == NotEnough{Lack::courses, 9, 10});
    CHECK(resolutionOf({}, Symptom::pain).times.error() == NotEnough{Lack::courses, 0, 10});

    courses.assign(12, courseOf(8, false));
    resolution = resolutionOf(courses, Symptom::pain);
    REQUIRE(resolution.times);
    CHECK_FALSE(resolution.times->median);
    CHECK(resolution.times->mean.error() == NotEnough{Lack::followed, 8, 20});

    courses.assign(12, courseOf(8, true));
    resolution = resolutionOf(courses, Symptom::pain);
    REQUIRE(resolution.times);
    CHECK(resolution.times->median->days == 7.5);
    CHECK(resolution.times->mean.error().lack == Lack::spread);

    // Those who never had it are counted, and not as fast.
    courses.push_back(PastCourse{});
    CHECK(resolutionOf(courses, Symptom::pain).never == 1);
    CHECK(resolutionOf(courses, Symptom::pain).courses == 12);
}

TEST_CASE("whatever was scored, times are finite, and the gap only ever makes them later", "[learning][resolution][property]")
{
    CHECK(rc::check("laws", [] {
        const auto courses = test::anyCourses(60);
        for (const Symptom symptom : recovery::allSymptoms) {
            for (const PastCourse& course : courses) {
                const auto middle = resolutionOf(course.days, symptom, Gap::middle);
                const auto later = resolutionOf(course.days, symptom, Gap::later);
                RC_ASSERT(middle.has_value() == later.has_value());
                if (middle) {
                    RC_ASSERT(middle->event == later->event);
                    RC_ASSERT(middle->time >= 0 && middle->time <= later->time);
                }
            }
            const Resolution resolution = resolutionOf(courses, symptom);
            RC_ASSERT(resolution.courses + resolution.never == static_cast<long>(courses.size()));
            if (!resolution.times)
                continue;
            if (resolution.times->median)
                RC_ASSERT(std::isfinite(resolution.times->median->days));
            if (const auto& mean = resolution.times->mean) {
                RC_ASSERT(std::isfinite(mean->days) && mean->low >= 0 && mean->high <= horizonDays);
                RC_ASSERT(mean->low <= mean->days && mean->days <= mean->high);
            }
        }
    }));
}
