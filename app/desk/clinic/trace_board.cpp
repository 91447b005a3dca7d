#include "app/desk/clinic/trace_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/role_words.h"
#include "app/desk/model/table_cell.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/desk/traces.h"

#include <QCoreApplication>
#include <QSaveFile>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

struct Traces {
    Q_DECLARE_TR_FUNCTIONS(Traces)
};

QString stepText(const desk::Trace& trace)
{
    switch (trace.step.value_or(records::Step::deskAdded)) {
    case records::Step::deskAdded:
        return Traces::tr("Desk added");
    case records::Step::deskShutOut:
        return Traces::tr("Desk shut out");
    case records::Step::phoneEnded:
        return Traces::tr("Lost phone ended");
    case records::Step::phoneReplaced:
        return Traces::tr("Phone replaced");
    case records::Step::freshKey:
        return Traces::tr("Fresh key begun");
    case records::Step::numbersChanged:
        return Traces::tr("Numbers to call changed");
    case records::Step::leastVersion:
        return Traces::tr("Newer program asked for");
    case records::Step::backupMade:
        return Traces::tr("Backup made");
    case records::Step::passphraseChanged:
        return Traces::tr("Passphrase of this desk changed");
    case records::Step::recoveryCodeMade:
        return Traces::tr("Recovery code made");
    }
    return {};
}

QString whatText(const desk::Trace& trace)
{
    switch (trace.kind) {
    case records::Kind::patientRegistered:
        return trace.corrected ? Traces::tr("Patient's name, number or language corrected") : Traces::tr("Patient registered");
    case records::Kind::treatmentRecorded:
        return trace.corrected ? Traces::tr("Treatment corrected") : Traces::tr("Treatment recorded");
    case records::Kind::courseOpened:
        return Traces::tr("Care plan sent to the phone");
    case records::Kind::findingActed:
        return Traces::tr("Finding: %1").arg(trace.act ? actName(*trace.act) : QString());
    case records::Kind::actTakenBack:
        return Traces::tr("Finding: taken back what was noted");
    case records::Kind::callNoted:
        return Traces::tr("Call noted on the course");
    case records::Kind::wordHandedOver:
        return Traces::tr("Word to who takes over");
    case records::Kind::entriesOpened:
    case records::Kind::versionsOpened:
        return Traces::tr("%Ln entry(s) opened", nullptr, static_cast<int>(trace.entries));
    case records::Kind::messageWritten:
        return Traces::tr("Message written");
    case records::Kind::messageRead:
        return Traces::tr("Message read");
    case records::Kind::followUpRecorded:
        return Traces::tr("Follow-up recorded");
    case records::Kind::protocolSigned:
        return Traces::tr("Protocol signed");
    case records::Kind::clinicDescribed:
        return Traces::tr("Clinic's particulars changed");
    case records::Kind::doseLimited:
        return Traces::tr("Limit of lidocaine set");
    case records::Kind::patientLinked:
        return Traces::tr("Phone linked");
    case records::Kind::bandLearned:
        return trace.brought ? Traces::tr("Usual range taken from a file") : Traces::tr("Usual range learned");
    case records::Kind::bandChosen:
        return Traces::tr("Usual range put into use");
    case records::Kind::roleGiven:
        return Traces::tr("Role of %1: %2", "person, role").arg(QString::fromStdString(trace.person), trace.role ? roleName(*trace.role) : QString());
    case records::Kind::eyesMarked:
        return Traces::tr("Eyes marked in a photograph");
    case records::Kind::clinicPhotoTaken:
        return Traces::tr("Photograph from right after the treatment put in");
    case records::Kind::clinicPhotoRemoved:
        return Traces::tr("Photograph from right after the treatment taken back");
    case records::Kind::stepTaken:
        return stepText(trace);
    case records::Kind::workDone:
    case records::Kind::keyAnnounced:
    case records::Kind::photoTaken:
    case records::Kind::photoRemoved:
    case records::Kind::photosReceived:
    case records::Kind::entryRecorded:
    case records::Kind::reminderAnswered:
    case records::Kind::warningShown:
        break;
    }
    return {};
}

