// What only a shared store has: commits that overlap, hubs that hear of each other, servers that come and
// go, migrations that meet.

#include "core/bytes/text.h"
#include "platform/postgres/connection.h"
#include "platform/postgres/tables.h"
#include "tests/platform/postgres/any_store.h"

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>

using namespace ebbline;
using namespace ebbline::mailbox;
using namespace ebbline::test;
using namespace std::chrono_literals;
using postgres::Arguments;
using postgres::Connection;

namespace {

std::unique_ptr<Connection> sessionTo(const std::string& address)
{
    auto opened = Connection::open(address);
    REQUIRE(opened);
    return std::move(*opened);
}

std::vector<std::uint64_t> sequencesOf(const Result<std::vector<StoredEnvelope>>& envelopes)
{
    REQUIRE(envelopes);
    std::vector<std::uint64_t> sequences;
    for (const StoredEnvelope& envelope : *envelopes)
        sequences.push_back(envelope.sequence);
    return sequences;
}

using Sequences = std::vector<std::uint64_t>;

/// An envelope put by hand into a transaction that stays open.
void putOpenly(Connection& session, const ClinicInStore& clinic, const Device& sender, std::int64_t sequence)
{
    REQUIRE(session.run("BEGIN"));
    const auto put = session.ask("SELECT put_envelope($1::bigint, $2::boolean, $3::bytea, $4::bytea, $5::bigint, $6::bytea, 0, 1000, 100)",
                                 Arguments()
                                     .add(clinic.clinic)
                                     .add(sender.role == Role::desk)
                                     .add(clinic.mailbox.view())
                                     .add(sender.id.view())
                                     .add(sequence)
                                     .add(bytes::viewOf("x")));
    REQUIRE(put);
    REQUIRE(put->integer(0, 0) == 0);
}

}  // namespace

TEST_CASE("a commit that overlaps another is never skipped: a mailbox takes one after the other", "[postgres]")
{
    AnyStore store(Kind::postgres);
    const ClinicInStore clinic(*store);
    const auto slow = sessionTo(store.address());
    putOpenly(*slow, clinic, clinic.phone, 1);

    // The second is under way while the first is not committed: it waits, and no reader sees it before the first.
    std::atomic<bool> done = false;
    Done put;
    std::thread second([&] {
        put = store->putEnvelope(clinic.phone, clinic.mailbox, 2, bytes::viewOf("x"), noon, roomy);
        done = true;
    });
    std::this_thread::sleep_for(300ms);
    CHECK_FALSE(done);
    CHECK(sequencesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {}, 1000)) == Sequences{});

    REQUIRE(slow->run("COMMIT"));
    second.join();
    CHECK(put);
    CHECK(sequencesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, {}, 1000)) == Sequences{1, 2});
}

TEST_CASE("overlapping commits that end in the other order are all handed out", "[postgres]")
{
    AnyStore store(Kind::postgres);
    const ClinicInStore clinic(*store);
    const auto otherDesk = deviceOf(clinic.clinic, Role::desk);
    REQUIRE(store->putDevice(otherDesk));
    // Another mailbox does not wait.
    const auto phone = deviceOf(clinic.clinic, Role::phone);
    ClinicInStore elsewhere = clinic;
    elsewhere.mailbox = {crypto::randomArray<16>()};
    ClinicInStore::join(*store, phone, elsewhere.mailbox);
    const auto slow = sessionTo(store.address());
    putOpenly(*slow, clinic, otherDesk, 1);
    REQUIRE(store->putEnvelope(phone, elsewhere.mailbox, 1, bytes::viewOf("x"), noon, roomy));
    CHECK(sequencesOf(store->envelopesAfter(clinic.desk, elsewhere.mailbox, {}, 1000)) == Sequences{1});

    // A reader went on meanwhile; its positions are per sender, so the late one is before none of them.
    std::vector<Position> positions{{clinic.phone.id, 0}};
    CHECK(sequencesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, positions, 1000)) == Sequences{});
    REQUIRE(slow->run("COMMIT"));
    REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy));
    positions = {{clinic.phone.id, 1}};
    CHECK(sequencesOf(store->envelopesAfter(clinic.desk, clinic.mailbox, positions, 1000)) == Sequences{1});
    CHECK(store->envelopesAfter(clinic.desk, clinic.mailbox, positions, 1000)->front().device == otherDesk.id);
}

