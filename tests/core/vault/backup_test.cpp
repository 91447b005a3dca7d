// A backup is one file, proved before it is reported, never written over another, and whole or not
// there. Restoring gives the same vault or nothing.

#include "core/vault/backup.h"
#include "core/vault/tables.h"

#include "tests/core/vault/filled_vault.h"

#include <csignal>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

struct Backup {
    test::FilledVault vault;
    test::Folder elsewhere;
    std::filesystem::path file = elsewhere.path() / "clinic.ebbline";
    std::filesystem::path restored = elsewhere.path() / "restored";

    Result<BackupReport> make() const { return backup(vault.path(), vault.offered(), vault.clock.readings(), file); }
    Result<BackupReport> bringBack() const { return restore(file, vault.offered(), vault.clock.readings(), restored); }
    /// Nothing beside what is expected.
    std::size_t files() const
    {
        std::size_t count = 0;
        for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(elsewhere.path()))
            ++count;
        return count;
    }
};

}  // namespace

TEST_CASE("a backup restores to a vault that says the same and goes on", "[vault]")
{
    const Backup b;
    const auto made = b.make();
    REQUIRE(made);
    CHECK(made->size == std::filesystem::file_size(b.file));
    CHECK(made->made == b.vault.clock.now());
    CHECK(b.files() == 1);

    const auto back = b.bringBack();

    REQUIRE(back);
    CHECK(back->hash == made->hash);
    CHECK(back->inspection.folded == b.vault.inspected().folded);
    CHECK(b.files() == 2);
    const auto original = Vault::unlock(b.vault.path(), test::herons, b.vault.clock);
    auto copy = Vault::unlock(b.restored, test::herons, b.vault.clock);
    REQUIRE(original);
    REQUIRE(copy);
    CHECK(copy->device() == original->device());
    CHECK(journal::dump(copy->state()) == journal::dump(original->state()));
    CHECK(copy->outgoing(test::someMailbox)->size() == 3);
    CHECK(readOpenInfo(b.restored).value() == readOpenInfo(b.vault.path()).value());
    CHECK(copy->append({records::EntryRecorded{test::sampleEntry(250)}}, test::secondEvening));
    CHECK(copy->verify());
}

TEST_CASE("two vaults restored from one backup, and the original, never use one number twice", "[vault]")
{
    Backup b;
    REQUIRE(b.make());
    const auto highestAfterOne = [&](const std::filesystem::path& folder) {
        auto vault = Vault::unlock(folder, test::herons, b.vault.clock);
        REQUIRE(vault);
        const auto ids = vault->append({records::EntryRecorded{test::sampleEntry(250)}, records::EntryRecorded{test::sampleEntry(251)}},
                                       test::secondEvening);
        REQUIRE(ids);
        CHECK(ids->back().number == ids->front().number + 1);
        CHECK(vault->verify());
        return ids->back().number;
    };
    REQUIRE(b.bringBack());
    const auto twin = b.elsewhere.path() / "twin";
    REQUIRE(restore(b.file, b.vault.offered(), b.vault.clock.readings(), twin));

    const auto original = highestAfterOne(b.vault.path());
    const auto first = highestAfterOne(b.restored);
    const auto second = highestAfterOne(twin);
    CHECK(first > original + 1);
    CHECK(second > original + 1);
    CHECK((first > second + 1 || second > first + 1));
    // Later is higher, and it goes on where it was.
    b.vault.clock.advance(std::chrono::seconds(1));
    const auto third = b.elsewhere.path() / "third";
    REQUIRE(restore(b.file, b.vault.offered(), b.vault.clock.readings(), third));
    CHECK(highestAfterOne(third) > std::max(first, second));
    CHECK(highestAfterOne(b.restored) == first + 2);
}

TEST_CASE("a missing record of a restored vault is a gap, the step to its own numbers is none", "[vault][errors]")
{
    Backup b;
    REQUIRE(b.make());
    REQUIRE(b.bringBack());
    auto vault = Vault::unlock(b.restored, test::herons, b.vault.clock);
    REQUIRE(vault);
    const auto ids = vault->append({records::EntryRecorded{test::sampleEntry(250)}, records::EntryRecorded{test::sampleEntry(251)}},
                                   test::secondEvening);
    REQUIRE(ids);
    const auto number = ids->front().number;
    vault = fail(Reason::locked, "closed");
    const auto dataKey = openDataKey(b.restored, b.vault.offered(), b.vault.clock.readings());
    REQUIRE(dataKey);
    CHECK(inspect(b.restored, *dataKey).sound());
    {
        const std::vector<store::Migration> asItIs(vaultMigrations.size());
        auto database = store::Database::open(b.restored / "vault.db", crypto::derive(*dataKey, 1, "eb-vault"), asItIs);
        REQUIRE(database);
        REQUIRE(database->run("DELETE FROM operation WHERE number = " + std::to_string(number)));
    }
    const Inspection found = inspect(b.restored, *dataKey);
    const auto gap = std::ranges::find(found.faults, Fault::Kind::gap, &Fault::kind);
    REQUIRE(gap != found.faults.end());
    CHECK(gap->detail == "operation " + std::to_string(number));
}

TEST_CASE("a backup is made while a program has the vault open", "[vault]")
{
    const Backup b;
    auto open = Vault::unlock(b.vault.path(), test::herons, b.vault.clock);
    REQUIRE(open);
    REQUIRE(open->append({records::EntryRecorded{test::sampleEntry(200)}}, test::secondEvening));

    const auto made = b.make();

    REQUIRE(made);
    CHECK(made->inspection.operations == open->operations().size());
    CHECK(open->append({records::EntryRecorded{test::sampleEntry(201)}}, test::secondEvening));
}

