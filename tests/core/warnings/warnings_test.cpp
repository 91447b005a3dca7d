// Warning signs to urgency. Grounds of every rule: docs/clinical/warnings.md.

#include "core/warnings/warnings.h"

#include "core/clock/iso8601.h"
#include "tests/core/bytes/decimal_comma.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::warnings;
using recovery::Entry;
using recovery::Score;
using recovery::Side;
using recovery::Sign;
using recovery::Signs;
using recovery::Symptom;
using recovery::Urgency;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

Entry entryAfter(std::chrono::hours hours)
{
    Entry entry;
    entry.at = treated;
    entry.at.at += hours;
    entry.recordedAt = entry.at;
    return entry;
}

std::vector<Finding> judged(const Entry& entry)
{
    return judge(entry, {.treated = treated});
}

Signs anySigns()
{
    const auto signs = *rc::gen::container<std::vector<Sign>>(rc::gen::elementOf(recovery::allSigns));
    return {signs.begin(), signs.end()};
}

std::optional<Urgency> urgencyOf(const Signs& signs, int hours = 100)
{
    Entry entry = entryAfter(std::chrono::hours(hours));
    entry.present = signs;
    return mostUrgent(judged(entry));
}

std::optional<Urgency> urgencyAt(const Result<recovery::Temperature>& temperature)
{
    REQUIRE(temperature);
    Entry entry = entryAfter(std::chrono::hours(100));
    entry.temperature = *temperature;
    return mostUrgent(judged(entry));
}

}  // namespace

TEST_CASE("each emergency sign alone is an emergency, at any hour", "[warnings]")
{
    const Sign sign = GENERATE(Sign::breathing, Sign::neckSwelling, Sign::allergy, Sign::numbingReaction,
                               Sign::severeIllness, Sign::strokeSigns, Sign::vision);
    const int hours = GENERATE(0, 3, 100, 500);

    CHECK(urgencyOf({sign}, hours) == Urgency::emergency);
}

TEST_CASE("each sign of the same day alone asks for a call", "[warnings]")
{
    const Sign sign = GENERATE(Sign::fastSwelling, Sign::paleSkin, Sign::thickFluid, Sign::shivering,
                               Sign::salivaSwelling, Sign::bleeding, Sign::pulsatingLump, Sign::edgeMoved);

    CHECK(urgencyOf({sign}) == Urgency::callNow);
}

TEST_CASE("fever begins at 38.0 degrees, and Fahrenheit is converted before it is compared", "[warnings]")
{
    CHECK_FALSE(urgencyAt(recovery::Temperature::celsius(37.9)));
    CHECK(urgencyAt(recovery::Temperature::celsius(38.0)) == Urgency::callNow);
    CHECK(urgencyAt(recovery::Temperature::celsius(38.1)) == Urgency::callNow);
    CHECK(urgencyAt(recovery::Temperature::fahrenheit(100.4)) == Urgency::callNow);
    CHECK_FALSE(urgencyAt(recovery::Temperature::fahrenheit(100.3)));
}

TEST_CASE("fever with a warm or discoloured place is named as such", "[warnings]")
{
    Entry entry = entryAfter(std::chrono::hours(100));
    entry.temperature = *recovery::Temperature::celsius(38.4);
    entry.present = {Sign::warmer};

    const auto findings = judged(entry);

    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "fever-with-inflammation");
    CHECK(findings.front().reasons == std::vector<std::string>{"temperature 38.4 C", "warmer"});
}

TEST_CASE("any two signs of inflammation ask for a call, and colour is never needed", "[warnings]")
{
    CHECK(urgencyOf({Sign::warmer, Sign::firmer, Sign::moreTender}) == Urgency::callNow);
    CHECK(urgencyOf({Sign::warmer, Sign::firmer}) == Urgency::callNow);
    CHECK(urgencyOf({Sign::colourChange, Sign::moreTender}) == Urgency::callNow);
    // Alone each of these is what a bruise looks and feels like.
    for (const Sign sign : {Sign::colourChange, Sign::warmer, Sign::firmer, Sign::moreTender})
        CHECK_FALSE(urgencyOf({sign}));
}

