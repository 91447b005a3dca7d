// abuse_campaign [--requests N] [--seed S]
//
// Sends malformed, oversized, unsigned, forged, stale, replayed, foreign and smuggled requests to the hub's program, with
// hundreds of half-open connections beside them, while one good client puts envelopes and is timed. Fails if anything but the
// good client's envelopes is stored, if the hub answers 5xx, ends, or grows by 32 MiB; if the good client is once not
// served, or 99 in 100 of its requests take 500 ms or more; or if an abusive request is answered 200.

#include "core/bytes/text.h"
#include "core/mailbox/embedded_store.h"
#include "tests/faults/abuse.h"
#include "tests/faults/campaign_options.h"
#include "tests/faults/hub_process.h"
#include "tests/platform/server/raw_client.h"

#include <algorithm>
#include <cstdio>
#include <deque>
#include <map>
#include <mutex>
#include <unistd.h>

using namespace ebbline;
using namespace ebbline::faults;
using namespace std::chrono_literals;

namespace {

constexpr std::size_t halfOpenAtOnce = 250;  ///< a thread
constexpr int threadsOfAbuse = 2;

struct Answers {
    std::mutex mutex;
    std::array<std::uint64_t, static_cast<std::size_t>(Abuse::count)> sent{};
    std::map<int, std::uint64_t> statuses;
    std::uint64_t accepted = 0;
};

/// Whether an answer 200 means that the hub fell for it. Changed bytes of a head may still say the same.
bool mayBeAnswered(Abuse kind, const std::string& request)
{
    return (kind == Abuse::headChanged || kind == Abuse::noise) && request.find("/v1/health") != std::string::npos;
}

void abuse(const Attacker& attacker, std::uint16_t port, std::uint64_t seed, std::uint64_t requests, int thread, Answers& answers)
{
    std::mt19937_64 random(seed);
    const clock::SystemClock clock;
    std::deque<std::unique_ptr<test::RawClient>> open;
    for (std::uint64_t i = 0; i < requests; ++i) {
        const auto kind = static_cast<Abuse>(random() % static_cast<std::uint64_t>(Abuse::count));
        const std::string bytes = attacker.request(kind, random, clock.now());
        // Five addresses a thread, none of them the good client's.
        const auto source = static_cast<std::uint8_t>(10 * (thread + 1) + static_cast<int>(random() % 5));
        auto client = std::make_unique<test::RawClient>(port, source, 2000ms);
        (void)client->send(bytes);
        int status = 0;
        if (kind == Abuse::halfOpen) {
            open.push_back(std::move(client));
            if (open.size() > halfOpenAtOnce)
                open.pop_front();
        } else if (kind != Abuse::cutShort && kind != Abuse::noise && kind != Abuse::headChanged) {
            status = statusOf(client->receive());
        }
        const std::scoped_lock lock(answers.mutex);
        ++answers.sent[static_cast<std::size_t>(kind)];
        ++answers.statuses[status];
        answers.accepted += status == 200 && !mayBeAnswered(kind, bytes);
    }
}

struct GoodClient {
    std::vector<double> milliseconds{};
    std::uint64_t stored = 0, unserved = 0;

    void live(const Phone& phone, const crypto::BoxPublicKey& clinic, std::uint16_t port, const std::atomic<bool>& stop)
    {
        const clock::SystemClock clock;
        while (!stop) {
            const std::uint64_t sequence = stored + 2;
            const auto sealed = envelope::seal({envelope::Kind::operations, phone.mailbox, phone.member.id, sequence, {}, 1},
                                               phone.member.key, {clinic}, bytes::viewOf("fine"));
            const std::string path = "/v1/m/" + bytes::toHex(phone.mailbox.view()) + "/" + bytes::toHex(phone.member.id.view()) + "/"
                                     + std::to_string(sequence);
            const auto began = std::chrono::steady_clock::now();
            const int status = statusOf(test::RawClient(port, 1, 20s).ask(phone.member.http("PUT", path, {}, *sealed, clock.now())));
            milliseconds.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count());
            ++(status == 200 ? stored : unserved);
            std::this_thread::sleep_for(5ms);
        }
    }
    double quantile(double share)
    {
        std::ranges::sort(milliseconds);
        return milliseconds.empty() ? 0 : milliseconds[static_cast<std::size_t>(share * static_cast<double>(milliseconds.size() - 1))];
    }
};

