#include "app/charts/curve_plot.h"

#include "app/charts/compose_chart.h"

#include <QChart>
#include <QMetaObject>

namespace ebbline::charts {

CurvePlot::CurvePlot(QObject* parent) : QObject(parent)
{
    const auto later = [this] {
        // Several properties change together when the theme does: compose once.
        if (!m_pending) {
            m_pending = true;
            QMetaObject::invokeMethod(this, &CurvePlot::compose, Qt::QueuedConnection);
        }
    };
    connect(this, &CurvePlot::pictureChanged, this, later);
    connect(this, &CurvePlot::styleChanged, this, later);
}

void CurvePlot::setPicture(const CurvePicture& picture)
{
    if (picture != m_picture) {
        m_picture = picture;
        Q_EMIT pictureChanged();
    }
}

void CurvePlot::attach(QAbstractSeries* anchor)
{
    m_chart = anchor != nullptr ? anchor->chart() : nullptr;
    compose();
}

ChartStyle CurvePlot::style() const
{
    ChartStyle style;
    style.ink = m_ink;
    style.inkSoft = m_inkSoft;
    style.line = m_line;
    style.sand = m_sand;
    style.bandEdge = m_bandEdge;
    style.left = m_left;
    style.right = m_right;
    style.paper = m_paper;
    style.font = m_font;
    return style;
}

QRectF CurvePlot::plotArea() const
{
    return QRectF(0, 0, m_width, m_height).marginsRemoved(plotMargins(style()));
}

void CurvePlot::compose()
{
    m_pending = false;
    if (auto* chart = qobject_cast<QChart*>(m_chart.data())) {
        composeChart(*chart, m_picture, style());
    }
}

}  // namespace ebbline::charts
