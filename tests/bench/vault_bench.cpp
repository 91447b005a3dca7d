// vault_bench [commits] [rounds]: durable commits of one entry by a vault beside bare commits of one row of the same size by SQLCipher, and
// unlocking beside the one call that stretches the passphrase; in turn, in one run, on the disk of TMPDIR. Prints, judges nothing.

#include "core/vault/vault.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <unistd.h>

using namespace ebbline;

namespace {

void must(bool holds, const char* what)
{
    if (holds)
        return;
    std::fprintf(stderr, "vault_bench: %s\n", what);
    std::exit(1);
}

double since(std::chrono::steady_clock::time_point began)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

double middleOf(std::vector<double> values)
{
    std::ranges::sort(values);
    return values[values.size() / 2];
}

/// The same library with the same settings, and nothing around it.
class Bare {
public:
    explicit Bare(const std::filesystem::path& file)
    {
        must(sqlite3_open(file.c_str(), &m_database) == SQLITE_OK, "a bare file opens");
        const auto key = crypto::randomArray<32>();
        must(sqlite3_key_v2(m_database, "main", key.data(), static_cast<int>(key.size())) == SQLITE_OK, "it takes a key");
        for (const char* sql : {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA secure_delete = ON", "PRAGMA foreign_keys = ON",
                                "CREATE TABLE entry (id INTEGER PRIMARY KEY, body BLOB NOT NULL) STRICT"})
            must(sqlite3_exec(m_database, sql, nullptr, nullptr, nullptr) == SQLITE_OK, "it is set up");
        must(sqlite3_prepare_v2(m_database, "INSERT INTO entry (body) VALUES (?1)", -1, &m_insert, nullptr) == SQLITE_OK, "a statement is compiled");
    }
    ~Bare()
    {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_database);
    }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;
    void commit(bytes::View body)
    {
        sqlite3_bind_blob(m_insert, 1, body.data(), static_cast<int>(body.size()), SQLITE_STATIC);
        must(sqlite3_step(m_insert) == SQLITE_DONE, "a row is committed");
        sqlite3_reset(m_insert);
    }

private:
    sqlite3* m_database = nullptr;
    sqlite3_stmt* m_insert = nullptr;
};

records::Body entryOf(const recovery::CourseId& course, const clock::Moment& at)
{
    recovery::Entry entry;
    entry.id = recovery::EntryId{crypto::randomArray<16>()};
    entry.course = course;
    entry.at = entry.recordedAt = at;
    for (const auto symptom : {recovery::Symptom::pain, recovery::Symptom::swelling, recovery::Symptom::bruising})
        for (const auto side : {recovery::Side::left, recovery::Side::right})
            entry.scores.emplace(recovery::Stream{symptom, side}, *recovery::Score::of(4));
    return records::EntryRecorded{entry};
}

}  // namespace

int main(int argc, char** argv)
{
    const std::size_t commits = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 500;
    const std::size_t rounds = std::max<std::size_t>(1, argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 9);
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-vault-" + std::string(6, 'X'));
    must(::mkdtemp(pattern.data()) != nullptr, "a folder can be made");
    const std::filesystem::path home = pattern;
    const clock::SystemClock clock;
    const bytes::View passphrase = bytes::viewOf("three calm herons wade");
    const crypto::StretchCost cost;  // the default
    {
        auto vault = std::move(*vault::Vault::create(home / "vault", vault::Vault::Owner::patient, passphrase, cost, clock));
        const envelope::MailboxId mailbox{crypto::randomArray<16>()};
        const recovery::CourseId course{crypto::randomArray<16>()};
        const auto now = [&] { return clock::Moment{clock.now(), std::chrono::minutes{60}, "Europe/Berlin"}; };
        must(vault.append({entryOf(course, now())}, now(), mailbox).has_value(), "an entry is stored");
        const bytes::Bytes row = journal::encode(vault.operations().front());
        Bare bare(home / "bare.db");

        std::vector<double> bareEach, ownEach, ratios;
        for (std::size_t round = 0; round < rounds; ++round) {
            auto began = std::chrono::steady_clock::now();
            for (std::size_t i = 0; i < commits; ++i)
                bare.commit(row);
            bareEach.push_back(static_cast<double>(commits) / since(began));
            began = std::chrono::steady_clock::now();
            for (std::size_t i = 0; i < commits; ++i)
                must(vault.append({entryOf(course, now())}, now(), mailbox).has_value(), "an entry is stored");
            ownEach.push_back(static_cast<double>(commits) / since(began));
            ratios.push_back(ownEach.back() / bareEach.back());
        }
        std::printf("durable commits, the middle of %zu rounds of %zu, rows of %zu bytes\n"
                    "bare SQLCipher, one row a commit         %8.0f a second\n"
                    "vault, one entry and its place outside   %8.0f a second, %.2f of the bare one (0.85 is asked for)\n",
                    rounds, commits, row.size(), middleOf(bareEach), middleOf(ownEach), middleOf(ratios));
    }
    // A vault as a patient has it after a course.
    {
        auto vault = std::move(*vault::Vault::create(home / "course", vault::Vault::Owner::patient, passphrase, cost, clock));
        const recovery::CourseId course{crypto::randomArray<16>()};
        const clock::Moment now{clock.now(), std::chrono::minutes{60}, "Europe/Berlin"};
        for (int i = 0; i < 132; ++i)
            must(vault.append({entryOf(course, now)}, now).has_value(), "an entry is stored");
    }
    std::vector<double> stretching, unlocking, ratios;
    for (std::size_t round = 0; round < rounds; ++round) {
        auto began = std::chrono::steady_clock::now();
        must(crypto::stretchPassphrase(passphrase, crypto::randomArray<16>(), cost).has_value(), "a passphrase is stretched");
        stretching.push_back(1000 * since(began));
        began = std::chrono::steady_clock::now();
        must(vault::Vault::unlock(home / "course", passphrase, clock).has_value(), "the vault opens");
        unlocking.push_back(1000 * since(began));
        ratios.push_back(unlocking.back() / stretching.back());
    }
    std::printf("Argon2id alone, %llu passes over %llu KiB %8.1f ms\n"
                "unlocking a vault with 132 entries       %8.1f ms, %.2f times that (1.30 at most is asked for)\n",
                static_cast<unsigned long long>(cost.passes), static_cast<unsigned long long>(cost.memoryKiB), middleOf(stretching), middleOf(unlocking),
                middleOf(ratios));
    std::filesystem::remove_all(home);
    return 0;
}
