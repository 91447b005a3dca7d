// ebbline stats wilson, jeffreys, clopper-pearson, newcombe, fisher: counts on the command line.

#include "app/tool/stats_parts.h"

#include "core/statistics/fisher.h"
#include "core/statistics/proportions.h"
#include "core/statistics/two_proportions.h"

namespace ebbline::tool {

namespace {

using statistics::Counts;
using statistics::Interval;

struct OneShare {
    Counts counts{};
    double confidence = 0.95;
};

struct TwoShares {
    Counts first{};
    Counts second{};
    double confidence = 0.95;
};

struct FisherOptions {
    statistics::TwoByTwo table{};
    double confidence = 0.95;
};

/// Without a trial there is nothing to say; that is no fault of the input.
std::optional<Error> nothingTried(const Counts& counts)
{
    if (counts.events == 0 && counts.total == 0)
        return Error{Reason::notEnough, "nothing was tried"};
    return std::nullopt;
}

std::string counted(const Counts& counts)
{
    return std::to_string(counts.events) + " of " + std::to_string(counts.total);
}

double share(const Counts& counts)
{
    return static_cast<double>(counts.events) / static_cast<double>(counts.total);
}

using Method = Result<Interval> (*)(long, long, double);

template <Method interval>
Answered oneShare(const OneShare& options)
{
    if (const auto nothing = nothingTried(options.counts))
        return refused(*nothing);
    const auto found = interval(options.counts.events, options.counts.total, options.confidence);
    if (!found)
        return refused(found.error());
    const std::string sure = percent(options.confidence);
    std::string text = counted(options.counts);
    if (options.counts.events == 0)
        text += ": none seen, upper limit " + percent(found->high);
    else if (options.counts.events == options.counts.total)
        text += ": all, lower limit " + percent(found->low);
    else
        text += ": " + percent(share(options.counts)) + ", " + percent(found->low) + " to " + percent(found->high);
    return Answer{{{"events", options.counts.events},
                   {"total", options.counts.total},
                   {"share", share(options.counts)},
                   {"low", found->low},
                   {"high", found->high},
                   {"confidence", options.confidence}},
                  text + " (confidence " + sure + ")\n"};
}

Answered newcombe(const TwoShares& options)
{
    for (const Counts& counts : {options.first, options.second})
        if (const auto nothing = nothingTried(counts))
            return refused(*nothing);
    const auto found = statistics::newcombe(options.first, options.second, options.confidence);
    if (!found)
        return refused(found.error());
    const auto lower = statistics::probabilityLower(options.first, options.second);
    if (!lower)
        return refused(lower.error());
    Answer answer{{{"first", share(options.first)},
                   {"second", share(options.second)},
                   {"difference", found->difference},
                   {"low", found->low},
                   {"high", found->high},
                   {"confidence", options.confidence}},
                  {}};
    setIntegrated(answer.json, "probabilityFirstIsLower", *lower, statistics::probabilityLowerError);
    answer.text = counted(options.first) + " against " + counted(options.second) + ": difference "
                  + shown(100 * found->difference, 1) + " points, " + shown(100 * found->low, 1) + " to "
                  + shown(100 * found->high, 1) + " (confidence " + percent(options.confidence)
                  + ")\nthe first share is the lower one with probability " + integrated(*lower, statistics::probabilityLowerError)
                  + "\na comparison, not proof, unless chance decided who was treated how\n";
    return answer;
}

Answered fisher(const FisherOptions& options)
{
    const auto found = statistics::fisherExact(options.table, options.confidence);
    if (!found)
        return refused(found.error());
    Answer answer;
    setProbability(answer.json, "twoSided", found->twoSided);
    setProbability(answer.json, "less", found->less);
    setProbability(answer.json, "greater", found->greater);
    answer.json["oddsRatio"] = orNull(found->oddsRatio);
    answer.json["oddsRatioLow"] = found->oddsRatioLow;
    answer.json["oddsRatioHigh"] = orNull(found->oddsRatioHigh);
    answer.json["confidence"] = options.confidence;
    const auto orUnbounded = [](const std::optional<double>& value) { return value ? shown(*value) : "no upper limit"; };
    answer.text = "two-sided " + probabilityText(found->twoSided) + "; fewer in the first " + probabilityText(found->less)
                  + ", more " + probabilityText(found->greater) + "\nodds ratio ";
    if (!found->oddsRatio)
        answer.text += "without bound, at least " + shown(found->oddsRatioLow);
    else if (*found->oddsRatio == 0)
        answer.text += "not above 0 seen, at most " + orUnbounded(found->oddsRatioHigh);
    else
        answer.text += shown(*found->oddsRatio) + ", " + shown(found->oddsRatioLow) + " to " + orUnbounded(found->oddsRatioHigh);
    answer.text += " (confidence " + percent(options.confidence) + ")\n";
    return answer;
}

void addConfidence(CLI::App& command, double& confidence)
{
    command.add_option("--confidence", confidence, "Above 0 and below 1")->capture_default_str();
}

void addOneShare(CLI::App& stats, std::function<int()>& run, const std::string& name, const std::string& purpose,
                 Answered (*answer)(const OneShare&), const std::string& example)
{
    const auto options = std::make_shared<OneShare>();
    auto* command = addMethod(stats, run, name, purpose, options, answer);
    command->footer(example);
    command->add_option("EVENTS", options->counts.events, "How often it happened")->required();
    command->add_option("TOTAL", options->counts.total, "Among how many")->required();
    addConfidence(*command, options->confidence);
}

}  // namespace

void addCountMethods(CLI::App& stats, std::function<int()>& run)
{
    addOneShare(stats, run, "wilson", "Wilson's interval of a share; for display", oneShare<statistics::wilson>,
                "Example: ebbline stats wilson 81 263\n"
                "  81 of 263: 30.8 %, 25.5 % to 36.6 % (confidence 95.0 %)");
    addOneShare(stats, run, "jeffreys", "Jeffreys' interval of a share; where shares are pooled", oneShare<statistics::jeffreys>,
                "Example: ebbline stats jeffreys 15 148\n"
                "  15 of 148: 10.1 %, 6.0 % to 15.8 % (confidence 95.0 %)");
    addOneShare(stats, run, "clopper-pearson", "Exact interval of a share; where \"at least\" must hold",
                oneShare<statistics::clopperPearson>,
                "Example: ebbline stats clopper-pearson 0 20\n"
                "  0 of 20: none seen, upper limit 16.8 % (confidence 95.0 %)");

    const auto shares = std::make_shared<TwoShares>();
    auto* command = addMethod(stats, run, "newcombe", "Difference of two shares with its interval", shares, newcombe);
    command->footer("Example: ebbline stats newcombe 56 70 48 80\n"
                    "  56 of 70 against 48 of 80: difference 20.0 points, 5.2 to 33.4 (confidence 95.0 %)\n"
                    "  the first share is the lower one with probability 0.37 %\n"
                    "  a comparison, not proof, unless chance decided who was treated how");
    command->add_option("A", shares->first.events, "How often in the first group")->required();
    command->add_option("N", shares->first.total, "Of how many")->required();
    command->add_option("B", shares->second.events, "How often in the second group")->required();
    command->add_option("M", shares->second.total, "Of how many")->required();
    addConfidence(*command, shares->confidence);

    const auto table = std::make_shared<FisherOptions>();
    command = addMethod(stats, run, "fisher", "Fisher's exact test of two by two counts", table, fisher);
    command->footer("The table is  first: A yes, B no;  second: C yes, D no.\n"
                    "Example: ebbline stats fisher 3 1 1 3\n"
                    "  two-sided p = 0.4857; fewer in the first p = 0.9857, more p = 0.2429\n"
                    "  odds ratio 6.4083, 0.2117 to 626.2435 (confidence 95.0 %)");
    command->add_option("A", table->table.a, "First group, yes")->required();
    command->add_option("B", table->table.b, "First group, no")->required();
    command->add_option("C", table->table.c, "Second group, yes")->required();
    command->add_option("D", table->table.d, "Second group, no")->required();
    addConfidence(*command, table->confidence);
}

}  // namespace ebbline::tool
