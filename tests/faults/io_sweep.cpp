// io_sweep [--stride N] [--seed S]
//
// For each thing that a vault does: counts its calls to the disk, then does it again once for every call and
// every way in which that call can fail. What was reported as done must be there; what was refused must be there
// wholly or not at all; the vault must open and inspect as whole. `--stride` tries every N-th call only.

#include "core/vault/tables.h"
#include "tests/faults/fault_disk.h"
#include "tests/faults/workload.h"

#include <array>
#include <cstdio>
#include <functional>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

using Digest = bytes::Array<32>;

struct Place {
    std::filesystem::path folder;
    const crypto::Secret& dataKey;
    const clock::Clock& clock;

    Result<vault::Vault> open() const { return vault::Vault::open(folder, dataKey, clock); }
    /// The rows as they are, read by a disk that works.
    std::optional<Digest> digest() const
    {
        auto database = store::Database::inspect(folder / "vault.db", crypto::derive(dataKey, 1, "eb-vault"));
        if (!database)
            return std::nullopt;
        const auto digest = database->digest();
        return digest ? std::optional(*digest) : std::nullopt;
    }
};

/// Does it; true if the vault said that it was done. Anything random comes from the worker's fixed seed.
using Scenario = std::function<bool(const Place&)>;

Scenario withWorker(std::function<bool(Worker&)> work)
{
    return [work = std::move(work)](const Place& place) {
        auto vault = place.open();
        if (!vault)
            return false;
        Worker worker(*vault, 7);
        return work(worker);
    };
}

/// The same one each time, as everything else here comes from a fixed seed.
const photos::SealedPhoto& thePhoto()
{
    static const photos::SealedPhoto photo = somePhoto();
    return photo;
}

const std::vector<std::pair<const char*, Scenario>>& scenarios()
{
    static const std::vector<std::pair<const char*, Scenario>> all{
        {"open and close", [](const Place& place) { return place.open().has_value(); }},
        {"one entry", withWorker([](Worker& w) { return w.append(1).has_value(); })},
        {"four entries in one go", withWorker([](Worker& w) { return w.append(4).has_value(); })},
        {"twenty entries one by one", withWorker([](Worker& w) {
             bool done = true;
             for (int i = 0; i < 20 && done; ++i)
                 done = w.append(1).has_value();
             return done;
         })},
        {"a draft", withWorker([](Worker& w) { return w.keepDraft().has_value(); })},
        {"sealing an envelope", withWorker([](Worker& w) { return w.seal().has_value(); })},
        {"an acknowledgement", withWorker([](Worker& w) { return w.deliver().has_value(); })},
        {"a peer's entries", withWorker([](Worker& w) { return w.acceptPeer().has_value(); })},
        {"a quarantined envelope", withWorker([](Worker& w) { return w.quarantine().has_value(); })},
        {"a photograph", withWorker([](Worker& w) { return w.takePhoto(thePhoto()).has_value(); })},
        {"a photograph taken back", withWorker([](Worker& w) { return w.takePhotoBack().has_value(); })},
        {"a whole exchange", withWorker([](Worker& w) {
             return w.append(2) && w.keepDraft() && w.seal() && w.deliver() && w.acceptPeer() && w.quarantine();
         })},
        {"moving a vault of version 1", [](const Place& place) { return place.open().has_value(); }},
        {"moving a vault of version 2", [](const Place& place) { return place.open().has_value(); }},
        {"moving a vault of version 3", [](const Place& place) { return place.open().has_value(); }},
        {"inspecting", [](const Place& place) { return vault::inspect(place.folder, place.dataKey).sound(); }},
    };
    return all;
}

struct Sweep {
    std::uint64_t points = 0, injected = 0, reported = 0, doneAllTheSame = 0, wrong = 0;
};

/// Every state that the scenario passes through and may stop in, in order; the last is "done".
std::vector<Digest> statesOf(const std::string& name, const std::filesystem::path& fresh, const Place& place, FaultDisk& disk)
{
    std::vector<Digest> states;
    const auto note = [&] {
        if (const auto digest = place.digest(); digest && (states.empty() || states.back() != *digest))
            states.push_back(*digest);
    };
    disk.disarm();
    copyFolder(fresh, place.folder);
    note();
    if (name == "twenty entries one by one" || name == "a whole exchange") {
        auto vault = place.open();
        if (!vault)
            return states;
        Worker worker(*vault, 7);
        const std::vector<std::function<void()>> steps =
            name == "a whole exchange"
                ? std::vector<std::function<void()>>{[&] { worker.append(2); }, [&] { worker.keepDraft(); }, [&] { worker.seal(); },
                                                     [&] { worker.deliver(); }, [&] { worker.acceptPeer(); }, [&] { worker.quarantine(); }}
                : std::vector<std::function<void()>>(20, [&] { worker.append(1); });
        for (const auto& step : steps) {
            step();
            note();
        }
        return states;
    }
    // Each migration is a transaction of its own: a vault may stop at any version on its way.
    for (std::size_t version = 1; version < vault::vaultMigrations.size() && name.starts_with("moving"); ++version) {
        copyFolder(fresh, place.folder);
        const auto moved = store::Database::open(place.folder / "vault.db", crypto::derive(place.dataKey, 1, "eb-vault"),
                                                 std::span(vault::vaultMigrations).first(version));
        if (moved)
            note();
    }
    for (const auto& [known, scenario] : scenarios())
        if (known == name)
            (void)scenario(place);
    note();
    return states;
}

