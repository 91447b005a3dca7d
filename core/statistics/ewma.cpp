#include "core/statistics/ewma.h"

#include <cmath>

namespace ebbline::statistics {

Result<Ewma> Ewma::create(const EwmaDesign& design)
{
    const auto positive = [](double x) { return std::isfinite(x) && x > 0.0; };
    if (!positive(design.weight) || design.weight > 1.0)
        return fail(Reason::outOfRange, "weight: want 0 < weight <= 1");
    if (!std::isfinite(design.centre))
        return fail(Reason::outOfRange, "centre: want a finite number");
    if (!positive(design.spread))
        return fail(Reason::outOfRange, "spread: want > 0");
    if (!positive(design.width))
        return fail(Reason::outOfRange, "width: want > 0");
    return Ewma(design);
}

Result<Verdict> Ewma::observe(double observation)
{
    if (!std::isfinite(observation))
        return fail(Reason::notFinite, "observation: want a finite number");
    m_average += m_design.weight * (observation - m_average);
    ++m_count;
    const Limits now = limits();
    if (m_average > now.upper)
        return Verdict::above;
    return m_average < now.lower ? Verdict::below : Verdict::within;
}

Limits Ewma::limits() const noexcept
{
    return limitsFor(1.0 - std::pow(1.0 - m_design.weight, 2.0 * m_count));
}

Limits Ewma::steadyLimits() const noexcept
{
    return limitsFor(1.0);
}

Limits Ewma::limitsFor(double varianceShare) const noexcept
{
    const double half = m_design.width * m_design.spread
                        * std::sqrt(m_design.weight / (2.0 - m_design.weight) * varianceShare);
    return {m_design.centre - half, m_design.centre + half};
}

}  // namespace ebbline::statistics
