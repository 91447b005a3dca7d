#pragma once
/// \file
/// Searches all memory of this program for a secret.

#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <fcntl.h>
#include <fstream>
#include <sstream>
#include <sys/mman.h>
#include <unistd.h>

#if defined(__has_feature)
#if __has_feature(address_sanitizer)
#define EBBLINE_ADDRESS_SANITIZER
#endif
#elif defined(__SANITIZE_ADDRESS__)
#define EBBLINE_ADDRESS_SANITIZER
#endif

namespace ebbline::test {

/// The address sanitizer keeps aside what was let go, on purpose, and maps terabytes.
inline void needsPlainMemory()
{
#ifdef EBBLINE_ADDRESS_SANITIZER
    SKIP("the address sanitizer keeps freed memory aside");
#endif
}

/// What is searched for, kept in a form that the search does not find.
class Needle {
public:
    explicit Needle(bytes::View secret)
    {
        for (const std::uint8_t byte : secret)
            m_masked.push_back(static_cast<std::uint8_t>(byte ^ mask));
    }

    /// Copies in all memory of this program that can be read, the search's own excepted.
    std::size_t copies() const
    {
        constexpr std::size_t pieceSize = 1 << 20;
        auto* piece = static_cast<std::uint8_t*>(
            ::mmap(nullptr, pieceSize, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0));
        REQUIRE(piece != MAP_FAILED);
        const auto own = reinterpret_cast<std::uintptr_t>(piece);
        const int memory = ::open("/proc/self/mem", O_RDONLY | O_CLOEXEC);
        REQUIRE(memory >= 0);
        std::size_t found = 0, read = 0;
        std::ifstream maps("/proc/self/maps");
        for (std::string line; std::getline(maps, line);) {
            std::istringstream fields(line);
            std::uintptr_t from = 0, to = 0;
            char dash = 0;
            std::string rights;
            fields >> std::hex >> from >> dash >> to >> rights;
            if (rights.empty() || rights[0] != 'r' || line.ends_with("[vvar]") || line.ends_with("[vsyscall]"))
                continue;
            const std::size_t overlap = m_masked.size() - 1;
            for (std::uintptr_t at = from; at + overlap < to; at += pieceSize - overlap) {
                const std::size_t wanted = std::min<std::size_t>(pieceSize, to - at);
                if (at < own + pieceSize && own < at + wanted)
                    continue;
                const ssize_t got = ::pread(memory, piece, wanted, static_cast<off_t>(at));
                if (got <= 0)
                    continue;
                read += static_cast<std::size_t>(got);
                found += countIn({piece, static_cast<std::size_t>(got)});
                crypto::wipe({piece, static_cast<std::size_t>(got)});
            }
        }
        ::close(memory);
        ::munmap(piece, pieceSize);
        REQUIRE(read > 1'000'000);
        return found;
    }

private:
    static constexpr std::uint8_t mask = 0xa5;

    std::size_t countIn(bytes::View piece) const
    {
        const std::uint8_t first = m_masked[0] ^ mask;
        std::size_t count = 0;
        for (auto at = std::ranges::find(piece, first); at != piece.end(); at = std::find(at + 1, piece.end(), first))
            if (static_cast<std::size_t>(piece.end() - at) >= m_masked.size()
                && std::equal(m_masked.begin(), m_masked.end(), at,
                              [](std::uint8_t masked, std::uint8_t byte) { return (masked ^ mask) == byte; }))
                ++count;
        return count;
    }

    bytes::Bytes m_masked;
};

}  // namespace ebbline::test
