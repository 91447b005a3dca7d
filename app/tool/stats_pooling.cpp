// ebbline stats pool, poolanswers, shrink: what many groups say about one of them.

#include "app/tool/stats_parts.h"

#include "core/statistics/pooling.h"
#include "core/statistics/shrinkage.h"

#include <algorithm>

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
    // A group without a trial says nothing of the others; they say something of it.
    std::vector<Counts> groups;
    for (std::size_t row = 0; row < events.size(); ++row)
        if (totals[row] > 0)
            groups.push_back({events[row], totals[row]});
    const std::size_t untried = events.size() - groups.size();
    const auto moments = statistics::betaFromMoments(groups);
    const auto likeliest = statistics::fitBetaBinomial(groups);
    for (const auto* between : {&moments, &likeliest})
        if (!*between && between->error().reason != Reason::notEnough)
            return refused(between->error());
    if (!moments && !likeliest)
        return refused(likeliest.error());

    Answer answer{{{"groups", groups.size()}, {"untried", untried}},
                  std::to_string(groups.size()) + " groups" + (untried > 0 ? " and " + std::to_string(untried) + " in which nothing was tried" : "") + "\n"};
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
    for (std::size_t row = 0; row < events.size(); ++row) {
        const bool tried = totals[row] > 0;
        const double drawn = tried ? statistics::updated(*likeliest, {events[row], totals[row]}).mean() : likeliest->mean();
        const double own = tried ? static_cast<double>(events[row]) / static_cast<double>(totals[row]) : 0;
        answer.json["points"].push_back({{"line", table->line(row)}, {"events", events[row]}, {"total", totals[row]},
                                         {"share", tried ? Json(own) : Json(nullptr)}, {"drawn", drawn}});
        answer.text += std::to_string(table->line(row)) + "  " + std::to_string(events[row]) + "  " + std::to_string(totals[row]) + "  "
                       + (tried ? percent(own) : "nothing tried") + "  " + percent(drawn) + "\n";
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

}  // namespace

void addPoolingMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto shares = std::make_shared<PoolOptions>();
    auto* command = addMethod(stats, run, "pool", "Shares of many groups, each drawn towards the others", shares, pool);
    command->footer("A group in which nothing was tried is told by the others alone.\n"
                    "Example: groups.csv holds the lines  events,total  2,20 9,20 1,20 12,20 5,20 0,0\n"
                    "  ebbline stats pool groups.csv\n"
                    "  5 groups and 1 in which nothing was tried\n"
                    "  by their moments: Beta(0.8107, 1.9847), mean 29.0 %\n"
                    "  likeliest: Beta(1.5047, 3.7170), mean 28.8 %\n"
                    "  line  events  total  own share  drawn towards the others\n"
                    "  2  2  20  10.0 %  13.9 %\n"
                    "  3  9  20  45.0 %  41.6 %\n"
                    "  4  1  20  5.0 %  9.9 %\n"
                    "  5  12  20  60.0 %  53.5 %\n"
                    "  6  5  20  25.0 %  25.8 %\n"
                    "  7  0  0  nothing tried  28.8 %");
    command->add_option("FILE", shares->file, "Table (CSV), one row a group")->required();
    command->add_option("--events", shares->events, "Its column of events")->capture_default_str();
    command->add_option("--total", shares->total, "Its column of trials")->capture_default_str();
    command->add_option("--run", shares->run, "Also how likely it is that so many first trials are all events");

    const auto answers = std::make_shared<AnswersOptions>();
    command = addMethod(stats, run, "poolanswers", "Counts of several answers, drawn towards a seed distribution", answers, poolAnswers);
    command->footer("With two answers the weight is that of a beta-binomial distribution of this mean (Mosimann, Biometrika 1962;49:65).\n"
                    "Example: groups.csv holds the lines  yes,no  2,18 9,11 1,19 12,8 5,15\n"
                    "  ebbline stats poolanswers groups.csv --answers yes,no --seed 0.3,0.7\n"
                    "  5 groups: the seed weighs as much as 5.0868 answers\n"
                    "  line  shares drawn towards the seed\n"
                    "  2  14.1 %  85.9 %\n"
                    "  3  42.0 %  58.0 %\n"
                    "  4  10.1 %  89.9 %\n"
                    "  5  53.9 %  46.1 %\n"
                    "  6  26.0 %  74.0 %");
    command->add_option("FILE", answers->file, "Table (CSV), one row a group")->required();
    command->add_option("--answers", answers->columns, "Its columns of counts, one an answer")->required()->delimiter(',');
    command->add_option("--seed", answers->seed, "A share for each answer, above 0, together 1")->required()->delimiter(',');

    const auto means = std::make_shared<ShrinkOptions>();
    command = addMethod(stats, run, "shrink", "Means of one known variance, drawn together", means, shrink);
    command->footer("Each keeps 1 - (k - 3) variance / sum of squares of its distance from the mean (Efron and Morris, Sci Am 1977;236:119).\n"
                    "Example: means.csv holds the lines  value  2 4 6 8 10\n"
                    "  ebbline stats shrink means.csv --variance 1\n"
                    "  mean 6.0000, each keeps 95.0 % of its distance\n"
                    "  line  value  drawn together\n"
                    "  2  2.0000  2.2000\n"
                    "  3  4.0000  4.1000\n"
                    "  4  6.0000  6.0000\n"
                    "  5  8.0000  7.9000\n"
                    "  6  10.0000  9.8000");
    command->add_option("FILE", means->file, "Table (CSV), one row a mean")->required();
    command->add_option("--column", means->column, "Its column of means")->capture_default_str();
    command->add_option("--variance", means->variance, "Of each of the means, above 0")->required();
}

}  // namespace ebbline::tool