Phone joined(mailbox::MailStore& store, std::int64_t clinic)
{
    Phone phone;
    mailbox::StoredOffer offer;
    offer.id = crypto::randomArray<8>();
    offer.clinic = clinic;
    const mailbox::Device device{phone.member.id, phone.member.key.publicKey(), mailbox::Role::phone, clinic, false};
    if (!store.putOffer(offer) || !store.linkOffer(offer.id, bytes::viewOf("x"), phone.mailbox, device))
        throw std::runtime_error("a phone is not admitted");
    return phone;
}

}  // namespace

int main(int argc, char** argv)
{
    const std::uint64_t requests = numberFor(argc, argv, "--requests", 3000);
    const std::uint64_t seed = numberFor(argc, argv, "--seed", 1);
    if (!crypto::initialise())
        return 1;
    std::string pattern = std::filesystem::temp_directory_path() / ("ebbline-abuse-" + std::string(6, 'X'));
    const std::filesystem::path folder = ::mkdtemp(pattern.data()) ? pattern : "";
    auto store = std::move(*mailbox::openEmbeddedStore(folder));
    const std::int64_t clinic = *store->addClinic({crypto::randomArray<32>()}, ""), other = *store->addClinic({crypto::randomArray<32>()}, "");
    const Phone good = joined(*store, clinic), foreign = joined(*store, other);
    store.reset();

    HubProcess hub(folder, {"--mailbox-envelopes", "1000000"});
    hub.start();
    const crypto::BoxKey box = crypto::BoxKey::generate();
    const auto sealed = envelope::seal({envelope::Kind::operations, good.mailbox, good.member.id, 1, {}, 1}, good.member.key,
                                       {box.publicKey()}, bytes::viewOf("overheard"));
    const std::string path = "/v1/m/" + bytes::toHex(good.mailbox.view()) + "/" + bytes::toHex(good.member.id.view()) + "/1";
    Attacker attacker{good, *sealed, foreign.member, {}, good.member.http("PUT", path, {}, *sealed, clock::SystemClock().now())};
    if (statusOf(test::RawClient(hub.port()).ask(attacker.overheard)) != 200)
        return 1;

    std::atomic<bool> stop = false;
    GoodClient client;
    std::thread goodThread([&] { client.live(good, box.publicKey(), hub.port(), stop); });
    std::this_thread::sleep_for(500ms);
    const std::size_t before = hub.residentBytes();
    Answers answers;
    std::vector<std::thread> threads;
    const auto began = std::chrono::steady_clock::now();
    for (int i = 0; i < threadsOfAbuse; ++i)
        threads.emplace_back([&, i] { abuse(attacker, hub.port(), seed + static_cast<std::uint64_t>(i), requests / threadsOfAbuse, i, answers); });
    for (std::thread& thread : threads)
        thread.join();
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    const bool alive = hub.runs();
    const auto grown = static_cast<double>(hub.residentBytes()) / 1048576 - static_cast<double>(before) / 1048576;
    stop = true;
    goodThread.join();
    const bool ended = alive && hub.end() == 0;

    store = std::move(*mailbox::openEmbeddedStore(folder));
    const auto usage = *store->usage(clock::SystemClock().now());
    store.reset();
    std::filesystem::remove_all(folder);
    std::uint64_t sent = 0, serverErrors = 0;
    std::printf("abuse: seed %llu, %.1f s\n", static_cast<unsigned long long>(seed), seconds);
    for (std::size_t i = 0; i < answers.sent.size(); ++i) {
        std::printf("  %-16s %llu\n", abuseNames[i], static_cast<unsigned long long>(answers.sent[i]));
        sent += answers.sent[i];
    }
    for (const auto& [status, count] : answers.statuses) {
        std::printf("  answered %-7d %llu\n", status, static_cast<unsigned long long>(count));
        serverErrors += status >= 500 ? count : 0;
    }
    const double median = client.quantile(0.5), p99 = client.quantile(0.99), worst = client.quantile(1);
    std::printf("%llu sent, %llu accepted, %llu server errors, grown by %.1f MiB, %lld envelopes and %lld devices stored\n"
                "good client: %llu served, %llu not, median %.1f ms, 99 in 100 within %.1f ms, slowest %.1f ms\n",
                static_cast<unsigned long long>(sent), static_cast<unsigned long long>(answers.accepted),
                static_cast<unsigned long long>(serverErrors), grown, static_cast<long long>(usage.envelopes),
                static_cast<long long>(usage.devices), static_cast<unsigned long long>(client.stored),
                static_cast<unsigned long long>(client.unserved), median, p99, worst);
    const bool stood = ended && serverErrors == 0 && answers.accepted == 0 && grown < 32
                       && usage.envelopes == static_cast<std::int64_t>(client.stored) + 1 && usage.devices == 2;
    const bool served = client.unserved == 0 && client.stored > 20 && p99 < 500;
    return stood && served ? 0 : 1;
}
