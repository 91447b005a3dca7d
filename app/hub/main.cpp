// ebbline-hub: holds the mailboxes between phones and clinics, and can read none of them.

#include "app/terminal/unknown_word.h"
#include "core/bytes/text.h"
#include "core/crypto/core_dumps.h"
#include "core/mailbox/embedded_store.h"
#include "platform/postgres/postgres_store.h"
#include "platform/server/certificate.h"
#include "platform/server/http_server.h"
#include "platform/server/log.h"
#include "platform/server/metrics.h"

#include <CLI/CLI.hpp>

#include <csignal>
#include <fstream>
#include <iostream>
#include <map>
#include <pthread.h>
#include <sys/resource.h>

namespace {

using namespace ebbline;

int complain(const Error& error)
{
    std::cerr << "ebbline-hub: " << error.detail << '\n';
    return 1;
}

/// What was typed cannot be meant. \returns what the program ends with, as where the parser finds it.
constexpr int badInput = 2;
int refuse(const char* why)
{
    std::cerr << "ebbline-hub: " << why << '\n';
    return badInput;
}

/// Where envelopes are kept: a folder, or the address of a database.
struct Place {
    std::string store;
    std::string keyFile;           ///< of a folder
    std::size_t connections = 8;   ///< to a database
};

/// A mistyped folder or database is no new hub: `ifMissing` says who may make a store.
Result<std::unique_ptr<mailbox::MailStore>> opened(const Place& place, mailbox::IfMissing ifMissing)
{
    if (const Done ready = crypto::initialise(); !ready)
        return fail(ready.error());
    if (!postgres::isAddress(place.store))
        return mailbox::openEmbeddedStore(place.store, place.keyFile, ifMissing);
    postgres::Settings settings;
    settings.address = place.store;
    settings.connections = place.connections;
    settings.ifMissing = ifMissing;
    return postgres::openPostgresStore(settings);
}

template <std::size_t N>
std::optional<bytes::Array<N>> fromHex(const std::string& text)
{
    const auto decoded = bytes::fromHex(text);
    if (!decoded || decoded->size() != N)
        return std::nullopt;
    bytes::Array<N> out;
    std::copy(decoded->begin(), decoded->end(), out.begin());
    return out;
}

/// The signals that the hub answers itself.
sigset_t ownSignals()
{
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGTERM);
    sigaddset(&signals, SIGINT);
    sigaddset(&signals, SIGHUP);
    return signals;
}

/// As many connections as the system lets this process have, instead of what a shell starts with.
void allowManyConnections()
{
    rlimit files{};
    if (getrlimit(RLIMIT_NOFILE, &files) == 0) {
        files.rlim_cur = files.rlim_max;
        (void)setrlimit(RLIMIT_NOFILE, &files);
    }
}

/// Waits for SIGTERM or SIGINT, doing `work` every so often and `reload` at each SIGHUP.
void untilAsked(const std::function<void()>& work, const std::function<void()>& reload)
{
    const sigset_t signals = ownSignals();
    for (;;) {
        const timespec every{300, 0};
        const int signal = sigtimedwait(&signals, nullptr, &every);
        if (signal == SIGTERM || signal == SIGINT)
            return;
        if (signal == SIGHUP)
            reload();
        else
            work();
    }
}

struct Listen {
    std::string address;
    std::uint16_t port = 0;
};

/// "address:port".
std::optional<Listen> listenFrom(const std::string& text)
{
    const auto colon = text.rfind(':');
    if (colon == std::string::npos || colon + 1 == text.size() || text.size() - colon > 6
        || text.find_first_not_of("0123456789", colon + 1) != std::string::npos)
        return std::nullopt;
    const int port = std::stoi(text.substr(colon + 1));
    if (port > 65535)
        return std::nullopt;
    return Listen{text.substr(0, colon), static_cast<std::uint16_t>(port)};
}

