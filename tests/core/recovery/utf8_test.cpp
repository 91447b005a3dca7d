// What counts as UTF-8. Source: RFC 3629 (Yergeau, 2003), sections 3 and 4; the impossible forms
// are those its section 10 warns of.

#include "core/recovery/utf8.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using ebbline::recovery::isUtf8;

TEST_CASE("the first and last character of every length are UTF-8", "[recovery][utf8][boundary]")
{
    using namespace std::string_literals;
    const auto text = GENERATE(""s, "\0"s, "\x7f"s, "\xc2\x80"s, "\xdf\xbf"s, "\xe0\xa0\x80"s, "\xed\x9f\xbf"s,
                               "\xee\x80\x80"s, "\xef\xbf\xbf"s, "\xf0\x90\x80\x80"s, "\xf4\x8f\xbf\xbf"s);
    CHECK(isUtf8(text));
    CHECK(isUtf8("a" + text + "z"));
}

TEST_CASE("overlong forms, surrogates, halves and what lies past the end are not UTF-8", "[recovery][utf8][errors]")
{
    using namespace std::string_literals;
    const auto text = GENERATE("\x80"s, "\xbf"s, "\xc0\x80"s, "\xc1\xbf"s, "\xe0\x80\x80"s, "\xe0\x9f\xbf"s,
                               "\xf0\x80\x80\x80"s, "\xf0\x8f\xbf\xbf"s, "\xed\xa0\x80"s, "\xed\xbf\xbf"s,
                               "\xf4\x90\x80\x80"s, "\xf5\x80\x80\x80"s, "\xff"s, "\xc3"s, "\xe2\x82"s,
                               "\xf0\x9f\x98"s, "\xc3("s, "\xe2\x28\xa1"s);
    CHECK_FALSE(isUtf8(text));
    CHECK_FALSE(isUtf8("a" + text + "z"));
}
