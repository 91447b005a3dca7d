// The vault: what is acknowledged is durable, what belongs together commits together, and a
// full disk loses nothing.

#include "core/vault/vault.h"

#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;
using namespace std::chrono_literals;

namespace {

constexpr crypto::StretchCost cheap{1, 8 * 1024};
const bytes::View passphrase = bytes::viewOf("three calm herons wade");
const auto evening = test::momentAt("2027-03-02T20:00:00+01:00");

struct Phone {
    test::Folder folder;
    clock::ManualClock clock{evening.at};

    Vault created(Vault::Owner owner = Vault::Owner::patient)
    {
        auto vault = Vault::create(folder.path(), owner, passphrase, cheap, clock);
        REQUIRE(vault);
        return std::move(*vault);
    }
    Vault unlocked()
    {
        auto vault = Vault::unlock(folder.path(), passphrase, clock);
        REQUIRE(vault);
        return std::move(*vault);
    }
};

const records::Body entry = records::EntryRecorded{test::sampleEntry()};
const auto mailbox = test::idOf<envelope::MailboxTag>(8);

std::string contents(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

}  // namespace

TEST_CASE("what was appended is there after unlocking again", "[vault]")
{
    Phone phone;
    std::string dump;
    envelope::DeviceId device;
    {
        Vault vault = phone.created();
        REQUIRE(vault.append({entry}, evening, mailbox));
        dump = journal::dump(vault.state());
        device = vault.device();
    }

    Vault again = phone.unlocked();

    CHECK(again.device() == device);
    CHECK(journal::dump(again.state()) == dump);
    CHECK(again.state().courses.at(test::sampleCourse).entries.size() == 1);
    CHECK(again.verify());
}

TEST_CASE("a wrong passphrase is called wrong and a scratched file damaged", "[vault]")
{
    Phone phone;
    { Vault vault = phone.created(); }

    CHECK(Vault::unlock(phone.folder.path(), bytes::viewOf("wrong"), phone.clock).error().reason == Reason::wrongKey);

    std::ofstream(phone.folder.path() / "vault.db", std::ios::trunc) << std::string(8192, 'x');
    std::filesystem::remove(phone.folder.path() / "vault.db-wal");
    CHECK(Vault::unlock(phone.folder.path(), passphrase, phone.clock).error().reason == Reason::damaged);
}

TEST_CASE("after five wrong passphrases even the right one has to wait", "[vault]")
{
    Phone phone;
    { Vault vault = phone.created(); }
    for (int i = 0; i < 5; ++i)
        CHECK_FALSE(Vault::unlock(phone.folder.path(), bytes::viewOf("wrong"), phone.clock));

    CHECK(Vault::unlock(phone.folder.path(), passphrase, phone.clock).error().reason == Reason::tooSoon);
    phone.clock.advance(30s);
    CHECK(Vault::unlock(phone.folder.path(), passphrase, phone.clock));
}

TEST_CASE("a second vault is never made over the first", "[vault]")
{
    Phone phone;
    { Vault vault = phone.created(); }

    CHECK(Vault::create(phone.folder.path(), Vault::Owner::patient, passphrase, cheap, phone.clock).error().reason
          == Reason::alreadyExists);
}

TEST_CASE("nothing a patient wrote can be read from the folder", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();
    REQUIRE(vault.append({entry}, evening, mailbox));
    REQUIRE(vault.keep("draft", bytes::viewOf("Zieht beim Kauen")));

    std::size_t files = 0;
    for (const auto& file : std::filesystem::directory_iterator(phone.folder.path())) {
        ++files;
        CAPTURE(file.path().filename());
        CHECK(contents(file.path()).find("Zieht beim") == std::string::npos);
    }
    CHECK(files >= 2);
}

TEST_CASE("an operation and its place in the outbox are one thing", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();

    REQUIRE(vault.append({entry}, evening, mailbox));
    REQUIRE(vault.append({entry}, evening));

    REQUIRE(vault.unsealed(mailbox));
    CHECK(vault.unsealed(mailbox)->size() == 1);
    CHECK(vault.operations().size() == 2);
}

TEST_CASE("a body out of its bounds is refused and nothing is written", "[vault][errors]")
{
    Phone phone;
    Vault vault = phone.created();
    auto wrong = test::sampleEntry();
    wrong.note = std::string(5000, 'x');

    CHECK_FALSE(vault.append({entry, records::EntryRecorded{wrong}}, evening, mailbox));
    CHECK(vault.operations().empty());
    CHECK(vault.unsealed(mailbox)->empty());
}

TEST_CASE("a sealed envelope takes its operations out of the outbox and waits for its acknowledgement", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();
    const auto ids = vault.append({entry}, evening, mailbox);
    REQUIRE(ids);

    REQUIRE(vault.storeSealed(mailbox, 1, bytes::viewOf("sealed"), *ids));

    CHECK(vault.unsealed(mailbox)->empty());
    CHECK(vault.carriedBy(ids->front()) == 1);
    CHECK(vault.outgoing(mailbox)->size() == 1);
    CHECK(vault.ownHead(mailbox)->sequence == 1);
    CHECK(vault.ownHead(mailbox)->hash == envelope::hashOf(bytes::viewOf("sealed")));

    // The hub has it: nothing changes for the patient.
    REQUIRE(vault.markAtHub(mailbox, 1));
    CHECK(vault.outgoing(mailbox)->front().atHub);
    CHECK(vault.delivered(mailbox).sequence == 0);

    REQUIRE(vault.acknowledged(mailbox, 1, evening.at + 5min));
    CHECK(vault.outgoing(mailbox)->empty());
    CHECK(vault.delivered(mailbox).at == evening.at + 5min);
    CHECK(vault.deliveredAt(mailbox, 1) == evening.at + 5min);
    CHECK_FALSE(vault.deliveredAt(mailbox, 2));

    // An older acknowledgement takes nothing back.
    REQUIRE(vault.acknowledged(mailbox, 0, evening.at + 9min));
    CHECK(vault.delivered(mailbox).sequence == 1);
}

TEST_CASE("a peer's operations and the cursor move together, and twice is once", "[vault]")
{
    Phone phone, clinic;
    Vault source = clinic.created(Vault::Owner::clinic);
    REQUIRE(source.append({entry}, evening, mailbox));
    Vault vault = phone.created();
    const Cursor head{1, envelope::hashOf(bytes::viewOf("one"))};

    REQUIRE(vault.accept(mailbox, source.device(), head, source.operations()));
    REQUIRE(vault.accept(mailbox, source.device(), head, source.operations()));

    CHECK(vault.operations().size() == 1);
    CHECK(vault.peerHead(mailbox, source.device())->sequence == 1);
    CHECK(journal::digest(vault.state()) == journal::digest(source.state()));
    CHECK(vault.verify());
}

TEST_CASE("another operation under a number that is taken is refused, whichever was stamped first", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();
    Phone other;
    const Vault source = [&] {
        Vault made = other.created();
        REQUIRE(made.append({records::EntryRecorded{test::sampleEntry(1)}}, evening, {}));
        REQUIRE(made.append({records::EntryRecorded{test::sampleEntry(2)}}, evening, {}));
        return made;
    }();
    const auto mailbox = test::idOf<envelope::MailboxTag>(9);
    const auto written = source.operations();
    REQUIRE(vault.accept(mailbox, source.device(), {1, {}}, written));
    const auto before = vault.operations();

    for (const int stamp : {-1, 0, 1}) {
        CAPTURE(stamp);
        journal::Operation changed = written.back();
        changed.stamp.bits += static_cast<std::uint64_t>(static_cast<std::int64_t>(stamp));
        changed.body = records::encode(records::EntryRecorded{test::sampleEntry(3)});
        CHECK(vault.disputed({written.front(), changed})->size() == 1);
        CHECK(vault.accept(mailbox, source.device(), {2, {}}, {changed}).error().reason == Reason::alreadyExists);
        CHECK(vault.operations() == before);
        CHECK(vault.peerHead(mailbox, source.device())->sequence == 1);
    }
    CHECK(phone.unlocked().operations() == before);
}

TEST_CASE("what cannot be accepted is kept with its reason, once", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();

    REQUIRE(vault.quarantine(mailbox, bytes::viewOf("odd"), {Reason::outOfOrder, "a gap"}));
    REQUIRE(vault.quarantine(mailbox, bytes::viewOf("odd"), {Reason::outOfOrder, "a gap"}));

    CHECK(vault.quarantined(mailbox) == 1);
}

TEST_CASE("a kept value is replaced and removed", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();

    REQUIRE(vault.keep("draft", bytes::viewOf("a")));
    REQUIRE(vault.keep("draft", bytes::viewOf("b")));
    CHECK(vault.kept("draft") == bytes::Bytes{'b'});
    REQUIRE(vault.keep("draft", {}));
    CHECK_FALSE(vault.kept("draft"));
}

TEST_CASE("a draft goes with the operation that finishes it, or stays with its refusal", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();
    REQUIRE(vault.keep("draft", bytes::viewOf("a")));
    REQUIRE(vault.keep("other", bytes::viewOf("b")));
    auto wrong = test::sampleEntry();
    wrong.note = std::string(5000, 'x');

    CHECK_FALSE(vault.append({records::EntryRecorded{wrong}}, evening, mailbox, {}, {"draft"}));
    CHECK(vault.kept("draft") == bytes::Bytes{'a'});

    REQUIRE(vault.append({entry}, evening, mailbox, {}, {"draft", "never kept"}));
    CHECK(vault.kept("draft").error().reason == Reason::notFound);
    CHECK(vault.kept("other") == bytes::Bytes{'b'});
}

TEST_CASE("links survive and the clinic's keys stay the same", "[vault]")
{
    Phone clinic;
    crypto::SigningPublicKey root;
    {
        Vault vault = clinic.created(Vault::Owner::clinic);
        root = vault.clinicRoot().publicKey();
        Link link;
        link.mailbox = mailbox;
        link.course = test::sampleCourse;
        link.hub = "hub.example:8443";
        link.clinicRoot = root;
        REQUIRE(vault.putLink(link));
    }

    Vault vault = clinic.unlocked();

    CHECK(vault.owner() == Vault::Owner::clinic);
    CHECK(vault.clinicRoot().publicKey() == root);
    REQUIRE(vault.links()->size() == 1);
    CHECK(vault.links()->front().hub == "hub.example:8443");
    CHECK(vault.links()->front().course == test::sampleCourse);
}

TEST_CASE("stamps of a device grow although its clock was turned back", "[vault]")
{
    Phone phone;
    Vault vault = phone.created();
    REQUIRE(vault.append({entry}, evening));
    phone.clock.advance(-48h);
    REQUIRE(vault.append({entry}, evening));

    const auto operations = vault.operations();
    CHECK(operations[0].id.number == 1);
    CHECK(operations[1].id.number == 2);
    CHECK(operations[0].stamp < operations[1].stamp);
}

TEST_CASE("a set-up that was interrupted before the keys were stored can be begun again", "[vault]")
{
    Phone phone;
    { Vault vault = phone.created(); }
    for (const char* name : {"vault.keys", "vault.keys.previous"})
        std::filesystem::remove(phone.folder.path() / name);
    const std::string left = contents(phone.folder.path() / "vault.db");

    CHECK_FALSE(Vault::exists(phone.folder.path()));
    { Vault vault = phone.created(); }
    CHECK(phone.unlocked().verify());
    // Nothing is thrown away: should the keys turn up, the old database is there.
    CHECK(contents(phone.folder.path() / "vault.db.without-keys-1") == left);
}

TEST_CASE("others on this computer cannot read a vault's files", "[vault]")
{
    Phone phone;
    const Vault vault = phone.created();
    std::size_t seen = 0;
    for (const auto& file : std::filesystem::directory_iterator(phone.folder.path())) {
        CAPTURE(file.path().filename());
        CHECK((file.status().permissions() & (std::filesystem::perms::group_all | std::filesystem::perms::others_all))
              == std::filesystem::perms::none);
        ++seen;
    }
    CHECK(seen >= 3);
}
