#pragma once
/// \file
/// Where a program died, so that a known death of a library is told from one of ours. Needs a program that kept its table of
/// symbols; without it no place has a name.

#include <cstdint>
#include <string>

namespace ebbline::faults {

/// From now on a death by a memory fault calls `tell` with the address of the instruction, and then happens. `tell` runs in a
/// signal handler: it may write to a pipe, and little else.
void tellDeath(void (*tell)(std::uintptr_t address));

/// The function of this program that holds the instruction; empty if none does, as in a shared library.
std::string functionAt(std::uintptr_t address);

}  // namespace ebbline::faults
