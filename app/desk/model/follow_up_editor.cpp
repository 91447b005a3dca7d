#include "app/desk/model/follow_up_editor.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/begun.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Questions {
    Q_DECLARE_TR_FUNCTIONS(Questions)
};

}  // namespace

QStringList openQuestionsOf(const desk::CourseView& view)
{
    QStringList questions;
    for (const auto& finding : view.findings) {
        if (finding.open) {
            questions << Questions::tr("Still open: %1, day %2.").arg(findingTitle(finding), charts::digits(finding.day));
        }
    }
    if (view.summary.unopened > 0) {
        questions << Questions::tr("%Ln entry(ies) not opened yet.", nullptr, static_cast<int>(view.summary.unopened));
    }
    if (view.summary.unread > 0) {
        questions << Questions::tr("%Ln message(s) from the patient not read yet.", nullptr, static_cast<int>(view.summary.unread));
    }
    if (!view.summary.linked) {
        questions << Questions::tr("No phone was linked: ask how the days went.");
    } else if (!view.summary.lastEntry) {
        questions << Questions::tr("The patient recorded nothing: ask how the days went.");
    }
    if (view.state != nullptr && view.state->treatment) {
        const auto& placements = view.state->treatment->treatment.placements;
        const auto noLot = std::count_if(placements.begin(), placements.end(), [](const auto& placement) { return placement.lot.empty(); });
        if (noLot > 0) {
            questions << Questions::tr("%Ln thread(s) without a lot number.", nullptr, static_cast<int>(noLot));
        }
    }
    return questions;
}

FollowUpEditor::FollowUpEditor(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            m_course = {};
            m_change = 0;
            m_satisfaction = 0;
            m_complications.clear();
            m_management.clear();
            m_nextPlan.clear();
            m_recordedBy.clear();
            m_openQuestions.clear();
            m_uncomplicated = 0;
            m_answers.clear();
            refreshRows();
            refreshAnswers();
        }
    });
    connect(&workplace, &Workplace::changed, this, &FollowUpEditor::refreshAnswers);
}

bool FollowUpEditor::open(const recovery::CourseId& course)
{
    const auto view = m_workplace.desk().course(course);
    if (!view) {
        return false;
    }
    m_course = course;
    m_change = 0;
    m_satisfaction = 0;
    m_complications.clear();
    m_uncomplicated = 0;
    m_answers.clear();
    m_management.clear();
    m_nextPlan.clear();
    m_recordedBy.clear();
    if (view->state != nullptr && view->state->followUp) {
        const auto& known = *view->state->followUp;
        m_change = static_cast<int>(known.change);
        m_satisfaction = known.satisfaction;
        for (const auto& word : known.complications) {
            m_complications.insert(QString::fromStdString(word));
        }
        m_uncomplicated = known.uncomplicated ? 1 : 2;
        m_management = QString::fromStdString(known.management);
        m_nextPlan = QString::fromStdString(known.nextPlan);
        m_recordedBy = tr("Recorded by %1, %2").arg(QString::fromStdString(known.by), whenText(known.at, m_workplace.now()));
    }
    takeUpBegun();
    m_openQuestions = openQuestionsOf(*view);
    refreshRows();
    refreshAnswers();
    return true;
}

void FollowUpEditor::takeUpBegun()
{
    const auto begun = QJsonDocument::fromJson(begunWords(m_workplace, place()).toUtf8()).object();
    if (begun.isEmpty()) {
        return;
    }
    m_change = std::clamp(begun[QLatin1String("change")].toInt(), 0, static_cast<int>(records::GlobalChange::worse));
    m_satisfaction = std::clamp(begun[QLatin1String("satisfaction")].toInt(), 0, 5);
    // An older program kept yes before anybody had said so: that counts as not said.
    m_uncomplicated = std::clamp(begun[QLatin1String("uncomplicated")].toInt(), 0, 2);
    const auto answers = begun[QLatin1String("answers")].toObject();
    for (auto each = answers.begin(); each != answers.end(); ++each) {
        m_answers[each.key()] = std::clamp(each.value().toInt(), 0, static_cast<int>(records::Outcome::notReached));
    }
    m_complications.clear();
    for (const auto& word : begun[QLatin1String("complications")].toArray()) {
        m_complications.insert(word.toString());
    }
    m_management = begun[QLatin1String("management")].toString();
    m_nextPlan = begun[QLatin1String("nextPlan")].toString();
}

void FollowUpEditor::keep()
{
    if (!m_course.isNull()) {
        QJsonObject answers;
        for (const auto& [finding, outcome] : m_answers) {
            answers[finding] = outcome;
        }
        const QJsonObject begun{{QLatin1String("change"), m_change},
                                {QLatin1String("satisfaction"), m_satisfaction},
                                {QLatin1String("uncomplicated"), m_uncomplicated},
                                {QLatin1String("answers"), answers},
                                {QLatin1String("complications"), QJsonArray::fromStringList({m_complications.begin(), m_complications.end()})},
                                {QLatin1String("management"), m_management},
                                {QLatin1String("nextPlan"), m_nextPlan}};
        keepBegun(m_workplace, place(), QString::fromUtf8(QJsonDocument(begun).toJson(QJsonDocument::Compact)));
    }
    Q_EMIT changed();
}

