#pragma once
/// \file
/// What a patient can do with the diary. No words, no widgets: app/diary gives it both.

#include "core/aftercare/care_plan.h"
#include "core/curves/curve.h"
#include "core/sync/link_sync.h"
#include "core/sync/messages.h"
#include "core/sync/outlook.h"
#include "core/triage/queue.h"

#include <map>

namespace ebbline::patient {

/// The three true states of an entry, never shown ahead of proof.
struct EntryState {
    enum class Place : std::uint8_t { savedHere, withClinic, opened } place = Place::savedHere;
    std::optional<clock::Instant> since;   ///< of withClinic: from the desk's signed acknowledgement
    std::string openedBy;                  ///< the newest version, which is the one that is shown
    std::optional<clock::Moment> openedAt;
    std::optional<journal::Opening> openedBefore;  ///< an earlier version, where nobody opened the newest: say both
};

struct EntryView {
    journal::EntryHistory history;
    int day = 0;
    EntryState state;
    std::vector<triage::Finding> findings;
};

struct ReminderView {
    aftercare::Reminder reminder;
    std::optional<records::ReminderAnswer> answer;
    std::optional<clock::Instant> laterUntil;
    std::optional<clock::Moment> answeredAt;  ///< empty also where an entry answered it
    bool overdue = false;
};

/// When its bell rings: as planned outside quiet hours, or at the moment it was put off to.
clock::Instant dueAt(const ReminderView& view);

struct Today {
    int day = 0;
    clock::Moment now;
    clock::Moment followUp;
    std::optional<clock::Moment> formerVisit;  ///< the clinic moved the visit to another day or hour; it was to be then. Until the visit's day is over
    std::vector<ReminderView> dueNow;      ///< due and unanswered, oldest first: for a day, dressings off until it is answered
    std::vector<ReminderView> next;        ///< coming up, soonest first, at most 6
    std::vector<ReminderView> answeredToday;  ///< due today and answered, or answered today
    std::vector<aftercare::Instruction> inForce;
    std::vector<triage::Finding> standing;  ///< warnings not confirmed yet, most urgent first
    std::vector<triage::Finding> toRead;    ///< what an entry raised that can wait, not confirmed yet, most urgent first
    std::optional<EntryView> lastEntry;
    std::size_t unread = 0;                 ///< messages from the clinic
    std::size_t waiting = 0;                ///< entries that are only on this phone
};

/// What is being typed, as far as it got: an entry that need not be complete, and what stands in a
/// field but is no value yet.
struct Draft {
    recovery::Entry entry;
    std::string temperatureText;  ///< as typed, at most 20 bytes
    int step = 0;                 ///< which question was in sight, 0..31
    bool operator==(const Draft&) const = default;
};

struct Saved {
    recovery::EntryId entry;
    std::vector<triage::Finding> findings;  ///< of this entry, most urgent first: show at once
};

/// A photograph as the phone knows it; its state is never shown ahead of proof.
struct PhotoView {
    photos::PhotoId photo;
    photos::Pose pose = photos::Pose::front;
    recovery::EntryId entry;                ///< null if it stands by itself
    clock::Moment at;                       ///< when it was taken
    int day = 0;
    bool here = false;                      ///< false: only on the phone that this one replaced, and with the clinic
    std::optional<clock::Moment> received;  ///< when a desk said, signed, that it holds it
};

class Diary {
public:
    Diary(Diary&&) noexcept;
    Diary& operator=(Diary&&) noexcept;
    ~Diary();

    static bool exists(const std::filesystem::path& folder);
    static Result<Diary> create(const std::filesystem::path& folder, bytes::View passphrase,
                                const crypto::StretchCost& cost, const clock::Clock& clock, aftercare::Zone zone);
    static Result<Diary> unlock(const std::filesystem::path& folder, bytes::View passphrase,
                                const clock::Clock& clock, aftercare::Zone zone);
    static Result<Diary> unlock(const std::filesystem::path& folder, const vault::Offered& offered,
                                const clock::Clock& clock, aftercare::Zone zone);
    /// Takes everything of the diary off this device, the keys first, so that what is left of it at
    /// any moment opens for nobody. Files of others in the folder stay. What the clinic has, it keeps.
    /// \returns Reason::storageFailed if something could not be removed; it can be called again.
    static Done erase(const std::filesystem::path& folder);
    /// Whom to call, readable without unlocking. \returns Reason::notFound before joining.
    static Result<vault::OpenInfo> openInfo(const std::filesystem::path& folder);

    bool joined() const;  ///< a course has arrived
    bool linked() const;  ///< paired, the course may still be on its way
    /// Another phone belongs to this course now: what is written here reaches nobody. Show it, with whom to call.
    bool replaced() const;
    /// The clinic asks for a newer program, or said something that this one does not know: what is written is kept, warned of and
    /// shown as before, and may wait here for the update.
    bool tooOld() const;
    /// What this phone, once it was replaced, holds that the clinic does not; empty before, and if it cannot be read.
    std::optional<sync::LeftBehind> leftBehind() const;
    /// The way to the clinic; its hub is a base address, "https://host:port".
    std::optional<vault::Link> link() const;
    const records::CourseOpened& course() const;  ///< \pre joined()
    /// A note to the clinic or an answer to a reminder is on this phone alone, as far as the clinic's device has said.
    bool wordsWait() const;
    /// How it stands with the clinic's device; empty without a link in use.
    std::optional<sync::Outlook> outlook() const;

