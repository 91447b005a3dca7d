#pragma once
/// \file
/// As layouts.h, for the bodies that speak of photographs.

#include "core/records/layouts.h"

namespace ebbline::records {

/// A manifest goes in as the bytes of its own format, docs/formats/photos.md.
template <typename Archive>
void field(Archive& archive, photos::Manifest& manifest)
{
    bytes::Bytes encoded;
    if constexpr (saving<Archive>)
        encoded = photos::encode(manifest);
    archive(encoded);
    if constexpr (!saving<Archive>) {
        auto decoded = photos::decodeManifest(encoded);
        if (!decoded)
            throw cereal::Exception("a manifest that cannot be read");
        manifest = std::move(*decoded);
    }
}

template <typename Archive>
void serialize(Archive& archive, PhotoTaken& b)
{
    archive(b.course);
    field(archive, b.manifest);
    archive(b.pose, b.entry);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, PhotoRemoved& b)
{
    archive(b.course, b.photo);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, ClinicPhotoTaken& b)
{
    archive(b.course);
    field(archive, b.manifest);
    archive(b.pose, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, ClinicPhotoRemoved& b)
{
    archive(b.course, b.photo, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, PhotosReceived& b)
{
    archive(b.course, b.photos);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, EyesMarked& b)
{
    archive(b.course, b.photo);
    for (photos::Spot* spot : {&b.eyes.left, &b.eyes.right})
        archive(spot->across, spot->down);
    archive(b.by);
    field(archive, b.at);
}

}  // namespace ebbline::records
