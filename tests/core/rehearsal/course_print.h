#pragma once
/// \file
/// A course as one number, to hold that it is the same course.

#include "core/rehearsal/invented_course.h"

#include <cstdint>

namespace ebbline::rehearsal {

/// A number over every entry's moment and scores (FNV-1a); signs, temperatures and what the practitioner scored are not in it.
inline std::uint64_t printOf(const KnownCourse& course)
{
    std::uint64_t print = 14695981039346656037ULL;
    const auto add = [&](std::uint64_t value) {
        for (int i = 0; i < 8; ++i) {
            print ^= (value >> (8 * i)) & 0xff;
            print *= 1099511628211ULL;
        }
    };
    for (const triggers::Observation& observation : course.input.observations) {
        add(static_cast<std::uint64_t>(observation.at.at.time_since_epoch().count()));
        for (const auto& [stream, score] : observation.scores)
            add(static_cast<std::uint64_t>(score.points()));
    }
    return print;
}

}  // namespace ebbline::rehearsal
