#include "app/face/portrait.h"

#include "app/face/face_paint.h"

#include <QLinearGradient>
#include <QPainter>
#include <QRadialGradient>

namespace ebbline::face {

namespace {

// A plain room and a plain drawing in it, of our own choice; no colour here says anything.
const QColor wall(0xcf, 0xd6, 0xd8), wallLow(0xa9, 0xb3, 0xb6), hair(0x5b, 0x4a, 0x42), skin(0xd9, 0xb9, 0xa2), cloth(0x4f, 0x6d, 0x78);
const QColor lines(0x4a, 0x38, 0x33), folds(0xa8, 0x82, 0x70), flush(0xc8, 0x72, 0x66);

}  // namespace

QImage portrait(recovery::ChartView view, int width, double swelling)
{
    QImage image(width, width * 4 / 3, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QLinearGradient light(0, 0, 0, image.height());
    light.setColorAt(0, wall);
    light.setColorAt(1, wallLow);
    painter.fillRect(image.rect(), light);
    const double scale = image.height() / (recovery::chartHeight * 1.06);
    painter.translate((image.width() - recovery::chartWidth * scale) / 2, recovery::chartHeight * 0.05 * scale);
    painter.scale(scale, scale);

    const auto& strokes = artOf(view).strokes;
    const double turned = view == recovery::ChartView::front ? 0 : view == recovery::ChartView::leftOblique ? 1 : -1;
    QPainterPath head = strokes[0].path;
    if (turned != 0) {
        // The oblique head is drawn in two lines from the crown: to the jaw in front, and to the ear behind.
        head.connectPath(strokes[1].path.toReversed());
        head.closeSubpath();
    }
    const double middle = recovery::chartWidth / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(hair);
    painter.drawEllipse(QPointF(middle + 26 * turned, 168), 128, 146);
    painter.setBrush(skin);
    painter.drawRoundedRect(QRectF(middle - 76 + 34 * turned, 300, 152, 230), 30, 30);
    painter.drawPath(head);
    painter.setBrush(cloth);
    painter.drawRoundedRect(QRectF(-60, 470, recovery::chartWidth + 120, 220), 70, 70);
    if (swelling > 0 && view != recovery::ChartView::rightOblique) {
        const QPointF cheek = view == recovery::ChartView::front ? QPointF(268, 268) : QPointF(210, 268);
        QRadialGradient blush(cheek, 52);
        QColor inner = flush;
        inner.setAlphaF(static_cast<float>(0.6 * swelling));
        blush.setColorAt(0, inner);
        inner.setAlpha(0);
        blush.setColorAt(1, inner);
        painter.setBrush(blush);
        painter.drawEllipse(cheek, 52, 52);
    }
    paintDrawing(painter, view, {.ink = lines, .fold = folds, .left = {}, .right = {}, .caution = {}, .paper = {}, .selection = {}});
    return image;
}

}  // namespace ebbline::face
