#pragma once
/// \file
/// Two techniques side by side: complications and times to resolution, with what the numbers could not
/// have shown. Patients were chosen for a technique, not drawn by lot: whatever comes out is a
/// comparison, not proof. docs/statistics/learning.md.

#include "core/learning/resolution.h"
#include "core/learning/shares.h"
#include "core/statistics/two_proportions.h"

#include <array>
#include <span>

namespace ebbline::learning {

/// Goes beside every comparison, on every screen and sheet and in every file.
inline constexpr std::string_view caution = "comparison, not proof";

inline constexpr double wantedPower = 0.8;

struct ShareComparison {
    statistics::Difference difference;  ///< first minus second; Newcombe, 95 %
    std::optional<double> probability;  ///< Fisher's exact test, two-sided; none: all ended alike, and it says nothing
    double firstLower;        ///< P(the first is truly the lower), Jeffreys' priors
    double reference;         ///< (complicated + 1/2) / (known + 1) of both together: never a zero
    double powerForDouble;    ///< how often twice the reference would be found beside it, 0..1
    std::optional<double> smallestFound;  ///< share beside the reference that is found with wantedPower; none: not even 1
};

struct TimeComparison {
    Mean first;   ///< restricted means, days
    Mean second;
    double difference;   ///< first minus second, days
    double low;          ///< 95 %, normal
    double high;
    double probability;  ///< log-rank
    double chiSquare;
    double smallestFound;  ///< difference in days, either way, that is found with wantedPower
};

struct Comparison {
    GroupShare first;
    GroupShare second;
    Answer<ShareComparison> shares = std::unexpected(NotEnough{Lack::outcomes});
    struct Symptom {
        recovery::Symptom symptom = recovery::Symptom::pain;
        Answer<TimeComparison> times = std::unexpected(NotEnough{Lack::courses});
    };
    /// In the order of recovery::allSymptoms. Probabilities are those of each by itself: among seven,
    /// one below 0.05 is common if nothing differs.
    std::array<Symptom, 7> symptoms{};
};

/// Courses of every other technique are left out. Exchanging the names changes signs and sides only.
Comparison compareTechniques(std::span<const PastCourse> courses, const std::string& first, const std::string& second);

/// The same for two groups of a way.
Comparison compareWays(std::span<const PastCourse> courses, Way way, const std::string& first, const std::string& second);

/// Groups of a way with their courses, most first; without the unknown and the mixed, which say nothing.
std::vector<GroupShare> groupsOf(std::span<const PastCourse> courses, Way way);

Answer<ShareComparison> compareShares(const GroupShare& first, const GroupShare& second);
Answer<TimeComparison> compareTimes(std::span<const statistics::Followed> first,
                                    std::span<const statistics::Followed> second);

}  // namespace ebbline::learning
