#include "core/statistics/lms.h"

#include <cmath>

namespace ebbline::statistics {

namespace {

Done checked(const Lms& reference)
{
    if (!std::isfinite(reference.power))
        return fail(Reason::outOfRange, "power: want a finite number");
    if (!(reference.median > 0) || !std::isfinite(reference.median))
        return fail(Reason::outOfRange, "median: want > 0");
    if (!(reference.variation > 0) || !std::isfinite(reference.variation))
        return fail(Reason::outOfRange, "variation: want > 0");
    return {};
}

}  // namespace

Result<double> lmsScore(const Lms& reference, double value)
{
    if (const Done fine = checked(reference); !fine)
        return fail(fine.error());
    if (!(value > 0) || !std::isfinite(value))
        return fail(Reason::outOfRange, "value: want > 0");
    const double ratio = std::log(value / reference.median);
    // expm1 keeps the digits that power() - 1 would lose near power 0.
    const double z = reference.power == 0
                         ? ratio / reference.variation
                         : std::expm1(reference.power * ratio) / (reference.power * reference.variation);
    if (!std::isfinite(z))
        return fail(Reason::outOfRange, "value: too far from the median");
    return z;
}

Result<double> lmsValue(const Lms& reference, double z)
{
    if (const Done fine = checked(reference); !fine)
        return fail(fine.error());
    if (!std::isfinite(z))
        return fail(Reason::outOfRange, "z: want a finite number");
    const double stretch = reference.power * reference.variation * z;
    if (!(stretch > -1))
        return fail(Reason::outOfRange, "z: no measurement lies so far out");
    const double ratio = reference.power == 0 ? reference.variation * z : std::log1p(stretch) / reference.power;
    const double value = reference.median * std::exp(ratio);
    if (!std::isfinite(value) || value <= 0)
        return fail(Reason::outOfRange, "z: no measurement lies so far out");
    return value;
}

}  // namespace ebbline::statistics
