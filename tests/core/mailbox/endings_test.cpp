// Devices that a clinic says are over: its root's signature ends them at the hub, and nothing else does.

#include "core/mailbox/ending.h"
#include "tests/core/mailbox/hub_rules.h"

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;

namespace {

/// A clinic with a root key of its own, beside that of the rules.
struct Clinic {
    HubRules hub;
    crypto::SigningKey root = crypto::SigningKey::generate();
    std::int64_t number = hub.store->addClinic(root.publicKey(), "").value();
    Signer desk, lost, phone;
    envelope::MailboxId mailbox{crypto::randomArray<16>()};
    std::string path = "/v1/m/" + bytes::toHex(mailbox.view());

    Clinic()
    {
        for (const Signer* each : {&desk, &lost})
            REQUIRE(hub.store->putDevice({each->id, each->key.publicKey(), Role::desk, number, false}));
        StoredOffer offer;
        offer.id = {2};
        offer.clinic = number;
        offer.expires = hub.clock.now();
        REQUIRE(hub.store->putOffer(offer));
        REQUIRE(hub.store->linkOffer({2}, bytes::viewOf("x"), mailbox, {phone.id, phone.key.publicKey(), Role::phone, number, false}));
    }
    bytes::Bytes ending(const envelope::DeviceId& device) const { return signEnding({device, hub.clock.now()}, root); }
    bytes::Bytes body(const std::vector<bytes::Bytes>& endings) const
    {
        bytes::Writer out;
        out.raw(root.publicKey().value);
        for (const bytes::Bytes& each : endings)
            out.block(each);
        return std::move(out).bytes();
    }
    int say(const Signer& who, const bytes::Bytes& what) { return hub.ask(who.request("POST", "/v1/ended", hub.clock.now(), what)).status; }
    int get(const Signer& who) { return hub.ask(who.request("GET", path, hub.clock.now())).status; }
    int put(const Signer& who, std::uint64_t sequence)
    {
        const auto sealed = envelope::seal({envelope::Kind::operations, mailbox, who.id, sequence, {}, 1}, who.key,
                                           {hub.box.publicKey()}, bytes::viewOf("x"));
        REQUIRE(sealed);
        return hub.ask(who.request("PUT", path + "/" + bytes::toHex(who.id.view()) + "/" + std::to_string(sequence), hub.clock.now(), *sealed))
            .status;
    }
};

}  // namespace

TEST_CASE("a lost desk and a lost phone can neither fetch nor put from the moment the hub has the clinic's word", "[mailbox][endings]")
{
    Clinic clinic;
    for (const Signer* over : {&clinic.lost, &clinic.phone}) {
        CHECK(clinic.get(*over) == 200);
        CHECK(clinic.put(*over, 1) == 200);
        CHECK(clinic.say(clinic.desk, clinic.body({clinic.ending(over->id)})) == 200);
        CHECK(clinic.get(*over) == 401);
        CHECK(clinic.put(*over, 1) == 401);
        CHECK(clinic.put(*over, 2) == 401);
    }
    CHECK(clinic.say(clinic.lost, clinic.body({clinic.ending(clinic.desk.id)})) == 401);
    CHECK(clinic.get(clinic.desk) == 200);
    // What the phone left are its patient's words: they stay for the desk.
    const auto left = clinic.hub.ask(clinic.desk.request("GET", clinic.path, clinic.hub.clock.now()));
    CHECK(left.body.size() > 1000);
    // Making itself known again does not help it.
    REQUIRE(clinic.hub.store->putDevice({clinic.lost.id, clinic.lost.key.publicKey(), Role::desk, clinic.number, false}));
    CHECK(clinic.get(clinic.lost) == 401);
}

TEST_CASE("who waits at the hub while it is ended gets nothing of what comes", "[mailbox][endings]")
{
    Clinic clinic;
    Request waiting{"GET", clinic.path, "wait=25", {}, {}};
    signRequest(waiting, clinic.phone.key, clinic.hub.clock.now());
    CHECK(clinic.hub.ask(waiting).status == 200);
    CHECK(clinic.say(clinic.desk, clinic.body({clinic.ending(clinic.phone.id)})) == 200);
    CHECK(clinic.put(clinic.desk, 1) == 200);
    const Response after = clinic.hub.service.handle(waiting, "192.0.2.1", clinic.hub.clock.now(), true);
    CHECK(after.status == 401);
    CHECK(after.body.empty());
}

TEST_CASE("nobody but the clinic's root ends a device", "[mailbox][endings][errors]")
{
    Clinic clinic;
    const bytes::Bytes good = clinic.ending(clinic.phone.id);
    const auto other = crypto::SigningKey::generate();
    const bytes::Bytes forged = signEnding({clinic.phone.id, clinic.hub.clock.now()}, other);
    CHECK(clinic.say(clinic.desk, clinic.body({forged})) == 401);
    // Under the other's own root, which the hub does not know, or which is another clinic's.
    const bytes::Bytes unknown = bytes::Writer().raw(other.publicKey().value).block(forged).bytes();
    CHECK(clinic.say(clinic.desk, unknown) == 401);
    REQUIRE(clinic.hub.store->addClinic(other.publicKey(), ""));
    CHECK(clinic.say(clinic.desk, unknown) == 401);
    // A phone, a stranger, and a desk of another clinic may not even carry it.
    CHECK(clinic.say(clinic.phone, clinic.body({good})) == 404);
    CHECK(clinic.say(Signer(), clinic.body({good})) == 401);
    CHECK(clinic.say(clinic.hub.desk, clinic.body({good})) == 401);
    for (std::size_t bit = 0; bit < 8 * good.size(); bit += 5) {
        bytes::Bytes changed = good;
        changed[bit / 8] ^= static_cast<std::uint8_t>(1u << (bit % 8));
        CHECK_FALSE(openEnding(changed, clinic.root.publicKey()));
    }
    // One that does not hold, and none of them is heard; cut, empty and too many are refused.
    CHECK(clinic.say(clinic.desk, clinic.body({good, forged})) == 401);
    CHECK(clinic.say(clinic.desk, clinic.body({})) == 400);
    CHECK(clinic.say(clinic.desk, clinic.body({bytes::Bytes(good.begin(), good.end() - 1)})) == 400);
    CHECK(clinic.say(clinic.desk, clinic.body(std::vector<bytes::Bytes>(mostEndings + 1, good))) == 400);
    CHECK(clinic.get(clinic.phone) == 200);
}

TEST_CASE("an ending says nothing about whom the hub knows, and may come as often as it likes", "[mailbox][endings]")
{
    Clinic clinic;
    const envelope::DeviceId nobody{crypto::randomArray<16>()};
    CHECK(clinic.say(clinic.desk, clinic.body({clinic.ending(nobody)})) == 200);
    // Another clinic's phone: the answer is the same, and nothing happens to it.
    CHECK(clinic.say(clinic.desk, clinic.body({clinic.ending(clinic.hub.phone.id)})) == 200);
    CHECK(clinic.hub.get(clinic.hub.phone).status == 200);
    for (int i = 0; i < 3; ++i)
        CHECK(clinic.say(clinic.desk, clinic.body(std::vector<bytes::Bytes>(mostEndings, clinic.ending(clinic.phone.id)))) == 200);
    CHECK(clinic.get(clinic.phone) == 401);
}
