// Photographs on their way: what is cut goes on, what is changed is refused, and nothing else waits for them.

#include "tests/core/sync/photo_pair.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;
using Pair = test::PhotoPair;
using test::isBlob;
using test::isChunk;

TEST_CASE("a photograph is with the clinic only when its desk has said so", "[sync][photos]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take(photos::Pose::leftOblique);
    REQUIRE(pair.phone.photos().size() == 1);
    CHECK(pair.phone.photos().front().here);
    CHECK_FALSE(pair.received());
    CHECK(pair.phone.photo(photo) == pair.picture);

    // With the hub alone nothing is claimed.
    const sync::Report sent = pair.world.syncPhone(pair.phone);
    CHECK(sent.photosSent == 1);
    CHECK(sent.photoChunksSent == 4);
    CHECK_FALSE(sent.photoProblem);
    pair.world.syncPhone(pair.phone);
    CHECK_FALSE(pair.received());

    pair.world.clock.advance(5min);
    const sync::Report came = pair.world.syncDesk();
    CHECK(came.photosReceived == 1);
    CHECK(came.photoChunksReceived == 4);
    const auto receivedAt = pair.world.clock.now();
    pair.world.clock.advance(5min);
    pair.world.syncPhone(pair.phone);
    REQUIRE(pair.received());
    CHECK(pair.phone.photos().front().received->at == receivedAt);

    const auto atDesk = pair.world.desk.photos(pair.course);
    REQUIRE(atDesk.size() == 1);
    CHECK(atDesk.front().isHere());
    CHECK(atDesk.front().pose == photos::Pose::leftOblique);
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
    CHECK(pair.world.desk.vault().verify());
    CHECK(pair.phone.vault().verify());

    // Nothing is carried a second time.
    pair.world.clock.advance(10h);
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 0);
    CHECK(pair.world.syncDesk().photoChunksReceived == 0);
    // What the hub was given says nothing of the picture.
    CHECK(std::ranges::search(pair.world.courier.received, bytes::View(pair.picture).subspan(300, 64)).empty());
}

TEST_CASE("an upload that is cut before any of its requests goes on with what is missing", "[sync][photos]")
{
    for (int cut = 0; cut < 7; ++cut) {
        Pair pair;
        pair.take();
        int requests = 0, chunks = 0;
        pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
            chunks += isChunk(request, "PUT") ? 1 : 0;
            // The line is cut after so many requests about photographs.
            requests += isBlob(request) ? 1 : 0;
            pair.world.courier.offline = requests == cut;
        };
        if (cut == 0)
            pair.world.courier.offline = true;
        pair.world.syncPhone(pair.phone);
        pair.world.courier.offline = false;
        requests = 100;
        pair.world.syncPhone(pair.phone);
        CAPTURE(cut);
        CHECK(chunks == 4);
        pair.world.syncDesk();
        CHECK(pair.world.desk.photo(pair.course, pair.phone.photos().front().photo) == pair.picture);
    }
}

TEST_CASE("an answer that is lost costs no chunk twice", "[sync][photos]")
{
    Pair pair;
    pair.take();
    int chunks = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (isChunk(request, "PUT") && ++chunks == 2)
            response.status = 503;  // it was stored; nobody heard of it
    };
    CHECK(pair.world.syncPhone(pair.phone).photoProblem->reason == Reason::unreachable);
    pair.world.syncPhone(pair.phone);
    CHECK(chunks == 4);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, pair.phone.photos().front().photo) == pair.picture);
}

TEST_CASE("a download that is cut before any chunk goes on with what is missing, over a restart too", "[sync][photos]")
{
    for (int cut = 0; cut < 4; ++cut) {
        Pair pair;
        const photos::PhotoId photo = pair.take();
        pair.world.syncPhone(pair.phone);
        int chunks = 0;
        pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
            if (isChunk(request, "GET") && chunks++ == cut)
                response = {503, {}, 2, {}};
        };
        CHECK(pair.world.syncDesk().photosReceived == 0);
        CAPTURE(cut);
        CHECK(pair.world.desk.photos(pair.course).front().held == static_cast<std::size_t>(cut));
        CHECK(pair.world.desk.photo(pair.course, photo).error().reason == Reason::notEnough);
        chunks = 100;
        CHECK(pair.world.syncDesk().photoChunksReceived == static_cast<std::size_t>(4 - cut));
        CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
    }
}

TEST_CASE("a chunk that comes changed, swapped, cut or longer is refused, and the honest one is taken later", "[sync][photos][errors]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    pair.world.syncPhone(pair.phone);
    const int how = GENERATE(0, 1, 2, 3, 4);
    bytes::Bytes before;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (!isChunk(request, "GET"))
            return;
        const bytes::Bytes honest = response.body;
        switch (how) {
        case 0: response.body[response.body.size() / 2] ^= 1; break;
        case 1:
            if (!before.empty())
                response.body = before;
            break;
        case 2: response.body.pop_back(); break;
        case 3: response.body.push_back(0); break;
        default: response.body.clear(); break;
        }
        before = honest;
    };
    const sync::Report report = pair.world.syncDesk();
    CAPTURE(how);
    CHECK(report.garbled == 1);
    CHECK(report.photoProblem->reason == Reason::forged);
    CHECK(report.photosReceived == 0);
    CHECK(pair.world.desk.photo(pair.course, photo).error().reason == Reason::notEnough);
    CHECK(pair.world.desk.vault().verify());
    pair.world.syncPhone(pair.phone);
    CHECK_FALSE(pair.received());

    pair.world.courier.tamper = {};
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
}

