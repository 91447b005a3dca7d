// Whom a lot went to.

#include "core/learning/lots.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::learning;

TEST_CASE("every course that received a lot is found, however it was written down", "[learning][lots]")
{
    auto courses = test::coursesOf("a", 1, 5);
    courses[0].lots = {"TH-4417"};
    courses[1].lots = {"th 4417", "XX1"};
    courses[2].lots = {"TH4417", "TH-4417"};
    courses[3].lots = {"TH-44170"};
    courses[1].outcome.reset();

    const LotTrace trace = traceLot(courses, "th.4417");

    CHECK(trace.key == "TH4417");
    REQUIRE(trace.courses.size() == 3);
    CHECK(trace.courses[0].printed == "TH-4417");
    CHECK(trace.courses[0].complicated == true);
    CHECK(trace.courses[1].printed == "th 4417");
    CHECK_FALSE(trace.courses[1].complicated);
    CHECK(trace.share.unknown == 1);
    CHECK_FALSE(trace.share.share);  // three courses say nothing of a lot
    CHECK(traceLots(courses).size() == 3);
}

TEST_CASE("a lot that nobody received is an answer", "[learning][lots]")
{
    const LotTrace none = traceLot(test::coursesOf("a", 0, 5), "QQ-9");
    CHECK(none.key == "QQ9");
    CHECK(none.courses.empty());
    CHECK_FALSE(none.share.share);
    CHECK(traceLots({}).empty());
    CHECK(traceLot({}, "").courses.empty());
}

TEST_CASE("a trace holds exactly the courses with that lot, oldest first", "[learning][lots][property]")
{
    CHECK(rc::check("complete", [] {
        const auto courses = test::anyCourses(40);
        for (const std::string key : {"TH1", "TH2"}) {
            const LotTrace trace = traceLot(courses, key);
            const auto has = std::count_if(courses.begin(), courses.end(), [&](const PastCourse& course) {
                return std::any_of(course.lots.begin(), course.lots.end(),
                                   [&](const std::string& lot) { return lotKey(lot) == key; });
            });
            RC_ASSERT(static_cast<std::ptrdiff_t>(trace.courses.size()) == has);
            RC_ASSERT(std::is_sorted(trace.courses.begin(), trace.courses.end(),
                                     [](const LotCourse& a, const LotCourse& b) { return a.treated.at < b.treated.at; }));
        }
    }));
}
