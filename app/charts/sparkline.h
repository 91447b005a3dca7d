#pragma once
/// \file
/// A curve in the height of a line of text: 22 days, score 0..10, the band's ground behind it.
/// Time runs left to right in every language. It always stands beside the same thing in words.

#include "app/charts/curve_picture.h"

#include <QColor>
#include <QQuickPaintedItem>

namespace ebbline::charts {

class Sparkline : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::charts::CurvePicture leftCurve READ leftCurve WRITE setLeftCurve NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::charts::CurvePicture rightCurve READ rightCurve WRITE setRightCurve NOTIFY changed FINAL)
    Q_PROPERTY(QColor leftColor MEMBER m_leftColor NOTIFY changed FINAL)
    Q_PROPERTY(QColor rightColor MEMBER m_rightColor NOTIFY changed FINAL)
    Q_PROPERTY(QColor sand MEMBER m_sand NOTIFY changed FINAL)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY changed FINAL)

public:
    explicit Sparkline(QQuickItem* parent = nullptr);

    CurvePicture leftCurve() const { return m_left; }
    void setLeftCurve(const CurvePicture& picture);
    CurvePicture rightCurve() const { return m_right; }
    void setRightCurve(const CurvePicture& picture);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    QPointF place(const QPointF& point) const;
    void paintRuns(QPainter& painter, const CurvePicture& picture, const QColor& colour) const;

    CurvePicture m_left;
    CurvePicture m_right;
    QColor m_leftColor{Qt::black};
    QColor m_rightColor{Qt::black};
    QColor m_sand{Qt::lightGray};
    QColor m_line{Qt::gray};
};

}  // namespace ebbline::charts
