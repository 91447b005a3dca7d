#include "core/statistics/least_squares.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

namespace {

bool finite(std::span<const Point> points)
{
    return std::all_of(points.begin(), points.end(),
                       [](const Point& point) { return std::isfinite(point.x) && std::isfinite(point.y); });
}

}  // namespace

Result<LineFit> leastSquares(std::span<const Point> points)
{
    if (!finite(points))
        return fail(Reason::notFinite, "points: want finite numbers");
    if (points.size() < 3)
        return fail(Reason::notEnough, "points: want at least three");
    const double count = static_cast<double>(points.size());
    double meanX = 0, meanY = 0;
    for (const auto& [x, y] : points) {
        meanX += x / count;
        meanY += y / count;
    }
    double xx = 0, xy = 0, yy = 0;
    for (const auto& [x, y] : points) {
        xx += (x - meanX) * (x - meanX);
        xy += (x - meanX) * (y - meanY);
        yy += (y - meanY) * (y - meanY);
    }
    if (!std::isfinite(xx) || !std::isfinite(yy))
        return fail(Reason::notFinite, "points: too far apart");
    if (!(xx > 0) || !(yy > 0))
        return fail(Reason::notEnough, "points: x and y have to vary");
    LineFit fit{.slope = xy / xx, .intercept = meanY - xy / xx * meanX, .slopeError = 0, .interceptError = 0,
                .residualDeviation = 0, .determination = 0};
    double squares = 0;
    for (const auto& [x, y] : points) {
        const double off = (y - meanY) - fit.slope * (x - meanX);
        squares += off * off;
    }
    fit.residualDeviation = std::sqrt(squares / (count - 2));
    fit.slopeError = fit.residualDeviation / std::sqrt(xx);
    fit.interceptError = fit.residualDeviation * std::sqrt(1 / count + meanX * meanX / xx);
    fit.determination = std::clamp(1 - squares / yy, 0.0, 1.0);
    return fit;
}

namespace {

/// Of the curve at a guess: squares, slopes and curvature of their sum.
struct Normal {
    double squares = 0;
    double topTop = 0, topRate = 0, rateRate = 0;
    double pullTop = 0, pullRate = 0;
};

Normal normalAt(std::span<const Point> points, double top, double rate)
{
    Normal normal;
    for (const auto& [x, y] : points) {
        const double left = std::exp(-rate * x);
        const double byTop = -std::expm1(-rate * x);
        const double byRate = top * x * left;
        const double off = y - top * byTop;
        normal.squares += off * off;
        normal.topTop += byTop * byTop;
        normal.topRate += byTop * byRate;
        normal.rateRate += byRate * byRate;
        normal.pullTop += byTop * off;
        normal.pullRate += byRate * off;
    }
    return normal;
}

}  // namespace

Result<LevellingOff> fitLevellingOff(std::span<const Point> points, double topGuess, double rateGuess)
{
    if (!finite(points))
        return fail(Reason::notFinite, "points: want finite numbers");
    if (!(topGuess > 0 && rateGuess > 0) || !std::isfinite(topGuess) || !std::isfinite(rateGuess))
        return fail(Reason::outOfRange, "first guess: want numbers above 0");
    if (points.size() < 3)
        return fail(Reason::notEnough, "points: want at least three");
    constexpr int mostSteps = 500;
    constexpr double settled = 1e-13;  // of a parameter
    double top = topGuess, rate = rateGuess, damping = 1e-3;
    Normal here = normalAt(points, top, rate);
    for (int step = 0; step < mostSteps && std::isfinite(here.squares); ++step) {
        const double topTop = here.topTop * (1 + damping), rateRate = here.rateRate * (1 + damping);
        const double determinant = topTop * rateRate - here.topRate * here.topRate;
        if (!(determinant > 0))
            break;
        const double byTop = (here.pullTop * rateRate - here.pullRate * here.topRate) / determinant;
        const double byRate = (here.pullRate * topTop - here.pullTop * here.topRate) / determinant;
        const Normal there = normalAt(points, top + byTop, rate + byRate);
        if (there.squares <= here.squares) {
            top += byTop;
            rate += byRate;
            here = there;
            damping /= 10;
        } else {
            damping *= 10;
        }
        if (std::abs(byTop) <= settled * std::abs(top) && std::abs(byRate) <= settled * std::abs(rate)) {
            const double whole = here.topTop * here.rateRate - here.topRate * here.topRate;
            if (!(whole > 0))
                break;
            const double variance = here.squares / static_cast<double>(points.size() - 2);
            return LevellingOff{top, rate, std::sqrt(variance * here.rateRate / whole), std::sqrt(variance * here.topTop / whole),
                                here.squares, std::sqrt(variance)};
        }
    }
    return fail(Reason::notEnough, "the points do not settle on a curve");
}

}  // namespace ebbline::statistics
