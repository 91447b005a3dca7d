// Courses at the desk: the queue, one course, and what people do about findings.

#include "core/desk/inside.h"

#include "core/aftercare/visit.h"
#include "core/exchange/fhir_bundle.h"
#include "core/triage/course_curve.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace ebbline::desk {

const journal::CourseState* Desk::Inside::course(const recovery::CourseId& id) const
{
    const auto& courses = vault.state().courses;
    const auto found = courses.find(id);
    return found == courses.end() ? nullptr : &found->second;
}

std::optional<envelope::MailboxId> Desk::Inside::mailboxOf(const recovery::CourseId& id) const
{
    const journal::CourseState* found = course(id);
    return found && found->link ? std::optional(found->link->mailbox) : std::nullopt;
}

CourseSummary Desk::Inside::summaryOf(const recovery::CourseId& id, const journal::CourseState& course) const
{
    CourseSummary summary;
    summary.course = id;
    summary.treated = triage::treatedAt(course);
    summary.day = std::max(0, clock::dayOfRecovery(summary.treated, now()));
    summary.linked = course.link.has_value();
    summary.closed = course.followUp.has_value();
    if (course.treatment) {
        const auto& patients = vault.state().patients;
        if (const auto patient = patients.find(course.treatment->treatment.patient); patient != patients.end()) {
            summary.patientName = patient->second.name;
            summary.patientPhone = patient->second.phone;
            summary.patientLanguage = patient->second.language;
        }
    }
    for (const auto& [entry, history] : course.entries) {
        const clock::Moment& at = history.current().at;
        if (!summary.lastEntry || at.at > summary.lastEntry->at)
            summary.lastEntry = at;
    }
    summary.unopened = course.unopened().size();
    for (const records::MessageWritten& message : course.messages)
        summary.unread += message.by.empty() && !course.reads.contains(message.message) ? 1 : 0;
    return summary;
}

std::vector<CourseSummary> Desk::courses() const
{
    std::vector<CourseSummary> summaries;
    for (const auto& [id, course] : m_inside->vault.state().courses)
        summaries.push_back(m_inside->summaryOf(id, course));
    std::stable_sort(summaries.begin(), summaries.end(),
                     [](const CourseSummary& a, const CourseSummary& b) { return a.treated.at > b.treated.at; });
    return summaries;
}

std::optional<CourseSummary> Desk::summary(const recovery::CourseId& id) const
{
    const journal::CourseState* found = m_inside->course(id);
    return found ? std::optional(m_inside->summaryOf(id, *found)) : std::nullopt;
}

Result<CourseView> Desk::course(const recovery::CourseId& id) const
{
    const journal::CourseState* found = m_inside->course(id);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    CourseView view;
    view.summary = m_inside->summaryOf(id, *found);
    view.state = found;
    view.findings = triage::findingsOf(*found, m_inside->now());
    std::ranges::copy_if(found->acts, std::back_inserter(view.beyondRole),
                         [&](const records::FindingActed& act) { return !m_inside->vault.state().couldDo(*found, act); });
    view.protocol = found->opened ? found->opened->protocol : triggers::defaultProtocol();

    // Reminders that ring, due so far, in the patient's own zone as her phone last wrote it.
    std::optional<aftercare::Zone> zone;
    if (auto patients = aftercare::Zone::find(view.summary.treated.zone))
        zone = *patients;
    std::size_t done = 0;
    const clock::Moment& treated = view.summary.treated;
    const aftercare::Zone& where = zone ? *zone : m_inside->zone;
    const auto& plan = view.protocol.carePlan;
    for (const aftercare::Reminder& reminder :
         found->opened ? aftercare::remindersOf(plan, treated, aftercare::visitOf(found->opened->followUp), where, {})
                       : aftercare::remindersOf(plan, treated, where, {})) {
        if (reminder.due > m_inside->clock.now())
            break;
        if (reminder.kind == aftercare::InstructionKind::diaryEntry)
            continue;  // entries speak for themselves
        ++view.remindersDue;
        const auto answer = found->reminders.find(reminder.key);
        done += answer != found->reminders.end() && answer->second.answer == records::ReminderAnswer::done ? 1 : 0;
    }
    if (view.remindersDue > 0)
        view.remindersDone = static_cast<double>(done) / static_cast<double>(view.remindersDue);
    return view;
}

