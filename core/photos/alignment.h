#pragma once
/// \file
/// Lays one photograph over another so that the eyes meet: turned, made larger or smaller and moved, never sheared
/// or mirrored (a similarity transform). Two points settle it exactly.
///
/// Eyes are marked by a person, as shares of the picture, so that they hold for every size in which it is shown.

#include "core/result/result.h"

#include <cstdint>

namespace ebbline::photos {

/// A place in a picture: ten-thousandths of its width from the left and of its height from the top, 0..10000.
struct Spot {
    std::uint16_t across = 0;
    std::uint16_t down = 0;
    bool operator==(const Spot&) const = default;
};
inline constexpr std::uint16_t wholeSpot = 10'000;

/// The middles of the pupils; left and right are the patient's own.
struct Eyes {
    Spot left;
    Spot right;
    bool operator==(const Eyes&) const = default;
};

/// \returns Reason::outOfRange outside of the picture, or for eyes closer than a fiftieth of its sides: nothing can
///          be turned by them. The bound is our own choice.
Done check(const Eyes& eyes);

struct Point {
    double x = 0;  ///< px, to the right
    double y = 0;  ///< px, down
};

/// x' = a x - b y + dx, y' = b x + a y + dy.
struct Similarity {
    double a = 1;
    double b = 0;
    double dx = 0;  ///< px
    double dy = 0;  ///< px

    Point operator()(const Point& point) const;
    double scale() const;   ///< > 0
    double angle() const;   ///< radians, positive turns clockwise on the screen
    /// \pre scale() > 0
    Similarity inverse() const;
};

/// Where a spot lies in a picture of so many pixels.
Point placeOf(const Spot& spot, double width, double height);
/// The spot nearest to a place; the nearest edge for one outside.
Spot spotAt(const Point& place, double width, double height);

/// Takes the two points of `from` to the two of `to`. \returns Reason::notEnough if either pair is one point.
Result<Similarity> align(const Point& fromLeft, const Point& fromRight, const Point& toLeft, const Point& toRight);

}  // namespace ebbline::photos
