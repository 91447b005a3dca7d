#pragma once
/// \file
/// HTTP/1.1 with every limit that an open port needs, in front of mailbox::Service.
///
/// Headers at most 8 KiB, the first of a connection within 10 seconds and any later one within 60, bodies at most
/// 300 KiB and 60 seconds, all bodies together bounded, connections per address (IPv6: per network of 64 bits) bounded; a request whose framing is ambiguous is answered 400 and the connection
/// closed. Storage runs on its own threads, never on those that serve the network; a client that
/// waits for news costs a timer, not a thread.

#include "core/mailbox/service.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace ebbline::server {

/// What an operator's log may say of one request: words of the program and numbers, nothing that the request brought.
struct Answered {
    std::string_view route;    ///< mailbox::routeName(); "unreadable" for what ended before it was a request
    int status = 0;
    std::string_view refused;  ///< why nobody was let in; empty: somebody was, or nobody had to be
    std::chrono::milliseconds took{0};
    std::size_t bytesIn = 0, bytesOut = 0;  ///< bodies
};

struct ServerSettings {
    std::string address = "127.0.0.1";
    std::uint16_t port = 0;               ///< 0: any free one
    std::filesystem::path certificate;    ///< PEM chain; empty: plain HTTP
    std::filesystem::path key;            ///< PEM
    /// Something else speaks TLS to the outside. Without it and without a certificate only this machine is served.
    bool behindTlsProxy = false;
    int networkThreads = 1;
    int storageThreads = 16;  ///< they wait for the disk together: see mailbox::Batches
    std::size_t connectionsPerAddress = 100;
    std::size_t connections = 10'000;
    std::size_t bodyBytes = 256u * 1024 * 1024;  ///< of all bodies that are read or answered at one moment; over it: 503
    std::chrono::seconds headerTime{10};
    std::chrono::seconds bodyTime{60};
    std::chrono::seconds idleTime{60};
    std::function<void(const Answered&)> answered;  ///< after each answer, on any thread; empty: nobody is told
};

/// Counters since the start, for metrics and tests.
struct ServerFigures {
    std::uint64_t requests = 0;
    std::uint64_t refusedConnections = 0;
    std::uint64_t malformed = 0;      ///< requests answered 400 before they reached the service
    std::uint64_t serverErrors = 0;   ///< answers 500 and above, and conversations that broke off in the program itself
    std::uint64_t waiting = 0;        ///< long polls at this moment
    std::uint64_t open = 0;           ///< connections at this moment
};

class HttpServer {
public:
    /// Listens at once. \returns Reason::refused for plain HTTP on an address that other machines reach, unless a proxy
    /// with TLS stands before it; Reason::unreachable if the address cannot be had,
    /// Reason::malformed if certificate or key cannot be read.
    static Result<std::unique_ptr<HttpServer>> start(mailbox::Service& service, const clock::Clock& clock,
                                                     const ServerSettings& settings);
    ~HttpServer();
    HttpServer(const HttpServer&) = delete;
    HttpServer& operator=(const HttpServer&) = delete;

    std::uint16_t port() const;
    ServerFigures figures() const;

    /// Another hub over the same store wrote to this mailbox, or, with nothing, perhaps to any: who
    /// waits looks again.
    void heard(const std::optional<mailbox::Written>& written);

    /// Reads certificate and key again, for connections that begin from now on; those that run go
    /// on undisturbed. \returns Reason::malformed, and the old certificate stays in use.
    Done reloadCertificate();

    /// Stops accepting, lets running requests end for at most `grace`, then closes.
    void stop(std::chrono::milliseconds grace);

private:
    struct Inside;
    explicit HttpServer(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::server
