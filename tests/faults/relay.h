#pragma once
/// \file
/// Stands between clients and a server on this machine and keeps every byte that passes, as somebody on the wire would.

#include "core/bytes/bytes.h"

#include <atomic>
#include <cstdint>
#include <mutex>
#include <thread>

namespace ebbline::faults {

class Relay {
public:
    /// Listens at a free port of this machine and passes on to `target`. Throws if it cannot listen.
    explicit Relay(std::uint16_t target);
    ~Relay();
    Relay(const Relay&) = delete;
    Relay& operator=(const Relay&) = delete;

    std::uint16_t port() const { return m_port; }
    /// Everything so far, both ways.
    bytes::Bytes carried() const;
    std::size_t connections() const { return m_connections; }

private:
    void live();
    void pass(int client);

    std::uint16_t m_target;
    std::uint16_t m_port = 0;
    int m_listener = -1;
    std::atomic<bool> m_stopping = false;
    std::atomic<std::size_t> m_connections = 0;
    mutable std::mutex m_mutex;
    bytes::Bytes m_carried;
    std::thread m_thread;
};

}  // namespace ebbline::faults
