#pragma once
/// \file
/// What leak_campaign and leak_person agree on.

#include <cstdint>

namespace ebbline::faults {

/// Over every byte of a word or key on its way between the two.
inline constexpr std::uint8_t leakMask = 0xa5;

}  // namespace ebbline::faults
