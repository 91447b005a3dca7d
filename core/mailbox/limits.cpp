#include "core/mailbox/limits.h"

#include <algorithm>
#include <cmath>

namespace ebbline::mailbox {

std::int64_t RateLimiter::take(const std::string& name, clock::Instant now)
{
    const std::scoped_lock lock(m_mutex);
    const auto refilled = [&](const Bucket& bucket) {
        const double seconds = std::max(0.0, std::chrono::duration<double>(now - bucket.at).count());
        return std::min(m_rate.tokens, bucket.tokens + seconds * m_rate.perSecond);
    };
    if (m_buckets.size() > m_tidyAt) {
        std::erase_if(m_buckets, [&](const auto& entry) { return refilled(entry.second) >= m_rate.tokens; });
        // Looked through again once as many came as stayed: each call pays for a few names, not for all.
        m_tidyAt = std::max(tidyAt, 2 * m_buckets.size());
    }
    Bucket& bucket = m_buckets.try_emplace(name, Bucket{m_rate.tokens, now}).first->second;
    // Where the clock was set back, it refills from there.
    bucket = {refilled(bucket), now};
    if (bucket.tokens >= 1) {
        bucket.tokens -= 1;
        return 0;
    }
    return std::max<std::int64_t>(1, static_cast<std::int64_t>(std::ceil((1 - bucket.tokens) / m_rate.perSecond)));
}

}  // namespace ebbline::mailbox
