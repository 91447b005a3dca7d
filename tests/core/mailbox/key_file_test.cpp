// The hub's key file: made once, whole or not at all, and never made anew over one that is there.

#include "core/mailbox/embedded_tables.h"
#include "tests/core/vault/folder.h"

#include <catch2/catch_test_macros.hpp>

#include <csignal>
#include <fstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::mailbox;

namespace {

using enum std::filesystem::perms;

/// Runs `what` in a process of its own, without the rights of an administrator. \returns what it returned.
int asNobody(const std::function<int()>& what)
{
    const pid_t child = ::fork();
    if (child == 0) {
        constexpr uid_t nobody = 65534;
        if (::geteuid() == 0 && (::setgid(nobody) != 0 || ::setuid(nobody) != 0))
            ::_exit(99);
        ::_exit(what());
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    return WEXITSTATUS(status);
}

std::string contentsOf(const std::filesystem::path& file)
{
    std::ifstream input(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(input), {}};
}

}  // namespace

TEST_CASE("a hub's key is made once, for its owner alone, and is the same afterwards", "[mailbox]")
{
    const test::Folder folder;
    const auto file = folder.path() / "hub.key";
    const auto first = keyFrom(file);
    REQUIRE(first);
    CHECK(std::filesystem::status(file).permissions() == (owner_read | owner_write));
    const auto again = keyFrom(file);
    REQUIRE(again);
    CHECK(std::ranges::equal(first->view(), again->view()));
    CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);
}

TEST_CASE("a key file that is there and cannot be read is an error, and stays as it is", "[mailbox]")
{
    const test::Folder folder;
    const auto file = folder.path() / "hub.key";
    std::filesystem::permissions(folder.path(), all);
    const int made = asNobody([&] { return keyFrom(file) ? 0 : 1; });
    REQUIRE(made == 0);
    const std::string before = contentsOf(file);
    REQUIRE(before.size() == crypto::Secret::size);
    std::filesystem::permissions(file, owner_write);
    CHECK(asNobody([&] {
              const auto key = keyFrom(file);
              return !key && key.error().reason == Reason::storageFailed ? 0 : 1;
          })
          == 0);
    std::filesystem::permissions(file, owner_read | owner_write);
    CHECK(contentsOf(file) == before);
}

TEST_CASE("a key that could not be written whole leaves no file, and the next start makes one", "[mailbox]")
{
    const test::Folder folder;
    const auto file = folder.path() / "hub.key";
    std::filesystem::permissions(folder.path(), all);
    CHECK(asNobody([&] {
              // As a full disk: nothing longer than ten bytes.
              const rlimit most{10, 10};
              (void)::signal(SIGXFSZ, SIG_IGN);
              if (::setrlimit(RLIMIT_FSIZE, &most) != 0)
                  return 2;
              return keyFrom(file) ? 1 : 0;
          })
          == 0);
    CHECK_FALSE(std::filesystem::exists(file));
    CHECK(keyFrom(file));
}
