#include "app/charts/axis_labels.h"

#include "app/charts/curve_picture.h"
#include "app/charts/curve_words.h"

#include <QChart>
#include <QFontMetricsF>
#include <QPainter>

namespace ebbline::charts {

QList<AxisLabel> axisLabels(const QRectF& plot, const QFont& font)
{
    const QFontMetricsF metrics(font);
    constexpr double tick = 6;
    QList<AxisLabel> labels;
    const auto add = [&](const QString& text, bool day) {
        labels.append({QRectF(0, 0, metrics.horizontalAdvance(text) + 1, metrics.height()), text, day});
        return &labels.last().box;
    };
    double free = plot.left() - plot.width();  // where the next day's label may begin
    for (const int day : dayTicks) {
        auto* box = add(digits(day), true);
        const double x = plot.left() + plot.width() * acrossOf(day);
        box->moveTopLeft({x - box->width() / 2, plot.bottom() + tick});
        // In a small picture the tick without a label is better than two labels in one.
        if (box->left() < free)
            labels.removeLast();
        else
            free = box->right() + metrics.horizontalAdvance(QLatin1Char(' '));
    }
    for (int score = 0; score <= highestScore; score += 2) {
        auto* box = add(digits(score), false);
        const double y = plot.bottom() - plot.height() * upOf(score);
        box->moveTopLeft({plot.left() - tick - box->width(), y - box->height() / 2});
    }
    return labels;
}

AxisLabels::AxisLabels(QChart& chart, const ChartStyle& style) : QGraphicsItem(&chart), m_chart(chart), m_style(style) {}

QRectF AxisLabels::boundingRect() const
{
    return m_chart.boundingRect();
}

void AxisLabels::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    painter->setFont(m_style.font);
    painter->setPen(m_style.inkSoft);
    const auto labels = axisLabels(m_chart.plotArea(), m_style.font);
    for (const auto& label : labels) {
        painter->drawText(label.box, Qt::AlignCenter | Qt::TextDontClip, label.text);
    }
}

}  // namespace ebbline::charts
