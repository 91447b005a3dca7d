// Statements of a clinic: what is signed is read, what is changed is refused.

#include "core/pairing/statement.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::pairing;

namespace {

Roster sampleRoster()
{
    Roster roster;
    roster.number = 7;
    roster.previous = crypto::randomArray<32>();
    roster.epoch = 3;
    roster.epochKey = crypto::BoxKey::generate().publicKey();
    for (int i = 0; i < 3; ++i)
        roster.desks.push_back({crypto::SigningKey::generate().publicKey(), crypto::BoxKey::generate().publicKey(), i == 0});
    roster.revoked = {envelope::DeviceId{crypto::randomArray<16>()}};
    return roster;
}

}  // namespace

TEST_CASE("a statement comes back as it was signed", "[statement]")
{
    REQUIRE(crypto::initialise());
    const auto root = crypto::SigningKey::generate();
    const Statement roster = sampleRoster();
    CHECK(openStatement(signStatement(roster, root), root.publicKey()) == roster);
    const Statement replaced = PhoneReplaced{envelope::MailboxId{crypto::randomArray<16>()}, envelope::DeviceId{crypto::randomArray<16>()}, 12,
                                             clock::Instant{std::chrono::milliseconds{1'800'000'000'123}}};
    CHECK(openStatement(signStatement(replaced, root), root.publicKey()) == replaced);
}

TEST_CASE("a statement with any bit changed, or of another root, is refused", "[statement][errors]")
{
    REQUIRE(crypto::initialise());
    const auto root = crypto::SigningKey::generate();
    const bytes::Bytes sound = signStatement(sampleRoster(), root);
    for (std::size_t bit = 0; bit < 8 * sound.size(); bit += 7) {
        bytes::Bytes other = sound;
        other[bit / 8] ^= static_cast<std::uint8_t>(1u << (bit % 8));
        CHECK_FALSE(openStatement(other, root.publicKey()));
    }
    CHECK(openStatement(sound, crypto::SigningKey::generate().publicKey()).error().reason == Reason::forged);
    CHECK(openStatement(bytes::View(sound).first(20), root.publicKey()).error().reason == Reason::malformed);
}

TEST_CASE("a roster that contradicts itself is refused even if it is signed", "[statement][errors]")
{
    REQUIRE(crypto::initialise());
    const auto root = crypto::SigningKey::generate();
    const auto refused = [&](const Roster& roster) {
        const auto opened = openStatement(signStatement(roster, root), root.publicKey());
        return !opened && opened.error().reason == Reason::outOfRange;
    };
    Roster none = sampleRoster();
    none.desks.clear();
    CHECK(refused(none));
    Roster twice = sampleRoster();
    twice.desks.push_back(twice.desks.front());
    CHECK(refused(twice));
    Roster revoked = sampleRoster();
    revoked.revoked.push_back(envelope::deviceIdOf(revoked.desks.back().signing));
    CHECK(refused(revoked));
    Roster unnumbered = sampleRoster();
    unnumbered.number = 0;
    CHECK(refused(unnumbered));
}
