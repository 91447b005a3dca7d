// Triggers when clocks disagree, and what is said of a finding over all symptoms.

#include "tests/core/triggers/evenings.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

TEST_CASE("what has arrived is judged as written although it lies ahead of the clock", "[triggers][safety]")
{
    const auto course = series(Symptom::pain, Side::left, {5, 4, 3, 2, 2, 5});
    const auto known = judge(course, defaultProtocol(), onDay(5, 21));

    // A clock that is a day behind, or before the treatment, hides nothing and calls nobody silent.
    CHECK(judgeArrived(course, defaultProtocol(), onDay(5, 21)) == known);
    CHECK(judgeArrived(course, defaultProtocol(), onDay(4, 21)) == known);
    CHECK(judgeArrived(course, defaultProtocol(), onDay(-30)) == known);
}

TEST_CASE("an entry that lies ahead neither ends a silence nor begins one", "[triggers][safety]")
{
    auto course = series(Symptom::pain, Side::left, {3, 3});
    course.observations.push_back({onDay(900), {{Stream{Symptom::pain, Side::left}, points(1)}}});

    CHECK_FALSE(find(judgeArrived(course, defaultProtocol(), onDay(3)), Trigger::silence));
    const auto findings = judgeArrived(course, defaultProtocol(), onDay(4, 21));
    const Finding* silence = find(findings, Trigger::silence);
    REQUIRE(silence);
    CHECK(silence->raisedAt == onDay(4));
}

TEST_CASE("after a high score two days of silence are told, also where a low one lies ahead of the clock", "[triggers][safety]")
{
    auto course = series(Symptom::pain, Side::left, {3, 9});
    course.observations.push_back({onDay(900), {{Stream{Symptom::pain, Side::left}, points(0)}}});

    const auto findings = judgeArrived(course, defaultProtocol(), onDay(3, 21));
    const Finding* silence = find(findings, Trigger::silence);
    REQUIRE(silence);
    CHECK(silence->raisedAt == onDay(3));
    CHECK(silence->numbers.at("waited") == 2);
}

TEST_CASE("a high score that lies ahead of the clock shortens no silence", "[triggers]")
{
    auto course = series(Symptom::pain, Side::left, {3, 1});
    course.observations.push_back({onDay(900), {{Stream{Symptom::pain, Side::left}, points(9)}}});

    CHECK_FALSE(find(judgeArrived(course, defaultProtocol(), onDay(3, 21)), Trigger::silence));
}

TEST_CASE("the wait for an entry begins with the treatment, also after one dated before it", "[triggers][errors]")
{
    CourseInput course{treated, {}, {}};
    course.observations.push_back({onDay(-20), {{Stream{Symptom::pain, Side::left}, points(3)}}});

    CHECK(judge(course, defaultProtocol(), onDay(2)).empty());
    CHECK(find(judge(course, defaultProtocol(), onDay(3, 11)), Trigger::silence));
}

TEST_CASE("a finding over all symptoms says so, and not that one usual score were high", "[triggers]")
{
    const Finding slow{.trigger = Trigger::slowRecovery, .urgency = Urgency::nextWorkingDay,
                       .stream = {Symptom::tightness, Side::none}, .raisedAt = onDay(16), .day = 16,
                       .numbers = {{"score", 2}, {"usualHigh", 2}, {"mean", 8.0 / 3}}};
    CHECK(explain(slow) == "all symptoms together are slow to go on day 16, among them tightness with 2.7 of 10 on average over its last "
                           "three days with an answer, usual is up to 2");
    Finding high = slow;
    high.trigger = Trigger::level;
    CHECK(explain(high).starts_with("all symptoms together are far above the usual on day 16"));
    high.stream.side = Side::left;
    CHECK(explain(high) == "tightness on the left is far above the usual: 2 of 10 on day 16, usual is up to 2");
}
