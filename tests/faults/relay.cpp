#include "tests/faults/relay.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <stdexcept>
#include <sys/socket.h>
#include <unistd.h>

namespace ebbline::faults {

namespace {

sockaddr_in here(std::uint16_t port)
{
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    return address;
}

constexpr int lookAgainMs = 50;

}  // namespace

Relay::Relay(std::uint16_t target) : m_target(target), m_listener(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0))
{
    sockaddr_in address = here(0);
    socklen_t size = sizeof address;
    if (::bind(m_listener, reinterpret_cast<sockaddr*>(&address), size) != 0 || ::listen(m_listener, 16) != 0
        || ::getsockname(m_listener, reinterpret_cast<sockaddr*>(&address), &size) != 0)
        throw std::runtime_error("relay: it cannot listen");
    m_port = ntohs(address.sin_port);
    m_thread = std::thread([this] { live(); });
}

Relay::~Relay()
{
    m_stopping = true;
    m_thread.join();
    ::close(m_listener);
}

bytes::Bytes Relay::carried() const
{
    const std::scoped_lock lock(m_mutex);
    return m_carried;
}

/// One connection after the other: the clients of these tests ask one thing at a time.
void Relay::live()
{
    while (!m_stopping) {
        pollfd end{m_listener, POLLIN, 0};
        if (::poll(&end, 1, lookAgainMs) <= 0)
            continue;
        const int client = ::accept4(m_listener, nullptr, nullptr, SOCK_CLOEXEC);
        if (client < 0)
            continue;
        ++m_connections;
        pass(client);
        ::close(client);
    }
}

void Relay::pass(int client)
{
    const int server = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const sockaddr_in address = here(m_target);
    if (::connect(server, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0) {
        pollfd ends[2] = {{client, POLLIN, 0}, {server, POLLIN, 0}};
        const int to[2] = {server, client};
        std::uint8_t piece[16 * 1024];
        for (bool open = true; open && !m_stopping;) {
            if (::poll(ends, 2, lookAgainMs) < 0)
                break;
            for (std::size_t i = 0; i < 2 && open; ++i) {
                if (ends[i].revents == 0)
                    continue;
                const ssize_t got = ::recv(ends[i].fd, piece, sizeof piece, 0);
                if (got <= 0) {
                    open = false;
                    break;
                }
                {
                    const std::scoped_lock lock(m_mutex);
                    m_carried.insert(m_carried.end(), piece, piece + got);
                }
                for (ssize_t sent = 0; sent < got && open;) {
                    const ssize_t now = ::send(to[i], piece + sent, static_cast<std::size_t>(got - sent), MSG_NOSIGNAL);
                    open = now > 0;
                    sent += now > 0 ? now : 0;
                }
            }
        }
    }
    ::close(server);
}

}  // namespace ebbline::faults
