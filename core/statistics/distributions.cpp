#include "core/statistics/distributions.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/gamma.hpp>

#include <cmath>
#include <exception>

namespace ebbline::statistics {

double normalCdf(double z) noexcept
{
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

Result<double> normalQuantile(double p)
{
    if (!(p > 0.0 && p < 1.0))
        return fail(Reason::outOfRange, "p: want 0 < p < 1");
    try {
        return boost::math::quantile(boost::math::normal_distribution<double>(), p);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "p: too close to 0 or 1");
    }
}

Result<double> betaQuantile(double p, double a, double b)
{
    if (!(p >= 0.0 && p <= 1.0) || !(a > 0.0) || !(b > 0.0) || !std::isfinite(a) || !std::isfinite(b))
        return fail(Reason::outOfRange, "want 0 <= p <= 1, a > 0, b > 0");
    try {
        return boost::math::quantile(boost::math::beta_distribution<double>(a, b), p);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "beta quantile: no finite answer");
    }
}

Result<double> betaCdf(double x, double a, double b)
{
    if (!(x >= 0 && x <= 1) || !(a > 0) || !(b > 0) || !std::isfinite(a) || !std::isfinite(b))
        return fail(Reason::outOfRange, "want 0 <= x <= 1, a > 0, b > 0");
    try {
        return boost::math::cdf(boost::math::beta_distribution<double>(a, b), x);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "beta: no finite answer");
    }
}

Result<double> gammaCdf(double x, double shape)
{
    if (!(x >= 0) || !(shape > 0) || !std::isfinite(x) || !std::isfinite(shape))
        return fail(Reason::outOfRange, "want x >= 0 and shape > 0");
    try {
        return boost::math::gamma_p(shape, x);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "gamma: no finite answer");
    }
}

Result<double> binomialCdf(long events, long total, double p)
{
    if (events < 0 || events > total || !(p >= 0 && p <= 1))
        return fail(Reason::outOfRange, "want 0 <= events <= total and 0 <= p <= 1");
    if (events == total)
        return 1.0;
    return betaCdf(1 - p, static_cast<double>(total - events), static_cast<double>(events) + 1);
}

Result<double> studentTwoSided(double t, double degrees)
{
    if (!std::isfinite(t) || !(degrees > 0) || !std::isfinite(degrees))
        return fail(Reason::outOfRange, "want a finite t and degrees > 0");
    return betaCdf(degrees / (degrees + t * t), degrees / 2, 0.5);
}

Result<double> chiSquareUpper(double x, double degrees)
{
    if (!(x >= 0) || !(degrees > 0) || !std::isfinite(x) || !std::isfinite(degrees))
        return fail(Reason::outOfRange, "want x >= 0 and degrees > 0");
    try {
        return boost::math::gamma_q(degrees / 2, x / 2);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "chi-square: no finite answer");
    }
}

Result<double> chiSquareQuantile(double p, double degrees)
{
    if (!(p >= 0 && p < 1) || !(degrees > 0) || !std::isfinite(degrees))
        return fail(Reason::outOfRange, "want 0 <= p < 1 and degrees > 0");
    try {
        return 2 * boost::math::gamma_p_inv(degrees / 2, p);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "chi-square quantile: no finite answer");
    }
}

Result<double> studentQuantile(double p, double degrees)
{
    if (!(p > 0 && p < 1) || !(degrees > 0) || !std::isfinite(degrees))
        return fail(Reason::outOfRange, "want 0 < p < 1 and degrees > 0");
    try {
        return boost::math::quantile(boost::math::students_t_distribution<double>(degrees), p);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "Student's quantile: no finite answer");
    }
}

Result<double> fQuantile(double p, double upperDegrees, double lowerDegrees)
{
    if (!(p > 0 && p < 1) || !(upperDegrees > 0) || !(lowerDegrees > 0) || !std::isfinite(upperDegrees)
        || !std::isfinite(lowerDegrees))
        return fail(Reason::outOfRange, "want 0 < p < 1 and degrees > 0");
    try {
        return boost::math::quantile(boost::math::fisher_f_distribution<double>(upperDegrees, lowerDegrees), p);
    } catch (const std::exception&) {
        return fail(Reason::outOfRange, "quantile of F: no finite answer");
    }
}

}  // namespace ebbline::statistics
