// ebbline calibrate: band and thresholds from courses whose truth is known.

#include "app/tool/course_tables.h"
#include "app/tool/file_guard.h"
#include "app/tool/progress_bar.h"
#include "app/tool/subcommand.h"
#include "app/tool/table_notes.h"

#include "core/bands/eligibility.h"
#include "core/clock/iso8601.h"
#include "core/exchange/protocol_file.h"
#include "core/rehearsal/calibrate.h"
#include "core/rehearsal/grounds.h"
#include "core/rehearsal/rehearse.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdio>
#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

struct Options {
    std::string scores;
    std::string truth;
    std::string start;
    std::string out;
    std::string at;
    double budget = 10;
    std::uint64_t seed = 1;
    int resamples = 60;
    bool thresholdsOnly = false;
    bool json = false;
};

/// Of so many courses, counted or (outside the resamples) as if they had been: Wilson, 95 %. A share of none has limits too.
statistics::Interval per100(double rate, int courses)
{
    const auto limits = rehearsal::share(std::lround(rate * courses), courses).value_or(statistics::Interval{0, 1});
    return {100 * limits.low, 100 * limits.high};
}

/// `3.1 (2.2-4.4)`
std::string rateText(double rate, int courses)
{
    const auto limits = per100(rate, courses);
    char text[48];
    std::snprintf(text, sizeof text, "%.1f (%.1f-%.1f)", 100 * rate, limits.low, limits.high);
    return text;
}

nlohmann::ordered_json limitsJson(double rate, int courses)
{
    const auto limits = per100(rate, courses);
    return {{"low", limits.low}, {"high", limits.high}};
}

/// `halfWritten`: uncomplicated courses that were left out.
void print(const rehearsal::Calibration& done, int halfWritten, const Options& options)
{
    const int courses = done.plainCourses;
    if (options.json) {
        nlohmann::ordered_json json{{"uncomplicatedCourses", done.plainCourses},
                                    {"leftOutHalfWritten", halfWritten},
                                    {"budgetPer100", options.budget},
                                    {"heldOutPer100", 100 * done.heldOutRate},
                                    {"heldOutLimits", limitsJson(done.heldOutRate, courses)},
                                    {"fittedPer100", 100 * done.fittedRate},
                                    {"fittedLimits", limitsJson(done.fittedRate, courses)},
                                    {"byRulesInPointsPer100", 100 * done.ruleRate},
                                    {"byRulesInPointsLimits", limitsJson(done.ruleRate, courses)},
                                    {"ownThresholds", done.ownThresholds},
                                    {"budgetShownToHold", rehearsal::groundsOf(done.protocol.thresholds.calibratedOn).isBudgetShown()},
                                    {"strictest", done.strictest},
                                    {"band", done.protocol.band.provenance().version},
                                    {"bandRefused", done.bandObjection}};
        for (std::size_t i = 0; i < triggers::allStatistics.size(); ++i)
            json["statistics"][std::string(triggers::word(triggers::allStatistics[i]))] = {
                {"threshold", triggers::thresholdOf(done.protocol.thresholds, triggers::allStatistics[i])},
                {"per100", 100 * done.statisticRate[i]},
                {"limits", limitsJson(done.statisticRate[i], courses)}};
        std::cout << json.dump(1) << "\n";
        return;
    }
    std::printf("%d uncomplicated courses, budget %g per 100\n", done.plainCourses, options.budget);
    if (halfWritten > 0)
        std::printf("%d more are left out: scores of fewer than %d of the 22 days\n", halfWritten, bands::fewestObservedDays);
    std::printf("alerting courses per 100: %s outside the resamples, %s among those fitted, %s by rules in points alone\n",
                rateText(done.heldOutRate, courses).c_str(), rateText(done.fittedRate, courses).c_str(), rateText(done.ruleRate, courses).c_str());
    for (std::size_t i = 0; i < triggers::allStatistics.size(); ++i)
        std::printf("  %-16s threshold %6.3f  %s per 100\n", std::string(triggers::word(triggers::allStatistics[i])).c_str(),
                    triggers::thresholdOf(done.protocol.thresholds, triggers::allStatistics[i]),
                    rateText(done.statisticRate[i], courses).c_str());
    std::printf("band %s\n", done.protocol.band.provenance().version.c_str());
    if (!done.bandObjection.empty())
        std::printf("the band learned from these courses is not used, because it failed its check: %s\n", done.bandObjection.c_str());
    if (done.strictest)
        std::printf("so few courses can not tell this budget from a smaller one: these are the strictest thresholds that they give\n");
    if (!done.ownThresholds)
        std::printf("fewer than %d uncomplicated courses: thresholds are drawn towards those of the protocol it started from;\n"
                    "they are not shown to hold the budget\n",
                    rehearsal::enoughForThresholds);
}

