#pragma once
/// \file
/// The expected distribution of a score by symptom and day of recovery.
///
/// An ordinal distribution over the eleven answers 0..10 for each symptom and day: scores are
/// discrete and pile up at zero, so no continuous law is fitted. Method, centile convention and
/// z: docs/statistics/band.md.

#include "core/recovery/symptom.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ebbline::bands {

inline constexpr int lastDay = 28;           ///< bands reach from day 0 to this day
inline constexpr int fewestCourses = 30;     ///< below: median and 10-90 only, and the words "seed band"

using Distribution = std::array<double, 11>;  ///< probabilities of scores 0..10, sum 1

/// Where a band came from; shown wherever it is drawn.
struct Provenance {
    std::string version;        ///< e.g. "seed-1", "clinic-2027-03-01"
    int courses = 0;            ///< courses behind it; 0 for the seed band
    bool assumption = true;     ///< no data of the clinic's own: say so
    std::string learnedOn;      ///< ISO date, empty for the seed
    std::string hash;           ///< hex BLAKE2b-256 of what stands behind it (core/bands/versions.h)
    bool operator==(const Provenance&) const = default;
};

/// How z moves in an ordinary course, as a level that wanders and is seen through noise
/// (core/statistics/local_level.h). Variances of z; drift is per day.
struct Movement {
    double noise;  ///< of one reading, > 0
    double drift;  ///< of the level over a day, >= 0
    double start;  ///< of the level between patients, >= 0
    bool operator==(const Movement&) const = default;
};

struct Movements {
    std::array<Movement, 7> score;  ///< by symptom, in the order of recovery::allSymptoms
    Movement sides;                 ///< of the difference between the sides (docs/statistics/triggers.md)
    Movement sums;                  ///< of both sides together against what is expected of them
    bool operator==(const Movements&) const = default;
};

/// Before any data: maximum likelihood over an invented cohort, so an assumption as well.
Movements assumedMovements();

/// Points on a scale on which scores are about equally noisy at any level: 6 ln(6 + points). The
/// movements of the sides are those of differences and sums on this scale.
double evenScale(int points);

/// Lowest-score convention: the smallest score whose cumulative probability reaches p.
struct Range {
    int low;
    int median;
    int high;
    bool operator==(const Range&) const = default;
};

/// A value whose copies share what they hold: every course carries the band that its patient was given.
class Band {
public:
    /// Every symptom at every day 0..lastDay.
    using Table = std::array<std::array<Distribution, lastDay + 1>, 7>;

    /// \returns Reason::outOfRange naming symptom and day unless every distribution is finite,
    ///          non-negative and sums to 1, and every movement lies in its bounds.
    static Result<Band> create(Provenance provenance, Table table, const Movements& movements = assumedMovements());

    // Copies cost nothing and leave no empty band behind, so there is no moving.
    Band(const Band&) = default;
    Band& operator=(const Band&) = default;
    ~Band() = default;

    const Provenance& provenance() const { return m_held->provenance; }
    const Movements& movements() const { return m_held->movements; }
    const Movement& movement(recovery::Symptom symptom) const { return m_held->movements.score[rowOf(symptom)]; }

    /// Days outside 0..lastDay take the nearest day.
    const Distribution& at(recovery::Symptom symptom, int day) const;

    int centile(recovery::Symptom symptom, int day, double p) const;  ///< 0 < p < 1
    /// 10th, 50th, 90th
    Range inner(recovery::Symptom symptom, int day) const { return m_held->inner[rowOf(symptom)][dayOf(day)]; }
    /// 3rd, 50th, 97th
    Range outer(recovery::Symptom symptom, int day) const { return m_held->outer[rowOf(symptom)][dayOf(day)]; }

    /// Normal score at the middle of the answer's own probability, clipped to
    /// Phi^-1(0.0005) .. Phi^-1(0.9995).
    double z(recovery::Symptom symptom, int day, int points) const
    {
        return m_held->z[rowOf(symptom)][dayOf(day)][static_cast<std::size_t>(std::clamp(points, 0, 10))];
    }

    /// Inverse of z on a continuous scale 0..10, for drawing: linear in z between two answers.
    double pointsAt(recovery::Symptom symptom, int day, double zScore) const;

    /// The same for several at once, found in one pass. \pre rising
    template <std::size_t many>
    std::array<double, many> pointsAt(recovery::Symptom symptom, int day, const std::array<double, many>& rising) const
    {
        const Distribution& z = m_held->z[rowOf(symptom)][dayOf(day)];
        std::array<double, many> points{};
        std::size_t above = 0;  ///< the first answer that is not below
        for (std::size_t i = 0; i < many; ++i) {
            while (above < z.size() && z[above] < rising[i])
                ++above;
            if (above == z.size())
                points[i] = static_cast<double>(z.size() - 1);
            else if (above > 0)
                points[i] = static_cast<double>(above - 1) + (rising[i] - z[above - 1]) / (z[above] - z[above - 1]);
        }
        return points;
    }

    /// Mean of the ordinary scores on the even scale.
    double expected(recovery::Symptom symptom, int day) const { return m_held->expected[rowOf(symptom)][dayOf(day)]; }

    const Table& table() const { return m_held->table; }

    bool operator==(const Band& other) const;

private:
    struct Held {
        Provenance provenance;
        Table table;
        Movements movements;
        // Computed once: triggers and curves ask for them thousands of times.
        Table z{};  ///< of every answer
        std::array<std::array<double, lastDay + 1>, 7> expected{};
        std::array<std::array<Range, lastDay + 1>, 7> inner{};
        std::array<std::array<Range, lastDay + 1>, 7> outer{};
    };
    explicit Band(Held held);
    static std::size_t rowOf(recovery::Symptom symptom) { return static_cast<std::size_t>(symptom) - 1; }
    static std::size_t dayOf(int day) { return static_cast<std::size_t>(std::clamp(day, 0, lastDay)); }
    std::shared_ptr<const Held> m_held;
};

/// The band before any data: an assumption, made to respect the published anchors listed in
/// docs/clinical/seed_band.md.
const Band& seedBand();

}  // namespace ebbline::bands
