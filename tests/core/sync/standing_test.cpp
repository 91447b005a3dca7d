// What syncing does when envelopes are missing, come twice, come changed, or when one side is an older copy.

#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

namespace {

bool isPull(const mailbox::Request& request) { return request.method == "GET" && request.path.starts_with("/v1/m/"); }
bool isPut(const mailbox::Request& request) { return request.method == "PUT" && request.path.starts_with("/v1/m/"); }

std::vector<bytes::Bytes> piecesOf(const bytes::Bytes& body)
{
    std::vector<bytes::Bytes> pieces;
    bytes::Reader reader(body);
    while (reader.left() > 0) {
        const bytes::View piece = reader.block(envelope::maximumEnvelope);
        pieces.emplace_back(piece.begin(), piece.end());
    }
    return pieces;
}

bytes::Bytes joined(const std::vector<bytes::Bytes>& pieces)
{
    bytes::Writer out;
    for (const auto& piece : pieces)
        out.block(piece);
    return std::move(out).bytes();
}

struct Pair {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    envelope::MailboxId mailbox = phone.link()->mailbox;

    Pair() { world.syncDesk(); }  // the phone's acknowledgement of its course
    void record() { REQUIRE(phone.record(world.entryOf(phone, 3, 2))); }
    EntryState::Place place() { return phone.history().front().state.place; }
    vault::Standing atDesk() { return *world.desk.vault().standing(mailbox); }
    vault::Standing atPhone() { return *phone.vault().standing(mailbox); }
};

}  // namespace

TEST_CASE("an envelope that the hub lost after taking it is offered again and arrives", "[sync]")
{
    Pair pair;
    pair.record();
    pair.world.courier.swallow = isPut;
    CHECK(pair.world.syncPhone(pair.phone).envelopesSent == 1);
    pair.world.courier.swallow = {};
    pair.world.syncDesk();
    CHECK(pair.place() == EntryState::Place::savedHere);
    CHECK(pair.world.syncPhone(pair.phone).envelopesSent == 0);

    // The entry, and the acknowledgement from before, which nobody has acknowledged either.
    pair.world.clock.advance(sync::offerAgainAfter + 1min);
    CHECK(pair.world.syncPhone(pair.phone).envelopesSent == 2);
    pair.world.syncDesk();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.place() == EntryState::Place::withClinic);
}

TEST_CASE("a missing envelope shows until it comes, and nothing is kept aside afterwards", "[sync]")
{
    Pair pair;
    for (int i = 0; i < 3; ++i) {
        pair.record();
        pair.world.syncPhone(pair.phone);
    }
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        auto pieces = piecesOf(response.body);
        if (isPull(request) && pieces.size() == 3) {
            pieces.erase(pieces.begin());
            response.body = joined(pieces);
        }
    };
    const auto report = pair.world.syncDesk();
    CHECK(report.gapSeen);
    CHECK(report.quarantined == 2);
    CHECK(pair.atDesk().gap);
    CHECK(pair.world.syncDesk().quarantined == 0);  // the same two are no news

    pair.world.courier.tamper = {};
    CHECK_FALSE(pair.world.syncDesk().gapSeen);
    CHECK_FALSE(pair.atDesk().gap);
    CHECK(pair.world.desk.vault().quarantined(pair.mailbox) == 0);
    CHECK(pair.world.desk.course(pair.course)->summary.unopened == 3);
}

TEST_CASE("envelopes in any order are taken in theirs", "[sync]")
{
    Pair pair;
    for (int i = 0; i < 4; ++i) {
        pair.record();
        pair.world.syncPhone(pair.phone);
    }
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (isPull(request)) {
            auto pieces = piecesOf(response.body);
            std::ranges::reverse(pieces);
            response.body = joined(pieces);
        }
    };
    const auto report = pair.world.syncDesk();
    CHECK(report.operationsReceived == 4);
    CHECK_FALSE(report.gapSeen);
    CHECK(report.quarantined == 0);
}

TEST_CASE("an answer that is cut off, or far too large, is said to be", "[sync]")
{
    Pair pair;
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (isPull(request))
            response.body.pop_back();
    };
    auto report = pair.world.syncDesk();
    CHECK(report.garbled == 1);
    CHECK(report.problem->reason == Reason::malformed);
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (isPull(request))
            response.body.assign(3 * mailbox::maximumAnswer, 0);
    };
    report = pair.world.syncDesk();
    CHECK(report.garbled == 1);
    CHECK(report.quarantined == 0);
}

TEST_CASE("garbage cannot fill the vault", "[sync]")
{
    Pair pair;
    std::uint8_t round = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!isPull(request))
            return;
        bytes::Writer out;
        for (int i = 0; i < 100; ++i)
            out.block(bytes::Writer().u8(round).u32(static_cast<std::uint32_t>(i)).raw(bytes::Bytes(300, 9)).bytes());
        response.body = std::move(out).bytes();
    };
    for (round = 0; round < 4; ++round)
        CHECK(pair.world.syncPhone(pair.phone).quarantined == 100);
    CHECK(pair.phone.vault().quarantined(pair.mailbox) == vault::Vault::mostQuarantined);
    CHECK(pair.atPhone().refused == 400);
}

