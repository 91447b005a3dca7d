// ebbline stats pool, poolanswers, shrink: what many groups say about one of them.

#include "app/tool/stats_parts.h"

#include "core/statistics/pooling.h"
#include "core/statistics/shrinkage.h"

#include <cmath>

namespace ebbline::tool {

namespace {

using statistics::Beta;
using statistics::CategoryCounts;
using statistics::Counts;

struct PoolOptions {
    std::string file;
    std::string events = "events";
    std::string total = "total";
    std::optional<int> run;
};

struct AnswersOptions {
    std::string file;
    std::vector<std::string> columns;
    std::vector<double> seed;
};

struct ShrinkOptions {
    std::string file;
    std::string column = "value";
    double variance = 0;
};

constexpr Range counts{0, 1e9, false, false, "a whole number of 0 or more"};

/// A column of counts. Names the fault of one that is not whole.
std::vector<long> countsIn(NumberTable& table, const std::string& column)
{
    const auto numbers = table.numbers(column, counts);
    std::vector<long> whole;
    for (std::size_t row = 0; row < numbers.size(); ++row) {
        if (numbers[row] && *numbers[row] != std::floor(*numbers[row]))
            table.fault(row, column, "want " + std::string(counts.wanted) + ", found " + exchange::quotedCell(shown(*numbers[row])));
        whole.push_back(numbers[row] ? std::lround(*numbers[row]) : 0);
    }
    return whole;
}

/// One way of finding what lies between the groups, or why it finds nothing.
void addBetween(Answer& answer, const char* name, const std::string& title, const Result<Beta>& between)
{
    if (!between) {
        answer.json[name] = {{"notEnough", between.error().detail}};
        answer.text += title + ": not enough to say: " + between.error().detail + "\n";
        return;
    }
    answer.json[name] = {{"a", between->a}, {"b", between->b}, {"mean", between->mean()}};
    answer.text += title + ": Beta(" + shown(between->a) + ", " + shown(between->b) + "), mean " + percent(between->mean()) + "\n";
}

Answered pool(const PoolOptions& options)
{
    if (options.run && (*options.run < 0 || *options.run > 10'000))
        return refused({Reason::outOfRange, "--run: want 0..10000"});
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto events = countsIn(*table, options.events);
    const auto totals = countsIn(*table, options.total);
    for (std::size_t row = 0; row < std::min(events.size(), totals.size()); ++row)
        if (events[row] > totals[row])
            table->fault(row, options.events, "want at most the total");
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<Counts> groups;
    for (std::size_t row = 0; row < events.size(); ++row)
        groups.push_back({events[row], totals[row]});
    const auto moments = statistics::betaFromMoments(groups);
    const auto likeliest = statistics::fitBetaBinomial(groups);
    for (const auto* between : {&moments, &likeliest})
        if (!*between && between->error().reason != Reason::notEnough)
            return refused(between->error());
    if (!moments && !likeliest)
        return refused(likeliest.error());

    Answer answer{{{"groups", groups.size()}}, std::to_string(groups.size()) + " groups\n"};
    addBetween(answer, "moments", "by their moments", moments);
    addBetween(answer, "likeliest", "likeliest", likeliest);
    if (!likeliest)
        return answer;
    const auto logLikelihood = statistics::betaBinomialLogLikelihood(*likeliest, groups);
    if (!logLikelihood)
        return refused(logLikelihood.error());
    answer.json["likeliest"]["logLikelihood"] = *logLikelihood;
    if (options.run) {
        const double all = statistics::probabilityOfRun(*likeliest, *options.run);
        answer.json["run"] = {{"length", *options.run}};
        setProbability(answer.json["run"], "probability", all);
        answer.text += "the first " + std::to_string(*options.run) + " of a new group are all events with probability "
                       + percent(all) + "\n";
    }
    answer.text += "line  events  total  own share  drawn towards the others\n";
    for (std::size_t row = 0; row < groups.size(); ++row) {
        const double drawn = statistics::updated(*likeliest, groups[row]).mean();
        const bool tried = groups[row].total > 0;
        const double own = tried ? static_cast<double>(groups[row].events) / static_cast<double>(groups[row].total) : 0;
        answer.json["points"].push_back({{"line", table->line(row)}, {"events", groups[row].events}, {"total", groups[row].total},
                                         {"share", tried ? Json(own) : Json(nullptr)}, {"drawn", drawn}});
        answer.text += std::to_string(table->line(row)) + "  " + std::to_string(groups[row].events) + "  "
                       + std::to_string(groups[row].total) + "  " + (tried ? percent(own) : "nothing tried") + "  " + percent(drawn)
                       + "\n";
    }
    return answer;
}

Answered poolAnswers(const AnswersOptions& options)
{
    if (options.seed.size() != options.columns.size())
        return refused({Reason::outOfRange, "--seed: want as many shares as --answers has columns"});
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    std::vector<CategoryCounts> groups(table->rowCount());
    for (const std::string& column : options.columns) {
        const auto numbers = countsIn(*table, column);
        for (std::size_t row = 0; row < numbers.size(); ++row)
            groups[row].push_back(numbers[row]);
    }
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    const auto weight = statistics::fitSeedWeight(options.seed, groups);
    if (!weight)
        return refused(weight.error());
    const auto logLikelihood = statistics::dirichletMultinomialLogLikelihood(options.seed, *weight, groups);
    if (!logLikelihood)
        return refused(logLikelihood.error());
    Answer answer{{{"groups", groups.size()}, {"weight", *weight}, {"logLikelihood", *logLikelihood}, {"points", Json::array()}},
                  std::to_string(groups.size()) + " groups: the seed weighs as much as " + shown(*weight)
                      + " answers\nline  shares drawn towards the seed\n"};
    for (std::size_t row = 0; row < groups.size(); ++row) {
        const auto shares = statistics::pooledShares(options.seed, *weight, groups[row]);
        if (!shares)
            return refused(shares.error());
        answer.json["points"].push_back({{"line", table->line(row)}, {"shares", *shares}});
        answer.text += std::to_string(table->line(row));
        for (const double share : *shares)
            answer.text += "  " + percent(share);
        answer.text += "\n";
    }
    return answer;
}

Answered shrink(const ShrinkOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto numbers = table->numbers(options.column, anyNumber);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<double> values;
    for (const auto& number : numbers)
        values.push_back(*number);
    const auto found = statistics::shrunkMeans(values, options.variance);
    if (!found)
        return refused(found.error());
    Answer answer{{{"mean", found->mean}, {"factor", found->factor}, {"points", Json::array()}},
                  "mean " + shown(found->mean) + ", each keeps " + percent(found->factor)
                      + " of its distance\nline  value  drawn together\n"};
    for (std::size_t row = 0; row < values.size(); ++row) {
        answer.json["points"].push_back({{"line", table->line(row)}, {"value", values[row]}, {"drawn", found->shrunk[row]}});
        answer.text += std::to_string(table->line(row)) + "  " + shown(values[row]) + "  " + shown(found->shrunk[row]) + "\n";
    }
    return answer;
}

constexpr const char* rats =
    "  0,20 0,20 0,20 0,20 0,20 0,20 0,20 0,19 0,19 0,19 0,19 0,18 0,18 0,17 1,20 1,20 1,20 1,20 1,19 1,19 1,18 1,18 2,25 2,24\n"
    "  2,23 2,20 2,20 2,20 2,20 2,20 2,20 1,10 5,49 2,19 5,46 3,27 2,17 7,49 7,47 3,20 3,20 2,13 9,48 10,50 4,20 4,20 4,20 4,20\n"
    "  4,20 4,20 4,20 10,48 4,19 4,19 4,19 5,22 11,46 12,49 5,20 5,20 6,23 5,19 6,22 6,20 6,20 6,20 16,52 15,46 15,47 9,24\n";

}  // namespace

void addPoolingMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto shares = std::make_shared<PoolOptions>();
    auto* command = addMethod(stats, run, "pool", "Shares of many groups, each drawn towards the others", shares, pool);
    command->footer("70 groups of rats (Tarone 1982, as in Gelman et al., Bayesian Data Analysis, 2013, 5.1; R 4.2.2).\n"
                    "Example: rats.csv holds the lines  events,total\n"
                    + std::string(rats)
                    + "  ebbline stats pool rats.csv\n"
                      "  70 groups\n"
                      "  by their moments: Beta(1.3561, 8.6151), mean 13.6 %\n"
                      "  likeliest: Beta(2.3048, 14.0798), mean 14.1 %\n"
                      "  ... and each group's own share beside the drawn one");
    command->add_option("FILE", shares->file, "Table (CSV), one row a group")->required();
    command->add_option("--events", shares->events, "Its column of events")->capture_default_str();
    command->add_option("--total", shares->total, "Its column of trials")->capture_default_str();
    command->add_option("--run", shares->run, "Also how likely it is that so many first trials are all events");

    const auto answers = std::make_shared<AnswersOptions>();
    command = addMethod(stats, run, "poolanswers", "Counts of several answers, drawn towards a seed distribution", answers, poolAnswers);
    command->footer("The same 70 groups with tumour and without, towards 0.1406676 and 0.8593324: the weight is that of the\n"
                    "beta-binomial distribution, 2.30478331 + 14.07980903 = 16.38459 (Mosimann, Biometrika 1962;49:65; R 4.2.2).\n"
                    "Example: rats.csv holds the columns  yes,no\n"
                    "  ebbline stats poolanswers rats.csv --answers yes,no --seed 0.1406676,0.8593324\n"
                    "  70 groups: the seed weighs as much as 16.3846 answers\n"
                    "  ... and the drawn shares of each group");
    command->add_option("FILE", answers->file, "Table (CSV), one row a group")->required();
    command->add_option("--answers", answers->columns, "Its columns of counts, one an answer")->required()->delimiter(',');
    command->add_option("--seed", answers->seed, "A share for each answer, above 0, together 1")->required()->delimiter(',');

    const auto means = std::make_shared<ShrinkOptions>();
    command = addMethod(stats, run, "shrink", "Means of one known variance, drawn together", means, shrink);
    command->footer("18 batting averages after 45 times at bat, variance mean (1 - mean) / 45 (Efron and Morris, Sci Am 1977;236:119:\n"
                    "mean .265, factor .212).\n"
                    "Example: bats.csv holds the lines  value  .4 .37777778 .35555556 .33333333 .31111111 .31111111 .28888889 .26666667\n"
                    "  .24444444 .24444444 .22222222 .22222222 .22222222 .22222222 .22222222 .2 .17777778 .15555556\n"
                    "  ebbline stats shrink bats.csv --variance 0.0043328\n"
                    "  mean 0.2654, each keeps 21.2 % of its distance\n"
                    "  line  value  drawn together\n"
                    "  2  0.4000  0.2939\n"
                    "  ... and so on");
    command->add_option("FILE", means->file, "Table (CSV), one row a mean")->required();
    command->add_option("--column", means->column, "Its column of means")->capture_default_str();
    command->add_option("--variance", means->variance, "Of each of the means, above 0")->required();
}

}  // namespace ebbline::tool
