// ebbline stats countrate, clusteredshare, pairedshare, fisherpower: counts of subjects who count more than once, who
// are asked twice, and how many of them a comparison needs.

#include "app/tool/stats_parts.h"

#include "core/statistics/clustered_share.h"
#include "core/statistics/count_rate.h"
#include "core/statistics/fisher_power.h"
#include "core/statistics/paired_counts.h"

#include <algorithm>

namespace ebbline::tool {

namespace {

struct RateOptions {
    std::string file;
    std::string column = "count";
    double confidence = 0.95;
};

struct ClusterOptions {
    std::string file;
    std::string events = "events";
    std::string readings = "readings";
    double confidence = 0.95;
};

struct PairedOptions {
    long yesNo = 0;
    long noYes = 0;
    long subjects = 0;
    double confidence = 0.95;
};

struct PowerOptions {
    long first = 0;
    long second = 0;
    double share = 0;
    std::optional<double> against;
    double error = 0.05;
    double power = 0.8;
};

constexpr const char* aboveAndBelow = "Above 0 and below 1";

Answered countRate(const RateOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto counts = countsIn(*table, options.column);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    const auto found = statistics::countRate(counts, options.confidence);
    if (!found)
        return refused(found.error());
    return Answer{{{"subjects", counts.size()}, {"rate", found->rate}, {"low", found->interval.low}, {"high", found->interval.high},
                   {"scatter", found->scatter}, {"confidence", options.confidence}},
                  std::to_string(counts.size()) + " subjects: " + shown(found->rate) + " each, " + rangeText(found->interval) + " (confidence "
                      + percent(options.confidence) + ")\ntheir counts scatter " + shown(found->scatter, 2) + " times as Poisson's do\n"};
}

Answered clusteredShare(const ClusterOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto events = countsIn(*table, options.events);
    const auto readings = countsIn(*table, options.readings);
    std::vector<statistics::Group> groups;
    for (std::size_t row = 0; row < std::min(events.size(), readings.size()); ++row) {
        if (readings[row] == 0)
            table->fault(row, options.readings, "want at least one reading");
        else if (events[row] > readings[row])
            table->fault(row, options.events, "want at most the readings");
        groups.push_back({events[row], readings[row]});
    }
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    const auto found = statistics::clusteredShare(groups, options.confidence);
    if (!found)
        return refused(found.error());
    return Answer{{{"groups", groups.size()}, {"share", found->share}, {"low", found->interval.low}, {"high", found->interval.high},
                   {"effective", found->effective}, {"confidence", options.confidence}},
                  std::to_string(groups.size()) + " groups: " + percent(found->share) + ", " + percent(found->interval.low) + " to "
                      + percent(found->interval.high) + " (confidence " + percent(options.confidence) + ")\nas much as " + shown(found->effective, 1)
                      + " readings that do not belong together\n"};
}

Answered pairedShare(const PairedOptions& options)
{
    if (options.subjects == 0 && options.yesNo == 0 && options.noYes == 0)
        return refused({Reason::notEnough, "nobody was asked"});
    const auto found = statistics::pairedDifference(options.yesNo, options.noYes, options.subjects, options.confidence);
    if (!found)
        return refused(found.error());
    return Answer{{{"subjects", options.subjects}, {"difference", found->value}, {"low", found->interval.low}, {"high", found->interval.high},
                   {"confidence", options.confidence}},
                  "the share of yes moved by " + shown(100 * found->value, 1) + " points, " + shown(100 * found->interval.low, 1) + " to "
                      + shown(100 * found->interval.high, 1) + " (confidence " + percent(options.confidence) + ")\n"};
}

Answered fisherPower(const PowerOptions& options)
{
    const auto test = statistics::FisherPower::create(options.first, options.second, options.error);
    if (!test)
        return refused(test.error());
    Answer answer{{{"first", options.first}, {"second", options.second}, {"share", options.share}, {"error", options.error}}, {}};
    if (options.against) {
        const auto power = test->power(options.share, *options.against);
        if (!power)
            return refused(power.error());
        answer.json["against"] = *options.against;
        setProbability(answer.json, "power", *power);
        answer.text = percent(options.share) + " against " + percent(*options.against) + " is found in " + percent(*power)
                      + " of such comparisons\n";
        return answer;
    }
    const auto smallest = test->smallestAbove(options.share, options.power);
    if (!smallest)
        return refused(smallest.error());
    answer.json["power"] = options.power;
    answer.json["smallestFound"] = orNull(*smallest);
    answer.text = *smallest ? "found in " + percent(options.power) + " of such comparisons: a share of " + percent(**smallest) + " or more against "
                                  + percent(options.share) + "\n"
                            : "not even a share of 100 % against " + percent(options.share) + " is found in " + percent(options.power)
                                  + " of such comparisons\n";
    return answer;
}

}  // namespace

void addRateMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto rate = std::make_shared<RateOptions>();
    auto* command = addMethod(stats, run, "countrate", "Events per subject where one may have several", rate, countRate);
    command->footer("Garwood's limits, wider where the counts scatter more than Poisson's.\n"
                    "Example: alerts.csv holds the lines  count  0 2 1 0 7 0 3\n"
                    "  ebbline stats countrate alerts.csv\n"
                    "  7 subjects: 1.8571 each, 0.4755 to 4.9049 (confidence 95.0 %)\n"
                    "  their counts scatter 3.49 times as Poisson's do");
    command->add_option("FILE", rate->file, "Table (CSV), one row a subject")->required();
    command->add_option("--column", rate->column, "Its column of counts")->capture_default_str();
    command->add_option("--confidence", rate->confidence, aboveAndBelow)->capture_default_str();

