// After locking, no copy of a key is left anywhere in the program's memory: the test reads all of it.

#include "tests/core/vault/filled_vault.h"

#include "core/bytes/text.h"

#include <fcntl.h>
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

using namespace ebbline;
using namespace ebbline::vault;

namespace {

/// The address sanitizer keeps aside what was let go, on purpose, and maps terabytes.
void needsPlainMemory()
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

}  // namespace

TEST_CASE("a secret that is let go leaves no copy", "[vault]")
{
    needsPlainMemory();
    REQUIRE(crypto::initialise());
    auto secret = std::optional(crypto::Secret::random());
    const Needle needle(secret->view());

    CHECK(needle.copies() == 1);
    {
        auto moved = std::optional(std::move(*secret));
        CHECK(needle.copies() == 1);
        const crypto::Secret clone = moved->clone();
        CHECK(needle.copies() == 2);
    }
    secret.reset();
    CHECK(needle.copies() == 0);
}

TEST_CASE("after locking no key of the vault is left in memory", "[vault]")
{
    needsPlainMemory();
    const test::FilledVault vault;
    std::vector<std::pair<std::string, Needle>> needles;
    {
        const crypto::Secret dataKey = vault.dataKey();
        const crypto::Secret databaseKey = crypto::derive(dataKey, 1, "eb-vault");
        std::string hex = bytes::toHex(databaseKey.view());
        needles.emplace_back("data key", Needle(dataKey.view()));
        needles.emplace_back("database key", Needle(databaseKey.view()));
        needles.emplace_back("database key as text", Needle(bytes::viewOf(hex)));
        crypto::wipe({reinterpret_cast<std::uint8_t*>(hex.data()), hex.size()});
    }
    {
        const auto open = Vault::unlock(vault.path(), test::herons, vault.clock);
        REQUIRE(open);
        needles.emplace_back("signing key", Needle(open->signingKey().seed()));
        needles.emplace_back("box key", Needle(open->boxKey().secret()));
        // The search does find what is there.
        CHECK(needles[1].second.copies() >= 1);
        CHECK(needles[3].second.copies() >= 1);
        CHECK(needles[4].second.copies() >= 1);
        CHECK(needles[0].second.copies() == 0);
    }

    for (const auto& [name, needle] : needles) {
        CAPTURE(name);
        CHECK(needle.copies() == 0);
    }
}

TEST_CASE("a recovery code and its slot leave no copy either", "[vault]")
{
    needsPlainMemory();
    const test::FilledVault vault;
    std::optional<Needle> needle;
    {
        const auto code = renewRecoveryCode(vault.path(), vault.offered(), test::cheapCost, vault.clock.readings());
        REQUIRE(code);
        needle.emplace(code->view());
        CHECK(needle->copies() >= 1);
    }
    CHECK(needle->copies() == 0);
}
