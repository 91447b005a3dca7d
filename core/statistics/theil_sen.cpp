#include "core/statistics/theil_sen.h"

#include "core/statistics/median.h"

#include <cmath>

namespace ebbline::statistics {

Result<Line> theilSen(std::span<const Point> points)
{
    for (const Point& point : points)
        if (!std::isfinite(point.x) || !std::isfinite(point.y))
            return fail(Reason::notFinite, "points: want finite numbers");
    if (points.size() < 3)
        return fail(Reason::notEnough, "want at least three points");
    if (points.size() > maximumTheilSenPoints)
        return fail(Reason::tooLarge, "points: want at most 4000");
    std::vector<double> slopes;
    for (std::size_t i = 0; i < points.size(); ++i)
        for (std::size_t j = i + 1; j < points.size(); ++j)
            if (points[i].x != points[j].x)
                slopes.push_back((points[j].y - points[i].y) / (points[j].x - points[i].x));
    if (slopes.empty())
        return fail(Reason::notEnough, "all points have the same x");
    const double slope = medianOf(std::move(slopes));
    std::vector<double> heights;
    heights.reserve(points.size());
    for (const Point& point : points)
        heights.push_back(point.y - slope * point.x);
    const Line line{slope, medianOf(std::move(heights))};
    if (!std::isfinite(line.slope) || !std::isfinite(line.intercept))
        return fail(Reason::notFinite, "points: too far apart");
    return line;
}

}  // namespace ebbline::statistics
