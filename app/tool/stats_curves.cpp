// ebbline stats loess, kalman: curves through a cloud or a series.

#include "app/tool/stats_parts.h"

#include "core/statistics/distributions.h"
#include "core/statistics/local_level_fit.h"
#include "core/statistics/loess.h"

#include <cmath>

namespace ebbline::tool {

namespace {

struct LoessOptions {
    std::string file;
    std::string x = "x";
    std::string y = "y";
    statistics::LoessDesign design{.neighbours = 7, .degree = 1};
};

struct KalmanOptions {
    std::string file;
    std::string column = "value";
    std::string step;
    std::optional<double> observation;
    std::optional<double> drift;
    int ahead = 0;
    double confidence = 0.95;
};

constexpr double mostSteps = 100'000;
constexpr Range wholeSteps{-1e9, 1e9, false, false, "a whole number, not below the row before"};

Answered loess(const LoessOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto xs = table->numbers(options.x, anyNumber);
    const auto ys = table->numbers(options.y, anyNumberOrNone);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    std::vector<statistics::Point> points;
    std::vector<std::size_t> lines;
    for (std::size_t row = 0; row < xs.size(); ++row)
        if (ys[row]) {
            points.push_back({*xs[row], *ys[row]});
            lines.push_back(table->line(row));
        }
    const std::size_t missing = xs.size() - points.size();
    if (points.size() < static_cast<std::size_t>(std::max(options.design.neighbours, 1)))
        return refused({Reason::notEnough, std::to_string(points.size()) + " points for "
                                               + std::to_string(options.design.neighbours) + " neighbours"});
    const auto curve = statistics::loess(points, options.design);
    if (!curve)
        return refused(curve.error());
    Answer answer{{{"missing", missing}, {"points", Json::array()}}, "line  x  y  curve\n"};
    for (std::size_t i = 0; i < points.size(); ++i) {
        answer.json["points"].push_back({{"line", lines[i]}, {"x", points[i].x}, {"y", points[i].y}, {"curve", (*curve)[i]}});
        answer.text += std::to_string(lines[i]) + "  " + shown(points[i].x) + "  " + shown(points[i].y) + "  "
                       + shown((*curve)[i]) + "\n";
    }
    if (missing > 0)
        answer.text += std::to_string(missing) + " missing, left out\n";
    return answer;
}

/// The series by step, and the number of its first step.
struct Steps {
    std::vector<std::vector<double>> values;
    long first = 1;
};

std::expected<Steps, std::variant<Error, Complaint>> stepsIn(const KalmanOptions& options)
{
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto values = table->numbers(options.column, anyNumberOrNone);
    std::vector<std::optional<double>> numbers;
    if (!options.step.empty()) {
        numbers = table->numbers(options.step, wholeSteps);
        for (std::size_t row = 0; row < numbers.size() && table->problems().count == 0; ++row) {
            const double before = row > 0 ? *numbers[row - 1] : *numbers[row];
            if (*numbers[row] != std::floor(*numbers[row]) || *numbers[row] < before)
                table->fault(row, options.step, "want " + std::string(wholeSteps.wanted) + ", found "
                                                    + exchange::quotedCell(shown(*numbers[row], 2)));
            else if (*numbers[row] - *numbers.front() >= mostSteps)
                table->fault(row, options.step, "want at most 100000 steps from the first to the last");
        }
    }
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());
    Steps steps;
    if (!numbers.empty())
        steps.first = std::lround(*numbers.front());
    for (std::size_t row = 0; row < values.size(); ++row) {
        const auto place =
            numbers.empty() ? row : static_cast<std::size_t>(std::lround(*numbers[row] - static_cast<double>(steps.first)));
        steps.values.resize(std::max(steps.values.size(), place + 1));
        if (values[row])
            steps.values[place].push_back(*values[row]);
    }
    return steps;
}

Answered kalman(const KalmanOptions& options)
{
    if (options.observation.has_value() != options.drift.has_value())
        return refused({Reason::outOfRange, "give both variances or neither"});
    if (options.ahead < 0 || options.ahead > 10'000)
        return refused({Reason::outOfRange, "--ahead: want 0..10000"});
    if (!(options.confidence > 0 && options.confidence < 1))
        return refused({Reason::outOfRange, "--confidence: want above 0 and below 1"});
    const auto z = statistics::normalQuantile(0.5 + options.confidence / 2);
    if (!z)
        return refused(z.error());
    const auto steps = stepsIn(options);
    if (!steps)
        return std::unexpected(steps.error());

    Answer answer;
    statistics::LocalLevelVariances variances{};
    if (options.observation) {
        variances = {*options.observation, *options.drift};
    } else {
        const auto fit = statistics::fitLocalLevel(steps->values);
        if (!fit)
            return refused(fit.error());
        variances = fit->variances;
        answer.json["logLikelihood"] = fit->logLikelihood;
        answer.json["driftSeen"] = fit->driftSeen;
        if (!fit->driftSeen)
            answer.text += "no drift is seen, which does not mean that there is none\n";
    }
    const auto filter = statistics::filterFromNothing(variances, steps->values);
    const auto levels = filter ? statistics::smoothFromNothing(variances, steps->values) : fail(filter.error());
    if (!levels)
        return refused(levels.error());
    answer.json["observationVariance"] = variances.observation;
    answer.json["driftVariance"] = variances.drift;
    answer.json["confidence"] = options.confidence;
    answer.text += "variance of an observation " + shown(variances.observation) + ", of a step of the level "
                   + shown(variances.drift) + "\n";

    const auto add = [&](const char* list, long step, const statistics::LevelEstimate& estimate, std::size_t observed) {
        const double half = *z * std::sqrt(estimate.variance);
        Json row{{"step", step}, {"mean", estimate.mean}, {"low", estimate.mean - half}, {"high", estimate.mean + half}};
        if (list == std::string_view("levels"))
            row["observed"] = observed;
        answer.json[list].push_back(std::move(row));
        answer.text += std::to_string(step) + "  " + shown(estimate.mean) + "  " + shown(estimate.mean - half) + " to "
                       + shown(estimate.mean + half) + (observed == 0 ? "  nothing observed" : "") + "\n";
    };
    answer.text += "step  level  limits of the level (confidence " + percent(options.confidence) + ")\n";
    for (std::size_t t = 0; t < levels->size(); ++t)
        add("levels", steps->first + static_cast<long>(t), (*levels)[t], steps->values[t].size());
    if (options.ahead > 0) {
        answer.text += "step  forecast  limits of an observation (confidence " + percent(options.confidence) + ")\n";
        const long last = steps->first + static_cast<long>(levels->size()) - 1;
        for (int i = 1; i <= options.ahead; ++i)
            add("forecast", last + i, filter->forecast(i), 1);
    }
    return answer;
}

}  // namespace

void addCurveMethods(CLI::App& stats, std::function<int()>& run)
{
    const auto cloud = std::make_shared<LoessOptions>();
    auto* command = addMethod(stats, run, "loess", "Curve through a cloud of points", cloud, loess);
    command->footer("Example: cloud.csv holds the lines  x,y  0,0  1,2  2,4  3,6  4,8\n"
                    "  ebbline stats loess cloud.csv --neighbours 4\n"
                    "  line  x  y  curve\n"
                    "  2  0.0000  0.0000  0.0000\n"
                    "  3  1.0000  2.0000  2.0000\n"
                    "  4  2.0000  4.0000  4.0000\n"
                    "  5  3.0000  6.0000  6.0000\n"
                    "  6  4.0000  8.0000  8.0000");
    command->add_option("FILE", cloud->file, "Table (CSV)")->required();
    command->add_option("--x", cloud->x, "Its column of x")->capture_default_str();
    command->add_option("--y", cloud->y, "Its column of y")->capture_default_str();
    command->add_option("--neighbours", cloud->design.neighbours, "Points that each value looks at")->capture_default_str();
    command->add_option("--degree", cloud->design.degree, "Of the polynomial, 0..2")->capture_default_str();

    const auto series = std::make_shared<KalmanOptions>();
    command = addMethod(stats, run, "kalman", "Smoothed level of a series, and its forecast", series, kalman);
    command->footer("Without variances the likeliest ones are taken. An empty value, or a step that is not there, is missing.\n"
                    "Example: days.csv holds the lines  day,value  1,1120  2,1160  4,963\n"
                    "  ebbline stats kalman days.csv --step day --observation-variance 15099 --drift-variance 1469.1 --ahead 1\n"
                    "  variance of an observation 15099.0000, of a step of the level 1469.1000\n"
                    "  step  level  limits of the level (confidence 95.0 %)\n"
                    "  1  1089.6851  939.1189 to 1240.2513\n"
                    "  2  1086.7355  941.4643 to 1232.0067\n"
                    "  3  1076.6575  925.0335 to 1228.2815  nothing observed\n"
                    "  4  1066.5794  910.8982 to 1222.2606\n"
                    "  step  forecast  limits of an observation (confidence 95.0 %)\n"
                    "  5  1066.5794  770.1299 to 1363.0289");
    command->add_option("FILE", series->file, "Table (CSV)")->required();
    command->add_option("--column", series->column, "Its column of observations")->capture_default_str();
    command->add_option("--step", series->step, "Its column of steps, e.g. days; without it each row is a step");
    command->add_option("--observation-variance", series->observation, "Of one observation around the level");
    command->add_option("--drift-variance", series->drift, "Of the level from step to step");
    command->add_option("--ahead", series->ahead, "Steps to forecast")->capture_default_str();
    command->add_option("--confidence", series->confidence, "Above 0 and below 1")->capture_default_str();
}

}  // namespace ebbline::tool
