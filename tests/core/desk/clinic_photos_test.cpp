// Photographs that the clinic took right after the treatment, at one desk.

#include "core/desk/traces.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/core/photos/sample_jpeg.h"

using namespace ebbline;

TEST_CASE("a photograph of the clinic's stands first, at the treatment, whenever it was put in", "[desk][photos]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    REQUIRE(phone.addPhoto(test::sampleJpegOf(2000), photos::Pose::front, {}, world.now()));
    world.syncPhone(phone);
    world.syncDesk();
    world.clock.advance(std::chrono::hours(50));
    const bytes::Bytes picture = test::sampleJpegOf(90'000, 2);

    const auto photo = world.desk.addClinicPhoto(course, picture, photos::Pose::leftOblique);

    REQUIRE(photo);
    const auto all = world.desk.photos(course);
    REQUIRE(all.size() == 2);
    CHECK(all[0].photo == *photo);
    CHECK(all[0].pose == photos::Pose::leftOblique);
    CHECK(all[0].putInBy == "Dr. Ada Lund");
    CHECK(all[0].day == 0);
    CHECK(all[0].at == world.desk.vault().state().courses.at(course).treatment->treatment.at);
    CHECK(all[0].isHere());
    CHECK_FALSE(all[1].putInBy);
    CHECK(world.desk.photo(course, *photo) == picture);
    CHECK(world.desk.markEyes(course, *photo, {{6400, 4100}, {3600, 4120}}));
    CHECK(world.desk.vault().verify());
}

TEST_CASE("who takes a photograph of the clinic's back is on record, and its picture is gone", "[desk][photos]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    const auto photo = world.desk.addClinicPhoto(course, test::sampleJpegOf(90'000), photos::Pose::front);
    REQUIRE(photo);
    world.desk.setPerson("Dr. Jonas Feld");
    REQUIRE(world.desk.takeBackPhoto(course, *photo));
    CHECK(world.desk.photos(course).empty());
    CHECK(world.desk.photo(course, *photo).error().reason == Reason::notFound);
    CHECK(world.desk.vault().heldPhotoChunks()->empty());
    CHECK(world.desk.takeBackPhoto(course, *photo).error().reason == Reason::notFound);
    CHECK(world.desk.vault().verify());
    const auto found = desk::traces(world.desk.vault().state(), world.desk.vault().operations());
    REQUIRE(found.size() >= 2);
    CHECK(found[0].kind == records::Kind::clinicPhotoRemoved);
    CHECK(found[0].by == "Dr. Jonas Feld");
    CHECK(found[1].kind == records::Kind::clinicPhotoTaken);
    CHECK(found[1].by == "Dr. Ada Lund");
}

TEST_CASE("a desk takes back its own photographs alone, and puts in nothing that is no picture", "[desk][photos][errors]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto hers = phone.addPhoto(test::sampleJpegOf(2000), photos::Pose::front, {}, world.now());
    REQUIRE(hers);
    world.syncPhone(phone);
    world.syncDesk();
    CHECK(world.desk.takeBackPhoto(course, *hers).error().reason == Reason::notFound);
    CHECK(world.desk.photo(course, *hers));

    const std::size_t before = world.desk.vault().operations().size();
    const bytes::Bytes picture = test::sampleJpegOf(1000);
    CHECK_FALSE(world.desk.addClinicPhoto(course, test::sampleJpeg({.before = test::segment(0xe1, bytes::viewOf("Exif, at home"))}), photos::Pose::front));
    CHECK(world.desk.addClinicPhoto(test::idOf<recovery::CourseTag>(99), picture, photos::Pose::front).error().reason == Reason::notFound);
    world.desk.setPerson({});
    CHECK(world.desk.addClinicPhoto(course, picture, photos::Pose::front).error().reason == Reason::invalidState);
    CHECK(world.desk.vault().operations().size() == before);
}

TEST_CASE("a course has so many photographs of the clinic's and no more", "[desk][photos][errors]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    const bytes::Bytes picture = test::sampleJpegOf(1);
    for (std::size_t i = 0; i < desk::Desk::mostClinicPhotos; ++i)
        REQUIRE(world.desk.addClinicPhoto(course, picture, photos::Pose::front));
    CHECK(world.desk.addClinicPhoto(course, picture, photos::Pose::front).error().reason == Reason::storageFull);
    REQUIRE(world.desk.takeBackPhoto(course, world.desk.photos(course).front().photo));
    CHECK(world.desk.addClinicPhoto(course, picture, photos::Pose::front));
}
