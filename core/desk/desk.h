#pragma once
/// \file
/// What a practitioner can do at the desk. No words, no widgets: app/desk gives it both.

#include "core/anaesthesia/dose.h"
#include "core/curves/curve.h"
#include "core/desk/practice.h"
#include "core/desk/protocol_rehearsal.h"
#include "core/desk/views.h"
#include "core/learning/past_course.h"
#include "core/pairing/statement.h"
#include "core/sync/link_sync.h"
#include "core/sync/messages.h"
#include "core/triage/queue.h"

namespace ebbline::desk {

class Desk {
public:
    Desk(Desk&&) noexcept;
    Desk& operator=(Desk&&) noexcept;
    ~Desk();

    static bool exists(const std::filesystem::path& folder);
    static Result<Desk> create(const std::filesystem::path& folder, bytes::View passphrase,
                               const crypto::StretchCost& cost, const clock::Clock& clock, aftercare::Zone zone);
    static Result<Desk> unlock(const std::filesystem::path& folder, bytes::View passphrase,
                               const clock::Clock& clock, aftercare::Zone zone);

    /// Who is at the desk; every act carries the name.
    void setPerson(std::string name);
    const std::string& person() const;

    /// Grave steps ask for the passphrase once more, so that whoever finds the desk open cannot take them: adding and shutting
    /// out a desk, ending a phone, a fresh key, and changing a number that patients call. It holds for one step, for stepHolds.
    /// \returns as vault::openDataKey(); a wrong one counts as an attempt.
    Done allowStep(bytes::View passphrase);
    bool isStepAllowed() const;
    /// Adding and shutting out a desk and putting another phone in the place of one are for two, where the clinic names more than
    /// one person. The desk has one passphrase: the second one is named and stands in the journal, and is not proved.
    void setSecond(std::string name);
    /// What was done with this desk's own vault, beside the journal, leaves a line of who did it: a backup, another passphrase, a
    /// recovery code. `by`: who began it, since another may be named when it ends. `at`: when it was
    /// done; empty: now. \returns Reason::outOfRange for any other step.
    Done noteStep(records::Step step, const std::string& by, const std::optional<clock::Moment>& at = {});
    std::vector<std::string> seconds() const;  ///< who may stand by; empty: nobody else is named
    /// A backup of this desk's own vault that is older, or was never made, is due as soon as there is a treatment to lose: the guide asks
    /// for one a week. Our own choice.
    static constexpr std::chrono::hours backupHolds{7 * 24};
    /// One that lies further ahead of the clock was made while that ran ahead, and says nothing of when. Our own choice.
    static constexpr std::chrono::hours backupAhead{1};
    std::optional<clock::Moment> lastBackup() const;  ///< of this desk; of those ahead only if there is no other; empty: its journal knows of none
    bool isBackupDue() const;

    /// Roles are a rule of the house (records::Role). What the role of the person at the desk does not allow is refused with
    /// Reason::refused before anything is done; whoever shows it asks before.
    bool mayDo(records::Task task) const;
    std::vector<std::string> whoMay(records::Task task) const;  ///< of those whom the clinic names
    std::optional<records::Role> roleOf(const std::string& person) const;  ///< empty: none, she may do everything
    /// \returns Reason::notFound for one whom the clinic does not name, Reason::notEnough if nobody were left who may name
    ///          people, Reason::invalidState if nobody is named at the desk.
    Done giveRole(const std::string& person, records::Role role);

    /// \returns Reason::locked if it changes a number to call, and the passphrase was not given for it; Reason::notEnough as giveRole().
    Done describeClinic(const records::ClinicDescribed& clinic);
    std::optional<records::ClinicDescribed> clinic() const;

    /// The clinic's own limits of lidocaine; the label's take them back. They hold at every desk of the clinic.
    /// \returns as anaesthesia::check(); Reason::invalidState if nobody is named at the desk.
    Done limitDose(const anaesthesia::Limits& limits);
    anaesthesia::Limits doseLimits() const;                      ///< the label's where the clinic has none
    std::optional<records::DoseLimited> doseLimited() const;     ///< who set them last, and when

