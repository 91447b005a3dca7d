// Damage is called damage: no byte of any file of a vault, changed or cut, is taken for a wrong
// passphrase, opens to something else, or passes an inspection unseen.

#include "tests/core/vault/filled_vault.h"

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