TEST_CASE("a weak face may be the numbing for eight hours and no longer", "[warnings]")
{
    // Lidocaine with epinephrine lasts up to 400 minutes in a dermatology text; eight hours is a decision.
    Entry early = entryAfter(std::chrono::hours(3));
    early.present = {Sign::faceWeakness};
    REQUIRE(judged(early).size() == 1);
    CHECK(judged(early).front().rule == "face-weakness-early");
    CHECK(judged(early).front().urgency == Urgency::nextWorkingDay);
    CHECK(urgencyOf({Sign::faceWeakness}, 9) == Urgency::callNow);
    // A clock that is wrong by years speaks for nothing; two clocks a little apart are as they are.
    CHECK(urgencyOf({Sign::faceWeakness}, -24 * 400) == Urgency::callNow);
    CHECK(urgencyOf({Sign::faceWeakness}, -2) == Urgency::callNow);
    CHECK(urgencyOf({Sign::faceWeakness}, 0) == Urgency::nextWorkingDay);
    CHECK(urgencyOf({Sign::faceWeakness, Sign::strokeSigns}, 3) == Urgency::emergency);
}

TEST_CASE("a thread end waits for the next working day unless the skin is inflamed", "[warnings]")
{
    CHECK(urgencyOf({Sign::threadOut}) == Urgency::nextWorkingDay);
    CHECK(urgencyOf({Sign::threadOut, Sign::warmer}) == Urgency::callNow);
    CHECK(urgencyOf({Sign::threadOut, Sign::thickFluid}) == Urgency::callNow);
    CHECK(urgencyOf({Sign::threadLump}) == Urgency::nextWorkingDay);
}

TEST_CASE("one full and painful side in the first two days asks for a call", "[warnings]")
{
    Entry entry = entryAfter(std::chrono::hours(9));
    const auto set = [&](Symptom symptom, Side side, int points) {
        entry.scores.insert_or_assign({symptom, side}, *Score::of(points));
    };
    set(Symptom::swelling, Side::left, 6);
    set(Symptom::swelling, Side::right, 2);
    CHECK(judged(entry).empty());  // full, but no pain: a bruise that sinks does this
    set(Symptom::pain, Side::left, 4);
    set(Symptom::pain, Side::right, 2);

    REQUIRE(judged(entry).size() == 1);
    CHECK(judged(entry).front().rule == "one-sided-swelling");
    CHECK(judged(entry).front().side == Side::left);
    CHECK(judged(entry).front().urgency == Urgency::callNow);
    entry.at.at += std::chrono::hours(48);
    CHECK(judged(entry).empty());
}

TEST_CASE("pain of seven or more asks for a call", "[warnings]")
{
    // Severe is 7 to 10: Serlin et al., Pain 61 (1995) 277.
    Entry entry = entryAfter(std::chrono::hours(60));
    entry.scores.insert_or_assign({Symptom::pain, Side::right}, *Score::of(6));
    CHECK(judged(entry).empty());
    entry.scores.insert_or_assign({Symptom::pain, Side::right}, *Score::of(7));
    CHECK(mostUrgent(judged(entry)) == Urgency::callNow);
}

TEST_CASE("pain without a side is as severe as pain with one", "[warnings]")
{
    Entry entry = entryAfter(std::chrono::hours(60));
    entry.scores.insert_or_assign({Symptom::pain, Side::none}, *Score::of(6));
    CHECK(judged(entry).empty());
    entry.scores.insert_or_assign({Symptom::pain, Side::none}, *Score::of(7));

    REQUIRE(judged(entry).size() == 1);
    CHECK(judged(entry).front().rule == "severe-pain");
    CHECK(judged(entry).front().side == Side::none);
    CHECK(judged(entry).front().urgency == Urgency::callNow);
}

TEST_CASE("pain without a side may be that of the full side", "[warnings]")
{
    Entry entry = entryAfter(std::chrono::hours(9));
    entry.scores.insert_or_assign({Symptom::swelling, Side::left}, *Score::of(2));
    entry.scores.insert_or_assign({Symptom::swelling, Side::right}, *Score::of(6));
    entry.scores.insert_or_assign({Symptom::pain, Side::none}, *Score::of(4));

    REQUIRE(judged(entry).size() == 1);
    CHECK(judged(entry).front().rule == "one-sided-swelling");
    CHECK(judged(entry).front().side == Side::right);
    // Two points more than the other side are needed, whatever says so.
    entry.scores.insert_or_assign({Symptom::pain, Side::left}, *Score::of(3));
    CHECK(judged(entry).empty());
}

