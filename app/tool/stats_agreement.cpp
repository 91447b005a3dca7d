// ebbline stats blandaltman, kappa, icc: do two ways of measuring, or several raters, agree?

#include "app/tool/stats_parts.h"

#include "core/statistics/agreement.h"

#include <cmath>

namespace ebbline::tool {

namespace {

using statistics::Interval;

struct BlandAltmanOptions {
    PairColumns columns;
    double coverage = 0.95;
};

struct KappaOptions {
    std::vector<long> counts;
    std::string weights = "any";
};

struct IccOptions {
    std::string file;
    std::vector<std::string> raters;
};

Json limitsJson(const Interval& limits)
{
    return {{"low", limits.low}, {"high", limits.high}};
}

Answered blandAltman(const BlandAltmanOptions& options)
{
    const auto pairs = differencesIn(options.columns);
    if (!pairs)
        return std::unexpected(pairs.error());
    const auto found = statistics::limitsOfAgreement(pairs->values, options.coverage);
    if (!found)
        return refused(found.error());
    Answer answer{{{"pairs", found->pairs},
                   {"missing", pairs->missing},
                   {"bias", found->bias},
                   {"deviation", found->deviation},
                   {"low", found->limits.low},
                   {"high", found->limits.high},
                   {"coverage", options.coverage},
                   {"biasInterval", limitsJson(found->biasInterval)},
                   {"lowerInterval", limitsJson(found->lowerInterval)},
                   {"upperInterval", limitsJson(found->upperInterval)}},
                  {}};
    answer.text = std::to_string(found->pairs) + " pairs, first - second: bias " + shown(found->bias) + ", "
                  + rangeText(found->biasInterval) + "; deviation " + shown(found->deviation) + "\n" + percent(options.coverage)
                  + " of differences between " + shown(found->limits.low) + " (" + rangeText(found->lowerInterval) + ") and "
                  + shown(found->limits.high) + " (" + rangeText(found->upperInterval) + ")\n" + missingText(pairs->missing);
    return answer;
}

Answered kappa(const KappaOptions& options)
{
    const auto side = static_cast<std::size_t>(std::lround(std::sqrt(static_cast<double>(options.counts.size()))));
    if (side * side != options.counts.size())
        return refused({Reason::outOfRange, "want a square table, 4, 9, 16 ... counts, found "
                                                + std::to_string(options.counts.size())});
    std::vector<std::vector<long>> table;
    for (std::size_t row = 0; row < side; ++row) {
        const auto from = options.counts.begin() + static_cast<std::ptrdiff_t>(row * side);
        table.emplace_back(from, from + static_cast<std::ptrdiff_t>(side));
    }
    const auto weights = options.weights == "linear"      ? statistics::Disagreement::linear
                         : options.weights == "quadratic" ? statistics::Disagreement::quadratic
                                                          : statistics::Disagreement::any;
    const auto found = statistics::kappa(table, weights);
    if (!found)
        return refused(found.error());
    return Answer{{{"weights", options.weights},
                   {"categories", side},
                   {"kappa", found->kappa},
                   {"standardError", orNull(found->standardError)}},
                  "kappa " + shown(found->kappa)
                      + (found->standardError ? ", standard error " + shown(*found->standardError)
                                              : ", so complete an agreement shows no spread: no standard error")
                      + " (weights: " + options.weights + ")\n"};
}

Answered icc(const IccOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    std::vector<std::vector<std::optional<double>>> columns;
    columns.reserve(options.raters.size());
    for (const std::string& rater : options.raters)
        columns.push_back(table->numbers(rater, anyNumberOrNone));
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<std::vector<double>> ratings;
    for (std::size_t row = 0; row < table->rowCount(); ++row) {
        std::vector<double> rated;
        for (const auto& column : columns)
            if (column[row])
                rated.push_back(*column[row]);
        if (rated.size() == columns.size())
            ratings.push_back(std::move(rated));
    }
    const std::size_t missing = table->rowCount() - ratings.size();
    const auto found = statistics::intraclassCorrelation(ratings);
    if (!found)
        return refused(found.error());
    Answer answer{{{"subjects", ratings.size()},
                   {"raters", columns.size()},
                   {"missing", missing},
                   {"oneWay", found->oneWay},
                   {"absolute", found->absolute},
                   {"absoluteInterval", found->absoluteInterval ? limitsJson(*found->absoluteInterval) : Json(nullptr)},
                   {"consistency", found->consistency},
                   {"oneWayMean", found->oneWayMean},
                   {"absoluteMean", orNull(found->absoluteMean)},
                   {"consistencyMean", found->consistencyMean},
                   {"betweenSubjects", found->betweenSubjects},
                   {"withinSubjects", found->withinSubjects},
                   {"betweenRaters", found->betweenRaters},
                   {"residual", found->residual}},
                  "model  one rater  mean of all\n"};
    answer.text += "(1,1)  " + shown(found->oneWay) + "  " + shown(found->oneWayMean) + "\n(2,1)  " + shown(found->absolute) + "  "
                   + (found->absoluteMean ? shown(*found->absoluteMean) : std::string("not enough to say")) + "\n(3,1)  "
                   + shown(found->consistency) + "  " + shown(found->consistencyMean) + "\n(2,1) lies within "
                   + (found->absoluteInterval ? rangeText(*found->absoluteInterval) + " (confidence 95.0 %)"
                                              : std::string("limits that cannot be told: not enough to say"))
                   + "\n" + (missing > 0 ? std::to_string(missing) + " with a missing rating, left out\n" : "");
    return answer;
}

}  // namespace

void addAgreementMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto meters = std::make_shared<BlandAltmanOptions>();
    auto* command = addMethod(stats, run, "blandaltman", "Bias and limits of agreement of two ways of measuring", meters, blandAltman);
    command->footer("Two peak flow meters (Bland and Altman, Lancet 1986;327:307, table 1; the paper takes 2 for 1.96).\n"
                    "Example: meters.csv holds the lines  first,second  494,512  395,430  516,520  434,428  476,500  557,600\n"
                    "  413,364  442,380  650,658  433,445  417,432  656,626  267,260  478,477  178,259  423,350  427,451\n"
                    "  ebbline stats blandaltman meters.csv\n"
                    "  17 pairs, first - second: bias -2.1176, -22.0488 to 17.8135; deviation 38.7651\n"
                    "  95.0 % of differences between -78.0959 (-112.6177 to -43.5741) and 73.8606 (39.3388 to 108.3824)");
    addPairColumns(*command, meters->columns);
    command->add_option("--coverage", meters->coverage, "Of the differences, above 0 and below 1")->capture_default_str();

