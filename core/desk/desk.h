#pragma once
/// \file
/// What a practitioner can do at the desk. No words, no widgets: app/desk gives it both.

#include "core/anaesthesia/dose.h"
#include "core/curves/curve.h"
#include "core/learning/past_course.h"
#include "core/pairing/handshake.h"
#include "core/sync/link_sync.h"
#include "core/triage/queue.h"

namespace ebbline::desk {

struct CourseSummary {
    recovery::CourseId course;
    std::string patientName;
    std::string patientPhone;
    clock::Moment treated;
    int day = 0;
    bool linked = false;
    bool closed = false;
    std::optional<clock::Moment> lastEntry;
    std::size_t unopened = 0;   ///< entries nobody opened yet
    std::size_t unread = 0;     ///< messages from the patient
};

/// Whom a new band would be learned from, and whom not.
struct Teaching {
    struct Course {
        bands::Taught taught;
        triggers::CourseInput input;
    };
    std::vector<Course> courses;  ///< newest treatment first, at most bands::mostCourses
    std::vector<std::pair<recovery::CourseId, bands::Refusal>> refused;  ///< with the first reason that holds
};

struct CourseView {
    CourseSummary summary;
    const journal::CourseState* state = nullptr;  ///< valid until the next change
    std::vector<triage::Finding> findings;        ///< newest first
    triggers::Protocol protocol;
    double remindersDone = 0;   ///< share of reminders due so far that were answered "done", 0..1
    std::size_t remindersDue = 0;
};

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

    Done describeClinic(const records::ClinicDescribed& clinic);
    std::optional<records::ClinicDescribed> clinic() const;

    Result<recovery::PatientId> registerPatient(const std::string& name, const std::string& phone,
                                                const std::string& language);
    /// \returns as recovery::check().
    Done recordTreatment(const recovery::Treatment& treatment);
    /// A treatment being written; kept durably at every change.
    std::optional<recovery::Treatment> draft() const;
    Done keepDraft(const recovery::Treatment& treatment);
    Done discardDraft();
    /// A fresh treatment for this moment.
    recovery::Treatment blankTreatment(const recovery::PatientId& patient) const;

    std::vector<triggers::Protocol> protocols() const;  ///< newest of each name, at least the default
    Done signProtocol(const triggers::Protocol& protocol);

    Teaching teaching() const;
    const bands::History& bandHistory() const;
    /// Learns a version from whom it may, checks it, calibrates the statistics' thresholds to it within
    /// the budget of the first protocol, and keeps it. Nothing comes into use by it.
    /// \returns the version; Reason::notEnough below bands::folds courses, Reason::alreadyExists if
    ///          nothing has changed since, Reason::invalidState if nobody is named at the desk.
    Result<std::string> learnBand();
    /// A version comes into use, or the clinic goes back to one: every protocol is signed anew with its
    /// band and thresholds, in the same transaction. Courses that run keep the protocol they have.
    /// \returns as bands::History::allows(); Reason::notEnough without a reason.
    Done useBand(const std::string& version, const std::string& reason);
    Done returnToBand(const std::string& version, const std::string& reason);

    /// Every treatment on record, for core/learning; without a follow-up its outcome is not known.
    std::vector<learning::PastCourse> pastCourses() const;

    /// Names the hub that offers point at.
    Done setHub(const std::string& hostAndPort, bool tls, const bytes::Array<32>& keyHash);
    struct Hub {
        std::string host;  ///< host[:port]
        bool tls = true;
        bytes::Array<32> keyHash{};
        std::string address() const { return (tls ? "https://" : "http://") + host; }
    };
    std::optional<Hub> hub() const;

    std::vector<CourseSummary> courses() const;  ///< newest treatment first
    /// \returns Reason::notFound.
    Result<CourseView> course(const recovery::CourseId& course) const;
    std::vector<records::PatientRegistered> patients() const;  ///< by name
    std::vector<triage::Row> queue() const;
    curves::Curve curve(const recovery::CourseId& course, const recovery::Stream& stream) const;

    Done act(const recovery::CourseId& course, const std::string& finding, records::Act act,
             records::Outcome outcome = records::Outcome::none, const std::string& note = {});
    /// Marks all entries of a course as opened by the person at the desk; tells the phone.
    Done openEntries(const recovery::CourseId& course);
    Done writeMessage(const recovery::CourseId& course, const std::string& text);
    Done recordFollowUp(const records::FollowUpRecorded& followUp);

    /// The course goes to the phone once it is linked.
    Done openCourse(const recovery::CourseId& course, const triggers::Protocol& protocol,
                    const clock::Moment& followUp);

    void syncNow(sync::Courier& courier, std::function<void(sync::Report)> done);

    clock::Moment now() const;
    vault::Vault& vault();

private:
    struct Inside;
    Done changeBand(bands::Choice choice);
    explicit Desk(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

/// Pairing as the desk lives it: one offer for one course.
class Inviting {
public:
    enum class Step : std::uint8_t { idle, publishing, shown, compare, linking, linked, usedTwice, expired, failed };

    Inviting(Desk& desk, const clock::Clock& clock, const recovery::CourseId& course,
             const triggers::Protocol& protocol, const clock::Moment& followUp);

    /// Makes the offer and gives it to the hub.
    void start(sync::Courier& courier, std::function<void()> changed);
    /// Asks the hub once.
    void poll(sync::Courier& courier, std::function<void()> changed);
    /// Both read the same number: sign the link and open the course.
    void confirm(sync::Courier& courier, std::function<void()> changed);
    void refuse();

    Step step() const { return m_step; }
    std::string qrText() const;
    std::string typedCode() const;
    std::string confirmationNumber() const;  ///< from compare on
    std::int64_t secondsLeft() const;
    const std::optional<Error>& problem() const { return m_problem; }

private:
    void failWith(const Error& error);
    void publish(std::function<void()> changed);
    void takeEnrolment(const bytes::Bytes& body, std::function<void()> changed);
    void sendLink(std::function<void()> changed);
    Done linkHere();

    Desk& m_desk;
    const clock::Clock& m_clock;
    Step m_step = Step::idle;
    std::optional<Error> m_problem;
    struct Inside;
    std::shared_ptr<Inside> m_inside;
};

}  // namespace ebbline::desk
