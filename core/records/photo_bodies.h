#pragma once
/// \file
/// What operations say of photographs: the patient's and the clinic's own. Formats: docs/formats/photos.md.

#include "core/clock/instant.h"
#include "core/photos/alignment.h"
#include "core/photos/manifest.h"
#include "core/recovery/treatment.h"

#include <optional>
#include <string>
#include <vector>

namespace ebbline::records {

/// From the phone: a sealed photograph. Its ciphertext goes its own way, after everything else.
struct PhotoTaken {
    recovery::CourseId course;
    photos::Manifest manifest;
    photos::Pose pose = photos::Pose::front;
    recovery::EntryId entry;  ///< beside which it was taken; null if it stands by itself
    clock::Moment at;         ///< when it was taken
    bool operator==(const PhotoTaken&) const = default;
};

/// From the phone: the patient took a photograph back. Whoever holds its ciphertext lets it go.
struct PhotoRemoved {
    recovery::CourseId course;
    photos::PhotoId photo;
    clock::Moment at;
    bool operator==(const PhotoRemoved&) const = default;
};

/// A desk holds these photographs, and has opened and checked each. To the phone; of the clinic's own, to the other desks.
struct PhotosReceived {
    recovery::CourseId course;
    std::vector<photos::PhotoId> photos;
    clock::Moment at;
    bool operator==(const PhotosReceived&) const = default;
};

/// Clinic only: where the eyes are in a photograph, so that two of them can be laid side by side.
struct EyesMarked {
    recovery::CourseId course;
    photos::PhotoId photo;
    photos::Eyes eyes;
    std::string by;
    clock::Moment at;
    bool operator==(const EyesMarked&) const = default;
};

/// Clinic only: a photograph that the clinic took right after the treatment. Its ciphertext goes from desk to desk.
struct ClinicPhotoTaken {
    recovery::CourseId course;
    photos::Manifest manifest;
    photos::Pose pose = photos::Pose::front;
    std::string by;
    clock::Moment at;  ///< when it was put in at a desk; when it was taken is not known closer than right after the treatment
    bool operator==(const ClinicPhotoTaken&) const = default;
};

/// Clinic only: somebody at a desk took one of those back. Whoever holds its ciphertext lets it go.
struct ClinicPhotoRemoved {
    recovery::CourseId course;
    photos::PhotoId photo;
    std::string by;
    clock::Moment at;
    bool operator==(const ClinicPhotoRemoved&) const = default;
};

}  // namespace ebbline::records
