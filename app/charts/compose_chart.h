#pragma once
/// \file
/// Fills a chart of the charting library with a picture: the same one for the screen and for
/// paper. This file, its source and CurveChart.qml are all that knows the library.

#include "app/charts/chart_style.h"
#include "app/charts/curve_picture.h"

#include <QList>
#include <QMarginsF>

class QChart;
class QPainter;
class QRectF;

namespace ebbline::charts {

/// Room around the plot for the labels, pixels. Given to the library, which else leaves labels out.
QMarginsF plotMargins(const ChartStyle& style);

/// Replaces everything in the chart.
void composeChart(QChart& chart, const CurvePicture& picture, const ChartStyle& style);

/// Paints the chart and its events as vectors. `area` in the painter's units, of which
/// `unitsPerPixel` make one pixel of the style's sizes.
void paintChart(QPainter& painter, const QRectF& area, double unitsPerPixel, const CurvePicture& picture,
                const QList<Event>& events, const ChartStyle& style);

}  // namespace ebbline::charts
