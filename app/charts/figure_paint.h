#pragma once
/// \file
/// Paints a figure: the same on the screen, in a picture file and on paper. Readable without colour:
/// lines differ by their stroke, and every value stands in words beside its mark.

#include "app/charts/chart_style.h"
#include "app/charts/figure_picture.h"

class QPainter;
class QRectF;

namespace ebbline::charts {

/// Height that a figure wants at a width, pixels.
double figureHeight(const FigurePicture& picture, double width, const QFont& font);

/// \pre area.height() is at least figureHeight().
void paintFigure(QPainter& painter, const QRectF& area, const FigurePicture& picture, const ChartStyle& style);

}  // namespace ebbline::charts
