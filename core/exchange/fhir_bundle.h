#pragma once
/// \file
/// One course as a FHIR R4 (4.0.1) Bundle of type `collection`: docs/formats/fhir.md. Codes are
/// LOINC and UCUM where a published guide was read that uses them, and else our own code systems
/// (`urn:ebbline:...`): no near miss is borrowed. Names appear only where the caller asks for them.
///
/// What we write we read back: treatment, entries, answers to reminders, messages and the
/// follow-up come back equal. Findings are computed and therefore written for people, never read.

#include "core/journal/state.h"
#include "core/triage/queue.h"

#include <span>

namespace ebbline::exchange {

/// What of a course goes out.
struct CourseRecord {
    recovery::CourseId course;
    clock::Moment treated;
    recovery::Scores baseline;  ///< practitioner's scores right after treatment
    std::optional<recovery::Treatment> treatment;          ///< the clinic's record; a phone has none
    std::vector<recovery::Entry> entries;                  ///< as they stand now, corrections applied
    std::vector<records::ReminderAnswered> answers;        ///< the newest to each reminder
    std::vector<records::MessageWritten> messages;
    std::optional<records::FollowUpRecorded> followUp;
    bool operator==(const CourseRecord&) const = default;
};

/// \returns Reason::notFound if the course has neither treatment nor opening.
Result<CourseRecord> recordOf(const recovery::CourseId& id, const journal::CourseState& course);

struct BundleOptions {
    std::string patientName;  ///< empty: a pseudonym only
    clock::Moment written;    ///< the bundle's time stamp
    std::string program;      ///< its name, a space and its version: who put the bundle together; empty: not said
};

/// JSON with two spaces of indent, the same bytes for the same input.
std::string writeBundle(const CourseRecord& record, std::span<const triage::Finding> findings, const BundleOptions& options);

/// Largest bundle that is read, bytes.
inline constexpr std::size_t maximumBundleBytes = std::size_t{16} << 20;

/// Reads what writeBundle() wrote. Resources that are not ours are passed over.
/// \returns Reason::malformed with the place in the document for anything that is not JSON, not a
///          collection, or ours and not as we write it; Reason::outOfRange for values out of their
///          bounds; Reason::tooLarge.
Result<CourseRecord> readBundle(std::string_view json);

}  // namespace ebbline::exchange
