// leak_campaign [--rounds n] [--seed n]
//
// Looks for what people wrote, and for keys, wherever a program leaves something: every file of phone and desk and of the hub,
// the hub's database decrypted, its log, what both programs print, everything that passed on the wire, the memory of the
// hub's program, and the memory of phone and desk once they are locked, which is what a core dump of them would hold.
//
// What must be found is found first: the words in the memory of the open programs, the keys too, and the clinic's name in the one
// file that is readable while locked. Words in the memory of a locked program are counted and printed, not forbidden: they are let
// go and not overwritten (docs/security/README.md).

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "core/store/database.h"
#include "tests/faults/hub_process.h"
#include "tests/faults/leak_person.h"
#include "tests/faults/leak_search.h"
#include "tests/faults/relay.h"
#include "tests/faults/workload.h"

#include <cstdio>
#include <fstream>
#include <map>
#include <random>
#include <stdexcept>
#include <sys/prctl.h>
#include <csignal>
#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

/// The other program, with pipes to it and what it prints to its error output in a file.
class Person {
public:
    Person(const std::filesystem::path& folder, const std::filesystem::path& log)
    {
        int in[2], out[2];
        if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0)
            throw std::runtime_error("no pipes");
        m_process = ::fork();
        if (m_process == 0) {
            ::prctl(PR_SET_PDEATHSIG, SIGKILL);
            const int errors = ::open(log.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
            ::dup2(in[0], 0);
            ::dup2(out[1], 1);
            ::dup2(errors, 2);
            ::execl(EBBLINE_LEAK_PERSON, "leak_person", folder.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(in[0]);
        ::close(out[1]);
        m_to = in[1];
        m_from = ::fdopen(out[0], "r");
    }
    ~Person()
    {
        ::kill(m_process, SIGKILL);
        ::waitpid(m_process, nullptr, 0);
        ::close(m_to);
        ::fclose(m_from);
    }
    Person(const Person&) = delete;
    Person& operator=(const Person&) = delete;

    void tell(const std::string& line)
    {
        const std::string whole = line + '\n';
        if (::write(m_to, whole.data(), whole.size()) != static_cast<ssize_t>(whole.size()))
            throw std::runtime_error("nobody listens");
    }
    std::string hear()
    {
        char* line = nullptr;
        std::size_t size = 0;
        const ssize_t got = ::getline(&line, &size, m_from);
        std::string heard(line ? line : "", got > 0 ? static_cast<std::size_t>(got) - 1 : 0);
        ::free(line);
        if (got <= 0 || heard.starts_with("failed"))
            throw std::runtime_error("leak_person: " + (heard.empty() ? "it ended" : heard));
        m_printed += heard + '\n';
        return heard;
    }
    pid_t process() const { return m_process; }
    const std::string& printed() const { return m_printed; }

private:
    pid_t m_process = -1;
    int m_to = -1;
    std::FILE* m_from = nullptr;
    std::string m_printed;
};

std::string masked(bytes::View value)
{
    bytes::Bytes out(value.begin(), value.end());
    for (std::uint8_t& byte : out)
        byte ^= leakMask;
    return bytes::toHex(out);
}

constexpr const char* names[] = {"desk-passphrase", "phone-passphrase", "practitioner", "clinic", "patient", "patient-phone", "lot", "note",
                                 "corrected-note", "draft", "message-of-patient", "message-of-clinic", "management", "next-plan"};

std::vector<Canary> madeUp(std::mt19937_64& random)
{
    std::vector<Canary> canaries;
    for (const char* name : names) {
        bytes::Bytes value;
        const std::size_t letters = std::string_view(name).ends_with("passphrase") ? 30 : 18;
        for (std::size_t i = 0; i < letters; ++i)
            value.push_back(static_cast<std::uint8_t>((i % 7 == 6 ? ' ' : 'a' + static_cast<int>(random() % 26))));
        canaries.emplace_back(name, std::move(value));
    }
    return canaries;
}

bool isSecret(const Canary& canary)
{
    return canary.name().ends_with("passphrase") || canary.name().ends_with("key");
}

struct Totals {
    std::map<std::string, std::uint64_t> searched;  ///< bytes, by place
    std::map<std::string, std::uint64_t> found;     ///< what must not be there, by place
    std::uint64_t files = 0, wordsOpen = 0, keysOpen = 0, openInfo = 0, wordsAfterLock = 0, keysAfterLock = 0, rounds = 0, planted = 0;
    std::map<std::string, std::uint64_t> leftByWord;
};

class Round {
public:
    Round(const std::filesystem::path& folder, std::mt19937_64& random, Totals& totals)
        : m_folder(folder), m_random(random), m_totals(totals), m_canaries(madeUp(random))
    {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder / "people");
    }

    bool play()
    {
        Person person(m_folder / "people", m_folder / "person.log");
        for (const Canary& canary : m_canaries)
            person.tell(canary.name() + ' ' + masked(canary.value()));
        person.tell("photo " + std::to_string(m_random() % 1'000'000));
        person.tell("go");
        const std::string root = person.hear();
        admit(root.substr(root.find(' ') + 1));
        HubProcess hub((m_folder / "hub").string());
        hub.start();
        bytes::Bytes wire;
        bool good = true;
        {
            const Relay relay(hub.port());
            person.tell(std::to_string(relay.port()));
            for (std::string line; line = person.hear(), line != "open";)
                takeKey(line);
            m_net.emplace(m_canaries);
            good = lookAtOpen(person.process()) && good;
            person.tell("lock");
            while (person.hear() != "locked") {
            }
            wire = relay.carried();
        }
        lookAtMemory("memory of the hub's program", hub.process());
        lookAtLocked(person.process());
        look("what passed on the wire", wire);
        good = hub.end() == 0 && good;
        look("the hub's log", bytes::viewOf(hub.log()));
        bytes::Bytes printed = contentsOf(m_folder / "person.log");
        printed.insert(printed.end(), person.printed().begin(), person.printed().end());
        look("what the programs printed", printed);
        lookAtFiles();
        lookAtDatabase();
        plant();
        ++m_totals.rounds;
        return good && wire.size() > 20'000;
    }

private:
    void admit(const std::string& root)
    {
        std::filesystem::create_directories(m_folder / "hub");
        auto store = mailbox::openEmbeddedStore(m_folder / "hub");
        const auto raw = bytes::fromHex(root);
        if (!store || !raw || raw->size() != 32)
            throw std::runtime_error("the hub's store");
        crypto::SigningPublicKey key;
        std::ranges::copy(*raw, key.value.begin());
        if (!(*store)->addClinic(key, "clinic"))
            throw std::runtime_error("the clinic at the hub");
    }

    void takeKey(const std::string& line)
    {
        const auto first = line.find(' '), second = line.find(' ', first + 1);
        auto value = bytes::fromHex(std::string_view(line).substr(second + 1));
        if (!line.starts_with("key ") || !value)
            throw std::runtime_error("a key");
        for (std::uint8_t& byte : *value)
            byte ^= leakMask;
        m_canaries.emplace_back(line.substr(first + 1, second - first - 1), std::move(*value));
    }

    void look(const std::string& place, bytes::View where)
    {
        m_totals.searched[place] += where.size();
        m_totals.found[place] += 0;
        const auto caught = m_net->in(where);
        for (std::size_t i = 0; i < caught.size(); ++i)
            if (caught[i].any > 0) {
                m_totals.found[place] += caught[i].any;
                std::printf("FOUND: %s, %zu times in %s\n", m_canaries[i].name().c_str(), caught[i].any, place.c_str());
            }
    }

    /// Of each canary; what lies where two pieces of memory overlap may count twice. `read` is added to.
    std::vector<Net::Catch> inMemory(pid_t process, std::uint64_t& read) const
    {
        std::vector<Net::Catch> all(m_canaries.size());
        read += forEachPieceOfMemory(process, m_net->longest(), [&](bytes::View piece) {
            const auto caught = m_net->in(piece);
            for (std::size_t i = 0; i < all.size(); ++i) {
                all[i].plain += caught[i].plain;
                all[i].any += caught[i].any;
            }
        });
        return all;
    }

    void lookAtMemory(const std::string& place, pid_t process)
    {
        forEachPieceOfMemory(process, m_net->longest(), [&](bytes::View piece) { look(place, piece); });
    }

    /// Everything is there while it is open; a passphrase is not, but for the copy that leak_person itself holds.
    bool lookAtOpen(pid_t process)
    {
        std::map<std::string, std::size_t> seen;
        std::uint64_t read = 0;
        const auto caught = inMemory(process, read);
        for (std::size_t i = 0; i < caught.size(); ++i) {
            const std::string& name = m_canaries[i].name();
            seen[name] = caught[i].plain;
            (name.ends_with("key") ? m_totals.keysOpen : m_totals.wordsOpen) += caught[i].plain > 0 ? 1 : 0;
        }
        // Data keys are let go once the database is open; the others are in use.
        return seen["desk-signing-key"] > 0 && seen["phone-signing-key"] > 0 && seen["note"] > 0;
    }

    void lookAtLocked(pid_t process)
    {
        const auto left = inMemory(process, m_totals.searched["memory of the locked programs"]);
        m_totals.found["memory of the locked programs"] += 0;
        for (std::size_t i = 0; i < left.size(); ++i) {
            const Canary& canary = m_canaries[i];
            const std::size_t copies = isSecret(canary) ? left[i].any : left[i].plain;
            if (isSecret(canary)) {
                m_totals.keysAfterLock += copies;
                m_totals.found["memory of the locked programs"] += copies;
                if (copies > 0)
                    std::printf("FOUND: %s, %zu times in memory after the lock\n", canary.name().c_str(), copies);
            } else {
                m_totals.wordsAfterLock += copies;
                m_totals.leftByWord[canary.name()] += copies;
            }
        }
    }

    void lookAtFiles()
    {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(m_folder)) {
            if (!entry.is_regular_file() || entry.path() == m_folder / "person.log")
                continue;
            ++m_totals.files;
            const bytes::Bytes contents = contentsOf(entry.path());
            // Whom to call stays readable while locked, and nothing else does.
            const bool open = entry.path().filename() == "open.info";
            if (open) {
                const auto caught = m_net->in(contents);
                for (std::size_t i = 0; i < caught.size(); ++i)
                    (m_canaries[i].name() == "clinic" ? m_totals.openInfo : m_totals.found["files"]) += caught[i].any;
                continue;
            }
            const bool backup = entry.path().filename() == "phone.backup";
            look(entry.path().string().starts_with((m_folder / "hub").string()) ? "the hub's files" : backup ? "a backup" : "files",
                 backup ? withoutOpenPart(contents) : bytes::View(contents));
        }
    }

