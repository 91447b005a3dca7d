#include "core/vault/durable_file.h"
#include "core/vault/key_slots.h"

#include "core/bytes/reader.h"

#include <algorithm>

namespace ebbline::vault {

namespace {

constexpr const char* attemptsFile = "vault.attempts";
constexpr std::uint32_t freeAttempts = 5;
constexpr std::array<std::int64_t, 6> waits{30, 60, 120, 300, 900, 3600};  // seconds

struct Attempts {
    std::uint32_t count = 0;
    std::int64_t lastAt = 0;  ///< seconds since 1970, the latest reading of the clock so far
};

std::int64_t secondsOf(clock::Instant at)
{
    return std::chrono::floor<std::chrono::seconds>(at).time_since_epoch().count();
}

Attempts read(const std::filesystem::path& folder)
{
    const auto contents = readWhole(folder / attemptsFile, 12);
    if (!contents)
        return {};
    bytes::Reader reader(*contents);
    Attempts attempts;
    attempts.count = reader.u32();
    attempts.lastAt = static_cast<std::int64_t>(reader.u64());
    // A file that cannot be read counts as the longest wait: damaging it must not help.
    return reader.atEnd() ? attempts : Attempts{freeAttempts + 100, attempts.lastAt};
}

std::int64_t waitAfter(std::uint32_t count)
{
    if (count < freeAttempts)
        return 0;
    return waits[std::min<std::size_t>(count - freeAttempts, waits.size() - 1)];
}

}  // namespace

std::int64_t AttemptGuard::secondsLeft(clock::Instant now) const
{
    const Attempts attempts = read(m_folder);
    const std::int64_t wait = waitAfter(attempts.count);
    // A clock turned back waits the whole time again; it never shortens it.
    const std::int64_t passed = std::max<std::int64_t>(0, secondsOf(now) - attempts.lastAt);
    return std::clamp<std::int64_t>(wait - passed, 0, wait);
}

Done AttemptGuard::begin(clock::Instant now)
{
    if (const std::int64_t left = secondsLeft(now); left > 0)
        return fail(Reason::tooSoon, std::to_string(left));
    const Attempts attempts = read(m_folder);
    const bytes::Bytes next = bytes::Writer()
                                  .u32(attempts.count + 1)
                                  .u64(static_cast<std::uint64_t>(std::max(attempts.lastAt, secondsOf(now))))
                                  .bytes();
    return writeDurably(m_folder / attemptsFile, next);
}

Done AttemptGuard::clear()
{
    std::error_code ignored;
    std::filesystem::remove(m_folder / attemptsFile, ignored);
    return {};
}

}  // namespace ebbline::vault
