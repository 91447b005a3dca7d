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

TEST_CASE("mirroring a line mirrors its side and keeps everything else", "[face][hint][property]")
{
    CHECK(rc::check("mirrored", [] {
        const auto at = [](int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); };
        const recovery::ChartPoint entry{at(201, 400), at(0, 560)};
        const recovery::ChartPoint end{at(201, 400), at(0, 560)};
        const auto a = hintFor(ChartView::front, entry, end);
        const auto b = hintFor(ChartView::front, {400 - entry.x, entry.y}, {400 - end.x, end.y});
        RC_ASSERT(b.side == recovery::mirrored(a.side));
        RC_ASSERT(a.zone == b.zone);
        RC_ASSERT(a.ending == b.ending);
        RC_ASSERT(a.crossesNotch == b.crossesNotch);
    }));
}
