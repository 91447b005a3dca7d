#pragma once
/// \file
/// What an operator's monitoring may know: counts of requests and of what is stored, in the text
/// exposition format of Prometheus 0.0.4. No identifier, no address.

#include "platform/server/http_server.h"

#include <mutex>
#include <optional>

namespace ebbline::server {

/// One line a figure, each with its help and type. `usage` is empty if the store did not answer: its figures are then
/// left out, because a zero would say that it holds nothing.
std::string metricsText(const ServerFigures& figures, const std::optional<mailbox::Usage>& usage);

/// What is stored, asked of the store at most once in a while: it counts over all mailboxes. A store that does not answer now
/// has no figures, whatever it said before. Any thread may ask.
class UsageFigures {
public:
    static constexpr std::chrono::seconds keptFor{60};  ///< monitoring that asks more often gets the same; our own choice

    UsageFigures(std::function<bool()> ready, std::function<Result<mailbox::Usage>(clock::Instant)> count, const clock::Clock& clock)
        : m_ready(std::move(ready)), m_count(std::move(count)), m_clock(clock)
    {
    }
    std::optional<mailbox::Usage> now();

private:
    std::function<bool()> m_ready;
    std::function<Result<mailbox::Usage>(clock::Instant)> m_count;
    const clock::Clock& m_clock;
    std::mutex m_mutex;
    std::optional<mailbox::Usage> m_last;
    std::chrono::milliseconds m_at{0};  ///< on the clock that nobody sets
};

/// Answers GET /metrics on a port of its own, which should be reachable for monitoring only, and
/// anything else with 404. One short connection at a time.
class MetricsServer {
public:
    /// `text` is called for each request, from the server's thread.
    /// \returns Reason::malformed for a bad address, Reason::unreachable if it cannot be had.
    static Result<std::unique_ptr<MetricsServer>> start(const std::string& address, std::uint16_t port,
                                                        std::function<std::string()> text);
    ~MetricsServer();
    MetricsServer(const MetricsServer&) = delete;
    MetricsServer& operator=(const MetricsServer&) = delete;

    std::uint16_t port() const;

private:
    struct Inside;
    explicit MetricsServer(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::server
