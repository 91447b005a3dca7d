// Who asks does not wait for the disk that somebody else's write waits for.

#include "core/mailbox/embedded_store.h"
#include "core/mailbox/embedded_tables.h"
#include "tests/core/vault/folder.h"

#include <catch2/catch_test_macros.hpp>

#include <future>
#include <thread>

using namespace ebbline;
using namespace ebbline::mailbox;

namespace {

struct Mailbox {
    explicit Mailbox(MailStore& store) : id(crypto::randomArray<16>())
    {
        phone.id.value = crypto::randomArray<16>();
        phone.role = Role::phone;
        phone.clinic = store.addClinic({crypto::randomArray<32>()}, "").value();
        StoredOffer offer;
        offer.id = crypto::randomArray<8>();
        offer.clinic = phone.clinic;
        REQUIRE(store.putOffer(offer));
        REQUIRE(store.linkOffer(offer.id, bytes::viewOf("link"), id, phone));
        desk.clinic = phone.clinic;
        desk.id.value = crypto::randomArray<16>();
        desk.role = Role::desk;
        REQUIRE(store.putDevice(desk));
    }
    envelope::MailboxId id;
    Device phone, desk;
};

constexpr Quota plenty;

}  // namespace

TEST_CASE("while an envelope waits for the disk, devices are known and what was committed is handed out", "[mailbox][embedded]")
{
    const test::Folder folder;
    const auto store = std::move(*openEmbeddedStore(folder.path()));
    const Mailbox mailbox(*store);
    REQUIRE(store->putEnvelope(mailbox.phone, mailbox.id, 1, bytes::viewOf("first"), {}, plenty));

    auto another = store::Database::open(folder.path() / "hub.db", *keyFrom(folder.path() / "hub.key"), hubMigrations);
    REQUIRE(another);
    std::future<Done> waiting;
    const Done held = another->transaction([&]() -> Done {
        waiting = std::async(std::launch::async, [&] {
            return store->putEnvelope(mailbox.phone, mailbox.id, 2, bytes::viewOf("second"), {}, plenty);
        });
        // Long enough for the put to stand before the file that is held here.
        CHECK(waiting.wait_for(std::chrono::milliseconds(200)) == std::future_status::timeout);
        CHECK(store->device(mailbox.phone.id).has_value());
        CHECK(store->withNews(mailbox.desk) == std::vector{mailbox.id});
        const auto found = store->envelopesAfter(mailbox.desk, mailbox.id, {}, 1'000);
        REQUIRE(found);
        CHECK(found->size() == 1);
        CHECK(waiting.wait_for(std::chrono::milliseconds(0)) == std::future_status::timeout);
        return {};
    });
    CHECK(held);
    CHECK(waiting.get());
    CHECK(store->envelopesAfter(mailbox.desk, mailbox.id, {}, 1'000)->size() == 2);
}

TEST_CASE("a device that another process revokes is revoked for the next request", "[mailbox][embedded]")
{
    const test::Folder folder;
    const auto store = std::move(*openEmbeddedStore(folder.path()));
    const Mailbox mailbox(*store);
    REQUIRE_FALSE(store->device(mailbox.phone.id)->revoked);
    const auto another = std::move(*openEmbeddedStore(folder.path(), {}, IfMissing::refuse));
    REQUIRE(another->revokeDevice(mailbox.phone.id));
    CHECK(store->device(mailbox.phone.id)->revoked);
}
