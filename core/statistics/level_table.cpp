#include "core/statistics/level_table.h"

#include <Eigen/Core>

namespace ebbline::statistics {

Result<LevelTable> LevelTable::create(std::size_t series, std::size_t steps)
{
    const std::size_t blocks = (series + lanes - 1) / lanes;
    if (steps > 0 && blocks > mostCells / lanes / steps)
        return fail(Reason::tooLarge, "series times steps: too many");
    return LevelTable(blocks, steps);
}

Result<void> LevelTable::smooth(const LocalLevelModel& model)
{
    if (const auto filter = LocalLevelFilter::create(model); !filter)
        return fail(filter.error());
    using Array = Eigen::Array<double, lanes, 1>;
    using Input = Eigen::Map<const Array, Eigen::Aligned64>;
    using Output = Eigen::Map<Array, Eigen::Aligned64>;

    struct Seen {
        Array surprise;   // over its variance
        Array precision;  // 0 where nothing was observed
    };
    std::vector<Seen> seen(m_steps);
    for (std::size_t block = 0; block < m_cells.size(); block += m_steps) {
        Array mean = Array::Constant(model.startMean);
        Array variance = Array::Constant(model.startVariance);
        for (std::size_t t = 0; t < m_steps; ++t) {
            const Cell& cell = m_cells[block + t];
            const Input value(cell.value.data()), count(cell.count.data());
            Output(m_levels[block + t].mean.data()) = mean;
            Output(m_levels[block + t].variance.data()) = variance;
            const Array precision = count / (count * variance + model.observation);
            const Array surprise = precision * (value - mean);
            seen[t] = {surprise, precision};
            mean += variance * surprise;
            variance += model.drift - variance * variance * precision;
        }
        Array ahead = Array::Zero();
        Array known = Array::Zero();
        for (std::size_t t = m_steps; t-- > 0;) {
            Output levelMean(m_levels[block + t].mean.data()), levelVariance(m_levels[block + t].variance.data());
            const Array predicted = levelVariance;
            const Array kept = 1 - predicted * seen[t].precision;
            ahead = seen[t].surprise + kept * ahead;
            known = seen[t].precision + kept * kept * known;
            levelMean += predicted * ahead;
            levelVariance -= predicted * predicted * known;
        }
    }
    return {};
}

}  // namespace ebbline::statistics
