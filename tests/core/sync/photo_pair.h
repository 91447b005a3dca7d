#pragma once
/// \file
/// A phone and a desk with photographs of some chunks between them.

#include "tests/core/desk/clinic_world.h"
#include "tests/core/photos/sample_jpeg.h"

namespace ebbline::test {

inline bool isBlob(const mailbox::Request& request) { return mailbox::Service::isAboutBlobs(request); }
inline bool isChunk(const mailbox::Request& request, const std::string& method)
{
    return isBlob(request) && request.method == method && std::ranges::count(request.path, '/') == 6;
}

struct PhotoPair {
    ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    bytes::Bytes picture = sampleJpegOf(200'000);  ///< four chunks

    PhotoPair() { world.syncDesk(); }
    photos::PhotoId take(photos::Pose pose = photos::Pose::front)
    {
        const auto taken = phone.addPhoto(picture, pose, {}, world.now());
        REQUIRE(taken);
        return *taken;
    }
    bool received() { return phone.photos().front().received.has_value(); }
    std::int64_t blobs() { return world.store->usage(world.clock.now())->blobs; }
};

}  // namespace ebbline::test
