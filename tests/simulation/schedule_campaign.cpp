// schedule_campaign [--schedules N] [--seed S] [--minutes M] [--show N]: M ends it early; N shows one schedule's trace.
//
// Random schedules of writing, syncing, losing, repeating, delaying, cutting off, restarting, losing power and
// setting clocks. After each the network is well again: every device must show the same bytes. The first
// schedules run twice: the same seed must give the same trace.

#include "tests/faults/workload.h"
#include "tests/simulation/seeded_randomness.h"
#include "tests/simulation/world.h"

#include <cstdio>

using namespace ebbline;
using namespace ebbline::simulation;
using namespace std::chrono_literals;

namespace {

struct Totals {
    NetworkCounters network;
    WorldCounters world;
    std::uint64_t clocksSet = 0, withFailingDisk = 0, rounds = 0, traceLines = 0;
    std::chrono::hours farthest{0};
};

void add(NetworkCounters& to, const NetworkCounters& from)
{
    to.requests += from.requests;
    to.handled += from.handled;
    to.lost += from.lost;
    to.answersLost += from.answersLost;
    to.repeated += from.repeated;
    to.slow += from.slow;
    to.cutOff += from.cutOff;
    to.late += from.late;
}

void add(WorldCounters& to, const WorldCounters& from)
{
    to.entries += from.entries;
    to.amended += from.amended;
    to.messages += from.messages;
    to.openings += from.openings;
    to.runs += from.runs;
    to.restarts += from.restarts;
    to.cuts += from.cuts;
    to.refused += from.refused;
    to.operationsReceived += from.operationsReceived;
    to.forks += from.forks;
    to.rolledBack += from.rolledBack;
    to.quarantined += from.quarantined;
    to.photos += from.photos;
    to.photosTakenBack += from.photosTakenBack;
    to.photosArrived += from.photosArrived;
    to.photosRefused += from.photosRefused;
    to.chunksSent += from.chunksSent;
    to.chunksReceived += from.chunksReceived;
}

/// One act of one device, drawn by chance.
void book(World& world, std::chrono::minutes when, Totals& totals)
{
    World::Device& device = *world.devices[world.random() % world.devices.size()];
    const std::uint64_t dice = world.random() % 100;
    world.timeline.in(when, [&world, &device, dice, &totals] {
        if (dice < 34) {
            world.act(device, [&] { device.diary ? world.writeEntry(device) : world.openEntries(); });
        } else if (dice < 38) {
            world.act(device, [&] { world.writeMessage(device); });
        } else if (dice < 48) {
            const bool back = world.random() % 3 == 0;
            if (device.diary)
                world.act(device, [&] { back ? world.takePhotoBack(device) : world.takePhoto(device); });
        } else if (dice < 82) {
            world.act(device, [&] { world.syncOnce(device); });
        } else if (dice < 87) {
            world.restart(device);
        } else if (dice < 93) {
            device.line->cut(true);
            world.timeline.in(std::chrono::minutes(1 + world.random() % 600), [&device] { device.line->cut(false); });
        } else {
            const auto skew = std::chrono::seconds(static_cast<std::int64_t>(world.random() % (96 * 3600)) - 48 * 3600);
            device.clock.set(skew);
            ++totals.clocksSet;
            totals.farthest = std::max(totals.farthest, std::chrono::duration_cast<std::chrono::hours>(std::chrono::abs(skew)));
        }
    });
}

std::vector<std::string> runOne(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed,
                                Trace& trace, Totals& totals)
{
    SeededRandomness::reseed(seed);
    const bool failingDisk = seed % 3 == 0;
    World world(from, folder, seed, trace, failingDisk);
    totals.withFailingDisk += failingDisk ? 1 : 0;
    const auto upTo = [&](unsigned most) { return static_cast<unsigned>(world.random() % (most + 1)); };
    world.network.set({upTo(250), upTo(250), upTo(150), upTo(120)});
    world.setCuts(failingDisk ? 150 : 0);
    for (std::uint64_t left = 25 + world.random() % 60; left > 0; --left)
        book(world, std::chrono::minutes(world.random() % (72 * 60)), totals);
    std::vector<std::string> wrong;
    std::uint64_t events = 0;
    while (world.timeline.step())
        if (++events % 40 == 0)
            world.checkClaims(wrong);
    totals.rounds += static_cast<std::uint64_t>(world.heal(12));
    world.checkConvergence(wrong);
    if (world.counters.forks + world.counters.rolledBack + world.counters.quarantined + world.counters.photosRefused > 0)
        wrong.push_back("an honest hub was accused");
    for (const auto& device : world.devices)
        trace.line(world.timeline.now(), device->name + " ends with " + bytes::toHex(journal::digest(device->vault().state())));
    add(totals.network, world.network.counters());
    add(totals.world, world.counters);
    totals.traceLines += trace.lines();
    return wrong;
}

void print(const char* name, std::uint64_t value)
{
    std::printf("  %-46s %llu\n", name, static_cast<unsigned long long>(value));
}

bool report(const Totals& t, std::uint64_t schedules)
{
    const std::vector<std::pair<const char*, std::uint64_t>> rows{
        {"entries recorded", t.world.entries}, {"entries amended", t.world.amended}, {"messages", t.world.messages},
        {"photographs taken", t.world.photos}, {"photographs taken back", t.world.photosTakenBack},
        {"photographs arrived", t.world.photosArrived}, {"chunks put up", t.world.chunksSent},
        {"chunks fetched", t.world.chunksReceived},
        {"openings", t.world.openings}, {"sync runs", t.world.runs}, {"operations delivered", t.world.operationsReceived},
        {"requests", t.network.requests}, {"requests lost", t.network.lost}, {"answers lost", t.network.answersLost},
        {"requests repeated", t.network.repeated}, {"slow by up to an hour", t.network.slow},
        {"answers too late", t.network.late}, {"requests while cut off", t.network.cutOff},
        {"programs started again", t.world.restarts}, {"clocks set", t.clocksSet},
        {"schedules on a failing disk", t.withFailingDisk}, {"power cuts", t.world.cuts},
        {"refused, the power being off or the clock wrong", t.world.refused}, {"rounds until nothing changed", t.rounds},
        {"lines of trace", t.traceLines}};
    bool everything = true;
    for (const auto& [name, value] : rows) {
        print(name, value);
        everything = everything && value > 0;
    }
    print("farthest clock, hours", static_cast<std::uint64_t>(t.farthest.count()));
    print("schedules that converged to the same bytes", schedules);
    return everything;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t wanted = faults::option(argc, argv, "--schedules", 60);
    const std::uint64_t seed = faults::option(argc, argv, "--seed", 20270301);
    const std::uint64_t show = faults::option(argc, argv, "--show", 0);
    const double until = faults::secondsNow() + 60.0 * static_cast<double>(faults::option(argc, argv, "--minutes", 100'000));
    constexpr std::uint64_t twice = 6;
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    const SeededRandomness randomness(seed);
    const faults::Scratch scratch("schedules");
    std::printf("random sync schedules: %llu, seed %llu\n", static_cast<unsigned long long>(wanted),
                static_cast<unsigned long long>(seed));
    std::vector<ClinicTemplate> clinics;
    for (std::size_t phones = 1; phones <= 3; ++phones)
        clinics.push_back(ClinicTemplate::make(scratch.path() / ("clinic" + std::to_string(phones)), phones));
    Totals totals;
    std::uint64_t done = 0;
    for (; done < wanted && faults::secondsNow() < until; ++done) {
        const std::uint64_t own = seed + done;
        const ClinicTemplate& from = clinics[own % clinics.size()];
        std::string first;
        for (std::uint64_t run = 0; run < (done < twice ? 2u : 1u); ++run) {
            Trace trace(own == show ? [](const std::string& line) { std::fputs(line.c_str(), stdout); }
                                    : std::function<void(const std::string&)>());
            const auto wrong = runOne(from, scratch.path() / "run", own, trace, totals);
            for (const std::string& text : wrong)
                std::printf("FAILED with seed %llu: %s\n", static_cast<unsigned long long>(own), text.c_str());
            const std::string hash = trace.take();
            if (run == 0)
                first = hash;
            else if (hash != first)
                std::printf("FAILED: seed %llu gives two traces\n", static_cast<unsigned long long>(own));
            if (!wrong.empty() || hash != first)
                return 1;
        }
        if (done < 2)
            std::printf("  trace of seed %llu: %s\n", static_cast<unsigned long long>(own), first.c_str());
    }
    const bool everything = report(totals, done);
    if (!everything)
        std::printf("FAILED: something that the schedules are about never happened\n");
    return everything ? 0 : 1;
}
