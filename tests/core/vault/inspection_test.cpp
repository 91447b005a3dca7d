// Inspecting a vault: a whole one has no fault, and each way of being broken has its own name.

#include "tests/core/vault/filled_vault.h"

using namespace ebbline;
using namespace ebbline::vault;
using Kind = Fault::Kind;

namespace {

bool has(const Inspection& found, Kind kind)
{
    return std::ranges::count(found.faults, kind, &Fault::kind) > 0;
}

/// What is found after a change to the tables that SQLite itself finds nothing wrong with.
Inspection after(const test::FilledVault& vault, std::string_view sql)
{
    REQUIRE(vault.database().run(sql));
    Inspection found = vault.inspected();
    CHECK_FALSE(has(found, Kind::page));
    CHECK_FALSE(has(found, Kind::structure));
    return found;
}

}  // namespace

TEST_CASE("a whole vault has no fault, and its numbers are told", "[vault]")
{
    const test::FilledVault vault;

    const Inspection found = vault.inspected();

    CHECK(found.faults == std::vector<Fault>{});
    CHECK(found.operations == test::sampleBodies().size() + 20);
    CHECK(found.own == found.operations);
    CHECK(found.courses == 1);
    CHECK(found.waiting == 20);
    CHECK(found.unacknowledged == 3);
    CHECK(found.version == 5);
    const auto opened = Vault::unlock(vault.path(), test::herons, vault.clock);
    REQUIRE(opened);
    CHECK(found.folded == journal::digest(opened->state()));
}

TEST_CASE("a vault can be inspected while a program has it open", "[vault]")
{
    const test::FilledVault vault;
    auto open = Vault::unlock(vault.path(), test::herons, vault.clock);
    REQUIRE(open);
    REQUIRE(open->append({records::EntryRecorded{test::sampleEntry(200)}}, test::secondEvening));

    CHECK(vault.inspected().faults == std::vector<Fault>{});
    CHECK(vault.inspected().operations == open->operations().size());
    CHECK(open->append({records::EntryRecorded{test::sampleEntry(201)}}, test::secondEvening));
}

TEST_CASE("a changed record breaks the chain where it was changed", "[vault][errors]")
{
    const test::FilledVault vault;
    // The last letter of the time zone: the record stays readable.
    const Inspection found = after(vault, "UPDATE operation SET bytes = CAST(substr(bytes, 1, 60) || x'00' || substr(bytes, 62) AS BLOB)"
                                          " WHERE number = 7");

    REQUIRE(has(found, Kind::chain));
    CHECK(std::ranges::find(found.faults, Kind::chain, &Fault::kind)->detail == "operation 7");
}

TEST_CASE("a missing record is a gap, and the chain says so too", "[vault][errors]")
{
    const test::FilledVault vault;
    const Inspection found = after(vault, "DELETE FROM operation WHERE number IN (5, 6)");

    CHECK(std::ranges::count(found.faults, Kind::gap, &Fault::kind) == 2);
    CHECK(has(found, Kind::chain));
}

TEST_CASE("a record cut off at the end of the chain is noticed by its envelope's head", "[vault][errors]")
{
    const test::FilledVault vault;
    CHECK(has(after(vault, "DELETE FROM outgoing WHERE sequence = 2"), Kind::outbox));
    CHECK(has(after(vault, "UPDATE outgoing SET envelope = x'00' WHERE sequence = 3"), Kind::outbox));
}

TEST_CASE("a record in another's place and one that cannot be read are named", "[vault][errors]")
{
    const test::FilledVault vault;
    CHECK(has(after(vault, "UPDATE operation SET bytes = (SELECT bytes FROM operation WHERE number = 2) WHERE number = 3"),
              Kind::operation));
    CHECK(has(after(vault, "UPDATE operation SET bytes = x'ffff' WHERE number = 4"), Kind::operation));
}

TEST_CASE("missing keys of the device and a wrong record of versions are named", "[vault][errors]")
{
    const test::FilledVault vault;
    CHECK(has(after(vault, "UPDATE schema SET version = 7 WHERE version = 2"), Kind::version));
    CHECK(has(after(vault, "DELETE FROM fact WHERE name = 'box'"), Kind::deviceKeys));
}

TEST_CASE("damaged key files, contacts and pages are each told from the others", "[vault][errors]")
{
    {
        const test::FilledVault vault;
        test::scratch(vault.path() / "vault.keys.previous", 9);
        const Inspection found = vault.inspected();
        REQUIRE(found.faults.size() == 1);
        CHECK(found.faults.front().kind == Kind::keyFileBefore);
        // It was mended on the way.
        CHECK(vault.inspected().sound());
    }
    {
        const test::FilledVault vault;
        test::scratch(vault.path() / "open.info", 9);
        CHECK(vault.inspected().faults == std::vector<Fault>{{Kind::openInfo, "open.info"}});
    }
    {
        const test::FilledVault vault;
        const auto size = std::filesystem::file_size(vault.path() / "vault.db");
        test::scratch(vault.path() / "vault.db", size - 2000);
        const Inspection found = vault.inspected();
        REQUIRE(has(found, Kind::page));
        CHECK_FALSE(has(found, Kind::unreadable));
        CHECK(std::ranges::find(found.faults, Kind::page, &Fault::kind)->detail.find(std::to_string(size / 4096))
              != std::string::npos);
    }
    {
        const test::FilledVault vault;
        test::scratch(vault.path() / "vault.db", 100);
        CHECK(has(vault.inspected(), Kind::unreadable));
    }
    {
        const test::FilledVault vault;
        std::filesystem::remove(vault.path() / "vault.db");
        CHECK(has(vault.inspected(), Kind::unreadable));
        CHECK_FALSE(std::filesystem::exists(vault.path() / "vault.db"));
    }
}

TEST_CASE("a wrong passphrase inspects nothing", "[vault][errors]")
{
    const test::FilledVault vault;
    CHECK(inspect(vault.path(), Offered::passphrase(bytes::viewOf("wrong")), vault.clock.readings()).error().reason
          == Reason::wrongKey);
    const test::Folder empty;
    CHECK(inspect(empty.path(), vault.offered(), vault.clock.readings()).error().reason == Reason::notFound);
    CHECK(std::filesystem::is_empty(empty.path()));
}
