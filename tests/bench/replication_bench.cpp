// How many bytes and how much time replication takes: 20 000 entries from a phone over a hub to a desk, and one
// course of 132 entries that way and back. The hub answers in this process: bodies, paths and authorisation are counted,
// what HTTP and TLS add is not. Vaults and the hub's store are encrypted files in memory where the machine has such a place.

#include "tests/faults/workload.h"
#include "tests/simulation/clinic_template.h"

#include <cstdio>
#include <ctime>

using namespace ebbline;
using namespace ebbline::simulation;

namespace {

struct Counted final : sync::Courier {
    Counted(mailbox::Service& hub, const clock::Clock& source) : service(hub), clock(source) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        mailbox::Response response = service.handle(request, "127.0.0.1", clock.now());
        ++requests;
        bytes += request.path.size() + request.query.size() + request.authorisation.size() + request.body.size() + response.body.size();
        answer(std::move(response));
    }
    mailbox::Service& service;
    const clock::Clock& clock;
    std::uint64_t requests = 0;
    std::uint64_t bytes = 0;
};

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

}  // namespace

int main(int argc, char** argv)
{
    const std::size_t entries = faults::option(argc, argv, "--entries", 20'000);
    must(crypto::initialise().has_value(), "the cryptographic library starts");
    const faults::Scratch scratch("replication");
    const auto made = ClinicTemplate::make(scratch.path(), 2);
    clock::ManualClock clock(made.ends);
    auto store = std::move(*mailbox::openEmbeddedStore(scratch.path() / "hub"));
    mailbox::Service service(*store, limits());
    Counted courier(service, clock);
    auto desk = std::move(*desk::Desk::unlock(scratch.path() / "desk", passphrase, clock, zone()));
    const auto phoneOf = [&](std::size_t i) {
        return std::move(*patient::Diary::unlock(scratch.path() / made.phones[i].folder, passphrase, clock, zone()));
    };
    const auto write = [&](patient::Diary& phone, std::size_t i, std::size_t count) {
        for (std::size_t from = 0; from < count; from += 500) {
            std::vector<records::Body> bodies;
            for (std::size_t n = from; n < std::min(count, from + 500); ++n)
                bodies.push_back(entryOf(made.phones[i].course, made.ends, n));
            must(phone.vault().append(bodies, zone().moment(clock.now()), made.phones[i].mailbox).has_value(), "entries are stored");
        }
    };
    const auto run = [&](auto& device) {
        sync::Report report;
        device.syncNow(courier, [&](const sync::Report& done) { report = done; });
        must(!report.problem, "the run ends well");
        return report;
    };

    auto small = phoneOf(1);
    write(small, 1, 132);
    Watch watch;
    must(run(small).envelopesSent == 1, "one envelope is enough for a course");
    must(run(desk).operationsReceived == 132, "the course arrives");
    run(small);
    std::printf("one course of 132 entries, there and acknowledged back: %.1f ms, of the processor %.1f ms; %llu bytes, %llu requests\n",
                watch.wallMs(), watch.processorMs(),
                static_cast<unsigned long long>(courier.bytes), static_cast<unsigned long long>(courier.requests));
    must(small.vault().delivered(made.phones[1].mailbox).sequence > 0, "it is acknowledged");

    auto large = phoneOf(0);
    write(large, 0, entries);
    courier.bytes = courier.requests = 0;
    watch = {};
    run(large);
    const double there = watch.wallMs();
    const std::uint64_t up = courier.bytes;
    std::size_t received = 0;
    while (received < entries) {
        const std::size_t now = run(desk).operationsReceived;
        must(now > 0, "every run brings something");
        received += now;
    }
    run(large);
    std::printf("%zu entries, phone to hub to desk and acknowledged back: %.0f ms, of which sealing and offering %.0f ms; of the processor %.0f ms\n",
                entries, watch.wallMs(), there, watch.processorMs());
    std::printf("  bytes an entry: %.1f from the phone, %.1f on both ways together; %llu requests\n",
                static_cast<double>(up) / static_cast<double>(entries), static_cast<double>(courier.bytes) / static_cast<double>(entries),
                static_cast<unsigned long long>(courier.requests));
    must(desk.vault().state().courses.at(made.phones[0].course).entries.size() == entries, "every entry is at the desk");
    return 0;
}
