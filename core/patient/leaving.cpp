// Taking one's own data along, and taking the diary off the phone.

#include "core/patient/inside.h"

#include "core/bytes/decimal.h"
#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/exchange/calendar.h"
#include "core/exchange/fhir_bundle.h"
#include "core/exchange/table_moments.h"
#include "core/exchange/tables.h"
#include "core/store/durable_file.h"

namespace ebbline::patient {

namespace {

using exchange::guarded;

constexpr const char* calendarName = "calendar-id";
constexpr std::array keyFiles{"vault.keys", "vault.keys.previous"};

std::string stateWord(const EntryState& state)
{
    switch (state.place) {
    case EntryState::Place::opened: return "opened";
    case EntryState::Place::withClinic: return "with-clinic";
    case EntryState::Place::savedHere: break;
    }
    return "saved-here";
}

std::string answerWord(records::ReminderAnswer answer)
{
    switch (answer) {
    case records::ReminderAnswer::done: return "done";
    case records::ReminderAnswer::notDone: return "not-done";
    case records::ReminderAnswer::later: break;
    }
    return "later";
}

}  // namespace

std::string shortName(const recovery::EntryId& id) { return bytes::toHex(id.view()).substr(0, 12); }

std::map<std::string, std::string> Diary::tables() const
{
    std::map<std::string, std::string> files;
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return files;
    exchange::CsvWriter entries;
    entries.row({"entry", "version", "about", "written", "temperature_celsius", "note", "state", "opened_by"});
    std::vector<const recovery::Entry*> standing;
    exchange::CsvWriter versions;
    versions.row({"entry", "version", "symptom", "side", "score"});
    const auto views = history();
    for (auto view = views.rbegin(); view != views.rend(); ++view) {
        const auto& kept = view->history.versions;
        for (std::size_t i = 0; i < kept.size(); ++i) {
            const recovery::Entry& entry = kept[i].value;
            const bool current = i + 1 == kept.size();
            const journal::Opening* before = current ? nullptr : course->opening(view->history, i);
            const std::string version = std::to_string(i + 1);
            entries.row({shortName(entry.id), version, clock::toIso8601(entry.at), clock::toIso8601(entry.recordedAt),
                         entry.temperature ? bytes::fixedDecimal(entry.temperature->celsius(), 1) : std::string(), guarded(entry.note),
                         current ? stateWord(view->state) : "replaced",
                         guarded(current ? view->state.openedBy : before ? before->by : std::string())});
            for (const auto& [stream, score] : entry.scores)
                versions.row({shortName(entry.id), version, recovery::word(stream.symptom), recovery::word(stream.side),
                              std::to_string(score.points())});
            if (current)
                standing.push_back(&entry);
        }
    }
    std::vector<exchange::ScoreRow> scores;
    std::vector<exchange::SignRow> signs;
    std::vector<exchange::TemperatureRow> temperatures;
    for (const auto& [entry, at] : exchange::inTables(standing, course->opened->treated)) {
        for (const auto& [stream, score] : entry->scores)
            scores.push_back({"mine", course->opened->treated, at, stream.symptom, stream.side, score});
        for (const auto* answered : {&entry->present, &entry->absent})
            for (const recovery::Sign sign : *answered)
                signs.push_back({"mine", course->opened->treated, at, sign, answered == &entry->present});
        if (entry->temperature)
            temperatures.push_back({"mine", course->opened->treated, at, *entry->temperature});
    }
    exchange::CsvWriter reminders;
    reminders.row({"reminder", "answer", "answered"});
    for (const auto& [key, answered] : course->reminders)
        reminders.row({key, answerWord(answered.answer), clock::toIso8601(answered.at)});
    exchange::CsvWriter notes;
    notes.row({"from", "written", "read", "text"});
    for (const records::MessageWritten& message : course->messages) {
        const auto read = course->reads.find(message.message);
        notes.row({message.by.empty() ? std::string("me") : guarded(message.by), clock::toIso8601(message.at),
                   read == course->reads.end() ? std::string() : clock::toIso8601(read->second.at), guarded(message.text)});
    }
    files["entries.csv"] = std::move(entries).take();
    files["versions.csv"] = std::move(versions).take();
    files["scores.csv"] = exchange::writeScores(scores);
    files["signs.csv"] = exchange::writeSigns(signs);
    files["temperatures.csv"] = exchange::writeTemperatures(temperatures);
    files["reminders.csv"] = std::move(reminders).take();
    files["notes.csv"] = std::move(notes).take();
    files["photos.csv"] = Inside::photoTable(photos(), photoFiles());
    return files;
}

Result<std::string> Diary::bundle(const std::string& program) const
{
    const journal::CourseState* course = m_inside->course();
    if (!course)
        return fail(Reason::notFound, "no course yet");
    auto record = exchange::recordOf(m_inside->courseId(), *course);
    if (!record)
        return fail(record.error());
    exchange::describePictures(*record, [this](const photos::PhotoId& one) { return photo(one); }, photoFiles());
    return exchange::writeBundle(*record, m_inside->findings(),
                                 {.patientName = "", .written = m_inside->now(), .program = program,
                                  .reminders = exchange::remindersOf(*course, m_inside->zone, quietHours())});
}

Result<std::string> Diary::calendar(const std::string& words, const std::string& language)
{
    // A random name of this diary's calendar: without it the identifiers say nothing of the reminders.
    auto name = m_inside->vault.kept(calendarName);
    if (!name) {
        if (name.error().reason != Reason::notFound)
            return fail(name.error());
        const auto fresh = crypto::randomArray<32>();
        if (const Done kept = m_inside->vault.keep(calendarName, fresh); !kept)
            return fail(kept.error());
        name = bytes::Bytes(fresh.begin(), fresh.end());
    }
    std::vector<exchange::CalendarEvent> events;
    for (const aftercare::Reminder& reminder : upcoming(exchange::maximumTableRows))
        events.push_back({bytes::toHex(crypto::keyedHash128(*name, bytes::viewOf(reminder.key))), reminder.due});
    const journal::CourseState* course = m_inside->course();
    return exchange::writeCalendar(events, m_inside->zone, {words, language}, m_inside->clock.now(), course ? course->planChanges : 0);
}

Done Diary::erase(const std::filesystem::path& folder)
{
    std::error_code problem;
    for (const char* name : keyFiles) {
        if (!std::filesystem::exists(folder / name, problem))
            continue;
        // Overwritten first, where it is: a removal alone may come back after a power cut, and leaves what it held.
        if (const Done wiped = store::overwrite(folder / name); !wiped)
            return wiped;
        std::filesystem::remove(folder / name, problem);
        if (problem)
            return fail(Reason::storageFailed, "erase: a key file stays");
    }
    for (std::filesystem::directory_iterator it(folder, problem), end; !problem && it != end; it.increment(problem)) {
        const std::string name = it->path().filename().string();
        if (!name.starts_with("vault.") && name != "open.info")
            continue;
        std::error_code failed;
        std::filesystem::remove(it->path(), failed);
        if (failed)
            problem = failed;
    }
    if (problem && std::filesystem::exists(folder))
        return fail(Reason::storageFailed, "erase: a file stays");
    std::filesystem::remove(folder, problem);  // only if nothing of others is in it
    return {};
}

}  // namespace ebbline::patient
