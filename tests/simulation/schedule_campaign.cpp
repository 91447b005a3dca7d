// schedule_campaign [--schedules N] [--seed S] [--minutes M] [--show N]: M ends it early; N shows one schedule's trace.
//
// Random schedules of writing, syncing, losing, repeating, delaying, cutting off, restarting, losing power and
// setting clocks; of a further desk that joins and one that is shut out, fresh keys, phones that are replaced or lost, and
// a phone, a desk or a hub that is put back. After each the network is well again, what the guides say is done, and every
// device that counts must show the same bytes. The first schedules run twice: the same seed must give the same trace.

#include "tests/faults/workload.h"
#include "tests/simulation/counters.h"
#include "tests/simulation/seeded_randomness.h"

#include <cstdio>

using namespace ebbline;
using namespace ebbline::simulation;
using namespace std::chrono_literals;

namespace {

struct Totals {
    NetworkCounters network;
    WorldCounters world;
    std::uint64_t clocksSet = 0, withFailingDisk = 0, withPause = 0, rounds = 0, traceLines = 0;
    std::chrono::hours farthest{0};
};

/// One act of one device, drawn by chance.
void book(World& world, std::chrono::minutes when, Totals& totals)
{
    const std::uint64_t dice = world.random() % 100;
    world.timeline.in(when, [&world, dice, &totals] {
        World::Device& device = *world.devices[world.random() % world.devices.size()];
        if (dice < 34) {
            const bool opens = world.random() % 2 == 0;
            world.act(device, [&] { device.diary ? world.writeEntry(device) : opens ? world.openEntries(device) : world.workOnFindings(device); });
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

/// Something that happens to the clinic at a random moment between two hours of the schedule.
class Turns {
public:
    Turns(World& world, std::chrono::hours pause) : m_world(world), m_pause(pause) {}

    void book()
    {
        if (chance(45)) {
            at(0, 30, [this] { (void)m_world.joinDesk("Dr. Jonas Feld"); });
            if (chance(45))
                at(34, 70, [this] { withFurtherDesk([this](World::Device& device) { m_world.shutOut(device); }); });
        }
        if (chance(30))
            at(6, 66, [this] { m_world.beginEpoch(); });
        const std::size_t which = m_world.random() % m_world.phones();
        const std::uint64_t dice = m_world.random() % 100;
        if (dice < 30) {
            at(8, 64, [this, which] { (void)m_world.replacePhone(which); });
        } else if (dice < 50) {
            at(8, 50, [this, which] { m_world.losePhone(which); });
            at(51, 70, [this, which] { (void)m_world.replacePhone(which); });
        }
        bookPuttingBack();
    }

private:
    bool chance(unsigned percent) { return m_world.random() % 100 < percent; }
    void at(unsigned from, unsigned to, std::function<void()> what)
    {
        const std::chrono::minutes when(from * 60 + m_world.random() % ((to - from) * 60));
        m_world.timeline.in(when >= 36h ? when + m_pause : when, std::move(what));
    }
    void withFurtherDesk(const std::function<void(World::Device&)>& what)
    {
        if (const auto desks = m_world.desks(); desks.size() > 1)
            what(*desks.back());
    }
    /// One of them in a schedule: where a hub and a device forget the same, it is nowhere.
    void bookPuttingBack()
    {
        const std::uint64_t dice = m_world.random() % 100;
        const std::size_t which = m_world.random() % m_world.phones();
        if (dice < 20)
            putBack([this, which]() -> World::Device* { return m_world.phone(which).ended ? nullptr : &m_world.phone(which); });
        else if (dice < 35)
            putBack([this]() -> World::Device* { return &m_world.desk(); });
        else if (dice < 50)
            putBack([this]() -> World::Device* { return m_world.desks().size() > 1 ? m_world.desks().back() : nullptr; });
        else if (dice < 70) {
            at(2, 34, [this] { m_world.copyHubAside(); });
            at(40, 68, [this] {
                if (!m_world.hasHubCopy())
                    return;
                m_world.rollHubBack();
                ++m_world.counters.hubsPutBack;
            });
        }
    }
    /// A backup is at most a week old: what was acknowledged before that is no more at a hub.
    void putBack(const std::function<World::Device*()>& whom)
    {
        const auto save = [this, whom] {
            if (World::Device* device = whom())
                m_world.backUp(*device);
        };
        if (m_pause > 0h)
            m_world.timeline.in(36h + m_pause - 1min, save);
        else
            at(2, 34, save);
        at(38, 64, [this, whom] {
            if (World::Device* device = whom(); device && device->backup)
                m_world.restore(*device);
        });
    }

    World& m_world;
    std::chrono::hours m_pause;
};

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
    // In some the clinic is closed for more than a week in the middle, and the hub lets go of what is old.
    const std::chrono::hours pause = world.random() % 4 == 0 ? 9 * 24h : 0h;
    totals.withPause += pause > 0h ? 1 : 0;
    if (pause > 0h)
        world.timeline.in(36h + pause - 2h, [&world] { world.tidyHub(0h); });
    for (std::uint64_t left = 25 + world.random() % 60; left > 0; --left) {
        const std::chrono::minutes when(world.random() % (72 * 60));
        book(world, when >= 36h ? when + pause : when, totals);
    }
    Turns turns(world, pause);
    turns.book();
    std::vector<std::string> wrong;
    std::uint64_t events = 0;
    while (world.timeline.step())
        if (++events % 40 == 0)
            world.checkClaims(wrong);
    // Whoever goes on from an older copy is to be seen by signs of life, if by nothing else, and a hub that forgot hears anew
    // who is over: that takes more than a day.
    const auto heal = [&] {
        const bool putBack = world.counters.desksRestored + world.counters.phonesRestored + world.counters.hubsPutBack > 0;
        totals.rounds += static_cast<std::uint64_t>(putBack ? world.heal(14, 5) : world.heal(12));
    };
    heal();
    if (world.setUpAnew(wrong))
        heal();
    world.checkConvergence(wrong);
    world.checkEndings(wrong);
    const WorldCounters& c = world.counters;
    if (c.desksRestored + c.phonesRestored == 0 && c.forks + c.rolledBack > 0)
        wrong.push_back("an honest device was accused");
    if (c.desksRestored + c.phonesRestored + c.hubsPutBack + c.phonesReplacedAtHand + c.phonesLost + c.desksJoined == 0 && c.quarantined > 0)
        wrong.push_back("something honest was set apart");
    if (c.photosRefused > 0)
        wrong.push_back("an honest photograph was refused");
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
    std::vector<CounterRow> rows = rowsOf(t.network, t.world);
    rows.insert(rows.end(), {{"clocks set", t.clocksSet}, {"schedules on a failing disk", t.withFailingDisk},
                             {"schedules with a week without anybody", t.withPause}, {"rounds until nothing changed", t.rounds},
                             {"lines of trace", t.traceLines}});
    bool everything = true;
    for (const CounterRow& row : rows) {
        print(row.name, row.value);
        everything = everything && (row.value > 0 || schedules < row.from);
    }
    print("what only a phone holds of a desk that is gone", t.world.onlyOnPhones);
    print("entries that only a desk shut out later had taken", t.world.goneWithADesk);
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
    // In every other one the keys are due to be replaced during the schedule.
    for (std::size_t kind = 0; kind < 6; ++kind)
        clinics.push_back(ClinicTemplate::make(scratch.path() / ("clinic" + std::to_string(kind)), 1 + kind % 3, kind % 2 == 0 ? 0h : 29 * 24h));
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
