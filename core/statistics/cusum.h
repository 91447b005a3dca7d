#pragma once
/// \file
/// Tabular cumulative sums, both directions.
///
///     high_i = max(0, high_(i-1) + x_i - target - slack),  low_i = max(0, low_(i-1) - x_i + target - slack)
///
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.3 "CUSUM Control Charts",
/// doi:10.18434/M32189. Unit: whatever unit the observations have.

#include "core/result/result.h"

namespace ebbline::statistics {

struct CusumDesign {
    double target;    ///< expected observation
    double slack;     ///< k, allowed drift per observation, >= 0
    double decision;  ///< h, signal above, > 0
};

class Cusum {
public:
    /// \returns Reason::outOfRange naming the field.
    static Result<Cusum> create(const CusumDesign& design);

    /// \returns whether either sum is above the decision value; Reason::notFinite, and then nothing
    ///          has changed.
    Result<bool> observe(double observation);

    double high() const noexcept { return m_high; }
    double low() const noexcept { return m_low; }
    void reset() noexcept { m_high = m_low = 0; }

private:
    explicit Cusum(const CusumDesign& design) noexcept : m_design(design) {}
    CusumDesign m_design;
    double m_high = 0;
    double m_low = 0;
};

}  // namespace ebbline::statistics
