#include "core/vault/attempt_guard.h"

#include "core/bytes/reader.h"
#include "core/crypto/crypto.h"
#include "core/store/durable_file.h"

#include <algorithm>
#include <optional>

namespace ebbline::vault {

namespace {

constexpr const char* attemptsFile = "vault.attempts";
constexpr std::string_view mark = "EBA1";
constexpr std::size_t checkSize = 16;
constexpr std::size_t fileSize = 57;
constexpr std::uint32_t freeAttempts = 5;
constexpr std::array<std::int64_t, 6> waits{30, 60, 120, 300, 900, 3600};  // seconds

struct Attempts {
    std::uint32_t count = 0;
    std::optional<clock::Uptime> last;  ///< empty if the file cannot be read
};

bytes::Bytes encode(std::uint32_t count, const clock::Readings& at)
{
    bytes::Writer out;
    out.raw(bytes::viewOf(mark)).u32(count).raw(at.uptime.run).u8(at.uptime.wholeBoot ? 1 : 0);
    out.u64(static_cast<std::uint64_t>(at.uptime.elapsed.count()));
    // For the reader of a broken machine only; no wait depends on it.
    out.u64(static_cast<std::uint64_t>(at.wall.time_since_epoch().count()));
    const auto check = crypto::hash128(out.bytes());
    return out.raw(check).bytes();
}

Attempts read(const std::filesystem::path& folder)
{
    const auto contents = store::readWhole(folder / attemptsFile, fileSize);
    if (!contents && contents.error().reason == Reason::notFound)
        return {0, clock::Uptime{}};
    // A file that cannot be read counts as the longest wait, from now on: damaging it must not help.
    const Attempts unreadable{freeAttempts + static_cast<std::uint32_t>(waits.size()), std::nullopt};
    if (!contents || contents->size() != fileSize)
        return unreadable;
    const bytes::View body = bytes::View(*contents).first(fileSize - checkSize);
    bytes::Reader reader(body);
    const bytes::View begin = reader.take(mark.size());
    Attempts attempts;
    attempts.count = reader.u32();
    clock::Uptime last;
    last.run = reader.array<16>();
    last.wholeBoot = reader.u8() == 1;
    last.elapsed = std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())};
    attempts.last = last;
    const bool sound = std::equal(begin.begin(), begin.end(), mark.begin(), mark.end())
                       && crypto::equal(crypto::hash128(body), bytes::View(*contents).last(checkSize));
    return sound ? attempts : unreadable;
}

std::int64_t waitAfter(std::uint32_t count)
{
    if (count < freeAttempts)
        return 0;
    return waits[std::min<std::size_t>(count - freeAttempts, waits.size() - 1)];
}

/// How long ago the last attempt was, at least; empty if nothing is known of it.
std::optional<std::chrono::milliseconds> passedSince(const Attempts& attempts, const clock::Uptime& now)
{
    if (!attempts.last)
        return std::nullopt;
    if (attempts.last->run == now.run)
        return std::max(now.elapsed - attempts.last->elapsed, std::chrono::milliseconds{0});
    if (attempts.last->wholeBoot && now.wholeBoot)
        return now.elapsed;
    return std::nullopt;
}

}  // namespace

std::int64_t AttemptGuard::secondsLeft(const clock::Readings& now) const
{
    const Attempts attempts = read(m_folder);
    const std::int64_t wait = waitAfter(attempts.count);
    const auto passed = passedSince(attempts, now.uptime).value_or(std::chrono::milliseconds{0});
    return std::max<std::int64_t>(wait - std::chrono::floor<std::chrono::seconds>(passed).count(), 0);
}

Done AttemptGuard::begin(const clock::Readings& now)
{
    const Attempts attempts = read(m_folder);
    if (const std::int64_t left = secondsLeft(now); left > 0) {
        // Nothing is known of the time before: the wait is measured from here.
        if (!passedSince(attempts, now.uptime))
            if (const Done noted = store::writeDurably(m_folder / attemptsFile, encode(attempts.count, now)); !noted)
                return noted;
        return fail(Reason::tooSoon, std::to_string(left));
    }
    // The wait stays at its longest; the number need not grow for ever.
    const std::uint32_t count = std::min<std::uint32_t>(attempts.count + 1, 1'000'000);
    return store::writeDurably(m_folder / attemptsFile, encode(count, now));
}

Done AttemptGuard::clear()
{
    std::error_code ignored;
    std::filesystem::remove(m_folder / attemptsFile, ignored);
    return {};
}

}  // namespace ebbline::vault
