#pragma once
/// \file
/// The course that speed is measured on: every stream every evening, six symptoms on two sides, 22 days,
/// nothing missing. For the benches.

#include "core/rehearsal/invented_course.h"

#include <map>

namespace ebbline::bench {

inline triggers::CourseInput fullCourse(int number)
{
    using namespace rehearsal;
    const KnownCourse pattern = invent({Model::decay, Rhythm::daily, 3}, Kind::plain, number);
    triggers::CourseInput course{pattern.input.treated, pattern.input.baseline, {}};
    recovery::Scores scores;
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        if (symptom != recovery::Symptom::numbness)
            for (const recovery::Side side : recovery::bothSides)
                scores.insert_or_assign({symptom, side}, *recovery::Score::of(0));
    auto next = pattern.input.observations.begin();
    for (int day = 0; day < inventedDays; ++day) {
        if (next != pattern.input.observations.end())
            for (const auto& [stream, score] : (next++)->scores)
                scores.insert_or_assign(stream, score);
        clock::Moment at = pattern.input.treated;
        at.at += std::chrono::hours(24 * day + 6);
        course.observations.push_back({at, scores});
    }
    return course;
}

}  // namespace ebbline::bench
