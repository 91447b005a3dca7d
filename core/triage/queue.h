#pragma once
/// \file
/// The order in which the clinic should look: warnings and trigger findings of all courses as
/// one list, by urgency, then by how long they wait.

#include "core/journal/state.h"
#include "core/triggers/judge.h"
#include "core/warnings/warnings.h"

#include <set>
#include <span>
#include <string_view>

namespace ebbline::triage {

/// A warning or a trigger's finding, under one name.
struct Finding {
    std::string key;        ///< of this finding and of no worse one: its subject, its urgency, and what was said or when (docs/formats/operations.md)
    std::string subject;    ///< "w/fever/none/<entry>" or "t/rebound/pain/L/<day>"; acts of older programs name it
    bool firstOfSubject = true;  ///< nothing milder, and nothing earlier, was raised under the subject
    recovery::Urgency urgency;
    std::variant<warnings::Finding, triggers::Finding> what;
    std::optional<recovery::EntryId> entry;
    clock::Moment raisedAt;
    int day = 0;            ///< day of recovery
    std::vector<records::FindingActed> acts;  ///< what people did about this finding and nobody took back, oldest first
    bool open = true;       ///< closed neither by an act nor by a follow-up that had it in front of it
    bool openedByFollowUp = false;       ///< there is a follow-up, and somebody had opened what raised this by then
    /// Of a warning that a correction made worse, or of a trigger's finding that was counted by another day: what people did
    /// about it as it stood before.
    std::vector<records::FindingActed> actsBefore = {};
    std::set<std::string> keysBefore = {};  ///< of a trigger's finding: its keys by days that were corrected since
    bool changedSince = false;  ///< raised by what stood once: as entries and treatment stand now it would not be
    bool recounted = false;     ///< of those: by a day of the treatment, or scores right after it, that were corrected since
};

/// All findings of a course, newest first. Every entry that has arrived counts, as it was written, also
/// one that lies after `now` or before the treatment: clocks differ, and no warning waits for one. `now`
/// tells how long somebody is silent.
/// A correction, or an entry about an earlier moment, takes nothing back: what was raised as the entries stood
/// before stays, marked as changed since, until an act closes it. So does what was raised by a day of the treatment, or scores right
/// after it, that the clinic corrected since. A silence alone goes: it turned out that there was none.
std::vector<Finding> findingsOf(const journal::CourseState& course, const clock::Moment& now);

/// Whether a record that holds `key` names this finding. Before 0051 the value of a fever stood in the key as the system's
/// locale wrote it, "38,2" under a decimal comma: such a key names the same finding.
bool isKeyOf(std::string_view key, const Finding& finding);

/// Whether a key names a silence: the one finding that goes by itself, once what she wrote arrives.
bool namesSilence(std::string_view key);

struct Row {
    recovery::CourseId course;
    recovery::Urgency urgency;       ///< of the most urgent open finding
    /// Open ones, most urgent first; of the same urgency warning rules before triggers and silence last, then
    /// the newest first.
    std::vector<Finding> findings;
    clock::Moment since;             ///< the earliest raising among the most urgent
    bool silent = false;             ///< only silence speaks
    bool heardSince = false;         ///< she wrote something after `since`
    /// Who took the most urgent ones last; empty while one of them was not taken. What was taken before
    /// something more urgent came says nothing of that.
    std::optional<std::string> takenBy;
    clock::Moment takenAt;           ///< if somebody has
    bool touched = false;            ///< of each of the most urgent, somebody took it, reached her by a call or brought the visit forward
    clock::Moment untouchedSince;    ///< the earliest raising among the most urgent that nobody touched; unless touched
    clock::Instant overdueAt{};      ///< when the first of the most urgent waits too long: with nobody on it, or with an act that covers it no more
    /// The newest act on the most urgent ones (newestAct()); empty while there is none on one of them.
    std::optional<records::FindingActed> lastAct;
    int day = 0;
};

/// How long a row may wait with nobody on it before the desk says so aloud: our choice, no source. It
/// changes no order and hides nothing.
constexpr std::chrono::minutes untouchedFor(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency: return std::chrono::minutes(5);
    case recovery::Urgency::callNow: return std::chrono::hours(1);
    case recovery::Urgency::nextWorkingDay: return std::chrono::hours(24);
    case recovery::Urgency::atReview: break;
    }
    return std::chrono::hours(24 * 21);
}

/// For how long a call that reached her covers a finding that is not closed: our choice, no source. Longer than a taking,
/// which only says that somebody means to call; the third is over a weekend. What is raised anew is another finding.
constexpr std::chrono::minutes spokenFor(recovery::Urgency urgency)
{
    switch (urgency) {
    case recovery::Urgency::emergency: return std::chrono::hours(1);
    case recovery::Urgency::callNow: return std::chrono::hours(24);
    case recovery::Urgency::nextWorkingDay: return std::chrono::hours(72);
    case recovery::Urgency::atReview: break;
    }
    return untouchedFor(recovery::Urgency::atReview);
}

/// The newest of what says that somebody is or was at it: taken, called, whether or not she was reached, and a visit brought
/// forward. Empty: nobody did any of that.
std::optional<records::FindingActed> newestAct(std::span<const Finding> findings);

/// Something of the row's urgency waits too long: untouched for untouchedFor() from its own raising, or with no act that still
/// covers it (docs/decisions/0048-an-act-covers-for-a-while.md).
bool isOverdue(const Row& row, const clock::Moment& now);

/// From then on a missed visit that nobody touched is one of long ago: our choice, no source.
inline constexpr std::chrono::days visitOfLongAgo{28};

/// Nothing is open but that a visit was missed, longer ago than that, and nobody touched it: what a clinic that never
/// wrote its follow-ups down has many of. A page may fold such rows into one line; it says how many. A patient who
/// fell silent before her visit, or of whom anything else is open, is none of them.
bool isVisitOfLongAgo(const Row& row, const clock::Moment& now);

/// In the order of a row's findings.
void sortByUrgency(std::vector<Finding>& findings);

/// What the queue says of courses that had their follow-up: from then on it does not depend on the hour, only on what
/// arrives. It is kept until something does: of a clinic's thousands nearly all had theirs, and judging each anew would
/// hold the desk up after every act. For the courses of one journal.
class SettledCourses {
public:
    /// The course's row, or none; judged now unless it is settled and nothing arrived since.
    std::optional<Row> rowOf(const recovery::CourseId& id, const journal::CourseState& course, const clock::Moment& now);

private:
    struct Known {
        std::uint64_t revision;
        std::optional<Row> row;
    };
    std::map<recovery::CourseId, Known> m_known;
};

/// Rows with open findings: urgency, then the longest wait; silent courses after the others of
/// the same urgency.
std::vector<Row> queueOf(const journal::State& state, const clock::Moment& now, SettledCourses& settled);
std::vector<Row> queueOf(const journal::State& state, const clock::Moment& now);

/// One English sentence for a finding, for logs, the tool and the follow-up sheet's source text.
std::string explain(const Finding& finding);

}  // namespace ebbline::triage
