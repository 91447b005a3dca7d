// Words and numbers of the enumerations. Both are stored and sent: these tests pin them, so that
// a changed one fails here before it turns one thing into another in somebody's vault.

#include "core/recovery/treatment.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <set>

using namespace ebbline;
using namespace ebbline::recovery;

TEST_CASE("symptoms keep their numbers and words", "[recovery][words]")
{
    constexpr std::array<std::string_view, 7> words{"pain",    "swelling",  "bruising", "tightness",
                                                    "twinges", "puckering", "numbness"};
    for (std::size_t i = 0; i < words.size(); ++i) {
        CHECK(static_cast<std::size_t>(allSymptoms[i]) == i + 1);
        CHECK(word(allSymptoms[i]) == words[i]);
        CHECK(symptomFromWord(words[i]) == allSymptoms[i]);
    }
}

TEST_CASE("sides are the letters of the open tables", "[recovery][words]")
{
    CHECK(word(Side::none) == "-");
    CHECK(word(Side::left) == "L");
    CHECK(word(Side::right) == "R");
    CHECK(sideFromWord("-") == Side::none);
    CHECK(sideFromWord("L") == Side::left);
    CHECK(sideFromWord("R") == Side::right);
    CHECK(static_cast<int>(Side::left) == 1);
    CHECK(static_cast<int>(Side::right) == 2);
}

TEST_CASE("signs keep their numbers and words", "[recovery][words]")
{
    constexpr std::array<std::string_view, 22> words{
        "breathing",    "neck-swelling", "allergy",     "numbing-reaction", "severe-illness", "stroke-signs",
        "vision",       "fast-swelling", "pale-skin",   "colour-change",    "warmer",         "firmer",
        "more-tender",  "edge-moved",    "thick-fluid", "thread-out",       "face-weakness",  "saliva-swelling",
        "bleeding",     "pulsating-lump", "thread-lump", "shivering"};
    STATIC_REQUIRE(allSigns.size() == words.size());
    for (std::size_t i = 0; i < words.size(); ++i) {
        CHECK(static_cast<std::size_t>(allSigns[i]) == i + 1);
        CHECK(word(allSigns[i]) == words[i]);
        CHECK(signFromWord(words[i]) == allSigns[i]);
    }
}

TEST_CASE("urgencies are ordered from the most urgent, named by the act", "[recovery][words]")
{
    constexpr std::array urgencies{Urgency::emergency, Urgency::callNow, Urgency::nextWorkingDay, Urgency::atReview};
    constexpr std::array<std::string_view, 4> words{"emergency", "call-now", "next-working-day", "at-review"};
    for (std::size_t i = 0; i < words.size(); ++i) {
        CHECK(static_cast<std::size_t>(urgencies[i]) == i + 1);
        CHECK(word(urgencies[i]) == words[i]);
        CHECK(urgencyFromWord(words[i]) == urgencies[i]);
    }
    CHECK(Urgency::emergency < Urgency::callNow);
}

TEST_CASE("a word that is not ours is refused and named", "[recovery][words][errors]")
{
    const std::string other = GENERATE("", "Pain", "pain ", "left", "l", "urgent", "pus", "0");

    CHECK(symptomFromWord(other).error().reason == Reason::malformed);
    CHECK(sideFromWord(other).error().reason == Reason::malformed);
    CHECK(signFromWord(other).error().reason == Reason::malformed);
    CHECK(urgencyFromWord(other).error().reason == Reason::malformed);
    CHECK(symptomFromWord(other).error().detail.find("'" + other + "'") != std::string::npos);
}

TEST_CASE("zones, materials, forms and endings each have a word of their own", "[recovery][words]")
{
    const auto distinct = [](auto first, int count) {
        std::set<std::string_view> words;
        for (int i = 0; i < count; ++i)
            words.insert(word(static_cast<decltype(first)>(static_cast<int>(first) + i)));
        return words.size() == static_cast<std::size_t>(count) && !words.contains("unknown");
    };
    CHECK(distinct(Zone::brow, static_cast<int>(allZones.size())));
    CHECK(distinct(Material::pdo, 5));
    CHECK(distinct(Form::smooth, 6));
    CHECK(distinct(Ending::shortOfMovingZone, 2));
    CHECK(word(static_cast<Zone>(99)) == "unknown");
}
