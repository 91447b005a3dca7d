// Two photographs over each other by their eyes.

#include "core/photos/alignment.h"

#include <catch2/catch_approx.hpp>
#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

using namespace ebbline;
using namespace ebbline::photos;
using Catch::Approx;

namespace {

bool near(const Point& a, const Point& b, double within = 1e-6)
{
    return std::hypot(a.x - b.x, a.y - b.y) <= within * (1 + std::hypot(b.x, b.y));
}

Point anyPoint()
{
    return {*rc::gen::inRange(-4000, 4000) / 2.0, *rc::gen::inRange(-4000, 4000) / 2.0};
}

}  // namespace

TEST_CASE("eyes that only moved are only moved", "[photos]")
{
    const auto made = align({100, 200}, {50, 200}, {130, 260}, {80, 260});
    REQUIRE(made);
    CHECK(made->scale() == Approx(1));
    CHECK(made->angle() == Approx(0).margin(1e-12));
    CHECK(near((*made)({0, 0}), {30, 60}));
}

TEST_CASE("a tilted head is turned back by its angle, and a farther one made larger", "[photos]")
{
    // A head tilted by 30 degrees at half the distance between the eyes.
    const double tilt = std::numbers::pi / 6;
    const Point right{100, 100}, left{100 + 50 * std::cos(tilt), 100 + 50 * std::sin(tilt)};
    const auto made = align(left, right, {300, 400}, {200, 400});
    REQUIRE(made);
    CHECK(made->scale() == Approx(2));
    CHECK(made->angle() == Approx(-tilt));
}

TEST_CASE("whatever the eyes, they meet; shapes are kept, and the way back leads back", "[photos]")
{
    REQUIRE(rc::check("any four points", [] {
        const Point fl = anyPoint(), fr = anyPoint(), tl = anyPoint(), tr = anyPoint();
        const auto made = align(fl, fr, tl, tr);
        const bool same = (fl.x == fr.x && fl.y == fr.y) || (tl.x == tr.x && tl.y == tr.y);
        RC_ASSERT(made.has_value() != same);
        if (!made)
            return;
        RC_ASSERT(near((*made)(fl), tl));
        RC_ASSERT(near((*made)(fr), tr));
        // Any other distance grows by the same factor; nothing is mirrored: the area keeps its sign.
        const Point p = anyPoint(), q = anyPoint();
        const Point mp = (*made)(p), mq = (*made)(q);
        const double before = std::hypot(p.x - q.x, p.y - q.y), after = std::hypot(mp.x - mq.x, mp.y - mq.y);
        RC_ASSERT(std::abs(after - made->scale() * before) <= 1e-6 * (1 + after));
        RC_ASSERT(made->scale() > 0);
        const Point origin = (*made)({0, 0}), across = (*made)({1, 0}), down = (*made)({0, 1});
        RC_ASSERT((across.x - origin.x) * (down.y - origin.y) - (across.y - origin.y) * (down.x - origin.x) > 0);
        RC_ASSERT(near(made->inverse()(mp), p, 1e-4));
    }));
}

TEST_CASE("a spot is found again at any size of the picture, and stays inside", "[photos]")
{
    CHECK(placeOf({5000, 2500}, 800, 600).x == 400);
    CHECK(placeOf({5000, 2500}, 800, 600).y == 150);
    CHECK(spotAt({400, 150}, 800, 600) == Spot{5000, 2500});
    CHECK(spotAt({-5, 900}, 800, 600) == Spot{0, wholeSpot});
    CHECK(spotAt({5, 5}, 0, 0) == Spot{0, 0});
    REQUIRE(rc::check("there and back", [] {
        const Spot spot{*rc::gen::inRange<std::uint16_t>(0, wholeSpot + 1), *rc::gen::inRange<std::uint16_t>(0, wholeSpot + 1)};
        const double width = *rc::gen::inRange(1, 4000), height = *rc::gen::inRange(1, 4000);
        RC_ASSERT(spotAt(placeOf(spot, width, height), width, height) == spot);
    }));
}

TEST_CASE("eyes outside of the picture, or in one place, are refused", "[photos][errors]")
{
    CHECK(check(Eyes{{6400, 4100}, {3600, 4100}}));
    CHECK(check(Eyes{{5000, 4100}, {5000, 4300}}));
    CHECK(check(Eyes{{10'001, 0}, {0, 0}}).error().reason == Reason::outOfRange);
    CHECK(check(Eyes{{0, 10'001}, {5000, 0}}).error().reason == Reason::outOfRange);
    CHECK(check(Eyes{{5000, 5000}, {5199, 5199}}).error().reason == Reason::outOfRange);
    CHECK(align({1, 1}, {1, 1}, {0, 0}, {1, 0}).error().reason == Reason::notEnough);
    CHECK(align({0, 0}, {1, 0}, {1, 1}, {1, 1}).error().reason == Reason::notEnough);
}
