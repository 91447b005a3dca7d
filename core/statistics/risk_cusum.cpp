#include "core/statistics/risk_cusum.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <vector>

namespace ebbline::statistics {

namespace {

Done checked(const RiskCusumDesign& design)
{
    if (!(design.oddsRatio > 0) || !std::isfinite(design.oddsRatio) || design.oddsRatio == 1)
        return fail(Reason::outOfRange, "odds ratio: want > 0 and not 1");
    if (!(design.decision > 0) || !std::isfinite(design.decision))
        return fail(Reason::outOfRange, "decision: want > 0");
    return {};
}

/// A sum by what made it since it was last 0: so many events, so many patients without.
struct State {
    int events;
    int others;
    double probability;
};

bool before(const State& a, const State& b)
{
    return std::tie(a.events, a.others) < std::tie(b.events, b.others);
}

}  // namespace

double riskWeight(double oddsRatio, double risk, bool event) noexcept
{
    const double scale = std::log1p((oddsRatio - 1) * risk);
    return event ? std::log(oddsRatio) - scale : -scale;
}

Result<RiskCusum> RiskCusum::create(const RiskCusumDesign& design)
{
    if (const Done fine = checked(design); !fine)
        return fail(fine.error());
    return RiskCusum(design);
}

Result<bool> RiskCusum::observe(double risk, bool event)
{
    if (!(risk > 0 && risk < 1))
        return fail(Reason::outOfRange, "risk: want 0 < risk < 1");
    m_sum = std::max(0.0, m_sum + riskWeight(m_design.oddsRatio, risk, event));
    m_difference += risk - (event ? 1 : 0);
    return m_sum > m_design.decision;
}

Result<double> signalProbability(const RiskCusumDesign& design, double risk, int patients, double trueOddsRatio)
{
    if (const Done fine = checked(design); !fine)
        return fail(fine.error());
    if (!(risk > 0 && risk < 1))
        return fail(Reason::outOfRange, "risk: want 0 < risk < 1");
    if (patients < 1 || patients > mostPatients)
        return fail(Reason::outOfRange, "patients: want 1..5000");
    if (!(trueOddsRatio > 0) || !std::isfinite(trueOddsRatio))
        return fail(Reason::outOfRange, "true odds ratio: want > 0");

    constexpr double negligible = 1e-18;
    const double up = riskWeight(design.oddsRatio, risk, true);
    const double down = riskWeight(design.oddsRatio, risk, false);
    const double chance = trueOddsRatio * risk / (1 - risk + trueOddsRatio * risk);
    std::vector<State> now{{0, 0, 1}}, withEvent, without, next;
    double signalled = 0;
    for (int patient = 0; patient < patients; ++patient) {
        withEvent.clear();
        without.clear();
        next.clear();
        double atZero = 0;
        const auto move = [&](State to, std::vector<State>& list) {
            const double sum = to.events * up + to.others * down;
            if (to.probability < negligible)
                return;
            if (sum > design.decision)
                signalled += to.probability;
            else if (sum <= 0)
                atZero += to.probability;
            else
                list.push_back(to);
        };
        for (const State& state : now) {
            move({state.events + 1, state.others, state.probability * chance}, withEvent);
            move({state.events, state.others + 1, state.probability * (1 - chance)}, without);
        }
        if (atZero > 0)
            next.push_back({0, 0, atZero});
        // Both lists keep the order of the states, so equal ones meet.
        std::merge(withEvent.begin(), withEvent.end(), without.begin(), without.end(), std::back_inserter(next), before);
        now.clear();
        for (const State& state : next)
            if (!now.empty() && !before(now.back(), state))
                now.back().probability += state.probability;
            else
                now.push_back(state);
    }
    return std::min(1.0, signalled);
}

}  // namespace ebbline::statistics
