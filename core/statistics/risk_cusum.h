#pragma once
/// \file
/// Risk-adjusted CUSUM over consecutive patients: has the odds of an event changed by a factor, given
/// what each patient's own risk was?
///
///     weight = event ? log(R) - log(1 - p + R p) : -log(1 - p + R p),   sum = max(0, sum + weight)
///
/// R above 1 watches for more events, below 1 for fewer. Beside it runs the plain difference expected -
/// observed (for reading, not for deciding).
/// A missing outcome is not a success: leave the patient out until it is known, and keep the order of
/// the procedures. A wrong model of risk shifts everything.
/// Source: S. H. Steiner, R. J. Cook, V. T. Farewell, T. Treasure, "Monitoring surgical performance using
/// risk-adjusted cumulative sum charts", Biostatistics 1 (2000) 441-452.

#include "core/result/result.h"

namespace ebbline::statistics {

struct RiskCusumDesign {
    double oddsRatio;  ///< R, what to watch for, > 0 and not 1
    double decision;   ///< h, signal above, > 0
};

/// What one patient adds. \pre 0 < risk < 1, oddsRatio > 0
double riskWeight(double oddsRatio, double risk, bool event) noexcept;

class RiskCusum {
public:
    /// \returns Reason::outOfRange naming the field.
    static Result<RiskCusum> create(const RiskCusumDesign& design);

    /// The next patient, with the risk known beforehand. \returns whether the sum is above the decision
    /// value; Reason::outOfRange unless 0 < risk < 1, and then nothing has changed.
    Result<bool> observe(double risk, bool event);

    double sum() const noexcept { return m_sum; }
    double expectedMinusObserved() const noexcept { return m_difference; }
    /// After a signal has been looked into. The difference goes on.
    void reset() noexcept { m_sum = 0; }

private:
    explicit RiskCusum(const RiskCusumDesign& design) noexcept : m_design(design) {}
    RiskCusumDesign m_design;
    double m_sum = 0;
    double m_difference = 0;
};

/// Most patients that signalProbability() follows.
inline constexpr int mostPatients = 5000;

/// P(a signal within so many patients) if all have the same risk and their odds are really
/// `trueOddsRatio` times as large; 1 gives the probability of a false signal, and by it `decision` is
/// chosen: an average run length would depend on the mix of patients. Exact: follows every sum that can
/// occur, but for probabilities below 1e-18 each.
/// \returns Reason::outOfRange naming the argument.
Result<double> signalProbability(const RiskCusumDesign& design, double risk, int patients, double trueOddsRatio = 1);

}  // namespace ebbline::statistics
