#include "core/statistics/proportions.h"

#include "core/statistics/distributions.h"

#include <cmath>

namespace ebbline::statistics {

Result<Interval> wilson(long events, long total, double confidence)
{
    if (total <= 0 || events < 0 || events > total)
        return fail(Reason::outOfRange, "want 0 <= events <= total and total > 0");
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want 0 < confidence < 1");
    const Result<double> z = normalQuantile(0.5 + confidence / 2);
    if (!z)
        return fail(z.error());
    const auto n = static_cast<double>(total);
    const double p = static_cast<double>(events) / n;
    const double square = *z * *z;
    const double middle = p + square / (2 * n);
    const double half = *z * std::sqrt(p * (1 - p) / n + square / (4 * n * n));
    const double scale = 1 + square / n;
    return Interval{events == 0 ? 0.0 : (middle - half) / scale, events == total ? 1.0 : (middle + half) / scale};
}

}  // namespace ebbline::statistics