    /// A backup carries open.info as it is (docs/formats/backup.md).
    static bytes::View withoutOpenPart(bytes::View backup)
    {
        constexpr std::size_t lengthAt = 512;
        const std::size_t length = static_cast<std::size_t>(backup[lengthAt + 2]) << 8 | backup[lengthAt + 3];
        return backup.subspan(lengthAt + 4 + length);
    }

    /// Every value of every table, decrypted.
    void lookAtDatabase()
    {
        const bytes::Bytes raw = contentsOf(m_folder / "hub" / "hub.key");
        auto database = store::Database::inspect(m_folder / "hub" / "hub.db", crypto::Secret::from(raw));
        if (!database)
            throw std::runtime_error("the hub's database: " + database.error().detail);
        std::vector<std::pair<std::string, int>> tables;
        {
            auto named = database->prepare("SELECT m.name, count(*) FROM sqlite_master m, pragma_table_info(m.name) WHERE m.type = 'table' GROUP BY m.name");
            while (named && named->step().value_or(false))
                tables.emplace_back(named->text(0), static_cast<int>(named->integer(1)));
        }
        bytes::Bytes all;
        for (const auto& [table, columns] : tables) {
            auto rows = database->prepare("SELECT * FROM \"" + table + '"');
            while (rows && rows->step().value_or(false))
                for (int column = 0; column < columns; ++column) {
                    const bytes::Bytes value = rows->blob(column);
                    all.insert(all.end(), value.begin(), value.end());
                    all.push_back(0);
                }
        }
        look("the hub's database, decrypted", all);
    }

