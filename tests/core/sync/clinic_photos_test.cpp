// Photographs that the clinic took: from desk to desk, and to no phone.

#include "core/bytes/text.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/sync/photo_pair.h"
#include "tests/core/sync/two_desks.h"

using namespace ebbline;
using namespace std::chrono_literals;
using test::TwoDesks;

namespace {

const bytes::Bytes picture = test::sampleJpegOf(200'000);  // four chunks
constexpr std::size_t chunksOfPicture = 4;

photos::PhotoId putIn(TwoDesks& clinic)
{
    const auto photo = clinic.world.desk.addClinicPhoto(clinic.course, picture, photos::Pose::front);
    REQUIRE(photo);
    return *photo;
}

/// Notes to which paths chunks are put.
void watchChunks(TwoDesks& clinic, std::vector<std::string>& paths)
{
    clinic.world.courier.tamper = [&paths](const mailbox::Request& request, mailbox::Response&) {
        if (test::isChunk(request, "PUT"))
            paths.push_back(request.path);
    };
}

}  // namespace

TEST_CASE("a photograph of the clinic's goes to its other desk and to no phone", "[sync][clinic][photos]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    std::vector<std::string> put;
    watchChunks(clinic, put);
    const photos::PhotoId photo = putIn(clinic);
    clinic.everybody();

    CHECK(clinic.second.photo(clinic.course, photo) == picture);
    REQUIRE(clinic.second.photos(clinic.course).size() == 1);
    CHECK(clinic.second.photos(clinic.course).front().putInBy == "Dr. Ada Lund");
    CHECK(clinic.whole(clinic.second) == clinic.whole(clinic.world.desk));
    CHECK(put.size() == chunksOfPicture);
    CHECK(clinic.world.store->usage(clinic.world.clock.now())->blobs == 0);  // it has arrived, and takes no room there
    const std::string ofPhone = bytes::toHex(clinic.phone.link()->mailbox.view());
    for (const std::string& path : put)
        CHECK(path.find(ofPhone) == std::string::npos);
    CHECK(clinic.phone.photos().empty());
    for (const journal::Operation& operation : clinic.phone.vault().operations()) {
        CHECK(operation.kind != static_cast<std::uint16_t>(records::Kind::clinicPhotoTaken));
        CHECK(operation.kind != static_cast<std::uint16_t>(records::Kind::photosReceived));
    }

    // The other desk has said that it holds it: nothing is offered again.
    clinic.world.clock.advance(48h);
    clinic.everybody();
    CHECK(put.size() == chunksOfPicture);
    CHECK(clinic.world.desk.vault().verify());
    CHECK(clinic.second.vault().verify());
}

TEST_CASE("a desk that joins later gets the photographs of the clinic's that are there", "[sync][clinic][photos]")
{
    TwoDesks clinic;
    const photos::PhotoId photo = putIn(clinic);
    clinic.everybody();
    clinic.world.clock.advance(48h);
    clinic.enlist();
    clinic.everybody();
    CHECK(clinic.second.photo(clinic.course, photo) == picture);
}

TEST_CASE("what was cut on the way to another desk goes on where it was cut", "[sync][clinic][photos]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const photos::PhotoId photo = putIn(clinic);
    std::size_t chunks = 0;
    clinic.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        if (test::isChunk(request, "PUT") && ++chunks == 2)
            clinic.world.courier.offline = true;
    };
    clinic.world.syncDesk();
    CHECK(chunks == 2);
    clinic.world.courier.offline = false;
    clinic.everybody();
    CHECK(chunks == chunksOfPicture);
    CHECK(clinic.second.photo(clinic.course, photo) == picture);
}

TEST_CASE("a photograph of the clinic's that is taken back at one desk is gone at the other and at the hub", "[sync][clinic][photos]")
{
    TwoDesks clinic;
    clinic.enlist();
    clinic.everybody();
    const photos::PhotoId photo = putIn(clinic);
    clinic.everybody();
    REQUIRE(clinic.second.takeBackPhoto(clinic.course, photo));
    clinic.everybody();
    for (desk::Desk* each : {&clinic.world.desk, &clinic.second}) {
        CHECK(each->photos(clinic.course).empty());
        CHECK(each->photo(clinic.course, photo).error().reason == Reason::notFound);
        CHECK(each->vault().heldPhotoChunks()->empty());
        CHECK(each->vault().verify());
    }
    CHECK(clinic.world.store->usage(clinic.world.clock.now())->blobs == 0);
}

TEST_CASE("a phone cannot take back what the clinic took", "[sync][clinic][photos][errors]")
{
    TwoDesks clinic;
    const photos::PhotoId photo = putIn(clinic);
    REQUIRE(clinic.phone.vault().append({records::PhotoRemoved{clinic.course, photo, clinic.world.now()}}, clinic.world.now(),
                                        clinic.phone.link()->mailbox));
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    CHECK(clinic.world.desk.photo(clinic.course, photo) == picture);
    CHECK(clinic.world.desk.vault().verify());
}
