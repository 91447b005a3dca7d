// What the protocol of every new clinic finds and what it costs on invented courses: the seed band and the default
// thresholds, all kinds, rhythms and both models; on ordinary courses with the warning rules as well; the rarer
// complications, and trouble smaller and slower than it was made with; and which thresholds today's calibration gives on
// the like: docs/statistics/detection.md, docs/clinical/thresholds.md.
//
//   defaults_bench [--quick] [--beyond] [--seeds CALIBRATION JUDGEMENT] [--pictures FOLDER]
//
// --beyond: the rarer complications and the smaller and slower trouble alone.

#include "tests/bench/defaults_beyond.h"
#include "tests/bench/defaults_tradeoff.h"
#include "tests/bench/detection_tables.h"
#include "tests/bench/warned.h"

#include "core/rehearsal/calibrate.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <vector>

using namespace ebbline;
using namespace ebbline::rehearsal;
using namespace ebbline::bench;

namespace {

std::vector<KnownCourse> plainCourses(Model model, std::uint64_t seed, int count)
{
    std::vector<KnownCourse> courses;
    courses.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        courses.push_back(invent({model, Rhythm::mixed, seed}, Kind::plain, i));
        courses.back().name += nameOf(model);
    }
    return courses;
}

void printCost(std::uint64_t seed, int count)
{
    std::printf("### The default protocol on plain courses, entries mixed, seed %llu\n\n"
                "| model | triggers alone | warning rules, call now | either |\n|---|---|---|---|\n",
                static_cast<unsigned long long>(seed));
    for (const Model model : models) {
        long byTriggers = 0;
        long byWarnings = 0;
        long either = 0;
        for (const KnownCourse& course : plainCourses(model, seed, count)) {
            const bool alert = verdictOn(course, triggers::defaultProtocol()).sinceOnset.has_value();
            const bool warning = warns(course);
            byTriggers += alert;
            byWarnings += warning;
            either += alert || warning;
        }
        std::printf("| %s | %s | %s | %s |\n", nameOf(model), text(byTriggers, count).c_str(), text(byWarnings, count).c_str(),
                    text(either, count).c_str());
    }
    std::printf("\n");
}

/// Plain courses with an alert of a trigger, and with none of another.
void printRaised(const std::string& name, const std::vector<KnownCourse>& plain)
{
    using triggers::Trigger;
    constexpr std::array asked{Trigger::level, Trigger::rebound, Trigger::sideDivergence, Trigger::slowRecovery};
    std::array<long, asked.size()> any{}, alone{};
    for (const KnownCourse& course : plain) {
        std::array<bool, asked.size()> raised{};
        for (const triggers::Finding& finding : verdictOn(course, triggers::defaultProtocol()).raised)
            for (std::size_t i = 0; i < asked.size(); ++i)
                if (finding.trigger == asked[i] && finding.urgency != recovery::Urgency::atReview)
                    raised[i] = true;
        const auto kinds = std::count(raised.begin(), raised.end(), true);
        for (std::size_t i = 0; i < asked.size(); ++i) {
            any[i] += raised[i];
            alone[i] += raised[i] && kinds == 1;
        }
    }
    std::printf("| %s |", name.c_str());
    for (std::size_t i = 0; i < asked.size(); ++i)
        std::printf(" %.3f, %.3f |", static_cast<double>(any[i]) / static_cast<double>(plain.size()),
                    static_cast<double>(alone[i]) / static_cast<double>(plain.size()));
    std::printf("\n");
}

void printFound(std::uint64_t seed, const Sizes& sizes, DefaultsTradeOff& tradeOff)
{
    std::vector<std::pair<std::string, Figures>> rows;
    std::printf("### What alerts in plain courses, the default protocol: with an alert of the trigger, with no other one\n\n"
                "| model, entries | level | rebound | side divergence | slow recovery |\n|---|---|---|---|---|\n");
    for (const Model model : models)
        for (const Rhythm rhythm : rhythms) {
            const Cohorts cohorts = freshCohorts({model, rhythm, seed}, sizes);
            rows.emplace_back(std::string(nameOf(model)) + ", " + nameOf(rhythm), figuresUnder(cohorts, triggers::defaultProtocol()));
            printRaised(rows.back().first, cohorts[static_cast<std::size_t>(Kind::plain)]);
            tradeOff.take(model, cohorts);
        }
    std::printf("\n");
    const std::string of = ", seed " + std::to_string(seed);
    printMainHeader("The default protocol" + of);
    for (const auto& [name, figures] : rows)
        printMainRow(name, figures);
    std::printf("\n");
    printDelayHeader("How late, and on which side, the default protocol" + of + ": of the courses that were found");
    for (const auto& [name, figures] : rows)
        printDelayRow(name, figures);
    std::printf("\n| model, entries | findings per 100 plain courses | note for the review in plain | silent list in plain |\n|---|---|---|---|\n");
    for (const auto& [name, figures] : rows) {
        const KindFigures& plain = figures.at("plain");
        std::printf("| %s | %.1f | %s | %s |\n", name.c_str(), 100.0 * static_cast<double>(plain.alerts) / static_cast<double>(plain.courses),
                    text(plain.reviewNotes, plain.courses).c_str(), text(plain.silent, plain.courses).c_str());
    }
    std::printf("\n");
}

