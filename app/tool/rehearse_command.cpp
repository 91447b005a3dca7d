// ebbline rehearse: whom one protocol would have flagged against another, when, and at what burden.

#include "app/tool/course_tables.h"
#include "app/tool/subcommand.h"
#include "app/tool/table_notes.h"

#include "core/clock/iso8601.h"
#include "core/exchange/protocol_file.h"
#include "core/rehearsal/rehearse.h"

#include <nlohmann/json.hpp>

#include <cstdio>
#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

using Json = nlohmann::ordered_json;
using rehearsal::KindFigures;

constexpr std::size_t shownDifferences = 20;
constexpr std::size_t shownAlike = 5;

struct Options {
    std::string scores;
    std::string truth;
    std::string before;
    std::string after;
    bool json = false;
};

/// `0.912 (0.901-0.922)`, or `-` without a course.
std::string shareText(long part, long whole)
{
    const auto interval = rehearsal::share(part, whole);
    if (!interval)
        return "-";
    char text[48];
    std::snprintf(text, sizeof text, "%.3f (%.3f-%.3f)", static_cast<double>(part) / static_cast<double>(whole),
                  interval->low, interval->high);
    return text;
}

Json shareJson(long part, long whole)
{
    Json json{{"part", part}, {"whole", whole}};
    if (const auto interval = rehearsal::share(part, whole)) {
        json["share"] = static_cast<double>(part) / static_cast<double>(whole);
        json["low"] = interval->low;
        json["high"] = interval->high;
    }
    return json;
}

/// The same of the courses whose onset is known; null without one.
Json timedJson(long part, long whole)
{
    return whole > 0 ? shareJson(part, whole) : Json(nullptr);
}

/// `31.2 (27.9-34.8)` alerts per 100 courses.
std::string burdenText(const KindFigures& figures)
{
    if (!figures.burden)
        return "-";
    char text[64];
    std::snprintf(text, sizeof text, "%.1f (%.1f-%.1f)", 100 * figures.burden->rate, 100 * figures.burden->interval.low,
                  100 * figures.burden->interval.high);
    return text;
}

Json burdenJson(const KindFigures& figures)
{
    if (!figures.burden)
        return nullptr;
    return {{"rate", 100 * figures.burden->rate},
            {"low", 100 * figures.burden->interval.low},
            {"high", 100 * figures.burden->interval.high}};
}

Json figuresJson(const KindFigures& f)
{
    const long strict = f.courses - f.beforeOnset;
    const long strictTimed = f.timed - f.beforeOnset;
    Json json{{"kind", f.kind},
              {"courses", f.courses},
              {"flagged", shareJson(f.flagged, f.courses)},
              {"callNow", shareJson(f.callNow, f.courses)},
              {"reviewNotes", shareJson(f.reviewNotes, f.courses)},
              {"silentList", shareJson(f.silent, f.courses)},
              {"alerts", f.alerts},
              {"alertsPer100Courses", burdenJson(f)}};
    if (f.kind != "plain") {
        json["onsetKnown"] = f.timed;
        json["within24h"] = timedJson(f.withinDay, f.timed);
        json["within72h"] = timedJson(f.withinThreeDays, f.timed);
        json["alertBeforeOnset"] = timedJson(f.beforeOnset, f.timed);
        json["strict"] = {{"flagged", shareJson(f.strictFlagged, strict)},
                          {"within24h", timedJson(f.strictWithinDay, strictTimed)},
                          {"within72h", timedJson(f.strictWithinThreeDays, strictTimed)}};
        json["rightSide"] = timedJson(f.rightSide, f.sided);
        json["medianDelayHours"] = f.medianDelayHours ? Json(*f.medianDelayHours) : Json(nullptr);
    }
    return json;
}

