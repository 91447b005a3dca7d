// photo_campaign [--scripts N] [--seed S] [--minutes M]
//
// Photographs over lines that are cut at every request in turn and by chance, and over a hub that changes, swaps,
// cuts, lengthens, repeats, forgets or refuses chunks. While it lies, no device shows another picture or says that the
// clinic has one that it has not; with an honest hub all arrive. Over a line that only breaks, no chunk that the hub
// has taken is sent to it again.

#include "tests/faults/workload.h"
#include "tests/simulation/seeded_randomness.h"
#include "tests/simulation/world.h"

#include "core/bytes/text.h"

#include <cstdio>

using namespace ebbline;
using namespace ebbline::simulation;

namespace {

enum class Lie : std::uint8_t { none, change, swap, shorten, lengthen, empty, notThere, stranger, full, conflict, forget, garbledList };
constexpr std::size_t lies = 12;

struct Totals {
    std::array<std::uint64_t, lies> played{};
    WorldCounters world;
    std::uint64_t cuts = 0, chunksOnce = 0, scripts = 0;
};

bool isChunk(const mailbox::Request& request, const char* method)
{
    return mailbox::Service::isAboutBlobs(request) && request.method == method && std::ranges::count(request.path, '/') == 6;
}

/// A hub that plays one lie with the answers about photographs, some of the time.
class LyingAboutPhotos {
public:
    LyingAboutPhotos(World& world, Lie lie, Totals& totals) : m_world(world), m_lie(lie), m_totals(totals) {}

    mailbox::Response operator()(const mailbox::Request& request)
    {
        if (!mailbox::Service::isAboutBlobs(request) || m_world.random() % 3 == 0)
            return remembered(request, m_world.honest(request));
        if (m_lie == Lie::forget && isChunk(request, "PUT"))
            return played({200, {}, 0, std::to_string(0)});
        if (m_lie == Lie::full && request.method == "PUT")
            return played({507, {}, 0, {}});
        if (m_lie == Lie::conflict && isChunk(request, "PUT"))
            return played({409, {}, 0, {}});
        if (m_lie == Lie::stranger)
            return played({404, {}, 0, {}});
        const mailbox::Response honest = m_world.honest(request);
        mailbox::Response response = honest;
        if (honest.status == 200 && isChunk(request, "GET") && !response.body.empty())
            lieAboutChunk(response);
        else if (m_lie == Lie::garbledList && request.method != "POST")
            response.body.push_back(static_cast<std::uint8_t>(m_world.random()));
        if (response.status != honest.status || response.body != honest.body)
            ++m_totals.played[static_cast<std::size_t>(m_lie)];
        remembered(request, honest);
        return response;
    }

private:
    mailbox::Response played(mailbox::Response response)
    {
        ++m_totals.played[static_cast<std::size_t>(m_lie)];
        return response;
    }
    mailbox::Response remembered(const mailbox::Request& request, mailbox::Response response)
    {
        if (response.status == 200 && isChunk(request, "GET"))
            m_before = response.body;
        return response;
    }
    void lieAboutChunk(mailbox::Response& response)
    {
        bytes::Bytes& body = response.body;
        switch (m_lie) {
        case Lie::change: body[m_world.random() % body.size()] ^= static_cast<std::uint8_t>(1 << m_world.random() % 8); break;
        case Lie::swap:
            if (!m_before.empty())
                body = m_before;
            break;
        case Lie::shorten: body.resize(m_world.random() % body.size()); break;
        case Lie::lengthen: body.resize(body.size() + 1 + m_world.random() % 100); break;
        case Lie::empty: body.clear(); break;
        case Lie::notThere: response = {404, {}, 0, {}}; break;
        default: break;
        }
    }

