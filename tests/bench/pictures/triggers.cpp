#include "tests/bench/pictures/picture.h"

#include "core/rehearsal/calibrate.h"
#include "core/triggers/course_watch.h"

#include <algorithm>
#include <map>
#include <optional>
#include <vector>

namespace ebbline::bench {

namespace {

using namespace rehearsal;
using triggers::Statistic;

constexpr Invention invention{Model::decay, Rhythm::twice, 31};

const triggers::Protocol& protocol()
{
    static const triggers::Protocol made = triggers::defaultProtocol();
    return made;
}

/// The largest value of a statistic at each entry at which its guard in points holds.
Points valuesOf(const triggers::CourseInput& course, Statistic statistic)
{
    Points values;
    triggers::CourseWatch watch(course, protocol());
    for (const triggers::Observation* observation : triggers::inOrder(course, endOf(course))) {
        std::optional<double> largest;
        for (const triggers::Candidate& candidate : watch.take(*observation))
            if (candidate.statistic == statistic)
                largest = std::max(largest.value_or(candidate.value), candidate.value);
        if (largest)
            values.emplace_back(triggers::hoursSince(course.treated, observation->at) / 24, *largest);
    }
    return values;
}

struct Shown {
    const char* name;
    Statistic statistic;
    Kind kind;
    const char* what;
    double top;
};

Picture inTrouble(const Shown& shown)
{
    constexpr int most = 40;
    const double threshold = triggers::thresholdOf(protocol().thresholds, shown.statistic);
    Picture picture(std::string(shown.what) + " in forty ordinary courses, and in one course with trouble.",
                    {"day of recovery", 0, 22, {{0, "0"}, {1, "1"}, {3, "3"}, {7, "7"}, {14, "14"}, {21, "21"}}},
                    axis(shown.what, 0, shown.top, shown.top / 4, shown.top / 4 < 1 ? 2 : 1));
    Points ordinary;
    for (int i = 0; i < most; ++i)
        for (const auto& value : valuesOf(invent(invention, Kind::plain, i).input, shown.statistic))
            ordinary.push_back(value);
    picture.marks(ordinary, Mark::hollow, ink::edge, "forty ordinary courses, where the guard in points holds");
    // The one in which this statistic says most.
    std::optional<KnownCourse> course;
    double highest = 0;
    for (int i = 0; i < most; ++i) {
        KnownCourse tried = invent(invention, shown.kind, i);
        for (const auto& [day, value] : valuesOf(tried.input, shown.statistic))
            if (value > highest) {
                highest = value;
                course = tried;
            }
    }
    if (course) {
        const Points values = valuesOf(course->input, shown.statistic);
        picture.line(values, {ink::tide, Dash::solid, 1.4});
        picture.marks(values, Mark::round, ink::tide, "a course with " + std::string(word(shown.kind)));
        picture.upright(triggers::hoursSince(course->input.treated, *course->truth.onset) / 24, {ink::soft, Dash::dotted, 1.4}, "its onset");
    }
    picture.across(threshold, {ink::call, Dash::dashed, 1.6}, "threshold");
    return picture;
}

Picture tails()
{
    constexpr int count = 2000;
    std::vector<Peaks> peaks;
    for (int i = 0; i < count; ++i) {
        const KnownCourse course = invent({Model::decay, Rhythm::mixed, 33}, Kind::plain, i);
        peaks.push_back(peaksOf(course.input, protocol(), endOf(course.input)));
    }
    Picture picture("Share of ordinary courses that a statistic would alert in, by where its threshold is set.",
                    axis("threshold, in parts of the one in use", 0.4, 1.6, 0.2, 1), axis("alerts per 100 ordinary courses", 0, 20, 5));
    struct Look { Statistic statistic; Stroke stroke; const char* name; };
    for (const auto& [statistic, stroke, name] :
         {Look{Statistic::oneSideFills, {ink::left, Dash::dashed, 1.8}, "one side fills"},
          Look{Statistic::oneSideWorsens, {ink::right, Dash::dashed, 1.8}, "one side worsens"},
          Look{Statistic::slowOverall, {ink::next, Dash::dotted, 2}, "slow overall"}}) {
        Points line;
        for (int i = 40; i <= 160; ++i) {
            const double threshold = i / 100.0 * triggers::thresholdOf(protocol().thresholds, statistic);
            const auto above = std::count_if(peaks.begin(), peaks.end(), [&](const Peaks& p) {
                return p.values[static_cast<std::size_t>(statistic)] > threshold;
            });
            line.emplace_back(i / 100.0, 100.0 * static_cast<double>(above) / count);
        }
        picture.line(line, stroke, name);
    }
    Points all;
    for (int i = 40; i <= 160; ++i) {
        long alerting = 0;
        for (const Peaks& course : peaks)
            alerting += course.byRule
                        || std::any_of(triggers::allStatistics.begin(), triggers::allStatistics.end(), [&](Statistic statistic) {
                               return course.values[static_cast<std::size_t>(statistic)]
                                      > i / 100.0 * triggers::thresholdOf(protocol().thresholds, statistic);
                           });
        all.emplace_back(i / 100.0, 100.0 * static_cast<double>(alerting) / count);
    }
    picture.line(all, {ink::tide, Dash::solid, 2.2}, "all eight, and the rules in points");
    picture.across(10, {ink::call, Dash::dotted, 1.6}, "budget");
    return picture;
}

const Axis dayAxis{"day of recovery", 0, 22, {{0, "0"}, {1, "1"}, {3, "3"}, {7, "7"}, {14, "14"}, {21, "21"}}};

double dayOf(const triggers::CourseInput& course, const clock::Moment& at)
{
    return triggers::hoursSince(course.treated, at) / 24;
}

/// Scores of folds on one side, by day.
Points foldsOf(const triggers::CourseInput& course, recovery::Side side)
{
    Points points;
    for (const triggers::Observation* observation : triggers::inOrder(course, endOf(course)))
        if (const auto found = observation->scores.find({recovery::Symptom::puckering, side}); found != observation->scores.end())
            points.emplace_back(dayOf(course, observation->at), found->second.points());
    return points;
}

/// When a trigger was raised, with how urgent; at most the first of each urgency.
std::vector<triggers::Finding> raised(const triggers::CourseInput& course, triggers::Trigger trigger)
{
    std::vector<triggers::Finding> found;
    for (const triggers::Finding& finding : triggers::judge(course, protocol(), endOf(course)))
        if (finding.trigger == trigger)
            found.push_back(finding);
    return found;
}

Picture puckering()
{
    Picture picture("Folds in forty ordinary courses, and in one in which they stay, with the day of the finding.", dayAxis,
                    axis("score", 0, 10, 2));
    Points ordinary;
    for (int i = 0; i < 40; ++i)
        for (const auto& value : foldsOf(invent(invention, Kind::plain, i).input, recovery::Side::left))
            ordinary.push_back(value);
    picture.marks(ordinary, Mark::hollow, ink::edge, "forty ordinary courses");
    for (int i = 0; i < 40; ++i) {
        const KnownCourse course = invent(invention, Kind::puckering, i);
        const auto findings = raised(course.input, triggers::Trigger::persistentPuckering);
        if (findings.empty() || findings.front().stream.side != course.truth.side)
            continue;
        const Points points = foldsOf(course.input, course.truth.side);
        picture.line(points, {ink::tide, Dash::solid, 1.4});
        picture.marks(points, Mark::round, ink::tide, "a course with folds that stay");
        picture.upright(dayOf(course.input, findings.front().raisedAt), {ink::call, Dash::dashed, 1.6}, "raised");
        break;
    }
    picture.across(protocol().thresholds.puckeringGuard, {ink::soft, Dash::dotted, 1.4}, "from day 21 on, this is enough");
    picture.note("rules in points, no statistic");
    return picture;
}

/// Days since the last entry, hour by hour up to the evening of day 21.
Points waitOf(const triggers::CourseInput& course)
{
    Points points{{0, 0}};
    double last = 0;
    for (const triggers::Observation* observation : triggers::inOrder(course, endOf(course))) {
        const double day = dayOf(course, observation->at);
        points.emplace_back(day, day - last);
        points.emplace_back(day, 0);
        last = day;
    }
    points.emplace_back(dayOf(course, endOf(course)), dayOf(course, endOf(course)) - last);
    return points;
}

Picture silence()
{
    constexpr double mostDays = 8;
    Picture picture("Days since the last entry, in one ordinary course and in one that fell silent.", dayAxis,
                    axis("days since the last entry", 0, mostDays, 2));
    picture.line(waitOf(invent(invention, Kind::plain, 0).input), {ink::edge, Dash::solid, 1.4}, "an ordinary course");
    for (int i = 0; i < 40; ++i) {
        const KnownCourse course = invent(invention, Kind::silent, i);
        const auto findings = raised(course.input, triggers::Trigger::silence);
        if (course.input.observations.size() < 12 || findings.empty())
            continue;
        Points wait = waitOf(course.input);
        if (wait.back().second > mostDays)
            wait.back() = {wait.back().first - wait.back().second + mostDays, mostDays};
        picture.line(wait, {ink::tide, Dash::solid, 1.8}, "a course that fell silent");
        picture.upright(dayOf(course.input, findings.front().raisedAt), {ink::call, Dash::dashed, 1.6}, "raised");
        break;
    }
    picture.across(protocol().thresholds.silentDays, {ink::soft, Dash::dotted, 1.4}, "days of the rule");
    return picture;
}

}  // namespace

std::vector<Named> triggerPictures()
{
    constexpr Shown all[]{{"level", Statistic::level, Kind::haematoma, "level", 8},
                          {"level-overall", Statistic::levelOverall, Kind::slowRecovery, "level overall", 3},
                          {"rebound", Statistic::rebound, Kind::infection, "rebound", 24},
                          {"side-divergence", Statistic::sideDivergence, Kind::haematoma, "side divergence", 8},
                          {"one-side-fills", Statistic::oneSideFills, Kind::haematoma, "one side fills", 48},
                          {"one-side-worsens", Statistic::oneSideWorsens, Kind::infection, "one side worsens", 48},
                          {"slow-recovery", Statistic::slowRecovery, Kind::slowRecovery, "slow recovery", 6},
                          {"slow-overall", Statistic::slowOverall, Kind::slowRecovery, "slow overall", 4}};
    std::vector<Named> pictures;
    for (const Shown& shown : all)
        pictures.push_back({shown.name, inTrouble(shown)});
    pictures.push_back({"persistent-puckering", puckering()});
    pictures.push_back({"silence", silence()});
    pictures.push_back({"budget", tails()});
    return pictures;
}

}  // namespace ebbline::bench
