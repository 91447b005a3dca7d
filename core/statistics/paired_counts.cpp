#include "core/statistics/paired_counts.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

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

Result<PairedDifference> pairedDifference(long yesNo, long noYes, long subjects, double confidence)
{
    if (yesNo < 0 || noYes < 0 || subjects < 1 || yesNo > subjects - noYes)
        return fail(Reason::outOfRange, "counts: want 0 or more changes and at least as many subjects");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want more than 0 and less than 1");
    const Result<double> z = normalQuantile((1 + confidence) / 2);
    if (!z)
        return fail(z.error());
    const double all = static_cast<double>(subjects) + 2;
    const double away = static_cast<double>(yesNo) + 0.5;
    const double towards = static_cast<double>(noYes) + 0.5;
    const double middle = (towards - away) / all;
    const double reach = *z * std::sqrt((away + towards) / all - middle * middle) / std::sqrt(all);
    return PairedDifference{static_cast<double>(noYes - yesNo) / static_cast<double>(subjects),
                            {std::max(-1.0, middle - reach), std::min(1.0, middle + reach)}};
}

}  // namespace ebbline::statistics
