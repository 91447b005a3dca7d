// ebbline stats lms, runlength: a measurement on its reference, and how long a chart runs.

#include "app/tool/stats_parts.h"

#include "core/statistics/distributions.h"
#include "core/statistics/lms.h"
#include "core/statistics/run_length.h"

namespace ebbline::tool {

namespace {

struct LmsOptions {
    statistics::Lms reference{};
    std::optional<double> value;
    std::optional<double> z;
};

struct RunLengthOptions {
    std::string chart;
    std::optional<double> slack, decision, weight, width;
    double shift = 0;
    std::optional<int> within;
};

Answered lms(const LmsOptions& options)
{
    if (options.value.has_value() == options.z.has_value())
        return refused({Reason::outOfRange, "give --value or --z, one of both"});
    const auto z = options.z ? Result<double>(*options.z) : statistics::lmsScore(options.reference, *options.value);
    if (!z)
        return refused(z.error());
    const auto value = options.value ? Result<double>(*options.value) : statistics::lmsValue(options.reference, *z);
    if (!value)
        return refused(value.error());
    const double below = statistics::normalCdf(*z);
    Answer answer{{{"value", *value}, {"z", *z}},
                  shown(*value) + " has z " + shown(*z) + ": " + percent(below) + " lie below\n"};
    setProbability(answer.json, "below", below);
    return answer;
}

/// An option that the chart needs, and one that is none of its own.
std::optional<Error> wrongOptions(const RunLengthOptions& options)
{
    const bool cusum = options.chart != "ewma";
    if (cusum ? !options.slack || !options.decision : !options.weight || !options.width)
        return Error{Reason::outOfRange, cusum ? "a CUSUM wants --slack and --decision" : "an EWMA wants --weight and --width"};
    if (cusum ? options.weight || options.width : options.slack || options.decision)
        return Error{Reason::outOfRange, cusum ? "--weight and --width are an EWMA's" : "--slack and --decision are a CUSUM's"};
    if (options.within && options.chart == "cusum")
        return Error{Reason::outOfRange, "--within: want the chart cusum-up or ewma"};
    return std::nullopt;
}

Answered runLength(const RunLengthOptions& options)
{
    if (const auto wrong = wrongOptions(options))
        return refused(*wrong);
    const auto average = options.chart == "ewma"
                             ? statistics::ewmaRunLength(*options.weight, *options.width, options.shift)
                         : options.chart == "cusum"
                             ? statistics::cusumRunLengthBothWays(*options.slack, *options.decision, options.shift)
                             : statistics::cusumRunLength(*options.slack, *options.decision, options.shift);
    if (!average)
        return refused(average.error());
    Answer answer{{{"chart", options.chart}, {"shift", options.shift}, {"average", *average}},
                  "on average " + shown(*average, 3) + " observations up to the signal\n"};
    if (!options.within)
        return answer;
    const auto signalled = options.chart == "ewma"
                               ? statistics::ewmaSignalProbability(*options.weight, *options.width, options.shift, *options.within)
                               : statistics::cusumSignalProbability(*options.slack, *options.decision, options.shift, *options.within);
    if (!signalled)
        return refused(signalled.error());
    answer.json["within"] = *options.within;
    setProbability(answer.json, "signalled", *signalled);
    answer.text += "within " + std::to_string(*options.within) + " observations in " + percent(*signalled) + " of runs\n";
    return answer;
}

}  // namespace

void addScaleMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto scale = std::make_shared<LmsOptions>();
    auto* command = addMethod(stats, run, "lms", "z of a skewed, positive measurement, or the measurement at a z", scale, lms);
    command->footer("CDC growth charts 2000, boys of 9.5 months: 9.7 kg is z 0.207 (method: Cole and Green, Stat Med 1992;11:1305).\n"
                    "Not for scores of 0 to 10: a 0 has no z here.\n"
                    "Example: ebbline stats lms --power -0.1600954 --median 9.476500305 --variation 0.11218624 --value 9.7\n"
                    "  9.7000 has z 0.2074: 58.2 % lie below");
    command->add_option("--power", scale->reference.power, "L, of Box and Cox")->required();
    command->add_option("--median", scale->reference.median, "M, above 0, in the unit of the measurement")->required();
    command->add_option("--variation", scale->reference.variation, "S, coefficient of variation, above 0")->required();
    command->add_option("--value", scale->value, "The measurement, above 0");
    command->add_option("--z", scale->z, "Instead of it: which measurement has this z");

    const auto chart = std::make_shared<RunLengthOptions>();
    command = addMethod(stats, run, "runlength", "How long a control chart runs up to its signal", chart, runLength);
    command->footer("Of independent normal observations with deviation 1, off by --shift from the first one on.\n"
                    "Montgomery, Introduction to Statistical Quality Control, table 9.3: h 4, shift 1 runs 8.38.\n"
                    "Example: ebbline stats runlength cusum --slack 0.5 --decision 4 --shift 1\n"
                    "  on average 8.383 observations up to the signal");
    command->add_option("CHART", chart->chart, "cusum: up and down; cusum-up; ewma")
        ->required()
        ->check(CLI::IsMember({"cusum", "cusum-up", "ewma"}));
    command->add_option("--slack", chart->slack, "k of a CUSUM, in deviations");
    command->add_option("--decision", chart->decision, "h of a CUSUM, in deviations");
    command->add_option("--weight", chart->weight, "Of the newest, of an EWMA");
    command->add_option("--width", chart->width, "Of an EWMA's limits, in deviations");
    command->add_option("--shift", chart->shift, "Of the mean, in deviations; 0: false signals")->capture_default_str();
    command->add_option("--within", chart->within, "Also how many runs have signalled by this observation");
}

}  // namespace ebbline::tool
