// What a drawn line suggests. Places are those of our own drawing.
#include "app/face/placement_hint.h"

#include <catch2/catch_test_macros.hpp>

#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::face;
using recovery::ChartView;
using recovery::Ending;
using recovery::Side;
using recovery::Zone;

TEST_CASE("on the front view the patient's left is the right half of the picture", "[face][hint]")
{
    CHECK(hintFor(ChartView::front, {296, 170}, {256, 256}).side == Side::left);
    CHECK(hintFor(ChartView::front, {104, 170}, {144, 256}).side == Side::right);
}

TEST_CASE("an oblique view shows one side only", "[face][hint]")
{
    CHECK(hintFor(ChartView::leftOblique, {276, 170}, {206, 276}).side == Side::left);
    CHECK(hintFor(ChartView::rightOblique, {124, 170}, {194, 276}).side == Side::right);
}

TEST_CASE("the zone is that of the far part of the thread", "[face][hint]")
{
    CHECK(hintFor(ChartView::front, {296, 170}, {246, 276}).zone == Zone::midface);
    CHECK(hintFor(ChartView::front, {303, 230}, {274, 362}).zone == Zone::jawline);
    CHECK(hintFor(ChartView::front, {300, 330}, {222, 462}).zone == Zone::neck);
}

TEST_CASE("a line into the moving zone ends past it, one that stops before does not", "[face][hint]")
{
    CHECK(hintFor(ChartView::front, {296, 170}, {262, 268}).ending == Ending::shortOfMovingZone);
    const auto into = hintFor(ChartView::front, {296, 190}, {230, 330});
    CHECK(into.ending == Ending::pastMovingZone);
    CHECK(into.endsIn == Caution::movingZone);
}

TEST_CASE("a line along the jaw is marked where it nears the notch", "[face][hint]")
{
    CHECK(hintFor(ChartView::front, {300, 320}, {258, 366}).crossesNotch);
    CHECK_FALSE(hintFor(ChartView::front, {296, 170}, {256, 256}).crossesNotch);
}

namespace {

recovery::ChartPoint opposite(const recovery::ChartPoint& point)
{
    return {recovery::chartWidth - point.x, point.y};
}

bool sameButForSide(const Hint& a, const Hint& b)
{
    return b.side == recovery::mirrored(a.side) && a.zone == b.zone && a.ending == b.ending && a.endsIn == b.endsIn
           && a.crossesNotch == b.crossesNotch;
}

}  // namespace

TEST_CASE("mirroring a line mirrors its side and keeps everything else", "[face][hint][property]")
{
    const auto point = [](int from) {
        const auto at = [](int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); };
        return recovery::ChartPoint{at(from, 400), at(0, 560)};
    };
    CHECK(rc::check("on the front view", [&point] {
        const auto entry = point(201);
        const auto end = point(201);
        RC_ASSERT(sameButForSide(hintFor(ChartView::front, entry, end),
                                 hintFor(ChartView::front, opposite(entry), opposite(end))));
    }));
    CHECK(rc::check("on the obliques", [&point] {
        const auto entry = point(0);
        const auto end = point(0);
        RC_ASSERT(sameButForSide(hintFor(ChartView::leftOblique, entry, end),
                                 hintFor(ChartView::rightOblique, opposite(entry), opposite(end))));
    }));
}

TEST_CASE("a line that touches the edge of an area gets the answer of its mirror image", "[face][hint]")
{
    const recovery::ChartPoint entry{316, 0};
    const recovery::ChartPoint end{241, 290};
    CHECK(sameButForSide(hintFor(ChartView::front, entry, end),
                         hintFor(ChartView::front, opposite(entry), opposite(end))));
}