bool checkPoint(const Place& place, bool said, const std::vector<Digest>& states, const std::string& where)
{
    std::string wrong;
    const auto after = place.digest();
    if (!after)
        wrong = "it does not open";
    else if (said && *after != states.back())
        wrong = "it was reported as done and is not";
    else if (std::ranges::find(states, *after) == states.end())
        wrong = "it is neither as before nor as after";
    if (wrong.empty())
        for (const vault::Fault& fault : vault::inspect(place.folder, place.dataKey).faults)
            wrong = "fault: " + fault.detail;
    if (wrong.empty() && !place.open())
        wrong = "it does not unlock";
    if (!wrong.empty())
        std::printf("FAILED: %s: %s\n", where.c_str(), wrong.c_str());
    return wrong.empty();
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t stride = std::max<std::uint64_t>(1, option(argc, argv, "--stride", 9));
    if (!crypto::initialise())
        return 2;
    const Scratch scratch("sweep");
    const clock::ManualClock clock(clock::Instant{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1}});
    FaultDisk disk;
    const std::filesystem::path fresh = scratch.path() / "fresh";
    const std::filesystem::path versions = EBBLINE_OLD_VAULTS;
    {
        auto made = vault::Vault::create(fresh, vault::Vault::Owner::patient, faults::passphrase, cheap, clock);
        if (!made)
            return 2;
        Worker worker(*made, 3);
        if (!worker.append(3) || !worker.seal() || !worker.append(2) || !worker.acceptPeer() || !worker.keepDraft() || !worker.takePhoto(somePhoto()))
            return 2;
    }
    std::map<std::string, std::pair<std::filesystem::path, crypto::Secret>> vaults;
    for (const auto& [name, folder] : {std::pair<std::string, std::filesystem::path>{"", fresh}, {"version 1", versions / "version1"},
                                       {"version 2", versions / "version2"}, {"version 3", versions / "version3"}}) {
        auto key = vault::openDataKey(folder, vault::Offered::passphrase(faults::passphrase), clock.readings());
        if (!key)
            return 2;
        vaults.emplace(name, std::pair(folder, std::move(*key)));
    }

    std::printf("sweep of I/O faults, every %llu. call\n", static_cast<unsigned long long>(stride));
    std::printf("  %-38s %6s %7s %9s %9s %10s\n", "scenario", "calls", "points", "injected", "refused", "done anyway");
    Sweep all;
    for (const auto& [name, scenario] : scenarios()) {
        const std::size_t version = std::string_view(name).find("version ");
        const auto& [from, key] = vaults.at(version == std::string_view::npos ? "" : std::string(name).substr(version));
        const Place place{scratch.path() / "work", key, clock};
        const std::vector<Digest> states = statesOf(name, from, place, disk);
        copyFolder(from, place.folder);
        disk.disarm();
        if (!scenario(place)) {
            std::printf("FAILED: %s does not work without a fault\n", name);
            return 1;
        }
        const std::uint64_t calls = disk.calls();
        Sweep sweep;
        for (const Fault fault : {Fault::once, Fault::fromThenOn, Fault::full, Fault::shortWrite})
            for (std::uint64_t at = 1 + sweep.points % stride; at <= calls; at += stride) {
                copyFolder(from, place.folder);
                disk.arm(fault, at);
                const bool said = scenario(place);
                sweep.injected += disk.injected() > 0 ? 1 : 0;
                disk.disarm();
                ++sweep.points;
                ++(said ? sweep.doneAllTheSame : sweep.reported);
                if (!checkPoint(place, said, states,
                                std::string(name) + ", fault " + std::to_string(static_cast<int>(fault)) + ", call " + std::to_string(at)))
                    ++sweep.wrong;
            }
        std::printf("  %-38s %6llu %7llu %9llu %9llu %10llu\n", name, static_cast<unsigned long long>(calls),
                    static_cast<unsigned long long>(sweep.points), static_cast<unsigned long long>(sweep.injected),
                    static_cast<unsigned long long>(sweep.reported), static_cast<unsigned long long>(sweep.doneAllTheSame));
        all.points += sweep.points;
        all.injected += sweep.injected;
        all.reported += sweep.reported;
        all.doneAllTheSame += sweep.doneAllTheSame;
        all.wrong += sweep.wrong;
    }
    std::printf("  %-38s %6s %7llu %9llu %9llu %10llu\n", "all", "", static_cast<unsigned long long>(all.points),
                static_cast<unsigned long long>(all.injected), static_cast<unsigned long long>(all.reported),
                static_cast<unsigned long long>(all.doneAllTheSame));
    const bool met = all.injected * 2 >= all.points && all.reported * 4 >= all.points;
    if (!met)
        std::printf("FAILED: too few faults were felt\n");
    return all.wrong == 0 && met ? 0 : 1;
}
