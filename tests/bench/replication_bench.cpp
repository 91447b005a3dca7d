// replication_bench [--entries n] [--rounds n]: how many bytes and how much time replication takes: 20 000 entries from a phone over a
// hub to a desk, and one course of 132 entries that way and back. Sealed, verified, and durable in three encrypted files on
// the disk of TMPDIR; the hub is the whole server behind HTTP on this machine, without TLS. Beside it, in the same run, the same
// entries by PouchDB over HTTP, if npm can bring it. Prints, judges nothing.

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "platform/server/http_server.h"
#include "tests/bench/http_courier.h"
#include "tests/faults/workload.h"
#include "tests/simulation/clinic_template.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::simulation;

namespace {

/// As a patient writes them: a few scores, seldom a sign, seldom a note.
records::Body entryOf(const recovery::CourseId& course, clock::Instant at, std::size_t number)
{
    recovery::Entry entry;
    entry.id = recovery::EntryId{crypto::randomArray<16>()};
    entry.course = course;
    // Times and scores by chance: regular ones would be packed into nothing.
    const auto chance = crypto::randomArray<10>();
    entry.at = entry.recordedAt = zone().moment(at + std::chrono::minutes(number) + std::chrono::milliseconds(chance[0] * 256 + chance[1]));
    std::size_t next = 2;
    const auto score = [&] { return *recovery::Score::of(chance.at(next++) % 11); };
    for (const auto symptom : {recovery::Symptom::pain, recovery::Symptom::swelling, recovery::Symptom::bruising})
        for (const auto side : {recovery::Side::left, recovery::Side::right})
            entry.scores.emplace(recovery::Stream{symptom, side}, score());
    if (number % 20 == 0)
        entry.present = {recovery::Sign::warmer};
    if (number % 10 == 0)
        entry.note = "Better than yesterday, " + std::to_string(number) + ".";
    return records::EntryRecorded{entry};
}

struct Watch {
    double wall = faults::secondsNow();
    std::clock_t processor = std::clock();
    double wallMs() const { return 1000 * (faults::secondsNow() - wall); }
    double processorMs() const { return 1000.0 * static_cast<double>(std::clock() - processor) / CLOCKS_PER_SEC; }
};

/// On a disk, not in memory: what is durable has to reach it. Gone afterwards.
class Place {
public:
    Place()
    {
        std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-replication-" + std::string(6, 'X'));
        must(::mkdtemp(pattern.data()) != nullptr, "a folder can be made");
        m_path = pattern;
    }
    ~Place() { std::filesystem::remove_all(m_path); }
    Place(const Place&) = delete;
    Place& operator=(const Place&) = delete;
    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

struct Figures {
    double courseThereMs = 0, courseBackMs = 0, courseBytes = 0;
    double ms = 0, sealingMs = 0, processorMs = 0, bytesUp = 0, bytes = 0;
    std::uint64_t requests = 0;
};

Figures replicate(std::size_t entries, std::vector<records::Body>* shown)
{
    const Place place;
    const auto made = ClinicTemplate::make(place.path(), 2);
    clock::ManualClock clock(made.ends);
    auto store = std::move(*mailbox::openEmbeddedStore(place.path() / "hub"));
    mailbox::Service service(*store, limits());
    server::ServerSettings settings;
    settings.networkThreads = 1;
    settings.storageThreads = 2;
    const auto hub = std::move(*server::HttpServer::start(service, clock, settings));
    bench::HttpCourier courier(hub->port());
    auto desk = std::move(*desk::Desk::unlock(place.path() / "desk", passphrase, clock, zone()));
    const auto phoneOf = [&](std::size_t i) {
        return std::move(*patient::Diary::unlock(place.path() / made.phones[i].folder, passphrase, clock, zone()));
    };
    const auto write = [&](patient::Diary& phone, std::size_t i, std::size_t count) {
        for (std::size_t from = 0; from < count; from += 500) {
            std::vector<records::Body> bodies;
            for (std::size_t n = from; n < std::min(count, from + 500); ++n)
                bodies.push_back(entryOf(made.phones[i].course, made.ends, n));
            if (i == 0 && shown)
                shown->insert(shown->end(), bodies.begin(), bodies.end());
            must(phone.vault().append(bodies, zone().moment(clock.now()), made.phones[i].mailbox).has_value(), "entries are stored");
        }
    };
    const auto run = [&](auto& device) {
        sync::Report report;
        device.syncNow(courier, [&](const sync::Report& done) { report = done; });
        must(!report.problem, "the run ends well");
        return report;
    };

    Figures figures;
    auto small = phoneOf(1);
    write(small, 1, 132);
    Watch watch;
    must(run(small).envelopesSent == 1, "one envelope is enough for a course");
    must(run(desk).operationsReceived == 132, "the course arrives");
    figures.courseThereMs = watch.wallMs();
    watch = {};
    run(small);
    figures.courseBackMs = watch.wallMs();
    figures.courseBytes = static_cast<double>(courier.bytes);
    must(small.vault().delivered(made.phones[1].mailbox).sequence > 0, "it is acknowledged");

    auto large = phoneOf(0);
    write(large, 0, entries);
    courier.bytes = courier.requests = 0;
    watch = {};
    run(large);
    figures.sealingMs = watch.wallMs();
    figures.bytesUp = static_cast<double>(courier.bytes);
    for (std::size_t received = 0; received < entries;) {
        const std::size_t now = run(desk).operationsReceived;
        must(now > 0, "every run brings something");
        received += now;
    }
    run(large);
    figures.ms = watch.wallMs();
    figures.processorMs = watch.processorMs();
    figures.bytes = static_cast<double>(courier.bytes);
    figures.requests = courier.requests;
    must(desk.vault().state().courses.at(made.phones[0].course).entries.size() == entries, "every entry is at the desk");
    hub->stop(std::chrono::seconds(1));
    return figures;
}

/// The same entries as documents of their own, one a line.
void writeDocuments(const std::vector<records::Body>& bodies, const std::filesystem::path& file)
{
    std::ofstream out(file);
    for (const records::Body& body : bodies) {
        const recovery::Entry& entry = std::get<records::EntryRecorded>(body).entry;
        out << "{\"_id\":\"" << bytes::toHex(entry.id.view()) << "\",\"course\":\"" << bytes::toHex(entry.course.view()) << "\",\"at\":\""
            << clock::toIso8601(entry.at) << "\",\"recordedAt\":\"" << clock::toIso8601(entry.recordedAt) << "\",\"scores\":[";
        const char* between = "";
        for (const auto& [stream, score] : entry.scores) {
            out << between << '[' << static_cast<int>(stream.symptom) << ',' << static_cast<int>(stream.side) << ',' << score.points() << ']';
            between = ",";
        }
        out << "],\"present\":[" << (entry.present.empty() ? "" : "\"warmer\"") << "],\"note\":\"" << entry.note << "\"}\n";
    }
}

struct Peer {
    double ms = 0, bytes = 0, courseMs = 0;
};

/// Empty, and said, where there is none.
std::optional<Peer> peerOf(const std::vector<records::Body>& bodies)
{
    const Place place;
    writeDocuments(bodies, place.path() / "entries.jsonl");
    const std::string command = "bash '" EBBLINE_PEER "' '" + place.path().string() + "'";
    std::FILE* pipe = ::popen(command.c_str(), "r");
    must(pipe != nullptr, "a shell starts");
    Peer peer;
    const int read = std::fscanf(pipe, "replicated %lf ms %lf bytes, course %lf ms", &peer.ms, &peer.bytes, &peer.courseMs);
    return ::pclose(pipe) == 0 && read == 3 ? std::optional(peer) : std::nullopt;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::size_t entries = faults::option(argc, argv, "--entries", 20'000);
    const std::size_t rounds = faults::option(argc, argv, "--rounds", 3);
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    std::vector<records::Body> bodies;
    std::vector<Figures> all;
    std::vector<Peer> peers;
    for (std::size_t i = 0; i < rounds; ++i) {
        all.push_back(replicate(entries, i == 0 ? &bodies : nullptr));
        if (i == 0 || !peers.empty())
            if (const auto peer = peerOf(bodies))
                peers.push_back(*peer);
    }
    // The middle one of the rounds, by its own order.
    const auto middle = [](const auto& of, auto value) {
        std::vector<double> values;
        for (const auto& each : of)
            values.push_back(each.*value);
        std::ranges::sort(values);
        return values[values.size() / 2];
    };
    const auto n = static_cast<double>(entries);
    std::printf("the middle of %zu rounds\n"
                "one course of 132 entries: there %.1f ms, acknowledged back %.1f ms (20 ms at most are asked for, each way); %.0f bytes\n",
                rounds, middle(all, &Figures::courseThereMs), middle(all, &Figures::courseBackMs), middle(all, &Figures::courseBytes));
    const double own = middle(all, &Figures::ms);
    std::printf("%zu entries, phone to hub to desk and acknowledged back: %.0f ms, of which sealing and offering %.0f ms; of the processor %.0f ms\n"
                "  bytes an entry: %.1f from the phone, %.1f on both ways together (130 at most are asked for); %llu requests\n",
                entries, own, middle(all, &Figures::sealingMs), middle(all, &Figures::processorMs), middle(all, &Figures::bytesUp) / n,
                middle(all, &Figures::bytes) / n, static_cast<unsigned long long>(all.front().requests));
    if (peers.empty()) {
        std::printf("no peer: npm or its registry is missing\n");
        return 0;
    }
    const double peer = middle(peers, &Peer::ms);
    std::printf("PouchDB, the same entries, neither sealed nor durable: %.0f ms, %.1f bytes an entry; a course %.0f ms\n"
                "  this takes %.2f of its time: %.1f times as fast (5 is asked for)\n",
                peer, middle(peers, &Peer::bytes) / n, middle(peers, &Peer::courseMs), own / peer, peer / own);
    return 0;
}
