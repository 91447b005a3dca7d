#include "core/mailbox/limits.h"

#include <algorithm>
#include <cmath>

namespace ebbline::mailbox {

namespace {

constexpr std::size_t tidyAt = 10'000;

}  // namespace

std::int64_t RateLimiter::take(const std::string& name, clock::Instant now)
{
    const std::scoped_lock lock(m_mutex);
    const auto refilled = [&](const Bucket& bucket) {
        const double seconds = std::max(0.0, std::chrono::duration<double>(now - bucket.at).count());
        return std::min(m_rate.tokens, bucket.tokens + seconds * m_rate.perSecond);
    };
    if (m_buckets.size() > tidyAt)
        std::erase_if(m_buckets, [&](const auto& entry) { return refilled(entry.second) >= m_rate.tokens; });
    Bucket& bucket = m_buckets.try_emplace(name, Bucket{m_rate.tokens, now}).first->second;
    bucket = {refilled(bucket), std::max(bucket.at, now)};
    if (bucket.tokens >= 1) {
        bucket.tokens -= 1;
        return 0;
    }
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(std::ceil((1 - bucket.tokens) / m_rate.perSecond)));
}

}  // namespace ebbline::mailbox
