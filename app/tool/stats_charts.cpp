// ebbline stats ewma, cusum: control charts over a column of numbers.

#include "app/tool/stats_parts.h"

#include "core/statistics/cusum.h"
#include "core/statistics/ewma.h"

namespace ebbline::tool {

namespace {

struct EwmaOptions {
    std::string file;
    std::string column = "value";
    statistics::EwmaDesign design{.weight = 0.3, .centre = 0, .spread = 1, .width = 3};
};

struct CusumOptions {
    std::string file;
    std::string column = "value";
    statistics::CusumDesign design{};
};

/// The observed values with their lines, and how many were missing.
struct Series {
    std::vector<std::pair<std::size_t, double>> values;
    std::size_t missing = 0;
};

std::expected<Series, std::variant<Error, Complaint>> seriesIn(const std::string& file, const std::string& column)
{
    auto table = tableIn(file);
    if (!table)
        return std::unexpected(table.error());
    const auto numbers = table->numbers(column, anyNumberOrNone);
    if (const auto fine = faultsOf(file, *table); !fine)
        return std::unexpected(fine.error());
    Series series;
    for (std::size_t row = 0; row < numbers.size(); ++row)
        if (numbers[row])
            series.values.emplace_back(table->line(row), *numbers[row]);
        else
            ++series.missing;
    if (series.values.empty())
        return refused({Reason::notEnough, "nothing was observed"});
    return series;
}

const char* word(statistics::Verdict verdict)
{
    switch (verdict) {
    case statistics::Verdict::above:
        return "above";
    case statistics::Verdict::below:
        return "below";
    case statistics::Verdict::within:
        break;
    }
    return "within";
}

/// `no signal`, or the line of the first.
std::string summary(const Json& json, std::size_t missing)
{
    std::string text = json["firstSignalLine"].is_null()
                           ? "no signal"
                           : "first signal at line " + std::to_string(json["firstSignalLine"].get<std::size_t>());
    if (missing > 0)
        text += "; " + std::to_string(missing) + " missing, left out";
    return text + "\n";
}

Answered ewma(const EwmaOptions& options)
{
    auto chart = statistics::Ewma::create(options.design);
    if (!chart)
        return refused(chart.error());
    const auto series = seriesIn(options.file, options.column);
    if (!series)
        return std::unexpected(series.error());
    Answer answer{{{"missing", series->missing}, {"firstSignalLine", nullptr}, {"points", Json::array()}},
                  "line  value  average  limits  verdict\n"};
    for (const auto& [line, value] : series->values) {
        const auto verdict = chart->observe(value);
        if (!verdict)
            return refused(verdict.error());
        const statistics::Limits limits = chart->limits();
        answer.json["points"].push_back({{"line", line},
                                         {"value", value},
                                         {"average", chart->average()},
                                         {"lower", limits.lower},
                                         {"upper", limits.upper},
                                         {"verdict", word(*verdict)}});
        answer.text += std::to_string(line) + "  " + shown(value) + "  " + shown(chart->average()) + "  "
                       + shown(limits.lower) + " to " + shown(limits.upper) + "  " + word(*verdict) + "\n";
        if (*verdict != statistics::Verdict::within && answer.json["firstSignalLine"].is_null())
            answer.json["firstSignalLine"] = line;
    }
    answer.text += summary(answer.json, series->missing);
    return answer;
}

Answered cusum(const CusumOptions& options)
{
    auto chart = statistics::Cusum::create(options.design);
    if (!chart)
        return refused(chart.error());
    const auto series = seriesIn(options.file, options.column);
    if (!series)
        return std::unexpected(series.error());
    Answer answer{{{"missing", series->missing}, {"firstSignalLine", nullptr}, {"points", Json::array()}},
                  "line  value  high  low  verdict\n"};
    for (const auto& [line, value] : series->values) {
        const auto signal = chart->observe(value);
        if (!signal)
            return refused(signal.error());
        answer.json["points"].push_back(
            {{"line", line}, {"value", value}, {"high", chart->high()}, {"low", chart->low()}, {"signal", *signal}});
        answer.text += std::to_string(line) + "  " + shown(value) + "  " + shown(chart->high()) + "  "
                       + shown(chart->low()) + "  " + (*signal ? "signal" : "within") + "\n";
        if (*signal && answer.json["firstSignalLine"].is_null())
            answer.json["firstSignalLine"] = line;
    }
    answer.text += summary(answer.json, series->missing);
    return answer;
}

}  // namespace

void addChartMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto average = std::make_shared<EwmaOptions>();
    auto* command = addMethod(stats, run, "ewma", "Slow drift: weighted moving average with limits", average, ewma);
    command->footer("Example: flow.csv holds the lines  value  52.0  47.0  53.0\n"
                    "  ebbline stats ewma flow.csv --weight 0.3 --centre 50 --spread 2.0539\n"
                    "  line  value  average  limits  verdict\n"
                    "  2  52.0000  50.6000  48.1515 to 51.8485  within\n"
                    "  3  47.0000  49.5200  47.7436 to 52.2564  within\n"
                    "  4  53.0000  50.5640  47.5686 to 52.4314  within\n"
                    "  no signal");
    command->add_option("FILE", average->file, "Table (CSV)")->required();
    command->add_option("--column", average->column, "Its column of observations")->capture_default_str();
    command->add_option("--weight", average->design.weight, "Of the newest observation, above 0 to 1")->capture_default_str();
    command->add_option("--centre", average->design.centre, "Expected observation")->required();
    command->add_option("--spread", average->design.spread, "Standard deviation of one observation")->required();
    command->add_option("--width", average->design.width, "Of the limits, in standard deviations")->capture_default_str();

    const auto sums = std::make_shared<CusumOptions>();
    command = addMethod(stats, run, "cusum", "Lasting shift: cumulative sums up and down", sums, cusum);
    command->footer("Example: flow.csv holds the lines  value  324.925  324.675  328.325\n"
                    "  ebbline stats cusum flow.csv --target 325 --slack 0.3175 --decision 2.5\n"
                    "  line  value  high  low  verdict\n"
                    "  2  324.9250  0.0000  0.0000  within\n"
                    "  3  324.6750  0.0000  0.0075  within\n"
                    "  4  328.3250  3.0075  0.0000  signal\n"
                    "  first signal at line 4");
    command->add_option("FILE", sums->file, "Table (CSV)")->required();
    command->add_option("--column", sums->column, "Its column of observations")->capture_default_str();
    command->add_option("--target", sums->design.target, "Expected observation")->required();
    command->add_option("--slack", sums->design.slack, "k, in the unit of the observations")->required();
    command->add_option("--decision", sums->design.decision, "h, signal above")->required();
}

}  // namespace ebbline::tool
