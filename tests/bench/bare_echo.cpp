#include "tests/bench/bare_echo.h"

#include <boost/asio/as_tuple.hpp>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/strand.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

#include <thread>
#include <vector>

namespace ebbline::bench {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = boost::beast::http;
using asio::ip::tcp;

namespace {

constexpr auto noThrow = asio::as_tuple(asio::use_awaitable);

asio::awaitable<void> conversation(beast::tcp_stream stream, const std::function<bool(const mailbox::Request&)>& check)
{
    beast::flat_buffer buffer;
    for (;;) {
        http::request<http::vector_body<std::uint8_t>> message;
        const auto [readProblem, read] = co_await http::async_read(stream, buffer, message, noThrow);
        if (readProblem)
            co_return;
        bool good = true;
        if (check) {
            mailbox::Request request{std::string(message.method_string()), std::string(message.target()), {}, std::move(message.body()),
                                     std::string(message["EB-Auth"])};
            good = check(request);
        }
        http::response<http::empty_body> response{good ? http::status::ok : http::status::unauthorized, 11};
        response.keep_alive(true);
        response.prepare_payload();
        const auto [writeProblem, written] = co_await http::async_write(stream, response, noThrow);
        if (writeProblem)
            co_return;
    }
}

asio::awaitable<void> accepting(tcp::acceptor& acceptor, const std::function<bool(const mailbox::Request&)>& check)
{
    while (acceptor.is_open()) {
        auto [problem, socket] = co_await acceptor.async_accept(noThrow);
        if (problem)
            co_return;
        boost::system::error_code ignored;
        (void)socket.set_option(tcp::no_delay(true), ignored);
        const auto executor = asio::make_strand(socket.get_executor());
        asio::co_spawn(executor, conversation(beast::tcp_stream(std::move(socket)), check), asio::detached);
    }
}

}  // namespace

struct BareEcho::Inside {
    std::function<bool(const mailbox::Request&)> check;
    asio::io_context io;
    tcp::acceptor acceptor{io, tcp::endpoint(asio::ip::make_address("127.0.0.1"), 0)};
    std::vector<std::thread> threads;
};

BareEcho::BareEcho(int threads, std::function<bool(const mailbox::Request&)> check) : m_inside(std::make_unique<Inside>())
{
    m_inside->check = std::move(check);
    asio::co_spawn(m_inside->io, accepting(m_inside->acceptor, m_inside->check), asio::detached);
    for (int i = 0; i < threads; ++i)
        m_inside->threads.emplace_back([&io = m_inside->io] { io.run(); });
}

BareEcho::~BareEcho()
{
    m_inside->io.stop();
    for (std::thread& thread : m_inside->threads)
        thread.join();
}

std::uint16_t BareEcho::port() const { return m_inside->acceptor.local_endpoint().port(); }

}  // namespace ebbline::bench
