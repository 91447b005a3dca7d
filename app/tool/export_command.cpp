// ebbline export, read-bundle: a course as a FHIR bundle, and back into open tables.

#include "app/tool/course_tables.h"
#include "app/tool/file_guard.h"
#include "app/tool/secret_input.h"
#include "app/tool/subcommand.h"
#include "app/tool/vault_words.h"

#include "core/bytes/text.h"
#include "core/clock/iso8601.h"
#include "core/exchange/fhir_bundle.h"
#include "core/exchange/table_moments.h"
#include "core/exchange/tables.h"
#include "core/vault/vault.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

struct Options {
    std::string folder;
    std::string course;
    std::string out;
    std::string bundle;
    std::string scores;
    std::string signs;
    std::string temperatures;
    bool named = false;
    bool recoveryCode = false;
};

int refuse(const char* command, const Error& error)
{
    std::cerr << "ebbline " << command << ": " << sentence(error) << '\n';
    return error.reason == Reason::storageFailed ? failed : badInput;
}

int refuseFiles(const char* command, const Error& error)
{
    std::cerr << "ebbline " << command << ": " << error.detail << '\n';
    return badInput;
}

Result<vault::Vault> unlocked(const Options& options, const clock::Clock& clock)
{
    if (const Done ready = crypto::initialise(); !ready)
        return fail(ready.error());
    SecretLine line;
    if (const Done read = line.read(options.recoveryCode ? "Recovery code" : "Passphrase"); !read)
        return fail(read.error());
    if (!options.recoveryCode)
        return vault::Vault::unlock(options.folder, bytes::viewOf(line.text()), clock);
    const auto code = vault::RecoveryCode::fromText(line.text());
    if (!code)
        return fail(code.error());
    return vault::Vault::unlock(options.folder, vault::Offered::recoveryCode(*code), clock);
}

/// The courses of the vault, a line each, without names.
int list(const journal::State& state)
{
    for (const auto& [id, course] : state.courses) {
        const auto record = exchange::recordOf(id, course);
        std::cout << bytes::toHex(id.view()) << "  "
                  << (record ? clock::toIso8601(record->treated) : std::string("not treated yet")) << "  " << course.entries.size()
                  << " entries\n";
    }
    return fine;
}

int exportCourse(const Options& options)
{
    if (!options.course.empty())
        if (const Done kept = keepsInputs({{"the folder of the vault", options.folder, true}}, {{"--out", options.out}}); !kept)
            return refuseFiles("export", kept.error());
    const clock::SystemClock clock;
    const auto vault = unlocked(options, clock);
    if (!vault)
        return refuse("export", vault.error());
    const journal::State& state = vault->state();
    if (options.course.empty())
        return list(state);
    const auto number = bytes::fromHex(options.course);
    if (!number || number->size() != 16)
        return refuse("export", {Reason::malformed, "a course is named by 32 hexadecimal digits; without --course they are listed"});
    const auto found = state.courses.find(recovery::CourseId::from(*number));
    if (found == state.courses.end())
        return refuse("export", {Reason::notFound, "this vault has no such course; without --course they are listed"});
    auto record = exchange::recordOf(found->first, found->second);
    if (!record)
        return refuse("export", record.error());
    exchange::describePictures(*record, [&](const photos::PhotoId& photo) -> Result<bytes::Bytes> {
        const records::PhotoTaken* taken = found->second.photo(photo);
        if (taken == nullptr)
            return fail(Reason::notFound, "photo: there is none");
        return vault->photo(taken->manifest);
    });
    const clock::Moment now{clock.readings().wall, {}, {}};
    exchange::BundleOptions how{.patientName = "", .written = now, .program = "ebbline " EBBLINE_VERSION};
    if (options.named && record->treatment) {
        if (const auto patient = state.patients.find(record->treatment->patient); patient != state.patients.end())
            how.patientName = patient->second.name;
    }
    // By the patient's clock, as her treatment names it; her own quiet hours stay on her phone.
    auto zone = aftercare::Zone::find(record->treated.zone);
    if (!zone)
        zone = aftercare::Zone::find("UTC");
    if (zone)
        how.reminders = exchange::remindersOf(found->second, *zone, {});
    const std::string bundle = exchange::writeBundle(*record, triage::findingsOf(found->second, now), how);
    if (const Done written = writeFile(options.out, bundle); !written)
        return refuse("export", written.error());
    std::cout << options.out << ": " << record->entries.size() << " entries, " << bundle.size() << " bytes, "
              << (how.patientName.empty() ? "without a name" : "with the patient's name") << "; it is not encrypted\n";
    return fine;
}