    const auto raters = std::make_shared<KappaOptions>();
    command = addMethod(stats, run, "kappa", "Agreement of two raters beyond chance", raters, kappa);
    command->footer("Counts row by row: the first rater said the row, the second the column. Do not compare populations.\n"
                    "Example: ebbline stats kappa 44 5 1 7 20 3 9 5 6 --weights linear\n"
                    "  kappa 0.4737, standard error 0.0770 (weights: linear)\n"
                    "  (Cohen, Psychol Bull 1968;70:213; the error computed with R 4.2.2)");
    command->add_option("COUNTS", raters->counts, "A square table, row by row")->required();
    command->add_option("--weights", raters->weights, "any: each disagreement alike; linear, quadratic: by the categories between")
        ->check(CLI::IsMember({"any", "linear", "quadratic"}))
        ->capture_default_str();

    const auto judges = std::make_shared<IccOptions>();
    command = addMethod(stats, run, "icc", "Intraclass correlations of the same raters on all subjects", judges, icc);
    command->footer("(1,1): raters differ from subject to subject; (2,1): they must agree in the value; (3,1): up to a constant of each.\n"
                    "Four judges, six subjects (Shrout and Fleiss, Psychol Bull 1979;86:420, table 2: .17, .29, .71).\n"
                    "Example: judges.csv holds the lines  a,b,c,d  9,2,5,8  6,1,3,2  8,4,6,8  7,1,2,6  10,5,6,9  6,2,4,7\n"
                    "  ebbline stats icc judges.csv --raters a,b,c,d\n"
                    "  model  one rater  mean of all\n"
                    "  (1,1)  0.1657  0.4428\n"
                    "  (2,1)  0.2898  0.6201\n"
                    "  (3,1)  0.7148  0.9093\n"
                    "  (2,1) lies within 0.0188 to 0.7611 (confidence 95.0 %)");
    command->add_option("FILE", judges->file, "Table (CSV), one row a subject")->required();
    command->add_option("--raters", judges->raters, "Its columns of ratings, one a rater")->required()->delimiter(',');
}

}  // namespace ebbline::tool
