#pragma once
/// \file
/// What a line drawn on the chart most likely means: a side, a zone, and whether it ends short of
/// the zone that moves. Suggestions that the practitioner corrects, never conclusions.

#include "app/face/face_art.h"

namespace ebbline::face {

struct Hint {
    recovery::Side side;
    recovery::Zone zone;
    recovery::Ending ending;
    std::optional<Caution> endsIn;   ///< the end point lies in this caution area
    bool crossesNotch = false;       ///< the line comes within the notch area
};

/// \pre both points lie inside the chart.
Hint hintFor(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end);

/// Moves a point into the chart's frame.
recovery::ChartPoint clampedToChart(double x, double y);

}  // namespace ebbline::face
