#include "app/desk/model/curve_figures.h"

#include "app/charts/curve_picture.h"
#include "app/charts/curve_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <cmath>

namespace ebbline::deskapp {

namespace {

class Curves {
    Q_DECLARE_TR_FUNCTIONS(Curves)
};

constexpr double shownAsNone = 0.05;  // one decimal is shown

QString decimal(double number)
{
    return QLocale().toString(number, 'f', 1);
}

QString areaOf(const curves::Curve& curve)
{
    if (!curve.area || curve.smoothed.empty()) {
        return Curves::tr("area: not enough to say");
    }
    return Curves::tr("area %1 points × days, day %2 to %3")
        .arg(decimal(*curve.area), charts::digits(curve.smoothed.front().day), charts::digits(curve.smoothed.back().day));
}

QString figuresOf(const curves::Curve& curve)
{
    if (!curve.peak) {
        return {};
    }
    QStringList parts;
    parts << Curves::tr("highest %1 on day %2")
                 .arg(charts::digits(curve.peak->points), charts::digits(static_cast<int>(curve.peak->day)));
    if (curve.halfLifeDays && *curve.halfLifeDays <= charts::lastDay) {  // longer than the course says nothing
        parts << Curves::tr("halved in %1 days").arg(decimal(*curve.halfLifeDays));
    }
    if (curve.resolvedOnDay) {
        parts << Curves::tr("settled on day %1").arg(charts::digits(*curve.resolvedOnDay));
    }
    parts << areaOf(curve);
    return QLocale().createSeparatedList(parts);
}

/// Which side is higher, and by how much: no sign that a reader has to remember.
QString apart(double leftMinusRight, const QString& points)
{
    if (std::abs(leftMinusRight) < shownAsNone) {
        return Curves::tr("level");
    }
    return leftMinusRight > 0 ? Curves::tr("left %1 higher").arg(points) : Curves::tr("right %1 higher").arg(points);
}

QString sidesOf(const std::optional<curves::Asymmetry>& asymmetry)
{
    if (!asymmetry) {
        return Curves::tr("Left against right: not enough to say.");
    }
    QStringList parts;
    parts << Curves::tr("%1 on average").arg(apart(asymmetry->meanDifference, decimal(std::abs(asymmetry->meanDifference))));
    if (asymmetry->largest != 0) {
        parts << Curves::tr("most on day %1 (%2)")
                     .arg(charts::digits(asymmetry->largestDay),
                          apart(asymmetry->largest, charts::digits(std::abs(asymmetry->largest))));
    }
    if (asymmetry->index) {
        const int percent = static_cast<int>(std::lround(100 * std::abs(*asymmetry->index)));
        parts << Curves::tr("the difference is %1% of the sum").arg(charts::digits(percent));
    } else {
        parts << Curves::tr("too few points for a share of the sum");
    }
    return Curves::tr("Left against right, %1 days with both: %2.")
        .arg(charts::digits(asymmetry->days), QLocale().createSeparatedList(parts));
}

}  // namespace

QString figuresOf(const CurvePair& pair)
{
    const QString left = figuresOf(pair.left);
    const QString right = figuresOf(pair.right);
    if (left.isEmpty() && right.isEmpty()) {
        return {};
    }
    QStringList sentences;
    if (!left.isEmpty()) {
        sentences << Curves::tr("Left: %1.").arg(left);
    }
    if (!right.isEmpty()) {
        sentences << Curves::tr("Right: %1.").arg(right);
    }
    sentences << sidesOf(pair.asymmetry);
    return sentences.join(u' ');
}

QString beyondOf(const CurvePair& pair)
{
    const auto lastBeyond = [](const curves::Curve& curve) -> const curves::Point* {
        return curve.points.empty() || curve.points.back().day < charts::axisEnd ? nullptr : &curve.points.back();
    };
    QStringList parts;
    if (const auto* right = lastBeyond(pair.right)) {
        parts << Curves::tr("right %1 on day %2", "score, day").arg(charts::digits(right->points), charts::digits(static_cast<int>(right->day)));
    }
    if (const auto* left = lastBeyond(pair.left)) {
        parts << Curves::tr("left %1 on day %2", "score, day").arg(charts::digits(left->points), charts::digits(static_cast<int>(left->day)));
    }
    return parts.isEmpty() ? QString()
                           : Curves::tr("The axis ends with day 21. Last written after it: %1. The table has every score.")
                                 .arg(QLocale().createSeparatedList(parts));
}

}  // namespace ebbline::deskapp
