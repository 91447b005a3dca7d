#include "app/desk/model/course_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/begun.h"
#include "app/desk/model/correction_words.h"
#include "app/desk/model/course_look.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/patient_editor.h"
#include "app/desk/model/phone_outlooks.h"
#include "app/desk/model/times.h"
#include "app/desk/model/treatment_editor.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QLocale>
#include <QSaveFile>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

constexpr qsizetype longestMessage = 2000;  ///< bytes of UTF-8, records::MessageWritten

QString placeOf(const recovery::CourseId& course)
{
    return QStringLiteral("message/") + keyOf(course);
}

}  // namespace

CourseBoard::CourseBoard(Workplace& workplace, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_printer(workplace), m_usual(workplace), m_curves(workplace)
{
    connect(&workplace, &Workplace::changed, this, &CourseBoard::refresh);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            empty();
        }
    });
}

void CourseBoard::empty()
{
    m_course = {};
    m_name.clear();
    m_phone.clear();
    m_patientKey.clear();
    m_corrections.clear();
    m_crossed.clear();
    m_messageDraft.clear();
    m_threads.clear();
    m_care.clear();
    m_recordCorrections.clear();
    m_recordCrossed.clear();
    m_countedOtherwise.clear();
    m_newsText.clear();
    m_forecast.clear();
    m_outcome.clear();
    m_closingKey.clear();
    m_findings.setRows({});
    m_calls.clear();
    m_entries.setRows({});
    m_messages.setRows({});
    light({});
    m_usual.empty();
    m_curves.show({});
    Q_EMIT changed();
    Q_EMIT draftChanged();
    Q_EMIT closingChanged();
}

bool CourseBoard::show(const recovery::CourseId& course)
{
    if (!m_workplace.isOpen() || !m_workplace.desk().course(course)) {
        return false;
    }
    if (course != m_course) {
        cancelClosing();
        m_course = course;
        m_messageDraft = begunWords(m_workplace, placeOf(course));
        m_curves.show(course);
        Q_EMIT draftChanged();
    }
    m_outcome.clear();
    light({});
    Q_EMIT outcomeChanged();
    m_newsText = newsSinceLook(m_workplace, course);
    refresh();
    openEntries();
    m_workplace.settle(rememberLook(m_workplace, course));
    return true;
}

void CourseBoard::refresh()
{
    if (!m_workplace.isOpen() || m_course.isNull()) {
        return;
    }
    const auto view = m_workplace.desk().course(m_course);
    if (!view || view->state == nullptr) {
        return;
    }
    const auto now = m_workplace.now();
    const auto& summary = view->summary;
    m_name = QString::fromStdString(summary.patientName);
    m_phone = leftToRight(summary.patientPhone);
    m_day = dayText(summary.day);
    m_linked = summary.linked;
    m_closed = summary.closed;
    const auto threads = view->state->treatment ? static_cast<int>(view->state->treatment->treatment.placements.size()) : 0;
    m_facts = tr("Treated %1 · %2 · %3, version %4", "date, threads, protocol, its version")
                  .arg(dateText(summary.treated), tr("%Ln thread(s)", nullptr, threads),
                       QString::fromStdString(view->protocol.name), charts::digits(view->protocol.version));
    m_threads.clear();
    m_care.clear();
    m_recordCorrections = treatmentCorrectionLines(*view->state, [&now](const clock::Moment& at) { return whenText(at, now); });
    m_recordCrossed = treatmentCrossedText(*view->state);
    m_countedOtherwise = countedOtherwiseText(*view->state);
    const auto begun = m_workplace.desk().correction(m_course);
    m_correctionBegun = begun || begun.error().reason != Reason::notFound;
    m_patientKey.clear();
    m_corrections.clear();
    m_crossed.clear();
    if (view->state->treatment) {
        const auto& treatment = view->state->treatment->treatment;
        m_patientKey = keyOf(treatment.patient);
        const auto corrections = m_workplace.desk().corrections(treatment.patient);
        m_corrections = correctionLines(corrections, now);
        m_crossed = crossedText(corrections);
        for (const auto& row : placementRows(treatment.placements)) {
            m_threads << row.value.value<PlacementRow>().spoken;
        }
        m_care = careLines(treatment, m_workplace.desk().doseLimits());
    }
    const auto last = summary.lastEntry ? tr("Last entry %1").arg(whenText(*summary.lastEntry, now)) : tr("No entry yet");
    m_reach = tr("%1 · %2").arg(summary.linked ? tr("Phone linked") : tr("No phone linked"), last);
    if (const auto phone = PhoneOutlooks(m_workplace).text(m_course); !phone.isEmpty()) {
        m_reach += QStringLiteral(" · ") + phone;
    }
    m_adherence = view->remindersDue == 0
                      ? tr("No reminder due yet")
                      : tr("%1 of %Ln reminder(s) answered “done”", nullptr, static_cast<int>(view->remindersDue))
                            .arg(charts::withPercent(QLocale().toString(qRound(view->remindersDone * 100))));
    m_forecast = forecastText(m_workplace, m_course);
    m_news = summary.unopened > 0 || summary.unread > 0;
    m_unopenedText = summary.unopened > 0
                         ? tr("%Ln new or corrected entry(ies), not opened yet", nullptr, static_cast<int>(summary.unopened))
                         : QString();
    const Stamp stamp = [&now](const clock::Moment& at) { return whenText(at, now); };
    m_findings.setRows(findingRows(*view, stamp));
    m_calls = callLines(*view, stamp);
    const auto isOpen = [](const triage::Finding& finding) { return finding.open; };
    m_usual.show(summary,
                 std::ranges::any_of(view->findings, [](const triage::Finding& finding) {
                     return finding.open && finding.urgency <= recovery::Urgency::callNow;
                 }),
                 summary.unopened > 0 || std::ranges::any_of(view->findings, isOpen));
    m_entries.setRows(entryRows(*view->state, stamp, cameEarly(m_workplace)));
    m_messages.setRows(messageRows(*view->state, m_name, stamp));
    m_curves.refresh();
    Q_EMIT changed();
}

