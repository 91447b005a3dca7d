#include "core/learning/past_course.h"

#include <algorithm>

namespace ebbline::learning {

namespace {

/// What all placements have in common.
template <typename Name>
std::string common(const recovery::Treatment& treatment, const Name& nameOf)
{
    std::string group;
    for (const recovery::Placement& placement : treatment.placements) {
        std::string one = nameOf(placement);
        if (!group.empty() && group != one)
            return "mixed";
        group = std::move(one);
    }
    return group;
}

}  // namespace

std::string_view word(Way way)
{
    constexpr std::array<std::string_view, allWays.size()> words{"ending", "gauge", "epinephrine", "area", "threads"};
    return words[static_cast<std::size_t>(way)];
}

std::string techniqueOf(const recovery::Treatment& treatment)
{
    return common(treatment, [](const recovery::Placement& placement) {
        return std::string(recovery::word(placement.material)).append(" ").append(recovery::word(placement.form));
    });
}

std::string groupOf(const recovery::Treatment& treatment, Way way)
{
    using recovery::Placement;
    switch (way) {
    case Way::ending:
        return common(treatment, [](const Placement& placement) {
            return std::string(placement.ending == recovery::Ending::shortOfMovingZone ? "short-of-moving-zone" : "past-moving-zone");
        });
    case Way::gauge:
        return common(treatment, [](const Placement& placement) { return std::to_string(placement.gauge); });
    case Way::epinephrine:
        // What a solution held says nothing of where it went.
        if (std::ranges::any_of(treatment.placements, [](const Placement& placement) { return !placement.epinephrineAt; }))
            return {};
        return common(treatment, [](const Placement& placement) {
            const bool there = placement.epinephrineAt == recovery::EpinephrineAt::entryPoint
                               || placement.epinephrineAt == recovery::EpinephrineAt::both;
            return std::string(there ? "with" : "without");
        });
    case Way::area:
        return common(treatment, [](const Placement& placement) {
            const bool neck = placement.zone == recovery::Zone::submental || placement.zone == recovery::Zone::neck;
            return std::string(neck ? "neck" : "face");
        });
    case Way::threads: break;
    }
    return techniqueOf(treatment);
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

std::vector<PackLot> lotsOf(const recovery::Treatment& treatment)
{
    std::vector<PackLot> lots;
    for (const recovery::Placement& placement : treatment.placements) {
        PackLot lot{placement.lot, placement.article.value_or(std::string())};
        if (!lot.printed.empty() && std::find(lots.begin(), lots.end(), lot) == lots.end())
            lots.push_back(std::move(lot));
    }
    return lots;
}

}  // namespace ebbline::learning
