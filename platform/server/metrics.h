#pragma once
/// \file
/// What an operator's monitoring may know: counts of requests and of what is stored, in the text
/// exposition format of Prometheus 0.0.4. No identifier, no address.

#include "platform/server/http_server.h"

namespace ebbline::server {

/// One line a figure, each with its help and type. `usage` is empty if the store did not answer: its figures are then
/// left out, because a zero would say that it holds nothing.
std::string metricsText(const ServerFigures& figures, const std::optional<mailbox::Usage>& usage);

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
