// Photographs that the clinic took: who has a say about them, however the operations arrive.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <algorithm>
#include <set>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

constexpr std::uint8_t first = 1, second = 2, phone = 3;

Operation written(std::uint8_t device, std::uint64_t time, const Body& body)
{
    Operation operation;
    operation.id = {test::idOf<envelope::DeviceTag>(device), time};
    operation.stamp = clock::HybridTime{time << 16};
    operation.entered = test::momentAt("2027-03-02T20:00:00+01:00");
    operation.kind = static_cast<std::uint16_t>(kindOf(body));
    operation.course = test::sampleCourse;
    operation.body = encode(body);
    return operation;
}

const auto photo = test::idOf<photos::PhotoTag>(11);
const auto at = test::momentAt("2027-03-02T20:00:00+01:00");
const Body taken = ClinicPhotoTaken{test::sampleCourse, test::sampleManifest(11), photos::Pose::front, "Dr. Ada Lund", at};
const Body takenBack = ClinicPhotoRemoved{test::sampleCourse, photo, "Dr. Jonas Feld", at};
const Body takenBackByPhone = PhotoRemoved{test::sampleCourse, photo, at};

const CourseState& courseOf(const State& state) { return state.courses.at(test::sampleCourse); }

}  // namespace

TEST_CASE("a photograph of the clinic's is one of the course, with who put it in", "[journal][photos]")
{
    const State state = fold(std::vector{written(first, 10, taken)});
    REQUIRE(courseOf(state).photo(photo));
    CHECK(courseOf(state).photo(photo)->pose == photos::Pose::front);
    CHECK(courseOf(state).photo(photo)->entry.isNull());
    CHECK(courseOf(state).clinicPhotos.at(photo) == "Dr. Ada Lund");
}

TEST_CASE("a desk takes back what the clinic took, and a phone does not, before or after", "[journal][photos]")
{
    const std::uint64_t when = GENERATE(std::uint64_t{5}, std::uint64_t{15});
    const State kept = fold(std::vector{written(first, 10, taken), written(phone, when, takenBackByPhone)});
    CHECK(courseOf(kept).photo(photo));
    CHECK(courseOf(kept).photosRemoved.empty());

    std::vector operations{written(first, 10, taken), written(phone, when, takenBackByPhone), written(second, 20, takenBack)};
    std::ranges::sort(operations, {}, [](const Operation& each) { return each.id.device; });
    const State state = fold(operations);
    std::ranges::reverse(operations);
    CHECK(dump(fold(operations)) == dump(state));
    CHECK_FALSE(courseOf(state).photo(photo));
    CHECK(courseOf(state).clinicPhotosRemoved.at(photo) == "Dr. Jonas Feld");
}

TEST_CASE("a desk does not take back what the patient photographed", "[journal][photos]")
{
    const Body hers = PhotoTaken{test::sampleCourse, test::sampleManifest(11), photos::Pose::front, {}, at};
    const State state = fold(std::vector{written(phone, 10, hers), written(first, 20, takenBack), written(second, 30, taken)});
    CHECK(courseOf(state).photo(photo));
    CHECK(courseOf(state).clinicPhotos.empty());
    CHECK(courseOf(state).clinicPhotosRemoved.empty());
}

TEST_CASE("every desk that says so holds a photograph", "[journal][photos]")
{
    const Body held = PhotosReceived{test::sampleCourse, {photo}, at};
    const State state = fold(std::vector{written(first, 10, taken), written(second, 20, held), written(phone, 30, held)});
    CHECK(courseOf(state).photoHolders.at(photo)
          == std::set{test::idOf<envelope::DeviceTag>(second), test::idOf<envelope::DeviceTag>(phone)});
}
