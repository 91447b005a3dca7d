#include "core/bands/band.h"

#include "core/bands/centile.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ebbline::bands {

namespace {

constexpr double leastProbability = 0.0005;  // of the middle of an answer, both ends
constexpr double scaleOffset = 6;            // points; docs/statistics/triggers.md

/// Probability up to the middle of each answer's own share.
std::array<double, 11> middles(const Distribution& distribution)
{
    std::array<double, 11> middle{};
    double below = 0;
    for (std::size_t k = 0; k < middle.size(); ++k) {
        middle[k] = below + distribution[k] / 2;
        below += distribution[k];
    }
    return middle;
}

}  // namespace

int centileOf(const Distribution& distribution, double p)
{
    double cumulative = 0;
    for (int score = 0; score < 10; ++score) {
        cumulative += distribution[static_cast<std::size_t>(score)];
        // Sums of probabilities miss a round figure by a rounding error at most.
        if (cumulative >= p - 1e-12)
            return score;
    }
    return 10;
}

double evenScale(int points)
{
    static const std::array<double, 11> scale = [] {
        std::array<double, 11> made{};
        for (std::size_t k = 0; k < made.size(); ++k)
            made[k] = scaleOffset * std::log(scaleOffset + static_cast<double>(k));
        return made;
    }();
    return scale[static_cast<std::size_t>(std::clamp(points, 0, 10))];
}

Band::Band(Held held)
{
    for (std::size_t row = 0; row < held.table.size(); ++row)
        for (std::size_t day = 0; day < held.table[row].size(); ++day) {
            const Distribution& distribution = held.table[row][day];
            const auto middle = middles(distribution);
            for (std::size_t points = 0; points < middle.size(); ++points)
                held.z[row][day][points] =
                    statistics::normalQuantile(std::clamp(middle[points], leastProbability, 1 - leastProbability))
                        .value_or(0.0);
            for (std::size_t points = 0; points < middle.size(); ++points)
                held.expected[row][day] += distribution[points] * evenScale(static_cast<int>(points));
            const int median = centileOf(distribution, 0.50);
            held.inner[row][day] = {centileOf(distribution, 0.10), median, centileOf(distribution, 0.90)};
            held.outer[row][day] = {centileOf(distribution, 0.03), median, centileOf(distribution, 0.97)};
        }
    m_held = std::make_shared<const Held>(std::move(held));
}

Movements assumedMovements()
{
    // Numbness has no invented cohort either: the middle of the others.
    return {{{{.noise = 0.186, .drift = 0.052, .start = 0.644},    // pain
              {.noise = 0.150, .drift = 0.080, .start = 0.657},    // swelling
              {.noise = 0.150, .drift = 0.049, .start = 0.571},    // bruising
              {.noise = 0.186, .drift = 0.052, .start = 0.644},    // tightness
              {.noise = 0.172, .drift = 0.035, .start = 0.571},    // twinges
              {.noise = 0.172, .drift = 0.040, .start = 0.696},    // puckering
              {.noise = 0.172, .drift = 0.050, .start = 0.644}}},  // numbness
            {.noise = 0.196, .drift = 0.043, .start = 0.348},
            {.noise = 0.237, .drift = 0.205, .start = 2.143}};
}

Result<Band> Band::create(Provenance provenance, Table table, const Movements& movements)
{
    const auto holds = [](const Movement& m) {
        return std::isfinite(m.noise) && m.noise > 0 && std::isfinite(m.drift) && m.drift >= 0
               && std::isfinite(m.start) && m.start >= 0;
    };
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        if (!holds(movements.score[rowOf(symptom)]))
            return fail(Reason::outOfRange, "band: movement of " + std::string(recovery::word(symptom))
                                                + ": want variances, noise above 0");
    if (!holds(movements.sides))
        return fail(Reason::outOfRange, "band: movement of the sides: want variances, noise above 0");
    if (!holds(movements.sums))
        return fail(Reason::outOfRange, "band: movement of the sums: want variances, noise above 0");
    for (const recovery::Symptom symptom : recovery::allSymptoms) {
        for (int day = 0; day <= lastDay; ++day) {
            double sum = 0;
            bool sound = true;
            for (const double p : table[rowOf(symptom)][static_cast<std::size_t>(day)]) {
                sound = sound && std::isfinite(p) && p >= 0;
                sum += p;
            }
            if (!sound || std::abs(sum - 1) > 1e-9)
                return fail(Reason::outOfRange, "band: " + std::string(recovery::word(symptom)) + " on day "
                                                    + std::to_string(day) + " is not a distribution");
        }
    }
    return Band(Held{.provenance = std::move(provenance), .table = table, .movements = movements});
}

bool Band::operator==(const Band& other) const
{
    return m_held == other.m_held
           || (provenance() == other.provenance() && table() == other.table() && movements() == other.movements());
}

const Distribution& Band::at(recovery::Symptom symptom, int day) const
{
    return m_held->table[rowOf(symptom)][dayOf(day)];
}

int Band::centile(recovery::Symptom symptom, int day, double p) const
{
    return centileOf(at(symptom, day), p);
}

double Band::pointsAt(recovery::Symptom symptom, int day, double zScore) const
{
    return pointsAt(symptom, day, std::array{zScore}).front();
}

}  // namespace ebbline::bands