void CourseBoard::light(const QString& entry)
{
    // Let go of first, so that the same reason leads there once more.
    if (!m_lighted.isEmpty()) {
        m_lighted.clear();
        Q_EMIT lightedChanged();
    }
    if (m_entries.rowOf(entry) >= 0) {
        m_lighted = entry;
        Q_EMIT lightedChanged();
    }
}

void CourseBoard::openEntries()
{
    // Nobody named, nothing claimed: an entry is opened by a person or not at all.
    if (m_course.isNull() || !m_news || m_workplace.desk().person().empty()) {
        return;
    }
    m_workplace.settle(m_workplace.desk().openEntries(m_course));
}

void CourseBoard::act(const QString& finding, records::Act what, records::Outcome outcome, const QString& note)
{
    if (!m_course.isNull() && !finding.isEmpty()) {
        m_workplace.settle(m_workplace.desk().act(m_course, finding.toStdString(), what, outcome, note.toStdString()));
    }
}

void CourseBoard::noteOn(const std::vector<std::string>& findings, records::Act what, const QString& did)
{
    if (m_course.isNull() || findings.empty()) {
        return;
    }
    const auto course = m_course;
    const auto done = m_workplace.desk().actOn(course, findings, what);
    if (m_workplace.settle(done ? Done{} : Done(fail(done.error()))) && !done->empty()) {
        Q_EMIT noted(course, *done, did.arg(m_workplace.patientName(course)));
    }
}

void CourseBoard::see(const QString& finding)
{
    noteOn({finding.toStdString()}, records::Act::seen, tr("Seen: %1"));
}

void CourseBoard::take(const QString& finding)
{
    noteOn({finding.toStdString()}, records::Act::taken, tr("Taken: %1"));
}

int CourseBoard::openFindings() const
{
    int count = 0;
    for (const auto& row : m_findings.rows()) {
        count += row.value.value<FindingRow>().open ? 1 : 0;
    }
    return count;
}

QString CourseBoard::closingTitle() const
{
    const int row = m_findings.rowOf(m_closingKey);
    return row < 0 ? QString() : m_findings.rows()[row].value.value<FindingRow>().title;
}

void CourseBoard::takeAll()
{
    std::vector<std::string> open;
    for (const auto& row : m_findings.rows()) {
        if (row.value.value<FindingRow>().open) {
            open.push_back(row.key.toStdString());
        }
    }
    noteOn(open, records::Act::taken, tr("Taken: %1"));
}

