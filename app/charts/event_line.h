#pragma once
/// \file
/// The line under the time axis: what happened when, as labelled ticks. Labels that would run
/// into one another go to the next row; what does not fit any more keeps its tick. Quiet events find their
/// place last, and in the first row alone.

#include "app/charts/chart_style.h"
#include "app/charts/curve_picture.h"

#include <QRectF>

class QPainter;

namespace ebbline::charts {

/// Where a label is written.
struct EventPlace {
    double tick;     ///< x of the tick
    QRectF box;      ///< of the label; empty if it did not fit
    int event = 0;   ///< index into the events
};

inline constexpr int eventRows = 3;

/// `left` and `width` are those of the plot: day 0 and day 21.
QList<EventPlace> placeEvents(const QList<Event>& events, double left, double width, double rowHeight,
                              const QFont& font);

/// Height that the events ask for.
double eventLineHeight(const QList<Event>& events, double left, double width, const QFont& font);

void paintEvents(QPainter& painter, const QList<Event>& events, double left, double width,
                 const ChartStyle& style);

}  // namespace ebbline::charts
