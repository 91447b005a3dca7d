#pragma once
/// \file
/// What the operations add up to. The fold is a pure function of the set of operations: any
/// order of arrival, any duplication and any batching give the same state and the same bytes.

#include "core/bytes/shared_tails.h"
#include "core/journal/operation.h"

#include <functional>
#include <map>
#include <set>
#include <span>
#include <string_view>

namespace ebbline::journal {

/// A value with everything that came before it: the newest last.
template <typename T>
struct Version {
    T value;
    OperationId operation;
    clock::Moment entered;
    clock::HybridTime stamp{};  ///< with the operation, the order in which values became known
    std::optional<OperationId> supersedes{};  ///< what it stands in place of, where that is said
    bool operator==(const Version&) const = default;
};

struct EntryHistory {
    std::vector<Version<recovery::Entry>> versions;  ///< oldest first; never empty
    std::optional<OperationId> first;  ///< the earliest that corrects none; empty: it has not arrived
    const recovery::Entry& current() const { return versions.back().value; }
    bool amended() const { return versions.size() > 1; }
};

struct Opening {
    std::string by;
    clock::Moment at;
    bool operator==(const Opening&) const = default;
};

/// A day that was agreed for the follow-up visit.
struct Visit {
    clock::Moment followUp;  ///< as records::CourseOpened::followUp
    OperationId operation;   ///< that said so
    clock::Moment entered;
    bool operator==(const Visit&) const = default;
};

/// From when, and from which scores, a course was counted until the clinic wrote it otherwise.
struct FormerCount {
    clock::Moment treated;
    recovery::Scores baseline;
    clock::HybridTime until;  ///< the stamp of what said otherwise
    bool operator==(const FormerCount&) const = default;
};

struct CourseState {
    std::optional<records::TreatmentRecorded> treatment;
    std::vector<Version<records::TreatmentRecorded>> treatmentVersions;  ///< in order, none after one that stands in its place; the last one holds
    std::optional<records::CourseOpened> opened;
    std::optional<OperationId> openedOperation;         ///< that said so
    std::set<OperationId> openingsReplaced;             ///< what an opening stands in place of: none of them holds
    clock::Moment openedAt;                             ///< when the clinic wrote that; moving the visit does not change it
    std::vector<FormerCount> formerCounts;              ///< in order; what was raised by them stays
    std::vector<Visit> visits;                          ///< every day that was agreed, in order; the last one holds
    std::size_t planChanges = 0;                        ///< how often the clinic wrote what reminders hang on anew and otherwise
    std::optional<records::PatientLinked> link;
    std::map<recovery::EntryId, EntryHistory> entries;
    std::map<recovery::EntryId, Opening> openings;      ///< first that names an entry and no version: of what was written first
    std::map<OperationId, Opening> versionOpenings;     ///< first opening of each version
    std::map<std::string, records::ReminderAnswered> reminders;  ///< newest answer by key
    std::vector<records::WarningShown> warnings;        ///< in order
    std::vector<records::FindingActed> acts;            ///< in order, with those that were taken back
    std::vector<OperationId> actOperations;             ///< which operation each of them is
    std::vector<clock::HybridTime> actStamps;           ///< and its stamp
    std::vector<Version<records::CallNoted>> calls;     ///< that were about no finding, in order; those taken back too
    std::map<OperationId, records::ActTakenBack> actsTakenBack;  ///< first of each act or call; it may not have arrived
    std::vector<records::MessageWritten> messages;      ///< in order
    std::map<records::MessageId, records::MessageRead> reads;
    std::map<photos::PhotoId, Version<records::PhotoTaken>> photos;      ///< the first of each name; removed ones too
    std::map<photos::PhotoId, records::PhotoRemoved> photosRemoved;
    std::map<photos::PhotoId, clock::Moment> photosReceived;             ///< when a desk first said that it holds it
    std::map<photos::PhotoId, std::set<envelope::DeviceId>> photoHolders;  ///< every desk that said so
    std::map<photos::PhotoId, std::string> clinicPhotos;                 ///< those of `photos` that the clinic took, and who put them in
    std::map<photos::PhotoId, std::string> clinicPhotosRemoved;          ///< those of `photosRemoved` among them, and who took them back
    std::map<photos::PhotoId, records::EyesMarked> eyes;                 ///< newest by photograph
    std::map<envelope::DeviceId, records::KeyAnnounced> phoneKeys;       ///< the last that each phone announced after it was linked
    std::optional<records::FollowUpRecorded> followUp;

