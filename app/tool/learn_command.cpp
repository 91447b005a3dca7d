// ebbline learn: what many courses teach, for an auditor.

#include "app/tool/course_tables.h"
#include "app/tool/learn_courses.h"
#include "app/tool/learn_report.h"
#include "app/tool/subcommand.h"
#include "app/tool/table_notes.h"

#include <algorithm>
#include <iostream>
#include <memory>
#include <set>

namespace ebbline::tool {

namespace {

struct Options {
    std::string scores;
    std::string truth;
    std::string placements;
    std::string risks;
    std::vector<std::string> compare;
    std::string lot;
    learning::WatchDesign design;
    bool json = false;
};

int learn(const Options& options)
{
    const auto complain = [](const std::string& what) {
        std::cerr << "ebbline learn: " << what << "\n";
        return badInput;
    };
    if (options.placements.empty() && (!options.compare.empty() || !options.lot.empty()))
        return complain("--compare and --lot need --placements: techniques and lots stand there");
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores, std::cerr);
    const auto truth = scores ? rowsOf<exchange::TruthRow>(options.truth, exchange::readTruth, std::cerr) : std::nullopt;
    if (!truth)
        return badInput;
    std::vector<exchange::PlacementRow> placements;
    if (!options.placements.empty()) {
        auto read = rowsOf<exchange::PlacementRow>(options.placements, exchange::readPlacements, std::cerr);
        if (!read)
            return badInput;
        placements = std::move(*read);
    }
    std::vector<exchange::RiskRow> risks;
    if (!options.risks.empty()) {
        auto read = rowsOf<exchange::RiskRow>(options.risks, exchange::readRisks, std::cerr);
        if (!read)
            return badInput;
        risks = std::move(*read);
    }
    noteMoments("learn", *scores, clock::SystemClock().now(), false, std::cerr);
    const auto courses = pastCourses(*scores, *truth, placements, risks);
    if (!courses)
        return complain(courses.error().detail);
    auto report = learnReport(*courses, options.design);
    if (!report)
        return complain(report.error().detail);
    if (!options.compare.empty()) {
        for (const std::string& technique : options.compare)
            if (std::none_of(courses->begin(), courses->end(),
                             [&](const learning::PastCourse& course) { return course.technique == technique; }))
                return complain("no course has the technique '" + technique + "'");
        if (options.compare[0] == options.compare[1])
            return complain("--compare: want two techniques that differ");
        report->comparison = learning::compareTechniques(*courses, options.compare[0], options.compare[1]);
    }
    if (!options.lot.empty())
        report->lot = learning::traceLot(*courses, options.lot);
    (options.json ? printJson : printText)(*report, std::cout);
    return fine;
}

}  // namespace

void addLearn(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("learn", "Say what many courses teach: complications, times, techniques, lots");
    command->footer("Tables: docs/formats/tables.md; every figure: docs/statistics/learning.md. Kind plain ended well, kind\n"
                    "silent is not known, every other kind is a complication. Too few to say is said as such.\n"
                    "The chart over time (risk-adjusted sum, and expected - observed) takes the risk of a complication that was\n"
                    "known before each treatment, where a table of risks has it, and the same risk (--risk) for every other\n"
                    "course: without that table what a patient brings along is not adjusted for.\n"
                    "Example: ebbline learn --scores s.csv --truth t.csv --placements p.csv --compare \"long barbs\" cones\n"
                    "Example: risks.csv holds the lines  course,risk  c000001,0.02  c000002,0.10\n"
                    "  ebbline learn --scores s.csv --truth t.csv --risks risks.csv");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--truth", options->truth, "Table of truth (CSV)")->required();
    command->add_option("--placements", options->placements, "Table of placements (CSV): techniques, zones, clinics, lots");
    command->add_option("--compare", options->compare, "Two techniques to set side by side")->expected(2);
    command->add_option("--lot", options->lot, "A lot to trace");
    command->add_option("--risks", options->risks, "Table of risks (CSV): course and its own risk of a complication, above 0 and below 1");
    command->add_option("--risk", options->design.risk, "Of a complication, for the chart over time: of courses without their own")
        ->check(CLI::Range(0.001, 0.999))
        ->capture_default_str();
    command->add_option("--odds", options->design.oddsRatio, "How much larger the odds are that the chart watches for")
        ->check(CLI::Range(0.1, 10.0))
        ->capture_default_str();
    command->add_option("--decision", options->design.decision, "Sum above which the chart signals")
        ->check(CLI::Range(0.1, 20.0))
        ->capture_default_str();
    command->add_flag("--json", options->json, "Print as JSON");
    command->callback([options, &run] { run = [options] { return learn(*options); }; });
}

}  // namespace ebbline::tool
