// A practice over consecutive treatments: the risk-adjusted sum, and expected against observed.

#include "core/learning/practice_watch.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::learning;
using test::coursesOf;

TEST_CASE("sums and differences are those of the chart, course by course", "[learning][watch]")
{
    // R 4.2.2, recomputed from Steiner et al., Biostatistics 2000;1:441, with odds ratio 2.
    const std::vector<double> risks{.02, .05, .10, .04, .08, .03, .15, .05, .06, .02};
    const std::vector<double> sums{0, 0, .5978370, .5586163, 1.1748024, 1.1452436, 1.0054817, 1.6498387, 1.5915698, 1.5717672};
    const std::vector<double> differences{.02, .07, -.83, -.79, -1.71, -1.68, -1.53, -2.48, -2.42, -2.40};
    auto courses = coursesOf("a", 0, 10);
    for (std::size_t i = 0; i < courses.size(); ++i) {
        courses[i].risk = risks[i];
        courses[i].outcome->complicated = i == 2 || i == 4 || i == 7;
    }
    std::reverse(courses.begin(), courses.end());  // the order of treatment counts, not that of the file

    const auto watch = watchPractice(courses);

    REQUIRE(watch);
    REQUIRE(watch->points.size() == 10);
    for (std::size_t i = 0; i < 10; ++i) {
        CAPTURE(i);
        CHECK_THAT(watch->points[i].sum, WithinAbs(sums[i], 5e-7));
        CHECK_THAT(watch->points[i].expectedMinusObserved, WithinAbs(differences[i], 1e-9));
    }
    CHECK(watch->signalCount == 0);
    CHECK(watch->settled);
}

TEST_CASE("the chance of a false signal stands beside the chart", "[learning][watch]")
{
    // p 0.05, odds ratio 2, decision 3.5, 200 patients: 0.050 false, 0.731 if the odds are doubled.
    // R 4.2.2 over a grid of sums; docs/statistics/charts.md has the exact 0.0497 and 0.7302.
    const auto watch = watchPractice(coursesOf("a", 10, 200));
    REQUIRE(watch);
    CHECK_THAT(watch->falseSignal, WithinAbs(0.0497, 5e-5));
    CHECK_THAT(watch->found, WithinAbs(0.7302, 5e-5));
}

TEST_CASE("after a signal the sum begins again and what came before stays to be seen", "[learning][watch]")
{
    const auto watch = watchPractice(coursesOf("a", 12, 30));

    REQUIRE(watch);
    REQUIRE(watch->signalCount == 2);
    const auto first = std::find_if(watch->points.begin(), watch->points.end(), [](const auto& point) { return point.signal; });
    CHECK(first->sum > 3.5);
    CHECK(first->segment == 0);
    CHECK(std::next(first)->segment == 1);
    CHECK(std::next(first)->sum < first->sum);
    // Expected - observed goes on: it is for reading.
    CHECK_THAT(watch->points.back().expectedMinusObserved, WithinAbs(30 * 0.05 - 12, 1e-9));
}

TEST_CASE("a course without an outcome is never taken for a good one", "[learning][watch]")
{
    auto courses = coursesOf("a", 3, 20);
    const auto all = watchPractice(courses);
    courses[10].outcome.reset();
    const auto without = watchPractice(courses);

    REQUIRE((all && without));
    CHECK(without->unknown == 1);
    CHECK_FALSE(without->settled);
    CHECK(without->points.size() == 19);
    CHECK_THAT(without->points.back().expectedMinusObserved, WithinAbs(19 * 0.05 - 3, 1e-9));

    // Unknown outcomes after the last known one move nothing that was drawn.
    auto recent = coursesOf("a", 3, 20, 5);
    CHECK(watchPractice(recent)->settled);
}

TEST_CASE("no course is no point and no signal, and an impossible design is refused", "[learning][watch][errors]")
{
    const auto none = watchPractice({});
    REQUIRE(none);
    CHECK(none->points.empty());
    CHECK(none->falseSignal == 0);
    const auto courses = coursesOf("a", 1, 12);
    for (const WatchDesign& bad : {WatchDesign{0, 2, 3.5}, WatchDesign{1, 2, 3.5}, WatchDesign{0.05, 1, 3.5},
                                   WatchDesign{0.05, -2, 3.5}, WatchDesign{0.05, 2, 0}, WatchDesign{std::nan(""), 2, 3.5}})
        CHECK(watchPractice(courses, bad).error().reason == Reason::outOfRange);
    auto wrong = courses;
    wrong[4].risk = 1.0;
    CHECK(watchPractice(wrong).error().reason == Reason::outOfRange);
}

TEST_CASE("a complication never lowers the sum, and everything stays finite", "[learning][watch][property]")
{
    CHECK(rc::check("laws", [] {
        const auto courses = test::anyCourses(120);
        const auto watch = watchPractice(courses);
        RC_ASSERT(watch.has_value());
        double before = 0;
        int segment = 0;
        for (const WatchPoint& point : watch->points) {
            if (point.segment != segment)
                before = 0;
            segment = point.segment;
            RC_ASSERT(std::isfinite(point.sum) && point.sum >= 0);
            const bool right = point.complicated ? point.sum >= before : point.sum <= before;
            RC_ASSERT(right);
            before = point.sum;
        }
        RC_ASSERT(watch->points.size() + static_cast<std::size_t>(watch->unknown) == courses.size());
        RC_ASSERT(watch->falseSignal >= 0 && watch->falseSignal <= watch->found + 1e-12);
    }));
}
