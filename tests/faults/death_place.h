#pragma once
/// \file
/// Where a program died, so that a known death of a library is told from one of ours. Needs a program that kept its table of
/// symbols; without it no place has a name.

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace ebbline::faults {

/// Addresses of the instruction that killed and of its callers, innermost first; zeros at the end.
using Frames = std::array<std::uintptr_t, 12>;

/// From now on a death by a memory fault or by abort() calls `tell`, and then happens. `tell` runs in a signal handler: it may write to a
/// pipe, and little else.
void tellDeath(void (*tell)(const Frames& frames));

/// The functions of this program among the frames, innermost first, without those of shared libraries: a fault in memset is
/// its caller's.
std::vector<std::string> functionsIn(const Frames& frames);

}  // namespace ebbline::faults
