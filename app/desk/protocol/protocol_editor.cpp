// Care plan and rules of a protocol in the making; the draft and its undoing are in protocol_draft.cpp, the patient's view
// of it is in protocol_preview.cpp, rehearsal and signature are in protocol_signing.cpp.

#include "app/desk/protocol/protocol_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/protocol_board.h"
#include "app/desk/model/words.h"
#include "app/desk/protocol/rule_fields.h"

#include <QLocale>
#include <QRegularExpression>
#include <QTime>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

const aftercare::Instruction nothing{};

/// Kinds that a plan can have only once, in the order in which they are offered; its own texts come last.
std::vector<aftercare::InstructionKind> kindsNotIn(const aftercare::CarePlan& plan)
{
    std::vector<aftercare::InstructionKind> kinds;
    for (int kind = 1; kind < static_cast<int>(aftercare::InstructionKind::custom); ++kind) {
        const auto candidate = static_cast<aftercare::InstructionKind>(kind);
        const bool there = std::any_of(plan.instructions.begin(), plan.instructions.end(), [&](const auto& one) { return one.kind == candidate; });
        if (!there) {
            kinds.push_back(candidate);
        }
    }
    kinds.push_back(aftercare::InstructionKind::custom);
    return kinds;
}

/// "08:00 20:00", in any digits; empty: nothing rings. None: not a list of times.
std::optional<std::vector<int>> minutesFrom(const QString& text)
{
    std::vector<int> minutes;
    static const QRegularExpression between(QStringLiteral("[\\s,;،؛]+"));
    for (const auto& word : text.split(between, Qt::SkipEmptyParts)) {
        QString plain;
        for (const QChar c : word) {
            plain += c.isDigit() ? QChar(u'0' + c.digitValue()) : c;
        }
        const auto time = QTime::fromString(plain, QStringLiteral("H:mm"));
        if (!time.isValid()) {
            return std::nullopt;
        }
        minutes.push_back(time.hour() * 60 + time.minute());
    }
    std::sort(minutes.begin(), minutes.end());
    minutes.erase(std::unique(minutes.begin(), minutes.end()), minutes.end());
    return minutes;
}

QString clockTime(int minute)
{
    return QLocale().toString(QTime(0, 0).addSecs(minute * 60), QStringLiteral("HH:mm"));
}

}  // namespace

ProtocolEditor::ProtocolEditor(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    m_pool.setMaxThreadCount(1);
    m_watch.setInterval(std::chrono::milliseconds(100));
    connect(&m_watch, &QTimer::timeout, this, &ProtocolEditor::changed);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            drop();
            m_signedOver.reset();
            m_outcome.clear();
            m_inUse = {};
            m_draft = {};
            refresh();
        }
    });
}

ProtocolEditor::~ProtocolEditor()
{
    drop();
    m_pool.waitForDone();
}

void ProtocolEditor::drop()
{
    ++m_round;
    if (m_progress) {
        *m_progress = -1;  // asks the rehearsal to stop
    }
    m_progress.reset();
    m_watch.stop();
    m_rehearsing = false;
    m_rehearsed.reset();
    m_before.clear();
    m_after.clear();
    m_chosen.clear();
    m_timesProblem.clear();
}

void ProtocolEditor::refresh()
{
    QList<RowList::Row> plan;
    for (const auto& instruction : m_draft.plan.instructions) {
        const auto line = lineOf(instruction);
        const auto& all = m_inUse.carePlan.instructions;
        PlanRow row{QString::fromStdString(instruction.id), line.what, line.until, line.detail, std::find(all.begin(), all.end(), instruction) == all.end(), {}};
        row.spoken = QStringList{row.what, row.until, row.detail}.join(QStringLiteral(", "));
        plan.append({row.key, {}, QVariant::fromValue(row)});
    }
    m_plan.setRows(std::move(plan));
    QList<RowList::Row> rules;
    QString last;
    int index = 0;
    for (const auto& field : ruleFields()) {
        RuleRow row;
        row.index = index++;
        const auto title = ruleTitle(field);
        row.title = title == last ? QString() : title;
        last = title;
        row.what = ruleWhat(field);
        row.unit = ruleUnit(field);
        row.value = m_draft.thresholds.*field.member;
        row.from = field.from;
        row.to = field.to;
        const int was = m_inUse.thresholds.*field.member;
        row.was = was == row.value ? QString() : tr("was %1").arg(charts::digits(was));
        rules.append({QString::number(row.index), {}, QVariant::fromValue(row)});
    }
    m_rules.setRows(std::move(rules));
    Q_EMIT changed();
}

