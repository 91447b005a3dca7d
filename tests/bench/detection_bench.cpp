// What the triggers find, at which burden: calibrated on one set of invented courses, judged on
// fresh ones. Prints the tables of docs/statistics/detection.md and draws its picture.
//
//   detection_bench [--quick] [--seeds CALIBRATION JUDGEMENT] [--picture FILE.svg]
//
// The seeds of calibration and judgement differ, and neither was used while the detector was made.

#include "tests/bench/detection_tables.h"
#include "tests/bench/tradeoff_picture.h"

#include "core/curves/curve.h"
#include "core/rehearsal/calibrate.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <map>
#include <span>

using namespace ebbline;
using namespace ebbline::rehearsal;
using namespace ebbline::bench;

namespace {

std::uint64_t calibrationSeed = 21'001;
std::uint64_t judgementSeed = 23'001;

constexpr std::array budgets{3.5, 5.0, 7.5, 10.0, 15.0, 20.0};

/// One model and rhythm: the courses, and what each budget made of them.
struct Judged {
    std::string name;
    Rhythm rhythm;
    std::map<double, Figures> byBudget{};
    std::map<double, Calibration> calibrations{};
    double wroteInDay = 0;    ///< of the bleedings: an entry within 24 hours of the onset
    double wroteLate = 0;     ///< of the folds: an entry from day 14 on
};

/// What no detector can exceed without looking at something else.
void noteWhoWrote(Judged& judged, const Cohorts& cohorts)
{
    for (const KnownCourse& course : cohorts[static_cast<std::size_t>(Kind::haematoma)])
        judged.wroteInDay += std::any_of(course.input.observations.begin(), course.input.observations.end(), [&](const auto& o) {
            return o.at.at >= course.truth.onset->at && o.at.at - course.truth.onset->at <= std::chrono::hours(24);
        });
    for (const KnownCourse& course : cohorts[static_cast<std::size_t>(Kind::puckering)])
        judged.wroteLate += std::any_of(course.input.observations.begin(), course.input.observations.end(), [&](const auto& o) {
            return clock::dayOfRecovery(course.input.treated, o.at) >= 14;
        });
    judged.wroteInDay /= static_cast<double>(cohorts[static_cast<std::size_t>(Kind::haematoma)].size());
    judged.wroteLate /= static_cast<double>(cohorts[static_cast<std::size_t>(Kind::puckering)].size());
}

Judged judgeAll(Model model, Rhythm rhythm, const Sizes& sizes)
{
    Judged judged{.name = std::string(nameOf(model)) + ", " + nameOf(rhythm), .rhythm = rhythm};
    const auto calibration = cohort({model, rhythm, calibrationSeed}, Kind::plain, sizes.calibration);
    const Cohorts cohorts = freshCohorts({model, rhythm, judgementSeed}, sizes);
    noteWhoWrote(judged, cohorts);
    for (const double budget : budgets) {
        CalibrationSettings settings;
        settings.budget = budget;
        const auto calibrated = calibrate(calibration, triggers::defaultProtocol(), settings);
        if (!calibrated)
            continue;
        judged.calibrations.emplace(budget, *calibrated);
        judged.byBudget[budget] = figuresUnder(cohorts, calibrated->protocol);
    }
    return judged;
}

void printMain(const std::vector<Judged>& all, double budget)
{
    char title[32];
    std::snprintf(title, sizeof title, "Budget %g", budget);
    printMainHeader(title);
    for (const Judged& judged : all)
        if (const auto found = judged.byBudget.find(budget); found != judged.byBudget.end())
            printMainRow(judged.name, found->second);
    std::printf("\n");
}

void printDelays(const std::vector<Judged>& all)
{
    printDelayHeader("How late, and on which side, budget 10: of the courses that were found");
    for (const Judged& judged : all)
        printDelayRow(judged.name, judged.byBudget.at(10));
    std::printf("\n");
}

void printStrict(const std::vector<Judged>& all)
{
    std::printf("### Strict, budget 10: courses with an alert before the onset left out of both numbers\n\n"
                "| model, entries | before onset: infection | found | 72 h | before onset: haematoma | found | 24 h | before onset: slow "
                "| found |\n|---|---|---|---|---|---|---|---|---|\n");
    for (const Judged& judged : all) {
        const auto& f = judged.byBudget.at(10);
        std::printf("| %s |", judged.name.c_str());
        for (const auto& [kind, part] : {std::pair{"infection", &KindFigures::strictWithinThreeDays},
                                         {"haematoma", &KindFigures::strictWithinDay},
                                         {"slow-recovery", &KindFigures::strictFlagged}}) {
            const KindFigures& row = f.at(kind);
            const long left = row.courses - row.beforeOnset;
            std::printf(" %s | %s |", text(row.beforeOnset, row.courses).c_str(), text(row.strictFlagged, left).c_str());
            if (part != &KindFigures::strictFlagged)
                std::printf(" %s |", text(row.*part, left).c_str());
        }
        std::printf("\n");
    }
    std::printf("\n");
}

void printBeside(const std::vector<Judged>& all)
{
    std::printf("### Beside the alerts, budget 10\n\n| model, entries | held out | by rules in points alone | findings per 100 plain courses "
                "| note for the review in plain | silent list in plain | wrote within 24 h of a haematoma | wrote from day 14 on (puckering) "
                "| shares: fills, worsens, slow overall |\n|---|---|---|---|---|---|---|---|---|\n");
    for (const Judged& judged : all) {
        const KindFigures& plain = judged.byBudget.at(10).at("plain");
        const Calibration& done = judged.calibrations.at(10);
        const auto shareOf = [&](triggers::Statistic s) { return done.statisticRate[static_cast<std::size_t>(s)]; };
        std::printf("| %s | %.3f | %.3f | %.1f | %s | %s | %.3f | %.3f | %.3f, %.3f, %.3f |\n", judged.name.c_str(), done.heldOutRate,
                    done.ruleRate, 100.0 * static_cast<double>(plain.alerts) / static_cast<double>(plain.courses),
                    text(plain.reviewNotes, plain.courses).c_str(), text(plain.silent, plain.courses).c_str(),
                    judged.wroteInDay, judged.wroteLate, shareOf(triggers::Statistic::oneSideFills),
                    shareOf(triggers::Statistic::oneSideWorsens), shareOf(triggers::Statistic::slowOverall));
    }
    std::printf("\n");
}

double rate(const KindFigures& row, long KindFigures::*part)
{
    return static_cast<double>(row.*part) / static_cast<double>(row.courses);
}

/// The worst rhythm of each model at each budget: table, and one curve for each column.
std::vector<Curve> printTradeOff(const std::vector<Judged>& all)
{
    struct Column {
        const char* name;
        const char* kind;
        long KindFigures::*part;
        bool twiceOnly;
    };
    constexpr std::array columns{Column{"infection, 72 h", "infection", &KindFigures::withinThreeDays, false},
                                 Column{"haematoma", "haematoma", &KindFigures::flagged, false},
                                 Column{"haematoma, 24 h, two entries a day", "haematoma", &KindFigures::withinDay, true},
                                 Column{"slow recovery", "slow-recovery", &KindFigures::flagged, false}};
    std::printf("### Trade-off: the worst rhythm of each model\n\n| model | budget | highest alert rate in plain |");
    for (const Column& column : columns)
        std::printf(" %s |", column.name);
    std::printf("\n|---|---|---|---|---|---|---|\n");
    std::vector<Curve> curves;
    for (const Model model : models) {
        std::array<Curve, columns.size()> made{};
        for (std::size_t i = 0; i < columns.size(); ++i)
            made[i].name = std::string(columns[i].name) + " (" + nameOf(model) + ")";
        for (const double budget : budgets) {
            double alert = 0;
            std::array<double, columns.size()> lowest{};
            lowest.fill(1);
            bool any = false;
            for (const Judged& judged : all) {
                const auto found = judged.byBudget.find(budget);
                if (!judged.name.starts_with(nameOf(model)) || found == judged.byBudget.end())
                    continue;
                any = true;
                alert = std::max(alert, rate(found->second.at("plain"), &KindFigures::flagged));
                for (std::size_t i = 0; i < columns.size(); ++i)
                    if (!columns[i].twiceOnly || judged.rhythm == Rhythm::twice || judged.rhythm == Rhythm::plan)
                        lowest[i] = std::min(lowest[i], rate(found->second.at(columns[i].kind), columns[i].part));
            }
            if (!any) {
                std::printf("| %s | %g | the rules in points alone spend it | | | | |\n", nameOf(model), budget);
                continue;
            }
            std::printf("| %s | %g | %.3f |", nameOf(model), budget, alert);
            for (std::size_t i = 0; i < columns.size(); ++i) {
                std::printf(" %.3f |", lowest[i]);
                made[i].points.emplace_back(budget, lowest[i]);
            }
            std::printf("\n");
        }
        curves.insert(curves.end(), made.begin(), made.end());
    }
    std::printf("\n");
    return curves;
}

void printTransferRow(const char* calibratedOn, Model judged, const Cohorts& cohorts, const Result<Calibration>& calibrated)
{
    if (!calibrated) {
        std::printf("| %s | %s | %s |\n", nameOf(judged), calibratedOn, calibrated.error().detail.c_str());
        return;
    }
    const auto f = figuresUnder(cohorts, calibrated->protocol);
    const auto column = [&](const char* kind, long KindFigures::*part) { return text(f.at(kind).*part, f.at(kind).courses); };
    std::printf("| %s | %s | %s | %s | %s | %s |\n", nameOf(judged), calibratedOn, column("plain", &KindFigures::flagged).c_str(),
                column("infection", &KindFigures::withinThreeDays).c_str(), column("haematoma", &KindFigures::flagged).c_str(),
                column("slow-recovery", &KindFigures::flagged).c_str());
}

/// Calibrated where courses are of another kind, and what some of one's own do about it.
void printTransfer(const Sizes& sizes)
{
    std::printf("### Calibrated elsewhere, budget 10, entries mixed\n\n| judged | calibrated on | alert in plain | infection, 72 h | haematoma "
                "| slow recovery |\n|---|---|---|---|---|---|\n");
    for (const Model judged : models) {
        const Model other = judged == Model::decay ? Model::steps : Model::decay;
        const Cohorts cohorts = freshCohorts({judged, Rhythm::mixed, judgementSeed}, sizes);
        auto own = cohort({judged, Rhythm::mixed, calibrationSeed}, Kind::plain, sizes.calibration);
        for (KnownCourse& course : own)
            course.name += " of its own";
        auto both = cohort({other, Rhythm::mixed, calibrationSeed}, Kind::plain, sizes.calibration);
        const auto elsewhere = calibrate(both, triggers::defaultProtocol(), {});
        printTransferRow("the other model", judged, cohorts, elsewhere);
        for (const int count : {100, 300}) {
            if (!elsewhere)
                break;
            const std::string name = "the other, then " + std::to_string(count) + " of its own";
            printTransferRow(name.c_str(), judged, cohorts,
                             calibrate(std::span(own).first(static_cast<std::size_t>(count)), elsewhere->protocol, {}));
        }
        both.insert(both.end(), own.begin(), own.end());
        printTransferRow("both together", judged, cohorts, calibrate(both, triggers::defaultProtocol(), {}));
    }
    std::printf("\n");
}

/// Forecasts made on day 10 from what was written until then, against what was written on the day.
void forecasts(Model model, const Sizes& sizes)
{
    CalibrationSettings settings;
    const auto calibrated = calibrate(cohort({model, Rhythm::daily, calibrationSeed}, Kind::plain, sizes.calibration),
                                      triggers::defaultProtocol(), settings);
    if (!calibrated)
        return;
    std::printf("Forecasts on day 10, model %s:", nameOf(model));
    for (const int target : {14, 21}) {
        long made = 0;
        long above = 0;
        long below = 0;
        for (const KnownCourse& course : cohort({model, Rhythm::daily, judgementSeed}, Kind::plain, sizes.each)) {
            std::map<recovery::Stream, std::vector<curves::Sample>> past;
            std::map<recovery::Stream, int> then;
            for (const auto& observation : course.input.observations)
                for (const auto& [stream, score] : observation.scores) {
                    const int day = clock::dayOfRecovery(course.input.treated, observation.at);
                    if (day <= 10)
                        past[stream].push_back({observation.at, score, false, false});
                    else if (day == target)
                        then.insert_or_assign(stream, score.points());
                }
            for (const auto& [stream, points] : then) {
                const auto curve = curves::curveOf(stream, course.input.treated, past[stream], calibrated->protocol.band, target);
                if (!curve.forecast)
                    continue;
                ++made;
                above += points > curve.forecast->high;
                below += points < curve.forecast->low;
            }
        }
        std::printf(" day %d within %s, above %s;", target, text(made - above - below, made).c_str(),
                    text(above, made).c_str());
    }
    std::printf("\n");
}

}  // namespace