void printThresholds(std::uint64_t seed, int count)
{
    auto courses = plainCourses(Model::decay, seed, count);
    auto more = plainCourses(Model::steps, seed, count);
    courses.insert(courses.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
    CalibrationSettings usual;
    usual.learnBand = false;
    CalibrationSettings fixed = usual;
    fixed.shares = usualShares;
    std::printf("### Thresholds under the seed band, budget 10, %d plain courses of each model, entries mixed, seed %llu\n\n"
                "| statistic | default | calibrated today | calibrated with the usual shares |\n|---|---|---|---|\n",
                count, static_cast<unsigned long long>(seed));
    const auto divided = calibrate(courses, triggers::defaultProtocol(), usual);
    const auto undivided = calibrate(courses, triggers::defaultProtocol(), fixed);
    if (!divided || !undivided) {
        std::printf("%s\n", (divided ? undivided : divided).error().detail.c_str());
        return;
    }
    const triggers::Thresholds defaults;
    for (const triggers::Statistic statistic : triggers::allStatistics)
        std::printf("| %s | %.2f | %.2f | %.2f |\n", std::string(triggers::word(statistic)).c_str(), triggers::thresholdOf(defaults, statistic),
                    triggers::thresholdOf(std::as_const(divided->protocol.thresholds), statistic),
                    triggers::thresholdOf(std::as_const(undivided->protocol.thresholds), statistic));
    std::printf("\nHeld out: %.3f, %.3f.\n", divided->heldOutRate, undivided->heldOutRate);
}

void printBeyond(std::uint64_t seed, bool quick)
{
    printRare(seed, quick ? 60 : 300);
    printOutsideFamily(seed, quick ? 100 : 500);
}

}  // namespace

int main(int argc, char** argv)
{
    std::uint64_t calibrationSeed = 31'001;
    std::uint64_t judgementSeed = 33'001;
    Sizes sizes;
    bool quick = false;
    bool beyondAlone = false;
    const char* pictures = nullptr;
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--quick") == 0) {
            sizes = {800, 800, 200};
            quick = true;
        } else if (std::strcmp(argv[i], "--beyond") == 0) {
            beyondAlone = true;
        } else if (std::strcmp(argv[i], "--seeds") == 0 && i + 2 < argc) {
            calibrationSeed = std::strtoull(argv[++i], nullptr, 10);
            judgementSeed = std::strtoull(argv[++i], nullptr, 10);
        } else if (std::strcmp(argv[i], "--pictures") == 0 && i + 1 < argc) {
            pictures = argv[++i];
        } else {
            std::fprintf(stderr, "defaults_bench [--quick] [--beyond] [--seeds CALIBRATION JUDGEMENT] [--pictures FOLDER]\n");
            return 2;
        }
    }
    if (beyondAlone) {
        printBeyond(judgementSeed, quick);
        return 0;
    }
    DefaultsTradeOff tradeOff;
    printFound(judgementSeed, sizes, tradeOff);
    tradeOff.print();
    printCost(judgementSeed, sizes.plain);
    printBeyond(judgementSeed, quick);
    printThresholds(calibrationSeed, sizes.calibration);
    if (!pictures)
        return 0;
    const std::string folder = pictures;
    const std::string slow = tradeOffPicture({"plain courses with an alert, per 100", 40, 10}, tradeOff.slowCurves());
    const std::string folds = tradeOffPicture({"plain courses with a note for the review, per 100", 60, 10}, tradeOff.foldCurves());
    if (!(std::ofstream(folder + "/tradeoff-slow.svg") << slow) || !(std::ofstream(folder + "/tradeoff-folds.svg") << folds)) {
        std::fprintf(stderr, "%s: cannot be written\n", pictures);
        return 1;
    }
    return 0;
}
