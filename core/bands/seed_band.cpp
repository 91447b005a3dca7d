#include "core/bands/band.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace ebbline::bands {

namespace {

/// Median and 10th to 90th centile on one day, score points.
struct Anchor {
    int day;
    double median;
    double low;
    double high;
};

using Anchors = std::array<Anchor, 9>;

/// All of it an assumption, made to respect published anchors; docs/clinical/seed_band.md names them.
/// Rows in the order of recovery::allSymptoms.
constexpr std::array<Anchors, 7> assumed{{
    // pain
    {{{0, 3, 1, 6}, {1, 3, 1, 6}, {2, 3, 1, 5}, {3, 2, 0, 5}, {5, 1, 0, 4}, {7, 1, 0, 3}, {10, 0, 0, 2}, {14, 0, 0, 1}, {21, 0, 0, 1}}},
    // swelling
    {{{0, 3, 1, 5}, {1, 4, 2, 6}, {2, 4, 2, 6}, {3, 4, 1, 6}, {5, 2, 0, 4}, {7, 1, 0, 3}, {10, 1, 0, 2}, {14, 0, 0, 1}, {21, 0, 0, 1}}},
    // bruising
    {{{0, 1, 0, 3}, {1, 3, 0, 5}, {2, 3, 0, 6}, {3, 3, 0, 6}, {5, 2, 0, 5}, {7, 2, 0, 4}, {10, 1, 0, 3}, {14, 0, 0, 1}, {21, 0, 0, 0}}},
    // tightness
    {{{0, 4, 2, 6}, {1, 4, 2, 6}, {2, 4, 2, 6}, {3, 3, 1, 6}, {5, 3, 1, 5}, {7, 2, 0, 4}, {10, 1, 0, 3}, {14, 1, 0, 2}, {21, 0, 0, 1}}},
    // twinges
    {{{0, 1, 0, 4}, {1, 1, 0, 4}, {2, 1, 0, 4}, {3, 1, 0, 4}, {5, 1, 0, 4}, {7, 1, 0, 3}, {10, 0, 0, 3}, {14, 0, 0, 2}, {21, 0, 0, 1}}},
    // puckering
    {{{0, 3, 0, 5}, {1, 3, 0, 5}, {2, 3, 0, 5}, {3, 2, 0, 4}, {5, 2, 0, 4}, {7, 1, 0, 3}, {10, 1, 0, 3}, {14, 0, 0, 2}, {21, 0, 0, 1}}},
    // numbness: no published anchor at all
    {{{0, 2, 0, 5}, {1, 2, 0, 5}, {2, 2, 0, 5}, {3, 1, 0, 4}, {5, 1, 0, 4}, {7, 1, 0, 3}, {10, 1, 0, 3}, {14, 0, 0, 2}, {21, 0, 0, 2}}},
}};

constexpr double tenPercent = 1.2815515655446004;  // normal quantile of 0.9
constexpr double leastSpread = 0.3;                // score points
constexpr double anyScore = 0.01;                  // share spread evenly: no answer is impossible

/// Linear between the anchored days, constant after the last.
Anchor onDay(const Anchors& anchors, int day)
{
    if (day >= anchors.back().day)
        return anchors.back();
    const auto after = std::find_if(anchors.begin(), anchors.end(), [&](const Anchor& a) { return a.day > day; });
    const Anchor& next = *after;
    const Anchor& last = *std::prev(after);
    const double share = static_cast<double>(day - last.day) / (next.day - last.day);
    const auto between = [&](double from, double to) { return from + share * (to - from); };
    return {day, between(last.median, next.median), between(last.low, next.low), between(last.high, next.high)};
}

/// A normal law with one spread below the median and another above it, rounded to whole scores:
/// its 10th, 50th and 90th centiles are the anchor's.
Distribution distributionOf(const Anchor& anchor)
{
    const double below = std::max(leastSpread, (anchor.median - anchor.low) / tenPercent);
    const double above = std::max(leastSpread, (anchor.high - anchor.median) / tenPercent);
    const auto cumulative = [&](double x) {
        return statistics::normalCdf((x - anchor.median) / (x < anchor.median ? below : above));
    };
    Distribution distribution{};
    double sum = 0;
    double reached = 0;
    for (std::size_t k = 0; k < distribution.size(); ++k) {
        const double upTo = k == 10 ? 1.0 : cumulative(static_cast<double>(k) + 0.5);
        distribution[k] = (1 - anyScore) * (upTo - reached) + anyScore / 11;
        reached = upTo;
        sum += distribution[k];
    }
    for (double& p : distribution)
        p /= sum;
    return distribution;
}

Band made()
{
    Band::Table table{};
    for (std::size_t symptom = 0; symptom < assumed.size(); ++symptom)
        for (int day = 0; day <= lastDay; ++day)
            table[symptom][static_cast<std::size_t>(day)] = distributionOf(onDay(assumed[symptom], day));
    Result<Band> band = Band::create(Provenance{"seed-1", 0, true, {}, {}}, table);
    if (!band)
        std::abort();  // the table above is a constant of this program
    return *band;
}

}  // namespace

const Band& seedBand()
{
    static const Band band = made();
    return band;
}

}  // namespace ebbline::bands
