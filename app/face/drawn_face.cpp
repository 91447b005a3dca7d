#include "app/face/drawn_face.h"

#include "app/face/face_paint.h"

#include <QBuffer>
#include <QImageWriter>
#include <QPainter>
#include <QRadialGradient>

#include <algorithm>
#include <tuple>

namespace ebbline::face {

namespace {

using recovery::ChartView;

constexpr QColor wall{0xC9, 0xD3, 0xD6};
constexpr QColor skin{0xEF, 0xE3, 0xD2};
constexpr QColor ink{0x3A, 0x40, 0x46};
constexpr QColor fold{0x9A, 0x94, 0x8C};

/// The lids of an eye in the frame of the drawing, and its pupil.
struct Eye {
    QPointF inner;
    QPointF outer;
    QPointF pupil;
};

struct EyePair {
    Eye left;   ///< the patient's own
    Eye right;
};

Eye mirrored(const Eye& eye)
{
    const auto over = [](const QPointF& point) { return QPointF(recovery::chartWidth - point.x(), point.y()); };
    return {over(eye.inner), over(eye.outer), over(eye.pupil)};
}

EyePair eyesOf(ChartView view)
{
    const Eye front{{230, 211}, {286, 209}, {258, 209}};
    const Eye nearSide{{179, 212}, {238, 209}, {205, 210}};
    const Eye farSide{{134, 212}, {110, 214}, {121, 211}};
    switch (view) {
    case ChartView::leftOblique:
        return {nearSide, farSide};
    case ChartView::rightOblique:
        return {mirrored(farSide), mirrored(nearSide)};
    case ChartView::front:
        break;
    }
    return {front, mirrored(front)};
}

void paintEye(QPainter& painter, const Eye& eye)
{
    const double width = eye.outer.x() - eye.inner.x();
    QPainterPath lids(eye.inner);
    lids.cubicTo(eye.inner + QPointF(width * 0.25, -13), eye.outer + QPointF(-width * 0.3, -14), eye.outer);
    lids.cubicTo(eye.outer + QPointF(-width * 0.3, 13), eye.inner + QPointF(width * 0.25, 12), eye.inner);
    painter.setPen(QPen(ink, faceLine));
    painter.setBrush(Qt::white);
    painter.drawPath(lids);
    painter.save();
    painter.setClipPath(lids);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0x6B, 0x7F, 0x86));
    painter.drawEllipse(eye.pupil, 8, 8);
    painter.setBrush(Qt::black);
    painter.drawEllipse(eye.pupil, 3.6, 3.6);
    painter.restore();
}

/// What encloses the face: the ground that is filled, and that the marks do not leave.
QPainterPath outlineOf(ChartView view)
{
    const auto& strokes = artOf(view).strokes;
    auto outline = strokes.front().path;
    if (view != ChartView::front) {
        outline.connectPath(strokes[1].path.toReversed());
    }
    return outline;
}

void paintMarks(QPainter& painter, ChartView view, double marked)
{
    if (view == ChartView::rightOblique) {
        return;  // the left cheek is turned away
    }
    const QPointF cheek = view == ChartView::front ? QPointF(268, 278) : QPointF(238, 275);
    painter.setPen(Qt::NoPen);
    for (const auto& [shift, radius, colour] : {std::tuple(QPointF(0, 0), 52.0, QColor(0xC0, 0x6A, 0x5A)), std::tuple(QPointF(8, 26), 26.0, QColor(0x6A, 0x4A, 0x86))}) {
        QRadialGradient stain(cheek + shift, radius);
        auto full = colour;
        full.setAlphaF(static_cast<float>(std::clamp(marked, 0.0, 1.0) * 0.6));
        auto none = colour;
        none.setAlpha(0);
        stain.setColorAt(0, full);
        stain.setColorAt(1, none);
        painter.setBrush(stain);
        painter.drawEllipse(cheek + shift, radius, radius);
    }
}

}  // namespace

DrawnPicture drawnFace(const DrawnFace& face)
{
    DrawnPicture drawn{QImage(face.pixels, QImage::Format_RGB32), {}, {}};
    drawn.picture.fill(wall);
    const double fits = std::min(face.pixels.width() / recovery::chartWidth, face.pixels.height() / recovery::chartHeight) * face.size;
    QTransform place;
    place.translate(face.pixels.width() / 2.0 + face.shift.x(), face.pixels.height() / 2.0 + face.shift.y());
    place.rotate(face.turned);
    place.scale(fits, fits);
    place.translate(-recovery::chartWidth / 2, -recovery::chartHeight / 2);

    QPainter painter(&drawn.picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setTransform(place);
    const auto outline = outlineOf(face.view);
    painter.fillPath(outline, skin);
    painter.save();
    painter.setClipPath(outline);
    paintMarks(painter, face.view, face.marked);
    painter.restore();
    paintDrawing(painter, face.view, {ink, fold, ink, ink, fold, skin, ink});
    const auto eyes = eyesOf(face.view);
    paintEye(painter, eyes.left);
    paintEye(painter, eyes.right);
    painter.end();
    drawn.leftEye = place.map(eyes.left.pupil);
    drawn.rightEye = place.map(eyes.right.pupil);
    return drawn;
}

QByteArray jpegOf(const QImage& picture)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, "jpeg");
    constexpr int quality = 85;
    writer.setQuality(quality);
    return writer.write(picture) ? bytes : QByteArray();
}

}  // namespace ebbline::face
