// ebbline-hub: holds the mailboxes between phones and clinics, and can read none of them.

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "platform/server/http_server.h"
#include "platform/server/log.h"

#include <CLI/CLI.hpp>

#include <csignal>
#include <fstream>
#include <iostream>
#include <pthread.h>

namespace {

using namespace ebbline;

int complain(const Error& error)
{
    std::cerr << "ebbline-hub: " << error.detail << '\n';
    return 1;
}

Result<std::unique_ptr<mailbox::MailStore>> opened(const std::string& store, const std::string& keyFile)
{
    if (const Done ready = crypto::initialise(); !ready)
        return fail(ready.error());
    return mailbox::openEmbeddedStore(store, keyFile);
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

/// Waits for SIGTERM or SIGINT, doing `work` every so often. \returns the signal.
int untilAsked(const std::function<void()>& work)
{
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGTERM);
    sigaddset(&signals, SIGINT);
    for (;;) {
        const timespec every{300, 0};
        const int signal = sigtimedwait(&signals, nullptr, &every);
        if (signal > 0)
            return signal;
        work();
    }
}

int serve(const std::string& store, const std::string& keyFile, const server::ServerSettings& settings,
          const mailbox::Limits& limits, const std::string& portFile)
{
    // Before any thread starts, so that all of them leave these signals to untilAsked().
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGTERM);
    sigaddset(&signals, SIGINT);
    pthread_sigmask(SIG_BLOCK, &signals, nullptr);

    const clock::SystemClock clock;
    server::Log log(std::cout, clock);
    auto mail = opened(store, keyFile);
    if (!mail)
        return complain(mail.error());
    mailbox::Service service(**mail, limits);
    auto http = server::HttpServer::start(service, clock, settings);
    if (!http)
        return complain(http.error());
    if (!portFile.empty()) {
        std::ofstream(portFile + ".new") << (*http)->port() << '\n';
        std::filesystem::rename(portFile + ".new", portFile);
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
    untilAsked([&] {
        service.tidy(clock.now());
        figures("figures");
    });
    (*http)->stop(std::chrono::seconds(5));
    figures("stopped");
    return 0;
}

}  // namespace

int main(int argc, char** argv)
{
    CLI::App app{"Ebbline hub: holds sealed envelopes between phones and clinics. It can read none of them."};
    app.set_version_flag("--version", EBBLINE_VERSION);
    app.require_subcommand(1);
    app.footer("A first start:\n"
               "  ebbline-hub add-clinic --store /var/lib/ebbline --root <key shown at the desk>\n"
               "  ebbline-hub serve --store /var/lib/ebbline --listen 0.0.0.0:8443 --certificate chain.pem --key key.pem");

    std::string store, keyFile, listen = "127.0.0.1:8443", portFile, root, hint, device;
    server::ServerSettings settings;
    mailbox::Limits limits;
    double perDevice = limits.perDevice.perSecond * 60, perAddress = limits.perAddress.perSecond * 60;
    double enrolments = limits.enrolPerAddress.perSecond * 3600;

    auto* serving = app.add_subcommand("serve", "Serve mailboxes until SIGTERM, then drain and end");
    auto* adding = app.add_subcommand("add-clinic", "Admit a clinic by its root key");
    auto* revoking = app.add_subcommand("revoke-device", "Refuse a device from now on");
    auto* using_ = app.add_subcommand("usage", "Count clinics, devices, mailboxes, envelopes and bytes");
    for (CLI::App* command : {serving, adding, revoking, using_}) {
        command->add_option("--store", store, "Folder of the store; made if it is not there")->required();
        command->add_option("--key-file", keyFile, "The store's key, 32 bytes; default: hub.key in the folder");
    }
    serving->add_option("--listen", listen, "Address and port; port 0 takes a free one")->capture_default_str();
    auto* certificate = serving->add_option("--certificate", settings.certificate, "PEM chain; without it plain HTTP, for one machine only")
                            ->check(CLI::ExistingFile);
    serving->add_option("--key", settings.key, "PEM key of the certificate")->check(CLI::ExistingFile)->needs(certificate);
    serving->add_option("--port-file", portFile, "Write the port here once it listens");
    serving->add_option("--network-threads", settings.networkThreads)->check(CLI::Range(1, 64))->capture_default_str();
    serving->add_option("--device-requests", perDevice, "Requests a minute that one device may make")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    serving->add_option("--address-requests", perAddress, "Requests a minute from one address")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    serving->add_option("--enrolments", enrolments, "Attempts to join an hour from one address")->check(CLI::Range(1.0, 1e6))->capture_default_str();
    adding->add_option("--root", root, "Root key of the clinic, 64 hexadecimal digits, as the desk shows it")->required();
    adding->add_option("--hint", hint, "A word for the operator; never a patient's");
    revoking->add_option("--device", device, "Device id, 32 hexadecimal digits")->required();
    CLI11_PARSE(app, argc, argv);

    if (*serving) {
        const auto colon = listen.rfind(':');
        const int port = colon == std::string::npos ? -1 : std::atoi(listen.c_str() + colon + 1);
        if (port < 0 || port > 65535)
            return complain({Reason::malformed, "--listen wants address:port, e.g. 127.0.0.1:8443"});
        settings.address = listen.substr(0, colon);
        settings.port = static_cast<std::uint16_t>(port);
        limits.perDevice = {perDevice, perDevice / 60};
        limits.perAddress = {perAddress, perAddress / 60};
        limits.enrolPerAddress = {enrolments, enrolments / 3600};
        return serve(store, keyFile, settings, limits, portFile);
    }
    auto mail = opened(store, keyFile);
    if (!mail)
        return complain(mail.error());
    if (*adding) {
        const auto key = fromHex<32>(root);
        if (!key)
            return complain({Reason::malformed, "--root wants 64 hexadecimal digits"});
        const auto clinic = (*mail)->addClinic(crypto::SigningPublicKey{*key}, hint);
        if (!clinic)
            return complain(clinic.error());
        std::cout << "clinic " << *clinic << " is admitted\n";
        return 0;
    }
    if (*revoking) {
        const auto id = fromHex<16>(device);
        if (!id)
            return complain({Reason::malformed, "--device wants 32 hexadecimal digits"});
        const Done revoked = (*mail)->revokeDevice(envelope::DeviceId{*id});
        if (!revoked)
            return complain(revoked.error());
        std::cout << "the device is refused from now on\n";
        return 0;
    }
    const auto usage = (*mail)->usage();
    if (!usage)
        return complain(usage.error());
    std::cout << "clinics " << usage->clinics << "\ndevices " << usage->devices << "\nmailboxes " << usage->mailboxes
              << "\nenvelopes " << usage->envelopes << "\nbytes " << usage->bytes << '\n';
    return 0;
}
