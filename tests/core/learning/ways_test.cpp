// Groups of a way of placing threads, and two of them side by side.
#include "core/learning/comparison.h"
#include "core/learning/practice_watch.h"
#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using learning::Way;

namespace {

recovery::Treatment with(std::initializer_list<recovery::Placement> placements)
{
    recovery::Treatment treatment;
    treatment.placements = placements;
    return treatment;
}

}  // namespace

TEST_CASE("a treatment belongs to the group that all its threads share, else it is mixed", "[learning][ways]")
{
    recovery::Placement thread;
    recovery::Placement other = thread;
    other.ending = recovery::Ending::pastMovingZone;
    other.gauge = 21;
    other.zone = recovery::Zone::submental;

    CHECK(groupOf(with({thread}), Way::ending) == "short-of-moving-zone");
    CHECK(groupOf(with({other, other}), Way::ending) == "past-moving-zone");
    CHECK(groupOf(with({thread, other}), Way::ending) == "mixed");
    CHECK(groupOf(with({thread}), Way::gauge) == "19");
    CHECK(groupOf(with({thread, other}), Way::gauge) == "mixed");
    CHECK(groupOf(with({thread}), Way::area) == "face");
    CHECK(groupOf(with({other}), Way::area) == "neck");
    CHECK(groupOf(with({thread}), Way::threads) == learning::techniqueOf(with({thread})));
    for (const Way way : learning::allWays)
        CHECK(groupOf(with({}), way).empty());
}

TEST_CASE("whether there was epinephrine at the entry point is what the threads say, and unknown where one says nothing", "[learning][ways]")
{
    using recovery::EpinephrineAt;
    const auto at = [](std::optional<EpinephrineAt> where) {
        recovery::Placement thread;
        thread.epinephrineAt = where;
        return thread;
    };
    const auto none = at(EpinephrineAt::nowhere);
    const auto entry = at(EpinephrineAt::entryPoint);
    const auto track = at(EpinephrineAt::track);
    const auto both = at(EpinephrineAt::both);
    const auto unsaid = at({});
    CHECK(groupOf(with({entry, both}), Way::epinephrine) == "with");
    CHECK(groupOf(with({none, track}), Way::epinephrine) == "without");
    CHECK(groupOf(with({entry, none}), Way::epinephrine) == "mixed");
    CHECK(groupOf(with({both, track}), Way::epinephrine) == "mixed");
    // In no order does a thread that says nothing join the others.
    CHECK(groupOf(with({unsaid, both}), Way::epinephrine).empty());
    CHECK(groupOf(with({both, unsaid}), Way::epinephrine).empty());
    // What the solution held says nothing of the entry point.
    auto older = with({unsaid});
    older.anaesthetic.drug = GENERATE(recovery::Drug::lidocaine, recovery::Drug::lidocaineWithEpinephrine);
    CHECK(groupOf(older, Way::epinephrine).empty());
}

TEST_CASE("groups stand by their courses, without the mixed and the unknown", "[learning][ways]")
{
    auto courses = test::coursesOf("a", 2, 12, 3);
    for (std::size_t i = 0; i < courses.size(); ++i)
        courses[i].ways[static_cast<std::size_t>(Way::gauge)] = i < 5 ? "21" : i < 13 ? "19" : i < 14 ? "mixed" : "";

    const auto groups = learning::groupsOf(courses, Way::gauge);

    REQUIRE(groups.size() == 2);
    CHECK(groups[0].group == "19");
    CHECK(groups[0].known + groups[0].unknown == 8);
    CHECK(groups[1].group == "21");
    CHECK(groups[1].complicated == 2);
    CHECK_FALSE(groups[1].share);
    CHECK(learning::groupsOf(courses, Way::area).empty());
}

TEST_CASE("comparing by threads says what comparing techniques says", "[learning][ways]")
{
    auto courses = test::coursesOf("a", 3, 20);
    const auto more = test::coursesOf("b", 9, 25);
    courses.insert(courses.end(), more.begin(), more.end());
    for (auto& course : courses)
        course.ways[static_cast<std::size_t>(Way::threads)] = course.technique;

    const auto ways = learning::compareWays(courses, Way::threads, "a", "b");
    const auto techniques = learning::compareTechniques(courses, "a", "b");

    REQUIRE(ways.shares);
    REQUIRE(techniques.shares);
    CHECK(ways.first.complicated == 3);
    CHECK(ways.second.known == 25);
    CHECK(ways.shares->difference.difference == techniques.shares->difference.difference);
    CHECK(ways.shares->probability == techniques.shares->probability);
    CHECK(ways.shares->powerForDouble == techniques.shares->powerForDouble);
}

TEST_CASE("the points of a watch come at once, its odds when asked for, and both are the whole watch", "[learning][watch]")
{
    const auto courses = test::coursesOf("a", 6, 60);
    auto points = learning::watchPoints(courses);
    const auto whole = learning::watchPractice(courses);
    REQUIRE(points);
    REQUIRE(whole);
    CHECK(points->falseSignal == 0);
    CHECK(points->points.size() == whole->points.size());

    learning::watchOdds(*points);

    CHECK(points->falseSignal == whole->falseSignal);
    CHECK(points->found == whole->found);
    CHECK(points->found > points->falseSignal);
}
