#include "core/statistics/two_proportions.h"

#include "core/statistics/proportions.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>
#include <exception>

namespace ebbline::statistics {

namespace {

double share(const Counts& counts)
{
    return static_cast<double>(counts.events) / static_cast<double>(counts.total);
}

/// Logarithm of base^(2 count).
double raised(double base, long count)
{
    return count == 0 ? 0 : 2 * static_cast<double>(count) * std::log(base);
}

boost::math::beta_distribution<double> posterior(const Counts& counts)
{
    return {static_cast<double>(counts.events) + 0.5, static_cast<double>(counts.total - counts.events) + 0.5};
}

}  // namespace

Result<Difference> newcombe(const Counts& first, const Counts& second, double confidence)
{
    const Result<Interval> one = wilson(first.events, first.total, confidence);
    if (!one)
        return fail(one.error());
    const Result<Interval> two = wilson(second.events, second.total, confidence);
    if (!two)
        return fail(two.error());
    const double p1 = share(first);
    const double p2 = share(second);
    return Difference{p1 - p2, std::max(-1.0, p1 - p2 - std::hypot(p1 - one->low, two->high - p2)),
                      std::min(1.0, p1 - p2 + std::hypot(one->high - p1, p2 - two->low))};
}

Result<double> probabilityLower(const Counts& first, const Counts& second)
{
    for (const Counts& counts : {first, second})
        if (counts.total <= 0 || counts.events < 0 || counts.events > counts.total)
            return fail(Reason::outOfRange, "want 0 <= events <= total and total > 0");
    try {
        const auto one = posterior(first);
        const auto two = posterior(second);
        // With x = sin^2(angle) a posterior under Jeffreys' prior is smooth up to the ends: its density is
        // 2 sin^(2 yes) cos^(2 no) / B. Beyond the quantiles taken lies less than the promised error.
        const auto angle = [](double x) { return std::asin(std::sqrt(x)); };
        const double logBeta = boost::math::lgamma(one.alpha()) + boost::math::lgamma(one.beta())
                               - boost::math::lgamma(one.alpha() + one.beta());
        const auto weighted = [&](double a) {
            const double sine = std::sin(a), cosine = std::cos(a);
            const double density =
                2 * std::exp(raised(sine, first.events) + raised(cosine, first.total - first.events) - logBeta);
            return density * boost::math::cdf(boost::math::complement(two, std::min(1.0, sine * sine)));
        };
        const double from = angle(boost::math::quantile(one, 1e-11));
        const double to = angle(boost::math::quantile(boost::math::complement(one, 1e-11)));
        const double probability =
            boost::math::quadrature::gauss_kronrod<double, 31>::integrate(weighted, from, to, 12, 1e-10);
        return std::clamp(probability, 0.0, 1.0);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "counts: too large to integrate");
    }
}

}  // namespace ebbline::statistics
