#include "app/diary/model/history_board.h"

#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "core/bytes/text.h"

#include <QLocale>

namespace ebbline::diaryapp {

namespace {

QString scoresOf(const recovery::Entry& entry)
{
    QStringList lines;
    for (const recovery::Symptom symptom : recovery::allSymptoms) {
        const auto left = entry.scores.find({symptom, recovery::Side::left});
        const auto right = entry.scores.find({symptom, recovery::Side::right});
        if (left == entry.scores.end() && right == entry.scores.end())
            continue;
        const auto said = [&](const auto& found) {
            return found == entry.scores.end() ? QStringLiteral("–") : digits(found->second.points());
        };
        lines << HistoryBoard::tr("%1: right %2, left %3").arg(symptomName(symptom), said(right), said(left));
    }
    if (entry.temperature)
        lines << HistoryBoard::tr("Temperature: %1 °C").arg(QLocale().toString(entry.temperature->celsius(), 'f', 1));
    for (const recovery::Sign sign : entry.present)
        lines << signQuestion(sign);
    return lines.join(QLatin1Char('\n'));
}

QString stateOf(const patient::EntryState& state, const clock::Moment& now, const aftercare::Zone& zone)
{
    switch (state.place) {
    case patient::EntryState::Place::opened:
        return HistoryBoard::tr("Opened by %1, %2").arg(QString::fromStdString(state.openedBy), whenText(*state.openedAt, now));
    case patient::EntryState::Place::withClinic:
        return HistoryBoard::tr("On the clinic's computer since %1").arg(whenText(zone.moment(*state.since), now));
    case patient::EntryState::Place::savedHere: break;
    }
    return HistoryBoard::tr("Saved on this phone");
}

}  // namespace

HistoryBoard::HistoryBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home, &Home::changed, this, &HistoryBoard::changed);
    connect(&home, &Home::openChanged, this, &HistoryBoard::changed);
}

QList<EntryLine> HistoryBoard::entries() const
{
    QList<EntryLine> lines;
    if (!m_home.isOpen())
        return lines;
    const clock::Moment now = m_home.now();
    for (const patient::EntryView& view : m_home.diary().history()) {
        const recovery::Entry& entry = view.history.current();
        QStringList marks;
        if (entry.isLate())
            marks << tr("Written later, %1.").arg(whenText(entry.recordedAt, now));
        if (view.history.amended())
            marks << tr("Corrected. The first version is kept.");
        QString warning;
        auto most = recovery::Urgency::atReview;
        for (const triage::Finding& finding : view.findings)
            if (warning.isEmpty() || finding.urgency < most) {
                most = finding.urgency;
                warning = adviceFor(finding).title;
            }
        lines << EntryLine{QString::fromStdString(bytes::toHex(entry.id.view())),
                           tr("%1, %2").arg(dayText(view.day), whenText(entry.at, now)),
                           scoresOf(entry), marks.join(QLatin1Char(' ')), QString::fromStdString(entry.note), warning,
                           !warning.isEmpty() && most <= recovery::Urgency::callNow,
                           stateOf(view.state, now, m_home.zone())};
    }
    return lines;
}

std::optional<recovery::EntryId> HistoryBoard::entryOf(const QString& key) const
{
    const auto decoded = bytes::fromHex(key.toStdString());
    return decoded && decoded->size() == 16 ? std::optional(recovery::EntryId::from(*decoded)) : std::nullopt;
}

QList<NoteLine> HistoryBoard::notes() const
{
    QList<NoteLine> lines;
    if (!m_home.isOpen())
        return lines;
    const clock::Moment now = m_home.now();
    for (const records::MessageWritten& message : m_home.diary().messages()) {
        const bool mine = message.by.empty();
        QString from = mine ? tr("You, %1").arg(whenText(message.at, now))
                            : tr("%1, %2").arg(QString::fromStdString(message.by), whenText(message.at, now));
        if (mine && m_home.diary().isRead(message.message))
            from += tr(" (read by the clinic)");
        lines << NoteLine{from, QString::fromStdString(message.text), mine};
    }
    return lines;
}

void HistoryBoard::markRead()
{
    if (m_home.isOpen())
        if (const Done done = m_home.diary().readMessages(); !done)
            Q_EMIT failed(errorText(done.error()));
    m_home.touch();
}

bool HistoryBoard::writeNote(const QString& text)
{
    if (!m_home.isOpen() || text.trimmed().isEmpty())
        return false;
    const Done done = m_home.diary().writeMessage(text.trimmed().toStdString());
    if (!done)
        Q_EMIT failed(errorText(done.error()));
    m_home.touch();
    return done.has_value();
}

}  // namespace ebbline::diaryapp
