// Times in our open files: ISO 8601 with an offset, and nothing looser.

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <string_view>

using namespace ebbline;
using namespace ebbline::clock;
using namespace std::chrono_literals;

namespace {

Moment parsed(std::string_view text)
{
    const auto moment = parseIso8601(text);
    REQUIRE(moment);
    return *moment;
}

}  // namespace

TEST_CASE("a local time and its offset give the instant", "[clock]")
{
    const Instant midnight{std::chrono::sys_days{std::chrono::year{2027} / 3 / 28}};

    CHECK(parsed("2027-03-28T00:00:00Z").at == midnight);
    CHECK(parsed("2027-03-28T02:00:00+02:00").at == midnight);
    CHECK(parsed("2027-03-27T19:00:00-05:00").at == midnight);
    CHECK(parsed("2027-03-28T05:30+05:30").at == midnight);
    CHECK(parsed("2027-03-28T00:00:00.25Z").at == midnight + 250ms);
}

TEST_CASE("the day is the day on the wall clock, not the day in UTC", "[clock]")
{
    CHECK(toIso8601(parsed("2027-03-28T23:30:00-05:00").day()) == "2027-03-28");
    CHECK(toIso8601(parsed("2027-03-28T00:30:00+10:00").day()) == "2027-03-28");
    CHECK(parsed("2027-03-28T14:05:59+02:00").minuteOfDay() == 14 * 60 + 5);
}

TEST_CASE("day of recovery counts local midnights, wherever the patient is", "[clock]")
{
    const Moment treated = parsed("2027-03-01T17:00:00+01:00");

    CHECK(dayOfRecovery(treated, parsed("2027-03-01T23:59:00+01:00")) == 0);
    CHECK(dayOfRecovery(treated, parsed("2027-03-02T00:01:00+01:00")) == 1);
    CHECK(dayOfRecovery(treated, parsed("2027-03-22T08:00:00-08:00")) == 21);
    CHECK(dayOfRecovery(treated, parsed("2027-02-28T12:00:00+01:00")) == -1);
}

TEST_CASE("other forms of time are refused", "[clock][errors]")
{
    const auto* text = GENERATE("", "2027-03-28", "2027-03-28T14:05:00", "28.03.2027 14:05", "2027-3-28T14:05:00Z",
                                "2027-03-28T14:05:00z", "2027-03-28T14:05:00Z ", "2027-03-28T14:05:00+2:00",
                                "2027-03-28T14:05:00.1234Z", "2027-03-28T14:05:00.Z", "2027-03-28T1405Z");

    const auto moment = parseIso8601(text);

    CAPTURE(text);
    REQUIRE_FALSE(moment);
    CHECK(moment.error().reason == Reason::malformed);
}

TEST_CASE("impossible dates and times are refused", "[clock][errors]")
{
    const auto* text = GENERATE("2027-02-29T00:00:00Z", "2027-13-01T00:00:00Z", "2027-00-10T00:00:00Z",
                                "2027-04-31T00:00:00Z", "2027-04-30T24:00:00Z", "2027-04-30T12:60:00Z",
                                "2027-04-30T12:00:60Z", "2027-04-30T12:00:00+14:01", "2027-04-30T12:00:00-15:00");

    const auto moment = parseIso8601(text);

    CAPTURE(text);
    REQUIRE_FALSE(moment);
    CHECK(moment.error().reason == Reason::outOfRange);
}

TEST_CASE("what is written reads back as the same moment", "[clock][property]")
{
    CHECK(rc::check("round trip", [] {
        const auto millis = *rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000);
        const auto offset = *rc::gen::inRange(-14 * 60, 14 * 60 + 1);
        const Moment moment{Instant{std::chrono::milliseconds{millis}}, std::chrono::minutes{offset}, {}};
        const auto back = parseIso8601(toIso8601(moment));
        RC_ASSERT(back.has_value());
        RC_ASSERT(*back == moment);
    }));
}

TEST_CASE("no text makes the parser misbehave", "[clock][property]")
{
    CHECK(rc::check("any text is refused or reads back", [](const std::string& text) {
        const auto moment = parseIso8601(text);
        if (moment)
            RC_ASSERT(parseIso8601(toIso8601(*moment)).value() == *moment);
    }));
}

TEST_CASE("beside a time on paper stands how far its clock was from UTC", "[clock]")
{
    const auto beside = [](std::chrono::minutes offset) { return offsetText(Moment{{}, offset, {}}); };

    CHECK(beside(0min) == "UTC");
    CHECK(beside(60min) == "UTC+1");
    CHECK(beside(345min) == "UTC+5:45");
    CHECK(beside(14h) == "UTC+14");
    CHECK(beside(-5h) == "UTC-5");
    CHECK(beside(-210min) == "UTC-3:30");
    CHECK(beside(-5min) == "UTC-0:05");
}
