// ebbline stats signedrank, ranksum, welch, mcnemar: has something moved, within pairs or between groups?

#include "app/tool/stats_parts.h"

#include "core/statistics/paired_counts.h"
#include "core/statistics/rank_sum.h"
#include "core/statistics/signed_rank.h"
#include "core/statistics/welch.h"

namespace ebbline::tool {

namespace {

using statistics::Interval;

struct SignedRankOptions {
    PairColumns columns;
    std::string zeros = "ranked";
    double confidence = 0.95;
};

struct GroupOptions {
    GroupColumns columns;
    double confidence = 0.95;
};

struct ChangeOptions {
    long yesNo = 0;
    long noYes = 0;
};

/// `shift 0.4600, 0.0100 to 0.7860 (confidence 95.0 %)`, or why there are no limits.
std::string shiftText(double shift, const std::optional<Interval>& limits, double confidence)
{
    return "shift " + shown(shift) + ", "
           + (limits ? rangeText(*limits) + " (confidence " + percent(confidence) + ")"
                     : "limits: not enough to say with confidence " + percent(confidence))
           + "\n";
}

void setShift(Json& json, double shift, const std::optional<Interval>& limits, double confidence)
{
    json["shift"] = shift;
    json["low"] = limits ? Json(limits->low) : Json(nullptr);
    json["high"] = limits ? Json(limits->high) : Json(nullptr);
    json["confidence"] = confidence;
}

Answered signedRank(const SignedRankOptions& options)
{
    const auto pairs = differencesIn(options.columns);
    if (!pairs)
        return std::unexpected(pairs.error());
    const auto found = statistics::signedRank(pairs->values, options.confidence,
                                              options.zeros == "left-out" ? statistics::ZeroDifferences::leftOut
                                                                          : statistics::ZeroDifferences::rankedThenLeftOut);
    if (!found)
        return refused(found.error());
    Answer answer{{{"pairs", pairs->values.size()}, {"missing", pairs->missing}, {"zeros", found->zeros},
                   {"statistic", found->statistic}},
                  {}};
    setProbability(answer.json, "twoSided", found->twoSided);
    setProbability(answer.json, "less", found->less);
    setProbability(answer.json, "greater", found->greater);
    setShift(answer.json, found->shift, found->limits, options.confidence);
    answer.text = std::to_string(pairs->values.size()) + " pairs, first - second: rank sum " + shown(found->statistic, 1)
                  + ", two-sided " + probabilityText(found->twoSided) + "\n"
                  + shiftText(found->shift, found->limits, options.confidence);
    if (found->zeros > 0)
        answer.text += std::to_string(found->zeros) + " differences of 0: with many of them the test says little\n";
    answer.text += missingText(pairs->missing);
    return answer;
}

Answered rankSum(const GroupOptions& options)
{
    const auto groups = groupsIn(options.columns);
    if (!groups)
        return std::unexpected(groups.error());
    const auto found = statistics::rankSum(groups->values[0], groups->values[1], options.confidence);
    if (!found)
        return refused(found.error());
    Answer answer{{{"first", groups->names[0]}, {"second", groups->names[1]}, {"missing", groups->missing},
                   {"statistic", found->statistic}},
                  {}};
    setProbability(answer.json, "twoSided", found->twoSided);
    setProbability(answer.json, "less", found->less);
    setProbability(answer.json, "greater", found->greater);
    setShift(answer.json, found->shift, found->limits, options.confidence);
    answer.text = groups->names[0] + " (" + std::to_string(groups->values[0].size()) + ") - " + groups->names[1] + " ("
                  + std::to_string(groups->values[1].size()) + "): " + shown(found->statistic, 1)
                  + " pairs with the first higher, two-sided " + probabilityText(found->twoSided) + "\n"
                  + shiftText(found->shift, found->limits, options.confidence) + missingText(groups->missing);
    return answer;
}

Answered welch(const GroupOptions& options)
{
    const auto groups = groupsIn(options.columns);
    if (!groups)
        return std::unexpected(groups.error());
    const auto found = statistics::welch(groups->values[0], groups->values[1], options.confidence);
    if (!found)
        return refused(found.error());
    Answer answer{{{"first", groups->names[0]}, {"second", groups->names[1]}, {"missing", groups->missing},
                   {"difference", found->difference}, {"low", found->limits.low}, {"high", found->limits.high},
                   {"confidence", options.confidence}, {"t", found->t}, {"degrees", found->degrees}},
                  {}};
    setProbability(answer.json, "probability", found->probability);
    answer.text = "mean of " + groups->names[0] + " - mean of " + groups->names[1] + ": " + shown(found->difference) + ", "
                  + rangeText(found->limits) + " (confidence " + percent(options.confidence) + ")\nt " + shown(found->t) + " with "
                  + shown(found->degrees) + " degrees, two-sided " + probabilityText(found->probability) + "\n"
                  + missingText(groups->missing);
    return answer;
}

Answered mcNemar(const ChangeOptions& options)
{
    const auto found = statistics::mcNemar(options.yesNo, options.noYes);
    if (!found)
        return refused(found.error());
    Answer answer{{{"yesNo", options.yesNo}, {"noYes", options.noYes}, {"chiSquare", found->chiSquare}}, {}};
    setProbability(answer.json, "exact", found->exact);
    setProbability(answer.json, "probability", found->probability);
    answer.text = std::to_string(options.yesNo) + " changed from yes to no, " + std::to_string(options.noYes)
                  + " from no to yes: exact, two-sided " + probabilityText(found->exact) + "\nchi-square "
                  + shown(found->chiSquare) + ", " + probabilityText(found->probability) + "\n";
    return answer;
}

void addConfidence(CLI::App& command, double& confidence)
{
    command.add_option("--confidence", confidence, "Above 0 and below 1")->capture_default_str();
}

}  // namespace

void addRankMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto pairs = std::make_shared<SignedRankOptions>();
    auto* command = addMethod(stats, run, "signedrank", "Wilcoxon's signed ranks, and the shift of Hodges and Lehmann", pairs, signedRank);
    command->footer("Nine patients (Hollander and Wolfe, Nonparametric Statistical Methods, 1999, example 3.1).\n"
                    "Example: visits.csv holds the lines  first,second  1.83,.878  .50,.647  1.62,.598  2.48,2.05  1.68,1.06\n"
                    "  1.88,1.29  1.55,1.06  3.06,3.14  1.30,1.29\n"
                    "  ebbline stats signedrank visits.csv\n"
                    "  9 pairs, first - second: rank sum 40.0, two-sided p = 0.0391\n"
                    "  shift 0.4600, 0.0100 to 0.7860 (confidence 95.0 %)");
    addPairColumns(*command, pairs->columns);
    command->add_option("--zeros", pairs->zeros, "Differences of 0: ranked, then left out (Pratt), or left-out at once (Wilcoxon)")
        ->check(CLI::IsMember({"ranked", "left-out"}))
        ->capture_default_str();
    addConfidence(*command, pairs->confidence);

