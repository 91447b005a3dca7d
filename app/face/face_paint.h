#pragma once
/// \file
/// Paints a face chart with its placements: the same strokes for the screen and for paper.
/// Coordinates are those of the chart's frame; the caller scales the painter.

#include "app/face/face_art.h"

#include <QColor>
#include <QFont>
#include <QList>
#include <QMetaType>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

class QPainter;

namespace ebbline::face {

/// A placement as the chart draws it.
struct Track {
    Q_GADGET
    QML_VALUE_TYPE(faceTrack)
    Q_PROPERTY(int number MEMBER number)
    Q_PROPERTY(QPointF entry MEMBER entry)
    Q_PROPERTY(QPointF end MEMBER end)

public:
    int number = 0;  ///< counted from 1, as in the list of placements
    int view = 1;    ///< recovery::ChartView
    bool left = true;
    QPointF entry;
    QPointF end;

    bool operator==(const Track&) const = default;
};

struct FacePalette {
    QColor ink;
    QColor fold;
    QColor left;
    QColor right;
    QColor caution;
    QColor paper;
    QColor selection;
};

/// Words painted into the picture. Empty ones are left out.
struct FaceWords {
    QString leftSide;
    QString rightSide;
    QString movingZone;
    QString notch;
    QFont font;           ///< sized in units of the frame
};

/// Line weights of the frame, in its own units.
inline constexpr double faceLine = 2.2;
inline constexpr double faceFold = 1.4;

void paintDrawing(QPainter& painter, recovery::ChartView view, const FacePalette& palette);
/// Hatched and outlined, so that they show without colour; named in words if there are any.
void paintCautions(QPainter& painter, recovery::ChartView view, const FacePalette& palette,
                   const FaceWords& words);
/// Left: solid line and round entry point. Right: dashed line and square one. A bar marks the end.
/// `selected` is the number of the placement to stress, 0 for none.
void paintTracks(QPainter& painter, recovery::ChartView view, const QList<Track>& tracks, int selected,
                 const FacePalette& palette, const FaceWords& words);
/// The side words, at the foot of the picture, each on its own side of the patient.
void paintSides(QPainter& painter, recovery::ChartView view, const FacePalette& palette,
                const FaceWords& words);

}  // namespace ebbline::face