/// Enough of the desk's number to tell the desks of one clinic apart.
QString deskText(const envelope::DeviceId& device)
{
    const auto id = QString::fromStdString(bytes::toHex(device.view()));
    return Traces::tr("Desk %1").arg(leftToRight((id.left(4) + QLatin1Char('-') + id.mid(4, 4)).toStdString()));
}

TraceRow rowOf(const desk::Trace& trace)
{
    TraceRow row;
    row.when = stampText(trace.at);
    row.at = QString::fromStdString(clock::toIso8601(trace.at));
    row.who = trace.by.empty() ? deskText(trace.id.device) : QString::fromStdString(trace.by);
    if (!trace.with.empty()) {
        row.who = Traces::tr("%1, with %2").arg(row.who, QString::fromStdString(trace.with));
    }
    row.what = whatText(trace);
    if (trace.beyondRole) {
        row.what += QStringLiteral(" · ") + beyondRoleText();
    }
    row.whom = QString::fromStdString(trace.patient);
    row.course = trace.course.isNull() ? QString() : keyOf(trace.course);
    row.spoken = QStringList{row.when, row.who, row.what, row.whom}.join(QStringLiteral(", "));
    return row;
}

}  // namespace

TraceBoard::TraceBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_all.clear();
        m_search.clear();
        list();
    });
}

void TraceBoard::open()
{
    m_all.clear();
    m_outcome.clear();
    if (m_workplace.isOpen()) {
        const auto& vault = m_workplace.desk().vault();
        const auto found = desk::traces(vault.state(), vault.operations());
        m_all.reserve(found.size());
        for (const auto& trace : found) {
            m_all.push_back(rowOf(trace));
        }
    }
    list();
}

void TraceBoard::setSearch(const QString& search)
{
    if (search != m_search) {
        m_search = search;
        list();
    }
}

void TraceBoard::list()
{
    m_found.clear();
    m_shown = page;
    const auto wanted = m_search.trimmed();
    for (std::size_t i = 0; i < m_all.size(); ++i) {
        if (wanted.isEmpty() || m_all[i].spoken.contains(wanted, Qt::CaseInsensitive)) {
            m_found.push_back(i);
        }
    }
    show();
}

void TraceBoard::show()
{
    QList<RowList::Row> rows;
    for (std::size_t i = 0; i < std::min(m_shown, m_found.size()); ++i) {
        rows.append({QString::number(m_found[i]), {}, QVariant::fromValue(m_all[m_found[i]])});
    }
    m_rows.setRows(std::move(rows));
    Q_EMIT changed();
}

void TraceBoard::showMore()
{
    m_shown += page;
    show();
}

QString TraceBoard::says() const
{
    const auto lines = tr("%Ln line(s)", nullptr, static_cast<int>(m_found.size()));
    return hasMore() ? tr("%1; the newest %2 are shown").arg(lines, charts::digits(static_cast<int>(m_shown))) : lines;
}

bool TraceBoard::write(const QString& path)
{
    if (path.isEmpty()) {
        return false;
    }
    exchange::CsvWriter table;
    table.row({"when", "who", "what", "patient"});
    for (const auto found : m_found) {
        const auto& trace = m_all[found];
        table.row({cellOf(trace.at), cellOf(trace.who), cellOf(trace.what), cellOf(trace.whom)});
    }
    const auto text = QByteArray::fromStdString(std::move(table).take());
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patients' records.").arg(path)
                        : tr("The file cannot be written there. Choose another folder.");
    Q_EMIT changed();
    return written;
}

void TraceBoard::saveAs()
{
    if (!m_workplace.isOpen() || !m_workplace.mayDo(records::Task::keep)) {
        return;
    }
    askWhereToSave(*this, tr("Save the list"), QStringLiteral("who-did-what-%1.csv").arg(dateOf(m_workplace.now()).toString(Qt::ISODate)),
        {QStringLiteral("CSV (*.csv)")}, [this](const QString& path) { write(path); });
}

}  // namespace ebbline::deskapp
