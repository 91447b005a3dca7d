// Damage is called damage: no byte of any file of a vault, changed or cut, is taken for a wrong
// passphrase, opens to something else, or passes an inspection unseen.

#include "tests/core/vault/filled_vault.h"

#include <cstdlib>
#include <random>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

/// The files of a closed vault, to damage over and over.
struct Original {
    test::FilledVault vault;
    crypto::Secret dataKey = vault.dataKey();
    std::string database = test::contentsOf(vault.path() / "vault.db");
    std::filesystem::path file = vault.path() / "vault.db";
    std::string digest = journal::dump(Vault::unlock(vault.path(), test::herons, vault.clock)->state());

    /// A damaged vault either refuses as damaged or shows exactly what it held; both inspections see it.
    void check(const std::string& damaged) const
    {
        for (const char* beside : {"vault.db-wal", "vault.db-shm"})
            std::filesystem::remove(vault.path() / beside);
        test::put(file, damaged);
        CHECK_FALSE(inspect(vault.path(), dataKey).sound());
        const auto opened = Vault::unlock(vault.path(), test::herons, vault.clock);
        if (!opened)
            CHECK(opened.error().reason == Reason::damaged);
        else
            CHECK(journal::dump(opened->state()) == digest);
    }
};

constexpr std::size_t page = 4096;

}  // namespace

TEST_CASE("a changed byte anywhere in the database is damage, never a wrong passphrase", "[vault][errors]")
{
    const Original original;
    REQUIRE(original.database.size() % page == 0);
    REQUIRE(original.database.size() >= 20 * page);
    std::mt19937 random(20270304);
    std::vector<std::size_t> places;
    // The whole of the salt, some of the first page, and each page's first byte, tag and a random one.
    for (std::size_t i = 0; i < 16; ++i)
        places.push_back(i);
    for (std::size_t i = 16; i < page; i += 211)
        places.push_back(i);
    for (std::size_t start = 0; start < original.database.size(); start += page)
        places.insert(places.end(), {start, start + page - 80, start + page - 1, start + random() % page});

    for (const std::size_t place : places) {
        std::string damaged = original.database;
        damaged[place] = static_cast<char>(damaged[place] ^ (1 << random() % 8));
        CAPTURE(place);
        original.check(damaged);
    }
}

TEST_CASE("bytes flipped at random places of the database are damage; EBBLINE_FLIPS says how many, EBBLINE_SEED which", "[vault][errors][damage]")
{
    const Original original;
    const auto given = [](const char* name, unsigned long otherwise) {
        const char* text = std::getenv(name);
        return text && *text ? std::strtoul(text, nullptr, 10) : otherwise;
    };
    const unsigned long seed = given("EBBLINE_SEED", 20'270'305);
    std::mt19937 random(static_cast<std::mt19937::result_type>(seed));
    for (unsigned long flips = given("EBBLINE_FLIPS", 40); flips > 0; --flips) {
        const std::size_t place = random() % original.database.size();
        std::string damaged = original.database;
        damaged[place] = static_cast<char>(damaged[place] ^ (1 << random() % 8));
        CAPTURE(seed, place);
        original.check(damaged);
    }
}

