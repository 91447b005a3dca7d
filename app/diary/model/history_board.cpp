#include "app/diary/model/history_board.h"

#include "app/diary/model/entry_words.h"
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "core/bytes/text.h"

#include <algorithm>

namespace ebbline::diaryapp {

namespace {

QString placeOf(const patient::EntryState& state, const clock::Moment& now, const aftercare::Zone& zone)
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

/// An opening of what a correction took the place of is said, and said not to be one of the correction.
QString stateOf(const patient::EntryState& state, const clock::Moment& now, const aftercare::Zone& zone)
{
    const QString place = placeOf(state, now, zone);
    return state.openedBefore ? HistoryBoard::tr("%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.", "state, person, time")
                                    .arg(place, QString::fromStdString(state.openedBefore->by), whenText(state.openedBefore->at, now))
                              : place;
}

/// Takes those that belong somewhere out of all, in their order.
template <typename Belongs>
std::vector<patient::PhotoView> takenOut(std::vector<patient::PhotoView>& all, Belongs belongs)
{
    const auto rest = std::stable_partition(all.begin(), all.end(), [&](const patient::PhotoView& view) { return !belongs(view); });
    std::vector<patient::PhotoView> taken(rest, all.end());
    all.erase(rest, all.end());
    return taken;
}

void addPhotos(EntryLine& line, const std::vector<patient::PhotoView>& views, const clock::Moment& now, const aftercare::Zone& zone)
{
    for (const patient::PhotoView& view : views)
        line.photos << photoLine(view, now, zone);
    line.photosState = photosState(views);
}

/// Those without an entry, a line for each day, between the lines of entries of whose moments `times` tells.
void addBare(QList<EntryLine>& lines, std::vector<clock::Instant>& times, std::vector<patient::PhotoView> views, const clock::Moment& now,
             const aftercare::Zone& zone)
{
    while (!views.empty()) {
        const patient::PhotoView newest = views.back();
        EntryLine line;
        line.bare = true;
        line.title = HistoryBoard::tr("%1, %2").arg(dayText(newest.day), whenText(newest.at, now));
        addPhotos(line, takenOut(views, [&](const patient::PhotoView& view) { return view.at.day() == newest.at.day(); }), now, zone);
        const auto place = std::ranges::find_if(times, [&](clock::Instant time) { return time <= newest.at.at; });
        lines.insert(place - times.begin(), line);
        times.insert(place, newest.at.at);
    }
}

}  // namespace

HistoryBoard::HistoryBoard(Home& home, DiarySettings& settings, PhotoShelf& shelf, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings), m_shelf(shelf)
{
    connect(&settings, &DiarySettings::changed, this, &HistoryBoard::changed);
    connect(&home, &Home::changed, this, &HistoryBoard::changed);
    connect(&home, &Home::openChanged, this, &HistoryBoard::changed);
    connect(&home, &Home::openChanged, this, &HistoryBoard::draftChanged);
}

QList<EntryLine> HistoryBoard::entries() const
{
    QList<EntryLine> lines;
    if (!m_home.isOpen())
        return lines;
    const clock::Moment now = m_home.now();
    const auto begun = m_home.diary().correctionDraft();
    auto photos = m_home.diary().photos();
    std::vector<clock::Instant> times;
    for (const patient::EntryView& view : m_home.diary().history()) {
        const recovery::Entry& entry = view.history.current();
        QStringList marks;
        // Late is what was first written late; a correction has a time of its own.
        const recovery::Entry& first = view.history.versions.front().value;
        if (first.isLate())
            marks << tr("Written later, %1.").arg(whenText(first.recordedAt, now));
        QStringList before;
        if (view.history.amended()) {
            marks << tr("Corrected %1.").arg(whenText(entry.recordedAt, now));
            for (std::size_t i = view.history.versions.size() - 1; i-- > 0;)
                before << versionText(view.history.versions[i].value, entry, now);
        }
        std::vector<triage::Finding> raised = view.findings;
        std::ranges::stable_sort(raised, {}, &triage::Finding::urgency);
        lines << EntryLine{QString::fromStdString(bytes::toHex(entry.id.view())),
                           tr("%1, %2").arg(dayText(view.day), whenText(entry.at, now)),
                           entryText(entry, m_settings.isFahrenheit()), marks.join(QLatin1Char(' ')), QString::fromStdString(entry.note),
                           raised.empty() ? QString() : adviceFor(raised.front()).title,
                           !raised.empty() && raised.front().urgency <= recovery::Urgency::callNow,
                           adviceText(raised, m_settings.isFahrenheit()),
                           stateOf(view.state, now, m_home.zone()), before.join(QLatin1Char('\n')),
                           begun && begun->entry.id == entry.id, {}, {}, false};
        // A photograph stays with its entry through every correction.
        addPhotos(lines.back(), takenOut(photos, [&](const patient::PhotoView& photo) {
                      return std::ranges::any_of(view.history.versions, [&](const auto& version) { return version.value.id == photo.entry; });
                  }), now, m_home.zone());
        times.push_back(entry.at.at);
    }
    addBare(lines, times, std::move(photos), now, m_home.zone());
    return lines;
}

QString HistoryBoard::versionText(const recovery::Entry& old, const recovery::Entry& current, const clock::Moment& now) const
{
    QStringList lines{tr("As written %1:").arg(whenText(old.recordedAt, now))};
    if (old.at != current.at)
        lines << tr("It was about %1.").arg(whenText(old.at, now));
    if (const QString text = entryText(old, m_settings.isFahrenheit()); !text.isEmpty())
        lines << text;
    if (!old.note.empty())
        lines << QString::fromStdString(old.note);
    return lines.join(QLatin1Char('\n'));
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
        const auto read = m_home.diary().readAt(message.message);
        QString state = tr("Not read by the clinic yet");
        if (mine && read)
            state = tr("Read by the clinic, %1").arg(whenText(*read, now));
        else if (!mine)
            state = read ? tr("Seen by you, %1").arg(whenText(*read, now)) : QString();
        lines << NoteLine{from, QString::fromStdString(message.text), state, mine};
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

QString HistoryBoard::noteDraft() const
{
    return m_home.isOpen() ? QString::fromStdString(m_home.diary().noteDraft()) : QString();
}

void HistoryBoard::setNoteDraft(const QString& text)
{
    if (!m_home.isOpen() || text == noteDraft())
        return;
    if (const Done kept = m_home.diary().keepNoteDraft(text.toStdString()); !kept)
        Q_EMIT failed(errorText(kept.error()));
    Q_EMIT draftChanged();
}

bool HistoryBoard::sendNote()
{
    const bool sent = writeNote(noteDraft());
    Q_EMIT draftChanged();
    return sent;
}

bool HistoryBoard::writeNote(const QString& text)
{
    if (!m_home.isOpen() || text.trimmed().isEmpty())
        return false;
    const Done done = m_home.diary().writeMessage(text.trimmed().toStdString());
    if (!done)
        Q_EMIT failed(done.error().reason == Reason::tooLarge ? tr("This note is too long to send. Send a part of it, and the rest as a second note.")
                                                              : errorText(done.error()));
    m_home.touch();
    return done.has_value();
}

}  // namespace ebbline::diaryapp
