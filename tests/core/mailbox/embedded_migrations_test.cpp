// A hub's file of the version before is carried forward with everything in it.

#include "core/mailbox/embedded_store.h"
#include "core/mailbox/embedded_tables.h"
#include "tests/core/vault/folder.h"

using namespace ebbline;
using namespace ebbline::mailbox;

TEST_CASE("envelopes of a file of version 1 are handed out by today's program", "[mailbox]")
{
    const test::Folder folder;
    const envelope::MailboxId mailbox{crypto::randomArray<16>()};
    const Device phone{{crypto::randomArray<16>()}, {}, Role::phone, 1, false}, desk{{crypto::randomArray<16>()}, {}, Role::desk, 1, false};
    {
        auto old = store::Database::open(folder.path() / "hub.db", *keyFrom(folder.path() / "hub.key"), std::span(hubMigrations).first(1));
        REQUIRE(old);
        REQUIRE(old->version() == 1);
        REQUIRE(old->run("INSERT INTO clinic (id, root, hint) VALUES (1, x'aa', '')"));
        auto box = old->prepare("INSERT INTO mailbox (id, clinic, phone, bytes, envelopes) VALUES (?1, 1, ?2, 6, 3)");
        REQUIRE(box);
        REQUIRE(box->bind(mailbox.view()).bind(phone.id.view()).run());
        for (const std::int64_t sequence : {3, 1, 2}) {
            auto put = old->prepare("INSERT INTO envelope (mailbox, device, sequence, body, received) VALUES (?1, ?2, ?3, ?4, ?5)");
            REQUIRE(put);
            REQUIRE(put->bind(mailbox.view())
                        .bind(phone.id.view())
                        .bind(sequence)
                        .bind(bytes::viewOf("b" + std::to_string(sequence)))
                        .bind(sequence * 1000)
                        .run());
        }
    }
    const auto store = openEmbeddedStore(folder.path());
    REQUIRE(store);
    const auto found = (*store)->envelopesAfter(desk, mailbox, {}, 1000);
    REQUIRE(found);
    REQUIRE(found->size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK((*found)[i].sequence == i + 1);
        CHECK((*found)[i].body == bytes::Bytes{'b', static_cast<std::uint8_t>('1' + i)});
    }
    CHECK((*store)->usage({})->bytes == 6);
    // Its own again, unchanged, is known; another is refused.
    CHECK((*store)->putEnvelope(phone, mailbox, 2, bytes::viewOf("b2"), {}, {}));
    CHECK((*store)->putEnvelope(phone, mailbox, 2, bytes::viewOf("B2"), {}, {}).error().reason == Reason::alreadyExists);
}
