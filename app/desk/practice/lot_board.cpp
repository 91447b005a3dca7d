#include "app/desk/practice/lot_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/table_cell.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/practice/practice_words.h"
#include "core/clock/iso8601.h"

#include <QGuiApplication>
#include <QSaveFile>

#include <algorithm>

namespace ebbline::deskapp {

LotBoard::LotBoard(Workplace& workplace, PracticeBoard& practice, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_practice(practice)
{
    connect(&practice, &PracticeBoard::figuresChanged, this, &LotBoard::refresh);
    // A number may be corrected while the list is called through.
    connect(&workplace, &Workplace::changed, this, &LotBoard::refresh);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_search.clear();
        m_chosen.clear();
        m_outcome.clear();
        refresh();
    });
}

void LotBoard::refresh()
{
    QList<RowList::Row> lots;
    QList<RowList::Row> calls;
    m_says.clear();
    const auto* figures = m_workplace.isOpen() ? m_practice.known() : nullptr;
    m_chosenLot.clear();
    const auto sought = QString::fromStdString(learning::lotKey(m_search.toStdString()));
    for (const auto& lot : figures != nullptr ? figures->lots : std::vector<learning::LotTrace>()) {
        LotRow row;
        row.key = QString::fromStdString(lot.share.group);
        if (row.key != m_chosen && !row.key.contains(sought)) {
            continue;
        }
        const auto name = QString::fromStdString(lot.key);
        row.lot = lot.article.empty() ? tr("%1, product not known", "lot").arg(name)
                                      : tr("%1, product %2", "lot, number of the product").arg(name, leftToRight(lot.article));
        row.courses = Practice::tr("%Ln course(s)", nullptr, static_cast<int>(lot.courses.size()));
        row.outcomes = tr("%1 complicated, %2 not known yet")
                           .arg(charts::digits(static_cast<int>(lot.share.complicated)), charts::digits(static_cast<int>(lot.share.unknown)));
        row.spoken = QStringList{row.lot, row.courses, row.outcomes}.join(QStringLiteral(", "));
        lots.append({row.key, {}, QVariant::fromValue(row)});
        if (row.key != m_chosen) {
            continue;
        }
        m_chosenLot = row.lot;
        m_tracedLot = lot.key;
        m_tracedArticle = lot.article;
        m_says = tr("Lot %1 went to %2.", "lot, courses").arg(row.lot, row.courses);
        const auto unsure = lot.article.empty() ? 0 : std::ranges::count_if(lot.courses, [](const auto& course) { return course.article.empty(); });
        if (unsure > 0) {
            m_says += QLatin1Char(' ')
                      + tr("Product not known: %1 of them. It may be this one, so they stand here too.", "a number of courses")
                            .arg(charts::digits(static_cast<int>(unsure)));
        }
        // Newest first: whoever was treated last is still within her course.
        for (auto course = lot.courses.rbegin(); course != lot.courses.rend(); ++course) {
            CallRow call;
            call.course = QString::fromStdString(course->course);
            const auto id = courseFromKey(call.course);
            call.name = m_workplace.patientName(id);
            if (const auto view = m_workplace.desk().course(id)) {
                call.phone = leftToRight(view->summary.patientPhone);
            }
            call.treated = dateText(course->treated);
            call.treatedAt = QString::fromStdString(clock::toIso8601(course->treated));
            call.written = QString::fromStdString(course->printed);
            call.article = QString::fromStdString(course->article);
            call.printed = leftToRight(course->printed);
            if (course->article.empty() && !lot.article.empty()) {
                call.printed = tr("%1, product not known", "lot").arg(call.printed);
            }
            call.outcome = !course->complicated ? tr("Outcome not known") : *course->complicated ? tr("Complicated") : tr("Uncomplicated");
            call.spoken = QStringList{call.name, call.phone, call.treated, call.printed, call.outcome}.join(QStringLiteral(", "));
            calls.append({call.course, {}, QVariant::fromValue(call)});
        }
    }
    m_lots.setRows(std::move(lots));
    m_calls.setRows(std::move(calls));
    Q_EMIT changed();
}

void LotBoard::setSearch(const QString& text)
{
    if (text != m_search) {
        m_search = text;
        refresh();
    }
}

void LotBoard::choose(const QString& key)
{
    m_chosen = key == m_chosen ? QString() : key;
    m_outcome.clear();
    refresh();
}

Paper LotBoard::callList() const
{
    Paper paper;
    paper.title = tr("Call list for lot %1").arg(m_chosenLot);
    const auto clinic = m_workplace.isOpen() ? m_workplace.desk().clinic() : std::nullopt;
    paper.stamp = tr("%1 · %2", "clinic, when").arg(clinic ? QString::fromStdString(clinic->contacts.clinicName) : QString(), stampText(m_workplace.now()));
    PaperPart part;
    part.lines = {m_says};
    part.header = {tr("Patient"), tr("Phone"), tr("Treated"), tr("Lot as written"), tr("Outcome"), tr("Called by, when")};
    for (const auto& row : m_calls.rows()) {
        const auto call = row.value.value<CallRow>();
        part.rows.append({call.name, call.phone, call.treated, call.printed, call.outcome, QString()});
    }
    paper.parts = {part};
    return paper;
}

bool LotBoard::write(const QString& path)
{
    if (m_chosen.isEmpty() || path.isEmpty()) {
        return false;
    }
    Done written;
    if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) {
        exchange::CsvWriter table;
        table.row({"lot", "patient", "phone", "treated", "printed", "outcome", "lot_article", "article"});
        for (const auto& row : m_calls.rows()) {
            const auto call = row.value.value<CallRow>();
            table.row({cellOf(QString::fromStdString(m_tracedLot)), cellOf(call.name), cellOf(call.phone), cellOf(call.treatedAt),
                       cellOf(call.written), cellOf(call.outcome), cellOf(QString::fromStdString(m_tracedArticle)), cellOf(call.article)});
        }
        const auto text = QByteArray::fromStdString(std::move(table).take());
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit()) {
            written = fail(Reason::storageFailed, "call list: the file cannot be written");
        }
    } else {
        written = writePaper(callList(), path, false, QGuiApplication::layoutDirection() == Qt::RightToLeft);
    }
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patients' records.").arg(path)
                        : errorText(written.error());
    Q_EMIT changed();
    return written.has_value();
}

void LotBoard::saveAs()
{
    askWhereToSave(*this, tr("Save the call list"), QStringLiteral("call-list-%1.pdf").arg(dateOf(m_workplace.now()).toString(Qt::ISODate)),
        {QStringLiteral("PDF (*.pdf)"), QStringLiteral("CSV (*.csv)"), QStringLiteral("TXT (*.txt)")}, [this](const QString& path) { write(path); });
}

}  // namespace ebbline::deskapp
