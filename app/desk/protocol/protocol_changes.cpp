#include "app/desk/protocol/protocol_changes.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/protocol_board.h"
#include "app/desk/protocol/protocol_editor.h"
#include "app/desk/protocol/rule_fields.h"

#include <algorithm>

namespace ebbline::deskapp {

QStringList planChanges(const aftercare::CarePlan& wasPlan, const aftercare::CarePlan& nowPlan)
{
    QStringList lines;
    const auto& was = wasPlan.instructions;
    const auto& now = nowPlan.instructions;
    const auto byId = [](const auto& all, const std::string& id) {
        return std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id; });
    };
    for (const auto& instruction : now) {
        const auto former = byId(was, instruction.id);
        const auto line = lineOf(instruction);
        if (former == was.end()) {
            lines << ProtocolEditor::tr("New: %1, %2", "instruction, when").arg(line.what, line.until);
        } else if (!(*former == instruction)) {
            const auto old = lineOf(*former);
            lines << ProtocolEditor::tr("%1: %2, %3 (was %4, %5)", "instruction, when, how, when, how").arg(line.what, line.until, line.detail, old.until, old.detail);
        }
    }
    for (const auto& instruction : was) {
        if (byId(now, instruction.id) == now.end()) {
            lines << ProtocolEditor::tr("Taken out: %1").arg(instructionName(instruction.kind));
        }
    }
    if (nowPlan.followUpDay != wasPlan.followUpDay) {
        lines << ProtocolEditor::tr("Follow-up on day %1 (was %2)").arg(charts::digits(nowPlan.followUpDay), charts::digits(wasPlan.followUpDay));
    }
    return lines;
}

QStringList ruleChanges(const triggers::Thresholds& was, const triggers::Thresholds& now)
{
    QStringList lines;
    triggers::Thresholds rest = was;  // with the numbers that have a line of their own as they are now
    for (const auto& field : ruleFields()) {
        const int before = was.*field.member;
        const int after = now.*field.member;
        rest.*field.member = after;
        if (before != after) {
            lines << ProtocolEditor::tr("%1, %2: %3 (was %4)", "rule, what, number, number").arg(ruleTitle(field), ruleWhat(field), charts::digits(after), charts::digits(before));
        }
    }
    for (const auto& row : rulesBeside(rest, now)) {
        lines << ProtocolEditor::tr("%1: %2 (was %3)", "rule, threshold and details, the same before").arg(row[0], row[2], row[1]);
    }
    return lines;
}

QList<QStringList> rulesBeside(const triggers::Thresholds& was, const triggers::Thresholds& now)
{
    QList<QStringList> rows;
    const auto before = rulesOf(was);
    const auto after = rulesOf(now);
    const auto said = [](const ProtocolLine& line) { return line.until + QStringLiteral(", ") + line.detail; };
    for (qsizetype i = 0; i < std::min(before.size(), after.size()); ++i) {
        if (!(before[i] == after[i])) {
            rows.append(QStringList{after[i].what, said(before[i]), said(after[i])});
        }
    }
    return rows;
}

}  // namespace ebbline::deskapp
