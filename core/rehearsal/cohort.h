#pragma once
/// \file
/// Inside of core/rehearsal: the peaks of a cohort's courses, and thresholds from them.

#include "core/rehearsal/calibrate.h"

namespace ebbline::rehearsal {

inline constexpr std::size_t statisticCount = triggers::allStatistics.size();
using Limits = std::array<double, statisticCount>;
inline constexpr double mostAlpha = 0.5;

bool alerts(const Peaks& peaks, const Limits& limits);

/// As peaksOf(), of what was written between two moments, both included.
Peaks peaksBetween(const triggers::CourseInput& course, const triggers::Protocol& protocol, const clock::Moment& from,
                   const clock::Moment& until);

/// The peaks of all courses, with an order by each statistic, largest first.
class Cohort {
public:
    explicit Cohort(std::vector<Peaks> peaks);

    const std::vector<Peaks>& peaks() const { return m_peaks; }

    /// Thresholds that a share alpha x shares of the courses exceeds, each counted by its weight.
    Limits limits(double alpha, const Shares& shares, const std::vector<int>& weights) const;
    Limits limits(double alpha, const Shares& shares) const;

    /// Share of the courses that alert.
    double alertRate(const Limits& limits) const;

private:
    std::vector<Peaks> m_peaks;
    std::array<std::vector<std::size_t>, statisticCount> m_order;
};

}  // namespace ebbline::rehearsal