int main(int argc, char** argv)
{
    Sizes sizes;
    const char* picture = nullptr;
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--quick") == 0) {
            sizes = {800, 800, 200};
        } else if (std::strcmp(argv[i], "--seeds") == 0 && i + 2 < argc) {
            calibrationSeed = std::strtoull(argv[++i], nullptr, 10);
            judgementSeed = std::strtoull(argv[++i], nullptr, 10);
        } else if (std::strcmp(argv[i], "--picture") == 0 && i + 1 < argc) {
            picture = argv[++i];
        } else {
            std::fprintf(stderr, "detection_bench [--quick] [--seeds CALIBRATION JUDGEMENT] [--picture FILE.svg]\n");
            return 2;
        }
    }
    std::vector<Judged> all;
    for (const Model model : models)
        for (const Rhythm rhythm : rhythms)
            all.push_back(judgeAll(model, rhythm, sizes));
    printMain(all, 10);
    printMain(all, 5);
    printDelays(all);
    printStrict(all);
    const std::vector<Curve> curves = printTradeOff(all);
    printBeside(all);
    printTransfer(sizes);
    for (const Model model : models)
        forecasts(model, sizes);
    if (picture && !(std::ofstream(picture) << tradeOffPicture({"budget: false alerts per 100 uncomplicated courses", 20, 5}, curves))) {
        std::fprintf(stderr, "%s: cannot be written\n", picture);
        return 1;
    }
    return 0;
}
