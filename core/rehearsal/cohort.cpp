#include "core/rehearsal/cohort.h"

#include "core/triggers/course_watch.h"

#include <algorithm>
#include <numeric>

namespace ebbline::rehearsal {

bool alerts(const Peaks& peaks, const Limits& limits)
{
    if (peaks.byRule)
        return true;
    for (std::size_t j = 0; j < statisticCount; ++j)
        if (peaks.values[j] > limits[j])
            return true;
    return false;
}

Peaks peaksBetween(const triggers::CourseInput& course, const triggers::Protocol& protocol, const clock::Moment& from,
                   const clock::Moment& until)
{
    Peaks peaks;
    peaks.values.fill(never);
    triggers::CourseWatch watch(course, protocol);
    for (const triggers::Observation* observation : triggers::inOrder(course, until))
        for (const triggers::Candidate& candidate : watch.take(*observation)) {
            if (observation->at.at < from.at)
                continue;
            if (candidate.statistic) {
                double& peak = peaks.values[static_cast<std::size_t>(*candidate.statistic)];
                peak = std::max(peak, candidate.value);
            } else {
                peaks.byRule = peaks.byRule || candidate.urgency != recovery::Urgency::atReview;
            }
        }
    return peaks;
}

Peaks peaksOf(const triggers::CourseInput& course, const triggers::Protocol& protocol, const clock::Moment& until)
{
    clock::Moment from = course.treated;
    for (const triggers::Observation& observation : course.observations)
        from.at = std::min(from.at, observation.at.at);
    return peaksBetween(course, protocol, from, until);
}

Cohort::Cohort(std::vector<Peaks> peaks) : m_peaks(std::move(peaks))
{
    for (std::size_t j = 0; j < statisticCount; ++j) {
        m_order[j].resize(m_peaks.size());
        std::iota(m_order[j].begin(), m_order[j].end(), std::size_t{0});
        std::stable_sort(m_order[j].begin(), m_order[j].end(), [&](std::size_t a, std::size_t b) {
            return m_peaks[a].values[j] > m_peaks[b].values[j];
        });
    }
}

Limits Cohort::limits(double alpha, const Shares& shares, const std::vector<int>& weights) const
{
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    Limits limits{};
    for (std::size_t j = 0; j < statisticCount; ++j) {
        const double allowed = alpha * shares[j] * total;
        double above = 0;
        limits[j] = m_peaks[m_order[j].back()].values[j];
        for (const std::size_t course : m_order[j]) {
            above += weights[course];
            if (above > allowed) {
                limits[j] = m_peaks[course].values[j];
                break;
            }
        }
    }
    return limits;
}

Limits Cohort::limits(double alpha, const Shares& shares) const
{
    const double total = static_cast<double>(m_peaks.size());
    Limits limits{};
    for (std::size_t j = 0; j < statisticCount; ++j) {
        const auto rank = static_cast<std::size_t>(alpha * shares[j] * total);
        limits[j] = m_peaks[m_order[j][std::min(rank, m_peaks.size() - 1)]].values[j];
    }
    return limits;
}

double Cohort::alertRate(const Limits& limits) const
{
    const auto count = std::count_if(m_peaks.begin(), m_peaks.end(), [&](const Peaks& peaks) { return alerts(peaks, limits); });
    return static_cast<double>(count) / static_cast<double>(m_peaks.size());
}

}  // namespace ebbline::rehearsal
