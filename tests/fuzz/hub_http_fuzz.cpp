// Bytes on a hub's open port, by a real connection: whatever comes, nothing of it is stored, the hub stands, and whoever
// asks properly next to it is served. The first byte says into how many pieces the rest is cut on its way.

#include "tests/fuzz/fuzz_target.h"

#include "core/mailbox/embedded_store.h"
#include "platform/server/http_server.h"
#include "tests/platform/server/raw_client.h"

#include <algorithm>
#include <cctype>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

constexpr int questionsEvery = 64;  ///< inputs between two of the good client

struct Hub {
    std::filesystem::path folder = [] {
        auto made = std::filesystem::temp_directory_path() / ("ebbline-fuzz-http-" + std::to_string(getpid()));
        std::filesystem::remove_all(made);
        std::filesystem::create_directories(made);
        return made;
    }();
    clock::SystemClock clock;
    std::unique_ptr<mailbox::MailStore> store = std::move(mailbox::openEmbeddedStore(folder).value());
    mailbox::Service service{*store, generous()};
    std::unique_ptr<server::HttpServer> server = [this] {
        server::ServerSettings settings;
        settings.storageThreads = 2;
        settings.headerTime = settings.bodyTime = settings.idleTime = 2s;
        return std::move(server::HttpServer::start(service, clock, settings).value());
    }();
    std::unique_ptr<test::RawClient> good;
    int inputs = 0;

    static mailbox::Limits generous()
    {
        mailbox::Limits limits;
        limits.perAddress = limits.perDevice = limits.enrolPerAddress = limits.blobsPerAddress = limits.blobsPerDevice = {1e9, 1e9};
        return limits;
    }
    void mustServe()
    {
        constexpr std::string_view health = "GET /v1/health HTTP/1.1\r\nHost: hub\r\n\r\n";
        // One that idled too long is closed by the hub: a new one counts.
        if (!good || !good->ask(health).starts_with("HTTP/1.1 200 "))
            good = std::make_unique<test::RawClient>(server->port());
        fuzz::mustHold(good->ask(health).starts_with("HTTP/1.1 200 "), "a good client is served");
        const auto usage = store->usage(clock.now());
        fuzz::mustHold(usage && usage->clinics == 0 && usage->devices == 0 && usage->mailboxes == 0 && usage->envelopes == 0 && usage->blobs == 0,
                       "strangers store nothing");
    }
};

/// Every answer in what came back has a status that the hub gives, and none says that it failed.
void look(std::string_view answers)
{
    while (!answers.empty()) {
        fuzz::mustHold(answers.starts_with("HTTP/1."), "an answer begins as one");
        fuzz::mustHold(answers.size() > 12 && answers[9] >= '2' && answers[9] <= '4', "nothing a stranger sends is the hub's own fault");
        const auto next = answers.find("HTTP/1.", 7);
        answers = next == std::string_view::npos ? std::string_view() : answers.substr(next);
    }
}

}  // namespace

void fuzz::tryInput(bytes::View input)
{
    static Hub hub;
    if (input.empty())
        return;
    const std::size_t pieces = 1 + input.front() % 4;
    std::string_view rest(reinterpret_cast<const char*>(input.data()) + 1, input.size() - 1);
    {
        test::RawClient client(hub.server->port(), static_cast<std::uint8_t>(1 + hub.inputs % 200), 5s);
        client.forgetAtOnce();
        mustHold(client.connected(), "the hub takes a connection");
        const std::size_t size = rest.size() / pieces + 1;
        while (!rest.empty() && client.send(rest.substr(0, std::min(size, rest.size()))))
            rest = rest.substr(std::min(size, rest.size()));
        client.finish();
        look(client.all());
    }
    if (++hub.inputs % questionsEvery == 1)
        hub.mustServe();
}
