// ebbline stats racusum: the risk-adjusted chart over consecutive patients.

#include "app/tool/stats_parts.h"

#include "core/statistics/risk_cusum.h"

#include <algorithm>

namespace ebbline::tool {

namespace {

struct RiskOptions {
    std::string file;
    std::string risk = "risk";
    std::string event = "event";
    statistics::RiskCusumDesign design{.oddsRatio = 2, .decision = 3.5};
};

constexpr Range risks{0, 1, true, false, "a risk above 0 and below 1"};

/// How often a chart of so many patients signals if nothing had changed, for the lowest and the
/// highest of their risks.
void addFalseSignals(Answer& answer, const statistics::RiskCusumDesign& design, double lowest, double highest, int patients)
{
    if (patients > statistics::mostPatients)
        return;
    const auto least = statistics::signalProbability(design, lowest, patients);
    const auto most = statistics::signalProbability(design, highest, patients);
    if (!least || !most)
        return;
    const auto [low, high] = std::minmax(*least, *most);
    setProbability(answer.json, "falseSignalLeast", low);
    setProbability(answer.json, "falseSignalMost", high);
    if (high <= 0) {
        answer.text += "so few patients can not bring this chart to a signal, whatever becomes of them: that there is none says nothing\n";
        return;
    }
    constexpr double smallest = 1e-9;
    answer.text += "with all at the lowest or all at the highest of these risks, and nothing changed, such a chart signals "
                   "in "
                   + integrated(low, smallest) + " to " + integrated(high, smallest) + " of runs\n";
}

Answered racusum(const RiskOptions& options)
{
    auto chart = statistics::RiskCusum::create(options.design);
    if (!chart)
        return refused(chart.error());
    auto table = tableIn(options.file);
    if (!table)
        return std::unexpected(table.error());
    const auto risk = table->numbers(options.risk, risks);
    const auto event = table->answers(options.event, true);
    if (const auto fine = faultsOf(options.file, *table); !fine)
        return std::unexpected(fine.error());

    Answer answer{{{"patients", 0}, {"unknown", 0}, {"events", 0}, {"expected", 0.0}, {"firstSignalLine", nullptr},
                   {"points", Json::array()}},
                  "line  risk  event  sum  expected - observed\n"};
    int patients = 0, events = 0;
    double expected = 0, lowest = 1, highest = 0;
    for (std::size_t row = 0; row < risk.size(); ++row) {
        if (!event[row])
            continue;
        const auto signal = chart->observe(*risk[row], *event[row]);
        if (!signal)
            return refused(signal.error());
        ++patients;
        events += *event[row];
        expected += *risk[row];
        lowest = std::min(lowest, *risk[row]);
        highest = std::max(highest, *risk[row]);
        answer.json["points"].push_back({{"line", table->line(row)},
                                         {"risk", *risk[row]},
                                         {"event", *event[row]},
                                         {"sum", chart->sum()},
                                         {"expectedMinusObserved", chart->expectedMinusObserved()},
                                         {"signal", *signal}});
        answer.text += std::to_string(table->line(row)) + "  " + shown(*risk[row]) + "  " + (*event[row] ? "yes" : "no")
                       + "  " + shown(chart->sum()) + "  " + shown(chart->expectedMinusObserved()) + (*signal ? "  signal" : "")
                       + "\n";
        if (*signal && answer.json["firstSignalLine"].is_null())
            answer.json["firstSignalLine"] = table->line(row);
    }
    if (patients == 0)
        return refused({Reason::notEnough, "no patient has a known outcome"});
    const auto unknown = static_cast<long>(risk.size()) - patients;
    answer.json["patients"] = patients;
    answer.json["unknown"] = unknown;
    answer.json["events"] = events;
    answer.json["expected"] = expected;
    answer.text += std::to_string(events) + " events in " + std::to_string(patients) + " patients, " + shown(expected, 2)
                   + " expected; "
                   + (answer.json["firstSignalLine"].is_null()
                          ? "no signal"
                          : "first signal at line " + std::to_string(answer.json["firstSignalLine"].get<std::size_t>()))
                   + "\n";
    if (unknown > 0)
        answer.text += std::to_string(unknown) + " without a known outcome, left out: that is not a success\n";
    addFalseSignals(answer, options.design, lowest, highest, patients);
    return answer;
}

}  // namespace

void addRiskChart(CLI::App& stats, std::function<int()>& run)
{
    const auto options = std::make_shared<RiskOptions>();
    auto* command = addMethod(stats, run, "racusum", "Risk-adjusted sums over consecutive patients", options, racusum);
    command->footer("One row a patient, in the order of the procedures; an empty outcome is not known yet.\n"
                    "Example: done.csv holds the lines  risk,event  0.02,no  0.05,no  0.10,yes\n"
                    "  ebbline stats racusum done.csv --odds-ratio 2 --decision 3.5\n"
                    "  line  risk  event  sum  expected - observed\n"
                    "  2  0.0200  no  0.0000  0.0200\n"
                    "  3  0.0500  no  0.0000  0.0700\n"
                    "  4  0.1000  yes  0.5978  -0.8300\n"
                    "  1 events in 3 patients, 0.17 expected; no signal\n"
                    "  so few patients can not bring this chart to a signal, whatever becomes of them: that there is none says nothing");
    command->add_option("FILE", options->file, "Table (CSV)")->required();
    command->add_option("--risk", options->risk, "Its column of risks known beforehand")->capture_default_str();
    command->add_option("--event", options->event, "Its column of outcomes, yes or no")->capture_default_str();
    command->add_option("--odds-ratio", options->design.oddsRatio, "The change of the odds to watch for; below 1: for the better")
        ->capture_default_str();
    command->add_option("--decision", options->design.decision, "h, signal above")->capture_default_str();
}

}  // namespace ebbline::tool