/// Whole or not at all: who waits for the file reads no half of a number.
Done tellPort(const std::string& portFile, std::uint16_t port)
{
    const std::string beside = portFile + ".new";
    std::ofstream out(beside);
    out << port << '\n';
    out.close();
    std::error_code problem;
    if (out)
        std::filesystem::rename(beside, portFile, problem);
    if (out && !problem)
        return {};
    std::error_code ignored;
    std::filesystem::remove(beside, ignored);
    return fail(Reason::storageFailed, "--port-file " + portFile + " cannot be written; name a file in a folder that is there and may be written to");
}

int serve(const Place& place, server::ServerSettings settings, const mailbox::Limits& limits,
          const std::string& portFile, const std::optional<Listen>& metricsAt, server::Log::Level level)
{
    // Before any thread starts, so that all of them leave these signals to untilAsked().
    const sigset_t signals = ownSignals();
    pthread_sigmask(SIG_BLOCK, &signals, nullptr);
    allowManyConnections();

    const clock::SystemClock clock;
    server::Log log(std::cout, clock, level);
    if (level != server::Log::Level::events)
        settings.answered = [&log](const server::Answered& answered) { log.request(answered); };
    auto mail = opened(place, mailbox::IfMissing::make);
    if (!mail)
        return complain(mail.error());
    mailbox::Service service(**mail, limits);
    auto http = server::HttpServer::start(service, clock, settings);
    if (!http)
        return complain(http.error());
    server::UsageFigures usage([&] { return (*mail)->ready().has_value(); }, [&](clock::Instant now) { return (*mail)->usage(now); }, clock);
    std::unique_ptr<server::MetricsServer> metrics;
    if (metricsAt) {
        auto started = server::MetricsServer::start(metricsAt->address, metricsAt->port,
                                                    [&] { return server::metricsText((*http)->figures(), usage.now()); });
        if (!started)
            return complain(started.error());
        metrics = std::move(*started);
        log.line("metrics", {{"port", metrics->port()}});
    }
    (*mail)->whenOthersWrite([&](const std::optional<mailbox::Written>& written) { (*http)->heard(written); });
    if (!portFile.empty()) {
        if (const Done told = tellPort(portFile, (*http)->port()); !told) {
            (*mail)->whenOthersWrite({});
            return complain(told.error());
        }
    }
    log.line("listening", {{"port", (*http)->port()}, {"tls", settings.certificate.empty() ? 0 : 1}});
    const auto figures = [&](std::string_view event) {
        const auto now = (*http)->figures();
        log.line(event, {{"requests", static_cast<std::int64_t>(now.requests)},
                         {"malformed", static_cast<std::int64_t>(now.malformed)},
                         {"refused_connections", static_cast<std::int64_t>(now.refusedConnections)},
                         {"server_errors", static_cast<std::int64_t>(now.serverErrors)},
                         {"open", static_cast<std::int64_t>(now.open)}});
    };
    untilAsked(
        [&] {
            if (!service.tidy(clock.now()))
                log.line("store failed, nothing was tidied");
            figures("figures");
        },
        [&] {
            const Done reloaded = (*http)->reloadCertificate();
            log.line(reloaded ? "certificate reloaded" : "certificate refused, the old one stays");
        });
    (*mail)->whenOthersWrite({});
    (*http)->stop(std::chrono::seconds(5));
    figures("stopped");
    return 0;
}

// What was typed is looked at before a store is: nothing is made for a command that cannot be done.

int addClinic(const Place& place, const std::string& root, const std::string& hint)
{
    const auto key = fromHex<32>(root);
    if (!key)
        return refuse("--root wants 64 hexadecimal digits");
    const auto wasThere = postgres::isAddress(place.store) ? Result<bool>(true) : mailbox::holdsEmbeddedStore(place.store);
    const auto mail = opened(place, mailbox::IfMissing::make);
    if (!wasThere || !mail)
        return complain(wasThere ? mail.error() : wasThere.error());
    if (!*wasThere)
        std::cout << "a new store was made in " << place.store << '\n';
    const auto clinic = (*mail)->addClinic(crypto::SigningPublicKey{*key}, hint);
    if (!clinic)
        return complain(clinic.error());
    std::cout << "clinic " << *clinic << " is admitted\n";
    return 0;
}

