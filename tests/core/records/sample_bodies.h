#pragma once
/// \file
/// One sound body of every kind, for tests.

#include "core/clock/iso8601.h"
#include "core/records/bodies.h"

#include <vector>

namespace ebbline::test {

template <typename Tag>
bytes::Id<Tag> idOf(std::uint8_t number)
{
    bytes::Id<Tag> id;
    id.value.fill(number);
    return id;
}

inline const auto sampleCourse = idOf<recovery::CourseTag>(7);

inline clock::Moment momentAt(const char* text)
{
    auto moment = *clock::parseIso8601(text);
    moment.zone = "Europe/Berlin";
    return moment;
}

inline recovery::Entry sampleEntry(std::uint8_t number = 9)
{
    using namespace recovery;
    Entry entry;
    entry.id = idOf<EntryTag>(number);
    entry.course = sampleCourse;
    entry.at = momentAt("2027-03-02T20:00:00+01:00");
    entry.recordedAt = momentAt("2027-03-02T20:01:00+01:00");
    entry.scores = {{{Symptom::swelling, Side::left}, *Score::of(4)}, {{Symptom::pain, Side::right}, *Score::of(0)}};
    entry.present = {Sign::warmer};
    entry.absent = {Sign::breathing, Sign::thickFluid};
    entry.temperature = *Temperature::celsius(37.4);
    entry.note = "Zieht beim Kauen. يؤلم قليلاً";
    return entry;
}

inline recovery::Treatment sampleTreatment()
{
    using namespace recovery;
    Treatment treatment;
    treatment.course = sampleCourse;
    treatment.patient = idOf<PatientTag>(3);
    treatment.at = momentAt("2027-03-01T10:00:00+01:00");
    Placement placement;
    placement.entry = {296, 170};
    placement.end = {256, 256};
    placement.lot = "TH-4417";
    placement.expiry = "2029-06-30";
    placement.anaestheticMl = 0.4;
    treatment.placements = {placement, mirrored(placement)};
    treatment.weightKg = 62;
    treatment.baseline = {{{Symptom::swelling, Side::left}, *Score::of(2)}};
    return treatment;
}

/// A version behind which stand as many courses as asked, and whose check holds from 30 on.
inline records::BandLearned sampleBandLearned(std::uint8_t courses = 30)
{
    records::BandLearned body;
    bands::Learned& learned = body.learned;
    const std::string version = "clinic-2027-05-01-" + std::to_string(courses);
    learned.band = *bands::Band::create({version, courses, false, "2027-05-01", std::string(64, 'a')},
                                        bands::seedBand().table());
    learned.seed = "seed-1";
    for (std::uint8_t number = 1; number <= courses; ++number)
        learned.courses.push_back(idOf<recovery::CourseTag>(number));
    learned.refused = {{bands::Refusal::noConsent, 3}, {bands::Refusal::complicated, 2}};
    learned.coverage.courses = courses;
    for (std::size_t row = 0; row < learned.coverage.symptoms.size(); ++row)
        learned.coverage.symptoms[row].symptom = recovery::allSymptoms[row];
    learned.coverage.symptoms[0] = {recovery::Symptom::pain, courses, 600, {0.07, 0.08, 0.05, 0.12},
                                    {0.02, 0.02, 0.01, 0.04}, bands::Fit::holds};
    learned.coverage.overall90 = {0.07, 0.08, 0.06, 0.11};
    learned.by = "Dr. Ada Lund";
    learned.at = momentAt("2027-05-01T18:00:00+02:00");
    return body;
}

/// Of a photograph of one small chunk, which nobody holds.
inline photos::Manifest sampleManifest(std::uint8_t number = 5)
{
    photos::Manifest manifest;
    manifest.photo = idOf<photos::PhotoTag>(number);
    manifest.key.fill(8);
    manifest.size = 1000;
    manifest.hash.fill(9);
    manifest.chunkHashes.resize(1);
    return manifest;
}

inline bytes::Array<32> idOfKey()
{
    bytes::Array<32> key{};
    key.fill(7);
    return key;
}

/// Another course under the default protocol.
inline records::CourseOpened openedCourse(std::uint8_t number)
{
    const auto at = momentAt("2027-03-02T20:00:00+01:00");
    return {idOf<recovery::CourseTag>(number), at, "Dr. Ada Lund", {"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"},
            at, {}, triggers::defaultProtocol(), bytes::Bytes(64, 5)};
}

inline std::vector<records::Body> sampleBodies()
{
    using namespace records;
    const auto at = momentAt("2027-03-02T20:00:00+01:00");
    const Contacts contacts{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"};
    const auto protocol = triggers::defaultProtocol();
    return {
        PatientRegistered{idOf<recovery::PatientTag>(3), "Ines Varga", "+00 555 0101", "en"},
        TreatmentRecorded{sampleTreatment()},
        CourseOpened{sampleCourse, at, "Dr. Ada Lund", contacts, at, sampleTreatment().baseline, protocol, bytes::Bytes(64, 5)},
        EntryRecorded{sampleEntry()},
        ReminderAnswered{sampleCourse, "dressings-off/0/1140", ReminderAnswer::later, at, at.at + std::chrono::hours(1)},
        WarningShown{sampleCourse, idOf<recovery::EntryTag>(9), "fever", recovery::Urgency::callNow, at, true},
        FindingActed{sampleCourse, "w/fever/09", Act::called, Outcome::advised, "Dr. Ada Lund", "Comes at six.", at},
        EntriesOpened{sampleCourse, {idOf<recovery::EntryTag>(9)}, "Dr. Ada Lund", at},
        MessageWritten{sampleCourse, idOf<MessageTag>(4), "Please send a picture.", "Dr. Ada Lund", at},
        MessageRead{sampleCourse, idOf<MessageTag>(4), at},
        FollowUpRecorded{sampleCourse, GlobalChange::muchBetter, 4, {"bruise"}, true, "none", "in a year", "Dr. Ada Lund", at},
        ProtocolSigned{protocol, bytes::Bytes(64, 6), at},
        ClinicDescribed{contacts, "Europe/Berlin", {"Dr. Ada Lund", "Dr. Jonas Feld"}},
        PatientLinked{sampleCourse, idOf<envelope::MailboxTag>(8), {}, {}},
        sampleBandLearned(),
        BandChosen{{sampleBandLearned().learned.version(), false, "Dr. Ada Lund", "thirty courses", at}},
        PhotoTaken{sampleCourse, sampleManifest(), photos::Pose::leftOblique, idOf<recovery::EntryTag>(9), at},
        PhotoRemoved{sampleCourse, idOf<photos::PhotoTag>(6), at},
        PhotosReceived{sampleCourse, {idOf<photos::PhotoTag>(5)}, at},
        EyesMarked{sampleCourse, idOf<photos::PhotoTag>(5), {{6400, 4100}, {3600, 4120}}, "Dr. Ada Lund", at},
        VersionsOpened{sampleCourse, {{idOf<envelope::DeviceTag>(1), 12}, {idOf<envelope::DeviceTag>(2), 1}}, "Dr. Ada Lund", at},
        KeyAnnounced{sampleCourse, 2, idOfKey()},
        StepTaken{Step::deskAdded, idOf<envelope::DeviceTag>(3), {}, "Dr. Ada Lund", "Dr. Jonas Feld", at},
        ActTakenBack{sampleCourse, {idOf<envelope::DeviceTag>(2), 7}, "Dr. Jonas Feld", at},
        WordHandedOver{"Ring the first two before nine.", {{idOf<envelope::DeviceTag>(2), 4}}, "Dr. Ada Lund", at},
        DoseLimited{{4, 250, 6.5, 400}, "Dr. Ada Lund", at},
        RoleGiven{"Dr. Jonas Feld", Role::onCall, "Dr. Ada Lund", at},
        WorkDone{Task::protocol, {}, "Dr. Ada Lund", at},
        ClinicPhotoTaken{sampleCourse, sampleManifest(11), photos::Pose::rightOblique, "Dr. Ada Lund", at},
        ClinicPhotoRemoved{sampleCourse, idOf<photos::PhotoTag>(11), "Dr. Jonas Feld", at},
        CallNoted{sampleCourse, Contact::sheRang, "May she wash her hair?", "Dr. Ada Lund", at},
    };
}

}  // namespace ebbline::test