    /// Another number whenever an operation of this course arrived. Of one journal in one process: it is not
    /// part of what the operations add up to.
    std::uint64_t revision = 0;

    /// Whoever corrected the treatment last did not know of all records before it.
    bool isTreatmentCrossed() const;
    /// The course is counted by another day, or other scores right after it, than its record says.
    bool isCountedOtherwise() const;

    /// Who took an act back first; null: it stands. \pre `act` is a place in acts
    const records::ActTakenBack* takenBack(std::size_t act) const;

    /// A photograph that was taken and not removed; null otherwise.
    const records::PhotoTaken* photo(const photos::PhotoId& id) const
    {
        const auto found = photos.find(id);
        return found == photos.end() || photosRemoved.contains(id) ? nullptr : &found->second.value;
    }

    /// Who opened this version of an entry first; null: nobody, whoever opened another one of it.
    /// \pre `version` is a place in history.versions
    const Opening* opening(const EntryHistory& history, std::size_t version) const;
    /// The same of the newest version: of what is shown.
    const Opening* opening(const EntryHistory& history) const { return opening(history, history.versions.size() - 1); }
    /// Who opened the newest of those versions before the newest that anybody opened; null: nobody.
    const Opening* earlierOpening(const EntryHistory& history) const;
    /// The newest versions that nobody opened, in the order of their entries' ids.
    std::vector<records::EntryVersion> unopened() const;
};

/// A later writing of a patient's name, number and language. Each field on its own: what it changed, against what its writer had
/// in sight, holds from then on; what it left alone stays as others have corrected it. Left alone is what equals what the correction
/// that it names wrote, or what held after that one.
struct PatientCorrection {
    records::PatientRegistered before;   ///< what held until then
    records::PatientRegistered after;    ///< what held then
    records::PatientRegistered written;  ///< as its writer wrote it
    OperationId operation;
    clock::Moment entered;
    std::string by;        ///< empty: it is not said
    bool crossed = false;  ///< its writer did not know of the correction before it
    bool operator==(const PatientCorrection&) const = default;
};

/// Who does what the next operation of a device says.
struct NamedBefore {
    std::uint64_t number = 0;  ///< of the operation that names her; what she does bears the next one
    std::string by;
    bool operator==(const NamedBefore&) const = default;
};

/// What follows from the operations that belong to no course. A refolding begins it afresh as a whole, so that a member which is
/// added here cannot be forgotten there.
struct ClinicState {
    std::map<recovery::PatientId, records::PatientRegistered> patients;
    std::map<recovery::PatientId, std::vector<PatientCorrection>> patientCorrections;  ///< in order; of those that were corrected alone
    std::map<envelope::DeviceId, NamedBefore> namedBefore;     ///< the last of each desk
    std::map<std::string, records::ProtocolSigned> protocols;  ///< newest by name
    std::map<std::string, std::vector<records::ProtocolSigned>> protocolVersions;  ///< all by name, oldest first
    std::optional<records::ClinicDescribed> clinic;
    std::optional<records::DoseLimited> doseLimited;  ///< the last; empty: the label's limits hold
    bands::History bands;      ///< versions of the clinic's band; a choice that its rules refuse changes nothing
    std::map<std::string, triggers::Thresholds> bandThresholds;  ///< by version: calibrated to it
    std::map<OperationId, records::WordHandedOver> words;  ///< every word that was handed over
    std::vector<Version<records::RoleGiven>> roles;            ///< every role that was given, in order
    std::vector<Version<std::vector<std::string>>> people;     ///< whom the clinic named, in order; the last holds
    std::map<envelope::DeviceId, std::vector<clock::Moment>> backups;  ///< when each desk made one of its own vault, in order
    bool operator==(const ClinicState&) const = default;
};

struct State : ClinicState {
    std::map<recovery::CourseId, CourseState> courses;
    std::size_t operations = 0;
    std::size_t unknown = 0;   ///< kept, not understood
    std::size_t unreadable = 0;  ///< of a known kind, but refused by decode: kept and counted
    /// Of which courses these are, where any is: unknown and unreadable together. Under the null id what belongs to none.
    std::map<recovery::CourseId, std::size_t> notUnderstood;