int revokeDevice(const Place& place, const std::string& device)
{
    const auto id = fromHex<16>(device);
    if (!id)
        return refuse("--device wants 32 hexadecimal digits");
    const auto mail = opened(place, mailbox::IfMissing::refuse);
    if (!mail)
        return complain(mail.error());
    const Done revoked = (*mail)->revokeDevice(envelope::DeviceId{*id});
    if (!revoked)
        return complain(revoked.error());
    std::cout << "the device is refused from now on\n";
    return 0;
}

int tellUsage(const Place& place)
{
    const auto mail = opened(place, mailbox::IfMissing::refuse);
    if (!mail)
        return complain(mail.error());
    const auto usage = (*mail)->usage(clock::SystemClock().now());
    if (!usage)
        return complain(usage.error());
    std::cout << "clinics " << usage->clinics << "\ndevices " << usage->devices << "\nmailboxes " << usage->mailboxes
              << "\nenvelopes " << usage->envelopes << "\nbytes " << usage->bytes << "\nblobs " << usage->blobs << "\nblob bytes " << usage->blobBytes << "\nwaiting over 30 days "
              << usage->waitingOver30Days << "\nwaiting over 60 days " << usage->waitingOver60Days << "\nwaiting over 85 days "
              << usage->waitingOver85Days << "\nwaiting over 90 days " << usage->waitingOver90Days << '\n';
    return 0;
}

}  // namespace

