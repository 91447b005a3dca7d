// A passphrase that is bound to its device: the files and the passphrase together are not enough elsewhere.
#include "core/vault/backup.h"
#include "core/vault/vault.h"

#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

using namespace ebbline;
using namespace ebbline::vault;

namespace {

constexpr crypto::StretchCost cheap{1, 8 * 1024};
const bytes::View passphrase = bytes::viewOf("three calm herons wade");
const bytes::View another = bytes::viewOf("four grey geese rest here");
const auto evening = test::momentAt("2027-03-02T20:00:00+01:00");

struct Device {
    test::Folder folder;
    clock::ManualClock clock{evening.at};
    crypto::Secret secret = crypto::Secret::random();

    explicit Device(Vault::Owner owner = Vault::Owner::patient)
    {
        REQUIRE(Vault::create(folder.path(), owner, passphrase, cheap, clock));
    }
    RecoveryCode printed() const
    {
        auto code = renewRecoveryCode(folder.path(), offer(passphrase), cheap, clock.readings());
        REQUIRE(code);
        return std::move(*code);
    }
    Offered offer(bytes::View words) const { return Offered::passphrase(words, secret.view()); }
    Done bind() const { return changePassphrase(folder.path(), offer(passphrase), passphrase, cheap, clock.readings(), secret.view()); }
    std::optional<Reason> refusal(const Offered& offered) const
    {
        const auto vault = Vault::unlock(folder.path(), offered, clock);
        return vault ? std::nullopt : std::optional(vault.error().reason);
    }
};

}  // namespace

TEST_CASE("a bound passphrase opens with its device's secret and not without", "[vault][keystore]")
{
    const Device device;
    const RecoveryCode code = device.printed();
    CHECK_FALSE(isBoundToDevice(device.folder.path()));
    CHECK_FALSE(device.refusal(device.offer(passphrase)));  // a secret that is not asked for does no harm
    REQUIRE(device.bind());
    CHECK(isBoundToDevice(device.folder.path()));
    CHECK_FALSE(device.refusal(device.offer(passphrase)));
    CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::refused);
    CHECK(device.refusal(device.offer(another)) == Reason::wrongKey);
    CHECK(device.refusal(Offered::passphrase(passphrase, crypto::Secret::random().view())) == Reason::wrongKey);
    CHECK_FALSE(device.refusal(Offered::recoveryCode(code)));
    // Neither generation of the key file opens without it any more.
    const auto generations = KeySlots::generations(device.folder.path());
    REQUIRE(generations);
    for (const KeySlots& slots : *generations)
        CHECK_FALSE(slots.has(SlotKind::passphrase));
}

TEST_CASE("nothing is bound to a device before there is a recovery code, nor ever at a desk", "[vault][keystore]")
{
    const Device device;
    CHECK(device.bind().error().reason == Reason::invalidState);
    CHECK_FALSE(device.refusal(Offered::passphrase(passphrase)));

    const Device desk(Vault::Owner::clinic);
    const RecoveryCode code = desk.printed();
    CHECK(desk.bind().error().reason == Reason::invalidState);
    CHECK_FALSE(desk.refusal(Offered::passphrase(passphrase)));
}

TEST_CASE("a device that lost its secret costs no attempt, and the recovery code leads out of it", "[vault][keystore]")
{
    const Device device;
    const RecoveryCode code = device.printed();
    REQUIRE(device.bind());
    for (int i = 0; i < 50; ++i)
        CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::refused);
    REQUIRE(changePassphrase(device.folder.path(), Offered::recoveryCode(code), another, cheap, device.clock.readings()));
    CHECK_FALSE(isBoundToDevice(device.folder.path()));
    CHECK_FALSE(device.refusal(Offered::passphrase(another)));
    CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::wrongKey);
    CHECK(device.refusal(device.offer(passphrase)) == Reason::wrongKey);
}

