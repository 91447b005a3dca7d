// A system that does not let the program at its files: each says so, none is taken for damage or a wrong passphrase, and what was
// acknowledged is there once the system lets it again.

#include "tests/core/vault/filled_vault.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

constexpr uid_t nobody = 65534;

/// Permissions hold nobody back who runs as root: then these tests go on as somebody else.
class Ordinary {
public:
    explicit Ordinary(const std::filesystem::path& folder) : m_root(::geteuid() == 0)
    {
        if (!m_root)
            return;
        REQUIRE(::chown(folder.c_str(), nobody, nobody) == 0);
        for (const auto& file : std::filesystem::directory_iterator(folder))
            REQUIRE(::chown(file.path().c_str(), nobody, nobody) == 0);
        REQUIRE(::seteuid(nobody) == 0);
    }
    ~Ordinary()
    {
        if (m_root)
            (void)::seteuid(0);
    }
    Ordinary(const Ordinary&) = delete;
    Ordinary& operator=(const Ordinary&) = delete;

private:
    bool m_root;
};

/// A mode that a path has for a while.
class Mode {
public:
    Mode(std::filesystem::path path, mode_t mode) : m_path(std::move(path))
    {
        struct stat before{};
        REQUIRE(::stat(m_path.c_str(), &before) == 0);
        m_before = before.st_mode & 07777;
        REQUIRE(::chmod(m_path.c_str(), mode) == 0);
    }
    ~Mode() { (void)::chmod(m_path.c_str(), m_before); }
    Mode(const Mode&) = delete;
    Mode& operator=(const Mode&) = delete;

private:
    std::filesystem::path m_path;
    mode_t m_before = 0;
};

/// No more files can be opened while it lives.
class NoMoreFiles {
public:
    NoMoreFiles()
    {
        REQUIRE(::getrlimit(RLIMIT_NOFILE, &m_before) == 0);
        const int next = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
        REQUIRE(next >= 0);
        ::close(next);
        rlimit none = m_before;
        none.rlim_cur = static_cast<rlim_t>(next);
        REQUIRE(::setrlimit(RLIMIT_NOFILE, &none) == 0);
    }
    ~NoMoreFiles() { (void)::setrlimit(RLIMIT_NOFILE, &m_before); }
    NoMoreFiles(const NoMoreFiles&) = delete;
    NoMoreFiles& operator=(const NoMoreFiles&) = delete;

private:
    rlimit m_before{};
};

struct Held {
    test::FilledVault vault;
    std::string digest = journal::dump(Vault::unlock(vault.path(), test::herons, vault.clock)->state());

    Result<Vault> unlocked() const { return Vault::unlock(vault.path(), test::herons, vault.clock); }
    /// Everything is there, no attempt was counted against the person, and it goes on.
    void checkWhole() const
    {
        auto opened = unlocked();
        REQUIRE(opened);
        CHECK(journal::dump(opened->state()) == digest);
        CHECK(AttemptGuard(vault.path()).secondsLeft(vault.clock.readings()) == 0);
        CHECK(opened->append({records::EntryRecorded{test::sampleEntry(77)}}, test::secondEvening));
        CHECK(opened->verify());
    }
};

}  // namespace

TEST_CASE("a folder that may only be read opens for nobody, says that it cannot be written, and loses nothing", "[vault][errors]")
{
    const Held held;
    {
        const Ordinary person(held.vault.path());
        const Mode readOnly(held.vault.path(), 0500);
        // More often than wrong passphrases are free: none of these is one.
        for (int i = 0; i < 8; ++i) {
            const auto opened = held.unlocked();
            REQUIRE_FALSE(opened);
            CHECK(opened.error().reason == Reason::storageFailed);
        }
        CHECK(changePassphrase(held.vault.path(), held.vault.offered(), bytes::viewOf("another"), test::cheapCost, held.vault.clock.readings())
                  .error()
                  .reason
              == Reason::storageFailed);
    }
    held.checkWhole();
}

TEST_CASE("a file that may not be read is neither missing, nor damaged, nor made anew", "[vault][errors]")
{
    for (const char* name : {"vault.keys", "vault.db"}) {
        CAPTURE(name);
        const Held held;
        {
            const Ordinary person(held.vault.path());
            const Mode shutOff(held.vault.path() / name, 0000);
            const bool keys = std::string_view(name) == "vault.keys";
            if (keys)
                std::filesystem::remove(held.vault.path() / "vault.keys.previous");
            const auto opened = held.unlocked();
            REQUIRE_FALSE(opened);
            CHECK(opened.error().reason == Reason::storageFailed);
            CHECK(Vault::create(held.vault.path(), Vault::Owner::patient, test::herons, test::cheapCost, held.vault.clock).error().reason
                  == Reason::alreadyExists);
        }
        CHECK(std::filesystem::file_size(held.vault.path() / name) > 0);
        held.checkWhole();
    }
}

TEST_CASE("where no more files can be opened a vault says so, and an open one loses nothing that it acknowledged", "[vault][errors]")
{
    const Held held;
    {
        const NoMoreFiles none;
        const auto opened = held.unlocked();
        REQUIRE_FALSE(opened);
        CHECK(opened.error().reason == Reason::storageFailed);
    }
    held.checkWhole();

    std::size_t acknowledged = 0;
    {
        auto vault = held.unlocked();
        REQUIRE(vault);
        const std::size_t before = vault->operations().size();
        {
            const NoMoreFiles none;
            for (std::uint8_t i = 0; i < 10; ++i)
                acknowledged += vault->append({records::EntryRecorded{test::sampleEntry(static_cast<std::uint8_t>(200 + i))}}, test::secondEvening) ? 1 : 0;
        }
        CHECK(vault->operations().size() == before + acknowledged);
        // And once there are files again it goes on as it was.
        REQUIRE(vault->append({records::EntryRecorded{test::sampleEntry(90)}}, test::secondEvening));
        acknowledged += before + 1;
    }
    const auto again = held.unlocked();
    REQUIRE(again);
    CHECK(again->operations().size() == acknowledged);
    CHECK(held.vault.inspected().sound());
}
