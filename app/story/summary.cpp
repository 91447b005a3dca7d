#include "app/story/summary.h"

#include "app/story/hub_search.h"
#include "app/story/story_folder.h"
#include "core/clock/iso8601.h"
#include "core/sync/messages.h"
#include "core/sync/packed.h"

#include <QJsonDocument>

#include <algorithm>

namespace ebbline::story {

namespace {

bool contains(bytes::View where, bytes::View what)
{
    return std::search(where.begin(), where.end(), what.begin(), what.end()) != where.end();
}

double hoursOf(std::chrono::milliseconds time)
{
    return std::round(std::chrono::duration<double, std::ratio<3600>>(time).count() * 10) / 10;
}

/// The days that the clinic's protocol promises, for whoever holds the findings to them.
QJsonObject protocolDays()
{
    const triggers::Thresholds thresholds = triggers::defaultProtocol().thresholds;
    return {{"silent_days", thresholds.silentDays},
            {"silent_days_when_high", thresholds.silentDaysWhenHigh},
            {"puckering_kept_day", thresholds.puckeringKeptDay}};
}

/// What the phones hold of entries, as it was before it was sealed.
struct Written {
    std::vector<bytes::Bytes> bodies;       ///< of all phones
    int notesFound = 0;                     ///< that stand in them
    std::vector<journal::Operation> ofOne;  ///< all of the first phone that wrote some with and some without a note; of these
    QStringList notes;                      ///< what their notes say
    bytes::Bytes noted;                     ///< one with a note
    bytes::Bytes unnoted;                   ///< one without: scores and signs alone
};

Written entriesOf(Stage& stage)
{
    Written written;
    for (auto& phone : stage.phones()) {
        Written mine;
        for (const journal::Operation& operation : phone->program->home().diary().vault().operations()) {
            if (operation.kind != static_cast<std::uint16_t>(records::Kind::entryRecorded))
                continue;
            mine.ofOne.push_back(operation);
            written.bodies.push_back(operation.body);
            const auto before = mine.notes.size();
            for (const Telling& telling : phone->patient->tellings)
                if (!telling.note.empty() && contains(operation.body, bytes::viewOf(telling.note)))
                    mine.notes << QString::fromStdString(telling.note);
            (mine.notes.size() > before ? mine.noted : mine.unnoted) = operation.body;
        }
        written.notesFound += static_cast<int>(mine.notes.size());
        if (written.ofOne.empty() && !mine.noted.empty() && !mine.unnoted.empty()) {
            written.ofOne = mine.ofOne;
            written.notes = mine.notes;
            written.noted = mine.noted;
            written.unnoted = mine.unnoted;
        }
    }
    return written;
}

}  // namespace

int Summary::counted(const char* what) const
{
    const auto found = m_counts.find(what);
    return found == m_counts.end() ? 0 : found->second;
}

void Summary::found(Stage& stage, const recovery::CourseId& course, const triage::Finding& finding)
{
    const auto phone = std::find_if(stage.phones().begin(), stage.phones().end(),
                                    [&](const auto& each) { return each->course == course; });
    if (phone == stage.phones().end() || std::exchange(m_seen[(*phone)->patient->name + finding.key], true))
        return;
    const Patient& patient = *(*phone)->patient;
    QJsonObject row;
    row["course"] = QString::fromStdString(patient.kind);
    if (const auto* trigger = std::get_if<triggers::Finding>(&finding.what)) {
        row["trigger"] = QString::fromStdString(std::string(triggers::word(trigger->trigger)));
        // Silence is about no symptom, here as in a table of findings.
        row["symptom"] = trigger->trigger == triggers::Trigger::silence
                             ? QStringLiteral("-")
                             : QString::fromStdString(std::string(recovery::word(trigger->stream.symptom)));
        row["side"] = QString::fromStdString(std::string(recovery::word(trigger->stream.side)));
        // Raised because the visit on this day was missed.
        if (const auto visit = trigger->numbers.find("visit"); visit != trigger->numbers.end())
            row["visit_day"] = static_cast<int>(visit->second);
    } else {
        row["trigger"] = QString::fromStdString("warning:" + std::get<warnings::Finding>(finding.what).rule);
    }
    row["urgency"] = QString::fromStdString(std::string(recovery::word(finding.urgency)));
    row["day"] = finding.day;
    row["raised_at"] = QString::fromStdString(clock::toIso8601(finding.raisedAt));
    row["reason"] = QString::fromStdString(triage::explain(finding));
    row["hours_to_queue"] = hoursOf(stage.now() - finding.raisedAt.at);
    if (patient.onsetMinutes) {
        const auto treated = stage.zone().instantOf(m_scenario.firstDay + std::chrono::days(patient.treatedOnDay),
                                                    std::chrono::minutes(patient.treatedAtMinute));
        const auto after = finding.raisedAt.at - (treated + std::chrono::minutes(*patient.onsetMinutes));
        row["hours_after_onset"] = hoursOf(after);
    }
    m_findings.append(row);
}

QStringList Summary::wordsOfPatients() const
{
    QStringList words{QString::fromStdString(m_scenario.clinicName), QString::fromStdString(m_scenario.practitioner),
                      QStringLiteral("swelling"), QStringLiteral("puckering")};
    for (const Patient& patient : m_scenario.patients) {
        words << QString::fromStdString(patient.name) << QString::fromStdString(patient.phone);
        for (const Telling& telling : patient.tellings)
            if (!telling.note.empty())
                words << QString::fromStdString(telling.note);
    }
    return words;
}

Done Summary::judgeSecrecy(Stage& stage)
{
    const QStringList words = wordsOfPatients();
    const Written written = entriesOf(stage);
    const bytes::Bytes& carried = stage.carried();
    stage.hub().stop();
    auto hub = HubSearch::open(stage.hub().folder());
    if (!hub)
        return fail(hub.error());
    // Scores are numbers and cannot be searched for; whole entries, scores and all, can.
    const auto kept = hub->search({words, written.bodies});
    if (!kept)
        return fail(kept.error());
    QJsonArray readable;
    for (const QString& word : kept->words + hub->wordsInLog(words) + readableIn(carried, words))
        readable.append(word);
    const std::vector<bytes::Bytes> unpacked = sync::unpackedWithin(carried);
    const auto onTheWay = std::ranges::count_if(written.bodies, [&](const bytes::Bytes& body) {
        return contains(carried, body) || std::ranges::any_of(unpacked, [&](const bytes::Bytes& plain) { return contains(plain, body); });
    });

    // What the same search must find, put in unsealed: a note, an entry that has none, and both packed as they go into an envelope.
    const auto note = hub->searchWith(written.noted, {written.notes});
    const auto scores = hub->searchWith(written.unnoted, {{}, {written.unnoted}});
    const auto packed = hub->searchWith(sync::packOperations(written.ofOne), {written.notes, {written.unnoted}});
    for (const auto* planted : {&note, &scores, &packed})
        if (!*planted)
            return fail(planted->error());
    const auto after = hub->search({words});
    if (!after || after->cells != kept->cells)
        return fail(Reason::invalidState, "secrecy: what was put into the hub for the search is still there");
    const bool logIsRead = !hub->wordsInLog({QStringLiteral("listening")}).isEmpty();
    m_hub["database_bytes"] = hub->databaseBytes();
    m_hub["database_rows"] = static_cast<int>(kept->rows);
    m_hub["database_cells"] = static_cast<int>(kept->cells);
    m_hub["planted_words_found"] = QJsonArray::fromStringList(note->words);
    m_hub["planted_packed_words_found"] = QJsonArray::fromStringList(packed->words);
    m_hub["planted_entries_found"] = static_cast<int>(scores->bodies);
    m_hub["planted_packed_entries_found"] = static_cast<int>(packed->bodies);
    m_hub["log_holds_its_own_words"] = logIsRead;
    m_hub["bytes_carried"] = static_cast<qint64>(carried.size());
    m_hub["words_searched"] = static_cast<int>(words.size());
    m_hub["words_readable"] = readable;
    m_hub["entries_searched"] = static_cast<int>(written.bodies.size());
    m_hub["entries_readable"] = static_cast<int>(onTheWay);
    m_hub["entries_readable_in_database"] = static_cast<int>(kept->bodies);
    m_hub["notes_found_on_phones"] = written.notesFound;
    if (!readable.isEmpty() || onTheWay > 0 || kept->bodies > 0)
        return fail(Reason::refused, "secrecy: something of a patient can be read at the hub or on the way");
    if (written.ofOne.empty() || note->words.isEmpty() || scores->bodies == 0 || packed->words.isEmpty() || packed->bodies == 0 || !logIsRead)
        return fail(Reason::notEnough, "secrecy: the search finds nothing even where it must");
    return {};
}

void Summary::followed(const std::string& kind, const QStringList& states)
{
    m_followed = {{"course", QString::fromStdString(kind)}, {"states", QJsonArray::fromStringList(states)}};
}

Done Summary::write(const QString& file, const Done& played) const
{
    QJsonObject counts;
    for (const auto& [what, count] : m_counts)
        counts[QString::fromStdString(what)] = count;
    QJsonObject root;
    root["result"] = played ? QStringLiteral("played to the end") : QString::fromStdString("stopped: " + played.error().detail);
    root["days"] = m_scenario.days;
    root["steps"] = counts;
    root["findings"] = m_findings;
    root["protocol"] = protocolDays();
    root["entry_followed"] = m_followed;
    root["hub"] = m_hub;
    return writeWhole(file, QJsonDocument(root).toJson());
}

}  // namespace ebbline::story
