// What an entry may hold.

#include "core/recovery/entry.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <limits>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::recovery;
using std::chrono::minutes;

namespace {

const clock::Instant noon{std::chrono::sys_days{std::chrono::year{2027} / 3 / 1} + std::chrono::hours{12}};

Entry soundEntry()
{
    Entry entry;
    entry.id.value[0] = 1;
    entry.course.value[0] = 2;
    entry.at = {noon, minutes(60), "Europe/Berlin"};
    entry.recordedAt = entry.at;
    entry.scores.emplace(Stream{Symptom::pain, Side::left}, *Score::of(3));
    entry.present = {Sign::threadLump};
    entry.absent = {Sign::breathing};
    entry.temperature = *Temperature::celsius(37.2);
    entry.note = "grüner Fleck";
    return entry;
}

}  // namespace

TEST_CASE("a score is a whole number from 0 to 10", "[recovery][score][boundary]")
{
    CHECK(Score::of(0)->points() == 0);
    CHECK(Score::of(10)->points() == 10);
    CHECK(Score::of(-1).error().reason == Reason::outOfRange);
    CHECK(Score::of(11).error().reason == Reason::outOfRange);
    CHECK(Score::of(std::numeric_limits<int>::max()).error().reason == Reason::outOfRange);
}

TEST_CASE("Fahrenheit becomes Celsius without a rounding in between", "[recovery][temperature]")
{
    // 100.4 F is 38.0 C and 100.3 F is 37.94 C: by the definition (F - 32) * 5 / 9.
    CHECK(Temperature::fahrenheit(100.4)->celsius() >= 38.0);
    CHECK_THAT(Temperature::fahrenheit(100.4)->celsius(), WithinAbs(38.0, 1e-12));
    CHECK(Temperature::fahrenheit(100.3)->celsius() < 38.0);
    CHECK_THAT(Temperature::fahrenheit(100.3)->celsius(), WithinAbs(37.9444, 5e-5));
}

TEST_CASE("no tenth of a degree Fahrenheit lands on the wrong side of a tenth Celsius",
          "[recovery][temperature][property]")
{
    for (int tenthsF = 860; tenthsF <= 1130; ++tenthsF) {
        const double celsius = Temperature::fahrenheit(tenthsF / 10.0)->celsius();
        for (int tenthsC = 300; tenthsC <= 450; ++tenthsC) {
            // Whole numbers: F/10 - 32 over 9/5 against C/10.
            const bool reached = (tenthsF - 320) * 5 >= tenthsC * 9;
            if ((celsius >= tenthsC / 10.0) != reached)
                FAIL("at " << tenthsF << " tenths of a degree Fahrenheit and " << tenthsC << " Celsius");
        }
    }
    SUCCEED();
}

TEST_CASE("a temperature that no living person has is refused", "[recovery][temperature][errors]")
{
    CHECK(Temperature::celsius(30.0));
    CHECK(Temperature::celsius(45.0));
    CHECK(Temperature::fahrenheit(113.0));
    CHECK(Temperature::celsius(29.99).error().reason == Reason::outOfRange);
    CHECK(Temperature::celsius(45.01).error().reason == Reason::outOfRange);
    CHECK(Temperature::celsius(100.4).error().reason == Reason::outOfRange);
    CHECK(Temperature::fahrenheit(38.0).error().reason == Reason::outOfRange);
    CHECK(Temperature::celsius(std::numeric_limits<double>::quiet_NaN()).error().reason == Reason::notFinite);
    CHECK(Temperature::fahrenheit(std::numeric_limits<double>::infinity()).error().reason == Reason::notFinite);
}

TEST_CASE("an entry with every kind of answer is accepted", "[recovery][entry]")
{
    CHECK(check(soundEntry()));
}

TEST_CASE("one answer of any kind is enough, none is not", "[recovery][entry]")
{
    Entry entry = soundEntry();
    entry.scores.clear();
    entry.present.clear();
    entry.absent.clear();
    entry.temperature.reset();
    entry.note.clear();
    CHECK(check(entry).error().reason == Reason::notEnough);

    const int kind = GENERATE(0, 1, 2, 3, 4);
    switch (kind) {
    case 0: entry.scores.emplace(Stream{Symptom::numbness, Side::right}, *Score::of(0)); break;
    case 1: entry.present.insert(Sign::shivering); break;
    case 2: entry.absent.insert(Sign::shivering); break;
    case 3: entry.temperature = *Temperature::celsius(36.6); break;
    default: entry.note = "-"; break;
    }
    CHECK(check(entry));
}

TEST_CASE("an entry that breaks a promise is refused by the field's name", "[recovery][entry][errors]")
{
    struct Row {
        void (*breakIt)(Entry&);
        Reason reason;
        std::string field;
    };
    const auto row = GENERATE(
        Row{[](Entry& e) { e.id = {}; }, Reason::malformed, "entry"},
        Row{[](Entry& e) { e.course = {}; }, Reason::malformed, "entry"},
        Row{[](Entry& e) { e.at.at += minutes(5) + std::chrono::milliseconds(1); }, Reason::outOfRange, "at"},
        Row{[](Entry& e) { e.scores.emplace(Stream{static_cast<Symptom>(8), Side::left}, *Score::of(1)); },
            Reason::outOfRange, "symptom"},
        Row{[](Entry& e) { e.scores.emplace(Stream{Symptom::pain, Side::none}, *Score::of(1)); },
            Reason::outOfRange, "side"},
        Row{[](Entry& e) { e.scores.emplace(Stream{Symptom::pain, static_cast<Side>(3)}, *Score::of(1)); },
            Reason::outOfRange, "side"},
        Row{[](Entry& e) { e.present.insert(static_cast<Sign>(23)); }, Reason::outOfRange, "sign"},
        Row{[](Entry& e) { e.absent.insert(static_cast<Sign>(0)); }, Reason::outOfRange, "sign"},
        Row{[](Entry& e) { e.absent.insert(Sign::threadLump); }, Reason::malformed, "sign"},
        Row{[](Entry& e) { e.note = std::string(2001, 'x'); }, Reason::tooLarge, "note"},
        Row{[](Entry& e) { e.note = "\xff"; }, Reason::malformed, "note"});
    Entry entry = soundEntry();
    row.breakIt(entry);

    const Done checked = check(entry);

    REQUIRE_FALSE(checked);
    CHECK(checked.error().reason == row.reason);
    CHECK(checked.error().detail.starts_with(row.field));
}

TEST_CASE("a clock up to five minutes fast and a note of 2000 bytes are accepted", "[recovery][entry][boundary]")
{
    Entry entry = soundEntry();
    entry.at.at += minutes(5);
    entry.note = std::string(2000, 'x');
    CHECK(check(entry));
}

TEST_CASE("an entry is late when written more than an hour after its moment", "[recovery][entry][boundary]")
{
    Entry entry = soundEntry();
    entry.recordedAt.at = entry.at.at + minutes(60);
    CHECK_FALSE(entry.isLate());
    entry.recordedAt.at += std::chrono::milliseconds(1);
    CHECK(entry.isLate());
}
