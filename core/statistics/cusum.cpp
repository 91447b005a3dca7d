#include "core/statistics/cusum.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

Result<Cusum> Cusum::create(const CusumDesign& design)
{
    if (!std::isfinite(design.target))
        return fail(Reason::outOfRange, "target: want a finite number");
    if (!std::isfinite(design.slack) || design.slack < 0)
        return fail(Reason::outOfRange, "slack: want >= 0");
    if (!std::isfinite(design.decision) || design.decision <= 0)
        return fail(Reason::outOfRange, "decision: want > 0");
    return Cusum(design);
}

Result<bool> Cusum::observe(double observation)
{
    if (!std::isfinite(observation))
        return fail(Reason::notFinite, "observation: want a finite number");
    const double deviation = observation - m_design.target;
    m_high = std::max(0.0, m_high + deviation - m_design.slack);
    m_low = std::max(0.0, m_low - deviation - m_design.slack);
    return m_high > m_design.decision || m_low > m_design.decision;
}

}  // namespace ebbline::statistics
