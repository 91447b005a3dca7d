// allocation_sweep [--stride N]
//
// For each thing that a vault does: counts what memory it asks for, then does it again in a process of its own once for every
// request, refused alone and refused with all that follow. Whoever lives then has memory again and writes one entry more with
// the same vault. What was acknowledged must be there, nothing may be half there, and the vault must open and inspect as whole.
// The program must not die of it. SQLCipher does in two of its functions, where it uses a context that it could not make: a memory
// fault in just those is counted, and must leave the same. Any other death fails the sweep.

#include "tests/faults/death_place.h"
#include "tests/faults/failing_memory.h"
#include "tests/faults/workload.h"

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdio>
#include <functional>
#include <new>
#include <span>

#include <sys/wait.h>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

using Told = std::function<void(const std::optional<Ack>&)>;
/// Does it with an open vault and tells what was acknowledged.
using Scenario = std::function<void(Worker&, const Told&)>;

const std::vector<std::pair<const char*, Scenario>>& scenarios()
{
    static const std::vector<std::pair<const char*, Scenario>> all{
        {"open and close", [](Worker&, const Told&) {}},
        {"one entry", [](Worker& w, const Told& told) { told(w.append(1)); }},
        {"four entries in one go", [](Worker& w, const Told& told) { told(w.append(4)); }},
        {"twenty entries one by one", [](Worker& w, const Told& told) {
             for (int i = 0; i < 20; ++i)
                 told(w.append(1));
         }},
        {"a draft", [](Worker& w, const Told& told) { told(w.keepDraft()); }},
        {"sealing an envelope", [](Worker& w, const Told& told) { told(w.seal()); }},
        {"an acknowledgement", [](Worker& w, const Told& told) { told(w.deliver()); }},
        {"a peer's entries", [](Worker& w, const Told& told) { told(w.acceptPeer()); }},
        {"a quarantined envelope", [](Worker& w, const Told& told) { told(w.quarantine()); }},
        {"a whole exchange", [](Worker& w, const Told& told) {
             told(w.append(2));
             told(w.keepDraft());
             told(w.seal());
             told(w.deliver());
             told(w.acceptPeer());
             told(w.quarantine());
         }},
        {"reading everything", [](Worker& w, const Told&) { (void)w.readAll(); }},
        {"inspecting", {}},
    };
    return all;
}

struct Place {
    std::filesystem::path fresh;
    std::filesystem::path folder;
    const crypto::Secret& dataKey;
    const clock::Clock& clock;
    const Ledger& before;
};

struct Sweep {
    std::uint64_t points = 0, felt = 0, died = 0, acknowledged = 0, wrong = 0;
};

/// In the child. \returns how much memory was asked for.
std::uint64_t play(const Place& place, const Scenario& scenario, std::uint64_t at, bool sticky, const Told& told)
{
    if (!scenario) {
        armMemory(at, sticky);
        try {
            (void)vault::inspect(place.folder, place.dataKey);
        } catch (const std::bad_alloc&) {
        }
        return disarmMemory();
    }
    std::optional<vault::Vault> vault;
    std::uint64_t asked = 0;
    const auto within = [&](const auto& work) {  // a std::function would ask for memory itself
        try {
            work();
        } catch (const std::bad_alloc&) {
        }
    };
    armMemory(at, sticky);
    within([&] {
        if (auto opened = vault::Vault::open(place.folder, place.dataKey, place.clock))
            vault.emplace(std::move(*opened));
    });
    if (vault) {
        Worker worker(*vault, 7);
        within([&] { scenario(worker, told); });
        asked = disarmMemory();
        // Memory is there again, and so is the vault.
        told(worker.append(1));
        return asked;
    }
    return disarmMemory();
}

