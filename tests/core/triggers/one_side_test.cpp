// One side that goes its own way, and folds that stay.

#include "tests/core/triggers/evenings.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

TEST_CASE("one side that stays behind while the other recovers is found though no score rises", "[triggers]")
{
    // Left pain, swelling and tightness stop falling on day 4; the right goes on to nothing.
    CourseInput course{treated, {}, {}};
    const std::vector<int> left{5, 5, 4, 4, 4, 4, 4, 5, 5};
    const std::vector<int> right{5, 5, 4, 4, 3, 2, 1, 1, 0};
    for (std::size_t day = 0; day < left.size(); ++day) {
        Observation observation{onDay(static_cast<int>(day)), {}};
        for (const Symptom symptom : {Symptom::pain, Symptom::swelling, Symptom::tightness}) {
            observation.scores.insert_or_assign(Stream{symptom, Side::left}, points(left[day]));
            observation.scores.insert_or_assign(Stream{symptom, Side::right}, points(right[day]));
        }
        course.observations.push_back(observation);
    }

    const auto findings = judged(course, 8);

    const Finding* sides = find(findings, Trigger::sideDivergence);
    REQUIRE(sides);
    CHECK(sides->stream.side == Side::left);
    CHECK(sides->day <= 7);
    CHECK(sides->urgency == Urgency::callNow);
    CHECK(sides->numbers.at("apart") >= 6);
    CHECK(sides->numbers.at("statistic") > sides->numbers.at("threshold"));
}

TEST_CASE("a fold that keeps its depth is noted from day 8, one that smooths out is not", "[triggers]")
{
    const auto kept = series(Symptom::puckering, Side::left, {3, 3, 3, 3, 3, 3, 3, 3, 3, 3});
    const auto smooth = series(Symptom::puckering, Side::left, {6, 6, 5, 5, 5, 4, 4, 3, 3, 2, 2, 2, 1, 1});

    const auto findings = judged(kept, 9);
    const Finding* note = find(findings, Trigger::persistentPuckering);
    REQUIRE(note);
    CHECK(note->day == 8);
    CHECK(note->urgency == Urgency::atReview);
    CHECK_FALSE(find(judged(smooth, 13), Trigger::persistentPuckering));
}

TEST_CASE("a deep fold is noted from day 12 whatever it was", "[triggers]")
{
    const auto course = series(Symptom::puckering, Side::left, {8, 8, 7, 7, 6, 6, 5, 5, 4, 4, 3, 3, 3, 2});

    const auto findings = judged(course, 13);
    const Finding* note = find(findings, Trigger::persistentPuckering);
    REQUIRE(note);
    CHECK(note->day == 12);
}
