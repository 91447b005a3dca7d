#include "app/desk/queue/call_board.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/call_script.h"

#include <algorithm>

namespace ebbline::deskapp {

namespace {

QString placeOf(const recovery::CourseId& course)
{
    return QStringLiteral("call/") + keyOf(course);
}

}  // namespace

CallBoard::CallBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &CallBoard::leave);
}

void CallBoard::start(const QString& course)
{
    const auto id = courseFromKey(course);
    const auto view = m_workplace.isOpen() ? m_workplace.desk().course(id) : fail(Reason::invalidState, "desk: locked");
    if (!view) {
        return;
    }
    auto open = view->findings;
    std::erase_if(open, [](const auto& finding) { return !finding.open; });
    triage::sortByUrgency(open);
    m_course = id;
    m_title = tr("Call %1", "name").arg(QString::fromStdString(view->summary.patientName));
    m_phone = view->summary.patientPhone.empty() ? tr("No number on record") : leftToRight(view->summary.patientPhone);
    const auto spoken = languageName(QString::fromStdString(view->summary.patientLanguage));
    m_language = spoken.isEmpty() ? QString() : tr("Her diary is in %1.").arg(spoken);
    m_linked = view->summary.linked;
    m_findings.clear();
    m_reasons.clear();
    m_others.clear();
    for (const auto& finding : open) {
        m_findings.push_back(finding.key);
        m_reasons << findingTitle(finding) + QStringLiteral(". ") + findingReason(finding);
        for (const auto& act : finding.acts) {
            if (act.act == records::Act::taken && act.by != m_workplace.desk().person()) {
                m_others = tr("%1 took it, %2. Ask before you call twice.").arg(QString::fromStdString(act.by), whenText(act.at, m_workplace.now()));
            }
        }
    }
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

void CallBoard::leave()
{
    m_course = {};
    m_title.clear();
    m_phone.clear();
    m_language.clear();
    m_reasons.clear();
    m_script.clear();
    m_others.clear();
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

void CallBoard::reached()
{
    act(m_findings, records::Act::called, records::Outcome::none, tr("Called: %1"));
}

void CallBoard::notReached()
{
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