std::vector<triage::Row> Desk::queue() const
{
    return triage::queueOf(m_inside->vault.state(), m_inside->now(), m_inside->settled);
}

Result<std::string> Desk::bundle(const recovery::CourseId& id, const std::string& program) const
{
    const journal::CourseState* found = m_inside->course(id);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    auto record = exchange::recordOf(id, *found);
    if (!record)
        return fail(record.error());
    exchange::describePictures(*record, [&](const photos::PhotoId& one) { return photo(id, one); });
    // By the patient's clock, as her treatment names it; her own quiet hours stay on her phone.
    const auto patients = aftercare::Zone::find(record->treated.zone);
    const clock::Moment now = m_inside->now();
    return exchange::writeBundle(*record, triage::findingsOf(*found, now),
                                 {.patientName = "", .written = now, .program = program,
                                  .reminders = exchange::remindersOf(*found, patients ? *patients : m_inside->zone, {})});
}

curves::Curve Desk::curve(const recovery::CourseId& id, const recovery::Stream& stream) const
{
    const journal::CourseState* found = m_inside->course(id);
    return triage::courseCurve(found ? *found : journal::CourseState{}, stream);
}

std::optional<curves::Asymmetry> Desk::asymmetry(const recovery::CourseId& id, recovery::Symptom symptom) const
{
    const journal::CourseState* found = m_inside->course(id);
    return found ? triage::courseAsymmetry(*found, symptom) : std::nullopt;
}

Done Desk::openEntries(const recovery::CourseId& id)
{
    const journal::CourseState* found = m_inside->course(id);
    if (!found)
        return fail(Reason::notFound, "course: unknown");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "opening: nobody is named at the desk");
    std::vector<records::Body> bodies;
    if (auto versions = found->unopened(); !versions.empty())
        bodies.push_back(records::VersionsOpened{id, std::move(versions), m_inside->person, m_inside->now()});
    for (const records::MessageWritten& message : found->messages)
        if (message.by.empty() && !found->reads.contains(message.message))
            bodies.push_back(records::MessageRead{id, message.message, m_inside->now()});
    if (bodies.empty())
        return {};
    const auto appended = m_inside->vault.append(bodies, m_inside->now(), m_inside->mailboxOf(id));
    return appended ? Done{} : Done(fail(appended.error()));
}

Done Desk::writeMessage(const recovery::CourseId& id, const std::string& text)
{
    const auto mailbox = m_inside->mailboxOf(id);
    if (!mailbox)
        return fail(Reason::invalidState, "message: no phone is linked to this course");
    if (text.empty())
        return fail(Reason::notEnough, "message: it is empty");
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "message: nobody is named at the desk");
    return m_inside->append(records::MessageWritten{id, records::MessageId{crypto::randomArray<16>()}, text,
                                                    m_inside->person, m_inside->now()},
                            mailbox);
}

Done Desk::openCourse(const recovery::CourseId& id, const triggers::Protocol& protocol, const clock::Moment& followUp)
{
    const journal::CourseState* found = m_inside->course(id);
    if (!found || !found->treatment)
        return fail(Reason::notFound, "course: no treatment is recorded");
    if (!found->link)
        return fail(Reason::invalidState, "course: no phone is linked");
    const auto described = clinic();
    if (!described)
        return fail(Reason::invalidState, "clinic: whom a patient may call is not set");
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    const recovery::Treatment& treatment = found->treatment->treatment;
    if (const Done when = aftercare::check(aftercare::visitOf(followUp), treatment.at); !when)
        return when;
    const auto signature = m_inside->vault.clinicRoot().sign(records::encodeProtocol(protocol));
    return m_inside->append(records::CourseOpened{id, treatment.at, m_inside->person, described->contacts, followUp,
                                                  treatment.baseline, protocol,
                                                  bytes::Bytes(signature.begin(), signature.end())},
                            found->link->mailbox);
}

}  // namespace ebbline::desk
