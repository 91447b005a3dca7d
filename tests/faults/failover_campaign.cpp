// failover_campaign [--rounds N] [--seed S]
//
// Two hubs over a primary and a synchronous hot standby, phones putting envelopes all the while. Each round kills every
// process of the primary with signal 9 at a random moment, promotes the standby, and builds a new standby where the primary
// was. Fails if an acknowledged envelope is not in the database at the end, if something is there that nobody sent, or
// if the hubs need 15 seconds or more to serve again.

#include "platform/postgres/postgres_store.h"
#include "tests/faults/campaign_options.h"
#include "tests/faults/hub_load.h"
#include "tests/faults/hub_process.h"
#include "tests/platform/postgres/cluster.h"

#include <cstdio>
#include <memory>
#include <stdexcept>

using namespace ebbline;
using namespace ebbline::faults;

namespace {

/// From now on the primary's commits wait for its standby; returns once the standby has all there was.
void synchronise(const test::Cluster& primary)
{
    (void)primary.sql("ALTER SYSTEM SET synchronous_standby_names = '*'", "postgres");
    (void)primary.sql("SELECT pg_reload_conf()", "postgres");
    for (int i = 0; i < 2000; ++i) {
        if (primary.sql("SELECT count(*) FROM pg_stat_replication WHERE sync_state = 'sync' AND state = 'streaming'", "postgres") == "1")
            return;
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    throw std::runtime_error("the standby does not follow");
}

void standAlone(const test::Cluster& primary)
{
    (void)primary.sql("ALTER SYSTEM RESET synchronous_standby_names", "postgres");
    (void)primary.sql("SELECT pg_reload_conf()", "postgres");
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t rounds = numberFor(argc, argv, "--rounds", 2);
    const std::uint64_t seed = numberFor(argc, argv, "--seed", 1);
    if (!test::Cluster::isAvailable()) {
        std::printf("%s\n", test::Cluster::missing);
        return skipped;
    }
    if (!crypto::initialise())
        return 1;
    std::mt19937_64 random(seed);
    test::Cluster first;
    test::Cluster second = test::Cluster::standbyOf(first);
    test::Cluster* primary = &first;
    test::Cluster* standby = &second;
    synchronise(*primary);

    const std::string address = first.address({&second});
    auto opened = postgres::openPostgresStore({.address = address});
    if (!opened)
        throw std::runtime_error(opened.error().detail);
    HubLoad load(**opened, 100, seed);
    HubProcess one(address, {"--mailbox-envelopes", "1000000"}), two(address, {"--mailbox-envelopes", "1000000"});
    one.start();
    two.start();
    load.start({one.port(), two.port()}, 6);

    std::chrono::milliseconds slowest{0};
    for (std::uint64_t round = 0; round < rounds; ++round) {
        std::this_thread::sleep_for(std::chrono::milliseconds(300 + random() % 700));
        const auto began = std::chrono::steady_clock::now();
        primary->kill();
        standby->promote();
        standAlone(*standby);
        (void)load.untilServed();
        slowest = std::max(slowest, std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - began));
        std::swap(primary, standby);
        standby->becomeStandbyOf(*primary);
        synchronise(*primary);
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(200));
    load.stop();
    const bool ended = one.runs() && two.runs() && one.end() == 0 && two.end() == 0;

    const HubLoad::Counts counts = load.counts();
    const HubLoad::Verdict verdict = load.check(**opened);
    std::printf("failover: seed %llu, %llu rounds, %llu acknowledged, %llu requests cut off, %llu refused, served again after at most "
                "%lld ms\n%llu found, %llu lost, %llu altered, %llu that nobody sent\n",
                static_cast<unsigned long long>(seed), static_cast<unsigned long long>(rounds),
                static_cast<unsigned long long>(counts.acknowledged), static_cast<unsigned long long>(counts.unanswered),
                static_cast<unsigned long long>(counts.refused), static_cast<long long>(slowest.count()),
                static_cast<unsigned long long>(verdict.found), static_cast<unsigned long long>(verdict.lost),
                static_cast<unsigned long long>(verdict.altered), static_cast<unsigned long long>(verdict.unknown));
    const bool whole = verdict.lost == 0 && verdict.altered == 0 && verdict.unknown == 0;
    const bool proved = counts.acknowledged > 100 * rounds && verdict.found >= counts.acknowledged;
    if (!proved)
        std::printf("too little happened to prove anything\n");
    return whole && proved && ended && slowest < std::chrono::seconds(15) ? 0 : 1;
}