    Result<recovery::PatientId> registerPatient(const std::string& name, const std::string& phone,
                                                const std::string& language);
    /// Writes name, number and language of a patient anew, in the name of the person at the desk; what was written before stays on
    /// record. Open to everyone, as registering is. `seen`: the last correction that whoever writes had in sight, empty if it was what
    /// was registered: of what a colleague corrected meanwhile, only what is changed here is changed. `inSight`: what stood before whoever writes; empty if
    /// it is what `seen` left. What brings back what `seen` wrote and a colleague's correction held against is recorded in two
    /// steps, the first of which changes nothing.
    /// \returns what was recorded, for takeBackCorrection(); Reason::notEnough without a name, Reason::notFound, Reason::alreadyExists
    ///          if that is what holds, Reason::invalidState if nobody is named at the desk; as records::check().
    Result<journal::OperationId> correctPatient(const records::PatientRegistered& patient, const std::optional<journal::OperationId>& seen,
                                                const std::optional<records::PatientRegistered>& inSight = {});
    /// What held before it is written anew. \returns Reason::notFound, Reason::invalidState as above; Reason::alreadyExists if it was
    /// corrected again since.
    Done takeBackCorrection(const recovery::PatientId& patient, const journal::OperationId& correction);
    std::vector<journal::PatientCorrection> corrections(const recovery::PatientId& patient) const;  ///< oldest first
    /// With the plan that is kept beside it, if there is one. Lets go of draft and plan in the same transaction. \returns as recovery::check().
    Done recordTreatment(const recovery::Treatment& treatment);
    /// The newest record of a course's treatment, to be corrected: with an empty reason. \returns Reason::notFound without a treatment.
    Result<TreatmentCorrection> beginCorrection(const recovery::CourseId& course) const;
    /// A correction being written: a draft of its own beside the patient's. \returns as draft().
    Result<TreatmentCorrection> correction(const recovery::CourseId& course) const;
    Done keepCorrection(const TreatmentCorrection& correction);
    Done discardCorrection(const recovery::CourseId& course);
    /// Puts it in place of the newest record, in the name of the person at the desk; the former ones stay on record. Where the day of the
    /// treatment or the scores right after it change, a course that is open is told anew in the same transaction, to phone and desks,
    /// with what else it had. Lets go of the draft. \returns as recordTreatment() and beginCorrection(); Reason::notEnough without a
    /// reason, Reason::refused for another patient, Reason::alreadyExists if that is what is on record, Reason::invalidState if nobody
    /// is named at the desk.
    Done correctTreatment(const TreatmentCorrection& correction);
    /// A treatment being written; kept durably at every change, on this computer. Each patient has one of her own; the null id has
    /// what is written while nobody is chosen.
    /// \returns Reason::notFound if none is being written; any other reason if that cannot be told or read: then nothing may be kept over it.
    Result<recovery::Treatment> draft(const recovery::PatientId& patient) const;
    /// Whose treatments are being written, readable or not; the null id comes first. \returns Reason::storageFailed.
    Result<std::vector<recovery::PatientId>> drafted() const;
    Done keepDraft(const recovery::Treatment& treatment);
    /// What was written while nobody was chosen becomes that of the treatment's patient.
    Done handDraft(const recovery::Treatment& treatment);
    Done discardDraft(const recovery::PatientId& patient);
    /// The one draft that an older program kept becomes its patient's, unless she has one; it waits then.
    /// \returns whose it is, empty if there was none to move; any reason if it cannot be read: it stays as it is.
    Result<std::optional<recovery::PatientId>> adoptFormerDraft();
    /// What was planned before the patient lay down, beside what was done; kept on this computer until the treatment is recorded with it.
    std::optional<recovery::Treatment> plan(const recovery::CourseId& course) const;
    Done keepPlan(const recovery::Treatment& treatment);
    Done discardPlan(const recovery::CourseId& course);
    /// A fresh treatment for this moment.
    recovery::Treatment blankTreatment(const recovery::PatientId& patient) const;

