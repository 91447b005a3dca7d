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
    CHECK(made.slots.encode().size() == KeySlots::fileSize);
    CHECK(same(decoded->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));
}

TEST_CASE("what a damaged file or an impossible slot says of its cost counts for nothing", "[vault]")
{
    const Made made;
    CHECK(made.slots.dearest() == cheap);
    bytes::Bytes file = made.slots.encode();
    file[12] = 0x01;  // the memory, in the first slot
    const auto damaged = KeySlots::decode(file);
    REQUIRE(damaged);
    CHECK_FALSE(damaged->dearest());

    const auto sum = crypto::hash128(bytes::View(file).first(KeySlots::slotSize * KeySlots::slotCount));
    std::copy(sum.begin(), sum.end(), file.end() - 16);
    const auto forged = KeySlots::decode(file);
    REQUIRE(forged);
    REQUIRE(forged->isSound());
    CHECK_FALSE(forged->dearest());
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

TEST_CASE("every damaged byte of the key file is noticed, and none is taken for a wrong passphrase", "[vault]")
{
    const Made made;
    const bytes::Bytes whole = made.slots.encode();
    REQUIRE(whole.size() == 496);
    std::size_t refused = 0, opened = 0;

    for (std::size_t i = 0; i < whole.size(); ++i) {
        bytes::Bytes damaged = whole;
        damaged[i] ^= 1;
        CAPTURE(i);
        const auto slots = KeySlots::decode(damaged);
        if (!slots) {
            CHECK(slots.error().reason == Reason::damaged);
            ++refused;
            continue;
        }
        CHECK_FALSE(slots->isSound());
        const auto unlocked = slots->unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase"));
        // Damage outside of the one slot in use leaves it working; inside, it is called damage.
        if (unlocked) {
            CHECK(i >= KeySlots::slotSize);
            CHECK(crypto::equal(unlocked->view(), made.dataKey.view()));
            ++opened;
        } else {
            CHECK(i < KeySlots::slotSize);
            CHECK(unlocked.error().reason != Reason::wrongKey);
            ++refused;
        }
        CHECK(slots->unlock(SlotKind::passphrase, bytes::viewOf("another")).error().reason != Reason::wrongKey);
    }
    CHECK(refused == KeySlots::slotSize);
    CHECK(opened == whole.size() - KeySlots::slotSize);
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
    auto both = KeySlots::generations(folder.path());
    REQUIRE(both);
    REQUIRE(both->size() == 2);
    CHECK(same(both->front().unlock(SlotKind::passphrase, bytes::viewOf("the second")), made.dataKey));
    CHECK(same(both->back().unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));

    std::ofstream(folder.path() / "vault.keys", std::ios::trunc) << "scratched";

    const auto left = KeySlots::generations(folder.path());
    REQUIRE(left);
    REQUIRE(left->size() == 1);
    CHECK(same(left->front().unlock(SlotKind::passphrase, bytes::viewOf("a long passphrase")), made.dataKey));
    CHECK_FALSE(KeySlots::isWhole(folder.path()));
}

TEST_CASE("a damaged generation never replaces a good one", "[vault]")
{
    const test::Folder folder;
    Made made;
    REQUIRE(made.slots.saveAndForget(folder.path()));
    CHECK(KeySlots::isWhole(folder.path()));
    {
        std::fstream file(folder.path() / "vault.keys", std::ios::in | std::ios::out | std::ios::binary);
        file.seekp(20);
        file.put('x');
    }

    REQUIRE(made.slots.save(folder.path()));

    CHECK(KeySlots::isWhole(folder.path()));
    CHECK(KeySlots::generations(folder.path())->size() == 1);
}

TEST_CASE("no key file and an unreadable one are told apart", "[vault][errors]")
{
    const test::Folder folder;
    CHECK(KeySlots::generations(folder.path()).error().reason == Reason::notFound);
    for (const std::string& contents : {std::string(), std::string(496, '\0'), std::string(497, 'x'), std::string(5000, 'x')}) {
        std::ofstream(folder.path() / "vault.keys", std::ios::trunc | std::ios::binary) << contents;
        CHECK(KeySlots::generations(folder.path()).error().reason == Reason::damaged);
    }
}

TEST_CASE("each of the four ways in has one slot, which it replaces", "[vault][errors]")
{
    Made made;
    for (const SlotKind kind : {SlotKind::passphraseAndKeystore, SlotKind::recoveryCode, SlotKind::desk})
        REQUIRE(made.slots.put(made.dataKey, kind, bytes::viewOf("x"), cheap));

    CHECK(made.slots.has(SlotKind::desk));
    CHECK(made.slots.put(made.dataKey, SlotKind::desk, bytes::viewOf("y"), cheap));
}
