#pragma once
/// \file
/// How often one device or one address may ask: a bucket of tokens that refills evenly.

#include "core/clock/instant.h"

#include <map>
#include <mutex>
#include <string>

namespace ebbline::mailbox {

struct Rate {
    double tokens;        ///< at most this many at once
    double perSecond;     ///< refilled
};

/// Thread-safe. Forgets names that have a full bucket again.
class RateLimiter {
public:
    explicit RateLimiter(Rate rate) : m_rate(rate) {}

    /// Takes a token. \returns 0, or after how many seconds one is free again (at least 1).
    std::int64_t take(const std::string& name, clock::Instant now);

private:
    struct Bucket {
        double tokens;
        clock::Instant at;
    };
    static constexpr std::size_t tidyAt = 10'000;
    Rate m_rate;
    std::mutex m_mutex;
    std::map<std::string, Bucket> m_buckets;
    std::size_t m_tidyAt = tidyAt;  ///< names
};

}  // namespace ebbline::mailbox
