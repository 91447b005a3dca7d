// Two techniques side by side, and what so few patients cannot show.

#include "core/learning/comparison.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::learning;
using recovery::Symptom;
using test::coursesOf;

namespace {

std::vector<PastCourse> bothOf(int complicatedA, int knownA, int complicatedB, int knownB)
{
    auto courses = coursesOf("a", complicatedA, knownA);
    for (auto& course : coursesOf("b", complicatedB, knownB))
        courses.push_back(course);
    return courses;
}

/// Pain of 4, gone on one of these days or last seen on it.
void addTimes(std::vector<PastCourse>& courses, const std::string& technique, std::span<const std::pair<int, bool>> times)
{
    for (const auto& [day, resolved] : times) {
        PastCourse course;
        course.technique = technique;
        std::vector<int> points(static_cast<std::size_t>(day) + (resolved ? 2 : 1), 4);
        if (resolved)
            points[static_cast<std::size_t>(day)] = points[static_cast<std::size_t>(day) + 1] = 0;
        course.days = test::painOn(points);
        courses.push_back(std::move(course));
    }
}

}  // namespace

TEST_CASE("the words beside every comparison are fixed", "[learning][comparison]")
{
    CHECK(caution == "comparison, not proof");
}

TEST_CASE("two techniques are told apart by Newcombe's difference and Fisher's test", "[learning][comparison]")
{
    // 56/70 against 48/80: 0.0524 to 0.3339. Newcombe, Statistics in Medicine 1998;17:873, table II.
    const Comparison comparison = compareTechniques(bothOf(56, 70, 48, 80), "a", "b");
    REQUIRE(comparison.shares);
    CHECK_THAT(comparison.shares->difference.difference, WithinAbs(0.2, 1e-12));
    CHECK_THAT(comparison.shares->difference.low, WithinAbs(0.0524, 5e-5));
    CHECK_THAT(comparison.shares->difference.high, WithinAbs(0.3339, 5e-5));
    CHECK(*comparison.shares->probability < 0.05);

    // 1 of 30 against 5 of 30: p 0.1945098, P(first lower) 0.960812332, both R 4.2.2.
    const Comparison few = compareTechniques(bothOf(1, 30, 5, 30), "a", "b");
    REQUIRE(few.shares);
    CHECK_THAT(*few.shares->probability, WithinAbs(0.1945098, 5e-8));
    CHECK_THAT(few.shares->firstLower, WithinAbs(0.960812332, 1e-8));
    CHECK((few.shares->difference.low < 0 && few.shares->difference.high > 0));
}

TEST_CASE("a comparison says how large a difference would have to be to be seen", "[learning][comparison]")
{
    // Both together 2 of 40: the reference is (2 + 1/2) / 41.
    const Comparison small = compareTechniques(bothOf(1, 20, 1, 20), "a", "b");
    REQUIRE(small.shares);
    CHECK_THAT(small.shares->reference, WithinAbs(2.5 / 41, 1e-12));
    // Twice as many complications would hardly ever be noticed among forty patients.
    CHECK(small.shares->powerForDouble < 0.10);
    REQUIRE(small.shares->smallestFound);
    CHECK(*small.shares->smallestFound > 0.35);

    const Comparison large = compareTechniques(bothOf(50, 1000, 50, 1000), "a", "b");
    REQUIRE(large.shares);
    CHECK(large.shares->powerForDouble > 0.95);
    CHECK(*large.shares->smallestFound < *small.shares->smallestFound);
}

TEST_CASE("no complication in either group is no proof that they are alike", "[learning][comparison]")
{
    const Comparison comparison = compareTechniques(bothOf(0, 20, 0, 20), "a", "b");

    REQUIRE(comparison.shares);
    CHECK_FALSE(comparison.shares->probability);
    CHECK(comparison.shares->reference > 0);
    CHECK(comparison.shares->difference.low < -0.1);
    CHECK(comparison.shares->difference.high > 0.1);
}