/// Where SQLCipher 4.6.1 dies of memory that it was refused: it frees a pointer of a context that it could not fill, and it writes
/// to one that it could not make. The first ends in the function that wipes what SQLite frees, which is ours and gets the pointer.
bool isKnown(const std::vector<std::string>& functions)
{
    const auto begins = [&](std::initializer_list<std::string_view> names) {
        return functions.size() >= names.size()
               && std::ranges::equal(names, std::span(functions).first(names.size()),
                                     [](std::string_view name, const std::string& function) { return function.find(name) != std::string::npos; });
    };
    return begins({"wipeAndFree", "sqlite3_free", "sqlcipher_cipher_ctx_free"}) || begins({"sqlcipher_cipher_ctx_free"})
           || begins({"sqlcipherCodecAttach"});
}

struct Outcome {
    std::vector<Ack> acks;
    std::uint64_t asked = 0;
    bool felt = false;
    int signal = 0;
    std::vector<std::string> place;  ///< the functions in which it died, innermost first; empty: not known

    bool isKnownDeath() const { return signal == SIGSEGV && isKnown(place); }
};

/// One line of what the child has to say.
struct Line {
    Frames died{};  ///< where, if it did
    bool last = false;
    bool felt = false;
    std::uint64_t asked = 0;
    Ack ack;
};

int toParent = -1;

void tellPlace(const Frames& frames)
{
    Line line{};
    line.died = frames;
    [[maybe_unused]] const auto written = write(toParent, &line, sizeof line);
}

Outcome inChild(const Place& place, const Scenario& scenario, std::uint64_t at, bool sticky)
{
    std::array<int, 2> ends{};
    Outcome outcome;
    if (pipe(ends.data()) != 0)
        return outcome;
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        toParent = ends[1];
        tellDeath(tellPlace);
        const auto say = [&](const Line& line) { return write(ends[1], &line, sizeof line) == static_cast<ssize_t>(sizeof line); };
        const std::uint64_t asked = play(place, scenario, at, sticky, [&](const std::optional<Ack>& ack) {
            if (ack)
                (void)say({.ack = *ack});
        });
        _exit(say({.last = true, .felt = refusedMemory() > 0, .asked = asked, .ack = {}}) ? 0 : 3);
    }
    close(ends[1]);
    Line line;
    while (read(ends[0], &line, sizeof line) == static_cast<ssize_t>(sizeof line)) {
        if (line.died[0] != 0) {
            outcome.place = functionsIn(line.died);
        } else if (line.last) {
            outcome.asked = line.asked;
            outcome.felt = line.felt;
        } else {
            outcome.acks.push_back(line.ack);
        }
    }
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    outcome.signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    outcome.felt = outcome.felt || outcome.signal != 0;
    return outcome;
}

std::string namesOf(const std::vector<std::string>& functions)
{
    std::string all;
    for (const std::string& each : functions)
        all += (all.empty() ? "" : " < ") + each;
    return all.empty() ? "a place without a name" : all;
}

/// What is wrong afterwards; empty: nothing.
std::string faultIn(const Place& place, const Outcome& outcome)
{
    Ledger ledger = place.before;
    for (const Ack& ack : outcome.acks)
        ledger.add(ack);
    for (const std::string& wrong : ledger.check(place.folder, place.dataKey, place.clock))
        return wrong;
    for (const vault::Fault& fault : vault::inspect(place.folder, place.dataKey).faults)
        return "fault: " + fault.detail;
    return {};
}

