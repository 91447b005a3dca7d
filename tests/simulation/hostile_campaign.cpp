// hostile_campaign [--scripts N] [--seed S] [--minutes M] [--show N]
//
// Scripts of a hub that lies (tests/simulation/hostile_hub.h), and of phones and hubs that are put back to an older
// copy. While it lies: nothing forged is accepted, no state runs ahead of its proof. Afterwards, with an honest
// hub: nothing is lost, every device shows the same bytes. What a lie can be seen by must have been seen.

#include "tests/faults/workload.h"
#include "tests/simulation/hostile_hub.h"
#include "tests/simulation/seeded_randomness.h"

#include <cstdio>

using namespace ebbline;
using namespace ebbline::simulation;

namespace {

struct Totals {
    std::array<std::uint64_t, trickCount> played{};
    WorldCounters world;
    std::uint64_t scripts = 0, mixed = 0, hubsRolledBack = 0, phonesPutBack = 0, phonesNoticed = 0, phonesKnew = 0, hours = 0;
    std::uint64_t mostKeptAside = 0;
};

unsigned long long plain(std::uint64_t n) { return n; }

/// Hours of ordinary life: entries, messages, openings, and syncing now and then.
void live(World& world, int hours, std::vector<std::string>& wrong, bool check = true)
{
    for (int hour = 0; hour < hours; ++hour) {
        for (const auto& device : world.devices) {
            if (device->diary && world.random() % 3 == 0)
                world.writeEntry(*device);
            if (world.random() % 12 == 0)
                world.writeMessage(*device);
            if (world.random() % 3 != 0)
                world.syncOnce(*device);
            world.settle();
        }
        if (world.random() % 4 == 0)
            world.openEntries();
        if (check)
            world.checkClaims(wrong);
        world.timeline.pass(std::chrono::minutes(60));
    }
}

/// How a single trick, played often enough, must have shown.
bool wasSeen(Trick trick, const WorldCounters& c)
{
    switch (trick) {
    case Trick::dropOne: return c.gaps > 0;
    case Trick::truncate:
    case Trick::garbage:
    case Trick::oversize: return c.garbled > 0;
    case Trick::change:
    case Trick::substitute:
    case Trick::otherMailbox: return c.quarantined > 0;
    case Trick::withhold: return c.silent > 0 && c.unproved > 0;
    case Trick::lieTaken: return c.unproved > 0;
    case Trick::lieOther:
    case Trick::wrongTime: return c.problems > 0;
    // These change nothing that an honest hub could not do as well: only the outcome is judged.
    case Trick::reorder:
    case Trick::repeat:
    case Trick::olderState:
    case Trick::noNews:
    case Trick::replayEarlier:
    case Trick::none: return true;
    }
    return true;
}

void lyingHub(World& world, std::uint64_t seed, Totals& totals, std::vector<std::string>& wrong)
{
    HostileHub hub(world, seed);
    world.lying = [&](const mailbox::Request& request, const std::string& device) { return hub.answer(request, device); };
    live(world, 6, wrong);
    const bool mixed = seed % 4 == 0;
    std::vector<Trick> tricks;
    for (std::size_t i = 0; i < (mixed ? 4u : 1u); ++i)
        tricks.push_back(static_cast<Trick>(1 + world.random() % (trickCount - 1)));
    totals.mixed += mixed ? 1 : 0;
    const bool always = !mixed
                        && (tricks[0] == Trick::withhold || tricks[0] == Trick::lieTaken || tricks[0] == Trick::noNews);
    const bool rollsBack = world.random() % 3 == 0;
    if (rollsBack)
        world.copyHubAside();
    const WorldCounters before = world.counters;
    hub.play(tricks, always ? 1000 : 350);
    for (std::size_t i = 0; i < world.phones(); ++i)
        world.writeEntry(world.phone(i));
    live(world, 34, wrong);
    if (rollsBack) {
        world.rollHubBack();
        ++totals.hubsRolledBack;
        live(world, 4, wrong);
    }
    hub.behave();
    WorldCounters during = world.counters;
    during.gaps -= before.gaps;
    during.garbled -= before.garbled;
    during.quarantined -= before.quarantined;
    during.silent -= before.silent;
    during.unproved -= before.unproved;
    during.problems -= before.problems;
    // A refusal that is repeated once may go unnoticed, and so may one that nothing depends on.
    const bool soft = always || tricks[0] == Trick::lieOther || tricks[0] == Trick::wrongTime;
    if (!mixed && hub.played()[static_cast<std::size_t>(tricks[0])] > (soft ? 20u : 0u) && !wasSeen(tricks[0], during))
        wrong.push_back(std::string("nobody noticed: ") + nameOf(tricks[0]));
    for (std::size_t i = 0; i < trickCount; ++i)
        totals.played[i] += hub.played()[i];
    for (const auto& device : world.devices) {
        const auto links = device->vault().links();
        if (!links)
            wrong.push_back("links cannot be read");
        for (const vault::Link& link : links.value_or(std::vector<vault::Link>()))
            totals.mostKeptAside = std::max<std::uint64_t>(totals.mostKeptAside, device->vault().quarantined(link.mailbox));
    }
    (void)world.heal(14);
    world.checkConvergence(wrong);
    if (world.counters.forks + world.counters.rolledBack > 0)
        wrong.push_back("a hub made a device look forked");
}

/// A phone goes on from an older copy of its vault: it, or the desk, must say so as soon as it matters, and no
/// entry may pass for delivered that is not.
void olderPhone(World& world, Totals& totals, std::vector<std::string>& wrong)
{
    World::Device& phone = world.phone(world.random() % world.phones());
    live(world, 4, wrong);
    world.copyAside(phone);
    for (int i = 0; i < 3; ++i) {
        world.writeEntry(phone);
        live(world, 2 + static_cast<int>(world.random() % 20), wrong);
    }
    for (World::Device* each : {&phone, &world.desk(), &phone}) {
        world.syncOnce(*each);
        world.settle();
    }
    // By chance the hub has long forgotten what was acknowledged, or not yet.
    const bool tidied = world.random() % 2 == 0;
    if (tidied)
        world.tidyHub(std::chrono::hours(24 * 9));
    const auto kept = phone.kept;
    world.putCopyBack(phone);
    ++totals.phonesPutBack;
    const WorldCounters before = world.counters;
    for (int i = 0; i < 3; ++i) {
        world.writeEntry(phone);
        live(world, 9, wrong, false);
    }
    // Only where the hub holds nothing old any more may a missing message be all that shows within the day.
    const bool knew = world.counters.forks > before.forks || world.counters.rolledBack > before.rolledBack;
    const bool noticed = knew || (tidied && world.counters.gaps > before.gaps);
    totals.phonesNoticed += noticed ? 1 : 0;
    totals.phonesKnew += knew ? 1 : 0;
    if (!noticed)
        wrong.push_back("nobody noticed that a phone goes on from an older copy");
    const auto& course = world.desk().vault().state().courses.at(phone.course);
    for (const recovery::EntryId& id : kept)
        if (!course.entries.contains(id))
            wrong.push_back("an entry is gone that the phone had sent before it was put back");
    for (const patient::EntryView& view : phone.diary->history())
        if (view.state.place != patient::EntryState::Place::savedHere && !course.entries.contains(view.history.current().id))
            wrong.push_back("an older phone says that the clinic has an entry that it has not");
}

std::vector<std::string> play(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed,
                              Trace& trace, Totals& totals)
{
    SeededRandomness::reseed(seed);
    World world(from, folder, seed, trace, false);
    std::vector<std::string> wrong;
    const clock::Instant began = world.timeline.now();
    if (seed % 10 == 0)
        olderPhone(world, totals, wrong);
    else
        lyingHub(world, seed, totals, wrong);
    totals.hours += static_cast<std::uint64_t>(std::chrono::floor<std::chrono::hours>(world.timeline.now() - began).count());
    WorldCounters& sum = totals.world;
    const WorldCounters& own = world.counters;
    sum.entries += own.entries;
    sum.operationsReceived += own.operationsReceived;
    sum.gaps += own.gaps;
    sum.forks += own.forks;
    sum.rolledBack += own.rolledBack;
    sum.quarantined += own.quarantined;
    sum.garbled += own.garbled;
    sum.silent += own.silent;
    sum.unproved += own.unproved;
    sum.problems += own.problems;
    ++totals.scripts;
    return wrong;
}

bool report(const Totals& t)
{
    std::printf("what the hub did\n");
    bool everything = true;
    for (std::size_t i = 1; i < trickCount; ++i) {
        std::printf("  %-46s %llu\n", nameOf(static_cast<Trick>(i)), plain(t.played[i]));
        everything = everything && t.played[i] > 0;
    }
    std::printf("what was seen of it\n");
    const std::vector<std::pair<const char*, std::uint64_t>> rows{
        {"runs that saw a gap", t.world.gaps}, {"runs that saw a fork", t.world.forks},
        {"runs of an older copy that knew it", t.world.rolledBack}, {"envelopes set apart", t.world.quarantined},
        {"answers that could not be read", t.world.garbled}, {"runs that showed silence", t.world.silent},
        {"runs that showed missing acknowledgements", t.world.unproved}, {"runs that ended with a problem", t.world.problems},
        {"entries recorded", t.world.entries}, {"operations delivered in the end", t.world.operationsReceived},
        {"hubs put back to an older copy", t.hubsRolledBack}, {"phones put back to an older copy", t.phonesPutBack},
        {"of which somebody noticed", t.phonesNoticed}, {"of which it was known as an older copy or a fork", t.phonesKnew}, {"most envelopes kept aside in a mailbox", t.mostKeptAside},
        {"scripts with several tricks", t.mixed}, {"simulated hours", t.hours}, {"scripts", t.scripts}};
    for (const auto& [name, value] : rows) {
        std::printf("  %-46s %llu\n", name, plain(value));
        everything = everything && value > 0;
    }
    return everything && t.mostKeptAside <= vault::Vault::mostQuarantined;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t wanted = faults::option(argc, argv, "--scripts", 200);
    const std::uint64_t seed = faults::option(argc, argv, "--seed", 20270301);
    const std::uint64_t show = faults::option(argc, argv, "--show", 0);
    const double until = faults::secondsNow() + 60.0 * static_cast<double>(faults::option(argc, argv, "--minutes", 100'000));
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    const SeededRandomness randomness(seed);
    const faults::Scratch scratch("hostile");
    std::printf("scripts of a hostile hub: %llu, seed %llu\n", plain(wanted), plain(seed));
    std::vector<ClinicTemplate> clinics;
    for (std::size_t phones = 1; phones <= 3; ++phones)
        clinics.push_back(ClinicTemplate::make(scratch.path() / ("clinic" + std::to_string(phones)), phones));
    Totals totals;
    for (std::uint64_t done = 0; done < wanted && faults::secondsNow() < until; ++done) {
        const std::uint64_t own = seed + done;
        Trace trace(own == show ? [](const std::string& line) { std::fputs(line.c_str(), stdout); }
                                : std::function<void(const std::string&)>());
        const auto wrong = play(clinics[own % clinics.size()], scratch.path() / "run", own, trace, totals);
        for (const std::string& text : wrong)
            std::printf("FAILED with seed %llu: %s\n", plain(own), text.c_str());
        if (!wrong.empty())
            return 1;
    }
    const bool everything = report(totals);
    if (!everything)
        std::printf("FAILED: something that the scripts are about never happened\n");
    return everything ? 0 : 1;
}
