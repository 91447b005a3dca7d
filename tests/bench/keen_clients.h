#pragma once
/// \file
/// Clients of a bench: many connections that are never idle, and many that do nothing but wait.

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace ebbline::bench {

/// As many open files as the system lets this process have.
void allowManyFiles();

/// Sends every request once, each connection one at a time, and reads the whole answer. \returns requests a second.
/// Throws if an answer is not 200.
double askAll(std::uint16_t port, const std::vector<std::string>& requests, std::size_t connections, std::size_t threads);

class WaitingClients {
public:
    WaitingClients(std::uint16_t port, bool tls);
    ~WaitingClients();
    WaitingClients(const WaitingClients&) = delete;
    WaitingClients& operator=(const WaitingClients&) = delete;

    /// A connection of its own that sends this and waits. \returns whether it could.
    bool begin(const std::string& request);
    /// Connections that are open and were not answered.
    std::size_t stillWaiting() const;

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::bench
