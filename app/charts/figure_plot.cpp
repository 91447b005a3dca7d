#include "app/charts/figure_plot.h"

#include "app/charts/figure_paint.h"

#include <QPainter>

namespace ebbline::charts {

FigurePlot::FigurePlot(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    const auto again = [this] {
        Q_EMIT heightWanted();
        update();
    };
    connect(this, &FigurePlot::pictureChanged, this, again);
    connect(this, &FigurePlot::styleChanged, this, again);
    connect(this, &QQuickItem::widthChanged, this, again);
}

void FigurePlot::setPicture(const FigurePicture& picture)
{
    if (picture != m_picture) {
        m_picture = picture;
        Q_EMIT pictureChanged();
    }
}

qreal FigurePlot::naturalHeight() const
{
    return m_font.pixelSize() > 0 ? figureHeight(m_picture, width(), m_font) : 0;
}

void FigurePlot::paint(QPainter* painter)
{
    ChartStyle style;
    style.ink = m_ink;
    style.inkSoft = m_inkSoft;
    style.line = m_line;
    style.left = m_tone;
    style.paper = m_paper;
    style.font = m_font;
    paintFigure(*painter, boundingRect(), m_picture, style);
}

}  // namespace ebbline::charts
