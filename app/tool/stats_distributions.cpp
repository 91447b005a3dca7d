// ebbline stats distribution, quantile: what the tests and intervals of the other methods rest on.

#include "app/tool/stats_parts.h"

#include "core/statistics/distributions.h"
#include "core/statistics/quantile.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace ebbline::tool {

namespace {

struct DistributionOptions {
    std::string name;
    std::vector<double> parameters;
    std::optional<double> at;
    std::optional<double> share;
};

struct QuantileOptions {
    std::string file;
    std::string column = "value";
    std::vector<double> shares{0.25, 0.5, 0.75};
    int type = 8;
};

/// Both tails, each found by itself: 1 minus a probability close to 1 has no digits left.
struct Tails {
    Result<double> atMost;
    Result<double> beyond;  ///< above it; of whole numbers, at least it
};

struct Distribution {
    const char* name;
    std::size_t parameters;
    const char* wanted;
    Tails (*tails)(double x, const std::vector<double>& of);
    Result<double> (*quantile)(double share, const std::vector<double>& of);
};

constexpr double mostTrials = 1e9;

Result<double> outOf(const char* wanted)
{
    return fail(Reason::outOfRange, wanted);
}

Tails normalTails(double x, const std::vector<double>& of)
{
    if (!(of[1] > 0))
        return {outOf("normal: want a standard deviation above 0"), 0.0};
    const double z = (x - of[0]) / of[1];
    return {statistics::normalCdf(z), statistics::normalCdf(-z)};
}

Result<double> normalQuantile(double share, const std::vector<double>& of)
{
    if (!(of[1] > 0))
        return outOf("normal: want a standard deviation above 0");
    const auto z = statistics::normalQuantile(share);
    return z ? Result<double>(of[0] + of[1] * *z) : z;
}

Tails studentTails(double x, const std::vector<double>& of)
{
    const auto both = statistics::studentTwoSided(x, of[0]);
    if (!both)
        return {both, both};
    const double outer = *both / 2, inner = 1 - outer;
    return x < 0 ? Tails{outer, inner} : Tails{inner, outer};
}

Result<double> studentQuantile(double share, const std::vector<double>& of)
{
    return statistics::studentQuantile(share, of[0]);
}

/// Chi-square is the gamma distribution of half its degrees, doubled.
Tails chiSquareTails(double x, const std::vector<double>& of)
{
    return {statistics::gammaCdf(x / 2, of[0] / 2), statistics::chiSquareUpper(x, of[0])};
}

Result<double> chiSquareQuantile(double share, const std::vector<double>& of)
{
    return statistics::chiSquareQuantile(share, of[0]);
}

Tails gammaTails(double x, const std::vector<double>& of)
{
    return {statistics::gammaCdf(x, of[0]), statistics::chiSquareUpper(2 * x, 2 * of[0])};
}

Result<double> gammaQuantile(double share, const std::vector<double>& of)
{
    const auto doubled = statistics::chiSquareQuantile(share, 2 * of[0]);
    return doubled ? Result<double>(*doubled / 2) : doubled;
}

Tails betaTails(double x, const std::vector<double>& of)
{
    return {statistics::betaCdf(x, of[0], of[1]), statistics::betaCdf(1 - x, of[1], of[0])};
}

Result<double> betaQuantile(double share, const std::vector<double>& of)
{
    return statistics::betaQuantile(share, of[0], of[1]);
}

/// F of d1 and d2 degrees is at most x where a beta variable of d1/2 and d2/2 is at most d1 x / (d1 x + d2).
Tails fTails(double x, const std::vector<double>& of)
{
    if (!(of[0] > 0 && of[1] > 0 && x >= 0))
        return {outOf("f: want degrees of freedom above 0 and a value of 0 or more"), 0.0};
    const double whole = of[0] * x + of[1];
    return {statistics::betaCdf(of[0] * x / whole, of[0] / 2, of[1] / 2), statistics::betaCdf(of[1] / whole, of[1] / 2, of[0] / 2)};
}

Result<double> fQuantile(double share, const std::vector<double>& of)
{
    return statistics::fQuantile(share, of[0], of[1]);
}

bool isCount(double value)
{
    return value >= 0 && value <= mostTrials && value == std::floor(value);
}

Tails binomialTails(double x, const std::vector<double>& of)
{
    if (!isCount(x) || !isCount(of[0]) || x > of[0])
        return {outOf("binomial: want whole numbers, the value at most the trials"), 0.0};
    const long events = std::lround(x), total = std::lround(of[0]);
    return {statistics::binomialCdf(events, total, of[1]), statistics::binomialCdf(total - events, total, 1 - of[1])};
}

/// The smallest count that is not exceeded with at least this probability.
Result<double> binomialQuantile(double share, const std::vector<double>& of)
{
    if (!isCount(of[0]))
        return outOf("binomial: want a whole number of trials");
    long low = 0, high = std::lround(of[0]);
    const long total = high;
    while (low < high) {
        const long middle = low + (high - low) / 2;
        const auto atMost = statistics::binomialCdf(middle, total, of[1]);
        if (!atMost)
            return atMost;
        if (*atMost < share)
            low = middle + 1;
        else
            high = middle;
    }
    const auto sound = statistics::binomialCdf(low, total, of[1]);
    return sound ? Result<double>(static_cast<double>(low)) : sound;
}

constexpr std::string_view binomial = "binomial";

constexpr std::array distributions{
    Distribution{"normal", 2, "mean and standard deviation", normalTails, normalQuantile},
    Distribution{"student", 1, "degrees of freedom", studentTails, studentQuantile},
    Distribution{"chi-square", 1, "degrees of freedom", chiSquareTails, chiSquareQuantile},
    Distribution{"f", 2, "degrees of freedom above and below", fTails, fQuantile},
    Distribution{"beta", 2, "both shapes", betaTails, betaQuantile},
    Distribution{"gamma", 1, "shape (the scale is 1)", gammaTails, gammaQuantile},
    Distribution{binomial.data(), 2, "trials and probability", binomialTails, binomialQuantile}};

Answered tailsOf(const Distribution& distribution, const DistributionOptions& options, Json json)
{
    const Tails tails = distribution.tails(*options.at, options.parameters);
    for (const auto* tail : {&tails.atMost, &tails.beyond})
        if (!*tail)
            return refused(tail->error());
    const bool whole = distribution.name == binomial;
    json["at"] = *options.at;
    setProbability(json, "atMost", *tails.atMost);
    setProbability(json, whole ? "atLeast" : "above", *tails.beyond);
    const std::string at = shown(*options.at, whole ? 0 : 4);
    return Answer{std::move(json), "at most " + at + ": " + probabilityText(*tails.atMost) + (whole ? "; at least " : "; above ") + at + ": "
                                       + probabilityText(*tails.beyond) + "\n"};
}

Answered distribution(const DistributionOptions& options)
{
    const auto found = std::find_if(distributions.begin(), distributions.end(), [&](const Distribution& d) { return d.name == options.name; });
    if (found == distributions.end()) {
        std::string names;
        for (const Distribution& each : distributions)
            names += (names.empty() ? "" : ", ") + std::string(each.name);
        return refused({Reason::outOfRange, "want one of " + names});
    }
    if (options.parameters.size() != found->parameters)
        return refused({Reason::outOfRange, options.name + ": want " + found->wanted});
    if (options.at.has_value() == options.share.has_value())
        return refused({Reason::outOfRange, "give --at or --quantile"});
    Json json{{"distribution", options.name}, {"parameters", options.parameters}};
    if (options.at)
        return tailsOf(*found, options, std::move(json));
    if (!(*options.share > 0 && *options.share < 1))
        return refused({Reason::outOfRange, "--quantile: want above 0 and below 1"});
    const auto value = found->quantile(*options.share, options.parameters);
    if (!value)
        return refused(value.error());
    json["quantile"] = *options.share;
    json["value"] = *value;
    return Answer{std::move(json), percent(*options.share) + " at most " + shown(*value, found->name == binomial ? 0 : 4) + "\n"};
}

Answered quantiles(const QuantileOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto numbers = table->numbers(options.column, anyNumberOrNone);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<double> values;
    for (const auto& number : numbers)
        if (number)
            values.push_back(*number);
    const std::size_t missing = numbers.size() - values.size();
    Answer answer{{{"values", values.size()}, {"missing", missing}, {"type", options.type}, {"points", Json::array()}}, "share  quantile\n"};
    for (const double share : options.shares) {
        const auto found = statistics::quantile(values, share, static_cast<statistics::QuantileType>(options.type));
        if (!found)
            return refused(found.error());
        answer.json["points"].push_back({{"share", share}, {"quantile", *found}});
        answer.text += shown(share) + "  " + shown(*found) + "\n";
    }
    answer.text += missingText(missing);
    return answer;
}

}  // namespace

void addDistributionMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto known = std::make_shared<DistributionOptions>();
    auto* command = addMethod(stats, run, "distribution", "Probabilities and quantiles of a distribution", known, distribution);
    command->footer("normal MEAN DEVIATION; student DEGREES; chi-square DEGREES; f DEGREES DEGREES; beta A B; gamma SHAPE; binomial TRIALS\n"
                    "PROBABILITY. Each tail is computed by itself. A binomial quantile is the smallest count with at least that probability.\n"
                    "Example: ebbline stats distribution student 17.7764 --at 1.8608\n"
                    "  at most 1.8608: p = 0.9603; above 1.8608: p = 0.0397\n"
                    "Example: ebbline stats distribution chi-square 3 --quantile 0.95\n"
                    "  95.0 % at most 7.8147");
    command->add_option("NAME", known->name, "Of the distribution")->required();
    command->add_option("PARAMETERS", known->parameters, "Its parameters, as below")->required();
    command->add_option("--at", known->at, "A value: how likely is it to stay at or below it, and above");
    command->add_option("--quantile", known->share, "A probability above 0 and below 1: which value");

    const auto sample = std::make_shared<QuantileOptions>();
    command = addMethod(stats, run, "quantile", "Quantiles of a column", sample, quantiles);
    command->footer("Types of Hyndman and Fan (Am Stat 1996;50:361): 6 Weibull's, 7 the default of R and of spreadsheets, 8 nearly\n"
                    "unbiased for the median.\n"
                    "Example: doses.csv holds the lines  value  1 2 4 8 16 32 64\n"
                    "  ebbline stats quantile doses.csv --at 0.1,0.5,0.9 --type 7\n"
                    "  share  quantile\n"
                    "  0.1000  1.6000\n"
                    "  0.5000  8.0000\n"
                    "  0.9000  44.8000");
    command->add_option("FILE", sample->file, "Table (CSV)")->required();
    command->add_option("--column", sample->column, "Its column of values")->capture_default_str();
    command->add_option("--at", sample->shares, "Shares, 0..1")->delimiter(',')->capture_default_str();
    command->add_option("--type", sample->type, "How to read between two values: 6, 7 or 8")->check(CLI::Range(6, 8))->capture_default_str();
}

}  // namespace ebbline::tool
