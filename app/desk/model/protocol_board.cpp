#include "app/desk/model/protocol_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/words.h"
#include "core/rehearsal/grounds.h"
#include "core/triggers/stuck.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTime>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Protocols {
    Q_DECLARE_TR_FUNCTIONS(Protocols)
};

QString two(double value)
{
    return QLocale().toString(value, 'f', 2);
}

}  // namespace

QString instructionName(aftercare::InstructionKind kind)
{
    using aftercare::InstructionKind;
    switch (kind) {
    case InstructionKind::dressingsOff:
        return Protocols::tr("Take the dressings off");
    case InstructionKind::cleanEntryPoints:
        return Protocols::tr("Keep the entry points clean and dry");
    case InstructionKind::sleepOnBack:
        return Protocols::tr("Sleep on the back, head raised");
    case InstructionKind::spareFace:
        return Protocols::tr("Spare the face: small bites, no wide yawns, little talking");
    case InstructionKind::coldPack:
        return Protocols::tr("Cold pack with a cloth between");
    case InstructionKind::noMakeUp:
        return Protocols::tr("No make-up");
    case InstructionKind::noMassage:
        return Protocols::tr("No massage of the face");
    case InstructionKind::noDentist:
        return Protocols::tr("No dental work");
    case InstructionKind::noExercise:
        return Protocols::tr("No hard exercise");
    case InstructionKind::noHeat:
        return Protocols::tr("No sauna, hammam, hot bath or pool");
    case InstructionKind::noSun:
        return Protocols::tr("No strong sun");
    case InstructionKind::noAlcohol:
        return Protocols::tr("No alcohol");
    case InstructionKind::noSmoking:
        return Protocols::tr("No smoking");
    case InstructionKind::noShaving:
        return Protocols::tr("No shaving");
    case InstructionKind::diaryEntry:
        return Protocols::tr("Write down how it is");
    case InstructionKind::followUp:
        return Protocols::tr("Come to the follow-up");
    case InstructionKind::custom:
        return Protocols::tr("The clinic's own instruction");
    }
    return {};
}

ProtocolLine lineOf(const aftercare::Instruction& instruction)
{
    ProtocolLine line;
    line.what = instructionName(instruction.kind);
    line.until = instruction.firstDay == instruction.lastDay
                     ? Protocols::tr("on day %1").arg(charts::digits(instruction.firstDay))
                     : Protocols::tr("day %1 to day %2").arg(charts::digits(instruction.firstDay), charts::digits(instruction.lastDay));
    QStringList details;
    if (instruction.minutesOfDay.empty()) {
        details << Protocols::tr("a rule to keep, no reminder");
    } else {
        QStringList times;
        for (const int minute : instruction.minutesOfDay) {
            times << QLocale().toString(QTime(0, 0).addSecs(minute * 60), QLocale::ShortFormat);
        }
        const auto listed = QLocale().createSeparatedList(times);
        details << (instruction.everyDays == 1
                        ? Protocols::tr("reminds at %1").arg(listed)
                        : Protocols::tr("reminds every %Ln day(s) at %1", nullptr, instruction.everyDays).arg(listed));
    }
    if (!instruction.clinicText.empty()) {
        details << QString::fromStdString(instruction.clinicText);
    }
    line.detail = details.join(QStringLiteral(" · "));
    return line;
}

