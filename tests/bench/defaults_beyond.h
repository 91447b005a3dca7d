#pragma once
/// \file
/// What the default protocol makes of trouble that it was not made with: the rarer complications, and infections and
/// bleedings smaller or slower than those of the models.

#include <cstdint>

namespace ebbline::bench {

/// Every rare kind, `count` courses each, both models, two rhythms: found by a trigger, by a trigger or a warning rule,
/// within a day, and with a call now within a day; and how often plain courses would seem to be found.
void printRare(std::uint64_t seed, int count);

/// Infection and haematoma at half size, at half pace and both, beside the usual ones: `count` courses each.
void printOutsideFamily(std::uint64_t seed, int count);

}  // namespace ebbline::bench
