#include "app/desk/queue/hand_over_board.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/course_rows.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/bytes/reader.h"
#include "core/clock/iso8601.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>

namespace ebbline::deskapp {

namespace {

constexpr const char* keptName = "hand-over";
const QString begunName = QStringLiteral("hand-over");
constexpr std::size_t longestWord = 4000;
constexpr auto lately = std::chrono::hours(24);

}  // namespace

HandOverBoard::HandOverBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::changed, this, &HandOverBoard::changed);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_paper = {};
        m_word = begunWords(m_workplace, begunName);
        m_outcome.clear();
        Q_EMIT changed();
    });
}

void HandOverBoard::open()
{
    if (!m_workplace.isOpen()) {
        return;
    }
    auto& desk = m_workplace.desk();
    const auto now = m_workplace.now();
    const auto clinic = desk.clinic();
    m_outcome.clear();
    m_paper = {};
    m_paper.title = tr("Hand-over");
    m_paper.stamp = tr("%1 · %2 · %3", "clinic, person, when")
                        .arg(clinic ? QString::fromStdString(clinic->contacts.clinicName) : QString(), QString::fromStdString(desk.person()), stampText(now));
    if (const auto word = pinned(); !word.isEmpty()) {
        m_paper.parts.append({tr("A word from who leaves"), {word}, {}, {}});
    }
    PaperPart waiting{tr("Who waits"), {}, {tr("How urgent"), tr("Patient"), tr("What and why"), tr("Since"), tr("Who is on it")}, {}};
    PaperPart done{tr("What was done in the last day"), {}, {}, {}};
    for (const auto& row : desk.queue()) {
        const auto view = desk.course(row.course);
        if (!view || row.findings.empty()) {
            continue;
        }
        const auto& first = row.findings.front();
        const auto name = QString::fromStdString(view->summary.patientName);
        waiting.rows.append({urgencyName(row.urgency), name + QStringLiteral(", ") + dayText(row.day) + QStringLiteral(", ") + leftToRight(view->summary.patientPhone),
                             findingTitle(first) + QStringLiteral(". ") + findingReason(first), stampText(row.since),
                             row.takenBy ? QString::fromStdString(*row.takenBy) : tr("nobody")});
    }
    for (const auto& [id, course] : m_workplace.state().courses) {
        for (const auto& act : course.acts) {
            if (act.at.at <= now.at && now.at - act.at.at < lately) {
                done.lines << m_workplace.patientName(id) + QStringLiteral(": ") + actText(act, [](const clock::Moment& at) { return stampText(at); });
            }
        }
    }
    if (waiting.rows.isEmpty()) {
        waiting.header.clear();
        waiting.lines << tr("Nobody waits for an answer.");
    }
    done.lines.removeDuplicates();
    if (done.lines.isEmpty()) {
        done.lines << tr("Nothing was noted.");
    }
    m_paper.parts.append(waiting);
    m_paper.parts.append(done);
    Q_EMIT changed();
}

QString HandOverBoard::pinned() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    const auto kept = m_workplace.desk().vault().kept(keptName);
    if (!kept) {
        return {};
    }
    bytes::Reader reader(*kept);
    const auto text = [&reader](std::size_t most) {
        const bytes::View raw = reader.block(most);
        return std::string(raw.begin(), raw.end());
    };
    const auto by = text(longestWord);
    const auto at = text(longestWord);
    const auto word = text(longestWord);
    const auto moment = clock::parseIso8601(at);
    return reader.atEnd() && moment ? tr("%1 (%2, %3)", "note, person, when").arg(QString::fromStdString(word), QString::fromStdString(by), whenText(*moment, m_workplace.now()))
                                    : QString();
}

void HandOverBoard::setWord(const QString& word)
{
    if (word != m_word) {
        m_word = word;
        keepBegun(m_workplace, begunName, word);
        Q_EMIT changed();
    }
}

void HandOverBoard::pin()
{
    const auto word = m_word.trimmed().toStdString();
    if (!m_workplace.isOpen() || word.empty()) {
        return;
    }
    auto& desk = m_workplace.desk();
    if (desk.person().empty() || word.size() > longestWord) {
        m_outcome = desk.person().empty() ? tr("Say who is at the desk.") : tr("Too long: shorten it.");
        Q_EMIT changed();
        return;
    }
    const auto at = clock::toIso8601(m_workplace.now());
    const auto kept = bytes::Writer().block(bytes::viewOf(desk.person())).block(bytes::viewOf(at)).block(bytes::viewOf(word)).bytes();
    if (m_workplace.settle(desk.vault().keep(keptName, kept))) {
        setWord({});
        open();
    }
}

void HandOverBoard::takeDown()
{
    if (m_workplace.isOpen() && m_workplace.settle(m_workplace.desk().vault().keep(keptName, {}))) {
        open();
    }
}

bool HandOverBoard::write(const QString& path)
{
    if (path.isEmpty() || m_paper.title.isEmpty()) {
        return false;
    }
    const auto written = writePaper(m_paper, path, false, QGuiApplication::layoutDirection() == Qt::RightToLeft);
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patients' records.").arg(path) : errorText(written.error());
    Q_EMIT changed();
    return written.has_value();
}

void HandOverBoard::saveAs()
{
    auto* dialog = new QFileDialog();
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(tr("Save the hand-over"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({QStringLiteral("PDF (*.pdf)"), QStringLiteral("TXT (*.txt)")});
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(QStringLiteral("hand-over-%1.pdf").arg(dateOf(m_workplace.now()).toString(Qt::ISODate)));
    connect(dialog, &QFileDialog::fileSelected, this, &HandOverBoard::write);
    dialog->open();
}

void HandOverBoard::copy()
{
    QGuiApplication::clipboard()->setText(text());
    m_outcome = tr("Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.");
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
