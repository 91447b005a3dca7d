#include "app/story/summary.h"

#include "app/story/hub_search.h"
#include "core/clock/iso8601.h"
#include "core/sync/messages.h"
#include "core/sync/packed.h"

#include <QFile>
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

}  // namespace

int Summary::counted(const char* what) const
{
    const auto found = m_counts.find(what);
    return found == m_counts.end() ? 0 : found->second;
}

bool Summary::isPlain(const std::string& patientName) const
{
    return std::any_of(m_scenario.patients.begin(), m_scenario.patients.end(),
                       [&](const Patient& patient) { return patient.name == patientName && patient.kind == "plain"; });
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

Done Summary::judgeSecrecy(Stage& stage)
{
    QStringList words{QString::fromStdString(m_scenario.clinicName), QString::fromStdString(m_scenario.practitioner),
                      QStringLiteral("swelling"), QStringLiteral("puckering")};
    for (const Patient& patient : m_scenario.patients) {
        words << QString::fromStdString(patient.name) << QString::fromStdString(patient.phone);
        for (const Telling& telling : patient.tellings)
            if (!telling.note.empty())
                words << QString::fromStdString(telling.note);
    }
    const bytes::Bytes& carried = stage.carried();
    stage.hub().stop();
    auto hub = HubSearch::open(stage.hub().folder());
    if (!hub)
        return fail(hub.error());
    const auto kept = hub->search(words);
    if (!kept)
        return fail(kept.error());
    QJsonArray readable;
    for (const QString& word : kept->words + hub->wordsInLog(words))
        readable.append(word);
    for (const QString& word : readableIn(carried, words))
        readable.append(word);
    const std::vector<bytes::Bytes> unpacked = sync::unpackedWithin(carried);
    const auto wasCarried = [&](bytes::View operation) {
        return contains(carried, operation) || std::ranges::any_of(unpacked, [&](const bytes::Bytes& plain) { return contains(plain, operation); });
    };

    // Scores are numbers and cannot be searched for; whole operations, scores and all, can.
    int operations = 0, operationsReadable = 0, notesInPhones = 0;
    QStringList planted, plantedPacked;
    for (auto& phone : stage.phones()) {
        std::vector<journal::Operation> entries;
        QStringList notes;
        for (const journal::Operation& operation : phone->program->home().diary().vault().operations()) {
            if (operation.kind != static_cast<std::uint16_t>(records::Kind::entryRecorded))
                continue;
            ++operations;
            operationsReadable += wasCarried(operation.body) ? 1 : 0;
            entries.push_back(operation);
            for (const Telling& telling : phone->patient->tellings)
                if (!telling.note.empty() && contains(operation.body, bytes::viewOf(telling.note))) {
                    ++notesInPhones;
                    notes << QString::fromStdString(telling.note);
                    const auto unsealed = planted.isEmpty() ? hub->searchWith(operation.body, notes) : Result<HubSearch::Found>{};
                    if (!unsealed)
                        return fail(unsealed.error());
                    planted << unsealed->words;
                }
        }
        // Packed as they go into an envelope: a search that does not unpack passes over them.
        if (plantedPacked.isEmpty() && !notes.isEmpty()) {
            const auto unsealed = hub->searchWith(sync::packOperations(entries), notes);
            if (!unsealed)
                return fail(unsealed.error());
            plantedPacked = unsealed->words;
        }
    }
    const auto after = hub->search(words);
    if (!after || after->cells != kept->cells)
        return fail(Reason::invalidState, "secrecy: what was put into the hub for the search is still there");
    m_hub["database_bytes"] = hub->databaseBytes();
    m_hub["database_rows"] = static_cast<int>(kept->rows);
    m_hub["database_cells"] = static_cast<int>(kept->cells);
    m_hub["planted_words_found"] = QJsonArray::fromStringList(planted);
    m_hub["planted_packed_words_found"] = QJsonArray::fromStringList(plantedPacked);
    m_hub["log_holds_its_own_words"] = !hub->wordsInLog({QStringLiteral("listening")}).isEmpty();
    m_hub["bytes_carried"] = static_cast<qint64>(carried.size());
    m_hub["words_searched"] = static_cast<int>(words.size());
    m_hub["words_readable"] = readable;
    m_hub["entries_searched"] = operations;
    m_hub["entries_readable"] = operationsReadable;
    m_hub["notes_found_on_phones"] = notesInPhones;
    if (!readable.isEmpty() || operationsReadable > 0)
        return fail(Reason::refused, "secrecy: something of a patient can be read on the way");
    if (operations == 0 || notesInPhones == 0 || planted.isEmpty() || plantedPacked.isEmpty() || hub->wordsInLog({QStringLiteral("listening")}).isEmpty())
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
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(QJsonDocument(root).toJson()) < 0)
        return fail(Reason::storageFailed, "story: the summary cannot be written");
    return {};
}

}  // namespace ebbline::story