TEST_CASE("a recovery code opens the backup that was made after it", "[vault]")
{
    const Backup b;
    const auto code = renewRecoveryCode(b.vault.path(), b.vault.offered(), test::cheapCost, b.vault.clock.readings());
    REQUIRE(code);
    REQUIRE(b.make());

    CHECK(restore(b.file, Offered::recoveryCode(*code), b.vault.clock.readings(), b.restored));
    CHECK(Vault::unlock(b.restored, test::herons, b.vault.clock));
}

TEST_CASE("nothing that a patient wrote can be read from a backup", "[vault]")
{
    const Backup b;
    REQUIRE(b.make());

    const std::string bytes = test::contentsOf(b.file);
    CHECK(bytes.find("Zieht beim") == std::string::npos);
    CHECK(bytes.find("SQLite format 3") == std::string::npos);
    CHECK(bytes.find("Ines Varga") == std::string::npos);
}

TEST_CASE("a file is never written over, and a filled folder never restored into", "[vault][errors]")
{
    const Backup b;
    test::put(b.file, "mine");
    CHECK(b.make().error().reason == Reason::alreadyExists);
    CHECK(test::contentsOf(b.file) == "mine");
    std::filesystem::remove(b.file);
    REQUIRE(b.make());

    std::filesystem::create_directory(b.restored);
    test::put(b.restored / "letter.txt", "mine");
    CHECK(b.bringBack().error().reason == Reason::alreadyExists);
    CHECK(test::contentsOf(b.restored / "letter.txt") == "mine");
    std::filesystem::remove(b.restored / "letter.txt");
    CHECK(b.bringBack());
    CHECK(b.files() == 2);
}

TEST_CASE("a vault that is not sound is not backed up", "[vault][errors]")
{
    const Backup b;
    REQUIRE(b.vault.database().run("DELETE FROM operation WHERE number = 3"));

    CHECK(b.make().error().reason == Reason::damaged);
    CHECK(b.files() == 0);
}

TEST_CASE("a wrong passphrase makes and restores nothing", "[vault][errors]")
{
    const Backup b;
    const Offered wrong = Offered::passphrase(bytes::viewOf("wrong"));
    CHECK(backup(b.vault.path(), wrong, b.vault.clock.readings(), b.file).error().reason == Reason::wrongKey);
    REQUIRE(b.make());
    CHECK(restore(b.file, wrong, b.vault.clock.readings(), b.restored).error().reason == Reason::wrongKey);
    CHECK(b.files() == 1);
}

TEST_CASE("every changed byte and every cut of a backup is noticed, and nothing is restored", "[vault][errors]")
{
    const Backup b;
    REQUIRE(b.make());
    const std::string whole = test::contentsOf(b.file);
    std::mt19937 random(20270302);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < 540; i += 3)
        places.push_back(i);
    for (int i = 0; i < 200; ++i)
        places.push_back(random() % whole.size());
    for (std::size_t i = whole.size() - 33; i < whole.size(); ++i)
        places.push_back(i);

    for (const std::size_t place : places) {
        std::string damaged = whole;
        damaged[place] = static_cast<char>(damaged[place] ^ 0x20);
        test::put(b.file, damaged);
        CAPTURE(place);
        const auto refused = b.bringBack();
        REQUIRE_FALSE(refused);
        const Reason wanted = place < 3 ? Reason::malformed : place < 8 ? Reason::unsupported : Reason::damaged;
        CHECK(refused.error().reason == wanted);
        CHECK(b.files() == 1);
    }
    for (const std::size_t length : {std::size_t{0}, std::size_t{3}, std::size_t{16}, std::size_t{500}, whole.size() / 2, whole.size() - 1}) {
        test::put(b.file, whole.substr(0, length));
        CAPTURE(length);
        CHECK_FALSE(b.bringBack());
        CHECK(b.files() == 1);
    }
    test::put(b.file, whole + "x");
    CHECK(b.bringBack().error().reason == Reason::damaged);
}

TEST_CASE("a file that is sound but lies about its vault is not restored", "[vault][errors]")
{
    const Backup b;
    REQUIRE(b.make());
    // Damage in a page, under a hash made anew: only opening and inspecting finds it.
    std::string bytes = test::contentsOf(b.file);
    const std::size_t place = bytes.size() - 32 - 2000;
    bytes[place] = static_cast<char>(bytes[place] ^ 1);
    const auto hash = crypto::hash256(bytes::viewOf(std::string_view(bytes).substr(0, bytes.size() - 32)));
    std::copy(hash.begin(), hash.end(), bytes.end() - 32);
    test::put(b.file, bytes);

    CHECK(b.bringBack().error().reason == Reason::damaged);
    CHECK(b.files() == 1);
}

TEST_CASE("a backup killed at any moment leaves no half file, and the next one succeeds", "[vault]")
{
    const Backup b;
    std::mt19937 random(20270303);
    int cut = 0, whole = 0;
    for (int round = 0; round < 25; ++round) {
        std::filesystem::remove(b.file);
        const pid_t child = ::fork();
        if (child == 0)
            ::_exit(b.make() ? 0 : 1);
        ::usleep(static_cast<useconds_t>(random() % 120'000));
        ::kill(child, SIGKILL);
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        cut += WIFSIGNALED(status) ? 1 : 0;
        if (std::filesystem::exists(b.file)) {
            REQUIRE(b.bringBack());
            std::filesystem::remove_all(b.restored);
            ++whole;
        }
        // A kill between counting the attempt and clearing it must not lock anybody out here.
        std::filesystem::remove(b.vault.path() / "vault.attempts");
    }
    CHECK(cut > 3);
    std::filesystem::remove(b.file);
    REQUIRE(b.make());
    CHECK(b.files() == 1);
    INFO(cut << " cut short, " << whole << " there afterwards");
}
