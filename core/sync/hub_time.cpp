#include "core/sync/hub_time.h"

#include "core/bytes/reader.h"

#include <algorithm>
#include <charconv>

namespace ebbline::sync {

namespace {

constexpr std::string_view name = "clock-ahead";

}  // namespace

std::optional<std::chrono::seconds> hubTimeIn(std::string_view said)
{
    // A time that no hub can have would overflow ours.
    constexpr std::int64_t year9999 = 253'402'300'799;
    std::int64_t seconds = 0;
    const auto [end, problem] = std::from_chars(said.data(), said.data() + said.size(), seconds);
    const bool good = problem == std::errc() && end == said.data() + said.size() && seconds >= 0 && seconds <= year9999;
    return good ? std::optional(std::chrono::seconds(seconds)) : std::nullopt;
}

Done noteClockAhead(vault::Vault& vault, std::chrono::seconds ahead)
{
    const auto minutes = std::clamp(std::chrono::round<std::chrono::minutes>(ahead), -mostClockAhead, mostClockAhead);
    const auto shown = abs(ahead) > clockDiffers ? std::optional(minutes) : std::nullopt;
    if (shown == clockAhead(vault))
        return {};
    return vault.keep(name, shown ? bytes::Writer().u64(static_cast<std::uint64_t>(shown->count())).bytes() : bytes::Bytes());
}

std::optional<std::chrono::minutes> clockAhead(const vault::Vault& vault)
{
    const auto kept = vault.kept(name);
    if (!kept || kept->size() != 8)
        return std::nullopt;
    return std::chrono::minutes(static_cast<std::int64_t>(bytes::Reader(*kept).u64()));
}

}  // namespace ebbline::sync
