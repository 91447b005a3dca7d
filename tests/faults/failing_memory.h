#pragma once
/// \file
/// Memory that runs out when told: replaces malloc, calloc, realloc and what is built on them in the program that links it
/// (glibc). Of one thread.

#include <cstdint>

namespace ebbline::faults {

/// From now on counts what is asked for; the `at`-th (from 1) and, if `sticky`, every later one is refused. 0: count only.
void armMemory(std::uint64_t at, bool sticky);
/// Everything is given again. \returns how many were asked for since armMemory().
std::uint64_t disarmMemory();
/// How many were refused since armMemory().
std::uint64_t refusedMemory();

}  // namespace ebbline::faults
