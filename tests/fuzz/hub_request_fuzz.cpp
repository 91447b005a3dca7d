// Requests that reach the hub's rules: anyone on the network can send them.
// First byte: method; then a path up to a line break, a query, an authorisation, and the body.

#include "tests/fuzz/fuzz_target.h"

#include "core/mailbox/embedded_store.h"
#include "core/mailbox/service.h"

#include <unistd.h>

namespace {

std::string_view line(std::string_view& rest)
{
    const auto end = rest.find('\n');
    const auto taken = rest.substr(0, end);
    rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
    return taken;
}

}  // namespace

void ebbline::fuzz::tryInput(bytes::View input)
{
    static const auto store = [] {
        const auto folder = std::filesystem::temp_directory_path() / ("ebbline-fuzz-hub-" + std::to_string(getpid()));
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
        return std::move(mailbox::openEmbeddedStore(folder).value());
    }();
    static mailbox::Service service = [] {
        mailbox::Limits limits;
        limits.perAddress = limits.perDevice = limits.enrolPerAddress = {1e9, 1e9};
        return mailbox::Service(*store, limits);
    }();
    if (input.empty())
        return;
    static constexpr const char* methods[] = {"GET", "PUT", "POST", "DELETE"};
    std::string_view rest(reinterpret_cast<const char*>(input.data()) + 1, input.size() - 1);
    mailbox::Request request;
    request.method = methods[input[0] % 4];
    request.path = line(rest);
    request.query = line(rest);
    request.authorisation = line(rest);
    request.body.assign(rest.begin(), rest.end());

    (void)mailbox::Service::waitOf(request);
    (void)mailbox::Service::writtenBy(request);
    const auto response = service.handle(request, "192.0.2.1", clock::Instant{std::chrono::hours{500'000}});
    mustHold(response.status >= 200 && response.status < 600, "every request has an answer");
    mustHold(response.status < 500, "nothing a stranger sends is the hub's own fault");
}
