#pragma once
/// \file
/// A figure as an item of a page; its height follows from its width.

#include "app/charts/chart_style.h"
#include "app/charts/figure_picture.h"

#include <QQuickPaintedItem>

namespace ebbline::charts {

class FigurePlot : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::charts::FigurePicture picture READ picture WRITE setPicture NOTIFY pictureChanged FINAL)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor inkSoft MEMBER m_inkSoft NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor line MEMBER m_line NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor tone MEMBER m_tone NOTIFY styleChanged FINAL)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY styleChanged FINAL)
    Q_PROPERTY(QFont font MEMBER m_font NOTIFY styleChanged FINAL)
    Q_PROPERTY(qreal naturalHeight READ naturalHeight NOTIFY heightWanted FINAL)

public:
    explicit FigurePlot(QQuickItem* parent = nullptr);

    FigurePicture picture() const { return m_picture; }
    void setPicture(const FigurePicture& picture);
    qreal naturalHeight() const;
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void pictureChanged();
    void styleChanged();
    void heightWanted();

private:
    FigurePicture m_picture;
    QColor m_ink;
    QColor m_inkSoft;
    QColor m_line;
    QColor m_tone;
    QColor m_paper;
    QFont m_font;
};

}  // namespace ebbline::charts
