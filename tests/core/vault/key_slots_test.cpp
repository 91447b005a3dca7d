// Key slots: several ways to one data key, a wrong passphrase told from damage, and no moment
// at which a crash could lose the key. Layout: docs/formats/vault.md.

#include "core/vault/key_slots.h"

#include "tests/core/vault/folder.h"

#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

/// Far below the floor of real use; the cost is not what these tests are about.
constexpr crypto::StretchCost cheap{1, 8 * 1024};

struct Made {
    bool ready = crypto::initialise().has_value();
    std::pair<KeySlots, crypto::Secret> made =
        *KeySlots::create(SlotKind::passphrase, bytes::viewOf("a long passphrase"), cheap);
    KeySlots& slots = made.first;
    crypto::Secret& dataKey = made.second;
};

bool same(const Result<crypto::Secret>& unlocked, const crypto::Secret& dataKey)
{
    return unlocked && crypto::equal(unlocked->view(), dataKey.view());
}

}  // namespace

TEST_CASE("the passphrase gives the data key back, also after storing", "[vault]")
{
    const Made made;

    CHECK(same(made.slots.unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));
    const auto decoded = KeySlots::decode(made.slots.encode());
    REQUIRE(decoded);
    CHECK(made.slots.encode().size() == 480);
    CHECK(same(decoded->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));
}

TEST_CASE("a wrong passphrase is called wrong, not damaged", "[vault]")
{
    const Made made;

    const auto refused = made.slots.unlock(SlotKind::passphrase, bytes::viewOf("a wrong passphrase"));

    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::wrongKey);
    CHECK(made.slots.unlock(SlotKind::recoveryCode, bytes::viewOf("x")).error().reason == Reason::notFound);
}

TEST_CASE("the key store's secret is needed where it was mixed in", "[vault]")
{
    Made made;
    const auto keystore = crypto::randomArray<32>();
    REQUIRE(made.slots.put(made.dataKey, SlotKind::passphraseAndKeystore, bytes::viewOf("482913"), cheap, keystore));

    CHECK(same(made.slots.unlock(SlotKind::passphraseAndKeystore, bytes::viewOf("482913"), keystore), made.dataKey));
    CHECK(made.slots.unlock(SlotKind::passphraseAndKeystore, bytes::viewOf("482913")).error().reason
          == Reason::wrongKey);
    CHECK(made.slots.unlock(SlotKind::passphraseAndKeystore, bytes::viewOf("482913"), crypto::randomArray<32>())
              .error()
              .reason
          == Reason::wrongKey);
}

TEST_CASE("changing the passphrase replaces its slot and leaves the others", "[vault]")
{
    Made made;
    REQUIRE(made.slots.put(made.dataKey, SlotKind::recoveryCode, bytes::viewOf("code"), cheap));

    REQUIRE(made.slots.put(made.dataKey, SlotKind::passphrase, bytes::viewOf("another one"), cheap));

    CHECK(same(made.slots.unlock(SlotKind::passphrase, bytes::viewOf("another one")), made.dataKey));
    CHECK_FALSE(made.slots.unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")));
    CHECK(same(made.slots.unlock(SlotKind::recoveryCode, bytes::viewOf("code")), made.dataKey));
}

TEST_CASE("no damaged byte of a slot opens the vault or passes unnoticed", "[vault]")
{
    const Made made;
    const bytes::Bytes whole = made.slots.encode();

    for (std::size_t i = 0; i < KeySlots::slotSize; ++i) {
        bytes::Bytes damaged = whole;
        damaged[i] ^= 1;
        CAPTURE(i);
        const auto slots = KeySlots::decode(damaged);
        if (!slots) {
            CHECK(slots.error().reason == Reason::damaged);
            continue;
        }
        const auto refused = slots->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase"));
        REQUIRE_FALSE(refused);
        // Cost, salt and commitment decide the key: damage there looks like another passphrase.
        // Behind them the passphrase is known to be right, so it is called damage.
        if (i >= 72 || (i >= 32 && i < 56))
            CHECK(refused.error().reason == Reason::damaged);
    }
}

TEST_CASE("a cost that would exhaust the machine is never tried", "[vault][errors]")
{
    const Made made;
    bytes::Bytes hostile = made.slots.encode();
    hostile[12] = 0x7f;  // two billion KiB

    const auto slots = KeySlots::decode(hostile);

    REQUIRE(slots);
    const auto refused = slots->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::damaged);
}

TEST_CASE("the generation before is used when the newest file is damaged", "[vault]")
{
    const test::Folder folder;
    Made made;
    REQUIRE(made.slots.save(folder.path()));
    REQUIRE(made.slots.put(made.dataKey, SlotKind::passphrase, bytes::viewOf("the second"), cheap));
    REQUIRE(made.slots.save(folder.path()));
    CHECK(same(KeySlots::load(folder.path())->unlock(SlotKind::passphrase, bytes::viewOf("the second")), made.dataKey));

    std::ofstream(folder.path() / "vault.keys", std::ios::trunc) << "scratched";

    const auto loaded = KeySlots::load(folder.path());
    REQUIRE(loaded);
    CHECK(same(loaded->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));
}

TEST_CASE("each of the four ways in has one slot, which it replaces", "[vault][errors]")
{
    Made made;
    for (const SlotKind kind : {SlotKind::passphraseAndKeystore, SlotKind::recoveryCode, SlotKind::desk})
        REQUIRE(made.slots.put(made.dataKey, kind, bytes::viewOf("x"), cheap));

    CHECK(made.slots.has(SlotKind::desk));
    CHECK(made.slots.put(made.dataKey, SlotKind::desk, bytes::viewOf("y"), cheap));
}
