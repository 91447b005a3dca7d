// The ways into a vault: passphrase and recovery code, replaced without a moment at which neither
// opens, and gone for good once replaced.

#include "core/vault/vault.h"

#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;
using namespace std::chrono_literals;

namespace {

constexpr crypto::StretchCost cheap{1, 8 * 1024};
const bytes::View passphrase = bytes::viewOf("three calm herons wade");
const bytes::View another = bytes::viewOf("four grey geese rest here");
const auto evening = test::momentAt("2027-03-02T20:00:00+01:00");

struct Device {
    test::Folder folder;
    clock::ManualClock clock{evening.at};

    explicit Device(Vault::Owner owner = Vault::Owner::patient)
    {
        auto vault = Vault::create(folder.path(), owner, passphrase, cheap, clock);
        REQUIRE(vault);
        REQUIRE(vault->append({records::EntryRecorded{test::sampleEntry()}}, evening));
    }
    RecoveryCode printed(bytes::View with = passphrase) const
    {
        auto code = renewRecoveryCode(folder.path(), Offered::passphrase(with), cheap, clock.readings());
        REQUIRE(code);
        return std::move(*code);
    }
    std::optional<Reason> refusal(const Offered& offered) const
    {
        const auto vault = Vault::unlock(folder.path(), offered, clock);
        if (!vault)
            return vault.error().reason;
        CHECK(vault->operations().size() == 1);
        return std::nullopt;
    }
    /// Copies the file over the other one, as somebody with the disk in hands could.
    void put(const char* from, const char* over) const
    {
        std::filesystem::copy_file(folder.path() / from, folder.path() / over,
                                   std::filesystem::copy_options::overwrite_existing);
    }
};

}  // namespace

TEST_CASE("a printed code opens the vault of phone and desk, beside the passphrase", "[vault]")
{
    for (const Vault::Owner owner : {Vault::Owner::patient, Vault::Owner::clinic}) {
        const Device device(owner);
        CHECK_FALSE(hasRecoveryCode(device.folder.path()));
        CHECK(device.refusal(Offered::recoveryCode(RecoveryCode::random())) == Reason::notFound);

        const RecoveryCode code = device.printed();

        CHECK(hasRecoveryCode(device.folder.path()));
        CHECK_FALSE(device.refusal(Offered::recoveryCode(code)));
        const auto typed = RecoveryCode::fromText(code.text());
        REQUIRE(typed);
        CHECK_FALSE(device.refusal(Offered::recoveryCode(*typed)));
        CHECK_FALSE(device.refusal(Offered::passphrase(passphrase)));
        CHECK(device.refusal(Offered::recoveryCode(RecoveryCode::random())) == Reason::wrongKey);
    }
}

TEST_CASE("a new code ends the old one, in both generations of the key file", "[vault]")
{
    const Device device;
    const RecoveryCode lost = device.printed();

    const RecoveryCode fresh = device.printed();

    CHECK(device.refusal(Offered::recoveryCode(lost)) == Reason::wrongKey);
    CHECK_FALSE(device.refusal(Offered::recoveryCode(fresh)));
    device.put("vault.keys.previous", "vault.keys");
    CHECK(device.refusal(Offered::recoveryCode(lost)) == Reason::wrongKey);
    CHECK_FALSE(device.refusal(Offered::recoveryCode(fresh)));
}

TEST_CASE("a code is made only for who knows the passphrase or the old code", "[vault]")
{
    const Device device;

    CHECK(renewRecoveryCode(device.folder.path(), Offered::passphrase(another), cheap, device.clock.readings()).error().reason
          == Reason::wrongKey);
    CHECK_FALSE(hasRecoveryCode(device.folder.path()));
    const RecoveryCode code = device.printed();
    CHECK(renewRecoveryCode(device.folder.path(), Offered::recoveryCode(code), cheap, device.clock.readings()));
}

TEST_CASE("who forgot the passphrase sets another one with the code", "[vault]")
{
    for (const Vault::Owner owner : {Vault::Owner::patient, Vault::Owner::clinic}) {
        const Device device(owner);
        const RecoveryCode code = device.printed();

        REQUIRE(changePassphrase(device.folder.path(), Offered::recoveryCode(code), another, cheap, device.clock.readings()));

        CHECK_FALSE(device.refusal(Offered::passphrase(another)));
        CHECK_FALSE(device.refusal(Offered::recoveryCode(code)));
        CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::wrongKey);
        device.put("vault.keys.previous", "vault.keys");
        CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::wrongKey);
    }
}

