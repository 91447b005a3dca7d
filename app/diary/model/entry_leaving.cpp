// Throwing an entry away: never without a question, and never without what its warning signs ask for.
#include "app/diary/model/entry_board.h"

#include "app/diary/model/entry_words.h"
#include "app/diary/model/words.h"

namespace ebbline::diaryapp {

QString EntryBoard::throwText() const
{
    recovery::Entry urgent;
    urgent.present = m_entry.present;
    urgent.temperature = m_entry.temperature;
    QStringList lines;
    if (const QString told = entryText(urgent, isFahrenheit()); !told.isEmpty())
        lines << tr("You told the diary:") << told;
    const auto raised = m_throwing && m_home.isOpen() ? m_home.diary().judged(m_entry) : std::vector<triage::Finding>{};
    if (!raised.empty())
        lines << tr("If that is true: %1.").arg(adviceFor(raised.front()).title);
    lines << tr("Throw away all that you typed here? There is no way back.");
    return lines.join(QLatin1Char('\n'));
}

void EntryBoard::askDiscard()
{
    if (!isBegun({m_entry, m_temperature.toStdString(), 0}))
        return discard();
    m_throwing = true;
    Q_EMIT changed();
}

void EntryBoard::keepTyping()
{
    m_throwing = false;
    Q_EMIT changed();
}

void EntryBoard::discard()
{
    m_throwing = false;
    const Done discarded = m_amends ? m_home.diary().discardCorrection() : m_home.diary().discardDraft();
    if (!discarded) {
        m_problem = errorText(discarded.error());
        Q_EMIT changed();
        return;
    }
    m_unkept = false;
    Q_EMIT left();
}

}  // namespace ebbline::diaryapp