    const auto ranks = std::make_shared<GroupOptions>();
    command = addMethod(stats, run, "ranksum", "Wilcoxon's rank sum of two groups, and the shift between them", ranks, rankSum);
    command->footer("Two tissues (Hollander and Wolfe, 1999, section 4.1).\n"
                    "Example: tissue.csv holds the lines  value,group  then with the group a  .80  .83  1.89  1.04  1.45  1.38  1.91\n"
                    "  1.64  .73  1.46  with the group b  1.15  .88  .90  .74  1.21\n"
                    "  ebbline stats ranksum tissue.csv\n"
                    "  a (10) - b (5): 35.0 pairs with the first higher, two-sided p = 0.2544\n"
                    "  shift 0.3050, -0.1500 to 0.7600 (confidence 95.0 %)");
    addGroupColumns(*command, ranks->columns);
    addConfidence(*command, ranks->confidence);

    const auto means = std::make_shared<GroupOptions>();
    command = addMethod(stats, run, "welch", "Two means whose groups need not spread alike", means, welch);
    command->footer("Two sleeping drugs (Cushny and Peebles 1905, as R's sleep; t.test of R 4.2.2).\n"
                    "Example: sleep.csv holds the lines  value,group  then with the group a  .7  -1.6  -.2  -1.2  -.1  3.4  3.7  .8  0\n"
                    "  2  with the group b  1.9  .8  1.1  .1  -.1  4.4  5.5  1.6  4.6  3.4\n"
                    "  ebbline stats welch sleep.csv\n"
                    "  mean of a - mean of b: -1.5800, -3.3655 to 0.2055 (confidence 95.0 %)\n"
                    "  t -1.8608 with 17.7765 degrees, two-sided p = 0.0794");
    addGroupColumns(*command, means->columns);
    addConfidence(*command, means->confidence);

    const auto changes = std::make_shared<ChangeOptions>();
    command = addMethod(stats, run, "mcnemar", "The same subjects answered twice: which way did they change", changes, mcNemar);
    command->footer("Approval, asked twice (Agresti, Categorical Data Analysis, section 11.1; R 4.2.2).\n"
                    "Example: ebbline stats mcnemar 150 86\n"
                    "  150 changed from yes to no, 86 from no to yes: exact, two-sided p < 0.0001\n"
                    "  chi-square 17.3559, p < 0.0001");
    command->add_option("YESNO", changes->yesNo, "Changed from yes to no")->required();
    command->add_option("NOYES", changes->noYes, "Changed from no to yes")->required();
}

}  // namespace ebbline::tool