TEST_CASE("no change makes a vault cheaper to search than it was, whatever cost is asked for", "[vault]")
{
    constexpr crypto::StretchCost dear{2, 16 * 1024};
    for (const Vault::Owner owner : {Vault::Owner::patient, Vault::Owner::clinic}) {
        const Device device(owner);
        const auto dearest = [&] { return KeySlots::generations(device.folder.path())->front().dearest(); };
        REQUIRE(dearest() == cheap);
        REQUIRE(changePassphrase(device.folder.path(), Offered::passphrase(passphrase), another, dear, device.clock.readings()));
        REQUIRE(dearest() == dear);

        // The only way in is replaced: nothing else keeps the cost up.
        REQUIRE(changePassphrase(device.folder.path(), Offered::passphrase(another), passphrase, cheap, device.clock.readings()));
        CHECK(dearest() == dear);
        CHECK_FALSE(device.refusal(Offered::passphrase(passphrase)));

        // A code printed beside it, and one that follows it.
        const RecoveryCode code = device.printed();
        auto slots = KeySlots::generations(device.folder.path())->front();
        slots.drop(owner == Vault::Owner::clinic ? SlotKind::desk : SlotKind::passphrase);
        CHECK(slots.dearest() == dear);
        CHECK_FALSE(device.refusal(Offered::recoveryCode(code)));
    }
}

TEST_CASE("each figure of the cost stays for itself, and a dearer one than the vault has is taken", "[vault]")
{
    const Device device;
    const auto dearest = [&] { return KeySlots::generations(device.folder.path())->front().dearest(); };
    const auto change = [&](const crypto::StretchCost& cost) {
        return changePassphrase(device.folder.path(), Offered::passphrase(passphrase), passphrase, cost, device.clock.readings());
    };
    REQUIRE(change({2, 8 * 1024}));
    CHECK(dearest() == crypto::StretchCost{2, 8 * 1024});
    REQUIRE(change({1, 12 * 1024}));
    CHECK(dearest() == crypto::StretchCost{2, 12 * 1024});
}

TEST_CASE("a refused change leaves every way as it was", "[vault][errors]")
{
    const Device device;
    CHECK(changePassphrase(device.folder.path(), Offered::passphrase(another), bytes::viewOf("x"), cheap, device.clock.readings())
              .error()
              .reason
          == Reason::wrongKey);
    CHECK(changePassphrase(device.folder.path(), Offered::passphrase(passphrase), another, {9, 8 * 1024}, device.clock.readings())
              .error()
              .reason
          == Reason::outOfRange);

    CHECK_FALSE(device.refusal(Offered::passphrase(passphrase)));
}

TEST_CASE("wrong codes and wrong passphrases share one count of attempts", "[vault]")
{
    Device device;
    const RecoveryCode code = device.printed();
    for (int i = 0; i < 2; ++i)
        CHECK(device.refusal(Offered::recoveryCode(RecoveryCode::random())) == Reason::wrongKey);
    for (int i = 0; i < 3; ++i)
        CHECK(device.refusal(Offered::passphrase(another)) == Reason::wrongKey);

    CHECK(device.refusal(Offered::recoveryCode(code)) == Reason::tooSoon);
    CHECK(renewRecoveryCode(device.folder.path(), Offered::passphrase(passphrase), cheap, device.clock.readings()).error().reason
          == Reason::tooSoon);
    device.clock.advance(30s);
    CHECK_FALSE(device.refusal(Offered::recoveryCode(code)));
}

TEST_CASE("any damaged byte of the newest key file is survived, and the file mended", "[vault]")
{
    const Device device;
    const auto file = device.folder.path() / "vault.keys";
    for (std::size_t i = 0; i < KeySlots::fileSize; i += 7) {
        {
            std::fstream out(file, std::ios::in | std::ios::out | std::ios::binary);
            out.seekg(static_cast<std::streamoff>(i));
            const int byte = out.get();
            out.seekp(static_cast<std::streamoff>(i));
            out.put(static_cast<char>(byte ^ 0x10));
        }
        REQUIRE_FALSE(KeySlots::isWhole(device.folder.path()));
        CAPTURE(i);
        CHECK(openDataKey(device.folder.path(), Offered::passphrase(passphrase), device.clock.readings()));
        CHECK(KeySlots::isWhole(device.folder.path()));
    }
}

