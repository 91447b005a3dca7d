// hub_kill_campaign [--kills N] [--seed S] [--store embedded|postgres]
//
// Phones put envelopes through hubs, one over a folder or two over one database; a hub chosen at random is killed with
// signal 9 at a random moment and started again. Fails if an envelope that a hub acknowledged is not there, once and
// unchanged; if something is there that nobody sent; or if no request was cut off, so that nothing was proved.

#include "core/mailbox/embedded_store.h"
#include "platform/postgres/postgres_store.h"
#include "tests/faults/campaign_options.h"
#include "tests/faults/hub_load.h"
#include "tests/faults/hub_process.h"
#include "tests/platform/postgres/cluster.h"

#include <cstdio>
#include <memory>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

struct Place {
    std::unique_ptr<test::Cluster> cluster;
    std::filesystem::path folder;
    std::string store;

    explicit Place(bool postgres)
    {
        if (postgres) {
            cluster = std::make_unique<test::Cluster>();
            store = cluster->address();
            return;
        }
        std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-kills-" + std::string(6, 'X'));
        folder = ::mkdtemp(pattern.data()) ? pattern : "";
        store = folder;
    }
    ~Place()
    {
        std::error_code ignored;
        if (!folder.empty())
            std::filesystem::remove_all(folder, ignored);
    }
    std::unique_ptr<mailbox::MailStore> open() const
    {
        auto opened = cluster ? postgres::openPostgresStore({.address = store}) : mailbox::openEmbeddedStore(folder);
        if (!opened)
            throw std::runtime_error(opened.error().detail);
        return std::move(*opened);
    }
};

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t kills = numberFor(argc, argv, "--kills", 6);
    const std::uint64_t seed = numberFor(argc, argv, "--seed", 1);
    const bool postgres = wordFor(argc, argv, "--store", "embedded") == "postgres";
    if (postgres && !test::Cluster::isAvailable()) {
        std::printf("%s\n", test::Cluster::missing);
        return skipped;
    }
    if (!crypto::initialise())
        return 1;
    std::mt19937_64 random(seed);
    const Place place(postgres);
    auto store = place.open();
    HubLoad load(*store, 200, seed);
    store.reset();

    std::vector<std::unique_ptr<HubProcess>> hubs;
    std::vector<std::uint16_t> ports;
    for (int i = 0; i < (postgres ? 2 : 1); ++i) {
        hubs.push_back(std::make_unique<HubProcess>(place.store, std::vector<std::string>{"--mailbox-envelopes", "1000000"}));
        hubs.back()->start();
        ports.push_back(hubs.back()->port());
    }
    load.start(ports, 6);
    std::chrono::milliseconds slowest{0};
    for (std::uint64_t i = 0; i < kills; ++i) {
        std::this_thread::sleep_for(std::chrono::milliseconds(50 + random() % 250));
        // However busy the machine: something was acknowledged since the last kill that could now be lost.
        const std::uint64_t before = load.counts().acknowledged;
        while (load.counts().acknowledged < before + 25)
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        HubProcess& hub = *hubs[random() % hubs.size()];
        hub.kill();
        hub.start();
        slowest = std::max(slowest, load.untilServed());
    }
    load.stop();
    bool ended = true;
    for (const auto& hub : hubs)
        ended = hub->end() == 0 && ended;

    store = place.open();
    const HubLoad::Counts counts = load.counts();
    const HubLoad::Verdict verdict = load.check(*store);
    std::printf("hub kills: store %s, seed %llu, %llu kills, %llu acknowledged, %llu requests cut off, %llu refused, slowest "
                "service after a start %lld ms\n%llu found, %llu lost, %llu altered, %llu that nobody sent\n",
                postgres ? "postgres" : "embedded", static_cast<unsigned long long>(seed), static_cast<unsigned long long>(kills),
                static_cast<unsigned long long>(counts.acknowledged), static_cast<unsigned long long>(counts.unanswered),
                static_cast<unsigned long long>(counts.refused), static_cast<long long>(slowest.count()),
                static_cast<unsigned long long>(verdict.found), static_cast<unsigned long long>(verdict.lost),
                static_cast<unsigned long long>(verdict.altered), static_cast<unsigned long long>(verdict.unknown));
    const bool whole = verdict.lost == 0 && verdict.altered == 0 && verdict.unknown == 0;
    const bool proved = counts.acknowledged > 20 * kills && counts.unanswered >= kills && verdict.found >= counts.acknowledged;
    if (!proved)
        std::printf("too little happened to prove anything\n");
    return whole && proved && ended && slowest < std::chrono::seconds(30) ? 0 : 1;
}
