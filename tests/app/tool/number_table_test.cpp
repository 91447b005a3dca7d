// Columns by name out of anybody's table, and the place of everything that is wrong with it.

#include "app/tool/number_table.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <cmath>

using namespace ebbline::tool;
namespace exchange = ebbline::exchange;

namespace {

NumberTable tableOf(std::string_view text)
{
    auto table = NumberTable::read(text);
    REQUIRE(table);
    return std::move(*table);
}

}  // namespace

TEST_CASE("a column is read by its name, whatever stands beside it", "[tool]")
{
    NumberTable table = tableOf("note,value\nfirst,1.5\n\"second, quoted\",-2e3\nthird,+7\n");

    const auto values = table.numbers("value", anyNumber);

    CHECK(values == std::vector<std::optional<double>>{1.5, -2000, 7});
    CHECK(table.problems().count == 0);
    CHECK(table.line(2) == 4);
}

TEST_CASE("missing is empty or NA, and only where it may be", "[tool]")
{
    NumberTable table = tableOf("value\n\"\"\nNA\n3\n");
    CHECK(table.numbers("value", anyNumberOrNone) == std::vector<std::optional<double>>{std::nullopt, std::nullopt, 3});
    CHECK(table.problems().count == 0);

    (void)table.numbers("value", anyNumber);
    REQUIRE(table.problems().count == 2);
    CHECK(exchange::text(table.problems().listed[1]) == "line 3, column 1 (value): want a number, found 'NA'");
}

TEST_CASE("what is no number is named with its place", "[tool][errors]")
{
    for (const char* cell : {"abc", "1,5", "1.5x", "nan", "inf", "-inf", "1e999", "2e12", " 1", "0x10", "--1", "1e"}) {
        CAPTURE(cell);
        NumberTable table = tableOf(std::string("a,value\n1,\"") + cell + "\"\n");
        (void)table.numbers("value", anyNumber);
        REQUIRE(table.problems().count == 1);
        CHECK(table.problems().listed[0].line == 2);
        CHECK(table.problems().listed[0].column == 2);
        CHECK(table.problems().listed[0].name == "value");
    }
}

TEST_CASE("answers are yes or no in three spellings", "[tool]")
{
    NumberTable table = tableOf("event\nyes\nno\ntrue\nfalse\n1\n0\n");
    CHECK(table.answers("event", false) == std::vector<std::optional<bool>>{true, false, true, false, true, false});
    NumberTable vague = tableOf("event\nmaybe\n\"\"\n");
    CHECK(vague.answers("event", true).size() == 2);
    CHECK(vague.problems().count == 1);
    CHECK(vague.problems().listed[0].line == 2);
}

TEST_CASE("a header that lies and rows that do not fit are refused", "[tool][errors]")
{
    CHECK_FALSE(NumberTable::read(""));
    CHECK_FALSE(NumberTable::read("a,a\n1,2\n"));
    CHECK_FALSE(NumberTable::read("a,\n1,2\n"));
    const auto ragged = NumberTable::read("a,b\n1,2\n3\n4,5,6\n");
    REQUIRE_FALSE(ragged);
    CHECK(ragged.error().count == 2);
    CHECK(ragged.error().listed[0].line == 3);
    CHECK(ragged.error().listed[1].line == 4);
    NumberTable table = tableOf("a,b\n1,2\n");
    CHECK(table.numbers("value", anyNumber).empty());
    CHECK(table.problems().count == 1);
    CHECK(table.words("b") == std::vector<std::string>{"2"});
}

TEST_CASE("whatever the bytes, a number that is read is finite and within its range", "[tool][property]")
{
    CHECK(rc::check("bytes", [] {
        const auto cell = *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789+-.eExnaif,\"\n\r ")));
        auto table = NumberTable::read("value\n" + cell + "\n");
        if (!table)
            return;
        const auto values = table->numbers("value", {0, 1, true, false, "a share"});
        if (table->problems().count > 0)
            return;
        for (const auto& value : values)
            RC_ASSERT(value.has_value() && std::isfinite(*value) && *value > 0 && *value < 1);
    }));
}
