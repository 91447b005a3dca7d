#pragma once
/// \file
/// What an operation says: one structure per kind. Versioned serialisation of these bodies, only
/// ever given bytes that were authenticated before. Formats: docs/formats/operations.md.

#include "core/anaesthesia/dose.h"
#include "core/bands/versions.h"
#include "core/envelope/envelope.h"
#include "core/records/known_bands.h"
#include "core/records/photo_bodies.h"
#include "core/records/roles.h"
#include "core/recovery/treatment.h"
#include "core/triggers/protocol.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ebbline::records {

using MessageId = bytes::Id<struct MessageTag>;

/// Stored and sent: never renumber. Unknown kinds of a newer program are kept and passed on.
enum class Kind : std::uint16_t {
    patientRegistered = 1,
    treatmentRecorded = 2,
    courseOpened = 3,
    entryRecorded = 4,
    reminderAnswered = 5,
    warningShown = 6,
    findingActed = 7,
    entriesOpened = 8,
    messageWritten = 9,
    messageRead = 10,
    followUpRecorded = 11,
    protocolSigned = 12,
    clinicDescribed = 13,
    patientLinked = 14,
    bandLearned = 15,
    bandChosen = 16,
    photoTaken = 17,
    photoRemoved = 18,
    photosReceived = 19,
    eyesMarked = 20,
    versionsOpened = 21,
    keyAnnounced = 22,
    stepTaken = 23,
    actTakenBack = 24,
    wordHandedOver = 25,
    doseLimited = 26,
    roleGiven = 27,
    workDone = 28,
    clinicPhotoTaken = 29,
    clinicPhotoRemoved = 30,
    callNoted = 31,
};
inline constexpr Kind newestKind = Kind::callNoted;  ///< above: of a newer program

/// Clinic only. Written once more for the same patient it corrects: docs/decisions/0050-a-correction-changes-what-it-changed.md.
struct PatientRegistered {
    recovery::PatientId patient;
    std::string name;
    std::string phone;
    std::string language;  ///< BCP 47, e.g. "de"
    bool operator==(const PatientRegistered&) const = default;
};

/// Clinic only.
struct TreatmentRecorded {
    recovery::Treatment treatment;
    bool operator==(const TreatmentRecorded&) const = default;
};

/// Whom to call; also kept outside the vault on the phone, so that it can be read while locked.
struct Contacts {
    std::string clinicName;
    std::string clinicPhone;
    std::string onCallPhone;      ///< if the clinic does not answer
    std::string emergencyNumber;  ///< e.g. "112"
    bool operator==(const Contacts&) const = default;
};

/// To the patient's phone: her course, its protocol, and whom to call.
struct CourseOpened {
    recovery::CourseId course;
    clock::Moment treated;
    std::string practitioner;
    Contacts contacts;
    clock::Moment followUp;  ///< of its wall clock; midnight: only the day is agreed (aftercare::visitOf)
    recovery::Scores baseline;
    triggers::Protocol protocol;
    bytes::Bytes protocolSignature;  ///< Ed25519 by the clinic root over the encoded protocol
    bool operator==(const CourseOpened&) const = default;
};

/// From the phone. A correction is a new operation that supersedes the old one.
struct EntryRecorded {
    recovery::Entry entry;
    bool operator==(const EntryRecorded&) const = default;
};

enum class ReminderAnswer : std::uint8_t { done = 1, notDone = 2, later = 3 };

struct ReminderAnswered {
    recovery::CourseId course;
    std::string key;             ///< aftercare::Reminder::key
    ReminderAnswer answer = ReminderAnswer::done;
    clock::Moment at;
    std::optional<clock::Instant> laterUntil;
    bool operator==(const ReminderAnswered&) const = default;
};

/// The phone showed a warning; `confirmed` once the patient said that she has read it.
struct WarningShown {
    recovery::CourseId course;
    recovery::EntryId entry;  ///< the entry that raised it
    std::string rule;         ///< names the finding (triage::Finding::key)
    recovery::Urgency urgency = recovery::Urgency::atReview;
    clock::Moment at;
    bool confirmed = false;
    bool operator==(const WarningShown&) const = default;
};

enum class Act : std::uint8_t { seen = 1, taken = 2, called = 3, visitBroughtForward = 4, closed = 5, reopened = 6 };
enum class Outcome : std::uint8_t {
    none = 0,
    reassured = 1,        ///< usual course, explained
    advised = 2,          ///< told what to do at home
    treatedInClinic = 3,
    sentToUrgentCare = 4,
    notReached = 5,
};

