#include "core/learning/clinics.h"

#include "core/statistics/distributions.h"

#include <algorithm>

namespace ebbline::learning {

std::vector<ClinicCounts> countsByClinic(std::span<const PastCourse> courses)
{
    std::vector<ClinicCounts> counts;
    for (const GroupShare& group : complicationShares(courses, By::clinic))
        counts.push_back({group.group, group.complicated, group.known});
    return counts;
}

Answer<Pool> poolClinics(std::span<const ClinicCounts> clinics)
{
    std::vector<statistics::Counts> known;
    statistics::Counts together{0, 0};
    for (const ClinicCounts& clinic : clinics) {
        if (clinic.known < 0 || clinic.complicated < 0 || clinic.complicated > clinic.known)
            return std::unexpected(NotEnough{Lack::outcomes, 0, fewestCourses});
        if (clinic.known == 0)
            continue;
        known.push_back({clinic.complicated, clinic.known});
        together.events += clinic.complicated;
        together.total += clinic.known;
    }
    if (static_cast<long>(known.size()) < fewestGroups)
        return std::unexpected(NotEnough{Lack::groups, static_cast<long>(known.size()), fewestGroups});
    if (together.total < fewestCourses)
        return std::unexpected(NotEnough{Lack::outcomes, together.total, fewestCourses});

    Pool pool;
    const auto between = statistics::spreadBetween(known);
    if (!between)
        return std::unexpected(NotEnough{Lack::apart});
    pool.between = *between;
    const statistics::Beta common = statistics::updated({0.5, 0.5}, together);
    for (const ClinicCounts& clinic : clinics) {
        const statistics::Beta belief =
            pool.between ? statistics::updated(*pool.between, {clinic.complicated, clinic.known}) : common;
        const auto low = statistics::betaQuantile(0.025, belief.a, belief.b);
        const auto high = statistics::betaQuantile(0.975, belief.a, belief.b);
        if (!low || !high)
            return std::unexpected(NotEnough{Lack::spread});
        pool.clinics.push_back({clinic, shareOf(clinic.complicated, clinic.known), belief.mean(), {*low, *high}});
    }
    return pool;
}

}  // namespace ebbline::learning
