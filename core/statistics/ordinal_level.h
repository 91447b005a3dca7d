#pragma once
/// \file
/// Ordered answers of one subject among others: a level that wanders and returns, seen through noise
/// and through what share of all subjects gives each answer.
///
///     level_1 ~ N(0, share),  level_(t+1) = kept level_t + w_t,  w ~ N(0, (1 - kept^2) share)
///     u_t = level_t + e_t,  e ~ N(0, 1 - share);  the answer is k where P(below k) <= Phi(u_t) < P(up to k)
///
/// u is standard normal at every step: before anything was seen each answer is as likely as its share,
/// and so it is again after a long silence. An answer tells between which two edges u lies, no more: a 0
/// where nine in ten answer 0 says little. The level is filtered on a grid, integrals are sums over it.
/// Source: G. Kitagawa, "Non-Gaussian State-Space Modeling of Nonstationary Time Series", J Am Stat
/// Assoc 1987;82:1032 (filter and prediction by numerical integration).

#include "core/result/result.h"

#include <span>
#include <vector>

namespace ebbline::statistics {

struct OrdinalLevelModel {
    /// Of the variance of u that is the subject's level, 0 <= share < 1; the rest is noise, and less than
    /// 0.0004 of it is taken for that much.
    double share;
    double kept;   ///< of the level after one step, 0..1
};

class OrdinalLevelFilter {
public:
    /// \returns Reason::outOfRange naming the field.
    static Result<OrdinalLevelFilter> create(const OrdinalLevelModel& model);

    /// One answer at the present step. \param shares of the answers 0, 1, 2 ..., non-negative, sum 1
    /// An answer that has a smaller share than rarest is taken for one of that share; one that nothing
    /// before allows starts anew. \returns Reason::outOfRange, and then nothing has changed.
    Done observe(std::span<const double> shares, std::size_t answer);

    /// `steps` further; nothing is seen. What moves the level by less than the grid tells apart waits for the steps after it.
    /// \pre steps >= 0
    void advance(int steps = 1);

    /// How likely each answer is at the present step; sums to 1. \param shares as in observe
    std::vector<double> likely(std::span<const double> shares) const;

    static constexpr double rarest = 0.0005;

private:
    explicit OrdinalLevelFilter(const OrdinalLevelModel& model);
    double levelAt(std::size_t place) const;
    double fit(std::size_t place, double low, double high) const;
    void prepare(int steps);

    OrdinalLevelModel m_model;
    double m_step;                 ///< of the grid, in standard deviations of the level
    std::vector<double> m_before;  ///< probability of each place before anything was seen
    std::vector<double> m_now;
    int m_pending = 0;             ///< steps not taken yet
    int m_prepared = 0;            ///< steps that m_kernel moves, 0 for none
    std::size_t m_reach = 0;       ///< places to either side that it moves to
    std::vector<double> m_kernel;  ///< by place, then by place moved to
};

}  // namespace ebbline::statistics
