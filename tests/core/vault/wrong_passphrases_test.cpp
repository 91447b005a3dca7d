// Many wrong passphrases at a real vault, with restarts, clocks that are turned, crashes in the middle of an attempt and
// the right passphrase in between: no wait is ever shortened, and nobody is locked out for longer than it says.

#include "core/vault/attempt_guard.h"
#include "core/vault/vault.h"

#include "tests/core/vault/folder.h"

#include <array>
#include <cstdlib>
#include <random>

using namespace ebbline;
using namespace ebbline::vault;
using namespace std::chrono_literals;

namespace {

constexpr crypto::StretchCost cheap{1, 8 * 1024};
const bytes::View right = bytes::viewOf("three calm herons wade");
const bytes::View wrong = bytes::viewOf("three calm herons fly");

/// The free attempts and the waits after them, as core/vault/attempt_guard.h promises them; seconds.
constexpr std::array<std::int64_t, 12> waits{0, 0, 0, 0, 0, 30, 60, 120, 300, 900, 3600, 3600};

class Siege {
public:
    explicit Siege(unsigned long seed) : m_random(static_cast<std::mt19937::result_type>(seed))
    {
        REQUIRE(Vault::create(m_folder.path(), Vault::Owner::patient, right, cheap, m_clock).has_value());
    }

    unsigned long attempts = 0, early = 0, opened = 0, restarts = 0, programStarts = 0, turnedAhead = 0, turnedBack = 0, crashes = 0;

    void step()
    {
        const auto span = std::chrono::seconds(m_random() % 4000);
        switch (m_random() % 8) {
        case 0: m_clock.turnWall(m_clock.now() + span * 1000); ++turnedAhead; break;
        case 1: m_clock.turnWall(m_clock.now() - span * 1000); ++turnedBack; break;
        case 2: m_clock.restart(true); ++restarts; break;
        case 3: m_clock.restart(false); ++programStarts; break;
        case 4: pass(span); break;
        case 5:
            // It is counted, and the program ends before it is made.
            if (AttemptGuard(m_folder.path()).begin(m_clock.readings())) {
                count();
                ++crashes;
            }
            break;
        default: attempt(m_random() % 12 == 0);
        }
    }

private:
    void pass(std::chrono::milliseconds time)
    {
        m_clock.advance(time);
        m_sinceLast += time;
    }
    void count()
    {
        const auto wait = std::chrono::seconds(waits[std::min(m_failures, waits.size() - 1)]);
        REQUIRE(m_sinceLast >= wait);
        ++m_failures;
        m_sinceLast = 0ms;
    }
    void attempt(bool withRight)
    {
        auto vault = Vault::unlock(m_folder.path(), withRight ? right : wrong, m_clock);
        if (!vault && vault.error().reason == Reason::tooSoon) {
            ++early;
            // What it says is enough, and never more than an hour.
            const auto left = std::stol(vault.error().detail);
            REQUIRE(left > 0);
            REQUIRE(left <= 3600);
            if (m_random() % 3 != 0)
                return;
            pass(std::chrono::seconds(left));
            vault = Vault::unlock(m_folder.path(), withRight ? right : wrong, m_clock);
        }
        if (!withRight) {
            REQUIRE_FALSE(vault.has_value());
            REQUIRE(vault.error().reason == Reason::wrongKey);
            count();
            ++attempts;
            return;
        }
        REQUIRE(vault.has_value());
        count();
        ++opened;
        m_failures = 0;
    }

    test::Folder m_folder;
    clock::ManualClock m_clock{clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + 12h}};
    std::mt19937 m_random;
    std::size_t m_failures = 0;
    std::chrono::milliseconds m_sinceLast{std::chrono::hours(2)};
};

}  // namespace

TEST_CASE("no wait after wrong passphrases is shortened, and the right one opens once it is over; EBBLINE_TRIES says how many, EBBLINE_SEED which",
          "[vault][tries]")
{
    const auto given = [](const char* name, unsigned long otherwise) {
        const char* text = std::getenv(name);
        return text && *text ? std::strtoul(text, nullptr, 10) : otherwise;
    };
    const unsigned long seed = given("EBBLINE_SEED", 20'270'301);
    const unsigned long tries = given("EBBLINE_TRIES", 200);
    CAPTURE(seed);
    Siege siege(seed);
    while (siege.attempts < tries)
        siege.step();
    INFO(siege.attempts << " wrong passphrases, " << siege.early << " asked too soon, " << siege.opened << " times opened, " << siege.restarts << " restarts, "
                        << siege.programStarts << " starts of the program alone, clock turned ahead " << siege.turnedAhead << " and back " << siege.turnedBack
                        << " times, " << siege.crashes << " attempts cut off");
    // It shows nothing unless all of this happened.
    for (const unsigned long each : {siege.early, siege.opened, siege.restarts, siege.programStarts, siege.turnedAhead, siege.turnedBack, siege.crashes})
        CHECK((each > 0 || tries < 200));
}
