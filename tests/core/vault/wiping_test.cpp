// After locking, no copy of a key is left anywhere in the program's memory: the test reads all of it.

#include "tests/core/vault/filled_vault.h"
#include "tests/core/vault/needle.h"

#include "core/bytes/text.h"

using namespace ebbline;
using namespace ebbline::vault;
using test::Needle;
using test::needsPlainMemory;

TEST_CASE("a secret that is let go leaves no copy", "[vault]")
{
    needsPlainMemory();
    REQUIRE(crypto::initialise());
    auto secret = std::optional(crypto::Secret::random());
    const Needle needle(secret->view());

    CHECK(needle.copies() == 1);
    {
        auto moved = std::optional(std::move(*secret));
        CHECK(needle.copies() == 1);
        const crypto::Secret clone = moved->clone();
        CHECK(needle.copies() == 2);
    }
    secret.reset();
    CHECK(needle.copies() == 0);
}

TEST_CASE("after locking no key of the vault is left in memory", "[vault]")
{
    needsPlainMemory();
    const test::FilledVault vault;
    std::vector<std::pair<std::string, Needle>> needles;
    {
        const crypto::Secret dataKey = vault.dataKey();
        const crypto::Secret databaseKey = crypto::derive(dataKey, 1, "eb-vault");
        std::string hex = bytes::toHex(databaseKey.view());
        needles.emplace_back("data key", Needle(dataKey.view()));
        needles.emplace_back("database key", Needle(databaseKey.view()));
        needles.emplace_back("database key as text", Needle(bytes::viewOf(hex)));
        crypto::wipe({reinterpret_cast<std::uint8_t*>(hex.data()), hex.size()});
    }
    {
        const auto open = Vault::unlock(vault.path(), test::herons, vault.clock);
        REQUIRE(open);
        needles.emplace_back("signing key", Needle(open->signingKey().seed()));
        needles.emplace_back("box key", Needle(open->boxKey().secret()));
        // The search does find what is there.
        CHECK(needles[1].second.copies() >= 1);
        CHECK(needles[3].second.copies() >= 1);
        CHECK(needles[4].second.copies() >= 1);
        CHECK(needles[0].second.copies() == 0);
    }

    for (const auto& [name, needle] : needles) {
        CAPTURE(name);
        CHECK(needle.copies() == 0);
    }
}

TEST_CASE("a recovery code and its slot leave no copy either", "[vault]")
{
    needsPlainMemory();
    const test::FilledVault vault;
    std::optional<Needle> needle;
    {
        const auto code = renewRecoveryCode(vault.path(), vault.offered(), test::cheapCost, vault.clock.readings());
        REQUIRE(code);
        needle.emplace(code->view());
        CHECK(needle->copies() >= 1);
    }
    CHECK(needle->copies() == 0);
}
