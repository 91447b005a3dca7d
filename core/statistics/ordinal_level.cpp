#include "core/statistics/ordinal_level.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ebbline::statistics {

namespace {

constexpr double furthest = 6;      // standard deviations of the level; beyond lie 2e-9
constexpr double finest = 0.02;     // steps of the grid: nothing narrower is told apart
constexpr double coarsest = 0.1;
constexpr double stepShare = 0.4;   // of the narrowest curve that is summed up, where the grid may be so fine
constexpr double kernelReach = 7;   // standard deviations
constexpr double impossible = 1e-200;

/// Standard deviation of what comes to a standardised level that keeps so much of itself.
double freshSpread(double kept)
{
    return std::sqrt(std::max(0.0, 1 - kept * kept));
}

double stepOf(const OrdinalLevelModel& model)
{
    double narrowest = coarsest / stepShare;
    if (model.share > 0)
        narrowest = std::min(narrowest, std::sqrt((1 - model.share) / model.share));
    if (model.kept < 1)
        narrowest = std::min(narrowest, std::max(finest, freshSpread(model.kept)));
    return std::clamp(stepShare * narrowest, finest, coarsest);
}

void normalise(std::vector<double>& weights)
{
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    for (double& weight : weights)
        weight /= total;
}

bool areShares(std::span<const double> shares)
{
    double sum = 0;
    for (const double share : shares) {
        if (!std::isfinite(share) || share < 0)
            return false;
        sum += share;
    }
    return std::abs(sum - 1) < 1e-9;
}

double edgeAt(double below)
{
    constexpr double infinity = std::numeric_limits<double>::infinity();
    return below <= 0 ? -infinity : below >= 1 ? infinity : normalQuantile(below).value_or(below < 0.5 ? -infinity : infinity);
}

/// P(low < a standard normal variable < high), without losing what is small in either tail.
double between(double low, double high)
{
    return low > 0 ? normalCdf(-low) - normalCdf(-high) : normalCdf(high) - normalCdf(low);
}

}  // namespace

Result<OrdinalLevelFilter> OrdinalLevelFilter::create(const OrdinalLevelModel& model)
{
    if (!(model.share >= 0 && model.share < 1))
        return fail(Reason::outOfRange, "share: want 0 <= share < 1");
    if (!(model.kept >= 0 && model.kept <= 1))
        return fail(Reason::outOfRange, "kept: want 0..1");
    return OrdinalLevelFilter(model);
}

OrdinalLevelFilter::OrdinalLevelFilter(const OrdinalLevelModel& model)
    : m_model{std::min(model.share, 1 / (1 + finest * finest)), model.kept}, m_step(stepOf(m_model))
{
    const auto half = static_cast<std::size_t>(std::ceil(furthest / m_step));
    m_before.resize(2 * half + 1);
    for (std::size_t i = 0; i < m_before.size(); ++i)
        m_before[i] = std::exp(-levelAt(i) * levelAt(i) / 2);
    normalise(m_before);
    m_now = m_before;
}

/// In standard deviations of the level.
double OrdinalLevelFilter::levelAt(std::size_t place) const
{
    return m_step * (static_cast<double>(place) - static_cast<double>(m_before.size() / 2));
}

/// P(low < u < high) if the level is there.
double OrdinalLevelFilter::fit(std::size_t place, double low, double high) const
{
    const double mean = std::sqrt(m_model.share) * levelAt(place), noise = std::sqrt(1 - m_model.share);
    return between((low - mean) / noise, (high - mean) / noise);
}