void CourseBoard::startClosing(const QString& finding)
{
    if (m_course.isNull() || !m_workplace.isOpen() || !m_workplace.mayDo(records::Task::close)) {
        return;
    }
    m_closingKey = finding;
    Q_EMIT closingChanged();
}

void CourseBoard::close(int outcome, const QString& note)
{
    if (m_closingKey.isEmpty() || outcome <= 0 || outcome > static_cast<int>(records::Outcome::notReached)) {
        return;
    }
    const auto finding = m_closingKey;
    cancelClosing();
    act(finding, records::Act::closed, static_cast<records::Outcome>(outcome), note);
}

void CourseBoard::cancelClosing()
{
    if (!m_closingKey.isEmpty()) {
        m_closingKey.clear();
        Q_EMIT closingChanged();
    }
}

void CourseBoard::reopen(const QString& finding)
{
    act(finding, records::Act::reopened);
}

bool CourseBoard::write(const QString& path)
{
    if (m_course.isNull() || !m_workplace.isOpen() || path.isEmpty()) {
        return false;
    }
    Done written;
    const auto writeText = [&](const std::string& text) -> Done {
        QSaveFile file(path);
        const auto bytes = QByteArray::fromStdString(text);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
            return fail(Reason::storageFailed, "course: the file cannot be written");
        }
        return {};
    };
    if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) {
        written = writeText(courseTable(m_workplace, m_course));
    } else if (path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive)) {
        const QString program = QCoreApplication::applicationName() + QLatin1Char(' ') + QCoreApplication::applicationVersion();
        const auto bundle = m_workplace.desk().bundle(m_course, program.trimmed().toStdString());
        written = bundle ? writeText(*bundle) : Done(fail(bundle.error()));
    } else {
        written = writePaper(coursePaper(m_workplace, m_course), path, false, QGuiApplication::layoutDirection() == Qt::RightToLeft);
    }
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patient's record.").arg(path) : errorText(written.error());
    Q_EMIT outcomeChanged();
    return written.has_value();
}

void CourseBoard::saveAs()
{
    // The patient's name stays out of file names: they show up in recent-file lists.
    askWhereToSave(*this, tr("Save the course"), QStringLiteral("course-%1-%2.pdf").arg(dateOf(m_workplace.now()).toString(Qt::ISODate), key().left(6)),
        {QStringLiteral("PDF (*.pdf)"), QStringLiteral("CSV (*.csv)"), QStringLiteral("FHIR (*.json)"), QStringLiteral("TXT (*.txt)")},
        [this](const QString& path) { write(path); });
}

void CourseBoard::print()
{
    if (m_course.isNull() || !m_workplace.isOpen()) {
        return;
    }
    const auto paper = coursePaper(m_workplace, m_course);
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    m_printer.print(
        paper.title, QPageSize::A4, [paper, mirrored](const QSizeF& size) { return pagesOf(paper, size, mirrored); },
        [this](const QString& sentence) {
            m_outcome = sentence;
            Q_EMIT outcomeChanged();
        });
}

void CourseBoard::setMessageDraft(const QString& text)
{
    if (text != m_messageDraft) {
        m_messageDraft = text;
        if (!m_course.isNull()) {
            keepBegun(m_workplace, placeOf(m_course), text);
        }
        Q_EMIT draftChanged();
    }
}

QString CourseBoard::messageProblem() const
{
    if (!m_linked && !m_messageDraft.isEmpty()) {
        return tr("No phone is linked: a message cannot be sent.");
    }
    return m_messageDraft.toUtf8().size() > longestMessage ? tr("Too long: shorten it before sending.") : QString();
}

void CourseBoard::takeUsual()
{
    const auto text = m_usual.theirs();
    if (m_course.isNull() || text.isEmpty()) {
        return;
    }
    const auto begun = m_messageDraft.trimmed();
    setMessageDraft(begun.isEmpty() ? text : begun + QStringLiteral("\n\n") + text);
    m_usual.choose(-1);
}

void CourseBoard::send()
{
    const auto text = m_messageDraft.trimmed();
    if (m_course.isNull() || !m_linked || text.isEmpty() || text.toUtf8().size() > longestMessage) {
        return;
    }
    if (m_workplace.settle(m_workplace.desk().writeMessage(m_course, text.toStdString()))) {
        setMessageDraft({});
    }
}

}  // namespace ebbline::deskapp
