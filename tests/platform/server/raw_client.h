#pragma once
/// \file
/// A client that sends bytes as they are, right or wrong, to a server on this machine.

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>

namespace ebbline::test {

class RawClient {
public:
    /// `source` is the last number of an address 127.0.0.x to come from.
    explicit RawClient(std::uint16_t port, std::uint8_t source = 1, std::chrono::milliseconds patience = std::chrono::seconds(3))
        : m_socket(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0))
    {
        const timeval limit{patience.count() / 1000, patience.count() % 1000 * 1000};
        ::setsockopt(m_socket, SOL_SOCKET, SO_RCVTIMEO, &limit, sizeof limit);
        ::setsockopt(m_socket, SOL_SOCKET, SO_SNDTIMEO, &limit, sizeof limit);
        sockaddr_in own{};
        own.sin_family = AF_INET;
        own.sin_addr.s_addr = htonl((INADDR_LOOPBACK & 0xffff'ff00) | source);
        if (source != 1)
            ::bind(m_socket, reinterpret_cast<const sockaddr*>(&own), sizeof own);
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_port = htons(port);
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        m_connected = ::connect(m_socket, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
    }
    ~RawClient() { ::close(m_socket); }
    RawClient(const RawClient&) = delete;
    RawClient& operator=(const RawClient&) = delete;

    bool connected() const { return m_connected; }

    bool send(std::string_view bytes)
    {
        while (!bytes.empty()) {
            const ssize_t sent = ::send(m_socket, bytes.data(), bytes.size(), MSG_NOSIGNAL);
            if (sent <= 0)
                return false;
            bytes.remove_prefix(static_cast<std::size_t>(sent));
        }
        return true;
    }

    /// Everything until the other side closes, or a whole answer with a Content-Length, or patience ends.
    std::string receive()
    {
        std::string got;
        char chunk[4096];
        while (!isWhole(got)) {
            const ssize_t count = ::recv(m_socket, chunk, sizeof chunk, 0);
            if (count <= 0)
                break;
            got.append(chunk, static_cast<std::size_t>(count));
        }
        return got;
    }

    /// Whether the other side has closed.
    bool closed()
    {
        char byte = 0;
        return ::recv(m_socket, &byte, 1, 0) == 0;
    }

    /// Nothing more is sent; answers still come.
    void finish() { ::shutdown(m_socket, SHUT_WR); }
    /// Everything until the other side closes, or patience ends.
    std::string all()
    {
        std::string got;
        char chunk[4096];
        for (ssize_t count = 0; (count = ::recv(m_socket, chunk, sizeof chunk, 0)) > 0;)
            got.append(chunk, static_cast<std::size_t>(count));
        return got;
    }
    /// Closing leaves nothing behind in the system, so that thousands a second are possible.
    void forgetAtOnce()
    {
        const linger none{1, 0};
        ::setsockopt(m_socket, SOL_SOCKET, SO_LINGER, &none, sizeof none);
    }

    std::string ask(std::string_view request) { return send(request) ? receive() : std::string(); }

private:
    static bool isWhole(const std::string& got)
    {
        const auto end = got.find("\r\n\r\n");
        const auto length = got.find("Content-Length: ");
        if (end == std::string::npos || length == std::string::npos)
            return false;
        return got.size() >= end + 4 + std::stoul(got.substr(length + 16));
    }

    int m_socket;
    bool m_connected = false;
};

}  // namespace ebbline::test
