// Events under the axis: every one has a tick, labels do not run into one another.
#include "app/charts/event_line.h"

#include <catch2/catch_test_macros.hpp>

#include <rapidcheck.h>

using namespace ebbline::charts;

TEST_CASE("labels never overlap and never leave the plot; every event keeps its tick", "[charts][events][property]")
{
    CHECK(rc::check("placed", [] {
        QList<Event> events;
        const auto days = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 2100));
        for (const int day : days) {
            events.append({day / 100.0, QStringLiteral("visit forward"), false});
        }
        QFont font(QStringLiteral("Noto Sans"));
        font.setPixelSize(12);
        const auto places = placeEvents(events, 30, 400, 16, font);
        RC_ASSERT(places.size() == events.size());
        for (const auto& place : places) {
            RC_ASSERT(place.tick >= 30 && place.tick <= 430);
            if (place.box.isEmpty()) {
                continue;
            }
            RC_ASSERT(place.box.right() <= 430.001);
            for (const auto& other : places) {
                RC_ASSERT(other.event == place.event || other.box.isEmpty() || !other.box.intersects(place.box));
            }
        }
    }));
}

TEST_CASE("an event after the last day stands at the end of the axis", "[charts][events]")
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(12);

    const auto places = placeEvents({{25, QStringLiteral("follow-up"), false}}, 0, 210, 16, font);  // axis ends at 210

    REQUIRE(places.size() == 1);
    CHECK(places[0].tick == 210);
}

TEST_CASE("a quiet event finds its place last: its label never takes that of another", "[charts][events]")
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(12);
    QList<Event> loud;
    QList<Event> all;
    for (int day = 0; day < 12; ++day) {
        all.append({day + 0.1, QStringLiteral("photos"), false, true});
        if (day % 2 == 0) {
            loud.append({day + 0.5, QStringLiteral("called"), true});
            all.append(loud.last());
        }
    }

    const auto alone = placeEvents(loud, 30, 400, 16, font);
    const auto together = placeEvents(all, 30, 400, 16, font);

    REQUIRE(together.size() == all.size());
    int same = 0;
    int quietLabels = 0;
    for (const auto& place : together) {
        quietLabels += all[place.event].quiet && !place.box.isEmpty() ? 1 : 0;
        for (const auto& other : alone) {
            same += !all[place.event].quiet && all[place.event].day == loud[other.event].day && place.box == other.box ? 1 : 0;
        }
    }
    CHECK(same == loud.size());
    CHECK(quietLabels > 0);
    CHECK(quietLabels < 12);
}
