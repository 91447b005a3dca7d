#include "app/face/placement_hint.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

namespace ebbline::face {

namespace {

struct ZoneSpot {
    recovery::Zone zone;
    double x;
    double y;
};

using recovery::Zone;

// Middles of the zones on our drawing, for the patient's left.
constexpr std::array frontSpots{
    ZoneSpot{Zone::brow, 258, 174},       ZoneSpot{Zone::temple, 298, 172},
    ZoneSpot{Zone::midface, 256, 246},    ZoneSpot{Zone::cheek, 284, 278},
    ZoneSpot{Zone::nasolabial, 246, 296}, ZoneSpot{Zone::marionette, 251, 352},
    ZoneSpot{Zone::jawline, 276, 346},    ZoneSpot{Zone::submental, 212, 412},
    ZoneSpot{Zone::neck, 244, 446}};
constexpr std::array obliqueSpots{
    ZoneSpot{Zone::brow, 206, 176},       ZoneSpot{Zone::temple, 264, 178},
    ZoneSpot{Zone::midface, 218, 246},    ZoneSpot{Zone::cheek, 254, 280},
    ZoneSpot{Zone::nasolabial, 194, 298}, ZoneSpot{Zone::marionette, 202, 352},
    ZoneSpot{Zone::jawline, 248, 352},    ZoneSpot{Zone::submental, 194, 406},
    ZoneSpot{Zone::neck, 250, 440}};

double squaredDistance(double x, double y, const ZoneSpot& spot)
{
    return (x - spot.x) * (x - spot.x) + (y - spot.y) * (y - spot.y);
}

}  // namespace

recovery::ChartPoint clampedToChart(double x, double y)
{
    return {std::clamp(x, 0.0, recovery::chartWidth), std::clamp(y, 0.0, recovery::chartHeight)};
}

Hint hintFor(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end)
{
    Hint hint{};
    const double middle = (entry.x + end.x) / 2;
    switch (view) {
    case recovery::ChartView::front:
        hint.side = middle >= recovery::chartWidth / 2 ? recovery::Side::left : recovery::Side::right;
        break;
    case recovery::ChartView::leftOblique:
        hint.side = recovery::Side::left;
        break;
    case recovery::ChartView::rightOblique:
        hint.side = recovery::Side::right;
        break;
    }

    // A thread holds what lies near its far end: judge the zone nine tenths of the way.
    constexpr double farPart = 0.9;
    double x = entry.x + (end.x - entry.x) * farPart;
    const double y = entry.y + (end.y - entry.y) * farPart;
    if (hint.side == recovery::Side::right) {
        x = recovery::chartWidth - x;
    }
    const auto& spots = view == recovery::ChartView::front ? frontSpots : obliqueSpots;
    hint.zone = std::min_element(spots.begin(), spots.end(), [&](const auto& a, const auto& b) {
                    return squaredDistance(x, y, a) < squaredDistance(x, y, b);
                })->zone;

    bool throughMovingZone = false;
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i) {
        const double part = static_cast<double>(i) / steps;
        const auto caution = cautionAt(view, {entry.x + (end.x - entry.x) * part, entry.y + (end.y - entry.y) * part});
        throughMovingZone = throughMovingZone || caution == Caution::movingZone;
        hint.crossesNotch = hint.crossesNotch || caution == Caution::mandibularNotch;
    }
    hint.ending = throughMovingZone ? recovery::Ending::pastMovingZone : recovery::Ending::shortOfMovingZone;
    hint.endsIn = cautionAt(view, end);
    return hint;
}

}  // namespace ebbline::face
