#pragma once
/// \file
/// Every course that received a lot: whom to call when a lot is recalled. Makers number their lots each by themselves, so a lot
/// is one product's: two products with the same lot are two traces. Where nobody knows the product, it may be any of them.

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
    /// The product of this lot (PackLot::article) as the course says it. Empty: not known, so it may be the one of the trace or another one.
    std::string article{};
};

struct LotTrace {
    std::string key;
    std::string article{};  ///< empty: of those whose product is not known, or, asked for a lot alone, of all
    std::vector<LotCourse> courses;  ///< oldest treatment first, each once
    GroupShare share;                ///< of complicated courses among them; for reading, a lot is no cause
};

/// One lot, as anybody wrote it; of one product, with those whose product is not known, or of all that have this
/// lot where `article` is empty. No course is an answer: nobody on record received it.
LotTrace traceLot(std::span<const PastCourse> courses, std::string_view lot, std::string_view article = {});

/// Every lot on record, by key and product, those of no known product last. Who has a lot of no known product stands there
/// and in every trace of that lot, marked by LotCourse::article: a recall must miss nobody.
std::vector<LotTrace> traceLots(std::span<const PastCourse> courses);

}  // namespace ebbline::learning
