// hub_bench [puts] [long polls]: sealed puts a second through the whole hub, beside a bare echo of the same HTTP library by the
// same clients in the same run; the database's store beside the same rows by a bare pipeline; memory of waiting requests,
// plain and over TLS. Prints, judges nothing.

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "core/mailbox/service.h"
#include "platform/postgres/connection.h"
#include "platform/postgres/postgres_store.h"
#include "platform/server/http_server.h"
#include "tests/bench/bare_echo.h"
#include "tests/bench/keen_clients.h"
#include "tests/faults/hub_load.h"
#include "tests/faults/hub_process.h"
#include "tests/platform/postgres/cluster.h"

#include <cstdio>
#include <filesystem>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::bench;
using faults::Member;
using faults::Phone;

namespace {

constexpr std::size_t phoneCount = 200, connections = 64, clientThreads = 2;
constexpr int networkThreads = 2;

struct Put {
    std::size_t phone;
    std::uint64_t sequence;
    bytes::Bytes sealed;
};

struct Clinic {
    std::vector<Phone> phones;
    mailbox::Device desk;

    explicit Clinic(mailbox::MailStore& store) : phones(phoneCount)
    {
        const std::int64_t number = store.addClinic({crypto::randomArray<32>()}, "").value();
        for (Phone& phone : phones) {
            mailbox::StoredOffer offer;
            offer.id = crypto::randomArray<8>();
            offer.clinic = number;
            (void)store.putOffer(offer);
            (void)store.linkOffer(offer.id, bytes::viewOf("x"), phone.mailbox, deviceOf(phone, number));
        }
        desk.clinic = number;
    }
    static mailbox::Device deviceOf(const Phone& phone, std::int64_t clinic)
    {
        return {phone.member.id, phone.member.key.publicKey(), mailbox::Role::phone, clinic, false};
    }
    std::vector<Put> puts(std::size_t count) const
    {
        const crypto::BoxKey box = crypto::BoxKey::generate();
        std::vector<Put> made;
        for (std::size_t i = 0; i < count; ++i) {
            const Phone& phone = phones[i % phoneCount];
            const std::uint64_t sequence = i / phoneCount + 1;
            made.push_back({i % phoneCount, sequence,
                            envelope::seal({envelope::Kind::operations, phone.mailbox, phone.member.id, sequence, {}, 1},
                                           phone.member.key, {box.publicKey()}, bytes::Bytes(900, 'x'))
                                .value()});
        }
        return made;
    }
    std::vector<std::string> requests(const std::vector<Put>& puts) const
    {
        const clock::SystemClock clock;
        std::vector<std::string> made;
        for (const Put& put : puts) {
            const Phone& phone = phones[put.phone];
            made.push_back(phone.member.http("PUT", "/v1/m/" + bytes::toHex(phone.mailbox.view()) + "/" + bytes::toHex(phone.member.id.view())
                                                        + "/" + std::to_string(put.sequence),
                                             {}, put.sealed, clock.now()));
        }
        return made;
    }
};

mailbox::Limits generous()
{
    mailbox::Limits limits;
    limits.perAddress = limits.perDevice = {1e9, 1e9};
    limits.quota.envelopes = 1'000'000'000;
    limits.quota.bytes = 1ull << 50;
    return limits;
}

/// Puts a second through the rules and the HTTP front, from pre-signed requests.
double throughHub(mailbox::MailStore& store, const std::vector<std::string>& requests)
{
    const clock::SystemClock clock;
    mailbox::Service service(store, generous());
    server::ServerSettings settings;
    settings.networkThreads = networkThreads;
    settings.storageThreads = static_cast<int>(connections) / 2;
    settings.connectionsPerAddress = 10'000;
    const auto hub = std::move(*server::HttpServer::start(service, clock, settings));
    return askAll(hub->port(), requests, connections, clientThreads);
}

void embedded(std::size_t count)
{
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-bench-" + std::string(6, 'X'));
    const std::filesystem::path folder = ::mkdtemp(pattern.data()) ? pattern : "";
    auto store = std::move(*mailbox::openEmbeddedStore(folder));
    const Clinic clinic(*store);
    const auto puts = clinic.puts(count);
    const auto requests = clinic.requests(puts);
    std::printf("an envelope has %zu bytes, a request %zu; %zu connections\n", puts.front().sealed.size(), requests.front().size(), connections);
    const BareEcho echo(networkThreads);
    const double bare = askAll(echo.port(), requests, connections, clientThreads);
    const double checked = [&] {
        const BareEcho checking(networkThreads, [&clinic](const mailbox::Request& request) {
            const auto authorisation = mailbox::parseAuthorisation(request.authorisation);
            for (const Phone& phone : clinic.phones)
                if (authorisation && phone.member.id == authorisation->device)
                    return mailbox::signatureHolds(request, *authorisation, phone.member.key.publicKey());
            return false;
        });
        return askAll(checking.port(), requests, connections, clientThreads);
    }();
    const double hub = throughHub(*store, requests);
    std::printf("bare echo                                %8.0f a second\n"
                "bare echo that checks one signature      %8.0f a second\n"
                "hub, embedded store, durable             %8.0f a second, %.2f of the bare echo (0.60 is asked for), %.2f of the checking one\n",
                bare, checked, hub, hub / bare, hub / checked);
    store.reset();
    std::filesystem::remove_all(folder);
}

double perSecond(std::size_t count, std::chrono::steady_clock::time_point began)
{
    return static_cast<double>(count) / std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

/// The same rows, into the same table, by one connection: so many in one journey and one commit.
double barePipeline(const std::string& address, const Clinic& clinic, const std::vector<Put>& puts, std::size_t together)
{
    auto connection = std::move(*postgres::Connection::open(address));
    (void)connection->run("SET ebbline.clinic = '" + std::to_string(clinic.desk.clinic) + "'");
    const auto began = std::chrono::steady_clock::now();
    for (std::size_t i = 0; i < puts.size(); i += together) {
        std::vector<postgres::Arguments> rows;
        for (std::size_t j = i; j < std::min(i + together, puts.size()); ++j)
            rows.push_back(postgres::Arguments()
                               .add(clinic.phones[puts[j].phone].mailbox.view())
                               .add(clinic.phones[puts[j].phone].member.id.view())
                               .add(static_cast<std::int64_t>(puts[j].sequence + 1'000'000))
                               .add(clinic.desk.clinic)
                               .add(std::int64_t{0})
                               .add(bytes::View(puts[j].sealed)));
        if (!connection->askEach("INSERT INTO envelope (mailbox, device, sequence, clinic, received, body) VALUES ($1::bytea, $2::bytea,"
                                 " $3::bigint, $4::bigint, $5::bigint, $6::bytea) RETURNING 1",
                                 rows))
            return 0;
    }
    return perSecond(puts.size(), began);
}

/// Puts by callers at the same time, each waiting for its own to be durable.
double byStore(mailbox::MailStore& store, const Clinic& clinic, const std::vector<Put>& puts, std::size_t callers)
{
    std::atomic<std::size_t> next = 0, failed = 0;
    std::vector<std::thread> threads;
    const auto began = std::chrono::steady_clock::now();
    for (std::size_t i = 0; i < callers; ++i)
        threads.emplace_back([&] {
            for (std::size_t place = next++; place < puts.size(); place = next++) {
                const Phone& phone = clinic.phones[puts[place].phone];
                failed += !store.putEnvelope(Clinic::deviceOf(phone, clinic.desk.clinic), phone.mailbox, puts[place].sequence,
                                             puts[place].sealed, {}, generous().quota);
            }
        });
    for (std::thread& thread : threads)
        thread.join();
    return failed == 0 ? perSecond(puts.size(), began) : 0;
}

void database(std::size_t count)
{
    if (!test::Cluster::isAvailable()) {
        std::printf("%s\n", test::Cluster::missing);
        return;
    }
    const test::Cluster cluster({"max_wal_size=4GB"});
    auto store = std::move(*postgres::openPostgresStore({.address = cluster.address()}));
    const Clinic clinic(*store);
    const auto puts = clinic.puts(count);
    constexpr std::size_t together = 32;
    const double single = barePipeline(cluster.address(), clinic, {puts.begin(), puts.begin() + static_cast<std::ptrdiff_t>(count / 10)}, 1);
    const double pipeline = barePipeline(cluster.address(), clinic, {puts.begin() + static_cast<std::ptrdiff_t>(count / 10), puts.end()}, together);
    const double own = byStore(*store, clinic, puts, together * 2);
    std::printf("bare inserts, one a commit               %8.0f a second\n"
                "bare inserts, pipeline, %zu a commit      %8.0f a second\n"
                "database's store, %zu callers             %8.0f a second, %.2f of the pipeline (0.70 is asked for)\n",
                single, together, pipeline, together * 2, own, own / pipeline);
    const Clinic another(*store);
    std::printf("hub, database's store, durable           %8.0f a second\n", throughHub(*store, another.requests(another.puts(count / 2))));
}

void longPolls(std::size_t count, bool tls)
{
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-bench-" + std::string(6, 'X'));
    const std::filesystem::path folder = ::mkdtemp(pattern.data()) ? pattern : "";
    auto store = std::move(*mailbox::openEmbeddedStore(folder));
    const Clinic clinic(*store);
    store.reset();
    std::vector<std::string> options{"--address-connections", "100000"};
    if (tls) {
        const std::string key = folder / "key.pem", chain = folder / "chain.pem";
        const std::string make = "openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:P-256 -nodes -days 2 -subj /CN=hub -keyout " + key
                                 + " -out " + chain + " 2>/dev/null";
        if (std::system(make.c_str()) != 0)
            return;
        options.insert(options.end(), {"--certificate", chain, "--key", key});
    }
    faults::HubProcess hub(folder, options);
    hub.start();
    const std::size_t before = hub.residentBytes();
    const clock::SystemClock clock;
    WaitingClients waiting(hub.port(), tls);
    std::size_t begun = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const Phone& phone = clinic.phones[i % phoneCount];
        begun += waiting.begin(phone.member.http("GET", "/v1/m/" + bytes::toHex(phone.mailbox.view()), "wait=25", {}, clock.now()));
    }
    std::this_thread::sleep_for(std::chrono::seconds(2));
    const auto mib = [](std::size_t bytes) { return static_cast<double>(bytes) / 1048576; };
    std::printf("%zu long polls%s: the hub holds %.1f MiB, %.1f before; %zu of them still wait (100 MB at most are asked for)\n", begun, tls ? " over TLS" : "",
                mib(hub.residentBytes()), mib(before), waiting.stillWaiting());
    std::filesystem::remove_all(folder);
}

}  // namespace

int main(int argc, char** argv)
{
    const std::size_t count = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 20'000;
    const std::size_t polls = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 5'000;
    if (!crypto::initialise())
        return 1;
    allowManyFiles();
    embedded(count);
    database(count);
    longPolls(polls, false);
    longPolls(polls, true);
    return 0;
}
