// Waiting after wrong attempts: five are free, then it takes longer and longer, and neither a
// restart nor the wall clock, turned either way, makes it shorter.

#include "core/vault/attempt_guard.h"

#include "tests/core/vault/folder.h"

#include <rapidcheck.h>

#include <fstream>

using namespace ebbline;
using namespace ebbline::vault;
using namespace std::chrono_literals;

namespace {

const clock::Instant noon{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + 12h};

struct Door {
    test::Folder folder;
    clock::ManualClock clock{noon};

    Done attempt() const { return AttemptGuard(folder.path()).begin(clock.readings()); }
    std::int64_t secondsLeft() const { return AttemptGuard(folder.path()).secondsLeft(clock.readings()); }
    void useUpTheFreeOnes() const
    {
        for (int i = 0; i < 5; ++i)
            REQUIRE(attempt());
    }
};

}  // namespace

TEST_CASE("five attempts are free and the sixth waits thirty seconds", "[vault]")
{
    Door door;
    door.useUpTheFreeOnes();

    const Done sixth = door.attempt();
    REQUIRE_FALSE(sixth);
    CHECK(sixth.error() == Error{Reason::tooSoon, "30"});
    door.clock.advance(29'999ms);
    CHECK(door.attempt().error() == Error{Reason::tooSoon, "1"});
    door.clock.advance(1ms);
    CHECK(door.attempt());
}

TEST_CASE("each wrong attempt after that waits longer, up to an hour", "[vault]")
{
    Door door;
    door.useUpTheFreeOnes();

    for (const std::int64_t wait : {30, 60, 120, 300, 900, 3600, 3600}) {
        CHECK(door.secondsLeft() == wait);
        door.clock.advance(std::chrono::seconds(wait));
        REQUIRE(door.attempt());
    }
}

TEST_CASE("a success forgives all", "[vault]")
{
    Door door;
    door.useUpTheFreeOnes();
    CHECK(door.secondsLeft() == 30);

    REQUIRE(AttemptGuard(door.folder.path()).clear());

    CHECK(door.secondsLeft() == 0);
    CHECK(door.attempt());
}

TEST_CASE("turning the wall clock, forward or back, changes nothing", "[vault]")
{
    Door door;
    door.useUpTheFreeOnes();

    for (const auto jump : {24h, -24h, 24h * 365 * 20, -24h * 365 * 20}) {
        door.clock.turnWall(noon + jump);
        CHECK(door.secondsLeft() == 30);
        CHECK(door.attempt().error().reason == Reason::tooSoon);
    }
    door.clock.advance(30s);
    CHECK(door.attempt());
}

TEST_CASE("after the machine started again only the time since then counts", "[vault]")
{
    Door door;
    door.useUpTheFreeOnes();
    door.clock.advance(20s);

    door.clock.restart();
    door.clock.turnWall(noon + 48h);

    CHECK(door.secondsLeft() == 30);
    door.clock.advance(10s);
    CHECK(door.secondsLeft() == 20);
    door.clock.advance(20s);
    CHECK(door.attempt());
}

TEST_CASE("where only the program's own time is known, the wait begins anew in each start", "[vault]")
{
    Door door;
    door.clock.restart(false);
    door.useUpTheFreeOnes();

    door.clock.restart(false);
    door.clock.advance(1h);  // it ran before anybody asked: proves nothing about the attempt
    CHECK(door.attempt().error() == Error{Reason::tooSoon, "30"});
    door.clock.advance(12s);
    CHECK(door.secondsLeft() == 18);
    door.clock.advance(18s);
    CHECK(door.attempt());
}

TEST_CASE("a program that knows the boot does not trust the time of one that did not", "[vault]")
{
    Door door;
    door.clock.restart(false);
    door.useUpTheFreeOnes();

    door.clock.restart(true);
    door.clock.advance(1h);

    CHECK(door.attempt().error() == Error{Reason::tooSoon, "30"});
}

TEST_CASE("no changed byte of the file of attempts makes the wait shorter", "[vault][errors]")
{
    Door door;
    door.useUpTheFreeOnes();
    const auto file = door.folder.path() / "vault.attempts";
    std::string whole;
    {
        std::ifstream input(file, std::ios::binary);
        whole.assign(std::istreambuf_iterator<char>(input), {});
    }
    REQUIRE(whole.size() == 57);

    for (std::size_t i = 0; i < whole.size(); ++i) {
        std::string damaged = whole;
        damaged[i] = static_cast<char>(damaged[i] ^ 0x40);
        std::ofstream(file, std::ios::binary | std::ios::trunc) << damaged;
        CAPTURE(i);
        CHECK(door.secondsLeft() == 3600);
    }
    for (const std::size_t length : {0U, 1U, 12U, 56U}) {
        std::ofstream(file, std::ios::binary | std::ios::trunc) << whole.substr(0, length);
        CAPTURE(length);
        CHECK(door.secondsLeft() == 3600);
    }
    // Measured from the first attempt after the damage, so it does end.
    CHECK(door.attempt().error() == Error{Reason::tooSoon, "3600"});
    door.clock.advance(1h);
    CHECK(door.attempt());
}

TEST_CASE("no order of restarts and clock changes lets an attempt through before its time", "[vault]")
{
    CHECK(rc::check([] {
        Door door;
        door.useUpTheFreeOnes();
        constexpr std::array<std::int64_t, 6> waits{30, 60, 120, 300, 900, 3600};
        std::size_t failures = 0;
        std::chrono::milliseconds sinceLast{0};
        const int steps = *rc::gen::inRange(1, 60);
        for (int i = 0; i < steps; ++i) {
            const auto span = std::chrono::seconds(*rc::gen::inRange(0, 4000));
            switch (*rc::gen::inRange(0, 5)) {
            case 0: door.clock.turnWall(door.clock.now() + span * 1000); break;
            case 1: door.clock.turnWall(door.clock.now() - span * 1000); break;
            case 2: door.clock.restart(*rc::gen::arbitrary<bool>()); break;
            case 3:
                door.clock.advance(span);
                sinceLast += span;
                break;
            default:
                if (!door.attempt())
                    break;
                RC_ASSERT(sinceLast >= std::chrono::seconds(waits[std::min<std::size_t>(failures, waits.size() - 1)]));
                ++failures;
                sinceLast = {};
            }
        }
    }));
}