int readBundle(const Options& options)
{
    std::vector<NamedFile> tables{{"--out-scores", options.scores}};
    if (!options.signs.empty())
        tables.push_back({"--out-signs", options.signs});
    if (!options.temperatures.empty())
        tables.push_back({"--out-temperatures", options.temperatures});
    if (const Done kept = keepsInputs({{"the bundle", options.bundle}}, tables); !kept)
        return refuseFiles("read-bundle", kept.error());
    const auto text = readFile(options.bundle);
    if (!text)
        return refuse("read-bundle", text.error());
    const auto record = exchange::readBundle(*text);
    if (!record)
        return refuse("read-bundle", record.error());
    const std::string course = bytes::toHex(record->course.view());
    std::vector<exchange::ScoreRow> scores;
    std::vector<exchange::SignRow> signs;
    std::vector<exchange::TemperatureRow> temperatures;
    clock::Moment treated = record->treated;
    treated.zone.clear();
    for (const auto& [stream, score] : record->baseline)
        scores.push_back({course, treated, treated, stream.symptom, stream.side, score});
    std::vector<const recovery::Entry*> entries;
    for (const recovery::Entry& entry : record->entries)
        entries.push_back(&entry);
    std::size_t early = 0;
    for (auto& [entry, at] : exchange::inTables(entries, treated)) {
        at.zone.clear();
        if (entry->at.at <= treated.at)
            ++early;
        for (const auto& [stream, score] : entry->scores)
            scores.push_back({course, treated, at, stream.symptom, stream.side, score});
        for (const recovery::Sign sign : entry->present)
            signs.push_back({course, treated, at, sign, true});
        for (const recovery::Sign sign : entry->absent)
            signs.push_back({course, treated, at, sign, false});
        if (entry->temperature)
            temperatures.push_back({course, treated, at, *entry->temperature});
    }
    std::vector<Output> outputs{{options.scores, exchange::writeScores(scores)}};
    if (!options.signs.empty())
        outputs.push_back({options.signs, exchange::writeSigns(signs)});
    if (!options.temperatures.empty())
        outputs.push_back({options.temperatures, exchange::writeTemperatures(temperatures)});
    if (const Done written = writeFiles(outputs); !written)
        return refuse("read-bundle", written.error());
    if (early > 0)
        std::cerr << "ebbline read-bundle: note: " << early << " entries say that they were made before the treatment or at its very moment; the "
                  << "tables hold them right after it, as the phone judges them\n";
    std::cout << "course " << course << ": " << scores.size() << " scores, " << signs.size() << " answers to warning signs, "
              << temperatures.size() << " temperatures\n";
    return fine;
}

}  // namespace

void addExport(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("export", "Write a course of a vault as a FHIR R4 bundle, or list the courses");
    command->footer("The passphrase is asked for without echo, or read from the first line of standard input. The file is not encrypted.\n"
                    "In it: treatment and threads, consents, the questionnaire and every entry, measured values in 0 to 10 and degrees Celsius, corrections,\n"
                    "photographs by size and hash without the pictures, findings and what was done about them, care plan and reminders, messages,\n"
                    "follow-up. Every time carries its offset from UTC.\n"
                    "Example: ebbline export ~/.local/share/ebbline-desk/vault --course 0f3c... --out course.json");
    command->add_option("folder", options->folder, "Folder of the vault")->required();
    auto* course = command->add_option("--course", options->course, "Number of the course; without it the courses are listed");
    auto* out = command->add_option("--out", options->out, "The file to write");
    course->needs(out);
    out->needs(course);
    command->add_flag("--named", options->named, "With the patient's name; without it she is a number");
    command->add_flag("--recovery-code", options->recoveryCode, "Ask for the printed recovery code instead");
    command->callback([options, &run] { run = [options] { return exportCourse(*options); }; });
}

void addReadBundle(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("read-bundle", "Turn a FHIR bundle that Ebbline wrote into tables of scores, signs and temperatures");
    command->footer("Example: ebbline read-bundle course.json --out-scores scores.csv --out-signs signs.csv --out-temperatures temperatures.csv");
    command->add_option("file", options->bundle, "The bundle")->required();
    command->add_option("--out-scores", options->scores, "Table of scores to write")->required();
    command->add_option("--out-signs", options->signs, "Table of answers to warning signs to write");
    command->add_option("--out-temperatures", options->temperatures, "Table of temperatures to write");
    command->callback([options, &run] { run = [options] { return readBundle(*options); }; });
}

}  // namespace ebbline::tool
