// The sealed bytes of photographs in the vault: kept with their operation, resumed, let go, and proved.

#include "core/photos/sealed_photo.h"
#include "tests/core/photos/sample_jpeg.h"
#include "tests/core/vault/filled_vault.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::vault;

namespace {

const bytes::Bytes picture = test::sampleJpegOf(150'000);

struct Sealed {
    photos::SealedPhoto photo = photos::seal(picture).value();
    records::PhotoTaken taken{test::sampleCourse, photo.manifest, photos::Pose::front, {}, test::secondEvening};
};

vault::Vault opened(const test::FilledVault& filled)
{
    auto vault = Vault::open(filled.path(), filled.dataKey(), filled.clock);
    REQUIRE(vault);
    return std::move(*vault);
}

bool hasFault(const Inspection& found)
{
    return std::ranges::find(found.faults, Fault::Kind::photo, &Fault::kind) != found.faults.end();
}

}  // namespace

TEST_CASE("a photograph is kept with its operation, as it was sealed", "[vault][photos]")
{
    const test::FilledVault filled;
    const Sealed sealed;
    {
        Vault vault = opened(filled);
        const std::size_t before = vault.operations().size();
        REQUIRE(vault.appendPhoto(sealed.taken, sealed.photo.chunks, test::secondEvening, test::someMailbox));
        CHECK(vault.operations().size() == before + 1);
    }
    Vault again = opened(filled);
    CHECK(again.photo(sealed.photo.manifest) == picture);
    for (std::uint32_t number = 0; number < sealed.photo.chunks.size(); ++number)
        CHECK(again.photoChunk(sealed.photo.manifest.photo, number) == sealed.photo.chunks[number]);
    CHECK(again.missingPhotoChunks(sealed.photo.manifest)->empty());
    CHECK(again.verify());
    CHECK(filled.inspected().photos == 1);
}

TEST_CASE("a photograph whose chunks are not its own is not kept at all", "[vault][photos][errors]")
{
    const test::FilledVault filled;
    Vault vault = opened(filled);
    const Sealed sealed;
    const std::size_t before = vault.operations().size();
    auto chunks = sealed.photo.chunks;
    chunks.pop_back();
    CHECK(vault.appendPhoto(sealed.taken, chunks, test::secondEvening, {}).error().reason == Reason::notEnough);
    chunks = sealed.photo.chunks;
    std::swap(chunks[0], chunks[1]);
    CHECK(vault.appendPhoto(sealed.taken, chunks, test::secondEvening, {}).error().reason == Reason::forged);
    CHECK(vault.operations().size() == before);
    CHECK(vault.photoChunk(sealed.photo.manifest.photo, 0).error().reason == Reason::notFound);
}

TEST_CASE("chunks that come one by one are counted, proved and resumed", "[vault][photos]")
{
    const test::FilledVault filled;
    const Sealed sealed;
    const photos::Manifest& manifest = sealed.photo.manifest;
    REQUIRE(sealed.photo.chunks.size() == 3);
    {
        Vault vault = opened(filled);
        CHECK(vault.putPhotoChunk(sealed.taken, 0, sealed.photo.chunks[0]).error().reason == Reason::notFound);
        REQUIRE(vault.append({sealed.taken}, test::secondEvening));
        CHECK(vault.missingPhotoChunks(manifest) == std::vector<std::uint32_t>{0, 1, 2});
        REQUIRE(vault.putPhotoChunk(sealed.taken, 1, sealed.photo.chunks[1]));
        REQUIRE(vault.putPhotoChunk(sealed.taken, 1, sealed.photo.chunks[1]));
        CHECK(vault.putPhotoChunk(sealed.taken, 0, sealed.photo.chunks[1]).error().reason == Reason::forged);
        CHECK(vault.putPhotoChunk(sealed.taken, 3, sealed.photo.chunks[1]).error().reason == Reason::outOfRange);
        records::PhotoTaken other = sealed.taken;
        other.manifest.key[0] ^= 1;
        CHECK(vault.putPhotoChunk(other, 0, sealed.photo.chunks[0]).error().reason == Reason::notFound);
    }
    Vault again = opened(filled);
    CHECK(again.missingPhotoChunks(manifest) == std::vector<std::uint32_t>{0, 2});
    CHECK(again.photo(manifest).error().reason == Reason::notEnough);
    REQUIRE(again.putPhotoChunk(sealed.taken, 0, sealed.photo.chunks[0]));
    REQUIRE(again.putPhotoChunk(sealed.taken, 2, sealed.photo.chunks[2]));
    CHECK(again.photo(manifest) == picture);
}

TEST_CASE("a removed photograph leaves no chunk, and none is taken for it afterwards", "[vault][photos]")
{
    const test::FilledVault filled;
    Vault vault = opened(filled);
    const Sealed sealed, other;
    REQUIRE(vault.appendPhoto(sealed.taken, sealed.photo.chunks, test::secondEvening, {}));
    REQUIRE(vault.appendPhoto(other.taken, other.photo.chunks, test::secondEvening, {}));
    const photos::PhotoId& photo = sealed.photo.manifest.photo;

    SECTION("by this device")
    {
        REQUIRE(vault.append({records::PhotoRemoved{test::sampleCourse, photo, test::secondEvening}}, test::secondEvening));
    }
    SECTION("by a peer")
    {
        journal::Operation removal;
        removal.id = {test::idOf<envelope::DeviceTag>(77), 1};
        removal.entered = test::secondEvening;
        removal.kind = static_cast<std::uint16_t>(records::Kind::photoRemoved);
        removal.audience = journal::Audience::patientAndClinic;
        removal.course = test::sampleCourse;
        removal.body = records::encode(records::PhotoRemoved{test::sampleCourse, photo, test::secondEvening});
        REQUIRE(vault.accept(test::someMailbox, removal.id.device, {1, {}}, {removal}));
    }
    CHECK(vault.photo(sealed.photo.manifest).error().reason == Reason::notEnough);
    CHECK(vault.putPhotoChunk(sealed.taken, 0, sealed.photo.chunks[0]).error().reason == Reason::notFound);
    CHECK(vault.photo(other.photo.manifest) == picture);
    CHECK(vault.verify());
}

TEST_CASE("a removal in the name of another course takes nothing away", "[vault][photos][errors]")
{
    const test::FilledVault filled;
    Vault vault = opened(filled);
    const Sealed sealed;
    REQUIRE(vault.appendPhoto(sealed.taken, sealed.photo.chunks, test::secondEvening, {}));
    const auto stranger = test::idOf<recovery::CourseTag>(99);
    REQUIRE(vault.append({records::PhotoRemoved{stranger, sealed.photo.manifest.photo, test::secondEvening}}, test::secondEvening));
    CHECK(vault.photo(sealed.photo.manifest) == picture);
    CHECK(vault.state().courses.at(test::sampleCourse).photo(sealed.photo.manifest.photo));
}

TEST_CASE("what is tried with a hub is remembered over a restart", "[vault][photos]")
{
    const test::FilledVault filled;
    const auto photo = test::idOf<photos::PhotoTag>(5);
    {
        Vault vault = opened(filled);
        CHECK_FALSE(vault.photoStanding(photo)->has_value());
        REQUIRE(vault.notePhoto(photo, {false, true, clock::Instant{std::chrono::hours(3)}}));
        REQUIRE(vault.notePhoto(photo, {true, false, clock::Instant{std::chrono::hours(4)}}));
    }
    Vault again = opened(filled);
    const auto standing = again.photoStanding(photo);
    REQUIRE((standing && standing->has_value()));
    CHECK((*standing)->atHub);
    CHECK_FALSE((*standing)->refused);
    CHECK((*standing)->triedAt == clock::Instant{std::chrono::hours(4)});
    REQUIRE(again.forgetPhoto(photo));
    CHECK_FALSE(again.photoStanding(photo)->has_value());
}

TEST_CASE("a damaged chunk, a chunk of nothing and a hole in the only copy are named", "[vault][photos][errors]")
{
    const test::FilledVault filled;
    const Sealed sealed;
    {
        Vault vault = opened(filled);
        REQUIRE(vault.appendPhoto(sealed.taken, sealed.photo.chunks, test::secondEvening, {}));
        CHECK(filled.inspected().sound());
    }
    SECTION("another byte") { REQUIRE(filled.database().run("UPDATE photo_chunk SET body = x'00' WHERE number = 1")); }
    SECTION("in another's place")
    {
        REQUIRE(filled.database().run("UPDATE photo_chunk SET number = 9 WHERE number = 1"));
    }
    SECTION("of no photograph") { REQUIRE(filled.database().run("UPDATE photo_chunk SET photo = x'00'")); }
    SECTION("missing") { REQUIRE(filled.database().run("DELETE FROM photo_chunk WHERE number = 2")); }
    CHECK(hasFault(filled.inspected()));
}

TEST_CASE("what the clinic holds may have a hole here", "[vault][photos]")
{
    const test::FilledVault filled;
    const Sealed sealed;
    {
        Vault vault = opened(filled);
        REQUIRE(vault.appendPhoto(sealed.taken, sealed.photo.chunks, test::secondEvening, {}));
        REQUIRE(vault.append({records::PhotosReceived{test::sampleCourse, {sealed.photo.manifest.photo}, test::secondEvening}},
                             test::secondEvening));
        REQUIRE(vault.dropPhotoChunks(sealed.photo.manifest.photo));
    }
    CHECK_FALSE(hasFault(filled.inspected()));
    CHECK(filled.inspected().photos == 0);
}