    /// The words that are up: with text, and replaced by no other; oldest first. Two that were written at two
    /// desks, of which neither knew, are both up.
    std::vector<std::pair<OperationId, const records::WordHandedOver*>> wordsUp() const;

    /// The role that was given to a person last; empty: none, and she may do everything.
    std::optional<records::Role> roleOf(std::string_view person) const;
    /// Whether her role allows it. Where nobody whom the clinic names may name people, everybody may: two desks that did
    /// not know of each other cannot leave a clinic without.
    bool mayDo(std::string_view person, records::Task task) const;
    /// The same by what stands before an operation in the order of the fold, for reading what was done. Whoever did it may
    /// have been at a desk that a change of roles had not reached yet.
    bool couldDo(std::string_view person, records::Task task, const OperationId& operation, clock::HybridTime stamp) const;
    /// The same of an act on a finding of that course; true for one that the course does not hold.
    bool couldDo(const CourseState& course, const records::FindingActed& act) const;
};

/// Folds from nothing.
State fold(std::span<const Operation> operations);

/// Adds operations and keeps the state that fold() over all of them would give. Operations of
/// one course touch that course alone, so a late arrival refolds its own course only.
class Journal {
public:
    /// Operations already known are ignored. If one id comes with two contents, replaces() decides,
    /// whichever arrives first.
    void add(Operation operation);
    /// The same for all that `next` gives until it gives none. Each course is folded once, after the last of them, so that the work
    /// grows with their number whatever order they come in; add() folds a course anew for each that comes late.
    /// \returns what `next` fails with; what came before that is in.
    Done addAll(const std::function<Result<std::optional<Operation>>()>& next);
    const State& state() const { return m_state; }
    bool knows(const OperationId& id) const { return m_known.contains(id); }
    std::vector<Operation> operations() const;  ///< in fold order

private:
    /// An operation with the end of its body apart, where others share it.
    struct Kept {
        Operation operation;
        bytes::SharedTails::Tail tail;
    };
    /// What fits together: the operations of one course, or those that belong to none.
    struct Shelf {
        std::vector<Kept> operations;  ///< in fold order
        std::size_t unknown = 0;
        std::size_t unreadable = 0;
        bool laid = false;  ///< holds operations that are neither in order nor folded yet
    };
    void refold(const recovery::CourseId& course, Shelf& shelf);
    void noteChange(const recovery::CourseId& course);
    void noteNotUnderstood(const recovery::CourseId& course, const Shelf& shelf);
    void remove(const OperationId& id);
    Kept cut(Operation operation);
    static Operation whole(const Kept& kept);
    Operation find(const OperationId& id, const recovery::CourseId& course) const;

    std::map<recovery::CourseId, Shelf> m_shelves;
    std::map<OperationId, recovery::CourseId> m_known;
    bytes::SharedTails m_tails;
    records::KnownBands m_bands;
    std::uint64_t m_changes = 0;
    State m_state;
};

/// Canonical text of a state, the same bytes on every device, and its BLAKE2b-256.
std::string dump(const State& state);
bytes::Array<32> digest(const State& state);

}  // namespace ebbline::journal
