#include "app/charts/curve_picture.h"

#include "app/charts/curve_words.h"

#include <cmath>

namespace ebbline::charts {

CurvePicture pictureOf(const curves::Curve& curve)
{
    CurvePicture picture;
    picture.title = streamName(curve.stream);
    picture.sentence = curveSentence(curve);
    picture.legend = bandLegend(curve.provenance);
    picture.side = curve.stream.side;
    for (const auto& day : curve.band) {
        if (day.day < firstDay || day.day > lastDay) {
            continue;
        }
        picture.low.append(QPointF(day.day, day.inner.low));
        picture.median.append(QPointF(day.day, day.inner.median));
        picture.high.append(QPointF(day.day, day.inner.high));
    }
    // The band of the last day holds to its end.
    for (auto* edge : {&picture.low, &picture.median, &picture.high}) {
        if (!edge->isEmpty()) {
            edge->append(QPointF(axisEnd, edge->last().y()));
        }
    }
    std::optional<double> previous;
    for (const auto& point : curve.points) {
        const QPointF place(point.day, point.points);
        if (!previous || std::floor(point.day) - std::floor(*previous) > 1) {
            picture.runs.append(QList<QPointF>());
        }
        picture.runs.last().append(place);
        (point.late || point.amended ? picture.hollowMarkers : picture.plainMarkers).append(place);
        previous = point.day;
    }
    if (curve.forecast) {
        picture.outlook = CurvePicture::Outlook{static_cast<double>(curve.forecast->day),
                                                static_cast<double>(curve.forecast->low),
                                                static_cast<double>(curve.forecast->median),
                                                static_cast<double>(curve.forecast->high)};
    }
    return picture;
}

}  // namespace ebbline::charts
