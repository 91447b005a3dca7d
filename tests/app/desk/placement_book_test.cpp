// The placements of a treatment being written: drawing, moving, mirroring.
#include "app/desk/model/placement_book.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using deskapp::PlacementBook;
using recovery::ChartView;
using recovery::Side;

TEST_CASE("needle or cannula and epinephrine follow the thread before, its copy and its twin", "[desk][placements]")
{
    PlacementBook book;
    REQUIRE(book.draw(ChartView::front, {296, 170}, {256, 256}) == 1);
    CHECK_FALSE(book.placements().front().instrument);
    CHECK_FALSE(book.placements().front().instrumentLengthMm);
    CHECK_FALSE(book.placements().front().epinephrineAt);
    auto first = book.placements().front();
    first.instrument = recovery::Instrument::bluntCannula;
    first.instrumentLengthMm = 90;
    first.epinephrineAt = recovery::EpinephrineAt::entryPoint;
    book.change(1, first);

    REQUIRE(book.draw(ChartView::front, {300, 186}, {258, 288}) == 2);
    REQUIRE(book.duplicate(1) == 3);
    REQUIRE(book.mirror(1) == 4);
    REQUIRE(book.mirrorAll() == 2);
    REQUIRE(book.placements().size() == 6);
    for (const auto& thread : book.placements()) {
        CHECK(thread.instrument == first.instrument);
        CHECK(thread.instrumentLengthMm == first.instrumentLengthMm);
        CHECK(thread.epinephrineAt == first.epinephrineAt);
    }
}

TEST_CASE("a new thread takes the material and lot of the one before", "[desk][placements]")
{
    PlacementBook book;
    REQUIRE(book.draw(ChartView::front, {296, 170}, {256, 256}) == 1);
    auto first = book.placements().front();
    first.material = recovery::Material::plla;
    first.lot = "TH-1";
    first.gauge = 18;
    book.change(1, first);

    REQUIRE(book.draw(ChartView::front, {104, 170}, {144, 256}) == 2);

    const auto& second = book.placements().back();
    CHECK(second.material == recovery::Material::plla);
    CHECK(second.lot == "TH-1");
    CHECK(second.gauge == 18);
    CHECK(second.side == Side::right);
}

TEST_CASE("mirroring adds the same thread on the other side", "[desk][placements]")
{
    PlacementBook book;
    book.draw(ChartView::leftOblique, {276, 170}, {206, 276});

    REQUIRE(book.mirror(1) == 2);

    const auto& twin = book.placements().back();
    CHECK(twin.side == Side::right);
    CHECK(twin.view == ChartView::rightOblique);
    CHECK(twin.entry.x == 124);
}

TEST_CASE("mirroring lays no second thread where one lies, neither on the first one nor on the midline", "[desk][placements]")
{
    PlacementBook book;
    book.draw(ChartView::front, {296, 170}, {256, 256});
    CHECK(book.twinOf(1) == 0);
    REQUIRE(book.mirror(1) == 2);
    CHECK(book.mirror(2) == 0);
    CHECK(book.mirror(1) == 0);
    CHECK(book.twinOf(2) == 1);
    CHECK(book.twinOf(1) == 2);
    CHECK(book.twinOf(3) == 0);

    book.draw(ChartView::front, {200, 480}, {200, 540});
    CHECK(book.twinOf(3) == 3);
    CHECK(book.mirror(3) == 0);
    CHECK(book.mirrorAll() == 0);
    CHECK(book.placements().size() == 3);
}

TEST_CASE("mirroring all adds only the twins that are missing", "[desk][placements]")
{
    PlacementBook book;
    book.draw(ChartView::front, {296, 170}, {256, 256});
    book.mirror(1);
    book.draw(ChartView::front, {303, 206}, {272, 326});

    CHECK(book.mirrorAll() == 1);
    CHECK(book.placements().size() == 4);
    CHECK(book.mirrorAll() == 0);
}

TEST_CASE("a thread that is moved is judged anew, and what was chosen otherwise stays", "[desk][placements]")
{
    PlacementBook book;
    book.draw(ChartView::front, {296, 170}, {262, 268});
    REQUIRE(book.placements()[0].side == Side::left);
    REQUIRE(book.placements()[0].zone == recovery::Zone::midface);
    REQUIRE(book.placements()[0].ending == recovery::Ending::shortOfMovingZone);
    const auto drawn = book.placements()[0];

    book.move(1, {300, 330}, {222, 462});
    CHECK(book.placements()[0].zone == recovery::Zone::neck);
    book.move(1, {104, 190}, {170, 330});
    CHECK(book.placements()[0].side == Side::right);
    CHECK(book.placements()[0].ending == recovery::Ending::pastMovingZone);
    book.load({drawn});

    auto chosen = drawn;
    chosen.side = Side::right;
    chosen.zone = recovery::Zone::brow;
    chosen.ending = recovery::Ending::pastMovingZone;
    book.change(1, chosen);
    book.move(1, {300, 330}, {222, 462});
    CHECK(book.placements()[0].side == Side::right);
    CHECK(book.placements()[0].zone == recovery::Zone::brow);
    CHECK(book.placements()[0].ending == recovery::Ending::pastMovingZone);
}

TEST_CASE("what does not exist is left alone", "[desk][placements]")
{
    PlacementBook book;
    book.remove(1);
    book.change(3, {});

    CHECK(book.duplicate(1) == 0);
    CHECK(book.mirror(-1) == 0);
    CHECK(book.placements().empty());
}

TEST_CASE("no more threads than a treatment may hold", "[desk][placements]")
{
    PlacementBook book;
    for (std::size_t i = 0; i < PlacementBook::mostPlacements; ++i) {
        REQUIRE(book.draw(ChartView::front, {296, 170}, {256, 256}) > 0);
    }

    CHECK(book.draw(ChartView::front, {296, 170}, {256, 256}) == 0);
    CHECK(book.duplicate(1) == 0);
    CHECK(book.mirror(1) == 0);
    CHECK(book.placements().size() == PlacementBook::mostPlacements);
}