Sweep swept(const Place& place, const char* name, const Scenario& scenario, std::uint64_t stride)
{
    copyFolder(place.fresh, place.folder);
    const std::uint64_t asked = inChild(place, scenario, 0, false).asked;
    Sweep sweep;
    for (const bool sticky : {false, true})
        for (std::uint64_t at = 1 + (sticky ? stride / 2 : 0); at <= asked; at += stride) {
            copyFolder(place.fresh, place.folder);
            const Outcome outcome = inChild(place, scenario, at, sticky);
            ++sweep.points;
            sweep.felt += outcome.felt ? 1 : 0;
            sweep.died += outcome.signal != 0 ? 1 : 0;
            sweep.acknowledged += outcome.acks.size();
            std::string fault = faultIn(place, outcome);
            if (fault.empty() && outcome.signal != 0 && !outcome.isKnownDeath())
                fault = "the program died in " + namesOf(outcome.place);
            sweep.wrong += fault.empty() ? 0 : 1;
            if (!fault.empty() || outcome.signal != 0)
                std::printf("%s: %s, request %llu%s%s: %s\n", fault.empty() ? "died" : "FAILED", name,
                            static_cast<unsigned long long>(at), sticky ? " and later ones" : "",
                            outcome.signal != 0 ? (", signal " + std::to_string(outcome.signal)).c_str() : "",
                            fault.empty() ? "nothing lost" : fault.c_str());
        }
    std::printf("  %-28s %8llu %7llu %7llu %6llu %13llu\n", name, static_cast<unsigned long long>(asked),
                static_cast<unsigned long long>(sweep.points), static_cast<unsigned long long>(sweep.felt),
                static_cast<unsigned long long>(sweep.died), static_cast<unsigned long long>(sweep.acknowledged));
    return sweep;
}

/// That a death is told with its place, before anything rests on it: a child dies in a function that is ours.
[[gnu::noinline]] void dieHere()
{
    const volatile std::uintptr_t nowhere = 16;
    *reinterpret_cast<volatile int*>(nowhere) = 1;
}

bool tellsPlaces(const Place& place)
{
    const Outcome outcome = inChild(place, [](Worker&, const Told&) { dieHere(); }, 0, false);
    return outcome.signal == SIGSEGV && !outcome.place.empty() && outcome.place.front().find("dieHere") != std::string::npos && !outcome.isKnownDeath();
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t stride = std::max<std::uint64_t>(1, option(argc, argv, "--stride", 41));
    if (!crypto::initialise())
        return 2;
    const Scratch scratch("memory");
    const clock::ManualClock clock(clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}});
    Ledger before;
    {
        auto made = vault::Vault::create(scratch.path() / "fresh", vault::Vault::Owner::patient, faults::passphrase, cheap, clock);
        if (!made)
            return 2;
        Worker worker(*made, 3);
        for (const auto& ack : {worker.append(3), worker.seal(), worker.append(2), worker.acceptPeer(), worker.keepDraft()}) {
            if (!ack)
                return 2;
            before.add(*ack);
        }
    }
    const auto dataKey = vault::openDataKey(scratch.path() / "fresh", vault::Offered::passphrase(faults::passphrase), clock.readings());
    if (!dataKey)
        return 2;
    const Place place{scratch.path() / "fresh", scratch.path() / "work", *dataKey, clock, before};

    copyFolder(place.fresh, place.folder);
    if (!tellsPlaces(place)) {
        std::printf("FAILED: a death is not told with the function in which it was\n");
        return 1;
    }
    std::printf("sweep of refused memory, every %llu. request, alone and with all later ones\n", static_cast<unsigned long long>(stride));
    std::printf("  %-28s %8s %7s %7s %6s %13s\n", "scenario", "requests", "points", "felt", "died", "acknowledged");
    Sweep all;
    for (const auto& [name, scenario] : scenarios()) {
        const Sweep sweep = swept(place, name, scenario, stride);
        all.points += sweep.points;
        all.felt += sweep.felt;
        all.died += sweep.died;
        all.acknowledged += sweep.acknowledged;
        all.wrong += sweep.wrong;
    }
    std::printf("  %-28s %8s %7llu %7llu %6llu %13llu\n", "all", "", static_cast<unsigned long long>(all.points),
                static_cast<unsigned long long>(all.felt), static_cast<unsigned long long>(all.died),
                static_cast<unsigned long long>(all.acknowledged));
    const bool met = all.felt * 10 >= all.points * 9 && all.acknowledged > all.points / 2;
    if (!met)
        std::printf("FAILED: too little was felt, or too few vaults went on\n");
    return all.wrong == 0 && met ? 0 : 1;
}
