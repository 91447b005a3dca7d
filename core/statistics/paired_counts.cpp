#include "core/statistics/paired_counts.h"

#include "core/statistics/distributions.h"

#include <algorithm>

namespace ebbline::statistics {

Result<McNemar> mcNemar(long yesNo, long noYes)
{
    if (yesNo < 0 || noYes < 0)
        return fail(Reason::outOfRange, "counts: want 0 or more");
    const double changed = static_cast<double>(yesNo) + static_cast<double>(noYes);
    if (changed == 0)
        return fail(Reason::notEnough, "nobody changed");
    const Result<double> tail = binomialCdf(std::min(yesNo, noYes), yesNo + noYes, 0.5);
    if (!tail)
        return fail(tail.error());
    const double apart = static_cast<double>(yesNo) - static_cast<double>(noYes);
    const double chiSquare = apart * apart / changed;
    const Result<double> upper = chiSquareUpper(chiSquare, 1);
    if (!upper)
        return fail(upper.error());
    return McNemar{std::min(1.0, 2 * *tail), chiSquare, *upper};
}

}  // namespace ebbline::statistics
