// all_orders [--large 1]
//
// A small model, whole: three devices with clocks two minutes or two days apart write a few operations that speak of the same
// things, and each operation reaches each other device once. Every order in which that can happen is gone
// through; in each, all devices must show the same bytes. Then five operations, each arriving twice, in every
// order at one device. `--large 1` takes four operations instead of three.

#include "tests/core/records/sample_bodies.h"
#include "tests/faults/workload.h"

#include "core/journal/state.h"

#include <algorithm>
#include <cstdio>

using namespace ebbline;

namespace {

constexpr std::size_t devices = 3;
const auto noon = test::momentAt("2027-03-02T12:00:00+01:00");

/// Writes about one entry of one course, so that their order matters to what is shown.
std::vector<records::Body> bodiesAbout()
{
    auto entry = test::sampleEntry();
    auto amended = entry;
    amended.note = "corrected";
    const auto reminder = [&](records::ReminderAnswer answer) {
        return records::ReminderAnswered{test::sampleCourse, "dressings-off/0/1140", answer, noon,
                                         noon.at + std::chrono::hours(1)};
    };
    return {reminder(records::ReminderAnswer::done), records::EntryRecorded{entry}, reminder(records::ReminderAnswer::later),
            records::EntryRecorded{amended},
            // The second operation of the first device: the correction.
            records::VersionsOpened{test::sampleCourse, {{test::idOf<envelope::DeviceTag>(1), 2}}, "Dr. Ada Lund", noon}};
}

journal::Operation operationOf(std::size_t device, std::uint64_t number, clock::HybridTime stamp, const records::Body& body)
{
    journal::Operation operation;
    operation.id = {test::idOf<envelope::DeviceTag>(static_cast<std::uint8_t>(device + 1)), number};
    operation.stamp = stamp;
    operation.entered = noon;
    operation.kind = static_cast<std::uint16_t>(records::kindOf(body));
    operation.audience = journal::Audience::patientAndClinic;
    operation.course = records::courseOf(body);
    operation.body = records::encode(body);
    return operation;
}

struct Replica {
    journal::Journal journal;
    clock::HybridClock hybrid = clock::HybridClock();
};

struct Model {
    std::vector<std::size_t> writers;  ///< of each operation
    std::chrono::minutes apart;        ///< the first device's clock is so much behind, the last one's ahead
    std::vector<records::Body> bodies = bodiesAbout();
    std::array<Replica, devices> replicas{};
    std::vector<std::optional<journal::Operation>> written{};
    std::vector<std::array<bool, devices>> arrived{};
    std::int64_t minutes = 0;  ///< a minute passes at each step
    std::uint64_t orders = 0, differ = 0, differentEnds = 0;
    std::map<bytes::Array<32>, std::uint64_t> ends{};

    clock::Instant wall(std::size_t device) const
    {
        return noon.at + std::chrono::minutes(minutes) + apart * (static_cast<int>(device) - 1);
    }

    void ended()
    {
        ++orders;
        const std::string first = journal::dump(replicas[0].journal.state());
        bool same = true;
        for (const Replica& replica : replicas) {
            same = same && journal::dump(replica.journal.state()) == first;
            same = same && journal::dump(journal::fold(replica.journal.operations())) == first;
        }
        differ += same ? 0 : 1;
        ++ends[crypto::hash256(bytes::viewOf(first))];
    }

    bool mayWrite(std::size_t i) const
    {
        for (std::size_t j = 0; j < i; ++j)
            if (writers[j] == writers[i] && !written[j])
                return false;
        return !written[i];
    }

    void explore()
    {
        bool any = false;
        for (std::size_t i = 0; i < writers.size(); ++i) {
            if (mayWrite(i)) {
                any = true;
                write(i);
            }
            for (std::size_t to = 0; to < devices && written[i]; ++to)
                if (to != writers[i] && !arrived[i][to]) {
                    any = true;
                    deliver(i, to);
                }
        }
        if (!any)
            ended();
    }

    void write(std::size_t i)
    {
        const Replica before = replicas[writers[i]];
        Replica& here = replicas[writers[i]];
        ++minutes;
        std::uint64_t number = 1;
        for (std::size_t j = 0; j < i; ++j)
            number += writers[j] == writers[i] ? 1 : 0;
        written[i] = operationOf(writers[i], number, here.hybrid.tick(wall(writers[i])), bodies[i]);
        here.journal.add(*written[i]);
        explore();
        written[i].reset();
        --minutes;
        replicas[writers[i]] = before;
    }

    void deliver(std::size_t i, std::size_t to)
    {
        const Replica before = replicas[to];
        ++minutes;
        replicas[to].hybrid.observe(written[i]->stamp, wall(to));
        replicas[to].journal.add(*written[i]);
        arrived[i][to] = true;
        explore();
        arrived[i][to] = false;
        --minutes;
        replicas[to] = before;
    }
};

/// Clocks two minutes apart follow each other, so what a device knew when it wrote decides the end; clocks two
/// days apart do not, and the order of the clocks decides alone.
bool everyOrder(const std::vector<std::size_t>& writers, std::uint64_t wanted, std::chrono::minutes apart)
{
    Model model{writers, apart};
    model.written.resize(writers.size());
    model.arrived.resize(writers.size());
    model.explore();
    std::string who;
    for (const std::size_t writer : writers)
        who += static_cast<char>('A' + writer);
    std::printf("  operations by %-6s clocks %4lld min apart %9llu orders, %llu in which devices differ, %zu ends\n", who.c_str(),
                static_cast<long long>(apart.count()), static_cast<unsigned long long>(model.orders),
                static_cast<unsigned long long>(model.differ), model.ends.size());
    const bool follow = apart < clock::HybridClock::maximumPull;
    return model.differ == 0 && model.orders == wanted && (model.ends.size() > 1) == follow;
}

bool everyArrival()
{
    const auto bodies = bodiesAbout();
    std::vector<journal::Operation> operations;
    for (std::size_t i = 0; i < bodies.size(); ++i)
        operations.push_back(operationOf(i % devices, 1 + i / devices,
                                         clock::HybridTime::of(noon.at + std::chrono::hours(7 * static_cast<int>(i * i % 5)), 0), bodies[i]));
    const std::string wanted = journal::dump(journal::fold(operations));
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < operations.size(); ++i)
        order.insert(order.end(), 2, i);
    std::uint64_t orders = 0, differ = 0;
    do {
        journal::Journal journal;
        for (const std::size_t i : order)
            journal.add(operations[i]);
        ++orders;
        differ += journal::dump(journal.state()) == wanted ? 0 : 1;
    } while (std::ranges::next_permutation(order).found);
    std::printf("  five operations, each twice: %llu orders of arrival, %llu differ\n", static_cast<unsigned long long>(orders),
                static_cast<unsigned long long>(differ));
    constexpr std::uint64_t all = 113'400;  // 10! / 2^5
    return differ == 0 && orders == all;
}

}  // namespace

int main(int argc, char** argv)
{
    if (!crypto::initialise())
        return 2;
    std::printf("every order of a small model, %zu devices\n", devices);
    constexpr std::chrono::minutes near{2}, far{48 * 60};
    bool good = everyOrder({0, 0, 1}, 6'720, near) && everyOrder({0, 1, 2}, 13'440, near) && everyOrder({0, 1, 2}, 13'440, far)
                && everyArrival();
    if (faults::option(argc, argv, "--large", 0) != 0)
        good = good && everyOrder({0, 0, 1, 2}, 2'956'800, near);
    if (!good)
        std::printf("FAILED\n");
    return good ? 0 : 1;
}
