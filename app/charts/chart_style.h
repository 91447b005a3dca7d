#pragma once
/// \file
/// Colours, weights and text size of a chart. On a screen they come from the theme; on paper they
/// are black and greys, because many clinics print without colour.

#include <QColor>
#include <QFont>

namespace ebbline::charts {

struct ChartStyle {
    QColor ink{Qt::black};
    QColor inkSoft{Qt::darkGray};
    QColor line{Qt::gray};      ///< axes and grid
    QColor sand{Qt::lightGray};  ///< the band's ground
    QColor bandEdge{Qt::gray};
    QColor left{Qt::black};
    QColor right{Qt::black};
    QColor paper{Qt::white};    ///< inside of hollow markers
    QFont font;                 ///< sized in pixels, so that paper and screen agree
    qreal curveWidth = 2;
    qreal markerSize = 9;

    bool operator==(const ChartStyle&) const = default;
};

/// Black, and greys that survive a copier.
ChartStyle paperStyle(const QFont& font);

}  // namespace ebbline::charts