    const auto clusters = std::make_shared<ClusterOptions>();
    command = addMethod(stats, run, "clusteredshare", "A share over readings that come in groups", clusters, clusteredShare);
    command->footer("Several days of one patient say less than as many patients: docs/statistics/proportions.md.\n"
                    "Example: days.csv holds the lines  events,readings  3,10 7,12 1,9 6,11\n"
                    "  ebbline stats clusteredshare days.csv\n"
                    "  4 groups: 40.5 %, 10.1 % to 77.7 % (confidence 95.0 %)\n"
                    "  as much as 8.0 readings that do not belong together");
    command->add_option("FILE", clusters->file, "Table (CSV), one row a group")->required();
    command->add_option("--events", clusters->events, "Its column of events")->capture_default_str();
    command->add_option("--readings", clusters->readings, "Its column of readings")->capture_default_str();
    command->add_option("--confidence", clusters->confidence, aboveAndBelow)->capture_default_str();

    const auto paired = std::make_shared<PairedOptions>();
    command = addMethod(stats, run, "pairedshare", "How far a share moved among subjects asked twice", paired, pairedShare);
    command->footer("Half a subject is added to each cell (Agresti and Min, Stat Med 2005;24:729); whether it moved at all: mcnemar.\n"
                    "Example: 150 of 1600 changed from yes to no, 86 from no to yes\n"
                    "  ebbline stats pairedshare 150 86 1600\n"
                    "  the share of yes moved by -4.0 points, -5.9 to -2.1 (confidence 95.0 %)");
    command->add_option("YESNO", paired->yesNo, "From yes to no")->required();
    command->add_option("NOYES", paired->noYes, "From no to yes")->required();
    command->add_option("SUBJECTS", paired->subjects, "All who were asked twice")->required();
    command->add_option("--confidence", paired->confidence, aboveAndBelow)->capture_default_str();

    const auto power = std::make_shared<PowerOptions>();
    command = addMethod(stats, run, "fisherpower", "What Fisher's exact test of two groups can find", power, fisherPower);
    command->footer("Two-sided, exact: every pair of counts that the test rejects. Without --against: the smallest share above that is found.\n"
                    "Example: ebbline stats fisherpower 20 20 --share 0.1 --against 0.5\n"
                    "  10.0 % against 50.0 % is found in 74.2 % of such comparisons\n"
                    "Example: ebbline stats fisherpower 20 20 --share 0.1\n"
                    "  found in 80.0 % of such comparisons: a share of 52.8 % or more against 10.0 %");
    command->add_option("N", power->first, "Subjects of the first group")->required();
    command->add_option("M", power->second, "Subjects of the second group")->required();
    command->add_option("--share", power->share, "True share of the first group, 0..1")->required();
    command->add_option("--against", power->against, "True share of the second group, 0..1");
    command->add_option("--error", power->error, "That the test allows")->capture_default_str();
    command->add_option("--power", power->power, "Wanted, above 0 and below 1")->capture_default_str();
}

}  // namespace ebbline::tool