/// Clinic only: a human act on a finding. The key names the finding (triage::Finding::key).
struct FindingActed {
    recovery::CourseId course;
    std::string finding;
    Act act = Act::seen;
    Outcome outcome = Outcome::none;
    std::string by;
    std::string note;
    clock::Moment at;
    bool operator==(const FindingActed&) const = default;
};

/// To the phone, as it was written before versionsOpened: a named person opened these entries. It names no
/// version, so it speaks of what was written first and of no correction. Read, and written no more.
struct EntriesOpened {
    recovery::CourseId course;
    std::vector<recovery::EntryId> entries;
    std::string by;
    clock::Moment at;
    bool operator==(const EntriesOpened&) const = default;
};

struct MessageWritten {
    recovery::CourseId course;
    MessageId message;
    std::string text;  ///< at most 2000 bytes of UTF-8
    std::string by;    ///< empty: the patient
    clock::Moment at;
    bool operator==(const MessageWritten&) const = default;
};

struct MessageRead {
    recovery::CourseId course;
    MessageId message;
    clock::Moment at;
    bool operator==(const MessageRead&) const = default;
};

/// Five named steps; stored as names, because published numberings of such scales differ.
enum class GlobalChange : std::uint8_t { veryMuchBetter = 1, muchBetter = 2, better = 3, unchanged = 4, worse = 5 };

/// Clinic only: what was found and agreed at the follow-up; closes the course.
struct FollowUpRecorded {
    recovery::CourseId course;
    GlobalChange change = GlobalChange::unchanged;
    int satisfaction = 3;                      ///< patient's own, 1..5
    std::vector<std::string> complications;    ///< words of our own list, empty: none
    bool uncomplicated = true;
    std::string management;
    std::string nextPlan;
    std::string by;
    clock::Moment at;
    bool operator==(const FollowUpRecorded&) const = default;
};

/// Clinic only: a protocol as signed.
struct ProtocolSigned {
    triggers::Protocol protocol;
    bytes::Bytes signature;
    clock::Moment at;
    bool operator==(const ProtocolSigned&) const = default;
};

/// Clinic only.
struct ClinicDescribed {
    Contacts contacts;
    std::string zone;  ///< IANA time zone of the clinic
    std::vector<std::string> people;
    bool operator==(const ClinicDescribed&) const = default;
};

/// Clinic only: a phone belongs to a course.
struct PatientLinked {
    recovery::CourseId course;
    envelope::MailboxId mailbox;
    bytes::Array<32> signingKey{};
    bytes::Array<32> boxKey{};
    bool operator==(const PatientLinked&) const = default;
};

/// Clinic only: a version of the band, learned here or brought in a file, with the thresholds of the statistics that were
/// calibrated to it (guards and rules in points are the protocol's own and stay).
struct BandLearned {
    bands::Learned learned;
    triggers::Thresholds thresholds;
    bool operator==(const BandLearned&) const = default;
};

/// Clinic only: a version came into use.
struct BandChosen {
    bands::Choice choice;
    bool operator==(const BandChosen&) const = default;
};

/// One version of an entry, named by the operation that recorded it (journal::OperationId).
struct EntryVersion {
    envelope::DeviceId device;
    std::uint64_t number = 0;  ///< from 1
    bool operator==(const EntryVersion&) const = default;
};

/// To the phone: a named person opened these versions of entries, and no others.
struct VersionsOpened {
    recovery::CourseId course;
    std::vector<EntryVersion> versions;
    std::string by;
    clock::Moment at;
    bool operator==(const VersionsOpened&) const = default;
};

/// From the phone: the key that everything for it is sealed to from now on.
struct KeyAnnounced {
    recovery::CourseId course;
    std::uint32_t number = 0;     ///< of the phone's keys, from 1
    bytes::Array<32> boxKey{};    ///< X25519
    bool operator==(const KeyAnnounced&) const = default;
};

/// Stored: never renumber.
enum class Step : std::uint8_t {
    deskAdded = 1,
    deskShutOut = 2,
    phoneEnded = 3,
    phoneReplaced = 4,
    freshKey = 5,
    numbersChanged = 6,
    leastVersion = 7,
    backupMade = 8,
    passphraseChanged = 9,
    recoveryCodeMade = 10,
};
inline constexpr Step newestStep = Step::recoveryCodeMade;

