#include "app/face/face_paint.h"

#include <QLineF>
#include <QPainter>

#include <cmath>

namespace ebbline::face {

namespace {

QPen line(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine)
{
    QPen pen(colour, width, style, Qt::RoundCap, Qt::RoundJoin);
    return pen;
}

/// Text on a small ground of paper, so that lines behind it do not run through the letters.
void paintTag(QPainter& painter, const QPointF& centre, const QString& text, const FacePalette& palette,
              const QColor& ink)
{
    const auto metrics = QFontMetricsF(painter.font());
    auto box = QRectF(QPointF(), QSizeF(metrics.horizontalAdvance(text) + 4, metrics.height()));
    box.moveCenter(centre);
    box.moveLeft(std::clamp(box.left(), 0.0, recovery::chartWidth - box.width()));
    auto ground = palette.paper;
    ground.setAlphaF(0.86f);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

void paintTrack(QPainter& painter, const Track& track, bool selected, const FacePalette& palette)
{
    const auto colour = track.left ? palette.left : palette.right;
    const QLineF path(track.entry, track.end);
    if (selected) {
        auto halo = palette.selection;
        halo.setAlphaF(0.35f);
        painter.setPen(line(halo, 11));
        painter.drawLine(path);
    }
    auto pen = line(colour, 2.6);
    if (!track.left) {
        pen.setDashPattern({3.0, 2.2});
        pen.setCapStyle(Qt::FlatCap);
    }
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(path);

    painter.setPen(line(colour, 2.2));
    if (path.length() > 0) {
        const QPointF across(-path.dy() / path.length() * 5, path.dx() / path.length() * 5);
        painter.drawLine(track.end - across, track.end + across);
    }
    painter.setPen(line(palette.paper, 1));
    painter.setBrush(colour);
    constexpr double half = 4.6;
    if (track.left) {
        painter.drawEllipse(track.entry, half, half);
    } else {
        painter.drawRect(QRectF(track.entry - QPointF(half, half), QSizeF(2 * half, 2 * half)));
    }
}

}  // namespace

void paintDrawing(QPainter& painter, recovery::ChartView view, const FacePalette& palette)
{
    painter.save();
    painter.setBrush(Qt::NoBrush);
    for (const auto& stroke : artOf(view).strokes) {
        painter.setPen(line(stroke.fold ? palette.fold : palette.ink, stroke.fold ? faceFold : faceLine));
        painter.drawPath(stroke.path);
    }
    painter.restore();
}

void paintCautions(QPainter& painter, recovery::ChartView view, const FacePalette& palette,
                   const FaceWords& words)
{
    painter.save();
    painter.setFont(words.font);
    for (const auto& area : artOf(view).cautions) {
        painter.setPen(line(palette.caution, 1.1, Qt::DashLine));
        auto hatch = palette.caution;
        hatch.setAlphaF(0.28f);
        // Lines of our own instead of a brush pattern: a pattern does not scale on paper.
        painter.save();
        painter.setClipPath(area.outline, Qt::IntersectClip);
        painter.setPen(line(hatch, 0.8));
        const auto box = area.outline.boundingRect();
        for (double x = box.left() - box.height(); x < box.right(); x += 7) {
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
        }
        painter.restore();
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(area.outline);
    }
    bool zoneNamed = false;
    for (const auto& area : artOf(view).cautions) {
        const auto box = area.outline.boundingRect();
        const bool notch = area.what == Caution::mandibularNotch;
        const auto& text = notch ? words.notch : words.movingZone;
        if (text.isEmpty() || (!notch && zoneNamed)) {
            continue;
        }
        zoneNamed = zoneNamed || !notch;
        // Outside the face, where no thread runs: the notch beside the jaw, the zone below the chin.
        QPointF place(box.center().x(), box.bottom() + QFontMetricsF(words.font).height());
        if (notch) {
            const double half = QFontMetricsF(words.font).horizontalAdvance(text) / 2 + 6;
            const bool toTheRight = box.center().x() > recovery::chartWidth / 2;
            place = QPointF(toTheRight ? box.right() + half : box.left() - half, box.bottom() - 2);
        }
        paintTag(painter, place, text, palette, palette.caution);
    }
    painter.restore();
}

void paintTracks(QPainter& painter, recovery::ChartView view, const QList<Track>& tracks, int selected,
                 const FacePalette& palette, const FaceWords& words)
{
    painter.save();
    for (const auto& track : tracks) {
        if (track.view == static_cast<int>(view)) {
            paintTrack(painter, track, track.number == selected, palette);
        }
    }
    auto font = words.font;
    font.setBold(true);
    painter.setFont(font);
    for (const auto& track : tracks) {
        if (track.view != static_cast<int>(view) || track.number == 0) {
            continue;
        }
        // The number stands behind the entry point, on the far side of the thread, and clear of it.
        const QLineF path(track.end, track.entry);
        const double length = path.length();
        const double clear = 6 + QFontMetricsF(font).height() * 0.6;
        const QPointF away = length > 0 ? QPointF(path.dx(), path.dy()) * (clear / length) : QPointF(0, -clear);
        paintTag(painter, track.entry + away, QString::number(track.number), palette, palette.ink);
    }
    painter.restore();
}

void paintSides(QPainter& painter, recovery::ChartView view, const FacePalette& palette,
                const FaceWords& words)
{
    painter.save();
    painter.setFont(words.font);
    const QRectF foot(6, recovery::chartHeight - 44, recovery::chartWidth - 12, 38);
    painter.setPen(palette.ink);
    if (view == recovery::ChartView::front) {
        // As when facing her: the patient's left is on the right of the picture.
        const auto half = QSizeF(foot.width() / 2 - 4, foot.height());
        painter.drawText(QRectF(foot.topLeft(), half), Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap
                             | Qt::AlignAbsolute, words.rightSide);
        painter.drawText(QRectF(QPointF(foot.center().x() + 4, foot.top()), half),
                         Qt::AlignRight | Qt::AlignBottom | Qt::TextWordWrap | Qt::AlignAbsolute, words.leftSide);
    } else {
        const bool left = view == recovery::ChartView::leftOblique;
        painter.drawText(foot, Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap,
                         left ? words.leftSide : words.rightSide);
    }
    painter.restore();
}

}  // namespace ebbline::face
