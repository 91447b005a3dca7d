#include "platform/server/inside.h"

#include <boost/asio/as_tuple.hpp>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/use_awaitable.hpp>

#include <exception>

namespace ebbline::server {

using asio::ip::tcp;

struct HttpServer::Inside {
    Inside(mailbox::Service& service, const clock::Clock& clock, const ServerSettings& settings)
        : shared(std::make_shared<Shared>(service, clock, settings)), acceptor(io)
    {
    }

    std::shared_ptr<Shared> shared;
    asio::io_context io;
    tcp::acceptor acceptor;
    std::vector<std::thread> threads;
    bool stopped = false;
};

namespace {

/// Whether only programs on this machine reach it.
bool isThisMachine(const asio::ip::address& address)
{
    if (address.is_v6() && address.to_v6().is_v4_mapped())
        return asio::ip::make_address_v4(asio::ip::v4_mapped, address.to_v6()).is_loopback();
    return address.is_loopback();
}

asio::awaitable<void> accepting(tcp::acceptor& acceptor, std::shared_ptr<Shared> shared)
{
    while (acceptor.is_open()) {
        auto [problem, socket] = co_await acceptor.async_accept(asio::as_tuple(asio::use_awaitable));
        if (problem == asio::error::operation_aborted)
            co_return;
        if (problem) {
            // Out of descriptors, say: wait a little instead of spinning.
            asio::steady_timer pause(acceptor.get_executor(), std::chrono::milliseconds(50));
            (void)co_await pause.async_wait(asio::as_tuple(asio::use_awaitable));
            continue;
        }
        boost::system::error_code ignored;
        (void)socket.set_option(tcp::no_delay(true), ignored);
        serve(std::move(socket), shared);
    }
}

Result<std::shared_ptr<asio::ssl::context>> tlsFrom(const ServerSettings& settings)
{
    try {
        auto context = std::make_shared<asio::ssl::context>(asio::ssl::context::tls_server);
        context->set_options(asio::ssl::context::default_workarounds | asio::ssl::context::no_sslv2
                             | asio::ssl::context::no_sslv3 | asio::ssl::context::no_tlsv1
                             | asio::ssl::context::no_tlsv1_1);
        context->use_certificate_chain_file(settings.certificate.string());
        context->use_private_key_file(settings.key.string(), asio::ssl::context::pem);
        return context;
    } catch (const std::exception& problem) {
        return fail(Reason::malformed, std::string("certificate or key: ") + problem.what());
    }
}

}  // namespace

HttpServer::HttpServer(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}

Result<std::unique_ptr<HttpServer>> HttpServer::start(mailbox::Service& service, const clock::Clock& clock,
                                                      const ServerSettings& settings)
{
    auto inside = std::make_unique<Inside>(service, clock, settings);
    if (!settings.certificate.empty()) {
        auto tls = tlsFrom(settings);
        if (!tls)
            return fail(tls.error());
        inside->shared->setTls(std::move(*tls));
    }
    boost::system::error_code problem;
    const auto address = asio::ip::make_address(settings.address, problem);
    if (problem)
        return fail(Reason::malformed, "listen: not an address: " + settings.address);
    if (settings.certificate.empty() && !settings.behindTlsProxy && !isThisMachine(address))
        return fail(Reason::refused, "listen: without a certificate everything would go over the network in plain HTTP at "
                                         + settings.address + ". Give --certificate and --key, or listen on 127.0.0.1, or say "
                                           "--behind-tls-proxy if a proxy with TLS stands before this hub");
    const tcp::endpoint endpoint(address, settings.port);
    (void)inside->acceptor.open(endpoint.protocol(), problem);
    if (!problem)
        (void)inside->acceptor.set_option(asio::socket_base::reuse_address(true), problem);
    if (!problem)
        (void)inside->acceptor.bind(endpoint, problem);
    if (!problem)
        (void)inside->acceptor.listen(asio::socket_base::max_listen_connections, problem);
    if (problem)
        return fail(Reason::unreachable, "listen: " + problem.message());
    asio::co_spawn(inside->io, accepting(inside->acceptor, inside->shared), asio::detached);
    for (int i = 0; i < settings.networkThreads; ++i)
        inside->threads.emplace_back([&io = inside->io] { io.run(); });
    return std::unique_ptr<HttpServer>(new HttpServer(std::move(inside)));
}

HttpServer::~HttpServer()
{
    stop(std::chrono::milliseconds(0));
}

std::uint16_t HttpServer::port() const
{
    boost::system::error_code ignored;
    return m_inside->acceptor.local_endpoint(ignored).port();
}

Done HttpServer::reloadCertificate()
{
    Shared& shared = *m_inside->shared;
    if (shared.settings.certificate.empty())
        return {};
    auto tls = tlsFrom(shared.settings);
    if (!tls)
        return fail(tls.error());
    shared.setTls(std::move(*tls));
    return {};
}

void HttpServer::heard(const std::optional<mailbox::Written>& written)
{
    if (written)
        m_inside->shared->waiting.wake(*written);
    else
        m_inside->shared->waiting.wakeAll();
}

ServerFigures HttpServer::figures() const
{
    const Shared& shared = *m_inside->shared;
    return {shared.requests, shared.refusedConnections, shared.malformed,
            shared.serverErrors, shared.waiting.count(), shared.open};
}

void HttpServer::stop(std::chrono::milliseconds grace)
{
    if (std::exchange(m_inside->stopped, true))
        return;
    Shared& shared = *m_inside->shared;
    shared.stopping = true;
    asio::post(m_inside->io, [this] {
        boost::system::error_code ignored;
        (void)m_inside->acceptor.close(ignored);
    });
    shared.waiting.wakeAll();
    const auto step = std::chrono::milliseconds(10);
    for (auto waited = std::chrono::milliseconds(0); waited < grace && shared.open > 0; waited += step)
        std::this_thread::sleep_for(step);
    m_inside->io.stop();
    for (std::thread& thread : m_inside->threads)
        thread.join();
    shared.storage.join();
}

}  // namespace ebbline::server