/// Clinic only: somebody took a grave step, for which the passphrase was asked once more.
struct StepTaken {
    Step step = Step::deskAdded;
    envelope::DeviceId device;    ///< it was about; null: about none
    recovery::CourseId course;    ///< null: about none
    std::string by;
    std::string with;             ///< who stood by; empty: nobody, or no other person is named at the clinic
    clock::Moment at;
    bool operator==(const StepTaken&) const = default;
};

/// One operation, by its name (journal::OperationId).
struct OperationName {
    envelope::DeviceId device;
    std::uint64_t number = 0;  ///< from 1
    bool operator==(const OperationName&) const = default;
};

/// Clinic only: somebody takes back an act on a finding (findingActed) or a call (callNoted), noted by mistake. Both stay on record.
struct ActTakenBack {
    recovery::CourseId course;
    OperationName act;
    std::string by;
    clock::Moment at;
    bool operator==(const ActTakenBack&) const = default;
};

/// Stored: never renumber.
enum class Contact : std::uint8_t { spoken = 1, sheRang = 2, notReached = 3, visitBroughtForward = 4 };

/// Clinic only: a call, or a visit brought forward, that was about no finding. It answers for none: what people do about findings is FindingActed.
struct CallNoted {
    recovery::CourseId course;
    Contact contact = Contact::spoken;
    std::string text;  ///< at most 2000 bytes of UTF-8; may be empty
    std::string by;
    clock::Moment at;
    bool operator==(const CallNoted&) const = default;
};

/// Clinic only: a word from who leaves to who comes, or, without text, that words were taken down.
struct WordHandedOver {
    std::string text;                     ///< at most 4000 bytes of UTF-8
    std::vector<OperationName> replaces;  ///< the words that were up when it was written; others stay up
    std::string by;
    clock::Moment at;
    bool operator==(const WordHandedOver&) const = default;
};

/// Clinic only: the clinic's own limits of lidocaine, never above the label's; the label's again takes them back.
/// A kind of its own, so that a desk that does not know it cannot drop the limits by describing the clinic anew.
struct DoseLimited {
    anaesthesia::Limits limits;
    std::string by;
    clock::Moment at;
    bool operator==(const DoseLimited&) const = default;
};

using Body = std::variant<PatientRegistered, TreatmentRecorded, CourseOpened, EntryRecorded,
                          ReminderAnswered, WarningShown, FindingActed, EntriesOpened, MessageWritten,
                          MessageRead, FollowUpRecorded, ProtocolSigned, ClinicDescribed, PatientLinked,
                          BandLearned, BandChosen, PhotoTaken, PhotoRemoved, PhotosReceived, EyesMarked,
                          VersionsOpened, KeyAnnounced, StepTaken, ActTakenBack, WordHandedOver, DoseLimited, RoleGiven, WorkDone,
                          ClinicPhotoTaken, ClinicPhotoRemoved, CallNoted>;

Kind kindOf(const Body& body);

/// The course a body speaks of; null for what belongs to none.
recovery::CourseId courseOf(const Body& body);

/// Every bound named above and in core/recovery. \returns Reason::outOfRange, Reason::malformed,
/// Reason::tooLarge or Reason::notEnough, naming the field.
Done check(const Body& body);

/// Serialises with the version of its kind in front.
bytes::Bytes encode(const Body& body);

inline constexpr std::size_t maximumBody = 128 * 1024;

/// \returns Reason::malformed for any other bytes or bytes left over, Reason::tooLarge over
///          maximumBody, Reason::unsupported for a kind or version of a newer program; values out
///          of their bounds are refused as by recovery::check(). `known`, if there is one, gives and takes bands.
Result<Body> decode(Kind kind, bytes::View input, KnownBands* known = nullptr);

/// A treatment that is still being written: read without asking whether it is complete.
/// \returns Reason::malformed, Reason::unsupported.
Result<recovery::Treatment> decodeDraft(bytes::View input);

/// The bytes a clinic signs for a protocol, and the way back.
bytes::Bytes encodeProtocol(const triggers::Protocol& protocol);
Result<triggers::Protocol> decodeProtocol(bytes::View input);
/// The same of one in the making: its care plan may be unfinished.
Result<triggers::Protocol> decodeProtocolDraft(bytes::View input);

}  // namespace ebbline::records