TEST_CASE("a bound passphrase is changed and stays bound; a new recovery code leaves it bound", "[vault][keystore]")
{
    const Device device;
    const RecoveryCode old = device.printed();
    REQUIRE(device.bind());
    REQUIRE(changePassphrase(device.folder.path(), device.offer(passphrase), another, cheap, device.clock.readings(), device.secret.view()));
    CHECK(isBoundToDevice(device.folder.path()));
    CHECK_FALSE(device.refusal(device.offer(another)));
    CHECK(device.refusal(Offered::passphrase(another)) == Reason::refused);
    const auto fresh = renewRecoveryCode(device.folder.path(), device.offer(another), cheap, device.clock.readings());
    REQUIRE(fresh);
    CHECK(isBoundToDevice(device.folder.path()));
    CHECK_FALSE(device.refusal(Offered::recoveryCode(*fresh)));
    CHECK(device.refusal(Offered::recoveryCode(old)) == Reason::wrongKey);
}

TEST_CASE("binding that is cut off at any moment leaves a vault that opens", "[vault][keystore]")
{
    const Device device;
    const RecoveryCode code = device.printed();
    const auto newest = device.folder.path() / "vault.keys";
    const auto previous = device.folder.path() / "vault.keys.previous";
    const auto beside = device.folder.path() / "kept";
    std::filesystem::copy_file(newest, beside);
    REQUIRE(device.bind());
    // The new file is in place and the one before is still the old.
    std::filesystem::copy_file(beside, previous, std::filesystem::copy_options::overwrite_existing);
    CHECK_FALSE(device.refusal(device.offer(passphrase)));
    // The new file was torn: the one before opens, with or without the secret at hand.
    std::filesystem::copy_file(beside, previous, std::filesystem::copy_options::overwrite_existing);
    std::filesystem::resize_file(newest, 100);
    CHECK_FALSE(device.refusal(Offered::passphrase(passphrase)));
}

TEST_CASE("a backup of a bound vault is proved with the device's secret and restored elsewhere by the recovery code", "[vault][keystore]")
{
    const Device device;
    const RecoveryCode code = device.printed();
    REQUIRE(device.bind());
    const test::Folder out;
    const auto file = out.path() / "diary.backup";
    CHECK(backup(device.folder.path(), Offered::passphrase(passphrase), device.clock.readings(), file).error().reason == Reason::refused);
    REQUIRE(backup(device.folder.path(), device.offer(passphrase), device.clock.readings(), file));
    const auto elsewhere = out.path() / "elsewhere";
    CHECK(restore(file, Offered::passphrase(passphrase), device.clock.readings(), elsewhere).error().reason == Reason::refused);
    REQUIRE(restore(file, Offered::recoveryCode(code), device.clock.readings(), elsewhere));
    CHECK(Vault::unlock(elsewhere, Offered::recoveryCode(code), device.clock));
}

TEST_CASE("that a recovery code was read from its paper is kept with the vault, and holds for that code alone", "[vault][keystore]")
{
    const Device device;
    const auto open = [&] {
        auto vault = Vault::unlock(device.folder.path(), device.offer(passphrase), device.clock);
        REQUIRE(vault);
        return std::move(*vault);
    };
    {
        Vault vault = open();
        const Done early = noteCodeOnPaper(vault, device.folder.path());
        REQUIRE_FALSE(early);
        CHECK(early.error().reason == Reason::notFound);
    }
    const RecoveryCode first = device.printed();
    CHECK_FALSE(isCodeOnPaper(open(), device.folder.path()));
    {
        Vault vault = open();
        REQUIRE(noteCodeOnPaper(vault, device.folder.path()));
    }
    CHECK(isCodeOnPaper(open(), device.folder.path()));

    // Another way in leaves the code as it is, also one that is bound.
    REQUIRE(device.bind());
    CHECK(isCodeOnPaper(open(), device.folder.path()));

    const RecoveryCode second = device.printed();
    CHECK_FALSE(isCodeOnPaper(open(), device.folder.path()));
}