    /// The zone follows the phone; reminders keep the wall clock.
    void travelTo(aftercare::Zone zone);
    aftercare::QuietHours quietHours() const;
    Done setQuietHours(const aftercare::QuietHours& quiet);

    Today today() const;
    /// Whole schedule from now on, unanswered, with "later" counted in.
    std::vector<aftercare::Reminder> upcoming(std::size_t atMost) const;
    /// For the bells of the phone: the moments of what comes, and of what is due now, whose bell may ring late.
    std::vector<clock::Instant> bellMoments() const;
    /// The same as a calendar file whose events all say `words`. The identifiers stay the same over
    /// time, so that a calendar replaces what it took before; one that is no longer
    /// planned stays there until somebody deletes it.
    /// \returns Reason::notEnough if nothing is coming up.
    Result<std::string> calendar(const std::string& words, const std::string& language);

    /// What is being typed; kept durably at every tap, gone once recorded. A correction of an entry has
    /// a draft of its own, beside that of a new entry.
    /// \returns Reason::notFound if nothing is being typed; Reason::storageFailed if it cannot be told:
    ///          then nothing may be kept over it.
    Result<Draft> draft() const;
    Result<Draft> correctionDraft() const;
    Done keepDraft(const Draft& draft);
    Done keepCorrection(const Draft& draft);
    Done discardDraft();
    Done discardCorrection();
    /// A fresh entry for this moment with nothing answered.
    recovery::Entry blankEntry() const;

    /// One durable transaction, then warning signs and triggers at once, with no network.
    /// A clock that was set in between refuses nothing: a moment that lies ahead becomes now, and one before
    /// the treatment is kept and judged as right after it.
    /// \returns as recovery::check(), and Reason::storageFull: the draft is still there then. What it raised
    ///          is with judged(): a warning waits for no storage.
    Result<Saved> record(const recovery::Entry& entry);
    /// Replaces an entry; the old one stays in its history. The moment it speaks of may change too.
    Result<Saved> amend(const recovery::EntryId& old, const recovery::Entry& entry);

    /// What this entry raises, most urgent first, whether it is stored or not.
    std::vector<triage::Finding> judged(const recovery::Entry& entry) const;

    std::vector<EntryView> history() const;  ///< newest first
    std::optional<recovery::Entry> lastBefore(clock::Instant at) const;

    /// Seals a photograph and keeps it, in one durable transaction; it goes to the clinic after everything else.
    /// `entry` is the entry beside which it was taken, null for none; one that is only being typed may be named.
    /// \returns as photos::seal(); Reason::storageFull, also for more than mostPhotos; Reason::invalidState before joining.
    Result<photos::PhotoId> addPhoto(bytes::View jpeg, photos::Pose pose, const recovery::EntryId& entry, const clock::Moment& at);
    static constexpr std::size_t mostPhotos = 300;  ///< of one course, removed ones aside; our own choice
    std::vector<PhotoView> photos() const;          ///< of this course, oldest first, removed ones left out
    /// JPEG bytes. \returns Reason::notFound, also for a removed one; Reason::notEnough if it is not on this phone.
    Result<bytes::Bytes> photo(const photos::PhotoId& photo) const;
    /// For good: here at once, at hub and clinic with the next sync. \returns Reason::notFound.
    Done removePhoto(const photos::PhotoId& photo);

    Done answerReminder(const std::string& key, records::ReminderAnswer answer,
                        std::optional<clock::Instant> laterUntil = {});
    /// The patient has read it: a warning, or what can wait. \returns Reason::notFound where no entry raised it.
    Done confirmWarning(const triage::Finding& finding);
    /// She has, at this urgency or a more urgent one.
    bool isConfirmed(const triage::Finding& finding) const;

    std::vector<records::MessageWritten> messages() const;  ///< oldest first
    /// When the one it was written for read it; empty: not yet, as far as this phone knows.
    std::optional<clock::Moment> readAt(const records::MessageId& message) const;
    Done readMessages();
    /// Lets go of noteDraft() in the same transaction.
    Done writeMessage(const std::string& text);
    /// A note to the clinic that is being written; kept durably at every change, like an entry.
    std::string noteDraft() const;
    Done keepNoteDraft(const std::string& text);  ///< empty: there is none

    /// The curve of one stream inside the protocol's band, for the chart and its sentence.
    curves::Curve curve(const recovery::Stream& stream) const;

    /// As desk::Desk::syncNow(), for the one course.
    void syncNow(sync::Courier& courier, std::function<void(sync::Report)> done);

    /// Everything of the patient's as open tables, name of the file to its text: entries.csv,
    /// scores.csv, signs.csv, reminders.csv, notes.csv, photos.csv. Formats: docs/formats/own_data.md.
    std::map<std::string, std::string> tables() const;
    /// The same course as a FHIR bundle for other programs, without a name: docs/formats/fhir.md. It names the photographs
    /// by photoFiles(). `program`: name and version of the one that writes it. \returns Reason::notFound before joining.
    Result<std::string> bundle(const std::string& program) const;
    /// The photographs that are on this phone, under the names that photos.csv gives them.
    std::vector<std::pair<std::string, photos::PhotoId>> photoFiles() const;

    vault::Vault& vault();

private:
    struct Inside;
    explicit Diary(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ebbline::patient