TEST_CASE("an entry that is made while a photograph goes up goes before the rest of it", "[sync][photos]")
{
    Pair pair;
    pair.take();
    std::vector<std::string> order;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        if (isChunk(request, "PUT"))
            order.emplace_back("chunk");
        else if (request.method == "PUT" && !isBlob(request))
            order.emplace_back("envelope");
        if (order == std::vector<std::string>{"envelope", "chunk"}) {
            auto entry = pair.world.entryOf(pair.phone, 7, 2);
            entry.present = {recovery::Sign::breathing};
            REQUIRE(pair.phone.record(entry));
        }
    };
    pair.world.syncPhone(pair.phone);
    CHECK(order == std::vector<std::string>{"envelope", "chunk", "envelope", "chunk", "chunk", "chunk"});
    pair.world.courier.tamper = {};
    CHECK(pair.world.syncDesk().operationsReceived >= 2);
}

TEST_CASE("a long transfer lets the envelopes have their turn in between", "[sync][photos]")
{
    Pair pair;
    pair.picture = test::sampleJpegOf(3'500'000);
    pair.take();
    int pulls = 0, chunks = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        chunks += isChunk(request, "PUT") ? 1 : 0;
        pulls += request.method == "GET" && !isBlob(request) ? 1 : 0;
    };
    pair.world.syncPhone(pair.phone);
    CHECK(chunks > 50);
    CHECK(pulls >= 2);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photos(pair.course).front().isHere());
}

TEST_CASE("a hub without room for photographs, or without the routes, still takes entries", "[sync][photos][errors]")
{
    Pair pair;
    pair.take();
    pair.take();
    REQUIRE(pair.phone.record(pair.world.entryOf(pair.phone, 3, 2)));
    const int status = GENERATE(507, 404);
    int asked = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (isBlob(request)) {
            response = {status, {}, 0, {}};
            ++asked;
        }
    };
    const sync::Report report = pair.world.syncPhone(pair.phone);
    CHECK_FALSE(report.problem);
    CHECK(report.photoProblem->reason == (status == 507 ? Reason::storageFull : Reason::refused));
    CHECK(asked == 1);
    pair.world.syncDesk();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.phone.history().front().state.place == EntryState::Place::withClinic);
    CHECK_FALSE(pair.received());
    CHECK(pair.phone.photos().front().here);
}

TEST_CASE("a photograph that the hub lost is offered again and arrives", "[sync][photos]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    pair.world.syncPhone(pair.phone);
    pair.world.service.tidy(pair.world.clock.now() + 24h * 91);
    REQUIRE(pair.blobs() == 0);
    pair.world.syncDesk();
    CHECK_FALSE(pair.world.desk.photos(pair.course).front().isHere());
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 0);
    pair.world.clock.advance(7h);
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 4);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
}

TEST_CASE("other bytes under a photograph's name are cleared away, and it is put up whole", "[sync][photos][errors]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    // Somebody with a desk's key was faster.
    const mailbox::Device desk{pair.world.desk.vault().device(), pair.world.desk.vault().signingKey().publicKey(), mailbox::Role::desk,
                               pair.world.store->clinicOf(pair.world.desk.vault().clinicRootKey()).value(), false};
    const auto& manifest = pair.phone.vault().state().courses.at(pair.course).photo(photo)->manifest;
    const mailbox::BlobId blob{photo.value};
    const auto mailbox = pair.phone.link()->mailbox;
    REQUIRE(pair.world.store->beginBlob(desk, mailbox, blob, {4, manifest.size}, pair.world.clock.now(), {}));
    REQUIRE(pair.world.store->putChunk(desk, mailbox, blob, 0, bytes::Bytes(65'577, 1), pair.world.clock.now()));
    // Missing are the others only; the desk sees the wrong one and says nothing of having it.
    pair.world.syncPhone(pair.phone);
    CHECK(pair.world.syncDesk().garbled == 1);
    CHECK_FALSE(pair.received());
    CHECK(pair.world.desk.photo(pair.course, photo).error().reason == Reason::notEnough);
    CHECK(pair.blobs() == 1);
    // The second time is no accident of the way.
    CHECK(pair.world.syncDesk().garbled == 1);
    CHECK(pair.blobs() == 0);
    pair.world.clock.advance(7h);
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 4);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
}

TEST_CASE("the hub's own chunk that is not ours is seen at once while it goes up", "[sync][photos][errors]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response& response) {
        if (isChunk(request, "PUT"))
            response.status = 409;
    };
    CHECK(pair.world.syncPhone(pair.phone).photoProblem->reason == Reason::alreadyExists);
    CHECK(pair.blobs() == 0);
    pair.world.courier.tamper = {};
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 4);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
}
