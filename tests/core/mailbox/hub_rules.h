#pragma once
/// \file
/// The hub's rules over an embedded store, a clinic with a desk and a phone, and a clock that stands still.

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "core/mailbox/service.h"
#include "tests/core/vault/folder.h"

namespace ebbline::test {

struct Signer {
    crypto::SigningKey key = crypto::SigningKey::generate();
    envelope::DeviceId id = envelope::deviceIdOf(key.publicKey());

    mailbox::Request request(std::string method, std::string path, clock::Instant now, bytes::Bytes body = {}) const
    {
        mailbox::Request made{std::move(method), std::move(path), {}, std::move(body), {}};
        mailbox::signRequest(made, key, now);
        return made;
    }
};

struct HubRules {
    Folder folder;
    clock::ManualClock clock{clock::Instant{std::chrono::hours(500'000)}};
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(folder.path()));
    mailbox::Service service;
    std::int64_t clinic = store->addClinic({crypto::randomArray<32>()}, "").value();
    Signer desk, phone;
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::string path = "/v1/m/" + bytes::toHex(mailbox.view());
    crypto::BoxKey box = crypto::BoxKey::generate();

    explicit HubRules(mailbox::Limits limits = {}) : service(*store, limits)
    {
        REQUIRE(store->putDevice({desk.id, desk.key.publicKey(), mailbox::Role::desk, clinic, false}));
        mailbox::StoredOffer offer;
        offer.id = {1};
        offer.clinic = clinic;
        offer.expires = clock.now();
        REQUIRE(store->putOffer(offer));
        REQUIRE(store->linkOffer({1}, bytes::viewOf("x"), mailbox, {phone.id, phone.key.publicKey(), mailbox::Role::phone, clinic, false}));
    }

    mailbox::Response ask(const mailbox::Request& request, const std::string& address = "192.0.2.1")
    {
        return service.handle(request, address, clock.now());
    }
    mailbox::Response get(const Signer& who, const std::string& address = "192.0.2.1")
    {
        return ask(who.request("GET", path, clock.now()), address);
    }
    bytes::Bytes sealed(std::uint64_t sequence)
    {
        return envelope::seal({envelope::Kind::operations, mailbox, phone.id, sequence, {}, 1}, phone.key, {box.publicKey()},
                              bytes::viewOf("x"))
            .value();
    }
    mailbox::Response put(std::uint64_t sequence)
    {
        return ask(phone.request("PUT", path + "/" + bytes::toHex(phone.id.view()) + "/" + std::to_string(sequence), clock.now(),
                                 sealed(sequence)));
    }
};

}  // namespace ebbline::test
