// The calendar file: strictly RFC 5545, the wall clock kept, and silent about health.

#include "core/exchange/calendar.h"

#include "core/clock/iso8601.h"
#include "tests/core/exchange/strict_calendar.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

using namespace ebbline;
using namespace ebbline::exchange;
using namespace std::chrono_literals;
using test::readStrictly;

namespace {

const aftercare::Zone berlin = *aftercare::Zone::find("Europe/Berlin");
const CalendarWords words{"Reminder from your diary", "en"};

clock::Instant at(const char* text) { return clock::parseIso8601(text)->at; }

std::string sample()
{
    return *writeCalendar({{"0123abcd-1", at("2027-03-27T20:00:00+01:00")}, {"0123abcd-2", at("2027-03-28T20:00:00+02:00")}},
                          berlin, words, at("2027-03-27T11:00:00Z"));
}

std::string replaced(std::string text, const std::string& what, const std::string& with)
{
    const auto place = text.find(what);
    REQUIRE(place != std::string::npos);
    return text.replace(place, what.size(), with);
}

}  // namespace

TEST_CASE("a calendar is read back strictly, at the same moments, over a change of the clocks", "[calendar]")
{
    const auto read = readStrictly(sample());
    CHECK(read.faults == std::vector<std::string>{});
    REQUIRE(read.events.size() == 2);
    CHECK(read.events[0].at == at("2027-03-27T20:00:00+01:00"));
    CHECK(read.events[1].at == at("2027-03-28T20:00:00+02:00"));
    CHECK(read.events[0].alarms == 1);
    CHECK(read.events[0].summary == "Reminder from your diary");
    CHECK(read.zones.at("Europe/Berlin").observances.size() == 2);
    CHECK(sample().find("DTSTART;TZID=Europe/Berlin:20270328T200000\r\n") != std::string::npos);
}

TEST_CASE("a calendar says how often its plan was changed, so that another takes the newer event", "[calendar]")
{
    const auto made = writeCalendar({{"0123abcd-1", at("2027-03-27T20:00:00+01:00")}}, berlin, words, at("2027-03-27T11:00:00Z"), 3);
    REQUIRE(made);
    const auto read = readStrictly(*made);
    CHECK(read.faults == std::vector<std::string>{});
    REQUIRE(read.events.size() == 1);
    CHECK(read.events.front().sequence == 3);
    CHECK(made->find("SEQUENCE:3\r\n") != std::string::npos);
    CHECK(sample().find("SEQUENCE:0\r\n") != std::string::npos);
    CHECK_FALSE(readStrictly(replaced(*made, "SEQUENCE:3", "SEQUENCE:-3")).faults.empty());
}

TEST_CASE("the strict reader finds each kind of fault", "[calendar]")
{
    const std::string good = sample();
    const std::pair<std::string, std::string> faults[] = {
        {"UID:0123abcd-1\r\n", ""},
        {"DTSTAMP:20270327T110000Z\r\n", ""},
        {"DTSTAMP:20270327T110000Z", "DTSTAMP:20270327T110000"},
        {"DTSTART;TZID=Europe/Berlin:20270327T200000\r\n", ""},
        {"20270327T200000", "20270227T300000"},
        {"TZID=Europe/Berlin:20270327", "TZID=Europe/Paris:20270327"},
        {"TZOFFSETTO:+0100", "TZOFFSETTO:+25"},
        {"TZOFFSETFROM:+0100\r\n", ""},
        {"END:VALARM\r\n", ""},
        {"ACTION:DISPLAY\r\n", ""},
        {"TRIGGER:PT0S\r\n", ""},
        {"VERSION:2.0\r\n", ""},
        {"CLASS:PRIVATE\r\n", "CLASS:PRIVATE\n"},
        {"UID:0123abcd-2", "UID:0123abcd-1"},
        {"SUMMARY;LANGUAGE=en:Reminder from", "SUMMARY;LANGUAGE=en:Reminder, from"},
        {"CLASS:PRIVATE", "CLASS:PRIVATE\r\nX-NOTE:" + std::string(90, 'x')},
        {"END:VCALENDAR\r\n", ""},
        {"TRANSP:TRANSPARENT\r\n", "TRANSP:TRANSPARENT\r\nTRANSP:OPAQUE\r\n"},
    };
    for (const auto& [what, with] : faults) {
        CAPTURE(what, with);
        CHECK_FALSE(readStrictly(replaced(good, what, with)).faults.empty());
    }
}