void printFigures(const char* title, const std::vector<KindFigures>& rows)
{
    std::printf("%s\n", title);
    for (const KindFigures& f : rows) {
        std::printf("  %s, %ld courses\n", f.kind.c_str(), f.courses);
        std::printf("    flagged %s  call now %s  alerts per 100 courses %s\n", shareText(f.flagged, f.courses).c_str(),
                    shareText(f.callNow, f.courses).c_str(), burdenText(f).c_str());
        std::printf("    note for the review %s  silent list %s\n", shareText(f.reviewNotes, f.courses).c_str(),
                    shareText(f.silent, f.courses).c_str());
        if (f.kind == "plain")
            continue;
        const long strict = f.courses - f.beforeOnset;
        const long strictTimed = f.timed - f.beforeOnset;
        if (f.timed < f.courses)
            std::printf("    onset known of %ld; times and what came before it speak of those\n", f.timed);
        std::printf("    within 24 h %s  72 h %s  median delay %s\n", shareText(f.withinDay, f.timed).c_str(),
                    shareText(f.withinThreeDays, f.timed).c_str(),
                    f.medianDelayHours ? (std::to_string(*f.medianDelayHours).substr(0, 5) + " h").c_str() : "-");
        if (f.sided > 0)
            std::printf("    the right side named in %s of the flagged whose side is known\n", shareText(f.rightSide, f.sided).c_str());
        std::printf("    alert before onset %s; without those courses: flagged %s  24 h %s  72 h %s\n",
                    shareText(f.beforeOnset, f.timed).c_str(), shareText(f.strictFlagged, strict).c_str(),
                    shareText(f.strictWithinDay, strictTimed).c_str(), shareText(f.strictWithinThreeDays, strictTimed).c_str());
    }
}

void printChanges(const std::vector<rehearsal::KindChange>& rows)
{
    std::printf("second against first\n");
    for (const rehearsal::KindChange& change : rows) {
        std::printf("  %s, %ld courses: flagged by both %ld, by the first alone %ld, by the second alone %ld", change.kind.c_str(),
                    change.courses, change.bothFlagged, change.firstOnly, change.secondOnly);
        if (change.flagged)
            std::printf("; share %+.3f (%+.3f to %+.3f)", change.flagged->value, change.flagged->interval.low,
                        change.flagged->interval.high);
        std::printf("\n    courses that differ: in alerts %ld, in urgency %ld, on the silent list %ld, in notes for the review %ld\n",
                    change.otherAlerts, change.otherUrgency, change.otherSilentList, change.otherNotes);
    }
}

Json changesJson(const std::vector<rehearsal::KindChange>& rows)
{
    Json json = Json::array();
    for (const rehearsal::KindChange& change : rows) {
        Json row{{"kind", change.kind},
                 {"courses", change.courses},
                 {"both", change.bothFlagged},
                 {"protocolOnly", change.firstOnly},
                 {"againstOnly", change.secondOnly},
                 {"shareMoved", nullptr},
                 {"otherAlerts", change.otherAlerts},
                 {"otherUrgency", change.otherUrgency},
                 {"otherSilentList", change.otherSilentList},
                 {"otherReviewNotes", change.otherNotes}};
        if (change.flagged)
            row["shareMoved"] = {{"value", change.flagged->value},
                                 {"low", change.flagged->interval.low},
                                 {"high", change.flagged->interval.high}};
        json.push_back(std::move(row));
    }
    return json;
}

std::string when(const triggers::Finding& finding)
{
    return clock::toIso8601(finding.raisedAt) + " " + std::string(recovery::word(finding.urgency)) + ": " + triggers::explain(finding);
}

std::string when(const std::optional<triggers::Finding>& finding)
{
    return finding ? when(*finding) : "nothing that the other does not raise";
}

Json findingJson(const triggers::Finding& finding)
{
    return {{"raisedAt", clock::toIso8601(finding.raisedAt)},
            {"trigger", triggers::word(finding.trigger)},
            {"urgency", recovery::word(finding.urgency)},
            {"reason", triggers::explain(finding)}};
}

std::vector<std::string> respectsOf(const rehearsal::Respects& in)
{
    std::vector<std::string> words;
    for (const auto& [differs, word] : {std::pair{in.alerts, "alerts"}, {in.urgency, "urgency"}, {in.silentList, "silentList"},
                                        {in.notes, "reviewNotes"}})
        if (differs)
            words.emplace_back(word);
    return words;
}

/// Courses that are flagged, and alike by both.
std::vector<std::size_t> flaggedAlike(const rehearsal::Rehearsal& done)
{
    std::vector<std::size_t> alike;
    auto next = done.differences.begin();
    for (std::size_t i = 0; i < done.before.size(); ++i) {
        if (next != done.differences.end() && next->course == i)
            ++next;
        else if (done.before[i].first)
            alike.push_back(i);
    }
    return alike;
}

std::optional<triggers::Protocol> protocolFrom(const std::string& file)
{
    const auto text = readFile(file);
    auto read = text ? exchange::protocolFromText(*text) : fail(text.error());
    if (!read) {
        std::cerr << "ebbline rehearse: " << file << ": " << read.error().detail << "\n";
        return std::nullopt;
    }
    return std::move(read->protocol);
}

