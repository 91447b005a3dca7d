// ebbline stats km, logrank: time until something happens.

#include "app/tool/stats_parts.h"

#include "core/statistics/distributions.h"
#include "core/statistics/hazard_ratio.h"
#include "core/statistics/log_rank.h"
#include "core/statistics/survival.h"

#include <algorithm>
#include <cmath>

namespace ebbline::tool {

namespace {

using statistics::Followed;

struct SurvivalOptions {
    std::string file;
    std::string time = "time";
    std::string event = "event";
    std::string group = "group";
    std::string emphasis = "equal";
    std::string ties = "efron";
    double horizon = 0;  ///< 0: none asked for
    double confidence = 0.95;
};

constexpr Range times{0, 1e12, false, false, "a time of 0 or more"};

struct People {
    std::vector<Followed> followed;
    std::vector<std::string> groups;  ///< of each, where groups were asked for
};

std::expected<People, std::variant<Error, Complaint>> peopleIn(const SurvivalOptions& options, bool withGroups)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto time = table->numbers(options.time, times);
    const auto event = table->answers(options.event, false);
    People people;
    if (withGroups)
        people.groups = table->words(options.group);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    for (std::size_t row = 0; row < time.size(); ++row)
        people.followed.push_back({*time[row], *event[row]});
    return people;
}

/// Why a restricted mean has no spread: the curve is level over all of the time up to the horizon.
std::string nothingVaried(const statistics::SurvivalCurve& curve, double horizon)
{
    for (const auto& step : curve.steps)
        if (step.time < horizon && step.events > 0)
            return "it happened to everybody at once, so that nothing varied";
    return "nothing happened before the horizon";
}

Answered km(const SurvivalOptions& options)
{
    if (options.horizon < 0)
        return refused({Reason::outOfRange, "--horizon: want a time above 0"});
    const auto people = peopleIn(options, false);
    if (!people)
        return std::unexpected(people.error());
    const auto curve = statistics::kaplanMeier(people->followed, options.confidence);
    if (!curve)
        return refused(curve.error());
    if (curve->steps.empty())
        return refused({Reason::notEnough, "nothing happened to any of " + std::to_string(curve->followed) + " followed"});
    const std::string sure = " (confidence " + percent(options.confidence) + ")";
    Answer answer{{{"followed", curve->followed}, {"lastSeen", curve->lastSeen}, {"confidence", options.confidence},
                   {"steps", Json::array()}},
                  "time  at risk  events  without  limits" + sure + "\n"};
    for (const statistics::SurvivalStep& step : curve->steps) {
        Json row{{"time", step.time}, {"atRisk", step.atRisk}, {"events", step.events}, {"survival", step.survival}};
        row["standardError"] = step.standardError ? Json(*step.standardError) : Json(nullptr);
        row["low"] = step.limits ? Json(step.limits->low) : Json(nullptr);
        row["high"] = step.limits ? Json(step.limits->high) : Json(nullptr);
        answer.json["steps"].push_back(std::move(row));
        answer.text += shown(step.time, 2) + "  " + std::to_string(step.atRisk) + "  " + std::to_string(step.events) + "  ";
        answer.text += step.limits ? percent(step.survival) + "  " + percent(step.limits->low) + " to "
                                         + percent(step.limits->high) + "\n"
                                   : std::string("none left: no limits can be given\n");
    }
    const auto median = curve->median();
    answer.json["median"] = median ? Json(*median) : Json(nullptr);
    answer.text += median ? "median " + shown(*median, 2) + "\n" : "median not reached\n";
    if (options.horizon > 0) {
        const auto mean = statistics::restrictedMean(*curve, options.horizon);
        const auto z = statistics::normalQuantile(0.5 + options.confidence / 2);
        if (mean && mean->variance && z) {
            const double half = *z * std::sqrt(*mean->variance);
            const double low = std::max(0.0, mean->mean - half), high = std::min(options.horizon, mean->mean + half);
            answer.json["restrictedMean"] = {{"horizon", options.horizon}, {"mean", mean->mean},
                                             {"standardError", std::sqrt(*mean->variance)}, {"low", low}, {"high", high}};
            answer.text += "mean time within " + shown(options.horizon, 2) + ": " + shown(mean->mean) + ", " + shown(low)
                           + " to " + shown(high) + "\n";
        } else {
            const std::string why = mean ? nothingVaried(*curve, options.horizon) : mean.error().detail;
            answer.json["restrictedMean"] = {{"horizon", options.horizon}, {"notEnough", why}};
            answer.text += "mean time within " + shown(options.horizon, 2) + ": not enough to say: " + why + "\n";
        }
    }
    return answer;
}

Json groupJson(const std::string& name, std::size_t followed, double observed, double expected)
{
    return {{"group", name}, {"followed", followed}, {"observed", observed}, {"expected", expected}};
}

/// The difference of restricted means, or why there is none.
void addDifference(Answer& answer, const std::vector<Followed>& first, const std::vector<Followed>& second,
                   const SurvivalOptions& options)
{
    std::string why;
    double means[2]{}, variance = 0;
    for (const std::size_t i : {std::size_t{0}, std::size_t{1}}) {
        const auto curve = statistics::kaplanMeier(i == 0 ? first : second);
        const auto mean = curve ? statistics::restrictedMean(*curve, options.horizon) : fail(curve.error());
        if (!mean || !mean->variance) {
            why = mean ? "in one group " + nothingVaried(*curve, options.horizon) : mean.error().detail;
            break;
        }
        means[i] = mean->mean;
        variance += *mean->variance;
    }
    const auto z = statistics::normalQuantile(0.5 + options.confidence / 2);
    const std::string title = "mean time within " + shown(options.horizon, 2) + ", first minus second: ";
    if (!why.empty() || !z) {
        answer.json["restrictedMeanDifference"] = {{"horizon", options.horizon}, {"notEnough", why}};
        answer.text += title + "not enough to say: " + why + "\n";
        return;
    }
    const double difference = means[0] - means[1], half = *z * std::sqrt(variance);
    answer.json["restrictedMeanDifference"] = {{"horizon", options.horizon}, {"difference", difference},
                                               {"low", difference - half}, {"high", difference + half}};
    answer.text += title + shown(difference) + ", " + shown(difference - half) + " to " + shown(difference + half)
                   + " (confidence " + percent(options.confidence) + ")\n";
}

struct Split {
    std::vector<std::string> names;
    std::vector<Followed> groups[2];
};

Result<Split> groupsOf(const People& people)
{
    Split split;
    for (std::size_t i = 0; i < people.followed.size(); ++i) {
        const auto place = groupOf(split.names, people.groups[i]);
        if (!place)
            return fail(place.error());
        split.groups[*place].push_back(people.followed[i]);
    }
    if (split.names.size() < 2)
        return fail(Reason::notEnough, "only one group was followed");
    return split;
}

Answered hazard(const SurvivalOptions& options)
{
    const auto people = peopleIn(options, true);
    if (!people)
        return std::unexpected(people.error());
    const auto split = groupsOf(*people);
    if (!split)
        return refused(split.error());
    const auto found = statistics::hazardRatio(split->groups[0], split->groups[1],
                                               options.ties == "breslow" ? statistics::Ties::breslow : statistics::Ties::efron,
                                               options.confidence);
    if (!found)
        return refused(found.error());
    return Answer{{{"of", split->names[1]}, {"to", split->names[0]}, {"ties", options.ties}, {"ratio", found->ratio},
                   {"low", found->limits.low}, {"high", found->limits.high}, {"logRatio", found->logRatio},
                   {"standardError", found->error}, {"confidence", options.confidence}},
                  "the hazard of " + split->names[1] + " is " + shown(found->ratio) + " times that of " + split->names[0] + ", "
                      + rangeText(found->limits) + " (confidence " + percent(options.confidence)
                      + ")\nlogarithm " + shown(found->logRatio) + ", standard error " + shown(found->error)
                      + "\nonly if the ratio is the same at all times\n"};
}

Answered logrank(const SurvivalOptions& options)
{
    if (options.horizon < 0)
        return refused({Reason::outOfRange, "--horizon: want a time above 0"});
    if (!(options.confidence > 0 && options.confidence < 1))
        return refused({Reason::outOfRange, "--confidence: want above 0 and below 1"});
    const auto people = peopleIn(options, true);
    if (!people)
        return std::unexpected(people.error());
    const auto split = groupsOf(*people);
    if (!split)
        return refused(split.error());
    const auto& [names, groups] = *split;
    const auto test = statistics::logRank(groups[0], groups[1], options.emphasis == "early" ? statistics::Emphasis::early
                                                                                            : statistics::Emphasis::equal);
    if (!test)
        return refused(test.error());
    Answer answer{{{"emphasis", options.emphasis},
                   {"groups", Json::array({groupJson(names[0], groups[0].size(), test->observedFirst, test->expectedFirst),
                                           groupJson(names[1], groups[1].size(), test->observedSecond, test->expectedSecond)})},
                   {"variance", test->variance},
                   {"chiSquare", test->chiSquare}},
                  "group  followed  events  expected\n"};
    setProbability(answer.json, "probability", test->probability);
    for (const Json& group : answer.json["groups"])
        answer.text += group["group"].get<std::string>() + "  " + std::to_string(group["followed"].get<std::size_t>()) + "  "
                       + shown(group["observed"].get<double>(), 2) + "  " + shown(group["expected"].get<double>()) + "\n";
    answer.text += "chi-square " + shown(test->chiSquare) + ", " + probabilityText(test->probability) + "\n";
    if (options.horizon > 0)
        addDifference(answer, groups[0], groups[1], options);
    return answer;
}

void addHorizon(CLI::App& command, SurvivalOptions& options)
{
    command.add_option("--horizon", options.horizon, "Also the mean time without the event up to here");
}

CLI::App* addSurvival(CLI::App& stats, std::function<int()>& run, const std::string& name, const std::string& purpose,
                      const std::shared_ptr<SurvivalOptions>& options, Answered (*answer)(const SurvivalOptions&))
{
    auto* command = addMethod(stats, run, name, purpose, options, answer);
    command->add_option("FILE", options->file, "Table (CSV), one row for each who was followed")->required();
    command->add_option("--time", options->time, "Its column of times: of the event, or when last seen")->capture_default_str();
    command->add_option("--event", options->event, "Its column of yes (it happened) and no (last seen)")->capture_default_str();
    command->add_option("--confidence", options->confidence, "Above 0 and below 1")->capture_default_str();
    return command;
}

}  // namespace

void addSurvivalMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto one = std::make_shared<SurvivalOptions>();
    auto* command = addSurvival(stats, run, "km", "How many are still without the event, by time", one, km);
    command->footer("Example: days.csv holds the lines  time,event  3,yes  5,no  7,yes  9,no\n"
                    "  ebbline stats km days.csv\n"
                    "  time  at risk  events  without  limits (confidence 95.0 %)\n"
                    "  3.00  4  1  75.0 %  12.8 % to 96.1 %\n"
                    "  7.00  2  1  37.5 %  1.1 % to 80.8 %\n"
                    "  median 7.00");
    addHorizon(*command, *one);

    const auto two = std::make_shared<SurvivalOptions>();
    command = addSurvival(stats, run, "logrank", "Do two groups reach the event at the same pace", two, logrank);
    command->footer("Example: days.csv holds the lines  time,event,group  3,yes,a  5,yes,b  7,yes,a  9,no,b\n"
                    "  ebbline stats logrank days.csv\n"
                    "  group  followed  events  expected\n"
                    "  a  2  2.00  1.3333\n"
                    "  b  2  1.00  1.6667\n"
                    "  chi-square 0.6154, p = 0.4328");
    addHorizon(*command, *two);
    command->add_option("--group", two->group, "Its column of groups, two of them")->capture_default_str();
    command->add_option("--emphasis", two->emphasis, "equal: log-rank; early: weighted by who is left")
        ->check(CLI::IsMember({"equal", "early"}))
        ->capture_default_str();

    const auto ratio = std::make_shared<SurvivalOptions>();
    command = addSurvival(stats, run, "hazard", "How many times faster the second group reaches the event", ratio, hazard);
    command->footer("Remissions (Gehan, Biometrika 1965;52:203; R 4.2.2, survival 3.5-3: coxph, logarithm 1.5721251).\n"
                    "Example: weeks.csv holds the lines  time,event,group  then with yes and 6mp  6  6  6  7  10  13  16  22  23\n"
                    "  with no and 6mp  6  9  10  11  17  19  20  25  32  32  34  35  with yes and placebo  1  1  2  2  3  4  4  5\n"
                    "  5  8  8  8  8  11  11  12  12  15  17  22  23\n"
                    "  ebbline stats hazard weeks.csv\n"
                    "  the hazard of placebo is 4.8169 times that of 6mp, 2.1465 to 10.8093 (confidence 95.0 %)\n"
                    "  logarithm 1.5721, standard error 0.4124\n"
                    "  only if the ratio is the same at all times");
    command->add_option("--group", ratio->group, "Its column of groups, two of them; the first row's is the first")
        ->capture_default_str();
    command->add_option("--ties", ratio->ties, "efron, or breslow")->check(CLI::IsMember({"efron", "breslow"}))->capture_default_str();
}

}  // namespace ebbline::tool
