#pragma once
/// \file
/// What stands between a picture and the chart on the screen: recomposes when either picture or
/// style changes.

#include "app/charts/chart_style.h"
#include "app/charts/curve_picture.h"

#include <QAbstractSeries>
#include <QObject>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

namespace ebbline::charts {

class CurvePlot : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::charts::CurvePicture picture READ picture WRITE setPicture NOTIFY pictureChanged FINAL)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor inkSoft MEMBER m_inkSoft NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor sand MEMBER m_sand NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor bandEdge MEMBER m_bandEdge NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor left MEMBER m_left NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor right MEMBER m_right NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY styleChanged FINAL)
    Q_PROPERTY(QFont font MEMBER m_font NOTIFY styleChanged FINAL)
    Q_PROPERTY(qreal width MEMBER m_width NOTIFY styleChanged FINAL)    ///< of the chart, pixels
    Q_PROPERTY(qreal height MEMBER m_height NOTIFY styleChanged FINAL)
    Q_PROPERTY(QRectF plotArea READ plotArea NOTIFY styleChanged FINAL)

public:
    explicit CurvePlot(QObject* parent = nullptr);

    CurvePicture picture() const { return m_picture; }
    void setPicture(const CurvePicture& picture);

    /// Where the plot lies inside a chart of width and height.
    QRectF plotArea() const;

    /// Takes over the chart that holds this series; the series itself goes.
    Q_INVOKABLE void attach(QAbstractSeries* anchor);

Q_SIGNALS:
    void pictureChanged();
    void styleChanged();

private:
    void compose();
    ChartStyle style() const;

    CurvePicture m_picture;
    QColor m_ink;
    QColor m_inkSoft;
    QColor m_line;
    QColor m_sand;
    QColor m_bandEdge;
    QColor m_left;
    QColor m_right;
    QColor m_paper;
    QFont m_font;
    qreal m_width = 0;
    qreal m_height = 0;
    QPointer<QObject> m_chart;
    bool m_pending = false;
};

}  // namespace ebbline::charts
