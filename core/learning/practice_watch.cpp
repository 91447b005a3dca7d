#include "core/learning/practice_watch.h"

#include "core/statistics/risk_cusum.h"

#include <algorithm>

namespace ebbline::learning {

Result<PracticeWatch> watchPoints(std::span<const PastCourse> courses, const WatchDesign& design)
{
    const statistics::RiskCusumDesign chart{design.oddsRatio, design.decision};
    auto sum = statistics::RiskCusum::create(chart);
    if (!sum)
        return fail(sum.error());
    if (!(design.risk > 0 && design.risk < 1))
        return fail(Reason::outOfRange, "risk: want between 0 and 1");
    std::vector<const PastCourse*> order;
    for (const PastCourse& course : courses)
        order.push_back(&course);
    std::sort(order.begin(), order.end(), [](const PastCourse* a, const PastCourse* b) {
        return a->treated.at != b->treated.at ? a->treated.at < b->treated.at : a->name < b->name;
    });

    PracticeWatch watch;
    bool waiting = false;
    int segment = 0;
    for (const PastCourse* course : order) {
        if (!course->outcome) {
            ++watch.unknown;
            waiting = true;
            continue;
        }
        watch.settled = watch.settled && !waiting;
        const bool complicated = course->outcome->complicated;
        const double risk = course->risk.value_or(design.risk);
        watch.ownRisks += course->risk.has_value();
        const auto signal = sum->observe(risk, complicated);
        if (!signal)
            return fail(signal.error());
        watch.points.push_back({course->name, course->treated, complicated, risk, sum->sum(),
                                sum->expectedMinusObserved(), *signal, segment});
        if (*signal) {
            ++watch.signalCount;
            ++segment;
            sum->reset();
        }
    }
    return watch;
}

void watchOdds(PracticeWatch& watch, const WatchDesign& design)
{
    const statistics::RiskCusumDesign chart{design.oddsRatio, design.decision};
    const int patients = static_cast<int>(
        std::min(watch.points.size(), static_cast<std::size_t>(statistics::mostPatients)));
    if (patients > 0) {
        watch.falseSignal = statistics::signalProbability(chart, design.risk, patients).value_or(1);
        watch.found = statistics::signalProbability(chart, design.risk, patients, design.oddsRatio).value_or(0);
    }
}

Result<PracticeWatch> watchPractice(std::span<const PastCourse> courses, const WatchDesign& design)
{
    auto watch = watchPoints(courses, design);
    if (watch)
        watchOdds(*watch, design);
    return watch;
}

}  // namespace ebbline::learning
