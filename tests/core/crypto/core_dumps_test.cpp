// A crash leaves no image of memory: tried in a child, whose limits go with it.

#include "core/crypto/core_dumps.h"

#include <catch2/catch_test_macros.hpp>

#include <csignal>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;

TEST_CASE("a program that holds keys leaves no image of its memory when it crashes", "[crypto]")
{
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        rlimit limit{};
        if (!crypto::refuseCoreDumps() || ::getrlimit(RLIMIT_CORE, &limit) != 0 || limit.rlim_cur != 0 || limit.rlim_max != 0)
            ::_exit(1);
        ::signal(SIGABRT, SIG_DFL);
        ::abort();
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    CHECK(WTERMSIG(status) == SIGABRT);
    CHECK_FALSE(WCOREDUMP(status));
}