void printJson(const rehearsal::Rehearsal& done)
{
    Json json;
    for (const auto& [name, verdicts] : {std::pair{"protocol", &done.before}, std::pair{"against", &done.after}}) {
        json[name] = Json::array();
        for (const KindFigures& figures : rehearsal::figuresOf(*verdicts))
            json[name].push_back(figuresJson(figures));
    }
    json["changes"] = changesJson(rehearsal::changesOf(done));
    json["differences"] = Json::array();
    for (const rehearsal::Difference& difference : done.differences) {
        Json row{{"course", done.before[difference.course].name},
                 {"kind", done.before[difference.course].kind},
                 {"in", respectsOf(difference.in)}};
        for (const auto& [name, finding] : {std::pair{"protocol", &difference.before}, std::pair{"against", &difference.after}})
            row[name] = *finding ? findingJson(**finding) : Json(nullptr);
        json["differences"].push_back(std::move(row));
    }
    json["flaggedAlike"] = Json::array();
    for (const std::size_t i : flaggedAlike(done)) {
        Json row{{"course", done.before[i].name}, {"kind", done.before[i].kind}};
        row.update(findingJson(*done.before[i].first));
        json["flaggedAlike"].push_back(std::move(row));
    }
    std::cout << json.dump(1) << "\n";
}

int rehearse(const Options& options)
{
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores, std::cerr);
    const auto truth = scores ? rowsOf<exchange::TruthRow>(options.truth, exchange::readTruth, std::cerr) : std::nullopt;
    if (!truth)
        return badInput;
    const auto before = protocolFrom(options.before);
    const auto after = before ? protocolFrom(options.after) : std::nullopt;
    if (!after)
        return badInput;
    const auto courses = knownCourses(*scores, *truth);
    noteMoments("rehearse", *scores, clock::SystemClock().now(), true, std::cerr);
    const auto done = courses ? rehearsal::rehearse(*courses, *before, *after) : fail(courses.error());
    if (!done) {
        std::cerr << "ebbline rehearse: " << done.error().detail << "\n";
        return badInput;
    }
    if (options.json) {
        printJson(*done);
        return fine;
    }
    printFigures(options.before.c_str(), rehearsal::figuresOf(done->before));
    printFigures(options.after.c_str(), rehearsal::figuresOf(done->after));
    printChanges(rehearsal::changesOf(*done));
    std::printf("%zu of %zu courses differ\n", done->differences.size(), courses->size());
    for (std::size_t i = 0; i < std::min(shownDifferences, done->differences.size()); ++i) {
        const rehearsal::Difference& difference = done->differences[i];
        std::string in;
        for (const std::string& word : respectsOf(difference.in))
            in += (in.empty() ? "" : ", ") + word;
        std::printf("  %s (%s): %s\n    %s\n    %s\n", done->before[difference.course].name.c_str(),
                    done->before[difference.course].kind.c_str(), in.c_str(), when(difference.before).c_str(),
                    when(difference.after).c_str());
    }
    if (done->differences.size() > shownDifferences)
        std::printf("  and %zu more; --json lists them all\n", done->differences.size() - shownDifferences);
    const std::vector<std::size_t> alike = flaggedAlike(*done);
    std::printf("%zu courses are flagged, and alike by both\n", alike.size());
    for (std::size_t i = 0; i < std::min(shownAlike, alike.size()); ++i) {
        const rehearsal::CourseVerdict& verdict = done->before[alike[i]];
        std::printf("  %s (%s) first at %s\n", verdict.name.c_str(), verdict.kind.c_str(), when(*verdict.first).c_str());
    }
    if (alike.size() > shownAlike)
        std::printf("  and %zu more; --json lists them all\n", alike.size() - shownAlike);
    return fine;
}

}  // namespace

void addRehearse(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("rehearse", "Run two protocols over past courses: whom, when, at what burden");
    command->footer("Shares come with Wilson intervals, alerts per 100 courses with Garwood's (wider where they\n"
                    "scatter more), changes with that of Agresti and Min; all 95 %.\n"
                    "Example: ebbline rehearse --scores s.csv --truth t.csv --protocol now.json --against new.json");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--truth", options->truth, "Table of truth (CSV)")->required();
    command->add_option("--protocol", options->before, "The protocol in use (JSON)")->required();
    command->add_option("--against", options->after, "The protocol to compare with (JSON)")->required();
    command->add_flag("--json", options->json, "Print as JSON, with every course that differs or is flagged");
    command->callback([options, &run] { run = [options] { return rehearse(*options); }; });
}

}  // namespace ebbline::tool
