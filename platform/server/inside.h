#pragma once
/// \file
/// What the server's parts share; inside of platform/server only.

#include "platform/server/http_server.h"
#include "platform/server/waiting.h"

#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/ssl/context.hpp>
#include <boost/asio/thread_pool.hpp>

#include <atomic>
#include <map>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace ebbline::server {

namespace asio = boost::asio;

struct Shared {
    Shared(mailbox::Service& rules, const clock::Clock& source, const ServerSettings& chosen)
        : service(rules), clock(source), settings(chosen), storage(static_cast<std::size_t>(chosen.storageThreads))
    {
    }

    mailbox::Service& service;
    const clock::Clock& clock;
    ServerSettings settings;
    asio::thread_pool storage;
    /// What new connections use; null: plain. One that runs keeps the certificate it began with.
    std::shared_ptr<asio::ssl::context> tls() const
    {
        const std::scoped_lock lock(tlsMutex);
        return tlsContext;
    }
    void setTls(std::shared_ptr<asio::ssl::context> context)
    {
        const std::scoped_lock lock(tlsMutex);
        tlsContext = std::move(context);
    }
    mutable std::mutex tlsMutex;
    std::shared_ptr<asio::ssl::context> tlsContext;

    Waiting waiting;
    std::atomic<bool> stopping = false;

    void tell(const Answered& answered) const
    {
        if (settings.answered)
            settings.answered(answered);
    }

    std::atomic<std::uint64_t> requests = 0;
    std::atomic<std::uint64_t> refusedConnections = 0;
    std::atomic<std::uint64_t> malformed = 0;
    std::atomic<std::uint64_t> serverErrors = 0;
    std::atomic<std::uint64_t> open = 0;
    std::atomic<std::size_t> bodyBytes = 0;  ///< announced by requests at this moment

    std::mutex addressMutex;
    std::map<std::string, std::size_t> perAddress;

    /// Counts a connection of an address. \returns false if it has too many.
    bool admit(const std::string& address);
    void release(const std::string& address);
};

/// Room for the body of one request among all that are read or answered at this moment.
class BodyRoom {
public:
    BodyRoom(Shared& shared, std::size_t size) : m_shared(shared), m_size(size)
    {
        m_there = shared.bodyBytes.fetch_add(size) + size <= shared.settings.bodyBytes || size == 0;
    }
    ~BodyRoom() { m_shared.bodyBytes -= m_size; }
    BodyRoom(const BodyRoom&) = delete;
    BodyRoom& operator=(const BodyRoom&) = delete;
    bool isThere() const { return m_there; }

private:
    Shared& m_shared;
    std::size_t m_size;
    bool m_there;
};

/// Serves one connection until it ends; keeps what it needs alive.
void serve(asio::ip::tcp::socket socket, std::shared_ptr<Shared> shared);

}  // namespace ebbline::server
