#pragma once
/// \file
/// Our line drawing of a face and neck, as paths in the chart's own frame (recovery::ChartPoint:
/// 400 wide, 560 high): front, and the two obliques, of which one is the mirror of the other.
///
/// The drawing lives in art/*.svg, so that an illustrator can open it; only absolute M, L, C and Z
/// are read. On the front view the patient's left is on the right of the picture.

#include "core/recovery/treatment.h"

#include <QPainterPath>
#include <QString>

#include <optional>
#include <vector>

namespace ebbline::face {

struct Stroke {
    QPainterPath path;
    bool fold = false;  ///< a thin line: folds, the hairline, the neck muscle
};

/// Where care is due. Common practice, no source.
enum class Caution {
    movingZone,        ///< moves with speech and chewing
    mandibularNotch,   ///< facial artery and marginal nerve cross the jaw's edge near here
};

struct CautionArea {
    Caution what;
    QPainterPath outline;
};

struct FaceArt {
    std::vector<Stroke> strokes;
    std::vector<CautionArea> cautions;
};

/// The drawing of a view. The same object for the life of the program.
const FaceArt& artOf(recovery::ChartView view);

/// Reads the path data of an SVG `d` attribute. Empty if anything but absolute M, L, C, Z or a
/// broken number stands in it.
std::optional<QPainterPath> pathFromData(const QString& data);

/// The caution area that holds a point, the notch before the moving zone; empty if none does.
std::optional<Caution> cautionAt(recovery::ChartView view, const recovery::ChartPoint& point);

}  // namespace ebbline::face
