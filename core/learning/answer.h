#pragma once
/// \file
/// An answer that may be "not enough to say". That is no failure and no zero: it is what few courses
/// honestly give, and it says how many there are and how many it takes.

#include <expected>
#include <string>

namespace ebbline::learning {

/// What there is too little of.
enum class Lack {
    outcomes,  ///< courses whose outcome is known
    courses,   ///< courses in which the symptom was ever above 1
    followed,  ///< days followed: nobody was seen as long as the horizon
    spread,    ///< nothing varied: an interval would be a pretence
    events,    ///< nothing happened in either group
    groups,    ///< groups to pool
    apart,     ///< the groups lie further apart than can be drawn together
};

struct NotEnough {
    Lack lack;
    long have = 0;
    long want = 0;
    bool operator==(const NotEnough&) const = default;
};

/// `not enough to say: known outcomes 4, want 10`.
std::string sentence(const NotEnough& lack);

template <typename T>
using Answer = std::expected<T, NotEnough>;

inline constexpr long fewestCourses = 10;  ///< in a group, before anything is said of it: our choice

}  // namespace ebbline::learning