TEST_CASE("a score that loses its side never makes anything less urgent", "[warnings][property]")
{
    CHECK(rc::check("sides lost", [] {
        Entry entry = entryAfter(std::chrono::hours(*rc::gen::inRange(0, 100)));
        const Side side = *rc::gen::elementOf(recovery::bothSides);
        const Score pain = *Score::of(*rc::gen::inRange(0, 11));
        for (const Side swollen : recovery::bothSides)
            entry.scores.insert_or_assign({Symptom::swelling, swollen}, *Score::of(*rc::gen::inRange(0, 11)));
        Entry sideless = entry;
        entry.scores.insert_or_assign({Symptom::pain, side}, pain);
        sideless.scores.insert_or_assign({Symptom::pain, Side::none}, pain);
        const auto with = mostUrgent(judged(entry));
        const auto without = mostUrgent(judged(sideless));
        RC_ASSERT(!with || (without && *without <= *with));
    }));
}

TEST_CASE("an entry without signs, fever or pain raises nothing", "[warnings]")
{
    Entry entry = entryAfter(std::chrono::hours(60));
    entry.absent = Signs(recovery::allSigns.begin(), recovery::allSigns.end());
    entry.scores.insert_or_assign({Symptom::bruising, Side::left}, *Score::of(9));

    CHECK(judged(entry).empty());
}

TEST_CASE("one more sign never makes anything less urgent", "[warnings][property]")
{
    CHECK(rc::check("monotone", [] {
        Entry entry = entryAfter(std::chrono::hours(*rc::gen::inRange(0, 500)));
        entry.present = anySigns();
        const auto before = mostUrgent(judged(entry));
        entry.present.insert(*rc::gen::elementOf(recovery::allSigns));
        const auto after = mostUrgent(judged(entry));
        RC_ASSERT(!before || (after && *after <= *before));
    }));
}

TEST_CASE("the most urgent finding stands first", "[warnings][property]")
{
    CHECK(rc::check("sorted", [] {
        Entry entry = entryAfter(std::chrono::hours(40));
        entry.present = anySigns();
        const auto findings = judged(entry);
        RC_ASSERT(std::is_sorted(findings.begin(), findings.end(),
                                 [](const Finding& a, const Finding& b) { return a.urgency < b.urgency; }));
    }));
}

TEST_CASE("the signs that raise an urgency are exactly those that do so alone, once the numbing has worn off", "[warnings]")
{
    for (const Urgency urgency : {Urgency::emergency, Urgency::callNow, Urgency::nextWorkingDay, Urgency::atReview}) {
        const auto signs = signsRaising(urgency);
        for (const Sign sign : recovery::allSigns)
            CHECK((std::find(signs.begin(), signs.end(), sign) != signs.end()) == (urgencyOf({sign}) == urgency));
    }
    CHECK(signsRaising(Urgency::emergency)
          == std::vector{Sign::breathing, Sign::neckSwelling, Sign::allergy, Sign::numbingReaction, Sign::severeIllness, Sign::strokeSigns,
                         Sign::vision});
}

TEST_CASE("worse is what is more urgent, has a reason more, or the same reason with more behind it", "[warnings]")
{
    const Finding calm{"thread-out", Urgency::nextWorkingDay, Side::none, {"thread-out"}};
    const Finding sore{"thread-out", Urgency::callNow, Side::none, {"thread-out", "more-tender"}};
    const Finding warm{"thread-out", Urgency::callNow, Side::none, {"thread-out", "warmer"}};
    CHECK(isWorse(sore, calm));
    CHECK_FALSE(isWorse(calm, sore));
    CHECK_FALSE(isWorse(sore, sore));
    CHECK(isWorse(warm, sore));

    const auto fever = [](const char* reason) { return Finding{"fever", Urgency::callNow, Side::none, {reason}}; };
    CHECK(isWorse(fever("temperature 39.5 C"), fever("temperature 38.0 C")));
    CHECK_FALSE(isWorse(fever("temperature 38.0 C"), fever("temperature 39.5 C")));
    CHECK(isWorse(fever("pain 10"), fever("pain 9")));
}

TEST_CASE("under a decimal comma a fever is told with a point, and a hotter one is worse", "[warnings]")
{
    const test::DecimalComma comma;
    if (!comma.isThere())
        SKIP(test::DecimalComma::missing);
    const auto feverOf = [](double celsius) {
        Entry entry = entryAfter(std::chrono::hours(100));
        entry.temperature = *recovery::Temperature::celsius(celsius);
        const auto found = judged(entry);
        REQUIRE(found.size() == 1);
        return found.front();
    };

    CHECK(feverOf(38.2).reasons.front() == "temperature 38.2 C");
    CHECK(isWorse(feverOf(38.9), feverOf(38.1)));
    CHECK_FALSE(isWorse(feverOf(38.1), feverOf(38.9)));
}