TEST_CASE("a wrong passphrase is called wrong while one generation is undamaged, else damage is named", "[vault][errors]")
{
    const Device device;
    const auto scratch = [&](const char* name) {
        std::fstream out(device.folder.path() / name, std::ios::in | std::ios::out | std::ios::binary);
        out.seekp(20);
        out.write("scratch", 7);
    };

    scratch("vault.keys");
    CHECK(device.refusal(Offered::passphrase(another)) == Reason::wrongKey);
    scratch("vault.keys.previous");
    CHECK(device.refusal(Offered::passphrase(another)) == Reason::damaged);
    CHECK(device.refusal(Offered::passphrase(passphrase)) == Reason::damaged);
}

TEST_CASE("a power cut at any step of changing the passphrase leaves the old one or the new one", "[vault]")
{
    const Device device;
    const auto read = [&](const char* name) {
        std::ifstream input(device.folder.path() / name, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(input), {});
    };
    const auto write = [&](const std::string& name, const std::string& contents) {
        std::ofstream(device.folder.path() / name, std::ios::binary | std::ios::trunc) << contents;
    };
    const std::string before = read("vault.keys");
    REQUIRE(changePassphrase(device.folder.path(), Offered::passphrase(passphrase), another, cheap, device.clock.readings()));
    const std::string after = read("vault.keys");
    REQUIRE(before != after);

    // What lies in vault.keys and vault.keys.previous after each rename; a temporary file of any
    // length may lie beside, and what it replaces is still whole.
    const std::vector<std::pair<std::string, std::string>> steps{
        {before, before}, {before, before}, {after, before}, {after, after}};
    std::size_t tried = 0;
    for (const auto& [newest, previous] : steps)
        for (const char* beside : {"vault.keys.new", "vault.keys.previous.new"})
            for (const std::size_t length : {std::size_t{0}, std::size_t{1}, std::size_t{250}, after.size()}) {
                write("vault.keys", newest);
                write("vault.keys.previous", previous);
                write(beside, after.substr(0, length));
                std::filesystem::remove(device.folder.path() / "vault.attempts");
                const bool old = openDataKey(device.folder.path(), Offered::passphrase(passphrase), device.clock.readings()).has_value();
                const bool fresh = openDataKey(device.folder.path(), Offered::passphrase(another), device.clock.readings()).has_value();
                CAPTURE(tried);
                CHECK((old || fresh));
                CHECK(old == (newest == before || previous == before));
                ++tried;
            }
    CHECK(tried == 32);
}

TEST_CASE("the cost of stretching follows the machine and never goes below its floor", "[vault]")
{
    using crypto::StretchCost;
    const auto costWhere = [](std::int64_t microsecondsPerMiBAndPass) {
        return calibratedCost([=](const StretchCost& cost) -> std::optional<std::chrono::milliseconds> {
            return std::chrono::milliseconds{microsecondsPerMiBAndPass * cost.passes * (cost.memoryKiB / 1024) / 1000};
        });
    };

    CHECK(costWhere(0) == StretchCost{4, 256 * 1024});
    CHECK(costWhere(500) == StretchCost{4, 256 * 1024});   // 512 ms
    CHECK(costWhere(800) == StretchCost{3, 256 * 1024});   // 614 ms, the next would be 819
    CHECK(costWhere(1500) == StretchCost{3, 128 * 1024});  // 576 ms, the next would be 864
    CHECK(costWhere(100'000) == crypto::stretchFloor);
    CHECK(calibratedCost([](const StretchCost&) { return std::optional<std::chrono::milliseconds>(); }) == crypto::stretchFloor);
}

TEST_CASE("this machine's own cost lies between floor and cap", "[vault]")
{
    REQUIRE(crypto::initialise());
    const clock::SystemClock clock;

    const crypto::StretchCost cost = calibratedCost(clock);

    CHECK(cost.passes >= crypto::stretchFloor.passes);
    CHECK(cost.memoryKiB >= crypto::stretchFloor.memoryKiB);
    CHECK(cost.memoryKiB <= 256 * 1024);
}
