#include "platform/server/metrics.h"

#include <boost/asio/as_tuple.hpp>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

#include <thread>

namespace ebbline::server {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = boost::beast::http;
using asio::ip::tcp;

namespace {

constexpr auto noThrow = asio::as_tuple(asio::use_awaitable);
constexpr std::chrono::seconds patience{5};

void add(std::string& text, const char* name, const char* type, const char* help, std::uint64_t value)
{
    text += std::string("# HELP ") + name + ' ' + help + "\n# TYPE " + name + ' ' + type + '\n' + name + ' '
            + std::to_string(value) + '\n';
}

asio::awaitable<void> answer(tcp::socket socket, const std::function<std::string()>& text)
{
    beast::tcp_stream stream(std::move(socket));
    stream.expires_after(patience);
    beast::flat_buffer buffer(8 * 1024);
    http::request_parser<http::empty_body> parser;
    parser.header_limit(4 * 1024);
    const auto [problem, size] = co_await http::async_read(stream, buffer, parser, noThrow);
    if (problem)
        co_return;
    const bool known = parser.get().method() == http::verb::get && parser.get().target() == "/metrics";
    http::response<http::string_body> response{known ? http::status::ok : http::status::not_found, 11};
    response.set(http::field::content_type, "text/plain; version=0.0.4");
    response.keep_alive(false);
    if (known)
        response.body() = text();
    response.prepare_payload();
    (void)co_await http::async_write(stream, response, noThrow);
    beast::error_code ignored;
    (void)stream.socket().shutdown(tcp::socket::shutdown_send, ignored);
}

asio::awaitable<void> accepting(tcp::acceptor& acceptor, const std::function<std::string()>& text)
{
    while (acceptor.is_open()) {
        auto [problem, socket] = co_await acceptor.async_accept(noThrow);
        if (problem == asio::error::operation_aborted)
            co_return;
        if (!problem)
            co_await answer(std::move(socket), text);
    }
}

}  // namespace

std::optional<mailbox::Usage> UsageFigures::now()
{
    const std::scoped_lock lock(m_mutex);
    const auto now = m_clock.uptime().elapsed;
    if (m_last && now - m_at < keptFor)
        return m_ready() ? m_last : std::nullopt;
    const auto counted = m_count(m_clock.now());
    m_last = counted ? std::optional(*counted) : std::nullopt;
    m_at = now;
    return m_last;
}

std::string metricsText(const ServerFigures& figures, const std::optional<mailbox::Usage>& usage)
{
    const auto count = [](std::int64_t value) { return static_cast<std::uint64_t>(std::max<std::int64_t>(value, 0)); };
    std::string text;
    add(text, "ebbline_requests_total", "counter", "Requests that reached the rules.", figures.requests);
    add(text, "ebbline_malformed_requests_total", "counter", "Requests refused for their form.", figures.malformed);
    add(text, "ebbline_refused_connections_total", "counter", "Connections over a limit.", figures.refusedConnections);
    add(text, "ebbline_server_errors_total", "counter", "Answers 500 and above, and conversations that broke off.", figures.serverErrors);
    add(text, "ebbline_open_connections", "gauge", "Connections at this moment.", figures.open);
    add(text, "ebbline_waiting_requests", "gauge", "Long polls at this moment.", figures.waiting);
    add(text, "ebbline_store_up", "gauge", "1 if the store answered, 0 if it did not; its figures are then left out.", usage ? 1 : 0);
    if (!usage)
        return text;
    add(text, "ebbline_clinics", "gauge", "Clinics admitted.", count(usage->clinics));
    add(text, "ebbline_devices", "gauge", "Devices known.", count(usage->devices));
    add(text, "ebbline_mailboxes", "gauge", "Mailboxes.", count(usage->mailboxes));
    add(text, "ebbline_envelopes", "gauge", "Envelopes stored.", count(usage->envelopes));
    add(text, "ebbline_blobs", "gauge", "Sealed photographs stored or announced.", count(usage->blobs));
    add(text, "ebbline_blob_bytes", "gauge", "Bytes of these.", count(usage->blobBytes));
    add(text, "ebbline_envelope_bytes", "gauge", "Bytes of the envelopes stored.", count(usage->bytes));
    add(text, "ebbline_envelopes_waiting_30_days", "gauge", "Envelopes that nobody acknowledged for 30 days.",
        count(usage->waitingOver30Days));
    add(text, "ebbline_envelopes_waiting_60_days", "gauge", "Envelopes that nobody acknowledged for 60 days.",
        count(usage->waitingOver60Days));
    add(text, "ebbline_envelopes_waiting_85_days", "gauge", "Envelopes that nobody acknowledged for 85 days.",
        count(usage->waitingOver85Days));
    add(text, "ebbline_envelopes_waiting_90_days", "gauge", "Envelopes that nobody acknowledged for 90 days.",
        count(usage->waitingOver90Days));
    return text;
}

struct MetricsServer::Inside {
    explicit Inside(std::function<std::string()> source) : text(std::move(source)), acceptor(io) {}

    std::function<std::string()> text;
    asio::io_context io;
    tcp::acceptor acceptor;
    std::thread thread;
};

MetricsServer::MetricsServer(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}

Result<std::unique_ptr<MetricsServer>> MetricsServer::start(const std::string& address, std::uint16_t port,
                                                            std::function<std::string()> text)
{
    auto inside = std::make_unique<Inside>(std::move(text));
    boost::system::error_code problem;
    const auto parsed = asio::ip::make_address(address, problem);
    if (problem)
        return fail(Reason::malformed, "metrics: not an address: " + address);
    const tcp::endpoint endpoint(parsed, port);
    (void)inside->acceptor.open(endpoint.protocol(), problem);
    if (!problem)
        (void)inside->acceptor.set_option(asio::socket_base::reuse_address(true), problem);
    if (!problem)
        (void)inside->acceptor.bind(endpoint, problem);
    if (!problem)
        (void)inside->acceptor.listen(16, problem);
    if (problem)
        return fail(Reason::unreachable, "metrics: " + problem.message());
    asio::co_spawn(inside->io, accepting(inside->acceptor, inside->text), asio::detached);
    inside->thread = std::thread([&io = inside->io] { io.run(); });
    return std::unique_ptr<MetricsServer>(new MetricsServer(std::move(inside)));
}

MetricsServer::~MetricsServer()
{
    m_inside->io.stop();
    m_inside->thread.join();
}

std::uint16_t MetricsServer::port() const
{
    boost::system::error_code ignored;
    return m_inside->acceptor.local_endpoint(ignored).port();
}

}  // namespace ebbline::server
