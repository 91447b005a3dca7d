#include "app/desk/model/qr_code.h"

#include <QPainter>

#include <cmath>

namespace ebbline::deskapp {

namespace {

constexpr int quiet = 4;  ///< modules around the code, ISO/IEC 18004

}  // namespace

void QrCode::setMatrix(const QrMatrix& matrix)
{
    if (matrix != m_matrix) {
        m_matrix = matrix;
        constexpr int pixels = 5;  // a module that a phone reads from a hand's breadth away
        setImplicitSize((matrix.size + 2 * quiet) * pixels, (matrix.size + 2 * quiet) * pixels);
        update();
        Q_EMIT matrixChanged();
    }
}

void QrCode::paint(QPainter* painter)
{
    painter->fillRect(boundingRect(), Qt::white);
    if (m_matrix.size == 0) {
        return;
    }
    // Whole pixels, so that no module is blurred.
    const double module = std::floor(std::min(width(), height()) / (m_matrix.size + 2 * quiet));
    const QPointF origin((width() - module * m_matrix.size) / 2, (height() - module * m_matrix.size) / 2);
    painter->setRenderHint(QPainter::Antialiasing, false);
    for (int i = 0; i < m_matrix.dark.size(); ++i) {
        if (m_matrix.dark[i]) {
            painter->fillRect(QRectF(std::floor(origin.x()) + module * (i % m_matrix.size),
                                     std::floor(origin.y()) + module * (i / m_matrix.size), module, module),
                              Qt::black);
        }
    }
}

}  // namespace ebbline::deskapp