    World& m_world;
    Lie m_lie;
    Totals& m_totals;
    bytes::Bytes m_before;
};

void live(World& world, int hours, std::vector<std::string>& wrong)
{
    for (int hour = 0; hour < hours; ++hour) {
        for (const auto& device : world.devices) {
            if (device->diary && world.random() % 3 == 0)
                world.takePhoto(*device);
            if (device->diary && world.random() % 9 == 0)
                world.takePhotoBack(*device);
            if (device->diary && world.random() % 3 == 0)
                world.writeEntry(*device);
            world.syncOnce(*device);
            world.settle();
        }
        world.checkClaims(wrong);
        world.timeline.pass(std::chrono::hours(1));
    }
}

void add(WorldCounters& to, const WorldCounters& from)
{
    to.photos += from.photos;
    to.photosTakenBack += from.photosTakenBack;
    to.photosArrived += from.photosArrived;
    to.chunksSent += from.chunksSent;
    to.chunksReceived += from.chunksReceived;
    to.entries += from.entries;
}

std::vector<std::string> lieOnce(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed, Totals& totals)
{
    SeededRandomness::reseed(seed);
    Trace trace;
    World world(from, folder, seed, trace, false);
    std::vector<std::string> wrong;
    const auto lie = static_cast<Lie>(1 + seed % (lies - 1));
    LyingAboutPhotos lying(world, lie, totals);
    world.lying = [&](const mailbox::Request& request, const std::string&) { return lying(request); };
    live(world, 4, wrong);
    world.heal(12);
    world.checkConvergence(wrong);
    add(totals.world, world.counters);
    return wrong;
}

/// One photograph; the line breaks at one request, on the way there or on the way back.
std::vector<std::string> cutOnce(const ClinicTemplate& from, const std::filesystem::path& folder, std::uint64_t seed,
                                 std::uint64_t at, bool onTheWayBack, bool& cut, Totals& totals)
{
    SeededRandomness::reseed(seed);
    Trace trace;
    World world(from, folder, seed, trace, false);
    std::vector<std::string> wrong;
    std::map<std::string, int> taken;
    std::uint64_t requests = 0;
    cut = false;
    world.lying = [&](const mailbox::Request& request, const std::string&) -> mailbox::Response {
        const bool here = mailbox::Service::isAboutBlobs(request) && requests++ == at;
        cut = cut || here;
        if (here && !onTheWayBack)
            return {503, {}, 2, {}};
        const mailbox::Response response = world.honest(request);
        if (isChunk(request, "PUT") && response.status == 200)
            ++taken[request.path];
        return here ? mailbox::Response{503, {}, 2, {}} : response;
    };
    World::Device& phone = world.phone(0);
    world.takePhoto(phone);
    for (int round = 0; round < 6; ++round) {
        world.syncOnce(phone);
        world.settle();
        world.syncOnce(world.desk());
        world.settle();
        world.checkClaims(wrong);
    }
    world.checkConvergence(wrong);
    totals.cuts += cut ? 1 : 0;
    for (const auto& [path, times] : taken) {
        ++totals.chunksOnce;
        if (times != 1)
            wrong.push_back("a chunk that the hub has was sent to it again");
    }
    add(totals.world, world.counters);
    return wrong;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t wanted = faults::option(argc, argv, "--scripts", 66);
    const std::uint64_t seed = faults::option(argc, argv, "--seed", 20270301);
    const double until = faults::secondsNow() + 60.0 * static_cast<double>(faults::option(argc, argv, "--minutes", 100'000));
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    const SeededRandomness randomness(seed);
    const faults::Scratch scratch("photos");
    const ClinicTemplate clinic = ClinicTemplate::make(scratch.path() / "clinic", 2);
    std::printf("photographs: %llu scripts, seed %llu\n", static_cast<unsigned long long>(wanted), static_cast<unsigned long long>(seed));
    Totals totals;
    const auto judge = [&](const std::vector<std::string>& wrong, std::uint64_t which) {
        for (const std::string& sentence : wrong)
            std::fprintf(stderr, "script %llu: %s\n", static_cast<unsigned long long>(which), sentence.c_str());
        ++totals.scripts;
        return wrong.empty();
    };
    const std::filesystem::path folder = scratch.path() / "world";
    // Every request of one journey, there and back, until there is none left to cut.
    for (const bool back : {false, true})
        for (std::uint64_t at = 0, some = 1; some != 0; ++at) {
            bool cut = false;
            if (!judge(cutOnce(clinic, folder, seed, at, back, cut, totals), at))
                return 1;
            some = cut ? 1 : 0;
        }
    for (std::uint64_t i = 0; i < wanted && faults::secondsNow() < until; ++i)
        if (!judge(lieOnce(clinic, folder, seed + i, totals), i))
            return 1;
    const auto plain = [](std::uint64_t value) { return static_cast<unsigned long long>(value); };
    std::printf("  scripts %llu, cuts %llu, chunks put up once %llu\n", plain(totals.scripts), plain(totals.cuts), plain(totals.chunksOnce));
    std::printf("  photographs %llu, taken back %llu, arrived %llu; chunks up %llu, down %llu; entries %llu\n", plain(totals.world.photos),
                plain(totals.world.photosTakenBack), plain(totals.world.photosArrived), plain(totals.world.chunksSent),
                plain(totals.world.chunksReceived), plain(totals.world.entries));
    bool everything = totals.cuts > 10 && totals.chunksOnce > 0 && totals.world.photosArrived > 0;
    for (std::size_t lie = 1; lie < lies; ++lie) {
        std::printf("  lie %zu was told %llu times\n", lie, plain(totals.played[lie]));
        everything = everything && (totals.played[lie] > 0 || wanted < lies);
    }
    if (!everything)
        std::fputs("something was never tried\n", stderr);
    return everything ? 0 : 1;
}
