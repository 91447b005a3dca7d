// The sealed message: what it hides, what it refuses, and its size to the byte.
// Layout: docs/formats/envelope.md.

#include "core/envelope/envelope.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <set>

using namespace ebbline;
using namespace ebbline::envelope;

namespace {

struct Parties {
    bool ready = crypto::initialise().has_value();
    crypto::SigningKey phone = crypto::SigningKey::generate();
    crypto::BoxKey clinic = crypto::BoxKey::generate();
    Header header{.mailbox = MailboxId{crypto::randomArray<16>()},
                  .sender = deviceIdOf(phone.publicKey()),
                  .sequence = 1,
                  .recipientEpoch = 1};

    Bytes sealed(View plaintext) const
    {
        auto envelope = seal(header, phone, {clinic.publicKey()}, plaintext);
        REQUIRE(envelope);
        return *envelope;
    }
};

}  // namespace

TEST_CASE("the recipient reads what the sender sealed", "[envelope]")
{
    const Parties parties;
    const Bytes envelope = parties.sealed(bytes::viewOf("swelling L 4"));

    const auto opened = open(envelope, parties.phone.publicKey(), parties.clinic);

    REQUIRE(opened);
    CHECK(opened->header == parties.header);
    CHECK(std::string(opened->plaintext.begin(), opened->plaintext.end()) == "swelling L 4");
    CHECK(peek(envelope).value() == parties.header);
    CHECK(verify(envelope, parties.phone.publicKey()).value() == parties.header);
}

TEST_CASE("short messages all have one size: 1,348 bytes", "[envelope]")
{
    const Parties parties;
    const auto length = GENERATE(0U, 1U, 500U, 1023U);

    // 144 fixed + 96 for one recipient + 4 length + 1,024 padded + 16 tag + 64 signature.
    CHECK(parties.sealed(Bytes(length, 7)).size() == 1348);
}

TEST_CASE("no two sealings share a nonce, a key or their bytes", "[envelope]")
{
    const Parties parties;
    std::set<Bytes> nonces, commitments, contents;
    constexpr std::size_t sealings = 2000;
    for (std::size_t i = 0; i < sealings; ++i) {
        const Bytes envelope = parties.sealed(bytes::viewOf("swelling L 4"));
        // Places of the format: the nonce, what commits to the content key, and the ciphertext.
        const auto part = [&](std::size_t from, std::size_t size) { return Bytes(envelope.begin() + static_cast<std::ptrdiff_t>(from), envelope.begin() + static_cast<std::ptrdiff_t>(from + size)); };
        nonces.insert(part(84, 24));
        commitments.insert(part(112, 32));
        contents.insert(part(144 + 96 + 4, 1040));
    }
    CHECK(nonces.size() == sealings);
    CHECK(commitments.size() == sealings);
    CHECK(contents.size() == sealings);
}

TEST_CASE("one byte more than a step takes another step", "[envelope]")
{
    const Parties parties;

    CHECK(parties.sealed(Bytes(1024, 7)).size() == 1348 + 1024);
    CHECK(parties.sealed(Bytes(8191, 7)).size() == 1348 + 7 * 1024);
}

