#include "tests/bench/http_courier.h"

#include <boost/asio/connect.hpp>
#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

namespace ebbline::bench {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = boost::beast::http;
using asio::ip::tcp;

struct HttpCourier::Way {
    asio::io_context io;
    tcp::socket socket{io};
    beast::flat_buffer buffer;
};

HttpCourier::HttpCourier(std::uint16_t port) : m_way(std::make_unique<Way>())
{
    m_way->socket.connect({asio::ip::make_address("127.0.0.1"), port});
    m_way->socket.set_option(tcp::no_delay(true));
}

HttpCourier::~HttpCourier() = default;

void HttpCourier::send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer)
{
    const std::string target = request.path + (request.query.empty() ? "" : "?" + request.query);
    http::request<http::vector_body<std::uint8_t>> message{http::string_to_verb(request.method), target, 11};
    message.set(http::field::host, "hub");
    if (!request.authorisation.empty())
        message.set("EB-Auth", request.authorisation);
    message.body().assign(request.body.begin(), request.body.end());
    message.prepare_payload();

    http::response_parser<http::vector_body<std::uint8_t>> parser;
    parser.body_limit(64u << 20);
    boost::system::error_code problem;
    bytes += http::write(m_way->socket, message, problem);
    if (!problem)
        bytes += http::read(m_way->socket, m_way->buffer, parser, problem);
    ++requests;
    if (problem)
        return answer(fail(Reason::unreachable, "no answer"));
    auto response = parser.release();
    answer(mailbox::Response{static_cast<int>(response.result_int()), std::move(response.body()), 0, {}});
}

}  // namespace ebbline::bench