Done OrdinalLevelFilter::observe(std::span<const double> shares, std::size_t answer)
{
    if (answer >= shares.size())
        return fail(Reason::outOfRange, "answer: has no share");
    if (!areShares(shares))
        return fail(Reason::outOfRange, "shares: want none below 0, and a sum of 1");
    double low = 0;
    for (std::size_t k = 0; k < answer; ++k)
        low += shares[k];
    double high = std::min(1.0, low + shares[answer]);
    if (high - low < rarest) {
        const double middle = std::clamp((low + high) / 2, rarest / 2, 1 - rarest / 2);
        low = middle - rarest / 2;
        high = middle + rarest / 2;
    }
    if (answer + 1 == shares.size())
        high = 1;
    const double lowEdge = edgeAt(low), highEdge = edgeAt(high);
    double total = 0;
    std::vector<double> fits(m_now.size());
    for (std::size_t i = 0; i < fits.size(); ++i) {
        fits[i] = fit(i, lowEdge, highEdge);
        total += m_now[i] * fits[i];
    }
    if (!(total > impossible))
        m_now = m_before;
    for (std::size_t i = 0; i < fits.size(); ++i)
        m_now[i] *= fits[i];
    normalise(m_now);
    return {};
}

void OrdinalLevelFilter::advance(int steps)
{
    if (steps <= 0)
        return;
    steps += m_pending;
    const double kept = std::pow(m_model.kept, steps);
    if (freshSpread(kept) <= finest) {
        m_pending = steps;
        return;
    }
    m_pending = 0;
    if (m_prepared != steps)
        prepare(steps);
    const std::size_t width = 2 * m_reach + 1;
    std::vector<double> next(m_now.size());
    const auto middle = static_cast<double>(m_now.size() / 2);
    for (std::size_t from = 0; from < m_now.size(); ++from) {
        const auto centre = static_cast<std::size_t>(std::lround(middle + kept * levelAt(from) / m_step));
        const std::size_t first = centre > m_reach ? centre - m_reach : 0;
        const std::size_t last = std::min(centre + m_reach, m_now.size() - 1);
        for (std::size_t to = first; to <= last; ++to)
            next[to] += m_now[from] * m_kernel[from * width + (to + m_reach - centre)];
    }
    m_now = std::move(next);
}

/// What lies on the grid of where each place may move to, as probabilities.
void OrdinalLevelFilter::prepare(int steps)
{
    const double kept = std::pow(m_model.kept, steps), fresh = freshSpread(kept);
    m_reach = std::min(m_now.size(), static_cast<std::size_t>(std::ceil(kernelReach * fresh / m_step)));
    const std::size_t width = 2 * m_reach + 1;
    m_kernel.assign(m_now.size() * width, 0);
    const auto middle = static_cast<double>(m_now.size() / 2);
    for (std::size_t from = 0; from < m_now.size(); ++from) {
        const auto centre = static_cast<std::size_t>(std::lround(middle + kept * levelAt(from) / m_step));
        double total = 0;
        for (std::size_t k = 0; k < width; ++k) {
            if (centre + k < m_reach || centre + k - m_reach >= m_now.size())
                continue;
            const double apart = (levelAt(centre + k - m_reach) - kept * levelAt(from)) / fresh;
            total += m_kernel[from * width + k] = std::exp(-apart * apart / 2);
        }
        for (std::size_t k = 0; k < width; ++k)
            m_kernel[from * width + k] /= total;
    }
    m_prepared = steps;
}

std::vector<double> OrdinalLevelFilter::likely(std::span<const double> shares) const
{
    std::vector<double> answers(shares.size());
    if (answers.empty())
        return answers;
    double below = 0;
    double low = edgeAt(0);
    for (std::size_t k = 0; k < shares.size(); ++k) {
        below += shares[k];
        const double high = k + 1 == shares.size() ? edgeAt(1) : edgeAt(below);
        for (std::size_t i = 0; shares[k] > 0 && i < m_now.size(); ++i)
            answers[k] += m_now[i] * fit(i, low, high);
        low = high;
    }
    const double total = std::accumulate(answers.begin(), answers.end(), 0.0);
    if (total > 0)
        for (double& answer : answers)
            answer /= total;
    return answers;
}

}  // namespace ebbline::statistics
