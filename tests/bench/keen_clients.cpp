#include "tests/bench/keen_clients.h"

#include <arpa/inet.h>
#include <netinet/tcp.h>
#include <openssl/ssl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <chrono>
#include <stdexcept>
#include <string_view>
#include <thread>

namespace ebbline::bench {

namespace {

int connected(std::uint16_t port)
{
    const int socket = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    if (::connect(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
        ::close(socket);
        return -1;
    }
    const int yes = 1;
    ::setsockopt(socket, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
    return socket;
}

/// An answer without a body.
void readAnswer(int socket)
{
    char answer[1024];
    std::size_t got = 0;
    while (std::string_view(answer, got).find("\r\n\r\n") == std::string_view::npos) {
        const ssize_t count = ::recv(socket, answer + got, sizeof answer - got, 0);
        if (count <= 0)
            throw std::runtime_error("an answer is missing");
        got += static_cast<std::size_t>(count);
    }
    if (!std::string_view(answer, got).starts_with("HTTP/1.1 200"))
        throw std::runtime_error("an answer is not 200: " + std::string(answer, 12));
}

}  // namespace

void allowManyFiles()
{
    rlimit files{};
    ::getrlimit(RLIMIT_NOFILE, &files);
    files.rlim_cur = files.rlim_max;
    ::setrlimit(RLIMIT_NOFILE, &files);
}

double askAll(std::uint16_t port, const std::vector<std::string>& requests, std::size_t connections, std::size_t threads)
{
    std::atomic<std::size_t> next = 0;
    std::vector<std::thread> clients;
    const auto began = std::chrono::steady_clock::now();
    for (std::size_t i = 0; i < threads; ++i)
        clients.emplace_back([&] {
            std::vector<int> sockets;
            for (std::size_t j = 0; j < connections / threads; ++j)
                sockets.push_back(connected(port));
            for (bool more = true; more;) {
                std::size_t asked = 0;
                for (const int socket : sockets) {
                    const std::size_t place = next++;
                    more = place < requests.size();
                    if (!more)
                        break;
                    if (::send(socket, requests[place].data(), requests[place].size(), MSG_NOSIGNAL)
                        != static_cast<ssize_t>(requests[place].size()))
                        throw std::runtime_error("a request cannot be sent");
                    ++asked;
                }
                for (std::size_t j = 0; j < asked; ++j)
                    readAnswer(sockets[j]);
            }
            for (const int socket : sockets)
                ::close(socket);
        });
    for (std::thread& client : clients)
        client.join();
    return static_cast<double>(requests.size()) / std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

struct WaitingClients::Inside {
    std::uint16_t port;
    std::unique_ptr<SSL_CTX, void (*)(SSL_CTX*)> tls{nullptr, &SSL_CTX_free};
    std::vector<std::pair<int, SSL*>> open;
};

WaitingClients::WaitingClients(std::uint16_t port, bool tls) : m_inside(std::make_unique<Inside>())
{
    m_inside->port = port;
    if (tls)
        m_inside->tls.reset(SSL_CTX_new(TLS_client_method()));
}

WaitingClients::~WaitingClients()
{
    for (const auto& [socket, ssl] : m_inside->open) {
        SSL_free(ssl);
        ::close(socket);
    }
}

bool WaitingClients::begin(const std::string& request)
{
    const int socket = connected(m_inside->port);
    if (socket < 0)
        return false;
    SSL* ssl = nullptr;
    if (m_inside->tls) {
        ssl = SSL_new(m_inside->tls.get());
        SSL_set_fd(ssl, socket);
    }
    m_inside->open.emplace_back(socket, ssl);
    if (ssl)
        return SSL_connect(ssl) == 1 && SSL_write(ssl, request.data(), static_cast<int>(request.size())) > 0;
    return ::send(socket, request.data(), request.size(), MSG_NOSIGNAL) == static_cast<ssize_t>(request.size());
}

std::size_t WaitingClients::stillWaiting() const
{
    std::size_t waiting = 0;
    for (const auto& [socket, ssl] : m_inside->open) {
        // TLS 1.3 tickets are read away first; nothing else may come.
        char byte = 0;
        if (ssl) {
            timeval none{0, 1000};
            ::setsockopt(socket, SOL_SOCKET, SO_RCVTIMEO, &none, sizeof none);
            const int got = SSL_read(ssl, &byte, 1);
            waiting += got <= 0 && SSL_get_error(ssl, got) == SSL_ERROR_WANT_READ;
        } else {
            waiting += ::recv(socket, &byte, 1, MSG_DONTWAIT | MSG_PEEK) < 0 && (errno == EAGAIN || errno == EWOULDBLOCK);
        }
    }
    return waiting;
}

}  // namespace ebbline::bench