TEST_CASE("a group of few, or none, is not compared", "[learning][comparison]")
{
    CHECK(compareTechniques(bothOf(1, 30, 3, 9), "a", "b").shares.error() == NotEnough{Lack::outcomes, 9, 10});
    CHECK(compareTechniques(bothOf(1, 30, 3, 30), "a", "c").shares.error() == NotEnough{Lack::outcomes, 0, 10});
    const Comparison none = compareTechniques({}, "a", "b");
    CHECK_FALSE(none.shares);
    for (const auto& symptom : none.symptoms)
        CHECK(symptom.times.error() == NotEnough{Lack::courses, 0, 10});
}

TEST_CASE("times to resolution are compared by the log-rank test and the restricted means", "[learning][comparison]")
{
    // Gehan's trial, Biometrika 1965;52:203, both arms; every time half a day earlier by Gap::middle where
    // something happened, which keeps the order of events and of those last seen.
    std::vector<PastCourse> courses;
    const std::vector<std::pair<int, bool>> treated{{6, true},   {6, true},   {6, true},   {6, false},  {7, true},
                                                    {9, false},  {10, true},  {10, false}, {11, false}, {13, true},
                                                    {16, true},  {17, false}, {19, false}, {20, false}, {22, true},
                                                    {23, true},  {25, false}, {32, false}, {32, false}, {34, false},
                                                    {35, false}};
    std::vector<std::pair<int, bool>> control;
    for (const int day : {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23})
        control.emplace_back(day, true);
    addTimes(courses, "a", treated);
    addTimes(courses, "b", control);

    const Comparison comparison = compareTechniques(courses, "a", "b");

    REQUIRE(comparison.symptoms[0].symptom == Symptom::pain);
    REQUIRE(comparison.symptoms[0].times);
    const TimeComparison& times = *comparison.symptoms[0].times;
    // chi-square 16.79294 (R 4.2.2, survdiff; published as 16.79).
    CHECK_THAT(times.chiSquare, WithinAbs(16.79294099, 1e-6));
    CHECK_THAT(times.probability, WithinAbs(4.168809e-05, 1e-10));
    CHECK_THAT(times.difference, WithinAbs(times.first.days - times.second.days, 1e-12));
    CHECK((times.low > 0 && times.low < times.difference && times.difference < times.high));
    // 80 % power at 5 %: 2.80 standard errors.
    CHECK_THAT(times.smallestFound, WithinAbs(2.8015851 * (times.high - times.difference) / 1.9599640, 1e-6));
    CHECK(comparison.symptoms[1].times.error().lack == Lack::courses);
}

TEST_CASE("exchanging the techniques exchanges the signs and nothing else", "[learning][comparison][property]")
{
    CHECK(rc::check("mirror", [] {
        const auto courses = test::anyCourses(80);
        const Comparison one = compareTechniques(courses, "a", "b");
        const Comparison other = compareTechniques(courses, "b", "a");
        RC_ASSERT(one.first.known == other.second.known);
        RC_ASSERT(one.shares.has_value() == other.shares.has_value());
        if (one.shares) {
            RC_ASSERT(std::abs(one.shares->difference.low + other.shares->difference.high) < 1e-12);
            RC_ASSERT(one.shares->probability.has_value() == other.shares->probability.has_value());
            if (one.shares->probability)
                RC_ASSERT(std::abs(*one.shares->probability - *other.shares->probability) < 1e-9);
            RC_ASSERT(std::abs(one.shares->firstLower + other.shares->firstLower - 1) < 1e-6);
            RC_ASSERT(one.shares->powerForDouble >= 0 && one.shares->powerForDouble <= 1);
        }
        for (std::size_t row = 0; row < one.symptoms.size(); ++row) {
            const auto& here = one.symptoms[row].times;
            const auto& there = other.symptoms[row].times;
            RC_ASSERT(here.has_value() == there.has_value());
            if (here) {
                RC_ASSERT(std::abs(here->difference + there->difference) < 1e-9);
                RC_ASSERT(std::abs(here->probability - there->probability) < 1e-9);
                RC_ASSERT(std::isfinite(here->low) && std::isfinite(here->high) && here->smallestFound > 0);
            }
        }
    }));
}