TEST_CASE("padding of long messages costs at most 12 percent", "[envelope][property]")
{
    const Parties parties;
    CHECK(rc::check("Padmé", [&] {
        const auto length = *rc::gen::inRange<std::size_t>(8192, 200'000);
        const auto envelope = seal(parties.header, parties.phone, {parties.clinic.publicKey()}, Bytes(length));
        RC_ASSERT(envelope.has_value());
        const double overhead = static_cast<double>(envelope->size() - 324) / static_cast<double>(length + 1);
        RC_ASSERT(overhead >= 1.0 && overhead <= 1.12);
        const auto opened = open(*envelope, parties.phone.publicKey(), parties.clinic);
        RC_ASSERT(opened.has_value() && opened->plaintext.size() == length);
    }));
}

TEST_CASE("a change of any single byte is refused", "[envelope]")
{
    const Parties parties;
    const Bytes envelope = parties.sealed(bytes::viewOf("x"));

    for (std::size_t i = 0; i < envelope.size(); ++i) {
        Bytes changed = envelope;
        changed[i] ^= 1;
        CAPTURE(i);
        REQUIRE_FALSE(open(changed, parties.phone.publicKey(), parties.clinic));
    }
}

TEST_CASE("an envelope cut or lengthened anywhere is refused", "[envelope]")
{
    const Parties parties;
    const Bytes envelope = parties.sealed(bytes::viewOf("x"));

    for (std::size_t length = 0; length < envelope.size(); ++length) {
        CAPTURE(length);
        REQUIRE_FALSE(peek(View(envelope).first(length)));
    }
    Bytes longer = envelope;
    longer.push_back(0);
    CHECK_FALSE(peek(longer));
}

TEST_CASE("someone else cannot read it", "[envelope]")
{
    const Parties parties;

    const auto opened = open(parties.sealed(bytes::viewOf("x")), parties.phone.publicKey(), crypto::BoxKey::generate());

    REQUIRE_FALSE(opened);
    CHECK(opened.error().reason == Reason::wrongKey);
}

TEST_CASE("a thief cannot take over the contents by signing again", "[envelope]")
{
    // The signature is replaced by the thief's, and so is the sender: the sender is part of what
    // the encryption authenticates, so the contents no longer open.
    const Parties parties;
    const crypto::SigningKey thief = crypto::SigningKey::generate();
    Bytes stolen = parties.sealed(bytes::viewOf("x"));
    const DeviceId thiefId = deviceIdOf(thief.publicKey());
    std::copy(thiefId.value.begin(), thiefId.value.end(), stolen.begin() + 24);
    stolen.resize(stolen.size() - 64);
    Bytes text{'E', 'B', '-', 'E', 'N', 'V', '-', 'v', '1', 0};
    const auto hash = crypto::hash256(stolen);
    text.insert(text.end(), hash.begin(), hash.end());
    const auto signature = thief.sign(text);
    stolen.insert(stolen.end(), signature.begin(), signature.end());
    REQUIRE(verify(stolen, thief.publicKey()));

    const auto opened = open(stolen, thief.publicKey(), parties.clinic);

    REQUIRE_FALSE(opened);
    CHECK(opened.error().reason == Reason::forged);
}

TEST_CASE("two recipients read the same", "[envelope]")
{
    const Parties parties;
    const crypto::BoxKey second = crypto::BoxKey::generate();
    const auto envelope = seal(parties.header, parties.phone, {parties.clinic.publicKey(), second.publicKey()},
                               bytes::viewOf("both"));
    REQUIRE(envelope);

    const auto first = open(*envelope, parties.phone.publicKey(), parties.clinic);
    const auto other = open(*envelope, parties.phone.publicKey(), second);

    REQUIRE(first);
    REQUIRE(other);
    CHECK(first->plaintext == other->plaintext);
}

TEST_CASE("what cannot be sealed is refused by name", "[envelope][errors]")
{
    const Parties parties;
    Header zero = parties.header;
    zero.sequence = 0;

    CHECK(seal(parties.header, parties.phone, {}, {}).error().reason == Reason::outOfRange);
    CHECK(seal(zero, parties.phone, {parties.clinic.publicKey()}, {}).error().reason == Reason::outOfRange);
    CHECK(seal(parties.header, parties.phone, {parties.clinic.publicKey()}, Bytes(maximumCiphertext)).error().reason
          == Reason::tooLarge);
}

TEST_CASE("no bytes make the reader misbehave", "[envelope][property]")
{
    CHECK(rc::check("refused, never crashed", [](Bytes input) {
        const std::string_view magic = "EBE1";
        for (std::size_t i = 0; i < std::min(input.size(), magic.size()); ++i)
            input[i] = static_cast<std::uint8_t>(magic[i]);
        RC_ASSERT(!peek(input).has_value());
    }));
}
