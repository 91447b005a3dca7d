// The placements of a treatment being written: drawing, mirroring, undoing.
#include "app/desk/model/placement_book.h"

#include <catch2/catch_test_macros.hpp>

#include <rapidcheck.h>

using namespace ebbline;
using deskapp::PlacementBook;
using recovery::ChartView;
using recovery::Side;

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
    book.undo();
    book.undo();
    CHECK(book.placements()[0] == drawn);

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
    CHECK_FALSE(book.canUndo());
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

TEST_CASE("undoing everything gives what was loaded, redoing everything what was there", "[desk][placements][property]")
{
    CHECK(rc::check("undo and redo", [] {
        PlacementBook book;
        recovery::Placement known;
        known.entry = {296, 170};
        known.end = {256, 256};
        book.load({known});
        const auto loaded = book.placements();
        const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 5));
        for (const int step : steps) {
            const int last = static_cast<int>(book.placements().size());
            switch (step) {
            case 0:
                book.draw(ChartView::front, {303, 206}, {272, 326});
                break;
            case 1:
                book.remove(last);
                break;
            case 2:
                book.duplicate(last);
                break;
            case 3:
                book.mirror(1);
                break;
            default:
                book.mirrorAll();
            }
        }
        const auto done = book.placements();
        while (book.canUndo()) {
            book.undo();
        }
        RC_ASSERT(book.placements() == loaded);
        while (book.canRedo()) {
            book.redo();
        }
        RC_ASSERT(book.placements() == done);
    }));
}
