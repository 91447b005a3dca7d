#pragma once
/// \file
/// A drawn face where a photograph would be, for invented patients: in the demo, in the story and in checks.
/// Our own drawing, of no person, and a drawing at first sight; where its eyes are is known.

#include "core/recovery/treatment.h"

#include <QByteArray>
#include <QImage>
#include <QPointF>
#include <QSize>

namespace ebbline::face {

struct DrawnFace {
    recovery::ChartView view = recovery::ChartView::front;
    double marked = 0;      ///< 0..1: how much swelling and bruising is drawn on the patient's left cheek
    double turned = 0;      ///< degrees, clockwise: how the camera was held
    double size = 1;        ///< 1: the face fills the picture
    QPointF shift{};        ///< px
    QSize pixels{480, 640};
};

struct DrawnPicture {
    QImage picture;
    QPointF leftEye;   ///< px, the patient's own
    QPointF rightEye;  ///< px
};

DrawnPicture drawnFace(const DrawnFace& face);

/// As a phone would hand it over: baseline JPEG with nothing in it but the picture. Empty if it cannot be written.
QByteArray jpegOf(const QImage& picture);

}  // namespace ebbline::face
