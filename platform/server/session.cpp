#include "core/mailbox/route_name.h"
#include "platform/server/counted_address.h"
#include "platform/server/inside.h"

#include <boost/asio/as_tuple.hpp>
#include <boost/asio/awaitable.hpp>
#include <boost/asio/bind_executor.hpp>
#include <boost/asio/co_spawn.hpp>
#include <boost/asio/detached.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/ssl/stream.hpp>
#include <boost/asio/strand.hpp>
#include <boost/asio/this_coro.hpp>
#include <boost/asio/use_awaitable.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>
#include <boost/beast/ssl.hpp>

#include <utility>

namespace ebbline::server {

namespace {

namespace beast = boost::beast;
namespace http = boost::beast::http;

using Parser = http::request_parser<http::vector_body<std::uint8_t>>;
using HttpResponse = http::response<http::vector_body<std::uint8_t>>;

constexpr std::uint32_t maximumHeader = 8 * 1024;
constexpr std::size_t largestBuffer = 16 * 1024;  ///< of a connection, while it reads
constexpr std::int64_t noRoomRetry = 2;           ///< seconds
constexpr auto noThrow = asio::as_tuple(asio::use_awaitable);

/// Framing that two readers could understand differently is refused outright (OWASP ASVS 5.0,
/// 4.2.1): a length given twice or not in plain digits, any transfer coding (our clients send
/// none), a folded or doubled host.
bool isAmbiguous(const Parser& parser)
{
    const auto& fields = parser.get();
    if (fields.count(http::field::transfer_encoding) > 0 || fields.count(http::field::content_length) > 1
        || fields.count(http::field::host) > 1)
        return true;
    const auto host = fields[http::field::host];
    if (host.find_first_of(" \t") != beast::string_view::npos)
        return true;
    if (fields.count(http::field::content_length) == 0)
        return false;
    const auto length = fields[http::field::content_length];
    return length.empty() || length.size() > 9 || length.find_first_not_of("0123456789") != beast::string_view::npos;
}

/// The status for a request that could not even be read.
int statusFor(const beast::error_code& problem)
{
    if (problem == http::error::body_limit)
        return 413;
    return problem == http::error::header_limit ? 431 : 400;
}

HttpResponse made(unsigned version, bool keepAlive, mailbox::Response answer)
{
    HttpResponse response{static_cast<http::status>(answer.status), version};
    response.set(http::field::content_type, "application/octet-stream");
    response.set(http::field::cache_control, "no-store");
    if (!answer.hubTime.empty())
        response.set("EB-Time", answer.hubTime);
    if (answer.retryAfterSeconds > 0)
        response.set(http::field::retry_after, std::to_string(answer.retryAfterSeconds));
    response.keep_alive(keepAlive);
    response.body() = std::move(answer.body);
    response.prepare_payload();
    return response;
}

/// Hands a request to the rules on a storage thread and comes back to this one.
asio::awaitable<mailbox::Response> ask(std::shared_ptr<Shared> shared, const mailbox::Request& request,
                                       const std::string& address, bool again = false)
{
    const auto here = co_await asio::this_coro::executor;
    co_await asio::post(asio::bind_executor(shared->storage.get_executor(), asio::use_awaitable));
    mailbox::Response answer = shared->service.handle(request, address, shared->clock.now(), again);
    co_await asio::post(asio::bind_executor(here, asio::use_awaitable));
    co_return answer;
}

/// A long poll: asks, and if there is nothing yet, waits for the mailbox, or a desk for its clinic, and asks again, until
/// something is there or the time is over.
asio::awaitable<mailbox::Response> respond(std::shared_ptr<Shared> shared, mailbox::Request request,
                                           const std::string& address)
{
    const auto wait = mailbox::Service::waitOf(request);
    if (!wait)
        co_return co_await ask(shared, request, address);

    const auto waiter = std::make_shared<Waiter>(co_await asio::this_coro::executor);
    waiter->timer.expires_after(wait->time);
    // Registered before a look, so that nothing can arrive unseen in between.
    Waiting::For what = std::int64_t{0};
    bool registered = wait->mailbox.has_value();
    if (registered) {
        what = *wait->mailbox;
        shared->waiting.add(what, waiter);
    }
    mailbox::Response answer = co_await ask(shared, request, address);
    if (!registered && answer.status == 200) {
        // Whose desk it is, the first look has told: a second one follows at once.
        registered = true;
        what = answer.clinic;
        shared->waiting.add(what, waiter);
        if (!mailbox::Service::endsWait(request, answer))
            answer = co_await ask(shared, request, address, true);
    }
    bool arrived = false;  // then what is known already is worth an answer, too: there is more of it
    while (!mailbox::Service::endsWait(request, answer) && !(arrived && !answer.body.empty()) && !shared->stopping) {
        const bool over = waiter->timer.expiry() <= std::chrono::steady_clock::now();
        if (!waiter->woken && !over)
            (void)co_await waiter->timer.async_wait(noThrow);
        arrived = std::exchange(waiter->woken, false);
        answer = co_await ask(shared, request, address, true);
        if (over)
            break;
    }
    if (registered)
        shared->waiting.remove(what, waiter);
    co_return answer;
}

template <typename Stream>
asio::awaitable<void> conversation(Stream& stream, std::shared_ptr<Shared> shared, std::string address)
{
    beast::flat_buffer buffer(largestBuffer);
    bool first = true;
    while (!shared->stopping) {
        Parser parser;
        parser.header_limit(maximumHeader);
        parser.body_limit(mailbox::maximumRequestBody);
        beast::get_lowest_layer(stream).expires_after(first ? shared->settings.headerTime : shared->settings.idleTime);
        first = false;
        const auto [headProblem, headSize] = co_await http::async_read_header(stream, buffer, parser, noThrow);
        if (headProblem == http::error::end_of_stream)
            co_return;
        const bool readable = !headProblem;
        if (!readable || isAmbiguous(parser)) {
            // Nobody there, or nothing that can be answered: only a parse error deserves words.
            if (readable || headProblem.category() == http::make_error_code(http::error::bad_method).category()) {
                ++shared->malformed;
                shared->tell({.route = "unreadable", .status = statusFor(headProblem), .refused = {}});
                auto refusal = made(11, false, {statusFor(headProblem), {}, 0, {}});
                (void)co_await http::async_write(stream, refusal, noThrow);
            }
            co_return;
        }
        // What is announced is kept free before anything of it is read, or known who sends it.
        const BodyRoom room(*shared, static_cast<std::size_t>(parser.content_length().value_or(0)));
        if (!room.isThere()) {
            ++shared->serverErrors;
            shared->tell({.route = "unreadable", .status = 503, .refused = {}});
            auto refusal = made(11, false, {503, {}, noRoomRetry, {}});
            (void)co_await http::async_write(stream, refusal, noThrow);
            co_return;
        }
        beast::get_lowest_layer(stream).expires_after(shared->settings.bodyTime);
        const auto [bodyProblem, bodySize] = co_await http::async_read(stream, buffer, parser, noThrow);
        if (bodyProblem) {
            ++shared->malformed;
            shared->tell({.route = "unreadable", .status = statusFor(bodyProblem), .refused = {}});
            auto refusal = made(11, false, {statusFor(bodyProblem), {}, 0, {}});
            (void)co_await http::async_write(stream, refusal, noThrow);
            co_return;
        }

        auto message = parser.release();
        const std::string target(message.target());
        const auto question = target.find('?');
        mailbox::Request request;
        request.method = std::string(message.method_string());
        request.path = target.substr(0, question);
        request.query = question == std::string::npos ? std::string() : target.substr(question + 1);
        request.authorisation = std::string(message["EB-Auth"]);
        request.body = std::move(message.body());
        const auto written = mailbox::Service::writtenBy(request);
        Answered said{.route = mailbox::routeName(request), .refused = {}, .bytesIn = request.body.size()};
        const auto began = std::chrono::steady_clock::now();

        // A long poll may outlast every other limit; the answer's own limit follows.
        beast::get_lowest_layer(stream).expires_never();
        ++shared->requests;
        mailbox::Response answer = co_await respond(shared, std::move(request), address);
        if (answer.status >= 500)
            ++shared->serverErrors;
        said.status = answer.status;
        said.refused = answer.refused;
        said.bytesOut = answer.body.size();
        said.took = std::chrono::floor<std::chrono::milliseconds>(std::chrono::steady_clock::now() - began);
        shared->tell(said);
        if (written && answer.status == 200)
            shared->waiting.wake({*written, answer.clinic});

        beast::get_lowest_layer(stream).expires_after(shared->settings.bodyTime);
        // Asked for now: who waited may be answered because the hub stops.
        const bool keepAlive = message.keep_alive() && !shared->stopping;
        auto response = made(message.version(), keepAlive, std::move(answer));
        const auto [writeProblem, writeSize] = co_await http::async_write(stream, response, noThrow);
        if (writeProblem || !keepAlive)
            co_return;
    }
}

asio::awaitable<void> session(asio::ip::tcp::socket socket, std::shared_ptr<Shared> shared, std::string address)
{
    const auto tls = shared->tls();
    if (!tls) {
        beast::tcp_stream stream(std::move(socket));
        co_await conversation(stream, shared, address);
        beast::error_code ignored;
        (void)stream.socket().shutdown(asio::ip::tcp::socket::shutdown_send, ignored);
        co_return;
    }
    beast::ssl_stream<beast::tcp_stream> stream(std::move(socket), *tls);
    beast::get_lowest_layer(stream).expires_after(shared->settings.headerTime);
    const auto [problem] = co_await stream.async_handshake(asio::ssl::stream_base::server, noThrow);
    if (problem)
        co_return;
    co_await conversation(stream, shared, address);
    beast::get_lowest_layer(stream).expires_after(std::chrono::seconds(2));
    (void)co_await stream.async_shutdown(noThrow);
}

}  // namespace

bool Shared::admit(const std::string& address)
{
    const std::scoped_lock lock(addressMutex);
    if (open >= settings.connections || perAddress[address] >= settings.connectionsPerAddress) {
        ++refusedConnections;
        return false;
    }
    ++perAddress[address];
    ++open;
    return true;
}

void Shared::release(const std::string& address)
{
    const std::scoped_lock lock(addressMutex);
    --open;
    if (--perAddress[address] == 0)
        perAddress.erase(address);
}

void serve(asio::ip::tcp::socket socket, std::shared_ptr<Shared> shared)
{
    boost::system::error_code problem;
    const auto peer = socket.remote_endpoint(problem);
    if (problem)
        return;
    const std::string address = countedAs(peer.address().to_string());
    if (!shared->admit(address))
        return;
    const auto executor = asio::make_strand(socket.get_executor());
    asio::co_spawn(executor, session(std::move(socket), shared, address),
                   [shared, address](const std::exception_ptr& broken) {
                       if (broken)
                           ++shared->serverErrors;
                       shared->release(address);
                   });
}

}  // namespace ebbline::server
