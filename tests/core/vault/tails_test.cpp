// Operations that end alike share their end in the file and in memory; everything that reads them sees them whole.

#include "tests/core/vault/filled_vault.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

struct Clinic {
    test::Folder folder;
    clock::ManualClock clock{test::secondEvening.at};

    Vault created() const
    {
        auto vault = Vault::create(folder.path(), Vault::Owner::clinic, test::herons, test::cheapCost, clock);
        REQUIRE(vault);
        return std::move(*vault);
    }
    Vault unlocked() const
    {
        auto vault = Vault::unlock(folder.path(), test::herons, clock);
        REQUIRE(vault);
        return std::move(*vault);
    }
    store::Database database() const
    {
        const auto key = openDataKey(folder.path(), Offered::passphrase(test::herons), clock.readings());
        REQUIRE(key);
        const std::vector<store::Migration> asItIs(5);
        auto opened = store::Database::open(folder.path() / "vault.db", crypto::derive(*key, 1, "eb-vault"), asItIs);
        REQUIRE(opened);
        return std::move(*opened);
    }
    std::int64_t number(std::string_view sql) const
    {
        auto opened = database();
        auto row = opened.prepare(sql);
        REQUIRE(row);
        REQUIRE(row->step().value());
        return row->integer(0);
    }
    Inspection inspected() const
    {
        auto found = inspect(folder.path(), Offered::passphrase(test::herons), clock.readings());
        REQUIRE(found);
        return std::move(*found);
    }
};

Done openCourses(Vault& vault, std::uint8_t first, std::uint8_t last, std::optional<envelope::MailboxId> mailbox = {})
{
    for (std::uint8_t number = first; number <= last; ++number)
        if (const auto done = vault.append({test::openedCourse(number)}, test::secondEvening, mailbox); !done)
            return fail(done.error());
    return {};
}

}  // namespace

TEST_CASE("a hundred courses with one protocol take the room of two protocols", "[vault][tails]")
{
    const Clinic clinic;
    {
        Vault vault = clinic.created();
        REQUIRE(openCourses(vault, 1, 100));
        CHECK(vault.verify());
    }
    const auto protocol = static_cast<std::int64_t>(records::encodeProtocol(triggers::defaultProtocol()).size());
    // The first stands whole, the rest share; by chance a few tails may differ by a byte or two in front.
    CHECK(clinic.number("SELECT sum(length(bytes)) FROM operation") < 2 * protocol + 100 * 400);
    CHECK(clinic.number("SELECT count(*) FROM tail") <= 3);
    CHECK(clinic.number("SELECT count(*) FROM operation WHERE tail IS NOT NULL") == 99);
}

TEST_CASE("after unlocking every operation is what it was, and later ones share on", "[vault][tails]")
{
    const Clinic clinic;
    std::vector<journal::Operation> before;
    bytes::Array<32> digest{};
    {
        Vault vault = clinic.created();
        REQUIRE(openCourses(vault, 1, 10));
        before = vault.operations();
        digest = journal::digest(vault.state());
    }
    {
        Vault vault = clinic.unlocked();
        CHECK(vault.operations() == before);
        CHECK(journal::digest(vault.state()) == digest);
        REQUIRE(openCourses(vault, 11, 11));
        CHECK(vault.verify());
    }
    CHECK(clinic.number("SELECT count(*) FROM operation WHERE tail IS NULL") == 1);
    CHECK(clinic.inspected().sound());
}

TEST_CASE("what goes to a phone or to another desk goes whole", "[vault][tails]")
{
    const Clinic clinic;
    Vault vault = clinic.created();
    REQUIRE(openCourses(vault, 1, 3, test::someMailbox));
    const auto written = vault.operations();

    CHECK(vault.unsealed(test::someMailbox).value() == written);
    CHECK(vault.untold(test::idOf<envelope::MailboxTag>(9), 10).value() == written);
    CHECK(vault.disputed(written)->empty());

    // The other one shares in its own way, and has the same.
    const Clinic other;
    Vault desk = other.created();
    REQUIRE(desk.accept(test::someMailbox, vault.device(), {1, envelope::hashOf(bytes::viewOf("one"))}, written));
    CHECK(desk.operations() == written);
    CHECK(desk.disputed(written)->empty());
    CHECK(desk.verify());
    CHECK(other.unlocked().operations() == written);
}

TEST_CASE("a transaction that is taken back leaves no operation without its end", "[vault][tails]")
{
    const Clinic clinic;
    {
        Vault vault = clinic.created();
        REQUIRE(openCourses(vault, 1, 1));
        journal::Operation foreign = vault.operations().front();
        foreign.id = {test::idOf<envelope::DeviceTag>(44), 1};
        journal::Operation clash = vault.operations().front();
        clash.stamp.bits += 1;
        // The first of them brings the tail; the second stands under a name that is taken, so that neither is kept.
        CHECK_FALSE(vault.accept(test::someMailbox, test::idOf<envelope::DeviceTag>(44), {1, {}}, {foreign, clash}));
        REQUIRE(openCourses(vault, 2, 4));
        CHECK(vault.verify());
    }
    CHECK(clinic.inspected().sound());
    CHECK(clinic.unlocked().operations().size() == 4);
    CHECK(clinic.number("SELECT count(*) FROM operation o WHERE tail IS NOT NULL AND NOT EXISTS"
                        " (SELECT 1 FROM tail t WHERE t.hash = o.tail)") == 0);
}

TEST_CASE("an end that was changed or lost is damage, and is named", "[vault][tails][errors]")
{
    const Clinic clinic;
    {
        Vault vault = clinic.created();
        REQUIRE(openCourses(vault, 1, 5));
    }
    SECTION("changed")
    {
        REQUIRE(clinic.database().run("UPDATE tail SET bytes = CAST(substr(bytes, 1, 500) || x'07' || substr(bytes, 502) AS BLOB)"));
        const Inspection found = clinic.inspected();
        CHECK(std::ranges::count(found.faults, Fault::Kind::operation, &Fault::kind) >= 1);
        CHECK(std::ranges::count(found.faults, Fault::Kind::chain, &Fault::kind) == 1);
    }
    SECTION("lost")
    {
        REQUIRE(clinic.database().run("PRAGMA foreign_keys = OFF; DELETE FROM tail"));
        CHECK(std::ranges::count(clinic.inspected().faults, Fault::Kind::operation, &Fault::kind) == 4);
        CHECK(Vault::unlock(clinic.folder.path(), test::herons, clinic.clock).error().reason == Reason::damaged);
    }
}