int main(int argc, char** argv)
{
    (void)ebbline::crypto::refuseCoreDumps();  // a system that refuses keeps its own rule
    CLI::App app{"Ebbline hub: holds sealed envelopes between phones and clinics. It can read none of them."};
    app.set_version_flag("--version", EBBLINE_VERSION);
    app.require_subcommand(1);
    app.footer("A first start:\n"
               "  ebbline-hub add-clinic --store /var/lib/ebbline --root <key shown at the desk>\n"
               "  ebbline-hub fingerprint --certificate chain.pem      # for the clinic, who types it once\n"
               "  ebbline-hub serve --store /var/lib/ebbline --listen 0.0.0.0:8443 --certificate chain.pem --key key.pem");

    Place place;
    std::string listen = "127.0.0.1:8443", metrics, portFile, root, hint, device;
    server::ServerSettings settings;
    mailbox::Limits limits;
    auto level = server::Log::Level::refusals;
    double perDevice = limits.perDevice.perSecond * 60, perAddress = limits.perAddress.perSecond * 60;
    int keepHours = static_cast<int>(limits.retention.count());
    double enrolments = limits.enrolPerAddress.perSecond * 3600;

    auto* serving = app.add_subcommand("serve", "Serve mailboxes until SIGTERM, then drain and end; SIGHUP reads the certificate again");
    auto* adding = app.add_subcommand("add-clinic", "Admit a clinic by its root key");
    auto* revoking = app.add_subcommand("revoke-device", "Refuse a device from now on");
    auto* showing = app.add_subcommand("fingerprint", "Print the fingerprint of the hub's key, for the desk's Clinic page");
    auto* using_ = app.add_subcommand("usage", "Count clinics, devices, mailboxes, envelopes and bytes");
    for (CLI::App* command : {serving, adding, revoking, using_}) {
        const std::string made = command == serving || command == adding ? ", made if it is not there" : "";
        command->add_option("--store", place.store, "Folder of the store" + made + "; or postgres://user@host,host/database")->required();
        command->add_option("--key-file", place.keyFile, "The folder's key, 32 bytes; default: hub.key in it");
    }
    serving->add_option("--listen", listen, "Address and port; port 0 takes a free one")->capture_default_str();
    auto* certificate = serving->add_option("--certificate", settings.certificate, "PEM chain; without it plain HTTP, and only on an address of this machine")
                            ->check(CLI::ExistingFile);
    serving->add_option("--key", settings.key, "PEM key of the certificate")->check(CLI::ExistingFile)->needs(certificate);
    serving->add_flag("--behind-tls-proxy", settings.behindTlsProxy,
                      "Plain HTTP on any address, because a proxy with TLS stands before it and nothing else reaches it")
        ->excludes(certificate);
    serving->add_option("--metrics", metrics, "Address and port for GET /metrics, for monitoring only; default: none");
    serving->add_option("--log", level, "What to log besides events: nothing of requests, who was not let in, or each request")
        ->transform(CLI::CheckedTransformer(std::map<std::string, server::Log::Level>{{"events", server::Log::Level::events},
                                                                                      {"refusals", server::Log::Level::refusals},
                                                                                      {"requests", server::Log::Level::requests}},
                                            CLI::ignore_case))
        ->default_str("refusals");
    serving->add_option("--port-file", portFile, "Write the port here once it listens");
    serving->add_option("--network-threads", settings.networkThreads)->check(CLI::Range(1, 64))->capture_default_str();
    serving->add_option("--device-requests", perDevice, "Requests a minute that one device may make")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    serving->add_option("--address-requests", perAddress, "Requests a minute from one address")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    serving->add_option("--enrolments", enrolments, "Attempts to join an hour from one address")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    serving->add_option("--storage-threads", settings.storageThreads)->check(CLI::Range(1, 256))->capture_default_str();
    serving->add_option("--connections", place.connections, "To a database, besides one that listens")->check(CLI::Range(1, 256))->capture_default_str();
    serving->add_option("--address-connections", settings.connectionsPerAddress, "Connections from one address")->check(CLI::Range(1, 100'000))->capture_default_str();
    serving->add_option("--mailbox-envelopes", limits.quota.envelopes, "Envelopes that one mailbox may hold")->check(CLI::Range(1, 1'000'000))->capture_default_str();
    serving->add_option("--mailbox-bytes", limits.quota.bytes, "Bytes that one mailbox may hold")->check(CLI::Range(1ull << 20, 1ull << 40))->capture_default_str();
    serving->add_option("--mailbox-blob-bytes", limits.quota.blobBytes, "Bytes of photographs that one mailbox may hold")->check(CLI::Range(1ull << 20, 1ull << 40))->capture_default_str();
    serving->add_option("--keep-hours", keepHours, "How long an envelope is kept after it was acknowledged")->check(CLI::Range(0, 24 * 365))->capture_default_str();
    std::filesystem::path shown;
    showing->add_option("--certificate", shown, "PEM chain")->required()->check(CLI::ExistingFile);
    adding->add_option("--root", root, "Root key of the clinic, 64 hexadecimal digits, as the desk shows it")->required();
    adding->add_option("--hint", hint, "A word for the operator; never a patient's");
    revoking->add_option("--device", device, "Device id, 32 hexadecimal digits")->required();
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& problem) {
        const auto unknown = terminal::unknownWord(app, "ebbline-hub");
        if (!unknown)
            return app.exit(problem) == 0 ? 0 : badInput;
        std::cerr << *unknown << '\n';
        return badInput;
    }

    if (*showing) {
        const auto hash = server::keyHashOf(shown);
        if (!hash)
            return complain(hash.error());
        std::cout << bytes::toHex(*hash) << '\n';
        return 0;
    }
    if (*serving) {
        const auto at = listenFrom(listen);
        if (!at)
            return refuse("--listen wants address:port, e.g. 127.0.0.1:8443");
        settings.address = at->address;
        settings.port = at->port;
        const auto metricsAt = listenFrom(metrics);
        if (!metrics.empty() && !metricsAt)
            return refuse("--metrics wants address:port, e.g. 127.0.0.1:9101");
        limits.retention = std::chrono::hours(keepHours);
        limits.perDevice = {perDevice, perDevice / 60};
        limits.perAddress = {perAddress, perAddress / 60};
        limits.enrolPerAddress = {enrolments, enrolments / 3600};
        return serve(place, settings, limits, portFile, metricsAt, level);
    }
    if (*adding)
        return addClinic(place, root, hint);
    return *revoking ? revokeDevice(place, device) : tellUsage(place);
}
