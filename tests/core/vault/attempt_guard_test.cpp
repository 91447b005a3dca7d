// Waiting after wrong attempts: five are free, then it takes longer and longer, and neither a
// restart nor a clock turned back makes it shorter.

#include "core/vault/key_slots.h"

#include "tests/core/vault/folder.h"

#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;
using namespace std::chrono_literals;

namespace {

const clock::Instant noon{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + 12h};

}  // namespace

TEST_CASE("five attempts are free and the sixth waits thirty seconds", "[vault]")
{
    const test::Folder folder;
    AttemptGuard guard(folder.path());

    for (int i = 0; i < 5; ++i)
        REQUIRE(guard.begin(noon));

    const Done sixth = guard.begin(noon);
    REQUIRE_FALSE(sixth);
    CHECK(sixth.error() == Error{Reason::tooSoon, "30"});
    CHECK(guard.begin(noon + 30s));
}

TEST_CASE("each wrong attempt after that waits longer, up to an hour", "[vault]")
{
    const test::Folder folder;
    AttemptGuard guard(folder.path());
    clock::Instant now = noon;
    for (int i = 0; i < 5; ++i)
        REQUIRE(guard.begin(now));

    for (const std::int64_t wait : {30, 60, 120, 300, 900, 3600, 3600}) {
        CHECK(guard.secondsLeft(now) == wait);
        now += std::chrono::seconds(wait);
        REQUIRE(guard.begin(now));
    }
}

TEST_CASE("a restart forgets nothing and a success forgives all", "[vault]")
{
    const test::Folder folder;
    for (int i = 0; i < 5; ++i)
        REQUIRE(AttemptGuard(folder.path()).begin(noon));

    CHECK(AttemptGuard(folder.path()).secondsLeft(noon) == 30);
    REQUIRE(AttemptGuard(folder.path()).clear());
    CHECK(AttemptGuard(folder.path()).secondsLeft(noon) == 0);
}

TEST_CASE("turning the clock back does not shorten the wait", "[vault]")
{
    const test::Folder folder;
    AttemptGuard guard(folder.path());
    for (int i = 0; i < 5; ++i)
        REQUIRE(guard.begin(noon));

    CHECK(guard.secondsLeft(noon - 24h) == 30);
}

TEST_CASE("damaging the file of attempts does not help", "[vault]")
{
    const test::Folder folder;
    AttemptGuard guard(folder.path());
    REQUIRE(guard.begin(noon));

    std::ofstream(folder.path() / "vault.attempts", std::ios::trunc) << "x";

    CHECK_FALSE(guard.begin(clock::Instant{}));
}
