#pragma once
/// \file
/// Byte strings and fixed-size identifiers.

#include <algorithm>
#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace ebbline::bytes {

using Bytes = std::vector<std::uint8_t>;
using View = std::span<const std::uint8_t>;

template <std::size_t N>
using Array = std::array<std::uint8_t, N>;

/// The bytes of a text, as they are.
inline View viewOf(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

/// A random 16-byte name. The tag keeps a course from being passed as a patient.
template <typename Tag>
struct Id {
    Array<16> value{};

    auto operator<=>(const Id&) const = default;
    bool isNull() const { return value == Array<16>{}; }
    View view() const { return value; }

    /// \pre source.size() == 16
    static Id from(View source)
    {
        Id id;
        std::copy_n(source.begin(), id.value.size(), id.value.begin());
        return id;
    }
};

}  // namespace ebbline::bytes
