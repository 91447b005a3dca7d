// What the triggers find, at which burden: calibrated on one set of invented courses, judged on
// fresh ones. Prints the tables of docs/statistics/detection.md.
//
//   detection_bench [--quick] [mixed|daily|twice|plan]
//
// The seeds of calibration and judgement differ, and neither was used while the detector was made.

#include "core/curves/curve.h"
#include "core/rehearsal/calibrate.h"
#include "core/rehearsal/rehearse.h"

#include <cstdio>
#include <cstring>

using namespace ebbline;
using namespace ebbline::rehearsal;

namespace {

constexpr std::uint64_t calibrationSeed = 7'001;
constexpr std::uint64_t judgementSeed = 9'001;

struct Sizes {
    int calibration = 4000;
    int plain = 4000;
    int each = 1000;
};

const char* nameOf(Model model)
{
    return model == Model::decay ? "decay" : "steps";
}

const char* nameOf(Rhythm rhythm)
{
    switch (rhythm) {
    case Rhythm::mixed: return "mixed";
    case Rhythm::daily: return "daily";
    case Rhythm::twice: return "twice";
    case Rhythm::plan: return "plan";
    }
    return "?";
}

/// `.912 (.901-.922)`
std::string text(long part, long whole)
{
    const auto interval = share(part, whole);
    if (!interval)
        return "none";
    char buffer[48];
    std::snprintf(buffer, sizeof buffer, "%.3f (%.3f-%.3f)", static_cast<double>(part) / static_cast<double>(whole),
                  interval->low, interval->high);
    return buffer;
}

std::vector<KnownCourse> cohort(const Invention& invention, Kind kind, int count)
{
    std::vector<KnownCourse> courses;
    courses.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        courses.push_back(invent(invention, kind, i));
    return courses;
}

/// Share of the courses that held an entry within a day, and three days, of the onset: what no
/// detector can exceed without looking at something else.
void printCeiling(const std::vector<KnownCourse>& courses)
{
    long day = 0;
    long threeDays = 0;
    long thirdWeek = 0;
    for (const KnownCourse& course : courses) {
        bool inDay = false;
        bool inThree = false;
        bool late = false;
        for (const triggers::Observation& observation : course.input.observations) {
            late = late || clock::dayOfRecovery(course.input.treated, observation.at) >= 14;
            if (!course.truth.onset || observation.at.at < course.truth.onset->at)
                continue;
            const auto since = observation.at.at - course.truth.onset->at;
            inDay = inDay || since <= std::chrono::hours(24);
            inThree = inThree || since <= std::chrono::hours(72);
        }
        day += inDay;
        threeDays += inThree;
        thirdWeek += late;
    }
    const double whole = static_cast<double>(courses.size());
    std::printf("    wrote within a day %.3f, three days %.3f, from day 14 on %.3f\n", static_cast<double>(day) / whole,
                static_cast<double>(threeDays) / whole, static_cast<double>(thirdWeek) / whole);
}

std::vector<CourseVerdict> verdictsOn(const std::vector<KnownCourse>& courses, const triggers::Protocol& protocol)
{
    std::vector<CourseVerdict> verdicts;
    verdicts.reserve(courses.size());
    for (const KnownCourse& course : courses)
        verdicts.push_back(verdictOn(course, protocol));
    return verdicts;
}

void printPlain(const KindFigures& f)
{
    std::printf("  plain           alert %s  call now %s  findings per 100 %.1f\n", text(f.flagged, f.courses).c_str(),
                text(f.callNow, f.courses).c_str(), 100.0 * static_cast<double>(f.alerts) / static_cast<double>(f.courses));
    std::printf("                  note for the review %s  silent list %s\n", text(f.reviewNotes, f.courses).c_str(),
                text(f.silent, f.courses).c_str());
}

void printKind(const KindFigures& f)
{
    const long strict = f.courses - f.beforeOnset;
    std::printf("  %-15s found %s  24 h %s  72 h %s  median %.1f h\n", f.kind.c_str(), text(f.flagged, f.courses).c_str(),
                text(f.withinDay, f.courses).c_str(), text(f.withinThreeDays, f.courses).c_str(),
                f.medianDelayHours.value_or(0));
    std::printf("    alert before onset %s  strict: found %s  24 h %s  72 h %s  right side %s\n",
                text(f.beforeOnset, f.courses).c_str(), text(f.strictFlagged, strict).c_str(),
                text(f.strictWithinDay, strict).c_str(), text(f.strictWithinThreeDays, strict).c_str(),
                text(f.rightSide, f.flagged).c_str());
}

struct Setting {
    Model judged;
    Rhythm rhythm;
    Model calibratedOn;
};

void run(const Setting& setting, const std::vector<double>& budgets, const Sizes& sizes)
{
    const auto calibration = cohort({setting.calibratedOn, setting.rhythm, calibrationSeed}, Kind::plain, sizes.calibration);
    const Invention fresh{setting.judged, setting.rhythm, judgementSeed};
    std::vector<std::vector<KnownCourse>> cohorts;
    for (const Kind kind : allKinds)
        cohorts.push_back(cohort(fresh, kind, kind == Kind::plain ? sizes.plain : sizes.each));
    for (const double budget : budgets) {
        CalibrationSettings settings;
        settings.budget = budget;
        const auto calibrated = calibrate(calibration, triggers::defaultProtocol(), settings);
        std::printf("\n== model %s, entries %s, calibrated on %s, budget %g per 100\n", nameOf(setting.judged),
                    nameOf(setting.rhythm), nameOf(setting.calibratedOn), budget);
        if (!calibrated) {
            std::printf("  %s\n", calibrated.error().detail.c_str());
            continue;
        }
        std::printf("  held out while calibrating %.3f, rules in points alone %.3f\n ", calibrated->heldOutRate,
                    calibrated->ruleRate);
        for (const triggers::Statistic statistic : triggers::allStatistics)
            std::printf(" %s %.2f", std::string(triggers::word(statistic)).c_str(),
                        triggers::thresholdOf(calibrated->protocol.thresholds, statistic));
        std::printf("\n");
        for (std::size_t i = 0; i < cohorts.size(); ++i) {
            const auto figures = figuresOf(verdictsOn(cohorts[i], calibrated->protocol));
            if (allKinds[i] == Kind::plain) {
                printPlain(figures.front());
                continue;
            }
            printKind(figures.front());
            if (budget == budgets.front())
                printCeiling(cohorts[i]);
        }
    }
}

/// Forecasts made on day 10 from what was written until then, against what was written on the day.
void forecasts(Model model, const Sizes& sizes)
{
    CalibrationSettings settings;
    const auto calibrated = calibrate(cohort({model, Rhythm::daily, calibrationSeed}, Kind::plain, sizes.calibration),
                                      triggers::defaultProtocol(), settings);
    if (!calibrated)
        return;
    std::printf("\n== forecasts on day 10, model %s\n", nameOf(model));
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
        std::printf("  for day %d: within %s  above %s\n", target, text(made - above - below, made).c_str(),
                    text(above, made).c_str());
    }
}

}  // namespace

int main(int argc, char** argv)
{
    bool quick = false;
    std::string only;
    for (int i = 1; i < argc; ++i)
        (std::strcmp(argv[i], "--quick") == 0 ? static_cast<void>(quick = true) : static_cast<void>(only = argv[i]));
    const Sizes sizes = quick ? Sizes{800, 800, 200} : Sizes{};
    for (const Model model : {Model::decay, Model::steps}) {
        for (const Rhythm rhythm : {Rhythm::mixed, Rhythm::daily, Rhythm::twice, Rhythm::plan})
            if (only.empty() || only == nameOf(rhythm))
                run({model, rhythm, model}, {10, 5, 2.5, 20}, sizes);
        forecasts(model, sizes);
    }
    if (!only.empty())
        return 0;
    // Calibrated where the courses are of another kind: what happens when the model is wrong.
    run({Model::steps, Rhythm::mixed, Model::decay}, {10}, sizes);
    run({Model::decay, Rhythm::mixed, Model::steps}, {10}, sizes);
    return 0;
}
