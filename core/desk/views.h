#pragma once
/// \file
/// What a desk shows of courses, phones and desks: values, copied from what is on record unless they say otherwise.

#include "core/learning/past_course.h"
#include "core/pairing/statement.h"
#include "core/photos/alignment.h"
#include "core/photos/manifest.h"
#include "core/sync/messages.h"
#include "core/triage/queue.h"

namespace ebbline::desk {

struct CourseSummary {
    recovery::CourseId course;
    std::string patientName;
    std::string patientPhone;
    std::string patientLanguage;  ///< of the diary, BCP 47
    clock::Moment treated;
    int day = 0;
    bool linked = false;
    bool closed = false;
    std::optional<clock::Moment> lastEntry;
    std::size_t unopened = 0;   ///< entries whose newest version nobody opened yet
    std::size_t unread = 0;     ///< messages from the patient
};

/// A record of a treatment being corrected, and which one its writer had in sight.
struct TreatmentCorrection {
    recovery::Treatment treatment;  ///< with Treatment::corrected
    journal::OperationId seen;
    bool operator==(const TreatmentCorrection&) const = default;
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

/// Everything a band is learned from, copied, so that it may be learned beside the open vault.
struct BandLesson {
    Teaching teaching;
    triggers::Protocol protocol;  ///< whose budget and guards count
    std::string by;
    clock::Moment at;
};

/// Learns a version from whom it may, checks it, and calibrates the statistics' thresholds to it within
/// the budget of the lesson's protocol. A matter of seconds to minutes. \returns as bands::learnVersion().
Result<records::BandLearned> learnFrom(BandLesson lesson);

struct CourseView {
    CourseSummary summary;
    const journal::CourseState* state = nullptr;  ///< valid until the next change
    std::vector<triage::Finding> findings;        ///< newest first
    std::vector<records::FindingActed> beyondRole;  ///< acts on them that the role of whoever did them did not allow then
    triggers::Protocol protocol;
    double remindersDone = 0;   ///< share of reminders due so far that were answered "done", 0..1
    std::size_t remindersDue = 0;
};

/// One of the clinic's desks, as its newest roster says.
struct DeskView {
    envelope::DeviceId device;
    bool own = false;
    bool owner = false;  ///< holds the clinic's root key
};

/// A phone that was replaced may still say what it holds; then, or after so long, the hub is told to refuse it. One that is
/// lost is refused at once. Our own choice.
inline constexpr std::chrono::hours replacedPhoneMayAnswer{7 * 24};
/// A hub that was put back to an older copy learns every day anew whom it has to refuse. Our own choice.
inline constexpr std::chrono::hours tellHubAgainAfter{24};
/// How long a passphrase that was given once more allows one grave step. Our own choice.
inline constexpr std::chrono::minutes stepHolds{2};

/// A device that is over, and whether the hub has said that it refuses it.
struct EndedDevice {
    envelope::DeviceId device;
    bool phone = false;
    clock::Instant due;                    ///< from when on the hub is told, by this desk's clock
    std::optional<clock::Instant> toldAt;  ///< when the hub last took it; empty: it may still let the device in
    bool operator==(const EndedDevice&) const = default;
};

/// A phone that another one took the place of.
struct FormerPhone {
    envelope::DeviceId device;
    std::optional<sync::LeftBehind> left;  ///< what it says that never arrived; empty: it has not said, and nobody can know
};

/// A photograph of a course, as this desk holds it.
struct CoursePhoto {
    photos::PhotoId photo;
    photos::Pose pose = photos::Pose::front;
    recovery::EntryId entry;   ///< null if it stands by itself
    clock::Moment at;          ///< when it was taken, as the phone says; of the clinic's own, when the treatment was
    int day = 0;
    std::size_t chunks = 0;    ///< of how many it is made
    std::size_t held = 0;      ///< how many of them are here
    std::optional<photos::Eyes> eyes;  ///< as somebody at a desk marked them last
    bool refused = false;      ///< it came whole, and is none that may be shown
    std::optional<std::string> putInBy;  ///< of the clinic's own, taken right after the treatment: who put it in; else empty
    bool isHere() const { return held == chunks; }
};

}  // namespace ebbline::desk
