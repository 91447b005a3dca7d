// A course at random: for what holds of every course.
#pragma once

#include "tests/core/triggers/evenings.h"

#include <rapidcheck.h>

#include <array>

namespace ebbline::triggers::evenings {

/// What triggers compare between the sides, and folds.
inline constexpr std::array scored{Symptom::pain, Symptom::swelling, Symptom::bruising, Symptom::tightness, Symptom::puckering};

/// Scores of both sides at random, some left out.
inline recovery::Scores randomScores()
{
    recovery::Scores scores;
    for (const Symptom symptom : scored)
        for (const Side side : recovery::bothSides)
            if (*rc::gen::inRange(0, 5) > 0)
                scores.insert_or_assign(Stream{symptom, side}, points(*rc::gen::inRange(0, 11)));
    return scores;
}

/// A random course: with the practitioner's scores or without, entries of both sides at random hours over three weeks.
inline CourseInput randomCourse()
{
    CourseInput course{treated, {}, {}};
    if (*rc::gen::inRange(0, 3) > 0)
        course.baseline = randomScores();
    const int entries = *rc::gen::inRange(0, 40);
    int hour = 1;
    for (int i = 0; i < entries; ++i) {
        hour += *rc::gen::inRange(1, 30);
        Observation observation{treated, randomScores()};
        observation.at.at += std::chrono::hours(hour);
        course.observations.push_back(observation);
    }
    return course;
}

}  // namespace ebbline::triggers::evenings
