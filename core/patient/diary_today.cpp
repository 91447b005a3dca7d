// The day as the patient sees it: reminders, instructions in force, what still stands.

#include "core/patient/inside.h"

#include "core/aftercare/visit.h"
#include "core/bytes/reader.h"

#include <algorithm>

namespace ebbline::patient {

namespace {

constexpr const char* quietName = "quiet-hours";
constexpr std::chrono::hours dueWindow{24};       // how long an unanswered reminder stays in sight
constexpr std::chrono::hours entryCountsBefore{4};  // an entry shortly before answers its reminder
constexpr std::size_t nextShown = 6;

bool isAnswered(const ReminderView& view)
{
    return view.answer && *view.answer != records::ReminderAnswer::later;
}

/// Due, and asked for: for a day, but dressings for as long as nobody said that they are off.
bool isDueNow(const ReminderView& view, clock::Instant now)
{
    return !isAnswered(view) && dueAt(view) <= now
           && (now - dueAt(view) <= dueWindow || view.reminder.kind == aftercare::InstructionKind::dressingsOff);
}

/// Something that asks to be dealt with before anything else.
bool isLoud(const triage::Finding& finding)
{
    return finding.urgency <= recovery::Urgency::callNow;
}

/// An answer about the visit that was agreed before says nothing about the one that holds.
bool isOfEarlierVisit(const records::ReminderAnswered& answer, const aftercare::Reminder& reminder, const journal::CourseState& course)
{
    return reminder.kind == aftercare::InstructionKind::followUp && course.visits.size() > 1
           && answer.at.at < course.visits.back().entered.at;
}

/// Another day, or another hour where one was agreed; an hour that is added to a day moves nothing.
bool isMoved(const aftercare::Visit& before, const aftercare::Visit& now)
{
    return before.day != now.day || (before.minute && before.minute != now.minute);
}

/// The latest visit from which the one that holds was moved; empty where it is, after all, the one agreed at first.
std::optional<clock::Moment> formerVisit(const journal::CourseState& course)
{
    const aftercare::Visit now = aftercare::visitOf(course.opened->followUp);
    const auto differs = [&](const journal::Visit& visit) { return isMoved(aftercare::visitOf(visit.followUp), now); };
    if (course.visits.empty() || !differs(course.visits.front()))
        return std::nullopt;
    const auto found = std::find_if(course.visits.rbegin(), course.visits.rend(), differs);
    return found->followUp;
}

}  // namespace

clock::Instant dueAt(const ReminderView& view)
{
    return view.laterUntil && view.answer == records::ReminderAnswer::later ? *view.laterUntil : view.reminder.due;
}

aftercare::QuietHours Diary::Inside::quietHours() const
{
    aftercare::QuietHours quiet;
    if (const auto stored = vault.kept(quietName)) {
        bytes::Reader reader(*stored);
        const int from = reader.u16();
        const int to = reader.u16();
        const bool enabled = reader.u8() == 1;
        if (reader.atEnd() && from < 1440 && to < 1440)
            quiet = {from, to, enabled};
    }
    return quiet;
}

aftercare::QuietHours Diary::quietHours() const { return m_inside->quietHours(); }

Done Diary::setQuietHours(const aftercare::QuietHours& quiet)
{
    if (quiet.fromMinute < 0 || quiet.fromMinute > 1439 || quiet.toMinute < 0 || quiet.toMinute > 1439)
        return fail(Reason::outOfRange, "quiet hours: want minutes 0..1439");
    return m_inside->vault.keep(quietName, bytes::Writer()
                                               .u16(static_cast<std::uint16_t>(quiet.fromMinute))
                                               .u16(static_cast<std::uint16_t>(quiet.toMinute))
                                               .u8(quiet.enabled ? 1 : 0)
                                               .bytes());
}

std::vector<ReminderView> Diary::Inside::reminders() const
{
    std::vector<ReminderView> views;
    const journal::CourseState* current = course();
    if (!current)
        return views;
    const clock::Instant moment = clock.now();
    const records::CourseOpened& opened = *current->opened;
    for (aftercare::Reminder& reminder : aftercare::remindersOf(opened.protocol.carePlan, opened.treated,
                                                                aftercare::visitOf(opened.followUp), zone, quietHours())) {
        ReminderView view{std::move(reminder), {}, {}, {}, false};
        if (const auto found = current->reminders.find(view.reminder.key); found != current->reminders.end() && !isOfEarlierVisit(found->second, view.reminder, *current)) {
            view.answer = found->second.answer;
            view.laterUntil = found->second.laterUntil;
            view.answeredAt = found->second.at;
        }
        // Written is written, also after "later", and before or after quiet hours that moved its bell to another day.
        if (!isAnswered(view) && view.reminder.kind == aftercare::InstructionKind::diaryEntry) {
            const int rings = clock::dayOfRecovery(opened.treated, zone.moment(view.reminder.due));
            const bool written = std::any_of(current->entries.begin(), current->entries.end(), [&](const auto& entry) {
                const clock::Moment& at = entry.second.current().at;
                const int day = clock::dayOfRecovery(opened.treated, at);
                return at.at >= view.reminder.planned - entryCountsBefore && day >= view.reminder.day
                       && day <= std::max(view.reminder.day, rings);
            });
            if (written)
                view.answer = records::ReminderAnswer::done;
        }
        view.overdue = !isAnswered(view) && dueAt(view) <= moment;
        views.push_back(std::move(view));
    }
    std::stable_sort(views.begin(), views.end(),
                     [](const ReminderView& a, const ReminderView& b) { return dueAt(a) < dueAt(b); });
    return views;
}

bool Diary::wordsWait() const
{
    const vault::Vault& vault = m_inside->vault;
    const auto operations = vault.operations();
    return std::ranges::any_of(operations, [&](const journal::Operation& operation) {
        const auto kind = static_cast<records::Kind>(operation.kind);
        return operation.id.device == vault.device() && (kind == records::Kind::messageWritten || kind == records::Kind::reminderAnswered)
               && !vault.deliveredAt(operation.id);
    });
}

std::optional<sync::Outlook> Diary::outlook() const
{
    const auto way = link();
    if (!way || way->ended)
        return std::nullopt;
    const auto found = sync::outlookOf(m_inside->vault, way->mailbox);
    return found ? std::optional(*found) : std::nullopt;
}

Today Diary::today() const
{
    Today today;
    today.now = m_inside->now();
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return today;
    today.day = std::max(0, clock::dayOfRecovery(course->opened->treated, today.now));
    today.followUp = course->opened->followUp;
    if (today.now.day() <= today.followUp.day())
        today.formerVisit = formerVisit(*course);
    today.inForce = aftercare::inForce(
        aftercare::planFor(course->opened->protocol.carePlan, course->opened->treated, aftercare::visitOf(course->opened->followUp)),
        today.day);

    for (ReminderView& view : m_inside->reminders()) {
        if (isAnswered(view)) {
            if ((view.reminder.day == today.day && view.reminder.due <= today.now.at)
                || (view.answeredAt && view.answeredAt->day() == today.now.day()))
                today.answeredToday.push_back(std::move(view));
        } else if (dueAt(view) <= today.now.at) {
            if (isDueNow(view, today.now.at))
                today.dueNow.push_back(std::move(view));
        } else if (today.next.size() < nextShown) {
            today.next.push_back(std::move(view));
        }
    }

    const std::vector<triage::Finding> findings = m_inside->findings();
    for (const triage::Finding& finding : findings)
        if (!isConfirmed(finding) && (isLoud(finding) || !m_inside->raisedIn(finding).isNull()))
            (isLoud(finding) ? today.standing : today.toRead).push_back(finding);
    std::ranges::stable_sort(today.standing, {}, &triage::Finding::urgency);
    std::ranges::stable_sort(today.toRead, {}, &triage::Finding::urgency);

    const recovery::EntryId* last = nullptr;
    clock::Instant lastAt{};
    for (const auto& [id, history] : course->entries) {
        if (!last || history.current().at.at > lastAt) {
            last = &id;
            lastAt = history.current().at.at;
        }
        if (m_inside->stateOf(history).place == EntryState::Place::savedHere)
            ++today.waiting;
    }
    if (last)
        today.lastEntry = m_inside->viewOf(*last, findings);
    for (const records::MessageWritten& message : course->messages)
        if (!message.by.empty() && !course->reads.contains(message.message))
            ++today.unread;
    return today;
}

std::vector<aftercare::Reminder> Diary::upcoming(std::size_t atMost) const
{
    std::vector<aftercare::Reminder> reminders;
    const clock::Instant now = m_inside->clock.now();
    for (ReminderView& view : m_inside->reminders()) {
        if (isAnswered(view) || dueAt(view) <= now)
            continue;
        if (reminders.size() == atMost)
            break;
        view.reminder.due = dueAt(view);
        reminders.push_back(std::move(view.reminder));
    }
    return reminders;
}

std::vector<clock::Instant> Diary::bellMoments() const
{
    std::vector<clock::Instant> moments;
    const clock::Instant now = m_inside->clock.now();
    for (const ReminderView& view : m_inside->reminders())
        if (isDueNow(view, now) || (!isAnswered(view) && dueAt(view) > now))
            moments.push_back(dueAt(view));
    return moments;
}

Done Diary::answerReminder(const std::string& key, records::ReminderAnswer answer,
                           std::optional<clock::Instant> laterUntil)
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return fail(Reason::invalidState, "reminder: no clinic has been joined");
    const auto all = m_inside->reminders();
    if (std::none_of(all.begin(), all.end(), [&](const ReminderView& view) { return view.reminder.key == key; }))
        return fail(Reason::notFound, "reminder: the care plan has no such reminder");
    if (answer == records::ReminderAnswer::later && (!laterUntil || *laterUntil <= m_inside->clock.now()))
        return fail(Reason::outOfRange, "reminder: later needs a time that is still to come");
    const auto appended = m_inside->append(
        {records::ReminderAnswered{course->opened->course, key, answer, m_inside->now(), laterUntil}}, m_inside->now());
    return appended ? Done{} : Done(fail(appended.error()));
}

}  // namespace ebbline::patient