    std::vector<triggers::Protocol> protocols() const;  ///< newest of each name, at least the default
    /// Lets go of the draft in the same transaction. \returns Reason::refused without the root key, or for a band that is not in use.
    Done signProtocol(const triggers::Protocol& protocol);
    /// Every version of a protocol, oldest first; empty if none was ever signed.
    std::vector<records::ProtocolSigned> protocolVersions(const std::string& name) const;
    /// A protocol being changed; kept durably at every change. \returns as draft().
    Result<triggers::Protocol> protocolDraft() const;
    Done keepProtocolDraft(const triggers::Protocol& protocol);
    Done discardProtocolDraft();
    /// Past courses to rehearse a protocol on, copied.
    RehearsalMaterial rehearsalMaterial() const;

    Teaching teaching() const;
    const bands::History& bandHistory() const;
    BandLesson bandLesson() const;
    /// Keeps what learnFrom() gave. Nothing comes into use by it.
    /// \returns the version; Reason::alreadyExists if nothing has changed since the last, Reason::invalidState
    ///          if nobody is named at the desk.
    Result<std::string> keepBand(const records::BandLearned& learned);
    /// The band of a protocol that came in a file as a version, checked on courses of this clinic that it has not seen: all
    /// that may teach if `ofOthersAlone` (a person says so), else those treated after it was learned. Keeps nothing.
    /// \returns as bands::broughtVersion() and records::check().
    Result<records::BandLearned> checkBrought(const triggers::Protocol& protocol, bool ofOthersAlone) const;
    /// Signs a protocol whose band comes into use by it; every other protocol is signed anew with that band, as useBand() does.
    /// To the one that was in use before, it goes back. \returns as useBand(); Reason::notFound for a protocol of another name.
    Done signWithBand(const triggers::Protocol& protocol, const std::string& reason);
    /// Both in one step. \returns Reason::notEnough below bands::folds courses as well.
    Result<std::string> learnBand();
    /// A version comes into use, or the clinic goes back to one: every protocol is signed anew with its
    /// band and thresholds, in the same transaction. Courses that run keep the protocol they have.
    /// \returns as bands::History::allows(); Reason::notEnough without a reason.
    Done useBand(const std::string& version, const std::string& reason);
    Done returnToBand(const std::string& version, const std::string& reason);

    /// Every treatment on record, for core/learning; without a follow-up its outcome is not known.
    std::vector<learning::PastCourse> pastCourses() const;
    /// Course by course, for whoever must not hold up a screen: an empty answer belongs to no course, to
    /// one without a treatment on record, or, for a tally, to one that no phone is linked to.
    std::vector<recovery::CourseId> courseIds() const;
    std::optional<learning::PastCourse> pastCourse(const recovery::CourseId& course) const;
    std::optional<TallyStamp> tallyStamp(const recovery::CourseId& course) const;
    std::optional<CourseTally> tally(const recovery::CourseId& course) const;

    /// Names the hub that offers point at.
    Done setHub(const std::string& hostAndPort, bool tls, const bytes::Array<32>& keyHash);
    struct Hub {
        std::string host;  ///< host[:port]
        bool tls = true;
        bytes::Array<32> keyHash{};
        std::string address() const { return (tls ? "https://" : "http://") + host; }
        bool operator==(const Hub&) const = default;
    };
    std::optional<Hub> hub() const;

