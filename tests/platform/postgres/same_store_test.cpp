// Two stores that are told the same say the same, whatever they are told. The embedded store is the
// older one, and the measure.

#include "tests/platform/postgres/any_store.h"

#include <random>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;

namespace {

/// The same clinics, devices and mailboxes in two stores, and calls drawn at random.
struct Twins {
    AnyStore embedded{Kind::embedded}, postgres{Kind::postgres};
    std::mt19937_64 random;
    std::vector<Device> devices;
    std::vector<envelope::MailboxId> mailboxes;
    int successes = 0, refusals = 0;

    explicit Twins(std::uint64_t seed) : random(seed)
    {
        for (int clinic = 0; clinic < 2; ++clinic) {
            const crypto::SigningPublicKey root{crypto::randomArray<32>()};
            const auto number = embedded->addClinic(root, "");
            REQUIRE(number);
            REQUIRE(postgres->addClinic(root, "") == *number);
            for (int i = 0; i < 2; ++i) {
                devices.push_back(deviceOf(*number, Role::desk));
                REQUIRE(embedded->putDevice(devices.back()));
                REQUIRE(postgres->putDevice(devices.back()));
            }
            for (int i = 0; i < 2; ++i) {
                devices.push_back(deviceOf(*number, Role::phone));
                mailboxes.push_back({crypto::randomArray<16>()});
                ClinicInStore::join(*embedded, devices.back(), mailboxes.back());
                ClinicInStore::join(*postgres, devices.back(), mailboxes.back());
            }
        }
        mailboxes.push_back({crypto::randomArray<16>()});  // that nobody has
    }

    std::uint64_t below(std::uint64_t bound) { return random() % bound; }
    template <typename Call>
    void alike(const Call& call)
    {
        const auto first = call(*embedded), second = call(*postgres);
        const auto reason = [](const auto& result) { return result ? Reason{} : result.error().reason; };
        CHECK(reason(first) == reason(second));
        ++(first ? successes : refusals);
    }
    void read(const Device& reader, const envelope::MailboxId& mailbox)
    {
        std::vector<Position> positions;
        for (const Device& device : devices)
            if (below(2) == 0)
                positions.push_back({device.id, below(12)});
        const std::size_t atMost = below(400);
        const auto first = embedded->envelopesAfter(reader, mailbox, positions, atMost);
        const auto second = postgres->envelopesAfter(reader, mailbox, positions, atMost);
        REQUIRE(first.has_value() == second.has_value());
        if (!first)
            return;
        REQUIRE(first->size() == second->size());
        for (std::size_t i = 0; i < first->size(); ++i) {
            CHECK((*first)[i].device == (*second)[i].device);
            CHECK((*first)[i].sequence == (*second)[i].sequence);
            CHECK((*first)[i].body == (*second)[i].body);
        }
    }
    void step(int number)
    {
        const Device& device = devices[below(devices.size())];
        const envelope::MailboxId& mailbox = mailboxes[below(mailboxes.size())];
        const clock::Instant now = noon + std::chrono::minutes(number);
        const Quota quota{20, 2'000};
        const std::uint64_t sequence = 1 + below(12);
        switch (below(10)) {
        case 0:
            alike([&](MailStore& store) { return store.acknowledge(device, mailbox, {devices[sequence % devices.size()].id, sequence}, now); });
            break;
        case 1:
            read(device, mailbox);
            break;
        case 2:
            CHECK(embedded->withNews(device) == postgres->withNews(device));
            break;
        case 3:
            alike([&](MailStore& store) { return store.dropAcknowledged(now - std::chrono::minutes(20)); });
            break;
        default: {
            const bytes::Bytes text(20 + sequence * 17, static_cast<std::uint8_t>(below(8) == 0 ? 1 : 2));
            alike([&](MailStore& store) { return store.putEnvelope(device, mailbox, sequence, text, now, quota); });
        }
        }
    }
};

}  // namespace

TEST_CASE("both stores answer alike to any calls in any order", "[store]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    const std::uint64_t seed = std::random_device()();
    CAPTURE(seed);
    Twins twins(seed);
    for (int i = 0; i < 1500; ++i)
        twins.step(i);

    const auto first = twins.embedded->usage(noon), second = twins.postgres->usage(noon);
    REQUIRE(first);
    REQUIRE(second);
    CHECK(first->envelopes == second->envelopes);
    CHECK(first->bytes == second->bytes);
    CHECK(first->mailboxes == second->mailboxes);
    // Neither is a store that only says no, or only yes.
    CHECK(twins.successes > 100);
    CHECK(twins.refusals > 100);
}
