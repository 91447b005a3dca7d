#pragma once
/// \file
/// One course as a FHIR R4 (4.0.1) Bundle of type `collection`: docs/formats/fhir.md. Codes are
/// LOINC, UCUM and HL7's own where a published guide or the published value sets were read that have them, and else our own code
/// systems (`urn:ebbline:...`): no near miss is borrowed. Names appear only where the caller asks for them.
///
/// What we write we read back: treatment, entries and when they were corrected, answers to reminders, the care plan,
/// messages and when they were read, photographs by name, and the follow-up come back equal. Findings and the reminders
/// without an answer are computed and therefore written for people, never read.

#include "core/aftercare/care_plan.h"
#include "core/journal/state.h"
#include "core/photos/manifest.h"
#include "core/triage/queue.h"

#include <functional>
#include <span>

namespace ebbline::exchange {

/// What a picture is known by outside of Ebbline: docs/formats/fhir.md.
struct PictureFacts {
    std::string file;               ///< its name beside the bundle, A-Z a-z 0-9 . _ - and no dot in front; empty: it does not go along
    std::uint32_t size = 0;         ///< bytes, 1..photos::maximumJpeg
    bytes::Array<20> sha1{};        ///< of its bytes, as R4 asks for
    bool operator==(const PictureFacts&) const = default;
};

/// A photograph that was taken and not taken back. Its key never goes out.
struct CoursePicture {
    photos::PhotoId photo;
    photos::Pose pose = photos::Pose::front;
    recovery::EntryId entry;              ///< beside which it was taken; null: by itself
    clock::Moment at;
    std::optional<PictureFacts> picture;  ///< empty: its bytes were not at hand
    bool operator==(const CoursePicture&) const = default;
};

/// What the clinic asks of the patient in this course.
struct PlannedCare {
    std::string protocol;       ///< its name, at most 200 bytes
    aftercare::CarePlan plan;   ///< as this course has it (aftercare::planFor)
    clock::Moment visit;        ///< the follow-up, as aftercare::visitOf reads it
    bool operator==(const PlannedCare&) const = default;
};

/// An entry was written anew.
struct Correction {
    recovery::EntryId entry;
    clock::Moment at;
    bool operator==(const Correction&) const = default;
};

/// What of a course goes out.
struct CourseRecord {
    recovery::CourseId course;
    clock::Moment treated;
    recovery::Scores baseline;  ///< practitioner's scores right after treatment
    std::optional<recovery::Treatment> treatment;          ///< the clinic's record; a phone has none
    std::vector<recovery::Entry> entries;                  ///< as they stand now, corrections applied
    std::vector<Correction> corrections;                   ///< in the order of the entries, oldest first
    std::optional<PlannedCare> care;                       ///< empty: no phone was given the course
    std::vector<records::ReminderAnswered> answers;        ///< the newest to each reminder
    std::vector<records::MessageWritten> messages;
    std::vector<records::MessageRead> reads;               ///< of messages that are here, in their order
    std::vector<CoursePicture> pictures;                   ///< oldest first
    std::optional<records::FollowUpRecorded> followUp;
    bool operator==(const CourseRecord&) const = default;
};

/// \returns Reason::notFound if the course has neither treatment nor opening.
Result<CourseRecord> recordOf(const recovery::CourseId& id, const journal::CourseState& course);

/// The bytes of a photograph; an error: they are not at hand.
using OpenPicture = std::function<Result<bytes::Bytes>(const photos::PhotoId&)>;
/// Writes down size and SHA-1 of every picture that `open` opens, one at a time. `files`: which of them lie beside the
/// bundle, and under which name.
void describePictures(CourseRecord& record, const OpenPicture& open,
                      std::span<const std::pair<std::string, photos::PhotoId>> files = {});

/// One due moment of the care plan.
struct DueReminder {
    std::string key;            ///< aftercare::Reminder::key
    clock::Moment due;
    bool answerIsOlder = false; ///< what was answered to it was about a visit that was moved since
    bool operator==(const DueReminder&) const = default;
};

/// The reminders of a course as its plan gives them, on the clock of `zone`; those that ask for an entry are left out:
/// entries speak for themselves. Empty where no phone was given the course.
std::vector<DueReminder> remindersOf(const journal::CourseState& course, const aftercare::Zone& zone, const aftercare::QuietHours& quiet);

struct BundleOptions {
    std::string patientName;  ///< empty: a pseudonym only
    clock::Moment written;    ///< the bundle's time stamp
    std::string program;      ///< its name, a space and its version: who put the bundle together; empty: not said
    std::vector<DueReminder> reminders = {};  ///< remindersOf()
};

/// JSON with two spaces of indent, the same bytes for the same input.
std::string writeBundle(const CourseRecord& record, std::span<const triage::Finding> findings, const BundleOptions& options);

/// Largest bundle that is read, bytes.
inline constexpr std::size_t maximumBundleBytes = std::size_t{16} << 20;
/// Most resources of a bundle that is read: our own choice, some fifty times what a course of two months has.
inline constexpr std::size_t maximumBundleResources = 100'000;

/// Reads what writeBundle() wrote. Resources that are not ours are passed over.
/// \returns Reason::malformed with the place in the document for anything that is not JSON, not a
///          collection, or ours and not as we write it: a reference that leads nowhere or to another patient, and anything
///          that is there twice, are not; Reason::outOfRange for values out of their
///          bounds; Reason::tooLarge; Reason::unsupported for a questionnaire of a newer program.
Result<CourseRecord> readBundle(std::string_view json);

}  // namespace ebbline::exchange
