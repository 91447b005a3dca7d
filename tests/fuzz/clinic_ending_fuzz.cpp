// A clinic's word to its hub that devices are over: anybody who holds a desk's key can send one. First the ending alone, signed as it came
// and signed by the root; then the request that carries several, through the hub's rules.

#include "tests/fuzz/fuzz_target.h"

#include "core/bytes/reader.h"
#include "core/mailbox/embedded_store.h"
#include "core/mailbox/ending.h"
#include "core/mailbox/service.h"
#include "core/mailbox/wire.h"
#include "core/pairing/statement.h"

#include <unistd.h>

using namespace ebbline;

namespace {

struct Hub {
    crypto::SigningKey root = crypto::SigningKey::generate(), desk = crypto::SigningKey::generate(), other = crypto::SigningKey::generate();
    std::unique_ptr<mailbox::MailStore> store;
    std::unique_ptr<mailbox::Service> service;

    Hub()
    {
        const auto folder = std::filesystem::temp_directory_path() / ("ebbline-fuzz-ending-" + std::to_string(getpid()));
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
        store = std::move(mailbox::openEmbeddedStore(folder).value());
        const std::int64_t clinic = store->addClinic(root.publicKey(), "").value();
        for (const crypto::SigningKey* each : {&desk, &other}) {
            const mailbox::Device device{envelope::deviceIdOf(each->publicKey()), each->publicKey(), mailbox::Role::desk, clinic, false};
            fuzz::mustHold(store->putDevice(device).has_value(), "a desk is let in");
        }
        mailbox::Limits limits;
        limits.perAddress = limits.perDevice = {1e9, 1e9};
        service = std::make_unique<mailbox::Service>(*store, limits);
    }
    bool isRevoked(const crypto::SigningKey& key) const { return store->device(envelope::deviceIdOf(key.publicKey())).value().revoked; }
};

bytes::Bytes signedBy(const crypto::SigningKey& root, bytes::View body)
{
    return bytes::Writer().raw(body).raw(root.sign(pairing::statementText(body))).bytes();
}

}  // namespace

void fuzz::tryInput(bytes::View input)
{
    static const Hub hub;
    // Time goes on, so that the hub forgets the nonces of requests long ago.
    static clock::Instant now{std::chrono::hours{500'000}};
    now += std::chrono::milliseconds{10};
    mustHold(!mailbox::openEnding(input, hub.root.publicKey()), "nobody signs for a root made a moment ago");
    const bytes::Bytes whole = signedBy(hub.root, input);
    if (const auto ending = mailbox::openEnding(whole, hub.root.publicKey()))
        mustHold(mailbox::signEnding(*ending, hub.root) == whole, "an ending has one form only");

    // As it came, and as what would stand behind the root's key; neither holds a signature of this root.
    for (const bool withRoot : {false, true}) {
        mailbox::Request request{"POST", "/v1/ended", {}, {}, {}};
        request.body = withRoot ? bytes::Writer().raw(hub.root.publicKey().value).raw(input).bytes() : bytes::Bytes(input.begin(), input.end());
        mailbox::signRequest(request, hub.desk, now);
        const auto response = hub.service->handle(request, "192.0.2.1", now);
        mustHold(response.status >= 400 && response.status < 500, "what the root did not sign is refused, and is no fault of the hub's");
        mustHold(!hub.isRevoked(hub.other) && !hub.isRevoked(hub.desk), "nobody is shut out by it");
    }
}
