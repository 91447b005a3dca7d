#pragma once
/// \file
/// Where a photograph is painted: whole in its box, larger around a place, or laid over another so that the eyes
/// meet (core/photos/alignment.h). The same for the screen and for paper; nothing here is mirrored or stretched.

#include "core/photos/alignment.h"

#include <QImage>
#include <QTransform>

#include <optional>

class QPainter;

namespace ebbline::deskapp {

/// What part of the pictures is in sight; two that stand side by side share it.
struct Sight {
    static constexpr double nearest = 8;  ///< the largest zoom; our own choice
    double zoom = 1;                      ///< 1: whole
    QPointF centre{0.5, 0.5};             ///< in shares of the picture's width and height

    bool operator==(const Sight&) const = default;
    /// With the zoom in bounds, and the centre so that no ground shows beside the picture that it could fill.
    Sight bounded() const;
};

/// Pixels of a picture to a box: as large as fits, in its middle, then as the sight says.
QTransform fitted(const QSizeF& picture, const QRectF& box, const Sight& sight = {});

/// A picture with its eyes, if somebody marked them.
struct MarkedPicture {
    QImage picture;
    std::optional<photos::Eyes> eyes;
};

/// Pixels of `later` to pixels of `earlier`, so that the eyes meet; empty if either has none.
std::optional<QTransform> laidOver(const MarkedPicture& later, const MarkedPicture& earlier);

/// Paints a picture by its transform and nothing of it outside of the box.
void paintLaid(QPainter& painter, const QRectF& box, const QImage& picture, const QTransform& toBox);

/// Places in a picture of so many pixels.
QPointF pointOf(const photos::Spot& spot, const QSizeF& picture);
photos::Spot spotOf(const QPointF& point, const QSizeF& picture);

}  // namespace ebbline::deskapp
