#pragma once
/// \file
/// A hub on a real port of this machine, with a clinic's desk and a phone that it knows.

#include "platform/server/http_server.h"

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "tests/core/vault/folder.h"
#include "tests/platform/server/raw_client.h"

namespace ebbline::test {

struct RunningHub {
    test::Folder folder;
    clock::SystemClock clock;
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(folder.path()));
    mailbox::Service service{*store, generous()};
    std::unique_ptr<server::HttpServer> server;

    explicit RunningHub(server::ServerSettings settings = {})
    {
        auto started = server::HttpServer::start(service, clock, settings);
        REQUIRE(started);
        server = std::move(*started);
    }
    static mailbox::Limits generous()
    {
        mailbox::Limits limits;
        limits.perAddress = {1e6, 1e6};
        limits.perDevice = {1e6, 1e6};
        return limits;
    }
    std::string ask(std::string_view request) { return test::RawClient(server->port()).ask(request); }
};

inline int statusOf(const std::string& response)
{
    return response.size() > 12 && response.starts_with("HTTP/1.1 ") ? std::stoi(response.substr(9, 3)) : 0;
}

/// A desk and a phone that the store knows, and requests in their name.
struct Member {
    crypto::SigningKey key = crypto::SigningKey::generate();
    envelope::DeviceId id = envelope::deviceIdOf(key.publicKey());

    std::string http(std::string method, std::string path, std::string query, bytes::Bytes body, clock::Instant now)
    {
        mailbox::Request request{std::move(method), std::move(path), std::move(query), std::move(body), {}};
        mailbox::signRequest(request, key, now);
        std::string text = request.method + " " + request.path + (request.query.empty() ? "" : "?" + request.query)
                           + " HTTP/1.1\r\nHost: hub\r\nEB-Auth: " + request.authorisation
                           + "\r\nContent-Length: " + std::to_string(request.body.size()) + "\r\n\r\n";
        text.append(request.body.begin(), request.body.end());
        return text;
    }
};

struct Mailboxed {
    RunningHub hub;
    Member desk, phone;
    crypto::BoxKey clinicBox = crypto::BoxKey::generate();
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::string path = "/v1/m/" + bytes::toHex(mailbox.view());

    Mailboxed()
    {
        const auto root = crypto::SigningKey::generate();
        const auto clinic = hub.store->addClinic(root.publicKey(), "");
        REQUIRE(clinic);
        REQUIRE(hub.store->putDevice({desk.id, desk.key.publicKey(), mailbox::Role::desk, *clinic, false}));
        REQUIRE(hub.store->putOffer({{1}, *clinic, {}, {}, {}, {}, hub.clock.now() + std::chrono::minutes(10), {}, false, {}, {}}));
        REQUIRE(hub.store->linkOffer({1}, {}, mailbox, {phone.id, phone.key.publicKey(), mailbox::Role::phone, *clinic, false}));
    }
    bytes::Bytes envelope(std::uint64_t sequence = 1)
    {
        auto sealed = envelope::seal({envelope::Kind::operations, mailbox, phone.id, sequence, {}, 1}, phone.key,
                                     {clinicBox.publicKey()}, bytes::viewOf("x"));
        REQUIRE(sealed);
        return *sealed;
    }
    std::string put(std::uint64_t sequence, const bytes::Bytes& body)
    {
        return phone.http("PUT", path + "/" + bytes::toHex(phone.id.view()) + "/" + std::to_string(sequence), {}, body,
                          hub.clock.now());
    }
};

}  // namespace ebbline::test
