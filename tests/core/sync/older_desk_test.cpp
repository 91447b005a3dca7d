// A desk that was put back to an older copy: it learns it from its colleague, says so, and the colleague shows it.

#include "core/bytes/text.h"
#include "core/sync/messages.h"
#include "core/sync/older_copy.h"
#include "core/sync/outlook.h"
#include "tests/core/sync/two_desks.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

struct Clinic : test::TwoDesks {
    std::filesystem::path aside = world.folder.path() / "second-before";

    Clinic()
    {
        enlist();
        everybody();
    }
    void keepCopy() { std::filesystem::copy(world.folder.path() / "second", aside, std::filesystem::copy_options::recursive); }
    void putBack()
    {
        auto older = desk::Desk::unlock(aside, test::passphrase, world.clock, world.zone);
        REQUIRE(older.has_value());
        second = std::move(*older);
        second.setPerson("Dr. Jonas Feld");
    }
    sync::OtherDesks atFirst() { return *sync::otherDesksOf(world.desk.vault()); }
    sync::OtherDesks atSecond() { return *sync::otherDesksOf(second.vault()); }
};

}  // namespace

TEST_CASE("a desk that was put back to an older copy is told of on both desks, whether the hub remembers or not", "[sync][clinic]")
{
    const bool forgetful = GENERATE(false, true);
    CAPTURE(forgetful);
    Clinic clinic;
    clinic.keepCopy();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Rest with the head raised."));
    clinic.everybody();
    CHECK(clinic.atFirst().older == 0);
    CHECK(clinic.atSecond().olderHere == 0);
    if (forgetful)
        (void)clinic.world.service.tidy(clinic.world.clock.now() + 24h * 9);

    clinic.putBack();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Sleep on your back."));
    for (int i = 0; i < 4; ++i) {
        if (i == 1)
            clinic.world.clock.advance(sync::heartbeatEvery + 1h);
        clinic.everybody();
    }
    CHECK(clinic.atSecond().olderHere == 1);
    CHECK(clinic.atFirst().older == 1);
    // It is a word beside the chain: nothing counts as missing before it.
    CHECK(clinic.atFirst().withheld == 0);
    CHECK(clinic.atFirst().olderHere == 0);
    CHECK(clinic.atSecond().older == 0);

    // It ends with that desk.
    auto channel = clinic.world.desk.vault().channels()->front();
    channel.ended = true;
    REQUIRE(clinic.world.desk.vault().putChannel(channel));
    CHECK(clinic.atFirst().older == 0);
}

TEST_CASE("a desk says once a day that it is an older copy, and not with every run", "[sync][clinic]")
{
    Clinic clinic;
    clinic.keepCopy();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Rest with the head raised."));
    clinic.everybody();
    clinic.putBack();
    REQUIRE(clinic.second.writeMessage(clinic.course, "Sleep on your back."));
    int said = 0;
    clinic.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        said += request.method == "PUT" && request.path.ends_with('/' + std::to_string(sync::olderCopyNumber)) ? 1 : 0;
    };
    clinic.everybody();
    clinic.world.clock.advance(sync::heartbeatEvery + 1h);
    clinic.everybody(4);
    const int before = said;
    REQUIRE(before > 0);
    clinic.everybody(3);
    CHECK(said == before);
    clinic.world.clock.advance(sync::heartbeatEvery + 1h);
    clinic.everybody(3);
    CHECK(said == before + 1);
    CHECK(clinic.atFirst().older == 1);
}

TEST_CASE("what says that a desk is an older copy is read as it was written, and one that is cut or longer is refused", "[sync]")
{
    const auto word = sync::pack(sync::OlderCopy{41});
    const auto read = sync::unpackStatement(word);
    REQUIRE(read.has_value());
    REQUIRE(std::holds_alternative<sync::OlderCopy>(*read));
    CHECK(std::get<sync::OlderCopy>(*read).own == 41);
    auto longer = word;
    longer.push_back(0);
    CHECK(sync::unpackStatement(longer).error().reason == Reason::malformed);
    CHECK(sync::unpackStatement(bytes::View(word).first(word.size() - 1)).error().reason == Reason::malformed);
}

namespace {

/// The next run of the desk, or of the phone, finds this beside what the hub holds in that mailbox.
void showBeside(test::ClinicWorld& world, const envelope::MailboxId& mailbox, const bytes::Bytes& sealed)
{
    const std::string path = "/v1/m/" + bytes::toHex(mailbox.view());
    world.courier.tamper = [path, sealed](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method != "GET" || request.path != path)
            return;
        const bytes::Bytes piece = bytes::Writer().block(sealed).bytes();
        response.body.insert(response.body.end(), piece.begin(), piece.end());
    };
}

}  // namespace

