// A course of evenings: what the tests of the triggers say their cases in.
#pragma once

#include "core/clock/iso8601.h"
#include "core/triggers/judge.h"

#include <algorithm>
#include <vector>

namespace ebbline::triggers::evenings {

using recovery::Score;
using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using recovery::Urgency;

inline const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

inline clock::Moment onDay(int day, int hour = 20)
{
    clock::Moment at = treated;
    at.at += std::chrono::hours(24 * day + hour - 10);
    return at;
}

inline Score points(int value) { return *Score::of(value); }

/// One symptom on one side, an entry every evening from day 0.
inline CourseInput series(Symptom symptom, Side side, const std::vector<int>& scores)
{
    CourseInput course{treated, {}, {}};
    for (std::size_t day = 0; day < scores.size(); ++day)
        course.observations.push_back(
            {onDay(static_cast<int>(day)), {{Stream{symptom, side}, points(scores[day])}}});
    return course;
}

inline std::vector<Finding> judged(const CourseInput& course, int lastDay, const Protocol& protocol = defaultProtocol())
{
    return judge(course, protocol, onDay(lastDay, 21));
}

/// The first finding of the trigger; nothing if there is none. It lives as long as the findings do.
inline const Finding* find(const std::vector<Finding>& findings, Trigger trigger)
{
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const Finding& finding) { return finding.trigger == trigger; });
    return found == findings.end() ? nullptr : &*found;
}

}  // namespace ebbline::triggers::evenings
