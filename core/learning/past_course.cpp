#include "core/learning/past_course.h"

#include <algorithm>

namespace ebbline::learning {

std::string techniqueOf(const recovery::Treatment& treatment)
{
    std::string technique;
    for (const recovery::Placement& placement : treatment.placements) {
        std::string one(recovery::word(placement.material));
        one.append(" ").append(recovery::word(placement.form));
        if (!technique.empty() && technique != one)
            return "mixed";
        technique = std::move(one);
    }
    return technique;
}

std::vector<std::string> zonesOf(const recovery::Treatment& treatment)
{
    std::vector<std::string> zones;
    for (const recovery::Zone zone : recovery::allZones)
        if (std::any_of(treatment.placements.begin(), treatment.placements.end(),
                        [&](const recovery::Placement& placement) { return placement.zone == zone; }))
            zones.emplace_back(recovery::word(zone));
    return zones;
}

std::vector<std::string> lotsOf(const recovery::Treatment& treatment)
{
    std::vector<std::string> lots;
    for (const recovery::Placement& placement : treatment.placements)
        if (!placement.lot.empty() && std::find(lots.begin(), lots.end(), placement.lot) == lots.end())
            lots.push_back(placement.lot);
    return lots;
}

}  // namespace ebbline::learning
