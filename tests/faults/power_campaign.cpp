// power_campaign [--cuts N] [--seed S] [--minutes M]: M ends it early, with the count that it reached.
//
// Works on a vault over a disk that loses its power at a random call: what was never synced is dropped, kept,
// or torn at 512 bytes, whatever its order. Then the vault is opened: everything acknowledged must be there,
// nothing half there. Fails also if no cut tore or dropped anything.

#include "tests/faults/fault_disk.h"
#include "tests/faults/workload.h"

#include <cstdio>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

constexpr std::uint64_t cutsPerVault = 10;

unsigned long long plain(std::uint64_t n) { return n; }

}  // namespace

int main(int argc, char** argv)
{
    std::uint64_t wanted = option(argc, argv, "--cuts", 250);
    const double until = secondsNow() + 60.0 * static_cast<double>(option(argc, argv, "--minutes", 100'000));
    const std::uint64_t seed = option(argc, argv, "--seed", 20270301);
    if (!crypto::initialise())
        return 2;
    const Scratch scratch("cuts");
    std::mt19937_64 random(seed);
    clock::ManualClock clock(clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}});
    std::printf("power campaign: %llu cuts, seed %llu\n", plain(wanted), plain(seed));
    FaultDisk disk;
    FaultDisk::Loss loss;
    std::uint64_t cuts = 0, vaults = 0, acknowledged = 0, refused = 0, whileOpening = 0;
    while (cuts < wanted) {
        const std::filesystem::path folder = scratch.path() / ("vault" + std::to_string(vaults++));
        if (!vault::Vault::create(folder, vault::Vault::Owner::patient, faults::passphrase, cheap, clock))
            return 2;
        const auto dataKey = vault::openDataKey(folder, vault::Offered::passphrase(faults::passphrase), clock.readings());
        if (!dataKey)
            return 2;
        Ledger ledger;
        for (std::uint64_t i = 0; i < cutsPerVault && cuts < wanted; ++i) {
            disk.arm(Fault::powerCut, 1 + random() % 400);
            {
                auto vault = vault::Vault::open(folder, *dataKey, clock);
                whileOpening += vault ? 0 : 1;
                std::optional<Worker> worker;
                if (vault)
                    worker.emplace(*vault, random());
                // Now and then a life ends well, and the cut falls into closing or after it.
                for (std::uint64_t left = 1 + random() % 60; worker && left > 0 && !disk.isOff(); --left) {
                    const auto ack = worker->work();
                    refused += ack ? 0 : 1;
                    if (ack)
                        ledger.add(*ack);
                }
            }
            const FaultDisk::Loss now = disk.powerReturns(random);
            loss.dropped += now.dropped;
            loss.torn += now.torn;
            loss.kept += now.kept;
            loss.revived += now.revived;
            if (++cuts; secondsNow() > until)
                wanted = cuts;
            const auto wrong = ledger.check(folder, *dataKey, clock);
            for (const std::string& text : wrong)
                std::printf("FAILED after cut %llu: %s\n", plain(cuts), text.c_str());
            if (!wrong.empty())
                return 1;
        }
        acknowledged += ledger.acknowledged();
        std::filesystem::remove_all(folder);
    }
    std::printf("  %-42s %llu\n", "cuts", plain(cuts));
    std::printf("  %-42s %llu\n", "while the vault was being opened", plain(whileOpening));
    std::printf("  %-42s %llu\n", "acknowledged, all found again", plain(acknowledged));
    std::printf("  %-42s %llu\n", "refused because the power was off", plain(refused));
    std::printf("  %-42s %llu\n", "unsynced writes dropped", plain(loss.dropped));
    std::printf("  %-42s %llu\n", "torn", plain(loss.torn));
    std::printf("  %-42s %llu\n", "kept", plain(loss.kept));
    std::printf("  %-42s %llu\n", "deleted files that came back", plain(loss.revived));
    std::printf("  %-42s %llu\n", "vaults", plain(vaults));
    // How much lies unsynced at a cut varies with keys, file system and build of SQLite: 199 to 260 for 250 cuts.
    const bool met = loss.dropped * 2 >= wanted && loss.torn * 4 >= wanted && acknowledged >= wanted && refused * 4 >= wanted
                     && whileOpening > 0;
    if (!met)
        std::printf("FAILED: the cuts did not fall where they should\n");
    return met ? 0 : 1;
}
