#pragma once
/// \file
/// A QR code as an item: always dark on light with its quiet zone, because cameras expect that,
/// whatever the theme.

#include "app/desk/model/qr_matrix.h"

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace ebbline::deskapp {

class QrCode : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ebbline::deskapp::QrMatrix matrix READ matrix WRITE setMatrix NOTIFY matrixChanged FINAL)

public:
    explicit QrCode(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

    QrMatrix matrix() const { return m_matrix; }
    void setMatrix(const QrMatrix& matrix);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void matrixChanged();

private:
    QrMatrix m_matrix;
};

}  // namespace ebbline::deskapp
