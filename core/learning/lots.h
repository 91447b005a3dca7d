#pragma once
/// \file
/// Every course that received a lot: whom to call when a lot is recalled.

#include "core/learning/shares.h"

#include <span>

namespace ebbline::learning {

/// How a lot is compared: without spaces, dots, hyphens and slashes, in upper case. A recall that misses a
/// patient for want of a hyphen is worse than one that finds one too many.
std::string lotKey(std::string_view printed);

struct LotCourse {
    std::string course;
    clock::Moment treated;
    std::string printed;  ///< as it was written down for this course
    std::optional<bool> complicated;  ///< empty: not known yet
};

struct LotTrace {
    std::string key;
    std::vector<LotCourse> courses;  ///< oldest treatment first, each once
    GroupShare share;                ///< of complicated courses among them; for reading, a lot is no cause
};

/// One lot, as anybody wrote it. No course is an answer: nobody on record received it.
LotTrace traceLot(std::span<const PastCourse> courses, std::string_view lot);

/// Every lot on record, by key.
std::vector<LotTrace> traceLots(std::span<const PastCourse> courses);

}  // namespace ebbline::learning
