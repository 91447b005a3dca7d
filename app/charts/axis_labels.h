#pragma once
/// \file
/// The numbers along the axes, painted by us: the library replaces its own by dots, or leaves them
/// out, where it finds a chart too small.

#include "app/charts/chart_style.h"

#include <QGraphicsItem>
#include <QList>
#include <QRectF>
#include <QString>

class QChart;

namespace ebbline::charts {

struct AxisLabel {
    QRectF box;
    QString text;
    bool day = false;  ///< under the time axis, else beside the scores
};

/// Every day tick and every second score, around a plot.
QList<AxisLabel> axisLabels(const QRectF& plot, const QFont& font);

class AxisLabels : public QGraphicsItem {
public:
    enum { Type = UserType + 1 };

    /// Belongs to the chart and follows its plot.
    AxisLabels(QChart& chart, const ChartStyle& style);

    int type() const override { return Type; }
    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    const QChart& m_chart;
    ChartStyle m_style;
};

}  // namespace ebbline::charts
