// Whom a lot went to.

#include "core/learning/lots.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

using namespace ebbline;
using namespace ebbline::learning;

TEST_CASE("every course that received a lot is found, however it was written down", "[learning][lots]")
{
    auto courses = test::coursesOf("a", 1, 5);
    courses[0].lots = {PackLot{"TH-4417"}};
    courses[1].lots = {PackLot{"th 4417"}, PackLot{"XX1"}};
    courses[2].lots = {PackLot{"TH4417"}, PackLot{"TH-4417"}};
    courses[3].lots = {PackLot{"TH-44170"}};
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
                                   [&](const PackLot& lot) { return lotKey(lot.printed) == key; });
            });
            RC_ASSERT(static_cast<std::ptrdiff_t>(trace.courses.size()) == has);
            RC_ASSERT(std::is_sorted(trace.courses.begin(), trace.courses.end(),
                                     [](const LotCourse& a, const LotCourse& b) { return a.treated.at < b.treated.at; }));
        }
    }));
}

TEST_CASE("one lot of two products is two traces, and who has it of no known product stands in each, marked", "[learning][lots]")
{
    const std::string one = "09506000134352";
    const std::string other = "09506000134369";
    auto courses = test::coursesOf("a", 0, 5);
    courses[0].lots = {PackLot{"TH-4417", one}};
    courses[1].lots = {PackLot{"TH 4417", other}};
    courses[2].lots = {PackLot{"th4417"}};
    courses[3].lots = {PackLot{"TH4417"}, PackLot{"TH-4417", one}};  // one thread with its pack, one written by hand
    courses[4].lots = {PackLot{"QN-1", one}};
    const auto namesIn = [](const LotTrace& trace) {
        std::vector<std::pair<std::string, std::string>> names;
        for (const LotCourse& course : trace.courses)
            names.emplace_back(course.course, course.article);
        std::sort(names.begin(), names.end());
        return names;
    };
    using Names = std::vector<std::pair<std::string, std::string>>;
    const auto sorted = [](Names names) {
        std::sort(names.begin(), names.end());
        return names;
    };

    const auto traces = traceLots(courses);
    REQUIRE(traces.size() == 4);
    CHECK((traces[0].key == "QN1" && traces[0].article == one));
    CHECK((traces[1].key == "TH4417" && traces[1].article == one));
    CHECK(namesIn(traces[1]) == sorted({{courses[0].name, one}, {courses[2].name, ""}, {courses[3].name, one}}));
    CHECK((traces[2].key == "TH4417" && traces[2].article == other));
    CHECK(namesIn(traces[2]) == sorted({{courses[1].name, other}, {courses[2].name, ""}, {courses[3].name, ""}}));
    CHECK((traces[3].key == "TH4417" && traces[3].article.empty()));
    CHECK(namesIn(traces[3]) == sorted({{courses[2].name, ""}, {courses[3].name, ""}}));

    // A recall that names no product is of all of them; one that names a product misses nobody who may have it.
    CHECK(traceLot(courses, "TH4417").courses.size() == 4);
    CHECK(namesIn(traceLot(courses, "th-4417", other)) == namesIn(traces[2]));
    CHECK(namesIn(traceLot(courses, "TH4417", "09506000134376")) == sorted({{courses[2].name, ""}, {courses[3].name, ""}}));
}
