// A protocol as a file: there and back without loss, and nothing taken that is not understood.

#include "core/clock/iso8601.h"
#include "core/exchange/protocol_file.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;
using namespace ebbline::exchange;

namespace {

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const auto place = text.find(from);
    REQUIRE(place != std::string::npos);
    return text.replace(place, from.size(), to);
}

ProtocolFile fileOf(triggers::Protocol protocol)
{
    return {std::move(protocol), "ebbline 0.1.0", *clock::parseIso8601("2027-05-01T18:00:00+02:00")};
}

/// As the second format had it: without who made it, and when.
std::string ofSecondFormat(std::string text)
{
    const auto made = text.find("\"made\"");
    REQUIRE(made != std::string::npos);
    text.erase(made, text.find("\"name\"", made) - made);
    return replaced(text, "\"formatVersion\": 3", "\"formatVersion\": 2");
}

}  // namespace

TEST_CASE("a protocol comes back from its file as it was", "[exchange][protocol]")
{
    triggers::Protocol protocol = triggers::defaultProtocol();
    protocol.name = "Neck \"two\" \xC3\xA9";
    protocol.thresholds.oneSideFills = 1.0 / 3;

    const ProtocolFile file = fileOf(protocol);
    const auto back = protocolFromText(protocolText(file));

    REQUIRE(back);
    CHECK(*back == file);
    CHECK(protocolText(*back) == protocolText(file));
}

TEST_CASE("a file of the second format is read, and says nothing of who wrote it and when", "[exchange][protocol]")
{
    const ProtocolFile file = fileOf(triggers::defaultProtocol());

    const auto read = protocolFromText(ofSecondFormat(protocolText(file)));

    REQUIRE(read);
    CHECK(read->protocol == file.protocol);
    CHECK(read->program.empty());
    CHECK_FALSE(read->written);
}

TEST_CASE("a file of the first format is read; what it does not know keeps its default", "[exchange][protocol]")
{
    triggers::Protocol protocol = triggers::defaultProtocol();
    protocol.thresholds.level = 4.25;
    std::string first = replaced(ofSecondFormat(protocolText(fileOf(protocol))), "\"formatVersion\": 2", "\"formatVersion\": 1");
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
    CHECK(read->protocol == protocol);
}

TEST_CASE("what is missing, unknown or out of bounds is refused by name", "[exchange][protocol][errors]")
{
    const std::string good = protocolText(fileOf(triggers::defaultProtocol()));
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
        Row{"\"formatVersion\": 3", "\"formatVersion\": 4", Reason::unsupported, "format"},
        Row{"\"formatVersion\": 3", "\"formatVersion\": 0", Reason::unsupported, "format"},
        Row{"\"formatVersion\": 3", "\"formatVersion\": 1", Reason::malformed, "thresholds.sideRebound"},
        Row{"\"formatVersion\": 3", "\"formatVersion\": 2", Reason::malformed, "not one of ours"},
        Row{"+02:00\"", "\"", Reason::malformed, "made.at"},
        Row{"\"minutesOfDay\": [", "\"minutesOfDay\": [\n4294967296,", Reason::outOfRange, "minutesOfDay"},
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

TEST_CASE("text that is no JSON is refused and never thrown", "[exchange][protocol][errors]")
{
    const std::string text = GENERATE(as<std::string>{}, "", "{", "[1,2]", "null", "\xff\xfe", "{\"format\": 1e999}",
                                      "{\"format\": " + std::string(5000, '9') + "}");

    const auto read = protocolFromText(text);
    REQUIRE_FALSE(read);
    // Bytes of anybody's are not repeated.
    CHECK(read.error().detail.find('\xff') == std::string::npos);
    CHECK(read.error().detail.size() < 200);
    CHECK(protocolFromText(std::string(maximumProtocolBytes + 1, ' ')).error().reason == Reason::tooLarge);
}

TEST_CASE("a file of more members or levels than any protocol has is refused before it is built up", "[exchange][protocol][errors]")
{
    // Each new member of an object is looked for among all of them: as many as fit into a file would take minutes.
    std::string wide = "{";
    for (int i = 0; wide.size() < maximumProtocolBytes - 100; ++i)
        wide += "\"" + std::to_string(i) + "\":0,";
    CHECK(protocolFromText(wide + "\"end\":0}").error().detail.contains("more levels or members"));
    CHECK(protocolFromText(std::string(1'000'000, '[')).error().detail.contains("more levels or members"));
}