TEST_CASE("a hub hears at once what another one wrote, and nothing of its own", "[postgres]")
{
    AnyStore first(Kind::postgres);
    const ClinicInStore clinic(*first);
    auto second = first.another();
    REQUIRE(second);
    std::mutex mutex;
    std::condition_variable changed;
    std::size_t whole = 0, own = 0, others = 0;
    (*second)->whenOthersWrite([&](const std::optional<mailbox::Written>& written) {
        const std::scoped_lock lock(mutex);
        ++(!written ? whole : written->mailbox == clinic.mailbox ? others : own);
        changed.notify_all();
    });
    first->whenOthersWrite([&](const std::optional<mailbox::Written>& written) {
        const std::scoped_lock lock(mutex);
        ++(written ? own : whole);
        changed.notify_all();
    });
    std::unique_lock lock(mutex);
    REQUIRE(changed.wait_for(lock, 5s, [&] { return whole >= 2; }));
    lock.unlock();

    REQUIRE(first->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy));
    lock.lock();
    CHECK(changed.wait_for(lock, 2s, [&] { return others > 0; }));
    changed.wait_for(lock, 200ms);
    CHECK(own == 0);
    lock.unlock();

    (*second)->whenOthersWrite({});
    const std::size_t heard = others;
    REQUIRE(first->putEnvelope(clinic.phone, clinic.mailbox, 2, bytes::viewOf("x"), noon, roomy));
    std::this_thread::sleep_for(200ms);
    CHECK(others == heard);
    first->whenOthersWrite({});
}

TEST_CASE("a server that dies is found again; who waits is told to look meanwhile", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    Cluster cluster;
    postgres::Settings settings;
    settings.address = cluster.address();
    settings.patience = 120s;
    settings.lookAgain = 100ms;
    auto store = postgres::openPostgresStore(settings);
    REQUIRE(store);
    const ClinicInStore clinic(**store);
    std::atomic<int> looks = 0;
    (*store)->whenOthersWrite([&](const std::optional<mailbox::Written>& written) { looks += !written; });
    REQUIRE((*store)->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy));

    cluster.kill();
    // Called while nobody is there, done when somebody is.
    Done put = fail(Reason::unreachable, "");
    std::thread putting([&] { put = (*store)->putEnvelope(clinic.phone, clinic.mailbox, 2, bytes::viewOf("x"), noon, roomy); });
    std::this_thread::sleep_for(1s);
    cluster.start();
    putting.join();
    CHECK(put);
    CHECK(looks >= 3);
    CHECK(sequencesOf((*store)->envelopesAfter(clinic.desk, clinic.mailbox, {}, 1000)) == Sequences{1, 2});
}

TEST_CASE("a server that stays away is said, and the caller is not kept for ever", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    Cluster cluster;
    postgres::Settings settings;
    settings.address = cluster.address();
    settings.patience = 300ms;
    auto store = postgres::openPostgresStore(settings);
    REQUIRE(store);
    cluster.kill();

    const auto began = std::chrono::steady_clock::now();
    CHECK((*store)->device({}).error().reason == Reason::storageFailed);
    CHECK(reasonOf((*store)->ready()) == Reason::storageFailed);
    CHECK(std::chrono::steady_clock::now() - began < 5s);
}

TEST_CASE("hubs that start together migrate once; a newer database is refused", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    Cluster cluster;
    postgres::Settings settings;
    settings.address = cluster.address();
    std::atomic<int> opened = 0;
    std::vector<std::thread> hubs;
    for (int i = 0; i < 6; ++i)
        hubs.emplace_back([&] { opened += postgres::openPostgresStore(settings).has_value(); });
    for (std::thread& hub : hubs)
        hub.join();
    CHECK(opened == 6);
    CHECK(cluster.sql("SELECT count(*) || ' ' || max(number) FROM ebbline.version") == "6 6");

    (void)cluster.sql("INSERT INTO ebbline.version VALUES (999)");
    CHECK(postgres::openPostgresStore(settings).error().reason == Reason::unsupported);
}

