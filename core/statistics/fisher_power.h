#pragma once
/// \file
/// How often Fisher's exact test (two-sided) would find a difference, and how large one must be to be
/// found: what a comparison of so many can and cannot show.
///
/// Exact: adds the probability of every pair of counts that the test rejects; pairs less likely than
/// 1e-14 within a group are left out.
/// Source: definition; A. Agresti, "Categorical Data Analysis", 3rd ed., Wiley 2013, section 3.5.

#include "core/result/result.h"

#include <optional>
#include <vector>

namespace ebbline::statistics {

class FisherPower {
public:
    static constexpr long mostTrials = 10'000;  ///< in one group

    /// Groups of this size, and the error that the test allows.
    /// \returns Reason::outOfRange unless 1 <= size <= mostTrials and 0 < error < 1.
    static Result<FisherPower> create(long first, long second, double error = 0.05);

    /// P(the test rejects) if these are the true shares. \returns Reason::outOfRange unless both lie in 0..1.
    Result<double> power(double first, double second) const;

    /// The smallest true share of the second group above that of the first which is found with this
    /// power; to 1e-6. Empty if not even a share of 1 is. \returns Reason::outOfRange unless
    /// 0 <= first <= 1 and 0 < power < 1.
    Result<std::optional<double>> smallestAbove(double first, double power = 0.8) const;

private:
    /// Counts of the first group that are not rejected, given the sum of both; none if low > high.
    struct Kept {
        long low;
        long high;
    };
    FisherPower(long first, long second) : m_first(first), m_second(second) {}

    long m_first;
    long m_second;
    std::vector<Kept> m_kept;  ///< by the sum of both counts
};

}  // namespace ebbline::statistics
