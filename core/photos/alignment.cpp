#include "core/photos/alignment.h"

#include <algorithm>
#include <cmath>

namespace ebbline::photos {

namespace {

constexpr int closestEyes = wholeSpot / 50;

}  // namespace

Done check(const Eyes& eyes)
{
    for (const Spot& spot : {eyes.left, eyes.right})
        if (spot.across > wholeSpot || spot.down > wholeSpot)
            return fail(Reason::outOfRange, "eyes: outside of the picture");
    if (std::max(std::abs(eyes.left.across - eyes.right.across), std::abs(eyes.left.down - eyes.right.down)) < closestEyes)
        return fail(Reason::outOfRange, "eyes: too close to each other");
    return {};
}

Point Similarity::operator()(const Point& point) const
{
    return {a * point.x - b * point.y + dx, b * point.x + a * point.y + dy};
}

double Similarity::scale() const { return std::hypot(a, b); }
double Similarity::angle() const { return std::atan2(b, a); }

Similarity Similarity::inverse() const
{
    const double square = a * a + b * b;
    const double ia = a / square, ib = -b / square;
    return {ia, ib, -(ia * dx - ib * dy), -(ib * dx + ia * dy)};
}

Point placeOf(const Spot& spot, double width, double height)
{
    return {spot.across * width / wholeSpot, spot.down * height / wholeSpot};
}

Spot spotAt(const Point& place, double width, double height)
{
    const auto share = [](double part, double whole) {
        const double within = whole > 0 ? std::clamp(part / whole, 0.0, 1.0) : 0.0;
        return static_cast<std::uint16_t>(std::lround(within * wholeSpot));
    };
    return {share(place.x, width), share(place.y, height)};
}

Result<Similarity> align(const Point& fromLeft, const Point& fromRight, const Point& toLeft, const Point& toRight)
{
    // As complex numbers: (to difference) / (from difference) is the turn and the scale in one.
    const double fx = fromRight.x - fromLeft.x, fy = fromRight.y - fromLeft.y;
    const double tx = toRight.x - toLeft.x, ty = toRight.y - toLeft.y;
    const double square = fx * fx + fy * fy;
    if (!(square > 0) || !(tx * tx + ty * ty > 0))
        return fail(Reason::notEnough, "eyes: two different points are needed");
    Similarity made;
    made.a = (tx * fx + ty * fy) / square;
    made.b = (ty * fx - tx * fy) / square;
    made.dx = toLeft.x - (made.a * fromLeft.x - made.b * fromLeft.y);
    made.dy = toLeft.y - (made.b * fromLeft.x + made.a * fromLeft.y);
    return made;
}

}  // namespace ebbline::photos