TEST_CASE("a database of every earlier version is brought forward, and what lay in it is handed out, counted and tidied", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    Cluster cluster;
    // Version 3 is the first that stores anything by functions.
    for (std::size_t version = 3; version < postgres::migrations.size(); ++version) {
        CAPTURE(version);
        const std::string name = "old" + std::to_string(version);
        (void)cluster.sql("CREATE DATABASE " + name + " OWNER hub", "postgres");
        postgres::Settings settings;
        settings.address = cluster.address({}, name);
        const auto desk = deviceOf(1, Role::desk), phone = deviceOf(1, Role::phone);
        const envelope::MailboxId mailbox{crypto::randomArray<16>()};
        {
            // As a hub of that version left it.
            const auto session = sessionTo(settings.address);
            REQUIRE(session->run("CREATE SCHEMA ebbline; CREATE TABLE ebbline.version (number bigint NOT NULL); SET search_path = ebbline"));
            for (std::size_t i = 0; i < version; ++i)
                REQUIRE(session->run(std::string(postgres::migrations[i]) + "; INSERT INTO version VALUES (" + std::to_string(i + 1) + ")"));
            const auto hex = [](bytes::View view) { return "'\\x" + bytes::toHex(view) + "'::bytea"; };
            const auto device = [&](const Device& each) {
                return "SELECT put_device(1, " + hex(each.id.view()) + ", " + hex(each.key.value) + ", " + std::to_string(static_cast<int>(each.role)) + ")";
            };
            REQUIRE(session->run("SELECT set_config('ebbline.whole', 'on', false); INSERT INTO clinic (root, hint) VALUES ('\\x01', '');"
                                 + device(desk) + ";" + device(phone) + "; SELECT set_config('ebbline.clinic', '1', false);"
                                 + "INSERT INTO mailbox (id, clinic, phone) VALUES (" + hex(mailbox.view()) + ", 1, " + hex(phone.id.view()) + ")"));
            const auto received = std::to_string(noon.time_since_epoch().count());
            for (int i = 1; i <= 3; ++i)
                REQUIRE(session->run("SELECT put_envelope(1, false, " + hex(mailbox.view()) + ", " + hex(phone.id.view()) + ", " + std::to_string(i)
                                     + ", " + hex(bytes::viewOf("body " + std::to_string(i))) + ", " + received + ", 1000, 100)"));
            REQUIRE(session->run("SELECT acknowledge(1, true, " + hex(mailbox.view()) + ", " + hex(desk.id.view()) + ", " + hex(phone.id.view())
                                 + ", 2, " + received + ")"));
        }
        auto store = postgres::openPostgresStore(settings);
        if (!store)
            FAIL(store.error().detail);
        const auto number = std::to_string(postgres::migrations.size());
        CHECK(cluster.sql("SELECT count(*) || ' ' || max(number) FROM ebbline.version", name) == number + " " + number);
        CHECK(sequencesOf((*store)->envelopesAfter(desk, mailbox, {}, 1'000'000)) == Sequences{1, 2, 3});
        CHECK((*store)->usage(noon)->envelopes == 3);
        CHECK((*store)->putEnvelope(phone, mailbox, 1, bytes::viewOf("body 1"), noon, roomy));
        CHECK(reasonOf((*store)->putEnvelope(phone, mailbox, 1, bytes::viewOf("another"), noon, roomy)) == Reason::alreadyExists);
        REQUIRE((*store)->dropAcknowledged(noon + 1ms));
        CHECK(sequencesOf((*store)->envelopesAfter(desk, mailbox, {}, 1'000'000)) == Sequences{3});
    }
}

TEST_CASE("tidying looks at no acknowledgement twice, and at one again if its envelope came once more", "[postgres]")
{
    AnyStore store(Kind::postgres);
    const ClinicInStore clinic(*store);
    const auto session = sessionTo(store.address());
    const auto toDo = [&] {
        const auto rows = session->ask("SELECT count(*) FROM may_be_dropped($1::bigint, 500)",
                                       Arguments().add(std::int64_t{(noon + 24h * 30).time_since_epoch().count()}));
        REQUIRE(rows);
        return rows->integer(0, 0);
    };
    const auto put = [&](std::uint64_t sequence) { REQUIRE(store->putEnvelope(clinic.phone, clinic.mailbox, sequence, bytes::viewOf("x"), noon, roomy)); };
    for (std::uint64_t i = 1; i <= 3; ++i)
        put(i);
    CHECK(toDo() == 0);
    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 2}, noon));
    CHECK(toDo() == 1);
    REQUIRE(store->dropAcknowledged(noon + 24h));
    CHECK(toDo() == 0);
    CHECK(store->usage(noon)->envelopes == 1);

    // Offered again by a phone that did not hear of it.
    put(2);
    CHECK(toDo() == 1);
    REQUIRE(store->dropAcknowledged(noon + 24h));
    CHECK(store->usage(noon)->envelopes == 1);
    CHECK(toDo() == 0);

    REQUIRE(store->acknowledge(clinic.desk, clinic.mailbox, {clinic.phone.id, 3}, noon));
    CHECK(toDo() == 1);
    REQUIRE(store->dropAcknowledged(noon + 24h));
    CHECK(store->usage(noon)->envelopes == 0);
}

TEST_CASE("a commit that did not wait for its standby is not taken for done", "[postgres]")
{
    if (!Cluster::isAvailable())
        SKIP(Cluster::missing);
    // A standby is asked for and none is there: every commit waits.
    Cluster cluster;
    postgres::Settings settings;
    settings.address = cluster.address();
    settings.patience = 500ms;
    auto store = postgres::openPostgresStore(settings);
    REQUIRE(store);
    const ClinicInStore clinic(**store);
    (void)cluster.sql("ALTER SYSTEM SET synchronous_standby_names = '*'", "postgres");
    (void)cluster.sql("SELECT pg_reload_conf()", "postgres");
    std::this_thread::sleep_for(300ms);

    std::atomic<bool> over = false;
    Done put;
    std::thread putting([&] {
        put = (*store)->putEnvelope(clinic.phone, clinic.mailbox, 1, bytes::viewOf("x"), noon, roomy);
        over = true;
    });
    std::this_thread::sleep_for(500ms);
    CHECK_FALSE(over);
    // An operator cancels each wait: the envelope is there to see, but no standby has it.
    for (int i = 0; i < 100 && !over; ++i) {
        (void)cluster.sql("SELECT count(pg_cancel_backend(pid)) FROM pg_stat_activity WHERE wait_event = 'SyncRep'", "postgres");
        std::this_thread::sleep_for(100ms);
    }
    putting.join();
    CHECK(reasonOf(put) == Reason::storageFailed);
    CHECK(sequencesOf((*store)->envelopesAfter(clinic.desk, clinic.mailbox, {}, 1000)) == Sequences{1});
}
