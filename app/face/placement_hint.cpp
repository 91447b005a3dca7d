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

double squaredDistance(const recovery::ChartPoint& point, const ZoneSpot& spot)
{
    return (point.x - spot.x) * (point.x - spot.x) + (point.y - spot.y) * (point.y - spot.y);
}

struct Line {
    recovery::ChartView view;
    recovery::ChartPoint entry;
    recovery::ChartPoint end;
};

recovery::ChartPoint mirrored(const recovery::ChartPoint& point)
{
    return {recovery::chartWidth - point.x, point.y};
}

/// A line of the patient's right as its mirror image on the left.
Line mirrored(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end)
{
    const auto opposite =
        view == recovery::ChartView::rightOblique ? recovery::ChartView::leftOblique : view;
    return {opposite, mirrored(entry), mirrored(end)};
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
    // Both sides are judged on the left's drawing: a line on the very edge of an area, which floating
    // point may put on either side of it, then gets the same answer as its mirror image.
    const Line judged = hint.side == recovery::Side::left ? Line{view, entry, end} : mirrored(view, entry, end);
    const auto at = [&judged](double part) {
        return recovery::ChartPoint{judged.entry.x + (judged.end.x - judged.entry.x) * part,
                                    judged.entry.y + (judged.end.y - judged.entry.y) * part};
    };

    // A thread holds what lies near its far end: judge the zone nine tenths of the way.
    const auto far = at(0.9);
    const auto& spots = judged.view == recovery::ChartView::front ? frontSpots : obliqueSpots;
    hint.zone = std::min_element(spots.begin(), spots.end(), [&far](const auto& a, const auto& b) {
                    return squaredDistance(far, a) < squaredDistance(far, b);
                })->zone;

    bool throughMovingZone = false;
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i) {
        const auto caution = cautionAt(judged.view, at(static_cast<double>(i) / steps));
        throughMovingZone = throughMovingZone || caution == Caution::movingZone;
        hint.crossesNotch = hint.crossesNotch || caution == Caution::mandibularNotch;
    }
    hint.ending = throughMovingZone ? recovery::Ending::pastMovingZone : recovery::Ending::shortOfMovingZone;
    hint.endsIn = cautionAt(judged.view, judged.end);
    return hint;
}

}  // namespace ebbline::face
