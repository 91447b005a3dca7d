// Local times across clock changes.
// Source of the rules: IANA tz database, Europe/Berlin: +01:00, +02:00 from 2027-03-28T01:00Z to
// 2027-10-31T01:00Z.

#include "core/aftercare/care_plan.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace ebbline::aftercare;

TEST_CASE("a skipped local time becomes the first after the gap, a doubled one the first of two", "[aftercare][published]")
{
    const auto zone = Zone::find("Europe/Berlin");
    REQUIRE(zone);
    struct Row { unsigned month; unsigned day; int minute; const char* instant; };
    const auto row = GENERATE(Row{3, 28, 2 * 60 + 30, "2027-03-28T01:00:00Z"}, Row{3, 28, 3 * 60, "2027-03-28T01:00:00Z"},
                              Row{10, 31, 2 * 60 + 30, "2027-10-31T00:30:00Z"}, Row{10, 31, 3 * 60, "2027-10-31T02:00:00Z"});

    const clock::LocalDay day{std::chrono::year{2027} / std::chrono::month{row.month} / std::chrono::day{row.day}};

    CHECK(clock::toIso8601(zone->instantOf(day, std::chrono::minutes(row.minute))) == row.instant);
}

TEST_CASE("a moment carries the offset of its day, whole hours or not", "[aftercare]")
{
    const auto berlin = Zone::find("Europe/Berlin");
    const auto kolkata = Zone::find("Asia/Kolkata");
    REQUIRE(berlin);
    REQUIRE(kolkata);
    const auto winter = clock::parseIso8601("2027-01-10T12:00:00Z")->at;
    const auto summer = clock::parseIso8601("2027-07-10T12:00:00Z")->at;

    CHECK(berlin->moment(winter).offset == std::chrono::minutes(60));
    CHECK(berlin->moment(summer).offset == std::chrono::minutes(120));
    CHECK(kolkata->moment(summer).offset == std::chrono::minutes(330));
    CHECK(kolkata->moment(summer).zone == "Asia/Kolkata");
}

TEST_CASE("a zone that nobody knows is not found", "[aftercare][errors]")
{
    CHECK(Zone::find("Middle/Earth").error().reason == Reason::notFound);
    CHECK(Zone::find("").error().reason == Reason::notFound);
}
