// Which thread of a plan became which: by where it lies, never by its place in a list.

#include "core/recovery/plan.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace ebbline;
using namespace ebbline::recovery;

namespace {

Placement thread(double x, double y, ChartView view = ChartView::front)
{
    Placement placement;
    placement.view = view;
    placement.entry = {x, y};
    placement.end = {x - 40, y + 90};
    return placement;
}

std::vector<Placement> six()
{
    return {thread(296, 170), thread(280, 190), thread(264, 210), thread(144, 170), thread(128, 190), thread(112, 210)};
}

/// The least that any pairing leaves, by trying every one: distances in all, and half of strangeUnits for who stays alone.
double leastLeft(const std::vector<Placement>& planned, const std::vector<Placement>& done)
{
    const std::size_t places = planned.size() + done.size();
    std::vector<std::size_t> order(places);
    std::iota(order.begin(), order.end(), std::size_t{0});
    double least = 1e9;
    do {
        double left = 0;
        std::size_t paired = 0;
        for (std::size_t i = 0; i < planned.size(); ++i)
            if (order[i] < done.size() && planned[i].view == done[order[i]].view) {
                const auto& a = planned[i];
                const auto& b = done[order[i]];
                left += std::hypot(a.entry.x - b.entry.x, a.entry.y - b.entry.y) + std::hypot(a.end.x - b.end.x, a.end.y - b.end.y);
                ++paired;
            }
        left += static_cast<double>(planned.size() + done.size() - 2 * paired) * strangeUnits / 2;
        least = std::min(least, left);
    } while (std::next_permutation(order.begin(), order.end()));
    return least;
}

double leftBy(const PlanComparison& comparison, const std::vector<Placement>& planned, const std::vector<Placement>& done)
{
    double left = static_cast<double>(comparison.leftOut.size() + comparison.added.size()) * strangeUnits / 2;
    for (const PlanMatch& match : comparison.matches) {
        const auto& a = planned[static_cast<std::size_t>(match.planned - 1)];
        const auto& b = done[static_cast<std::size_t>(match.done - 1)];
        left += std::hypot(a.entry.x - b.entry.x, a.entry.y - b.entry.y) + std::hypot(a.end.x - b.end.x, a.end.y - b.end.y);
    }
    return left;
}

}  // namespace

TEST_CASE("a planned thread that is left out makes none of the others otherwise than planned", "[recovery][plan]")
{
    const auto planned = six();
    auto done = planned;
    done.erase(done.begin());
    const auto comparison = compareWithPlan(planned, done);
    CHECK(comparison.leftOut == std::vector{1});
    CHECK(comparison.added.empty());
    REQUIRE(comparison.matches.size() == 5);
    for (const PlanMatch& match : comparison.matches) {
        CHECK(match.done == match.planned - 1);
        CHECK_FALSE(match.moved);
        CHECK_FALSE(match.otherwise);
    }
    CHECK_FALSE(comparison.isAsPlanned());
    CHECK(compareWithPlan(planned, planned).isAsPlanned());
    std::reverse(done.begin(), done.end());
    CHECK(compareWithPlan(planned, done).leftOut == std::vector{1});
}

TEST_CASE("what was moved, added or placed with another thread is named so", "[recovery][plan]")
{
    const auto planned = six();
    auto done = planned;
    done[1].entry.x += 7;                                     // an end moved
    done[2].end.y += 5;                                       // a hand that shakes
    done[3].gauge += 1;                                       // another needle
    done[4].zone = Zone::neck;                                // where it lies, and said to be of another zone
    done[5] = thread(30, 400);                                // another one, far from all
    done[0].lot = "TH-1";                                     // a plan names no pack, and what is injected is no part of it
    done[0].article = "09506000134352";
    done[0].anaestheticMl = 0.4;
    done[0].redone = Redone{Redoing::added, "one side hung lower"};
    const auto comparison = compareWithPlan(planned, done);
    CHECK(comparison.leftOut == std::vector{6});
    CHECK(comparison.added == std::vector{6});
    REQUIRE(comparison.matches.size() == 5);
    CHECK(comparison.matches[0] == PlanMatch{1, 1, false, false});
    CHECK(comparison.matches[1] == PlanMatch{2, 2, true, false});
    CHECK(comparison.matches[2] == PlanMatch{3, 3, false, false});
    CHECK(comparison.matches[3] == PlanMatch{4, 4, false, true});
    CHECK(comparison.matches[4] == PlanMatch{5, 5, false, true});
}

TEST_CASE("threads of two views are never one, and of two on one track each keeps its own kind", "[recovery][plan]")
{
    const std::vector front{thread(296, 170)};
    const std::vector oblique{thread(296, 170, ChartView::leftOblique)};
    CHECK(compareWithPlan(front, oblique).leftOut == std::vector{1});
    CHECK(compareWithPlan(front, oblique).added == std::vector{1});

    std::vector planned{thread(296, 170), thread(296, 170)};
    planned[1].material = Material::pcl;
    CHECK(compareWithPlan(planned, std::vector{planned[1], planned[0]}).isAsPlanned());
    CHECK(compareWithPlan({}, planned).added == std::vector{1, 2});
    CHECK(compareWithPlan(planned, {}).leftOut == std::vector{1, 2});
}

TEST_CASE("no other pairing leaves less, in whatever order the threads stand", "[recovery][plan][property]")
{
    CHECK(rc::check("least", [] {
        const auto some = [] {
            std::vector<Placement> threads;
            for (int i = *rc::gen::inRange(0, 5); i > 0; --i)
                threads.push_back(thread(*rc::gen::inRange(60, 180), *rc::gen::inRange(100, 180), *rc::gen::element(ChartView::front, ChartView::leftOblique)));
            return threads;
        };
        const auto planned = some();
        const auto done = some();
        const auto comparison = compareWithPlan(planned, done);
        RC_ASSERT(comparison.matches.size() + comparison.leftOut.size() == planned.size());
        RC_ASSERT(comparison.matches.size() + comparison.added.size() == done.size());
        // The rules for equal ways may give away some thousandths of a unit.
        RC_ASSERT(leftBy(comparison, planned, done) <= leastLeft(planned, done) + 0.1);
        RC_ASSERT(compareWithPlan(planned, done).matches == comparison.matches);
    }));
}

TEST_CASE("of a plan its threads are recorded, without what only a pack or an injection says", "[recovery][plan]")
{
    auto first = thread(296, 170);
    first.lot = "TH-1";
    first.article = "09506000134352";
    first.expiry = "2029-06-30";
    first.anaestheticMl = 0.4;
    first.instrument = Instrument::bluntCannula;
    first.epinephrineAt = EpinephrineAt::both;
    auto dot = thread(280, 190);
    dot.end = dot.entry;
    const auto recorded = plannedOf(std::vector{first, dot});
    REQUIRE(recorded.size() == 1);
    auto bare = thread(296, 170);
    bare.instrument = Instrument::bluntCannula;
    CHECK(recorded[0] == bare);
}