TEST_CASE("words in any script are escaped, folded between characters, and read back whole", "[calendar]")
{
    const std::string summary = GENERATE(std::string("Erinnerung; aus, Ihrem \\ Tagebuch"),
                                         std::string("تذكير من مفكرتك تذكير من مفكرتك تذكير من مفكرتك تذكير من مفكرتك"),
                                         std::string("日记提醒日记提醒日记提醒日记提醒日记提醒日记提醒日记提醒日记提醒"));
    const auto file = writeCalendar({{"0123abcd", at("2027-03-02T20:00:00+01:00")}}, berlin, {summary, "x"}, at("2027-03-01T11:00:00Z"));
    REQUIRE(file);
    const auto read = readStrictly(*file);
    CHECK(read.faults == std::vector<std::string>{});
    CHECK(read.events.at(0).summary == summary);
}

TEST_CASE("a time that the clock shows twice, or never, is not moved", "[calendar]")
{
    const auto moment = GENERATE(at("2027-10-31T02:30:00+02:00"), at("2027-10-31T02:30:00+01:00"), at("2027-03-28T03:00:00+02:00"));
    const auto file = writeCalendar({{"0123abcd", moment}}, berlin, words, at("2027-03-01T11:00:00Z"));
    REQUIRE(file);
    const auto read = readStrictly(*file);
    CHECK(read.faults == std::vector<std::string>{});
    CHECK(read.events.at(0).at == moment);
    // A local time that comes twice is the first of the two to the standard and the second to readers: it is no local time then.
    CHECK(read.events.at(0).inUtc == (moment != at("2027-03-28T03:00:00+02:00")));
}

TEST_CASE("a time that the clock shows once is local, up to the minute before and from the minute after it comes twice", "[calendar]")
{
    const auto moment = GENERATE(at("2027-10-31T01:59:00+02:00"), at("2027-10-31T03:00:00+01:00"), at("2027-03-28T01:59:00+01:00"));
    const auto file = writeCalendar({{"0123abcd", moment}}, berlin, words, at("2027-03-01T11:00:00Z"));
    REQUIRE(file);
    CHECK_FALSE(readStrictly(*file).events.at(0).inUtc);
}

TEST_CASE("what cannot be written is refused by name", "[calendar][errors]")
{
    const clock::Instant now = at("2027-03-01T11:00:00Z");
    CHECK(writeCalendar({}, berlin, words, now).error().reason == Reason::notEnough);
    CHECK(writeCalendar({{"Upper-CASE-1", now}}, berlin, words, now).error().reason == Reason::malformed);
    CHECK(writeCalendar({{"short", now}}, berlin, words, now).error().reason == Reason::malformed);
    CHECK(writeCalendar({{"0123abcd", now}}, berlin, {"two\nlines", "en"}, now).error().reason == Reason::malformed);
}

TEST_CASE("any reminders in any zone are read back at their moments", "[calendar][property]")
{
    CHECK(rc::check("any moments", [] {
        const char* names[] = {"Europe/Berlin", "Australia/Lord_Howe", "Asia/Kathmandu", "America/St_Johns", "Pacific/Apia", "Etc/UTC"};
        const aftercare::Zone zone = *aftercare::Zone::find(names[*rc::gen::inRange(0, 6)]);
        const clock::Instant start{std::chrono::sys_days{std::chrono::year{2024} / 1 / 1}};
        const int base = *rc::gen::inRange(0, 5 * 366 * 1440);
        std::vector<CalendarEvent> events;
        for (int i = *rc::gen::inRange(1, 30); i > 0; --i)
            events.push_back({"0123abcd-" + std::to_string(i), start + std::chrono::minutes(base + *rc::gen::inRange(0, 40 * 1440))});
        const auto file = writeCalendar(events, zone, words, start);
        RC_ASSERT(file.has_value());
        const auto read = readStrictly(*file);
        RC_ASSERT(read.faults.empty());
        RC_ASSERT(read.events.size() == events.size());
        for (std::size_t i = 0; i < events.size(); ++i)
            RC_ASSERT(read.events[i].at == events[i].at);
    }));
}