TEST_CASE("that a desk is an older copy counts between desks, under its number and in its form alone", "[sync][clinic][adversarial]")
{
    Clinic clinic;
    clinic.world.syncDesk();
    clinic.world.syncPhone(clinic.phone);
    auto& first = clinic.world.desk.vault();
    auto& second = clinic.second.vault();
    const auto channel = second.channels()->front();
    const auto head = *second.ownHead(channel.mailbox);
    REQUIRE(head.sequence == first.peerHead(channel.mailbox, second.device())->sequence);
    const auto inChannel = [&](std::uint64_t sequence, const bytes::Bytes& says) {
        const auto sealed = envelope::seal({envelope::Kind::statement, channel.mailbox, second.device(), sequence, head.hash, 1}, second.signingKey(), {channel.peerBox}, says);
        REQUIRE(sealed);
        return *sealed;
    };
    const auto keptAside = [&](const bytes::Bytes& sealed) {
        const auto before = first.quarantined(channel.mailbox);
        showBeside(clinic.world, channel.mailbox, sealed);
        clinic.world.syncDesk();
        CHECK(first.quarantined(channel.mailbox) == before + 1);
        CHECK(clinic.atFirst().older == 0);
        CHECK(first.peerHead(channel.mailbox, second.device())->sequence == head.sequence);
    };
    const auto word = sync::pack(sync::OlderCopy{head.sequence});

    SECTION("as it is said, it counts")
    {
        showBeside(clinic.world, channel.mailbox, inChannel(sync::olderCopyNumber, word));
        clinic.world.syncDesk();
        CHECK(clinic.atFirst().older == 1);
        CHECK(first.quarantined(channel.mailbox) == 0);
    }
    SECTION("at the next number of the chain") { keptAside(inChannel(head.sequence + 1, word)); }
    SECTION("one number below") { keptAside(inChannel(sync::olderCopyNumber - 1, word)); }
    SECTION("one number above") { keptAside(inChannel(sync::olderCopyNumber + 1, word)); }
    SECTION("another statement under its number")
    {
        keptAside(inChannel(sync::olderCopyNumber, sync::pack(sync::SealedAgain{head.sequence + 1, sync::olderCopyNumber - 1})));
    }
    SECTION("longer than it is")
    {
        auto longer = word;
        longer.push_back(0);
        keptAside(inChannel(sync::olderCopyNumber, longer));
    }
    SECTION("from a phone")
    {
        const auto link = *clinic.phone.link();
        auto& phone = clinic.phone.vault();
        for (const bool asOlder : {false, true}) {
            // The hub names a mailbox to a desk only once something new is in it.
            REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 3, 3)));
            clinic.world.syncPhone(clinic.phone);
            const auto own = *phone.ownHead(link.mailbox);
            const std::uint64_t sequence = asOlder ? sync::olderCopyNumber : own.sequence + 1;
            const auto sealed = envelope::seal({envelope::Kind::statement, link.mailbox, phone.device(), sequence, own.hash, link.epoch}, phone.signingKey(), {link.peerBox}, word);
            REQUIRE(sealed);
            const auto before = first.quarantined(link.mailbox);
            showBeside(clinic.world, link.mailbox, *sealed);
            clinic.world.syncDesk();
            CHECK(first.quarantined(link.mailbox) == before + 1);
            CHECK_FALSE(first.standing(link.mailbox)->peerOlder);
            CHECK(first.peerHead(link.mailbox, phone.device())->sequence == own.sequence);
        }
    }
    SECTION("to a phone")
    {
        auto& phone = clinic.phone.vault();
        const auto links = *first.links();
        REQUIRE(links.size() == 1);
        const auto own = *first.ownHead(links[0].mailbox);
        REQUIRE(phone.peerHead(links[0].mailbox, first.device())->sequence == own.sequence);
        for (const std::uint64_t sequence : {own.sequence + 1, sync::olderCopyNumber}) {
            const auto sealed = envelope::seal({envelope::Kind::statement, links[0].mailbox, first.device(), sequence, own.hash, 1}, first.signingKey(), {links[0].peerBox}, word);
            REQUIRE(sealed);
            const auto before = phone.quarantined(links[0].mailbox);
            showBeside(clinic.world, links[0].mailbox, *sealed);
            clinic.world.syncPhone(clinic.phone);
            CHECK(phone.quarantined(links[0].mailbox) == before + 1);
            CHECK_FALSE(phone.standing(links[0].mailbox)->peerOlder);
            CHECK(phone.peerHead(links[0].mailbox, first.device())->sequence == own.sequence);
        }
    }
}

TEST_CASE("what a program that did not know the word kept aside and took for a gap is forgotten once the word is understood", "[sync][clinic]")
{
    Clinic clinic;
    clinic.world.syncDesk();
    auto& first = clinic.world.desk.vault();
    const auto channel = first.channels()->front();
    const auto device = clinic.second.vault().device();
    const auto head = *clinic.second.vault().ownHead(channel.mailbox);
    const auto theirs = clinic.second.vault().channels()->front();
    const auto sealed = envelope::seal({envelope::Kind::statement, channel.mailbox, device, sync::olderCopyNumber, head.hash, 1}, clinic.second.vault().signingKey(), {theirs.peerBox},
                                       sync::pack(sync::OlderCopy{head.sequence}));
    REQUIRE(sealed);
    // As such a program left it.
    REQUIRE(first.noteAhead(channel.mailbox, device, sync::olderCopyNumber));
    REQUIRE(first.quarantine(channel.mailbox, *sealed, {Reason::outOfOrder, "envelope: one before it is missing"}));
    REQUIRE(clinic.atFirst().withheld == 1);

    showBeside(clinic.world, channel.mailbox, *sealed);
    clinic.world.syncDesk();
    CHECK(clinic.atFirst().older == 1);
    CHECK(clinic.atFirst().withheld == 0);
    CHECK(first.quarantined(channel.mailbox) == 0);

    // What really is missing stays missing, whatever was said beside the chain.
    REQUIRE(first.noteAhead(channel.mailbox, device, head.sequence + 9));
    clinic.world.syncDesk();
    CHECK(clinic.atFirst().withheld == 1);
}