TEST_CASE("a log beside the database that is not its own, stale or foreign, is refused or changes nothing", "[vault][errors][damage]")
{
    const Original original;
    const auto log = original.vault.path() / "vault.db-wal";
    // Stale: from when less had been written. Foreign: of another vault.
    std::string stale, foreign;
    {
        auto open = Vault::unlock(original.vault.path(), test::herons, original.vault.clock);
        REQUIRE(open);
        REQUIRE(open->append({records::EntryRecorded{test::sampleEntry(50)}}, test::secondEvening));
        stale = test::contentsOf(log);
        for (std::uint8_t i = 51; i < 60; ++i)
            REQUIRE(open->append({records::EntryRecorded{test::sampleEntry(i)}}, test::secondEvening));
    }
    const test::FilledVault other;
    {
        auto open = Vault::unlock(other.path(), test::herons, other.clock);
        REQUIRE(open);
        REQUIRE(open->append({records::EntryRecorded{test::sampleEntry(50)}}, test::secondEvening));
        foreign = test::contentsOf(other.path() / "vault.db-wal");
    }
    REQUIRE(stale.size() > page);
    REQUIRE(foreign.size() > page);
    const std::string database = test::contentsOf(original.file);
    const std::string digest = journal::dump(Vault::unlock(original.vault.path(), test::herons, original.vault.clock)->state());

    for (const std::string& wrong : {std::cref(stale), std::cref(foreign)}) {
        const bool isStale = &wrong == &stale;
        CAPTURE(isStale);
        test::put(original.file, database);
        std::filesystem::remove(original.vault.path() / "vault.db-shm");
        test::put(log, wrong);
        // An inspection only looks: it leaves what it finds.
        const auto looked = inspect(original.vault.path(), original.dataKey);
        CHECK((test::contentsOf(original.file) == database));
        const auto opened = Vault::unlock(original.vault.path(), test::herons, original.vault.clock);
        if (!opened)
            CHECK(opened.error().reason == Reason::damaged);
        else
            CHECK((journal::dump(opened->state()) == digest || !looked.sound()));
    }
}

TEST_CASE("a database cut at any page, emptied or gone is damage", "[vault][errors]")
{
    const Original original;
    for (std::size_t length = 0; length < original.database.size(); length += page) {
        CAPTURE(length);
        original.check(original.database.substr(0, length));
    }
    for (const std::size_t length : {std::size_t{1}, std::size_t{100}, page - 1, page + 1, original.database.size() - 1}) {
        CAPTURE(length);
        original.check(original.database.substr(0, length));
    }
    std::filesystem::remove(original.file);
    CHECK(Vault::unlock(original.vault.path(), test::herons, original.vault.clock).error().reason == Reason::damaged);
    CHECK_FALSE(std::filesystem::exists(original.file));
}

TEST_CASE("two pages that changed places are damage", "[vault][errors]")
{
    const Original original;
    const std::size_t pages = original.database.size() / page;
    for (std::size_t i = 1; i < pages; ++i) {
        std::string damaged = original.database;
        const std::size_t other = (i + 1) % pages == 0 ? 1 : (i + 1) % pages;
        std::swap_ranges(damaged.begin() + static_cast<std::ptrdiff_t>(i * page),
                         damaged.begin() + static_cast<std::ptrdiff_t>((i + 1) * page),
                         damaged.begin() + static_cast<std::ptrdiff_t>(other * page));
        CAPTURE(i);
        original.check(damaged);
    }
}

TEST_CASE("the database of another vault is damage, not a wrong passphrase", "[vault][errors]")
{
    const Original original;
    const test::FilledVault other;
    original.check(test::contentsOf(other.path() / "vault.db"));
}

TEST_CASE("a damaged byte at every place of both key files is damage unless the vault still opens", "[vault][errors]")
{
    const test::FilledVault vault;
    const std::string whole = test::contentsOf(vault.path() / "vault.keys");
    REQUIRE(whole.size() == KeySlots::fileSize);
    std::size_t opened = 0, refused = 0;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        std::string damaged = whole;
        damaged[i] = static_cast<char>(damaged[i] ^ 4);
        test::put(vault.path() / "vault.keys", damaged);
        test::put(vault.path() / "vault.keys.previous", damaged);
        std::filesystem::remove(vault.path() / "vault.attempts");
        const auto key = openDataKey(vault.path(), vault.offered(), vault.clock.readings());
        CAPTURE(i);
        if (!key)
            CHECK(key.error().reason == Reason::damaged);
        ++(key ? opened : refused);
    }
    CHECK(opened == KeySlots::fileSize - KeySlots::slotSize);
    CHECK(refused == KeySlots::slotSize);
}
