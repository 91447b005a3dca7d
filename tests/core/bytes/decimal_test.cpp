// Numbers as text, whatever the system's locale.

#include "core/bytes/decimal.h"

#include "tests/core/bytes/decimal_comma.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <cstdio>

using namespace ebbline;

TEST_CASE("a number has a point before its decimals, and as many as are asked for", "[bytes]")
{
    CHECK(bytes::fixedDecimal(38.2, 1) == "38.2");
    CHECK(bytes::fixedDecimal(38, 1) == "38.0");
    CHECK(bytes::fixedDecimal(-0.25, 2) == "-0.25");
    CHECK(bytes::fixedDecimal(7, 0) == "7");
    CHECK(bytes::leadingDecimal("38.2 C") == 38.2);
    CHECK(bytes::leadingDecimal("7 of 10") == 7);
    CHECK(bytes::leadingDecimal("none") == 0);
    CHECK(bytes::leadingDecimal("") == 0);
}

TEST_CASE("numbers are written to the digit as printf does in the C locale", "[bytes][property]")
{
    CHECK(rc::check([] {
        const double value = *rc::gen::inRange(-100'000'000, 100'000'000) / 1000.0;
        const int places = *rc::gen::inRange(0, 10);
        char text[64];
        std::snprintf(text, sizeof text, "%.*f", places, value);
        RC_ASSERT(bytes::fixedDecimal(value, places) == text);
    }));
}

TEST_CASE("under a decimal comma numbers are written and read with a point", "[bytes]")
{
    const test::DecimalComma comma;
    if (!comma.isThere())
        SKIP(test::DecimalComma::missing);
    char control[16];
    std::snprintf(control, sizeof control, "%.1f", 38.2);
    REQUIRE(std::string(control) == "38,2");

    CHECK(bytes::fixedDecimal(38.2, 1) == "38.2");
    CHECK(bytes::leadingDecimal("38.9 C") == 38.9);
}
