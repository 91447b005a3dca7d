// kill_campaign [--kills N] [--seed S] [--minutes M]: M ends it early, with the count that it reached.
//
// A child opens a vault and works on it, acknowledging each thing on a pipe once the vault has said that it is
// done; the parent kills it with signal 9 at a random moment, opens the vault and looks whether everything
// acknowledged is there, nothing is half there, and the vault inspects as whole. Fails if anything is wrong, or if
// the kills did not fall where they should: during opening, inside transactions, between them.

#include "tests/faults/workload.h"

#include <csignal>
#include <cstdio>
#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

constexpr std::uint64_t killsPerVault = 16;
constexpr std::uint64_t longestLife = 12'000;  ///< microseconds after opening

void say(int pipe, const Ack& ack)
{
    if (::write(pipe, &ack, sizeof ack) != static_cast<ssize_t>(sizeof ack))
        ::_exit(3);
}

[[noreturn]] void live(const std::filesystem::path& folder, std::uint64_t seed, const clock::Clock& clock, int pipe)
{
    auto vault = vault::Vault::unlock(folder, faults::passphrase, clock);
    if (!vault) {
        std::fprintf(stderr, "the child cannot open the vault: %s\n", vault.error().detail.c_str());
        ::_exit(4);
    }
    say(pipe, {Ack::What::opened, 0, {}});
    Worker worker(*vault, seed);
    for (;;) {
        say(pipe, {Ack::What::begun, 0, {}});
        if (const auto ack = worker.work())
            say(pipe, *ack);
    }
}

struct Counts {
    std::uint64_t kills = 0, whileOpening = 0, insideWork = 0, betweenWork = 0, acknowledged = 0, walLeft = 0, vaults = 0;
    double slowestOpen = 0;
};

/// One life and death. \returns false if the child ended by itself.
bool liveAndDie(const std::filesystem::path& folder, std::mt19937_64& random, const clock::Clock& clock, Ledger& ledger,
                Counts& counts)
{
    int ends[2];
    if (::pipe(ends) != 0)
        return false;
    const std::uint64_t seed = random();
    // One life in six ends before the vault is open.
    const bool early = random() % 6 == 0;
    const std::uint64_t wait = random() % (early ? 12'000 : longestLife);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        live(folder, seed, clock, ends[1]);
    }
    ::close(ends[1]);
    Ack last;
    Ack ack;
    std::uint64_t heard = 0;
    if (!early && ::read(ends[0], &ack, sizeof ack) == static_cast<ssize_t>(sizeof ack)) {
        last = ack;
        ++heard;
    }
    ::usleep(static_cast<useconds_t>(wait));
    ::kill(child, SIGKILL);
    while (::read(ends[0], &ack, sizeof ack) == static_cast<ssize_t>(sizeof ack)) {
        ledger.add(ack);
        last = ack;
        ++heard;
    }
    ::close(ends[0]);
    int status = 0;
    if (::waitpid(child, &status, 0) != child || !WIFSIGNALED(status))
        return false;
    ++counts.kills;
    if (heard == 0)
        ++counts.whileOpening;
    else if (last.what == Ack::What::begun)
        ++counts.insideWork;
    else
        ++counts.betweenWork;
    return true;
}

}  // namespace

int main(int argc, char** argv)
{
    std::uint64_t wanted = option(argc, argv, "--kills", 150);
    const double until = secondsNow() + 60.0 * static_cast<double>(option(argc, argv, "--minutes", 100'000));
    const std::uint64_t seed = option(argc, argv, "--seed", 20270301);
    if (!crypto::initialise())
        return 2;
    const Scratch scratch("kills");
    std::mt19937_64 random(seed);
    clock::ManualClock clock(clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}});
    Counts counts;
    std::printf("kill campaign: %llu kills, seed %llu\n", static_cast<unsigned long long>(wanted), static_cast<unsigned long long>(seed));
    while (counts.kills < wanted) {
        const std::filesystem::path folder = scratch.path() / ("vault" + std::to_string(counts.vaults++));
        if (!vault::Vault::create(folder, vault::Vault::Owner::patient, faults::passphrase, cheap, clock))
            return 2;
        const auto dataKey = vault::openDataKey(folder, vault::Offered::passphrase(faults::passphrase), clock.readings());
        if (!dataKey)
            return 2;
        Ledger ledger;
        for (std::uint64_t i = 0; i < killsPerVault && counts.kills < wanted; ++i) {
            // A kill between counting an attempt and clearing it is no wrong passphrase; its wait passes.
            clock.advance(std::chrono::hours(2));
            const std::uint64_t before = ledger.acknowledged();
            if (!liveAndDie(folder, random, clock, ledger, counts)) {
                std::printf("FAILED: the child ended by itself after %llu kills\n", static_cast<unsigned long long>(counts.kills));
                return 1;
            }
            counts.acknowledged += ledger.acknowledged() - before;
            std::error_code none;
            counts.walLeft += std::filesystem::file_size(folder / "vault.db-wal", none) > 0 && !none ? 1 : 0;
            const double began = secondsNow();
            const auto wrong = ledger.check(folder, *dataKey, clock);
            counts.slowestOpen = std::max(counts.slowestOpen, secondsNow() - began);
            if (secondsNow() > until)
                wanted = std::max<std::uint64_t>(1, counts.kills);
            for (const std::string& text : wrong)
                std::printf("FAILED after kill %llu: %s\n", static_cast<unsigned long long>(counts.kills), text.c_str());
            if (!wrong.empty())
                return 1;
        }
        std::filesystem::remove_all(folder);
    }
    const auto show = [](const char* what, std::uint64_t n) { std::printf("  %-42s %llu\n", what, static_cast<unsigned long long>(n)); };
    show("kills", counts.kills);
    show("while the vault was being opened", counts.whileOpening);
    show("inside a piece of work", counts.insideWork);
    show("between two", counts.betweenWork);
    show("acknowledged, all found again", counts.acknowledged);
    show("kills that left a write-ahead log", counts.walLeft);
    show("vaults", counts.vaults);
    std::printf("  %-42s %.3f s\n", "slowest reopening with inspection", counts.slowestOpen);
    // Without these the campaign proves nothing.
    const bool met = counts.whileOpening * 50 >= wanted && counts.insideWork * 4 >= wanted && counts.acknowledged >= wanted
                     && counts.walLeft * 2 >= wanted;
    if (!met)
        std::printf("FAILED: the kills did not fall where they should\n");
    return met ? 0 : 1;
}
