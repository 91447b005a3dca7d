#include "app/desk/photos/photo_lay.h"

#include <QPainter>

#include <algorithm>

namespace ebbline::deskapp {

Sight Sight::bounded() const
{
    Sight bounded{std::clamp(zoom, 1.0, nearest), centre};
    const double half = 0.5 / bounded.zoom;
    bounded.centre = {std::clamp(centre.x(), half, 1 - half), std::clamp(centre.y(), half, 1 - half)};
    return bounded;
}

QTransform fitted(const QSizeF& picture, const QRectF& box, const Sight& sight)
{
    QTransform transform;
    if (picture.isEmpty() || box.isEmpty()) {
        return transform;
    }
    const double scale = std::min(box.width() / picture.width(), box.height() / picture.height()) * sight.zoom;
    transform.translate(box.center().x(), box.center().y());
    transform.scale(scale, scale);
    transform.translate(-picture.width() * sight.centre.x(), -picture.height() * sight.centre.y());
    return transform;
}

std::optional<QTransform> laidOver(const MarkedPicture& later, const MarkedPicture& earlier)
{
    if (!later.eyes || !earlier.eyes || later.picture.isNull() || earlier.picture.isNull()) {
        return std::nullopt;
    }
    const auto place = [](const photos::Spot& spot, const QImage& picture) { return photos::placeOf(spot, picture.width(), picture.height()); };
    const auto laid = photos::align(place(later.eyes->left, later.picture), place(later.eyes->right, later.picture),
                                    place(earlier.eyes->left, earlier.picture), place(earlier.eyes->right, earlier.picture));
    if (!laid) {
        return std::nullopt;
    }
    // QTransform: x' = m11 x + m21 y + dx, y' = m12 x + m22 y + dy.
    return QTransform(laid->a, laid->b, -laid->b, laid->a, laid->dx, laid->dy);
}

void paintLaid(QPainter& painter, const QRectF& box, const QImage& picture, const QTransform& toBox)
{
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setTransform(toBox, true);
    painter.drawImage(QPointF(), picture);
    painter.restore();
}

QPointF pointOf(const photos::Spot& spot, const QSizeF& picture)
{
    const auto place = photos::placeOf(spot, picture.width(), picture.height());
    return {place.x, place.y};
}

photos::Spot spotOf(const QPointF& point, const QSizeF& picture)
{
    return photos::spotAt({point.x(), point.y()}, picture.width(), picture.height());
}

}  // namespace ebbline::deskapp
