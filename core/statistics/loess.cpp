#include "core/statistics/loess.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <tuple>

namespace ebbline::statistics {

namespace {

constexpr int highestDegree = 2;

struct Weighted {
    double u;  ///< distance from where the curve is wanted, in units of the largest
    double y;
    double weight;
};

double tricube(double distance)
{
    const double part = 1 - distance * distance * distance;
    return part > 0 ? part * part * part : 0;
}

/// The polynomial's value at u = 0, by orthogonal columns so that no digits are lost in sums of powers.
Result<double> valueAtZero(const std::vector<Weighted>& points, int degree)
{
    const std::size_t n = points.size();
    std::vector<std::vector<double>> columns;  // orthogonal under the weights
    std::array<double, highestDegree + 1> atZero{};
    double value = 0;
    for (int power = 0; power <= degree; ++power) {
        std::vector<double> column(n);
        for (std::size_t i = 0; i < n; ++i)
            column[i] = power == 0 ? 1 : columns.back()[i] * points[i].u;
        double zero = power == 0 ? 1 : 0;
        double before = 0, after = 0;
        for (std::size_t i = 0; i < n; ++i)
            before += points[i].weight * column[i] * column[i];
        for (std::size_t k = 0; k < columns.size(); ++k) {
            double product = 0, square = 0;
            for (std::size_t i = 0; i < n; ++i) {
                product += points[i].weight * column[i] * columns[k][i];
                square += points[i].weight * columns[k][i] * columns[k][i];
            }
            for (std::size_t i = 0; i < n; ++i)
                column[i] -= product / square * columns[k][i];
            zero -= product / square * atZero[k];
        }
        double product = 0;
        for (std::size_t i = 0; i < n; ++i) {
            after += points[i].weight * column[i] * column[i];
            product += points[i].weight * column[i] * points[i].y;
        }
        if (!(after > 1e-20 * before) || !(after > 0))
            return fail(Reason::notEnough, "neighbours: too few of them have different x");
        value += product / after * zero;
        atZero[static_cast<std::size_t>(power)] = zero;
        columns.push_back(std::move(column));
    }
    if (!std::isfinite(value))
        return fail(Reason::notFinite, "points: too large");
    return value;
}

/// Points sorted by x. `first` is where the window of nearest neighbours may begin.
Result<double> curveAt(const std::vector<Point>& sorted, const LoessDesign& design, double x, std::size_t& first)
{
    const auto q = static_cast<std::size_t>(design.neighbours);
    while (first + q < sorted.size() && sorted[first + q].x - x < x - sorted[first].x)
        ++first;
    const double reach = std::max(x - sorted[first].x, sorted[first + q - 1].x - x);
    std::vector<Weighted> near;
    near.reserve(q);
    for (std::size_t i = first; i < first + q; ++i) {
        const double u = reach > 0 ? (sorted[i].x - x) / reach : 0;
        if (const double weight = tricube(std::abs(u)); weight > 0)
            near.push_back({u, sorted[i].y, weight});
    }
    return valueAtZero(near, design.degree);
}

/// By x, then by y, so that the curve does not depend on the order in which the points came.
bool before(const Point& a, const Point& b)
{
    return std::tie(a.x, a.y) < std::tie(b.x, b.y);
}

Done checked(std::span<const Point> points, const LoessDesign& design)
{
    if (design.degree < 0 || design.degree > highestDegree)
        return fail(Reason::outOfRange, "degree: want 0..2");
    if (design.neighbours < design.degree + 2)
        return fail(Reason::outOfRange, "neighbours: want at least the degree + 2");
    if (static_cast<std::size_t>(design.neighbours) > points.size())
        return fail(Reason::outOfRange, "neighbours: want at most the number of points");
    for (const Point& point : points)
        if (!std::isfinite(point.x) || !std::isfinite(point.y))
            return fail(Reason::notFinite, "points: want finite numbers");
    return {};
}

}  // namespace

Result<std::vector<double>> loess(std::span<const Point> points, const LoessDesign& design)
{
    if (const Done fine = checked(points, design); !fine)
        return fail(fine.error());
    std::vector<std::size_t> order(points.size());
    std::iota(order.begin(), order.end(), 0U);
    std::ranges::sort(order, before, [&](std::size_t i) { return points[i]; });
    std::vector<Point> sorted;
    sorted.reserve(points.size());
    for (const std::size_t i : order)
        sorted.push_back(points[i]);
    std::vector<double> curve(points.size());
    std::size_t first = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const Result<double> value = curveAt(sorted, design, sorted[i].x, first);
        if (!value)
            return fail(value.error());
        curve[order[i]] = *value;
    }
    return curve;
}

Result<double> loessAt(std::span<const Point> points, const LoessDesign& design, double x)
{
    if (const Done fine = checked(points, design); !fine)
        return fail(fine.error());
    std::vector<Point> sorted(points.begin(), points.end());
    std::ranges::sort(sorted, before);
    if (!(x >= sorted.front().x && x <= sorted.back().x))
        return fail(Reason::outOfRange, "x: want one within the points");
    std::size_t first = 0;
    return curveAt(sorted, design, x, first);
}

}  // namespace ebbline::statistics
