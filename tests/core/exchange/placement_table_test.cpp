// The table of placements: read with its place named, written so that it reads back.

#include "core/exchange/placement_table.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::exchange;

namespace {

const std::string head = "course,clinic,technique,zone,lot\n";

std::string faultOf(const std::string& rows)
{
    const auto read = readPlacements(head + rows);
    REQUIRE_FALSE(read);
    return text(read.error());
}

}  // namespace

TEST_CASE("a placement names what is known and leaves the rest empty", "[exchange][placements]")
{
    const auto read = readPlacements(head + "c1,Mole,long barbs,cheek,TH-4417\nc2,,,,\n");

    REQUIRE(read);
    REQUIRE(read->size() == 2);
    CHECK((*read)[0] == PlacementRow{"c1", "Mole", "long barbs", recovery::Zone::cheek, "TH-4417"});
    CHECK((*read)[1] == PlacementRow{"c2", "", "", std::nullopt, ""});
}

TEST_CASE("a bad cell is named with line, column and reason", "[exchange][placements][errors]")
{
    CHECK(faultOf("c1,,a,cheek,\nc2,,a,chin,\n").find("line 3, column 4 (zone): want one of brow") != std::string::npos);
    CHECK(faultOf(",,a,cheek,\n").find("line 2, column 1 (course)") != std::string::npos);
    CHECK(faultOf("c1,,a,cheek," + std::string(41, 'x') + "\n").find("column 5 (lot)") != std::string::npos);
    CHECK(faultOf("c1,Mole,a,cheek,\nc1,Reed,a,neck,\n").find("line 3, column 2 (clinic): differs from line 2")
          != std::string::npos);
    CHECK(faultOf("c1,Mole\n").find("the header has 5 columns, this row 2") != std::string::npos);
    CHECK_FALSE(readPlacements("course,zone\nc1,cheek\n"));
    CHECK_FALSE(readPlacements(""));
}

TEST_CASE("what was written reads back, formulas and quotes included", "[exchange][placements][property]")
{
    CHECK(rc::check("round trip", [] {
        const auto name = [] {
            return *rc::gen::elementOf(std::vector<std::string>{"=1+1", "a,b", "say \"so\"", "-x", "", "Grün", "'=a"});
        };
        std::vector<PlacementRow> rows;
        const int count = *rc::gen::inRange(0, 8);
        for (int i = 0; i < count; ++i)
            rows.push_back({std::to_string(i) + name(), name(), name(),
                            *rc::gen::arbitrary<bool>() ? std::optional(*rc::gen::elementOf(recovery::allZones)) : std::nullopt,
                            name()});
        const auto back = readPlacements(writePlacements(rows));
        RC_ASSERT(back.has_value());
        RC_ASSERT(back.value() == rows);
    }));
}
