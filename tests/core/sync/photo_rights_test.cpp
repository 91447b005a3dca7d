// Who may take a photograph back, what is believed of one, and what of them is one's own.

#include "core/bytes/text.h"
#include "tests/core/photos/sealed_as.h"
#include "tests/core/sync/photo_pair.h"

#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using Pair = test::PhotoPair;
using test::isChunk;

TEST_CASE("a photograph that is taken back is gone here at once, and elsewhere with the next sync", "[sync][photos]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    const int when = GENERATE(0, 1, 2);
    CAPTURE(when);
    if (when > 0)
        pair.world.syncPhone(pair.phone);
    if (when > 1)
        pair.world.syncDesk();
    REQUIRE(pair.phone.removePhoto(photo));
    CHECK(pair.phone.photos().empty());
    CHECK(pair.phone.photo(photo).error().reason == Reason::notFound);
    CHECK(pair.phone.removePhoto(photo).error().reason == Reason::notFound);
    CHECK(pair.phone.vault().heldPhotoChunks()->empty());
    pair.world.syncPhone(pair.phone);
    CHECK(pair.blobs() == 0);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photos(pair.course).empty());
    CHECK(pair.world.desk.photo(pair.course, photo).error().reason == Reason::notFound);
    CHECK(pair.world.desk.vault().heldPhotoChunks()->empty());
    pair.world.syncPhone(pair.phone);
    CHECK(pair.world.syncPhone(pair.phone).photoChunksSent == 0);
    CHECK(pair.phone.vault().verify());
    CHECK(pair.world.desk.vault().verify());
}

TEST_CASE("taken back while it goes up, it does not go on", "[sync][photos]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    int chunks = 0;
    pair.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        if (isChunk(request, "PUT") && ++chunks == 2)
            REQUIRE(pair.phone.removePhoto(photo));
    };
    pair.world.syncPhone(pair.phone);
    CHECK(chunks == 2);
    CHECK(pair.blobs() == 0);
}

TEST_CASE("a phone that seals a picture with metadata, or no picture, is not believed", "[sync][photos][errors]")
{
    Pair pair;
    const bytes::Bytes bad = GENERATE(test::sampleJpeg({.before = test::segment(0xe1, bytes::viewOf("Exif, at home"))}),
                                      bytes::Bytes(500, 7));
    const photos::SealedPhoto sealed = test::sealedAs(crypto::pad(bad, crypto::padmeSize(bad.size() + 1)));
    REQUIRE(pair.phone.vault().appendPhoto({pair.course, sealed.manifest, photos::Pose::front, {}, pair.world.now()}, sealed.chunks,
                                           pair.world.now(), pair.phone.link()->mailbox));
    pair.world.syncPhone(pair.phone);
    CHECK(pair.world.syncDesk().photosRefused == 1);
    REQUIRE(pair.world.desk.photos(pair.course).size() == 1);
    CHECK(pair.world.desk.photos(pair.course).front().refused);
    CHECK(pair.world.desk.vault().heldPhotoChunks()->empty());
    pair.world.syncPhone(pair.phone);
    CHECK_FALSE(pair.received());
    // It is not fetched over and over.
    CHECK(pair.world.syncDesk().photoChunksReceived == 0);
    CHECK(pair.world.desk.vault().verify());
}

TEST_CASE("one patient's phone can neither name nor take back a photograph of another's course", "[sync][photos][errors]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    pair.world.syncPhone(pair.phone);
    pair.world.syncDesk();
    const auto otherCourse = pair.world.treat("Mara Okafor");
    patient::Diary& other = pair.world.join(otherCourse);
    // In her own course, with the other's name; and in the other's course, which her phone may not write to.
    REQUIRE(other.vault().append({records::PhotoRemoved{otherCourse, photo, pair.world.now()}}, pair.world.now(), other.link()->mailbox));
    pair.world.syncPhone(other);
    pair.world.syncDesk();
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
    REQUIRE(other.vault().append({records::PhotoRemoved{pair.course, photo, pair.world.now()}}, pair.world.now(), other.link()->mailbox));
    pair.world.syncPhone(other);
    CHECK(pair.world.syncDesk().quarantined == 1);
    CHECK(pair.world.desk.photo(pair.course, photo) == pair.picture);
}

TEST_CASE("where the eyes are stays within the clinic, and the newest counts", "[sync][photos]")
{
    Pair pair;
    const photos::PhotoId photo = pair.take();
    const photos::Eyes first{{6400, 4100}, {3600, 4100}}, second{{6500, 4200}, {3500, 4150}};
    CHECK(pair.world.desk.markEyes(pair.course, photo, first).error().reason == Reason::notFound);
    pair.world.syncPhone(pair.phone);
    pair.world.syncDesk();
    CHECK_FALSE(pair.world.desk.photos(pair.course).front().eyes);
    REQUIRE(pair.world.desk.markEyes(pair.course, photo, first));
    REQUIRE(pair.world.desk.markEyes(pair.course, photo, second));
    CHECK(pair.world.desk.photos(pair.course).front().eyes == second);
    CHECK(pair.world.desk.markEyes(pair.course, photo, {{100, 100}, {100, 100}}).error().reason == Reason::outOfRange);
    pair.world.syncDesk();
    pair.world.syncPhone(pair.phone);
    CHECK(pair.phone.vault().state().courses.at(pair.course).eyes.empty());
}

TEST_CASE("more photographs than a course may have are refused before anything is kept", "[photos][errors]")
{
    Pair pair;
    pair.picture = test::sampleJpegOf(1);
    for (std::size_t i = 0; i < patient::Diary::mostPhotos; ++i)
        pair.take();
    const auto refused = pair.phone.addPhoto(pair.picture, photos::Pose::front, {}, pair.world.now());
    CHECK(refused.error().reason == Reason::storageFull);
    REQUIRE(pair.phone.removePhoto(pair.phone.photos().front().photo));
    CHECK(pair.phone.addPhoto(pair.picture, photos::Pose::front, {}, pair.world.now()));
}

TEST_CASE("one's own data name every photograph and its file", "[photos]")
{
    Pair pair;
    const auto entry = pair.phone.record(pair.world.entryOf(pair.phone, 3, 2));
    REQUIRE(entry);
    REQUIRE(pair.phone.addPhoto(pair.picture, photos::Pose::rightOblique, entry->entry, pair.world.now()));
    const auto files = pair.phone.photoFiles();
    REQUIRE(files.size() == 1);
    CHECK(files.front().first == "photo-001-day-0-right.jpg");
    CHECK(pair.phone.photo(files.front().second) == pair.picture);
    const std::string table = pair.phone.tables().at("photos.csv");
    CHECK(table.starts_with("file,taken,view,entry,state\r\nphoto-001-day-0-right.jpg,2027-03-01T"));
    CHECK(table.ends_with(",right," + bytes::toHex(entry->entry.view()).substr(0, 12) + ",saved-here\r\n"));
}
