// A day of the care plan as the patient sees it, and what is wrong with the plan.

#include "app/desk/protocol/protocol_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/protocol_board.h"
#include "app/desk/model/words.h"

#include <QLocale>
#include <QTime>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

QString clockTime(int minute)
{
    return QLocale().toString(QTime(0, 0).addSecs(minute * 60), QStringLiteral("HH:mm"));
}

}  // namespace

void ProtocolEditor::setPreviewDay(int day)
{
    m_previewDay = std::clamp(day, 0, 60);
    Q_EMIT changed();
}

QString ProtocolEditor::previewTitle() const
{
    return tr("What the patient sees on day %1").arg(charts::digits(m_previewDay));
}

QStringList ProtocolEditor::previewDue() const
{
    std::vector<std::pair<int, QString>> due;
    for (const auto& instruction : aftercare::inForce(m_draft.plan, m_previewDay)) {
        if ((m_previewDay - instruction.firstDay) % instruction.everyDays != 0) {
            continue;
        }
        for (const int minute : instruction.minutesOfDay) {
            auto line = clockTime(minute) + QStringLiteral("  ") + instructionName(instruction.kind);
            if (!instruction.clinicText.empty()) {
                line += QStringLiteral(": ") + QString::fromStdString(instruction.clinicText);
            }
            due.emplace_back(minute, line);
        }
    }
    std::stable_sort(due.begin(), due.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    QStringList lines;
    for (const auto& [minute, line] : due) {
        lines << line;
    }
    return lines;
}

QStringList ProtocolEditor::previewRules() const
{
    QStringList lines;
    for (const auto& instruction : aftercare::inForce(m_draft.plan, m_previewDay)) {
        if (instruction.minutesOfDay.empty()) {
            auto line = instructionName(instruction.kind);
            if (!instruction.clinicText.empty()) {
                line += QStringLiteral(": ") + QString::fromStdString(instruction.clinicText);
            }
            lines << line;
        }
    }
    return lines;
}

QString ProtocolEditor::problem() const
{
    const auto checked = aftercare::check(m_draft.plan);
    if (checked) {
        const bool wordless = std::any_of(m_draft.plan.instructions.begin(), m_draft.plan.instructions.end(), [](const auto& one) {
            return one.kind == aftercare::InstructionKind::custom && one.clinicText.empty();
        });
        return wordless ? tr("An instruction of the clinic's own needs its words.") : QString();
    }
    return checked.error().reason == Reason::tooLarge ? tr("Too much: at most 40 instructions, 8 times a day and 400 characters of text.") : errorText(checked.error());
}

}  // namespace ebbline::deskapp