void FollowUpEditor::retranslate()
{
    if (m_workplace.isOpen() && !m_course.isNull()) {
        if (const auto view = m_workplace.desk().course(m_course)) {
            m_openQuestions = openQuestionsOf(*view);
        }
    }
    refreshAnswers();
    refreshRows();
}

void FollowUpEditor::refreshRows()
{
    QList<RowList::Row> rows;
    for (const auto& word : complicationWords()) {
        rows.append({word, {}, QVariant::fromValue(TickRow{word, complicationName(word), complicationMeaning(word), m_complications.contains(word)})});
    }
    m_rows.setRows(std::move(rows));
    Q_EMIT changed();
}

QString FollowUpEditor::name() const
{
    return m_workplace.isOpen() && !m_course.isNull() ? m_workplace.patientName(m_course) : QString();
}

QStringList FollowUpEditor::changeNames() const
{
    QStringList names;
    for (int step = 1; step <= static_cast<int>(records::GlobalChange::worse); ++step) {
        names << changeName(static_cast<records::GlobalChange>(step));
    }
    return names;
}

QStringList FollowUpEditor::satisfactionNames() const
{
    return {tr("1, not at all"), tr("2, a little"), tr("3, fairly"), tr("4, mostly"), tr("5, fully")};
}

void FollowUpEditor::setChange(int change)
{
    m_change = std::clamp(change, 0, static_cast<int>(records::GlobalChange::worse));
    keep();
}

void FollowUpEditor::setSatisfaction(int satisfaction)
{
    m_satisfaction = std::clamp(satisfaction, 0, 5);
    keep();
}

void FollowUpEditor::setUncomplicated(int said)
{
    m_uncomplicated = std::clamp(said, 0, 2);
    keep();
}

void FollowUpEditor::setManagement(const QString& text)
{
    if (text != m_management) {
        m_management = text;
        keep();
    }
}

void FollowUpEditor::setNextPlan(const QString& text)
{
    if (text != m_nextPlan) {
        m_nextPlan = text;
        keep();
    }
}

void FollowUpEditor::tick(const QString& word, bool ticked)
{
    if (!complicationWords().contains(word)) {
        return;
    }
    if (ticked) {
        m_complications.insert(word);
    } else {
        m_complications.erase(word);
    }
    keep();
    refreshRows();
}

void FollowUpEditor::refreshAnswers()
{
    QList<RowList::Row> rows;
    if (m_workplace.isOpen() && !m_course.isNull()) {
        if (const auto view = m_workplace.desk().course(m_course)) {
            auto open = view->findings;
            std::erase_if(open, [](const auto& finding) { return !finding.open || finding.urgency > recovery::Urgency::callNow; });
            triage::sortByUrgency(open);
            for (const auto& finding : open) {
                const auto key = QString::fromStdString(finding.key);
                const auto said = m_answers.find(key);
                rows.append({key, {}, QVariant::fromValue(AnswerRow{key, findingTitle(finding), findingReason(finding), said == m_answers.end() ? 0 : said->second})});
            }
        }
    }
    m_answerRows.setRows(std::move(rows));
    Q_EMIT changed();
}

void FollowUpEditor::answer(const QString& finding, int outcome)
{
    if (m_answerRows.rowOf(finding) >= 0) {
        m_answers[finding] = std::clamp(outcome, 0, static_cast<int>(records::Outcome::notReached));
        keep();
        refreshAnswers();
    }
}

QStringList FollowUpEditor::missing() const
{
    QStringList missing;
    if (m_change == 0) {
        missing << tr("Choose how the result compares with before.");
    }
    if (m_satisfaction == 0) {
        missing << tr("Ask the patient how satisfied they are.");
    }
    if (uncomplicated() == 0) {
        missing << tr("Say whether the course was uncomplicated.");
    }
    for (const auto& row : m_answerRows.rows()) {
        if (const auto answered = row.value.value<AnswerRow>(); answered.outcome == 0) {
            missing << tr("Say what became of it: %1.").arg(answered.title);
        }
    }
    if (m_workplace.isOpen() && m_workplace.desk().person().empty()) {
        missing << tr("Say who is at the desk.");
    }
    return missing;
}

void FollowUpEditor::save()
{
    refreshAnswers();  // as they stand now, not as they stood when the page opened
    if (m_course.isNull() || !missing().isEmpty()) {
        Q_EMIT changed();
        return;
    }
    desk::Desk::Closings closings;
    for (const auto& row : m_answerRows.rows()) {
        const auto answered = row.value.value<AnswerRow>();
        closings.emplace_back(answered.key.toStdString(), static_cast<records::Outcome>(answered.outcome));
    }
    records::FollowUpRecorded record;
    record.course = m_course;
    record.change = static_cast<records::GlobalChange>(m_change);
    record.satisfaction = m_satisfaction;
    for (const auto& word : complicationWords()) {
        if (m_complications.contains(word)) {
            record.complications.push_back(word.toStdString());
        }
    }
    record.uncomplicated = uncomplicated() == 1;
    record.management = m_management.trimmed().toStdString();
    record.nextPlan = m_nextPlan.trimmed().toStdString();
    record.by = m_workplace.desk().person();
    record.at = m_workplace.now();
    if (m_workplace.mayDo(records::Task::treat) && m_workplace.settle(m_workplace.desk().recordFollowUp(record, closings))) {
        keepBegun(m_workplace, place(), {});
        open(m_course);
        Q_EMIT recorded();
    }
}

}  // namespace ebbline::deskapp
