#pragma once
/// \file
/// A figure over many courses, ready to be painted: shares with their intervals, curves that fall in
/// steps, or a running sum against its limit. Time and numbers run left to right in every language.

#include <QList>
#include <QMetaType>
#include <QPointF>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace ebbline::charts {

/// One row: a value with its interval, on the figure's horizontal scale.
struct RangeRow {
    QString label;
    QString text;          ///< the same in words, at the end of the row
    bool known = false;    ///< else `text` says what is lacking
    double low = 0;
    double value = 0;
    double high = 0;
    bool operator==(const RangeRow&) const = default;
};

struct FigureLine {
    enum class Stroke { solid, dashed, dotted };
    QString label;         ///< written at its end; empty: none
    Stroke stroke = Stroke::solid;
    bool stepped = false;  ///< stays level up to the next point
    bool soft = false;     ///< beside the point: thinner and greyer
    QList<QPointF> points;
    bool operator==(const FigureLine&) const = default;
};

struct FigureTick {
    double at;
    QString text;
    bool operator==(const FigureTick&) const = default;
};

struct FigurePicture {
    Q_GADGET
    QML_VALUE_TYPE(figurePicture)
    Q_PROPERTY(bool empty READ isEmpty)

public:
    QList<RangeRow> rows;      ///< these, or lines
    QList<FigureLine> lines;
    double xLow = 0;
    double xHigh = 1;
    double yLow = 0;           ///< of lines
    double yHigh = 1;
    QList<FigureTick> xTicks;
    QList<FigureTick> yTicks;
    QString xTitle;            ///< with its unit
    QString yTitle;
    std::optional<double> reference;  ///< upright line of rows, e.g. no difference
    std::optional<double> limit;      ///< level line of lines
    QString limitText;
    QList<QPointF> signalMarks;       ///< where the limit was passed
    QList<double> ticksBelow;         ///< short strokes on the base, e.g. complicated courses
    QString belowText;                ///< what they are

    bool isEmpty() const { return rows.isEmpty() && lines.isEmpty(); }
    bool operator==(const FigurePicture&) const = default;
};

}  // namespace ebbline::charts
