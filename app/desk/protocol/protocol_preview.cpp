// What the patient would see of a protocol in the making.

#include "app/desk/protocol/protocol_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/protocol_board.h"

#include <QLocale>
#include <QTime>

#include <algorithm>
#include <utility>

namespace ebbline::deskapp {

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
            auto line = QLocale().toString(QTime(minute / 60, minute % 60), QStringLiteral("HH:mm")) + QStringLiteral("  ") + instructionName(instruction.kind);
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

}  // namespace ebbline::deskapp