    std::vector<CourseSummary> courses() const;  ///< newest treatment first
    /// Of one course; empty if it is unknown.
    std::optional<CourseSummary> summary(const recovery::CourseId& course) const;
    /// \returns Reason::notFound.
    Result<CourseView> course(const recovery::CourseId& course) const;
    std::vector<records::PatientRegistered> patients() const;  ///< by name
    std::vector<triage::Row> queue() const;
    /// The course as a FHIR bundle for other programs, without the patient's name: docs/formats/fhir.md. `program`: name
    /// and version of the one that writes it. \returns Reason::notFound.
    Result<std::string> bundle(const recovery::CourseId& course, const std::string& program) const;
    curves::Curve curve(const recovery::CourseId& course, const recovery::Stream& stream) const;
    /// Left against right of a symptom; empty where there is not enough to say.
    std::optional<curves::Asymmetry> asymmetry(const recovery::CourseId& course, recovery::Symptom symptom) const;
    /// The clinic's own first, then the patient's, each oldest first; those that were taken back are left out.
    std::vector<CoursePhoto> photos(const recovery::CourseId& course) const;
    /// JPEG bytes that were checked when they came. \returns Reason::notFound, also for one that was taken back;
    /// Reason::notEnough while it is still coming.
    Result<bytes::Bytes> photo(const recovery::CourseId& course, const photos::PhotoId& photo) const;
    /// A photograph that the clinic took right after the treatment: for its desks, never for a phone. \returns Reason::notFound
    /// without a treatment, Reason::invalidState if nobody is named at the desk, Reason::storageFull over mostClinicPhotos; as photos::seal().
    Result<photos::PhotoId> addClinicPhoto(const recovery::CourseId& course, bytes::View jpeg, photos::Pose pose);
    static constexpr std::size_t mostClinicPhotos = 12;  ///< of a course: each view some times. Our own choice
    /// Takes one of those back: every desk lets its picture go. \returns Reason::notFound, also for a patient's; Reason::invalidState as above.
    Done takeBackPhoto(const recovery::CourseId& course, const photos::PhotoId& photo);
    /// Keeps where the eyes are, in the name of the person at the desk; every desk of the clinic learns it.
    /// \returns Reason::notFound for a photograph that is not there; as photos::check().
    Done markEyes(const recovery::CourseId& course, const photos::PhotoId& photo, const photos::Eyes& eyes);

    Done act(const recovery::CourseId& course, const std::string& finding, records::Act act,
             records::Outcome outcome = records::Outcome::none, const std::string& note = {});
    /// The same on several findings, in one step: on all of them or on none. A silence that is gone is left out; a call, or a visit brought
    /// forward, that was about nothing else is noted on it all the same. \returns what was recorded, for takeBack().
    Result<std::vector<journal::OperationId>> actOn(const recovery::CourseId& course, const std::vector<std::string>& findings,
                                                    records::Act act, records::Outcome outcome = records::Outcome::none,
                                                    const std::string& note = {});
    /// A call that was about no finding, in the name of the person at the desk. \returns what was recorded, for takeBack(); Reason::notFound
    /// for a course that is not there, Reason::tooLarge over 2000 bytes.
    Result<std::vector<journal::OperationId>> noteCall(const recovery::CourseId& course, records::Contact contact, const std::string& text = {});
    /// The visit is on another day from now on: the phone shows it, reminds of it and goes by it, as do silence and forecast here. The
    /// findings are noted as answered by it, in the same step; a note on none of them is kept as that of a call is. `followUp`: aftercare::momentOf() a visit. \returns what was recorded,
    /// for takeBack(); Reason::outOfRange as openCourse(), Reason::invalidState if no phone has the course, Reason::alreadyExists
    /// if that is what was agreed.
    Result<std::vector<journal::OperationId>> moveVisit(const recovery::CourseId& course, const clock::Moment& followUp,
                                                        const std::vector<std::string>& findings, const std::string& note = {});
    /// Takes acts and calls back that were noted by mistake, in the name of the person at the desk; what was noted stays on
    /// record beside it. A visit that was moved with one of them, and not moved again since, is on its former day again. \returns Reason::notFound if one of them is no act on this course, Reason::alreadyExists if
    /// all are taken back.
    Done takeBack(const recovery::CourseId& course, const std::vector<journal::OperationId>& acts);

