#pragma once
/// \file
/// inside of core/statistics only

#include <boost/math/special_functions/gamma.hpp>

#include <cmath>

namespace ebbline::statistics {

/// log of gamma(x + n) / gamma(x), x > 0, n >= 0.
inline double logRising(double x, long n)
{
    // Short products do not lose the digits that the difference of two large logarithms does.
    if (n <= 64) {
        double sum = 0;
        for (long i = 0; i < n; ++i)
            sum += std::log(x + static_cast<double>(i));
        return sum;
    }
    return boost::math::lgamma(x + static_cast<double>(n)) - boost::math::lgamma(x);
}

}  // namespace ebbline::statistics
