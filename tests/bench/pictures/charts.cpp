#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/cusum.h"
#include "core/statistics/ewma.h"
#include "core/statistics/risk_cusum.h"
#include "core/statistics/run_length.h"

#include <cmath>

namespace ebbline::bench {

namespace {

using namespace statistics;

Picture ewma()
{
    Picture picture("Twenty observations, their moving average and its limits.", axis("observation", 0, 20, 5),
                    axis("value", 46, 54, 2));
    Ewma chart = Ewma::create({.weight = 0.3, .centre = 50, .spread = 2.0539, .width = 3}).value();
    Points seen, average{{0, 50}}, low, high;
    for (std::size_t i = 0; i < ewmaExample.size(); ++i) {
        (void)chart.observe(ewmaExample[i]);
        const double x = static_cast<double>(i + 1);
        seen.emplace_back(x, ewmaExample[i]);
        average.emplace_back(x, chart.average());
        low.emplace_back(x, chart.limits().lower);
        high.emplace_back(x, chart.limits().upper);
    }
    picture.band(low, high, ink::sand, "within the limits, exact from the first observation on");
    picture.marks(seen, Mark::hollow, ink::soft, "observations");
    picture.line(average, {ink::tide, Dash::solid, 2}, "average, weight 0.3");
    return picture;
}

Picture cusum()
{
    Picture picture("Sums of what lies above and below the target; the upper one signals at group 14.", axis("group", 0, 20, 5),
                    axis("sum", 0, 20, 5));
    Cusum chart = Cusum::create({.target = 325, .slack = 0.3175, .decision = 4.1959}).value();
    Points high{{0, 0}}, low{{0, 0}}, signal;
    for (std::size_t i = 0; i < cusumExample.size(); ++i) {
        const bool signals = chart.observe(cusumExample[i]).value();
        const double x = static_cast<double>(i + 1);
        high.emplace_back(x, chart.high());
        low.emplace_back(x, chart.low());
        if (signals && signal.empty())
            signal.emplace_back(x, chart.high());
    }
    picture.across(4.1959, {ink::call, Dash::dotted, 1.6}, "decision value");
    picture.line(high, {ink::tide, Dash::solid, 2}, "upwards");
    picture.line(low, {ink::right, Dash::dashed, 2}, "downwards");
    picture.marks(signal, Mark::square, ink::call, "first signal");
    return picture;
}

Picture runLength()
{
    Axis up{"observations until a signal, on average", 0, 3, {{0, "1"}, {1, "10"}, {2, "100"}, {3, "1000"}}};
    Picture picture("The larger the shift, the sooner a chart signals.", axis("shift, standard deviations", 0, 4, 1), up);
    const auto curve = [](auto length) {
        Points points;
        for (int i = 0; i <= 40; ++i)
            points.emplace_back(i / 10.0, std::log10(length(i / 10.0)));
        return points;
    };
    picture.line(curve([](double s) { return cusumRunLengthBothWays(0.5, 4, s).value(); }), {ink::tide, Dash::solid, 2},
                 "CUSUM, slack 0.5, decision 4");
    picture.line(curve([](double s) { return cusumRunLengthBothWays(0.5, 5, s).value(); }), {ink::left, Dash::dotted, 2.2},
                 "CUSUM, slack 0.5, decision 5");
    picture.line(curve([](double s) { return ewmaRunLength(0.1, 2.814, s).value(); }), {ink::right, Dash::dashed, 2},
                 "EWMA, weight 0.1, width 2.814");
    return picture;
}

Picture signalByN()
{
    Picture picture("How likely a signal is by the n-th observation.", axis("observations", 0, 40, 5),
                    axis("P(signal by then)", 0, 1, 0.2, 1));
    const auto curve = [](auto probability) {
        Points points;
        for (int n = 0; n <= 40; ++n)
            points.emplace_back(n, probability(n));
        return points;
    };
    struct Shift { double size; Dash dash; const char* name; };
    for (const auto& [size, dash, name] : {Shift{0, Dash::dotted, "nothing shifted"}, Shift{1, Dash::solid, "shifted by one"}}) {
        picture.line(curve([&](int n) { return cusumSignalProbability(0.5, 4, size, n).value(); }), {ink::tide, dash, 2},
                     std::string("CUSUM upwards, ") + name);
        picture.line(curve([&](int n) { return ewmaSignalProbability(0.1, 2.814, size, n).value(); }), {ink::right, dash, 2},
                     std::string("EWMA, ") + name);
    }
    return picture;
}

/// The ten patients of the check value, five times over.
Picture riskCusum(bool difference)
{
    constexpr std::array risks{.02, .05, .10, .04, .08, .03, .15, .05, .06, .02};
    constexpr std::array events{false, false, true, false, true, false, false, true, false, false};
    Picture picture(difference ? "Expected minus observed events, for reading and not for deciding."
                               : "The risk-adjusted sum climbs with every event that was unlikely, and signals.",
                    axis("patient", 0, 50, 10), difference ? axis("expected - observed", -14, 2, 4) : axis("sum", 0, 6, 1));
    RiskCusum chart = RiskCusum::create({.oddsRatio = 2, .decision = 3.5}).value();
    Points sums{{0, 0}}, differences{{0, 0}}, signals, happened;
    for (std::size_t i = 0; i < 50; ++i) {
        const bool signal = chart.observe(risks[i % 10], events[i % 10]).value();
        const double x = static_cast<double>(i + 1);
        sums.emplace_back(x, chart.sum());
        differences.emplace_back(x, chart.expectedMinusObserved());
        if (events[i % 10])
            happened.emplace_back(x, difference ? chart.expectedMinusObserved() : chart.sum());
        if (signal) {
            signals.emplace_back(x, chart.sum());
            chart.reset();
            sums.emplace_back(x, 0);
        }
    }
    if (!difference)
        picture.across(3.5, {ink::call, Dash::dotted, 1.6}, "decision value");
    picture.line(difference ? differences : sums, {ink::tide, Dash::solid, 2},
                 difference ? "expected - observed" : "sum, odds ratio 2; begins again after a signal");
    picture.marks(happened, Mark::hollow, ink::soft, "an event");
    if (!difference)
        picture.marks(signals, Mark::square, ink::call, "signal");
    return picture;
}

Picture riskSignal()
{
    Picture picture("How likely the risk-adjusted chart signals within so many patients.", axis("patients", 0, 500, 100),
                    axis("P(signal by then)", 0, 1, 0.2, 1));
    struct Truth { double odds; Stroke stroke; const char* name; };
    for (const auto& [odds, stroke, name] : {Truth{1, {ink::edge, Dash::dotted, 1.8}, "nothing has changed (false)"},
                                             Truth{1.5, {ink::right, Dash::dashed, 2}, "odds one and a half times as large"},
                                             Truth{2, {ink::tide, Dash::solid, 2}, "odds doubled (found)"}}) {
        Points points{{0, 0}};
        for (int patients = 25; patients <= 500; patients += 25)
            points.emplace_back(patients, signalProbability({2, 3.5}, 0.05, patients, odds).value());
        picture.line(points, stroke, name);
    }
    picture.note("risk 0.05, odds ratio 2, decision 3.5");
    return picture;
}

}  // namespace

std::vector<Named> chartPictures()
{
    return {{"ewma", ewma()}, {"cusum", cusum()}, {"run-length", runLength()}, {"signal-by-n", signalByN()},
            {"risk-cusum", riskCusum(false)}, {"expected-observed", riskCusum(true)}, {"risk-signal", riskSignal()}};
}

}  // namespace ebbline::bench