int calibrate(const Options& options)
{
    const auto complain = [](const std::string& what) {
        std::cerr << "ebbline calibrate: " << what << "\n";
        return badInput;
    };
    if (const Done kept = keepsInputs({{"--scores", options.scores}, {"--truth", options.truth}, {"--start", options.start}},
                                      {{"--out-protocol", options.out}});
        !kept)
        return complain(kept.error().detail);
    const auto at = options.at.empty() ? Result<clock::Moment>(clock::Moment{clock::SystemClock().now(), {}, {}}) : clock::parseIso8601(options.at);
    if (!at)
        return complain("--at: want a moment such as 2027-05-01T18:00:00+02:00");
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores, std::cerr);
    const auto truth = scores ? rowsOf<exchange::TruthRow>(options.truth, exchange::readTruth, std::cerr) : std::nullopt;
    if (!truth)
        return badInput;
    auto courses = knownCourses(*scores, *truth);
    if (!courses)
        return complain(courses.error().detail);
    noteMoments("calibrate", *scores, clock::SystemClock().now(), true, std::cerr);
    const int halfWritten = leaveHalfWrittenOut(*courses);
    triggers::Protocol start = triggers::defaultProtocol();
    if (!options.start.empty()) {
        const auto text = readFile(options.start);
        auto read = text ? exchange::protocolFromText(*text) : fail(text.error());
        if (!read)
            return complain(options.start + ": " + read.error().detail);
        start = std::move(read->protocol);
    }
    rehearsal::CalibrationSettings settings;
    settings.budget = options.budget;
    settings.seed = options.seed;
    settings.resamples = options.resamples;
    settings.learnBand = !options.thresholdsOnly;
    ProgressBar bar("calibrating");
    settings.progress = [&bar](int done, int of) { bar.show(done, of); };
    const auto done = rehearsal::calibrate(*courses, start, settings);
    if (!done)
        return complain(done.error().detail);
    if (const Done written = writeFile(options.out, exchange::protocolText({done->protocol, "ebbline " EBBLINE_VERSION, *at})); !written) {
        std::cerr << "ebbline calibrate: " << options.out << ": " << written.error().detail << "\n";
        return failed;
    }
    print(*done, halfWritten, options);
    return fine;
}

}  // namespace

void addCalibrate(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("calibrate", "Learn band and thresholds to a budget of false alerts");
    command->footer("The budget counts uncomplicated courses (kind plain) with at least one alert, per 100, over all\n"
                    "triggers together. Uncomplicated courses with scores of fewer than 11\n"
                    "of the 22 days are left out, and what was written after day 21. A band is learned from the seed band, never\n"
                    "from that of --start. Whole courses are resampled; the same seed and --at give the same bytes. Limits: Wilson, 95 %.\n"
                    "A clinic takes the file in at its desk (Protocols, Take from a file), where it becomes a draft.\n"
                    "docs/statistics/calibration.md, docs/formats/protocol.md.\n"
                    "Example: ebbline calibrate --scores s.csv --truth t.csv --budget 10 --out-protocol p.json");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--truth", options->truth, "Table of truth (CSV)")->required();
    command->add_option("--budget", options->budget, "Uncomplicated courses with an alert, per 100")
        ->check(CLI::Range(0.5, 50.0))
        ->capture_default_str();
    command->add_option("--seed", options->seed, "Seed of the resampling")->capture_default_str();
    command->add_option("--resamples", options->resamples, "How many")->check(CLI::Range(10, 1000))->capture_default_str();
    command->add_option("--start", options->start, "Protocol that gives care plan, guards and first thresholds (JSON); without it the default one");
    command->add_flag("--thresholds-only", options->thresholdsOnly, "Keep the band of the protocol it starts from");
    command->add_option("--at", options->at, "The moment that the file says it was made at (ISO 8601 with offset); without it now");
    command->add_option("--out-protocol", options->out, "Where the protocol goes (JSON)")->required();
    command->add_flag("--json", options->json, "Print the result as JSON");
    command->callback([options, &run] { run = [options] { return calibrate(*options); }; });
}

}  // namespace ebbline::tool