    /// A word to who comes next, in place of the words that are up; every desk of the clinic shows it.
    /// \returns Reason::notEnough without text, Reason::tooLarge over 4000 bytes.
    Done handOver(const std::string& text);
    /// Takes the words down that are up.
    Done takeWordsDown();
    std::vector<records::WordHandedOver> wordsUp() const;  ///< oldest first
    /// A word that an older program pinned at this desk alone goes into the journal, with its author and time.
    Done adoptPinnedWord();
    /// Marks every entry of a course, in the version that this desk holds, as opened by the person at the desk; tells the phone.
    Done openEntries(const recovery::CourseId& course);
    Done writeMessage(const recovery::CourseId& course, const std::string& text);
    using Closings = std::vector<std::pair<std::string, records::Outcome>>;  ///< a finding's key, what became of it
    /// Closes those findings in the same transaction. \returns Reason::notFound for a key that no finding of the
    /// course has, Reason::notEnough for one without an outcome.
    Done recordFollowUp(const records::FollowUpRecorded& followUp, const Closings& closings = {});

    /// The course goes to the phone once it is linked. `followUp`: aftercare::momentOf() a visit.
    /// \returns Reason::outOfRange for a visit that is not 1..60 days after the treatment.
    Done openCourse(const recovery::CourseId& course, const triggers::Protocol& protocol,
                    const clock::Moment& followUp);

    /// Tells the hub which devices are over, then runs once over everything (sync::run()). What waits for the hub's answers holds the inside
    /// of this desk by its address, which stays when the desk is moved. Whoever lets the desk go, or gives it another one's inside, lets the
    /// courier go with it, before an answer can come: a courier that is gone calls nobody.
    void syncNow(sync::Courier& courier, std::function<void(sync::Report)> done);

    /// Whether this desk may sign for the clinic: invite, open courses, enlist and revoke.
    bool isOwner() const;
    std::vector<DeskView> desks() const;  ///< this one alone before the first roster
    /// A fresh key that patients seal to from the next sync on; what is sealed to earlier ones still opens.
    /// \returns Reason::refused if this desk is no owner's; Reason::locked.
    Done beginEpoch();
    /// From the next sync on, programs that speak less send nothing until they are updated; a higher one than this program speaks
    /// is refused. A grave step. \returns Reason::refused if this desk is no owner's; Reason::locked; Reason::outOfRange.
    Done requireVersion(std::uint32_t protocol);
    std::uint32_t requiredVersion() const;  ///< 1 if none was asked for
    bool tooOld() const;                    ///< the clinic asks for more than this program speaks
    /// A lost desk: no phone and no desk takes anything from it any more, a fresh epoch begins that it cannot read, and the
    /// hub is told with the next sync to refuse it. What it held already is protected by its own vault alone. A lost
    /// owner's desk holds the root key: then only a new clinic helps.
    /// \returns Reason::refused if this desk is no owner's or it is this one; Reason::notFound; Reason::locked and
    ///          Reason::notEnough as a grave step for two.
    Done revokeDesk(const envelope::DeviceId& device);
    /// A phone that is lost, without another one in its place yet: its link ends, and the hub is told with the next sync.
    /// \returns Reason::refused if this desk is no owner's; Reason::notFound if the course has no phone; Reason::locked.
    Done endPhone(const recovery::CourseId& course);
    /// Phones of a course that were replaced or ended, of which this desk knows.
    std::vector<FormerPhone> formerPhones(const recovery::CourseId& course) const;
    /// Devices that are over, the newest first; what only another desk knows of is not here.
    std::vector<EndedDevice> endedDevices() const;

    clock::Moment now() const;
    vault::Vault& vault();

private:
    struct Inside;
    Done changeBand(bands::Choice choice, const triggers::Protocol* changed = nullptr);
    explicit Desk(std::unique_ptr<Inside> inside);
    friend class Inviting;
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::desk
