#pragma once
/// \file
/// `--name value` of a campaign's program.

#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace ebbline::faults {

/// \returns the number behind `name`, or `otherwise`.
inline std::uint64_t numberFor(int argc, char** argv, std::string_view name, std::uint64_t otherwise)
{
    for (int i = 1; i + 1 < argc; ++i)
        if (argv[i] == name)
            return std::strtoull(argv[i + 1], nullptr, 10);
    return otherwise;
}

inline std::string_view wordFor(int argc, char** argv, std::string_view name, std::string_view otherwise)
{
    for (int i = 1; i + 1 < argc; ++i)
        if (argv[i] == name)
            return argv[i + 1];
    return otherwise;
}

/// What ctest takes as "skipped".
inline constexpr int skipped = 77;

}  // namespace ebbline::faults