    /// The same search finds what is hidden on purpose, in each of its forms.
    void plant()
    {
        for (std::size_t i = 0; i < m_canaries.size(); ++i)
            for (const bytes::Bytes& form : m_canaries[i].forms()) {
                bytes::Bytes hidden(1000, 'x');
                hidden.insert(hidden.begin() + 500, form.begin(), form.end());
                m_totals.planted += m_net->in(hidden)[i].any > 0 ? 0 : 1;
            }
    }

    std::filesystem::path m_folder;
    std::mt19937_64& m_random;
    Totals& m_totals;
    std::vector<Canary> m_canaries;
    std::optional<Net> m_net;  ///< once all keys are known
};

bool report(const Totals& t)
{
    const auto row = [](const std::string& name, std::uint64_t value) {
        std::printf("  %-46s %llu\n", name.c_str(), static_cast<unsigned long long>(value));
    };
    std::uint64_t found = 0;
    bool everywhere = t.searched.size() >= 9;
    for (const auto& [place, size] : t.searched) {
        row("bytes: " + place, size);
        row("  found there", t.found.at(place));
        found += t.found.at(place);
        everywhere = everywhere && size > 0;
    }
    row("files", t.files);
    row("words found in memory while open", t.wordsOpen);
    row("keys found in memory while open", t.keysOpen);
    row("the clinic's name where it may be read", t.openInfo);
    row("forms that the search does not find", t.planted);
    row("keys in memory after the lock", t.keysAfterLock);
    row("words in memory after the lock (told, not judged)", t.wordsAfterLock);
    for (const auto& [name, count] : t.leftByWord)
        if (count > 0)
            row("  " + name, count);
    const bool proved = everywhere && t.planted == 0 && t.keysOpen > 0 && t.wordsOpen > 0 && t.openInfo > 0 && t.files > 5 * t.rounds;
    if (!proved)
        std::printf("FAILED: too little was looked at to prove anything\n");
    return found == 0 && proved;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t rounds = option(argc, argv, "--rounds", 1);
    const std::uint64_t seed = option(argc, argv, "--seed", 20270301);
    if (!crypto::initialise())
        return 2;
    std::mt19937_64 random(seed);
    const Scratch scratch("leaks");
    std::printf("search for leaks: %llu rounds, seed %llu\n", static_cast<unsigned long long>(rounds), static_cast<unsigned long long>(seed));
    Totals totals;
    bool good = true;
    try {
        for (std::uint64_t i = 0; i < rounds && good; ++i)
            good = Round(scratch.path() / "round", random, totals).play();
    } catch (const std::exception& problem) {
        std::printf("FAILED: %s\n", problem.what());
        return 1;
    }
    const bool clean = report(totals);
    return good && clean ? 0 : 1;
}
