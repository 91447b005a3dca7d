// A protocol as a file: there and back without loss, and nothing taken that is not understood.

#include "app/tool/protocol_file.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace ebbline::tool;

namespace {

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const auto place = text.find(from);
    REQUIRE(place != std::string::npos);
    return text.replace(place, from.size(), to);
}

}  // namespace

TEST_CASE("a protocol comes back from its file as it was", "[tool][protocol]")
{
    triggers::Protocol protocol = triggers::defaultProtocol();
    protocol.name = "Neck \"two\" \xC3\xA9";
    protocol.thresholds.oneSideFills = 1.0 / 3;

    const auto back = protocolFromText(protocolText(protocol));

    REQUIRE(back);
    CHECK(*back == protocol);
    CHECK(protocolText(*back) == protocolText(protocol));
}

TEST_CASE("a file of the first format is read; what it does not know keeps its default", "[tool][protocol]")
{
    triggers::Protocol protocol = triggers::defaultProtocol();
    protocol.thresholds.level = 4.25;
    std::string first = replaced(protocolText(protocol), "\"formatVersion\": 2", "\"formatVersion\": 1");
    for (const char* name : {"oneSideFills", "oneSideWorsens", "worseningGuard", "puckeringKeptDay", "puckeringLateDay",
                             "puckeringTogether"}) {
        const auto from = first.find('"' + std::string(name) + '"');
        REQUIRE(from != std::string::npos);
        first.erase(from, first.find('\n', from) - from);
    }
    const auto sums = first.find("\"sums\"");
    first.erase(sums, first.find('}', sums) + 1 - sums);
    first.erase(first.rfind(',', sums), 1);
    first = replaced(first, "\"rebound\":", "\"sideRebound\": 2.2,\n  \"filling\": 1.4,\n  \"rebound\":");

    const auto read = protocolFromText(first);

    REQUIRE(read);
    CHECK(*read == protocol);
    CHECK(protocolText(*read) == protocolText(protocol));
}

TEST_CASE("what is missing, unknown or out of bounds is refused by name", "[tool][protocol][errors]")
{
    const std::string good = protocolText(triggers::defaultProtocol());
    struct Row { const char* from; const char* to; Reason reason; const char* named; };
    const Row row = GENERATE(
        Row{"\"rebound\":", "\"rebouns\":", Reason::malformed, "thresholds.rebound"},
        Row{"\"levelGuard\": 3", "\"levelGuard\": 30", Reason::outOfRange, "thresholds.levelGuard"},
        Row{"\"level\": ", "\"level\": -", Reason::outOfRange, "thresholds.level"},
        Row{"\"rebound\": 9.32", "\"rebound\": 100.5", Reason::outOfRange, "thresholds.rebound"},
        Row{"\"slowOverall\": ", "\"slowOverall\": 0.0e", Reason::malformed, "protocol"},
        Row{"\"falseAlertBudget\": ", "\"falseAlertBudget\": -", Reason::outOfRange, "thresholds.falseAlertBudget"},
        Row{"\"silentDays\": 3", "\"silentDays\": 0", Reason::outOfRange, "thresholds.silentDays"},
        Row{"\"silentDays\": 3", "\"silentDays\": 2.5", Reason::outOfRange, "thresholds.silentDays"},
        Row{"\"formatVersion\": 2", "\"formatVersion\": 3", Reason::unsupported, "format"},
        Row{"\"formatVersion\": 2", "\"formatVersion\": 1", Reason::malformed, "thresholds.sideRebound"},
        Row{"\"ebbline-protocol\"", "\"other\"", Reason::malformed, "not a protocol"},
        Row{"\"calibratedOn\":", "\"extra\": 1,\n  \"calibratedOn\":", Reason::malformed, "not one of ours"},
        Row{"\"noise\": ", "\"noise\": -", Reason::outOfRange, "pain"},
        Row{"\"followUpDay\": 21", "\"followUpDay\": \"21\"", Reason::outOfRange, "followUpDay"});

    const auto read = protocolFromText(replaced(good, row.from, row.to));

    CAPTURE(row.from, row.to);
    REQUIRE_FALSE(read);
    CHECK(read.error().reason == row.reason);
    CHECK(read.error().detail.find(row.named) != std::string::npos);
}

TEST_CASE("text that is no JSON is refused and never thrown", "[tool][protocol][errors]")
{
    const std::string text = GENERATE(as<std::string>{}, "", "{", "[1,2]", "null", "\xff\xfe", "{\"format\": 1e999}");

    CHECK_FALSE(protocolFromText(text));
    CHECK(protocolFromText(std::string(maximumProtocolBytes + 1, ' ')).error().reason == Reason::tooLarge);
}
