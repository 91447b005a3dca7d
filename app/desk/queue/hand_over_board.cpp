#include "app/desk/queue/hand_over_board.h"

#include "app/desk/model/begun.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/finding_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/queue/act_words.h"

#include <QClipboard>
#include <QGuiApplication>

#include <algorithm>
#include <utility>
#include <vector>

namespace ebbline::deskapp {

namespace {

const QString begunName = QStringLiteral("hand-over");
constexpr std::size_t longestWord = 4000;
constexpr auto lately = std::chrono::hours(24);

}  // namespace

HandOverBoard::HandOverBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace), m_printer(workplace)
{
    connect(&workplace, &Workplace::changed, this, [this] {
        m_stale = true;
        Q_EMIT changed();
    });
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_paper = {};
        m_word = begunWords(m_workplace, begunName);
        m_outcome.clear();
        if (m_workplace.isOpen()) {
            // Of a program that kept it at this desk alone; one that cannot be read stays where it is.
            static_cast<void>(m_workplace.desk().adoptPinnedWord());
        }
        Q_EMIT changed();
    });
}

void HandOverBoard::open()
{
    if (m_workplace.isOpen()) {
        m_outcome.clear();
        make();
        Q_EMIT changed();
    }
}

const Paper& HandOverBoard::paper()
{
    if (m_stale && !m_paper.title.isEmpty() && m_workplace.isOpen()) {
        make();
    }
    return m_paper;
}

/// \pre the desk is open
void HandOverBoard::make()
{
    m_stale = false;
    auto& desk = m_workplace.desk();
    const auto now = m_workplace.now();
    const auto clinic = desk.clinic();
    m_paper = {};
    m_paper.title = tr("Hand-over");
    m_paper.stamp = tr("%1 · %2 · %3", "clinic, person, when")
                        .arg(clinic ? QString::fromStdString(clinic->contacts.clinicName) : QString(), QString::fromStdString(desk.person()), stampText(now));
    if (const auto word = wordsUp(&stampText); !word.isEmpty()) {
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
        auto why = findingTitle(first) + QStringLiteral(". ") + findingReason(first);
        if (const auto others = otherUrgentTitles(row); !others.isEmpty()) {
            why += QLatin1Char(' ') + tr("Also to call about: %1").arg(others.join(QStringLiteral(" · ")));
        }
        const auto name = QString::fromStdString(view->summary.patientName);
        waiting.rows.append({urgencyName(row.urgency), name + QStringLiteral(", ") + dayText(row.day) + QStringLiteral(", ") + leftToRight(view->summary.patientPhone),
                             why, stampText(row.since),
                             row.takenBy ? QString::fromStdString(*row.takenBy) : tr("nobody")});
    }
    std::vector<std::pair<clock::Instant, QString>> noted;
    const auto isRecent = [&now](clock::Instant at) { return at <= now.at && now.at - at < lately; };
    for (const auto& [id, course] : m_workplace.state().courses) {
        for (std::size_t i = 0; i < course.acts.size(); ++i) {
            const auto& act = course.acts[i];
            if (isRecent(act.at.at)) {
                const auto* back = course.takenBack(i);
                noted.emplace_back(act.at.at, m_workplace.patientName(id) + QStringLiteral(": ") + actText(act, &stampText, !m_workplace.state().couldDo(course, act))
                                                  + (back == nullptr ? QString() : QStringLiteral(". ") + tr("Taken back by %1").arg(QString::fromStdString(back->by))));
            }
        }
        for (const auto& call : course.calls) {
            if (isRecent(call.value.at.at)) {
                noted.emplace_back(call.value.at.at, m_workplace.patientName(id) + QStringLiteral(": ") + callText(course, call, &stampText));
            }
        }
    }
    std::ranges::stable_sort(noted, {}, [](const auto& line) { return line.first; });
    for (const auto& [at, text] : noted) {
        done.lines << text;
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
}

QString HandOverBoard::pinned() const
{
    const auto now = m_workplace.now();
    return wordsUp([&now](const clock::Moment& at) { return whenText(at, now); });
}

QString HandOverBoard::wordsUp(const Stamp& stamp) const
{
    QStringList words;
    if (m_workplace.isOpen()) {
        for (const auto& word : m_workplace.desk().wordsUp()) {
            words << tr("%1 (%2, %3)", "note, person, when").arg(QString::fromStdString(word.text), QString::fromStdString(word.by), stamp(word.at));
        }
    }
    return words.join(QLatin1Char('\n'));
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
    if (m_workplace.settle(desk.handOver(word))) {
        setWord({});
        open();
    }
}

void HandOverBoard::takeDown()
{
    if (m_workplace.isOpen() && m_workplace.settle(m_workplace.desk().takeWordsDown())) {
        open();
    }
}

bool HandOverBoard::write(const QString& path)
{
    if (path.isEmpty() || !isOpened()) {
        return false;
    }
    make();
    const auto written = writePaper(m_paper, path, false, QGuiApplication::layoutDirection() == Qt::RightToLeft);
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patients' records.").arg(path) : errorText(written.error());
    Q_EMIT changed();
    return written.has_value();
}

void HandOverBoard::saveAs()
{
    askWhereToSave(*this, tr("Save the hand-over"), QStringLiteral("hand-over-%1.pdf").arg(dateOf(m_workplace.now()).toString(Qt::ISODate)),
        {QStringLiteral("PDF (*.pdf)"), QStringLiteral("TXT (*.txt)")}, [this](const QString& path) { write(path); });
}

void HandOverBoard::print()
{
    if (!isOpened()) {
        return;
    }
    make();
    Q_EMIT changed();
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    m_printer.print(
        m_paper.title, QPageSize::A4, [paper = m_paper, mirrored](const QSizeF& size) { return pagesOf(paper, size, mirrored); },
        [this](const QString& sentence) {
            m_outcome = sentence;
            Q_EMIT changed();
        });
}

void HandOverBoard::copy()
{
    if (!isOpened()) {
        return;
    }
    make();
    QGuiApplication::clipboard()->setText(m_paper.asText());
    m_outcome = tr("Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.");
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
