#pragma once
/// \file
/// One curve of a course as a chart draws it: lines with gaps, markers, band, forecast, events.
/// No colours and no sizes: those are the style's. Unit of x: days since the treatment; of y:
/// score points 0..10.

#include "core/curves/curve.h"

#include <QList>
#include <QMetaType>
#include <QPointF>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace ebbline::charts {

inline constexpr int firstDay = 0;
inline constexpr int lastDay = 21;
/// Where the time axis has its ticks, in every language from left to right.
inline constexpr std::array dayTicks{0, 1, 3, 7, 14, 21};
inline constexpr int highestScore = 10;
/// The axes reach a little further, so that no mark on an edge is cut, and to the end of day 21.
inline constexpr double axisStart = -0.25;
inline constexpr double axisEnd = 22;
inline constexpr double scoreFloor = -0.4;
inline constexpr double scoreCeiling = 10.4;

/// Where a day or a score lies along its axis, 0..1 from left to right or from bottom to top.
constexpr double acrossOf(double day) { return (day - axisStart) / (axisEnd - axisStart); }
constexpr double upOf(double score) { return (score - scoreFloor) / (scoreCeiling - scoreFloor); }

/// Something that happened, as a tick on the line under the time axis.
struct Event {
    double day = 0;
    QString label;       ///< short: "called"
    bool urgent = false;  ///< stands out by a filled mark
    bool quiet = false;   ///< its label gives way to those of the others
    bool operator==(const Event&) const = default;
};

struct CurvePicture {
    Q_GADGET
    QML_VALUE_TYPE(curvePicture)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString sentence MEMBER sentence)
    Q_PROPERTY(QString legend MEMBER legend)
    Q_PROPERTY(bool left READ isLeft)
    Q_PROPERTY(bool empty READ isEmpty)

public:
    QString title;
    QString sentence;
    QString legend;
    recovery::Side side = recovery::Side::none;
    QList<QPointF> low;
    QList<QPointF> median;
    QList<QPointF> high;
    QList<QList<QPointF>> runs;    ///< joined where one day follows the other; a missing day is a gap
    QList<QPointF> plainMarkers;
    QList<QPointF> hollowMarkers;  ///< entered late, or amended
    struct Outlook {
        double day;
        double low;
        double median;
        double high;
        bool operator==(const Outlook&) const = default;
    };
    std::optional<Outlook> outlook;  ///< the forecast to the follow-up

    bool isLeft() const { return side != recovery::Side::right; }
    bool isEmpty() const { return runs.isEmpty(); }
    bool operator==(const CurvePicture&) const = default;
};

CurvePicture pictureOf(const curves::Curve& curve);

}  // namespace ebbline::charts