QString ProtocolEditor::title() const
{
    return tr("%1, version %2 in the making").arg(QString::fromStdString(m_inUse.name), charts::digits(m_inUse.version + 1));
}

QStringList ProtocolEditor::steps() const
{
    return {tr("Care plan"), tr("Rules"), tr("Rehearse and sign")};
}

void ProtocolEditor::setStep(int step)
{
    m_step = std::clamp(step, 0, 2);
    Q_EMIT changed();
}

const aftercare::Instruction& ProtocolEditor::current() const
{
    const auto& all = m_draft.plan.instructions;
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == m_chosen; });
    return found == all.end() ? nothing : *found;
}

void ProtocolEditor::changeCurrent(const aftercare::Instruction& instruction)
{
    auto next = m_draft;
    for (auto& one : next.plan.instructions) {
        if (one.id == m_chosen) {
            one = instruction;
        }
    }
    change(std::move(next));
}

void ProtocolEditor::choose(const QString& key)
{
    m_chosen = key.toStdString() == m_chosen ? std::string() : key.toStdString();
    m_timesProblem.clear();
    Q_EMIT changed();
}

QString ProtocolEditor::chosenName() const
{
    return m_chosen.empty() ? QString() : instructionName(current().kind);
}

void ProtocolEditor::setFirstDay(int day)
{
    auto next = current();
    next.firstDay = std::clamp(day, 0, 60);
    next.lastDay = std::max(next.firstDay, next.lastDay);
    changeCurrent(next);
}

void ProtocolEditor::setLastDay(int day)
{
    auto next = current();
    next.lastDay = std::clamp(day, 0, 60);
    next.firstDay = std::min(next.firstDay, next.lastDay);
    changeCurrent(next);
}

void ProtocolEditor::setEveryDays(int days)
{
    auto next = current();
    next.everyDays = std::clamp(days, 1, 60);
    changeCurrent(next);
}

QString ProtocolEditor::times() const
{
    QStringList times;
    for (const int minute : current().minutesOfDay) {
        times << clockTime(minute);
    }
    return times.join(QLatin1Char(' '));
}

void ProtocolEditor::setTimes(const QString& text)
{
    const auto minutes = minutesFrom(text);
    m_timesProblem = minutes ? QString() : tr("Write times of day with a space between, for example 08:00 20:00.");
    if (minutes) {
        auto next = current();
        next.minutesOfDay = *minutes;
        changeCurrent(next);
    }
    Q_EMIT changed();
}

void ProtocolEditor::setClinicText(const QString& text)
{
    auto next = current();
    next.clinicText = text.toStdString();
    changeCurrent(next);
}

void ProtocolEditor::setIgnoresQuiet(bool ignores)
{
    auto next = current();
    next.ignoresQuietHours = ignores;
    changeCurrent(next);
}

QStringList ProtocolEditor::addable() const
{
    QStringList names;
    for (const auto kind : kindsNotIn(m_draft.plan)) {
        names << instructionName(kind);
    }
    return names;
}

void ProtocolEditor::addInstruction(int index)
{
    const auto kinds = kindsNotIn(m_draft.plan);
    if (index < 0 || index >= static_cast<int>(kinds.size())) {
        return;
    }
    auto next = m_draft;
    aftercare::Instruction instruction;
    instruction.kind = kinds[static_cast<std::size_t>(index)];
    instruction.lastDay = 7;
    int number = static_cast<int>(next.plan.instructions.size());
    const auto taken = [&](const std::string& id) {
        return std::any_of(next.plan.instructions.begin(), next.plan.instructions.end(), [&](const auto& one) { return one.id == id; });
    };
    do {
        instruction.id = "own-" + std::to_string(++number);
    } while (taken(instruction.id));
    m_chosen = instruction.id;
    next.plan.instructions.push_back(std::move(instruction));
    change(std::move(next));
}

void ProtocolEditor::removeChosen()
{
    auto next = m_draft;
    std::erase_if(next.plan.instructions, [&](const auto& one) { return one.id == m_chosen; });
    m_chosen.clear();
    change(std::move(next));
}

void ProtocolEditor::setFollowUpDay(int day)
{
    auto next = m_draft;
    next.plan.followUpDay = std::clamp(day, 1, 60);
    change(std::move(next));
}

void ProtocolEditor::setRule(int index, int value)
{
    const auto fields = ruleFields();
    if (index < 0 || index >= static_cast<int>(fields.size())) {
        return;
    }
    const auto& field = fields[static_cast<std::size_t>(index)];
    auto next = m_draft;
    next.thresholds.*field.member = std::clamp(value, field.from, field.to);
    change(std::move(next));
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