QList<ProtocolLine> rulesOf(const triggers::Thresholds& thresholds)
{
    const auto day = [](int number) { return charts::digits(number); };
    const auto threshold = [](double value) { return Protocols::tr("threshold %1").arg(two(value)); };
    return {
        {Protocols::tr("Level: above the usual range"), threshold(thresholds.level),
         Protocols::tr("at least %Ln point(s)", nullptr, thresholds.levelGuard)},
        {Protocols::tr("Level, all symptoms together"), threshold(thresholds.levelOverall),
         Protocols::tr("at least %Ln point(s)", nullptr, thresholds.levelGuard)},
        {Protocols::tr("Rebound: rising again"), threshold(thresholds.rebound),
         Protocols::tr("at least %Ln point(s) above the lowest, from day %1 on", nullptr, thresholds.reboundGuard)
             .arg(day(thresholds.reboundFirstDay))},
        {Protocols::tr("Side divergence: one side much worse"), threshold(thresholds.sideDivergence),
         Protocols::tr("at least %Ln point(s) between the sides", nullptr, thresholds.sideGuard)},
        {Protocols::tr("Side divergence: one side fills in the first days"), threshold(thresholds.oneSideFills),
         Protocols::tr("up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness",
                       nullptr, thresholds.fillingGuard)
             .arg(day(thresholds.fillingLastDay))},
        {Protocols::tr("Side divergence: one side worsens"), threshold(thresholds.oneSideWorsens),
         Protocols::tr("from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness", nullptr,
                       thresholds.worseningGuard)
             .arg(day(thresholds.reboundFirstDay))},
        {Protocols::tr("Slow recovery: slow to settle"), threshold(thresholds.slowRecovery),
         Protocols::tr("from day %1 on, at least %Ln point(s), after a peak of %2 or more", nullptr, thresholds.slowGuard)
             .arg(day(thresholds.slowFirstDay), day(thresholds.slowPeakGuard))},
        {Protocols::tr("Slow recovery, all symptoms together"), threshold(thresholds.slowOverall),
         Protocols::tr("from day %1 on, at least %Ln point(s)", nullptr, thresholds.slowGuard).arg(day(thresholds.slowFirstDay))},
        {Protocols::tr("Slow recovery: pain that stays high"), Protocols::tr("from day %1 on").arg(day(triggers::stuckPain.firstDay)),
         Protocols::tr("%1 of 10 or more over the last three days; no threshold").arg(charts::digits(triggers::stuckPain.from))},
        {Protocols::tr("Slow recovery: swelling, bruising or tightness that stays high"),
         Protocols::tr("from day %1 on").arg(day(triggers::stuckOther.firstDay)),
         Protocols::tr("%1 of 10 or more over the last three days; no threshold").arg(charts::digits(triggers::stuckOther.from))},
        {Protocols::tr("Persistent puckering: does not smooth out"), Protocols::tr("from day %1 on").arg(day(thresholds.puckeringDay)),
         Protocols::tr("at least %Ln point(s)", nullptr, thresholds.puckeringGuard)},
        {Protocols::tr("Persistent puckering: unchanged for a week"),
         Protocols::tr("from day %1 on").arg(day(thresholds.puckeringStuckDay)),
         Protocols::tr("at least %Ln point(s)", nullptr, thresholds.puckeringStuckGuard)},
        {Protocols::tr("Persistent puckering: keeps most of its first days"),
         Protocols::tr("from day %1 on").arg(day(thresholds.puckeringKeptDay)),
         Protocols::tr("at least %Ln point(s) over the last three days", nullptr, thresholds.puckeringTogether)},
        {Protocols::tr("Persistent puckering: still deep"), Protocols::tr("from day %1 on").arg(day(thresholds.puckeringLateDay)),
         Protocols::tr("at least %Ln point(s) over the last three days", nullptr, thresholds.puckeringTogether)},
        {Protocols::tr("Silence: nothing heard"), Protocols::tr("after %Ln day(s)", nullptr, thresholds.silentDays),
         Protocols::tr("shown apart, never as fine")},
        {Protocols::tr("Silence after a high entry"), Protocols::tr("after %Ln day(s)", nullptr, thresholds.silentDaysWhenHigh),
         Protocols::tr("when the last entry was above the usual range")},
    };
}

QString calibrationText(const triggers::Thresholds& thresholds)
{
    const auto grounds = rehearsal::groundsOf(thresholds.calibratedOn);
    const auto courses = cohortText(thresholds.calibratedOn);
    const auto budget = QLocale().toString(thresholds.falseAlertBudget, 'g', 3);
    if (grounds.isBudgetShown()) {
        return ProtocolBoard::tr("Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.").arg(courses, budget);
    }
    QStringList lines{ProtocolBoard::tr("Thresholds calibrated on %1.").arg(courses)};
    if (grounds.isFew()) {
        lines << ProtocolBoard::tr("These are few: the thresholds are drawn towards those before.");
    }
    if (grounds.brought) {
        lines << ProtocolBoard::tr("They came in a file: other patients may stand behind them.");
    }
    if (grounds.changed) {
        lines << ProtocolBoard::tr("Rules, or the days that are asked about, were changed since.");
    }
    lines << ProtocolBoard::tr("It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.").arg(budget);
    return lines.join(QLatin1Char(' '));
}

ProtocolBoard::ProtocolBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &ProtocolBoard::refresh);
}

const triggers::Protocol* ProtocolBoard::current() const
{
    return static_cast<std::size_t>(m_chosen) < m_protocols.size() ? &m_protocols[static_cast<std::size_t>(m_chosen)] : nullptr;
}

void ProtocolBoard::refresh()
{
    m_protocols = m_workplace.isOpen() ? m_workplace.desk().protocols() : std::vector<triggers::Protocol>();
    m_chosen = std::clamp(m_chosen, 0, std::max(0, static_cast<int>(m_protocols.size()) - 1));
    QList<RowList::Row> plan;
    QList<RowList::Row> rules;
    if (const auto* protocol = current()) {
        for (const auto& instruction : protocol->carePlan.instructions) {
            plan.append({QString::fromStdString(instruction.id), {}, QVariant::fromValue(lineOf(instruction))});
        }
        for (const auto& rule : rulesOf(protocol->thresholds)) {
            rules.append({rule.what, {}, QVariant::fromValue(rule)});
        }
    }
    m_carePlan.setRows(std::move(plan));
    m_rules.setRows(std::move(rules));
    Q_EMIT changed();
}

QStringList ProtocolBoard::names() const
{
    QStringList names;
    for (const auto& protocol : m_protocols) {
        names << tr("%1, version %2").arg(QString::fromStdString(protocol.name), charts::digits(protocol.version));
    }
    return names;
}

void ProtocolBoard::setChosen(int index)
{
    if (index != m_chosen) {
        m_chosen = index;
        refresh();
    }
}

QString ProtocolBoard::title() const
{
    const auto all = names();
    return m_chosen < all.size() ? all[m_chosen] : QString();
}

QString ProtocolBoard::band() const
{
    return current() == nullptr ? QString() : charts::bandLegend(current()->band.provenance());
}

QString ProtocolBoard::calibration() const
{
    return current() == nullptr ? QString() : calibrationText(current()->thresholds);
}

}  // namespace ebbline::deskapp
