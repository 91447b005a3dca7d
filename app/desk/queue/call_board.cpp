#include "app/desk/queue/call_board.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"
#include "app/desk/queue/call_script.h"

#include <algorithm>

namespace ebbline::deskapp {

namespace {

QString placeOf(const recovery::CourseId& course)
{
    return QStringLiteral("call/") + keyOf(course);
}

/// The most urgent first.
std::vector<triage::Finding> openOf(const desk::CourseView& view)
{
    auto open = view.findings;
    std::erase_if(open, [](const auto& finding) { return !finding.open; });
    triage::sortByUrgency(open);
    return open;
}

}  // namespace

CallBoard::CallBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &CallBoard::leave);
    // While this call is being made a colleague may note one, or correct the number, and an emergency may arrive.
    connect(&workplace, &Workplace::changed, this, [this] {
        if (!isShown() || !m_workplace.isOpen()) {
            return;
        }
        tellOthers();
        if (const auto summary = m_workplace.desk().summary(m_course)) {
            sayWho(*summary);
        }
        Q_EMIT changed();
    });
}

void CallBoard::sayWho(const desk::CourseSummary& summary)
{
    m_title = tr("Call %1", "name").arg(QString::fromStdString(summary.patientName));
    m_phone = summary.patientPhone.empty() ? tr("No number on record") : leftToRight(summary.patientPhone);
    const auto spoken = languageName(QString::fromStdString(summary.patientLanguage));
    m_language = spoken.isEmpty() ? QString() : tr("Her diary is in %1.").arg(spoken);
}

void CallBoard::start(const QString& course, const QString& only)
{
    const auto id = courseFromKey(course);
    const auto view = m_workplace.isOpen() ? m_workplace.desk().course(id) : fail(Reason::invalidState, "desk: locked");
    if (!view) {
        return;
    }
    const auto open = openOf(*view);
    const auto about = only.toStdString();
    if (!about.empty() && std::ranges::find(open, about, &triage::Finding::key) == open.end()) {
        leave();
        return;
    }
    m_course = id;
    sayWho(view->summary);
    m_linked = view->summary.linked;
    m_findings.clear();
    m_reasons.clear();
    m_known.clear();
    for (const auto& each : open) {
        m_known.insert(each.key);
        if (about.empty() || each.key == about) {
            m_findings.push_back(each.key);
            m_reasons << findingTitle(each) + QStringLiteral(". ") + findingReason(each);
        }
    }
    tellOthers();
    m_script = callScript(open);
    forgetVisit();
    if (m_linked && view->state->opened) {
        const auto& opened = *view->state->opened;
        auto latest = opened.followUp.day();
        for (const auto& visit : view->state->visits) {
            latest = std::max(latest, visit.followUp.day());
        }
        m_opened = {opened.treated, opened.followUp, latest};
    }
    m_note = begunWords(m_workplace, placeOf(id));
    Q_EMIT noteChanged();
    Q_EMIT changed();
}

/// One person's act stands for all before it: who took over is asked no more about whom she took it from.
void CallBoard::tellOthers()
{
    m_others.clear();
    m_arrived.clear();
    const auto view = m_workplace.desk().course(m_course);
    if (!view) {
        return;
    }
    const auto open = openOf(*view);
    QStringList arrived;
    for (const auto& each : open) {
        if (!m_known.contains(each.key)) {
            arrived << findingTitle(each);
        }
    }
    arrived.removeDuplicates();
    if (!arrived.isEmpty()) {
        m_arrived = tr("Since you opened this, something new came: %1", "titles of findings").arg(arrived.join(QStringLiteral(" · ")));
    }
    if (const auto last = triage::newestAct(open); last && last->by != m_workplace.desk().person()) {
        m_others = tr("%1. Ask before you call twice.", "what somebody else did last").arg(lastActText(*last, m_workplace.now()));
    }
}

void CallBoard::leave()
{
    m_course = {};
    m_title.clear();
    m_phone.clear();
    m_language.clear();
    m_reasons.clear();
    m_script.clear();
    m_others.clear();
    m_arrived.clear();
    m_known.clear();
    m_findings.clear();
    m_note.clear();
    forgetVisit();
    Q_EMIT noteChanged();
    Q_EMIT changed();
}

void CallBoard::setNote(const QString& note)
{
    if (note != m_note) {
        m_note = note;
        if (isShown()) {
            keepBegun(m_workplace, placeOf(m_course), note);
        }
        Q_EMIT noteChanged();
    }
}

void CallBoard::act(const std::vector<std::string>& findings, records::Act act, records::Outcome outcome, const QString& did)
{
    if (!isShown() || !m_workplace.isOpen()) {
        return;
    }
    settleNoted(m_workplace.desk().actOn(m_course, findings, act, outcome, m_note.trimmed().toStdString()), did);
}

void CallBoard::settleNoted(const Result<std::vector<journal::OperationId>>& done, const QString& did)
{
    const auto course = m_course;
    if (m_workplace.settle(done ? Done{} : Done(fail(done.error())))) {
        keepBegun(m_workplace, placeOf(course), {});
        leave();
        Q_EMIT noted(course, *done, did.arg(m_workplace.patientName(course)));
    }
}

void CallBoard::note(records::Contact contact, const QString& did)
{
    if (isShown() && m_workplace.isOpen()) {
        settleNoted(m_workplace.desk().noteCall(m_course, contact, m_note.trimmed().toStdString()), did);
    }
}

void CallBoard::sheRang()
{
    if (m_findings.empty()) {
        note(records::Contact::sheRang, tr("She called us: %1"));
    }
}

void CallBoard::reached()
{
    if (m_findings.empty()) {
        note(records::Contact::spoken, tr("Called: %1"));
        return;
    }
    act(m_findings, records::Act::called, records::Outcome::none, tr("Called: %1"));
}

void CallBoard::notReached()
{
    if (m_findings.empty()) {
        note(records::Contact::notReached, tr("Not reached: %1"));
        return;
    }
    act(m_findings, records::Act::called, records::Outcome::notReached, tr("Not reached: %1"));
}

void CallBoard::sendAsMessage()
{
    const auto text = m_note.trimmed();
    if (isShown() && m_linked && !text.isEmpty() && m_workplace.settle(m_workplace.desk().writeMessage(m_course, text.toStdString()))) {
        keepBegun(m_workplace, placeOf(m_course), {});
        leave();
    }
}

}  // namespace ebbline::deskapp
