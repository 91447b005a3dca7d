// The code on a pack: read strictly, whichever way it comes.
#include "core/exchange/gs1.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace std::chrono;
using exchange::PackCode;
using exchange::parsePackCode;
using exchange::readingsOf;

namespace {

constexpr year now{2027};
const std::string gs(1, '\x1d');

Reason refusal(std::string_view text)
{
    const auto code = parsePackCode(text, now);
    REQUIRE_FALSE(code);
    return code.error().reason;
}

}  // namespace

TEST_CASE("the printed form and what a scanner types say the same", "[exchange][gs1]")
{
    const auto printed = parsePackCode("(01)09506000134352(17)290630(10)TH-4417(21)A17", now);
    REQUIRE(printed);
    CHECK(printed->article == "09506000134352");
    CHECK(printed->lot == "TH-4417");
    CHECK(printed->serial == "A17");
    CHECK(printed->expiry == year{2029} / June / 30);
    CHECK_FALSE(printed->produced);

    for (const std::string symbology : {"", "]d2", "]Q3", "]C1", "]e0"}) {
        CHECK(parsePackCode(symbology + "0109506000134352" + "17290630" + "10TH-4417" + gs + "21A17", now).value() == *printed);
        CHECK(parsePackCode(symbology + "10TH-4417" + gs + "21A17" + gs + "0109506000134352" + "17290630", now).value() == *printed);
    }
}

TEST_CASE("day 00 is the last day of its month, and the century is the near one", "[exchange][gs1]")
{
    CHECK(parsePackCode("(17)280200", now)->expiry == year{2028} / February / 29);
    CHECK(parsePackCode("(17)770101", now)->expiry == year{2077} / January / 1);
    CHECK(parsePackCode("(17)780101", now)->expiry == year{1978} / January / 1);
    CHECK(parsePackCode("(17)010101", year{2099})->expiry == year{2101} / January / 1);
}

TEST_CASE("whatever is not exactly such a code is refused", "[exchange][gs1]")
{
    CHECK(refusal("(01)09506000134353") == Reason::malformed);          // check digit
    CHECK(refusal("(01)0950600013435") == Reason::malformed);           // 13 digits
    CHECK(refusal("(17)290231") == Reason::malformed);                  // 31 February
    CHECK(refusal("(17)291301") == Reason::malformed);                  // month 13
    CHECK(refusal("(10)") == Reason::malformed);
    CHECK(refusal("(10)123456789012345678901") == Reason::malformed);   // 21 characters
    CHECK(refusal("(10)A(10)B") == Reason::malformed);                  // twice
    CHECK(refusal("(10)A B") == Reason::malformed);                     // a space
    CHECK(refusal("(99)A") == Reason::unsupported);
    CHECK(refusal("99A") == Reason::unsupported);
    CHECK(refusal("TH-4417") == Reason::malformed);
    CHECK(refusal("(10)A" + gs) == Reason::malformed);
    CHECK(refusal("10A" + gs) == Reason::malformed);
    CHECK(refusal("0109506") == Reason::malformed);
    CHECK(refusal("") == Reason::notEnough);
    CHECK(refusal("]d2") == Reason::notEnough);
    CHECK(refusal("(21)A17") == Reason::notEnough);
    CHECK(refusal(std::string(121, '1')) == Reason::tooLarge);
}

TEST_CASE("without its separator a lot may end sooner: every reading is named, and none is taken for sure", "[exchange][gs1]")
{
    const auto lots = [](const std::string& text) {
        std::vector<std::string> found;
        const auto readings = readingsOf(text, now).value();
        for (const auto& reading : readings)
            found.push_back(reading.lot.value_or(""));
        return found;
    };
    using Lots = std::vector<std::string>;
    CHECK(lots("10TH-4417" + gs + "21A17") == Lots{"TH-4417"});
    CHECK(lots("(10)TH-441721A17") == Lots{"TH-441721A17"});
    CHECK(lots("10TH-4417") == Lots{"TH-4417"});
    CHECK(lots("10TH-441721A17") == Lots{"TH-441721A17", "TH-4417"});
    CHECK(lots("01095060001343521021-A") == Lots{"21-A"});
    CHECK(lots("10TH-4411270115") == Lots{"TH-4411270115", "TH-44"});
    CHECK(lots("10TH-4411279915") == Lots{"TH-4411279915"});  // month 99: no date is hidden there

    const auto hidden = readingsOf("10TH-44172906302100000000000000000A17", now).value();  // too long for one lot
    REQUIRE_FALSE(hidden.empty());
    CHECK(hidden.front().lot == "TH-44");
    CHECK(hidden.front().expiry == year{2029} / June / 30);
    CHECK(readingsOf("10TH-44" + gs, now).error().reason == Reason::malformed);
    CHECK(readingsOf("", now).error().reason == Reason::notEnough);
}

TEST_CASE("any bytes are read or refused, never misread as longer than the bounds", "[exchange][gs1]")
{
    CHECK(rc::check([](const std::string& text) {
        if (const auto code = parsePackCode(text, now)) {
            RC_ASSERT(code->lot.value_or("x").size() >= 1);
            RC_ASSERT(code->lot.value_or("x").size() <= 20);
            RC_ASSERT(code->article.value_or("09506000134352").size() == 14);
        }
    }));
}
