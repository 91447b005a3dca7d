// The second wall: a session in the name of one clinic cannot reach another's rows, whatever it asks.

#include "platform/postgres/connection.h"
#include "tests/platform/postgres/any_store.h"

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using postgres::Connection;

namespace {

struct TwoClinics {
    AnyStore store{Kind::postgres};
    ClinicInStore first{*store}, second{*store};
    std::unique_ptr<Connection> session;

    TwoClinics()
    {
        for (const ClinicInStore* each : {&first, &second}) {
            REQUIRE(store->putEnvelope(each->phone, each->mailbox, 1, bytes::viewOf("sealed"), noon, roomy));
            const BlobId blob{crypto::randomArray<16>()};
            REQUIRE(store->beginBlob(each->phone, each->mailbox, blob, {1, 100}, noon, roomy));
            REQUIRE(store->putChunk(each->phone, each->mailbox, blob, 0, bytes::Bytes(100), noon));
            REQUIRE(store->acknowledge(each->desk, each->mailbox, {each->phone.id, 1}, noon));
        }
        auto opened = Connection::open(store.address());
        REQUIRE(opened);
        session = std::move(*opened);
    }
    void become(std::int64_t clinic)
    {
        REQUIRE(session->run("BEGIN; SET LOCAL ebbline.clinic = '" + std::to_string(clinic) + "'"));
    }
    std::int64_t count(const std::string& from)
    {
        const auto rows = session->ask("SELECT count(*) FROM " + from);
        REQUIRE(rows);
        return rows->integer(0, 0);
    }
};

const std::vector<std::string> tables{"clinic", "device", "offer", "mailbox", "envelope", "ack", "blob", "blob_chunk"};

}  // namespace

TEST_CASE("a session of one clinic sees its own rows and none of another's", "[postgres]")
{
    TwoClinics world;
    for (const ClinicInStore* each : {&world.first, &world.second}) {
        world.become(each->clinic);
        for (const std::string& table : tables) {
            CAPTURE(table);
            const std::string clinic = table == "clinic" ? "id" : "clinic";
            CHECK(world.count(table) > 0);
            CHECK(world.count(table + " WHERE " + clinic + " <> " + std::to_string(each->clinic)) == 0);
        }
        REQUIRE(world.session->run("COMMIT"));
    }
    // The setting ended with its transaction, and without one there is nothing to see.
    for (const std::string& table : tables)
        CHECK(world.count(table) == 0);
}

TEST_CASE("a session of one clinic can neither change, remove nor make a row of another's", "[postgres]")
{
    TwoClinics world;
    const std::string other = std::to_string(world.second.clinic);
    const auto fails = [&](const std::string& sql) {
        world.become(world.first.clinic);
        const auto done = world.session->run(sql);
        REQUIRE(world.session->run("ROLLBACK"));
        return !done;
    };
    CHECK(fails("INSERT INTO envelope VALUES ('a', 'b', 1, " + other + ", 0, 'x')"));
    CHECK(fails("INSERT INTO mailbox (id, clinic, phone) VALUES ('a', " + other + ", 'b')"));
    CHECK(fails("UPDATE mailbox SET clinic = " + other));
    CHECK(fails("INSERT INTO ack VALUES ('a', 'b', 'c', 1, " + other + ", 0)"));
    CHECK(fails("INSERT INTO device VALUES ('a', " + other + ", 'b', 1)"));
    // Its own, by the same statement, it may.
    CHECK_FALSE(fails("INSERT INTO mailbox (id, clinic, phone) VALUES ('a', " + std::to_string(world.first.clinic) + ", 'b')"));

    world.become(world.first.clinic);
    REQUIRE(world.session->run("DELETE FROM envelope; DELETE FROM ack; UPDATE mailbox SET bytes = 77"));
    REQUIRE(world.session->run("COMMIT"));
    CHECK(world.store->envelopesAfter(world.first.desk, world.first.mailbox, {}, 100)->empty());
    CHECK(world.store->envelopesAfter(world.second.desk, world.second.mailbox, {}, 100)->size() == 1);
    CHECK(world.store->withNews(world.second.desk)->empty());
}

TEST_CASE("a partition shows nothing by itself, and a named row shows itself alone", "[postgres]")
{
    TwoClinics world;
    world.become(world.first.clinic);
    for (int part = 0; part < 16; ++part)
        CHECK(world.count("envelope_" + std::to_string(part)) == 0);
    REQUIRE(world.session->run("COMMIT"));

    const auto named = world.session->ask("SELECT count(*) FROM device_of($1::bytea)",
                                          postgres::Arguments().add(world.second.phone.id.view()));
    REQUIRE(named);
    CHECK(named->integer(0, 0) == 1);
    CHECK(world.count("device") == 0);
}

TEST_CASE("a role that overrides the separation, or a server that may forget, is refused", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    Cluster cluster;
    postgres::Settings settings;
    settings.address = cluster.adminAddress("ebbline");
    CHECK(postgres::openPostgresStore(settings).error().reason == Reason::refused);
    settings.address = cluster.address();
    (void)cluster.sql("ALTER ROLE hub BYPASSRLS", "postgres");
    CHECK(postgres::openPostgresStore(settings).error().reason == Reason::refused);
    (void)cluster.sql("ALTER ROLE hub NOBYPASSRLS", "postgres");
    (void)cluster.sql("ALTER ROLE hub SET synchronous_commit = off", "postgres");
    CHECK(postgres::openPostgresStore(settings).error().reason == Reason::unsupported);
    (void)cluster.sql("ALTER ROLE hub SET synchronous_commit = on", "postgres");
    CHECK(postgres::openPostgresStore(settings));
}
