#pragma once
/// \file
/// Courses whose scores are drawn from a band, and choices between versions, for tests.

#include "core/bands/versions.h"
#include "core/clock/iso8601.h"

#include <algorithm>
#include <random>

namespace ebbline::test {

inline const clock::Moment learnedAt = *clock::parseIso8601("2027-05-01T18:00:00+02:00");

inline recovery::CourseId idOf(std::uint32_t number)
{
    recovery::CourseId id;
    for (std::size_t i = 0; i < 4; ++i)
        id.value[i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
    return id;
}

/// Courses whose scores are drawn from a band, `more` points added.
inline std::vector<bands::Taught> drawn(const bands::Band& band, std::uint32_t count, int more = 0)
{
    std::mt19937_64 engine(4711);
    std::vector<bands::Taught> courses;
    for (std::uint32_t number = 0; number < count; ++number) {
        bands::Taught course{idOf(number + 1), {}};
        for (int day = 0; day < bands::courseDays; ++day)
            for (const recovery::Symptom symptom : {recovery::Symptom::pain, recovery::Symptom::swelling}) {
                double left = static_cast<double>(engine() >> 11) * 0x1.0p-53;
                int points = 0;
                for (const double p : band.at(symptom, day)) {
                    if (left < p)
                        break;
                    left -= p;
                    ++points;
                }
                course.days.push_back({symptom, recovery::Side::left, day, std::min(10, points + more)});
            }
        courses.push_back(std::move(course));
    }
    return courses;
}

inline bands::Choice use(const std::string& version) { return {version, false, "Dr. Ada Lund", "more courses", learnedAt}; }
inline bands::Choice goBack(const std::string& version) { return {version, true, "Dr. Ada Lund", "too many alerts", learnedAt}; }

}  // namespace ebbline::test
