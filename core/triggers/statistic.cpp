#include "core/triggers/statistic.h"

namespace ebbline::triggers {

namespace {

struct Row {
    Statistic statistic;
    std::string_view word;
    Trigger trigger;
    double Thresholds::*threshold;
};

constexpr std::array<Row, allStatistics.size()> rows{
    {{Statistic::level, "level", Trigger::level, &Thresholds::level},
     {Statistic::levelOverall, "level-overall", Trigger::level, &Thresholds::levelOverall},
     {Statistic::rebound, "rebound", Trigger::rebound, &Thresholds::rebound},
     {Statistic::sideRebound, "side-rebound", Trigger::rebound, &Thresholds::sideRebound},
     {Statistic::sideDivergence, "side-divergence", Trigger::sideDivergence, &Thresholds::sideDivergence},
     {Statistic::filling, "filling", Trigger::sideDivergence, &Thresholds::filling},
     {Statistic::slowRecovery, "slow-recovery", Trigger::slowRecovery, &Thresholds::slowRecovery},
     {Statistic::slowOverall, "slow-overall", Trigger::slowRecovery, &Thresholds::slowOverall}}};

const Row& rowOf(Statistic statistic)
{
    return rows[static_cast<std::size_t>(statistic)];
}

}  // namespace

std::string_view word(Statistic statistic)
{
    return rowOf(statistic).word;
}

Trigger triggerOf(Statistic statistic)
{
    return rowOf(statistic).trigger;
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
