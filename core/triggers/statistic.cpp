#include "core/triggers/statistic.h"

namespace ebbline::triggers {

namespace {

struct Row {
    Statistic statistic;
    std::string_view word;
    double Thresholds::*threshold;
};

constexpr std::array<Row, allStatistics.size()> rows{
    {{Statistic::level, "level", &Thresholds::level},
     {Statistic::levelOverall, "level-overall", &Thresholds::levelOverall},
     {Statistic::rebound, "rebound", &Thresholds::rebound},
     {Statistic::sideDivergence, "side-divergence", &Thresholds::sideDivergence},
     {Statistic::oneSideFills, "one-side-fills", &Thresholds::oneSideFills},
     {Statistic::oneSideWorsens, "one-side-worsens", &Thresholds::oneSideWorsens},
     {Statistic::slowRecovery, "slow-recovery", &Thresholds::slowRecovery},
     {Statistic::slowOverall, "slow-overall", &Thresholds::slowOverall}}};

const Row& rowOf(Statistic statistic)
{
    return rows[static_cast<std::size_t>(statistic)];
}

}  // namespace

std::string_view word(Statistic statistic)
{
    return rowOf(statistic).word;
}

double& thresholdOf(Thresholds& thresholds, Statistic statistic)
{
    return thresholds.*rowOf(statistic).threshold;
}

double thresholdOf(const Thresholds& thresholds, Statistic statistic)
{
    return thresholds.*rowOf(statistic).threshold;
}

}  // namespace ebbline::triggers