TEST_CASE("a fork for which there is no room any more is not answered in every run", "[sync]")
{
    Pair pair;
    pair.record();
    pair.world.syncPhone(pair.phone);
    pair.world.syncDesk();
    const auto& phone = pair.phone.vault();
    const auto forked = envelope::seal({envelope::Kind::operations, pair.mailbox, phone.device(), 2, {}, 1}, phone.signingKey(),
                                       {pair.world.desk.vault().clinicEpoch().publicKey()}, bytes::viewOf("another story"));
    REQUIRE(forked);
    bool garbage = true;
    std::uint8_t round = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!isPull(request))
            return;
        bytes::Writer out;
        for (int i = 0; garbage && i < 100; ++i)
            out.block(bytes::Writer().u8(round).u32(static_cast<std::uint32_t>(i)).raw(bytes::Bytes(300, 9)).bytes());
        if (!garbage)
            out.block(*forked);
        response.body = std::move(out).bytes();
    };
    pair.record();  // so that the desk looks into the mailbox
    for (round = 0; round < 3; ++round) {
        pair.world.syncPhone(pair.phone);
        pair.world.syncDesk();
    }
    REQUIRE(pair.world.desk.vault().quarantined(pair.mailbox) == vault::Vault::mostQuarantined);
    garbage = false;
    std::size_t answers = 0;
    for (int i = 0; i < 3; ++i) {
        const auto report = pair.world.syncDesk();
        CHECK(report.forkSeen);
        answers += report.envelopesSent;
    }
    CHECK(answers == 0);
    CHECK(pair.atDesk().fork);
}

TEST_CASE("a hub that names an impossible time is refused, and nothing overflows", "[sync]")
{
    Pair pair;
    pair.record();
    pair.world.courier.tamper = [](const mailbox::Request&, mailbox::Response& response) {
        response = {401, {}, 0, "9223372036854775807"};
    };
    CHECK(pair.world.syncPhone(pair.phone).problem->reason == Reason::refused);
}

TEST_CASE("a phone put back to an older copy learns it, and nothing passes for delivered", "[sync]")
{
    Pair pair;
    const auto home = pair.world.folder.path() / "phone0";
    const auto aside = pair.world.folder.path() / "aside";
    const auto reopen = [&] {
        pair.world.phones.front() = std::make_unique<patient::Diary>(
            *patient::Diary::unlock(home, test::passphrase, pair.world.clock, pair.world.zone));
    };
    pair.world.phones.front().reset();
    std::filesystem::copy(home, aside, std::filesystem::copy_options::recursive);
    reopen();
    patient::Diary* phone = pair.world.phones.front().get();
    REQUIRE(phone->record(pair.world.entryOf(*phone, 5, 5)));
    pair.world.syncPhone(*phone);
    pair.world.syncDesk();
    pair.world.syncPhone(*phone);
    REQUIRE(phone->history().front().state.place == EntryState::Place::withClinic);

    const bool forgetful = GENERATE(false, true);
    CAPTURE(forgetful);
    if (forgetful)
        (void)pair.world.service.tidy(pair.world.clock.now() + 24h * 9);  // the hub dropped what was acknowledged
    pair.world.phones.front().reset();
    std::filesystem::remove_all(home);
    std::filesystem::copy(aside, home, std::filesystem::copy_options::recursive);
    reopen();
    phone = pair.world.phones.front().get();
    REQUIRE(phone->record(pair.world.entryOf(*phone, 1, 1)));
    // Where the hub holds nothing old any more, it shows with the next sign of life, within a day.
    sync::Report last;
    bool forkAtDesk = false;
    for (int i = 0; i < 4; ++i) {
        if (i == 1)
            pair.world.clock.advance(sync::heartbeatEvery + 1h);
        last = pair.world.syncPhone(*phone);
        forkAtDesk = pair.world.syncDesk().forkSeen || forkAtDesk;
    }

    CHECK(last.rolledBack);
    CHECK(phone->vault().standing(pair.mailbox)->rolledBack);
    CHECK((forkAtDesk || !forgetful));
    CHECK(phone->history().front().state.place == EntryState::Place::savedHere);
    const auto course = pair.world.desk.course(pair.course);
    CHECK(course->state->entries.size() == 1);  // the one from before
}

TEST_CASE("silence and missing acknowledgements show after a day, and a sign of life ends them", "[sync]")
{
    Pair pair;
    pair.record();
    CHECK(pair.world.syncPhone(pair.phone).unproved == 0);
    pair.world.clock.advance(sync::longestSilence + 1min);
    pair.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (isPull(request))
            response.body.clear();
    };
    auto report = pair.world.syncPhone(pair.phone);
    CHECK(report.unproved == 1);
    CHECK(report.silent == 1);
    CHECK(pair.world.syncDesk().silent == 1);

    // The hub behaves again: what the phone sent, its sign of life among it, reaches the desk; and back.
    pair.world.courier.tamper = {};
    report = pair.world.syncDesk();
    CHECK(report.silent == 0);
    CHECK(report.envelopesReceived == 2);
    report = pair.world.syncPhone(pair.phone);
    CHECK(report.unproved == 0);
    CHECK(report.silent == 0);

    // A day without anything to say: both still hear from each other.
    for (int day = 0; day < 3; ++day) {
        pair.world.clock.advance(sync::heartbeatEvery + 1h);
        CHECK(pair.world.syncPhone(pair.phone).silent == 0);
        CHECK(pair.world.syncDesk().envelopesReceived == 1);
        CHECK(pair.world.syncPhone(pair.phone).envelopesReceived == 1);
    }
}
