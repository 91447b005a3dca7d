// Versions of a band: who may teach, what stands behind one, its check, and which is in use.

#include "tests/core/bands/drawn_courses.h"

#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::bands;
using namespace ebbline::test;
using recovery::Side;
using recovery::Symptom;

namespace {

const Movement sides = assumedMovements().sides;

Learned learnedFrom(std::vector<Taught> courses)
{
    auto learned = learnVersion(std::move(courses), {{Refusal::stillOpen, 2}}, seedBand(), sides, "Dr. Ada Lund", learnedAt);
    REQUIRE(learned);
    return std::move(*learned);
}

}  // namespace

TEST_CASE("a course that is closed, uncomplicated, consented, untreated and half written may teach", "[bands][eligibility]")
{
    const CourseFacts sound{true, true, true, false, fewestObservedDays};
    CHECK_FALSE(refusalOf(sound));

    struct Row { CourseFacts facts; Refusal wanted; };
    for (const Row& row : {Row{{false, true, true, false, 22}, Refusal::noConsent},
                           Row{{true, false, true, false, 22}, Refusal::stillOpen},
                           Row{{true, true, false, false, 22}, Refusal::complicated},
                           Row{{true, true, true, true, 22}, Refusal::treated},
                           Row{{true, true, true, false, fewestObservedDays - 1}, Refusal::tooFewDays}}) {
        CAPTURE(word(row.wanted));
        REQUIRE(refusalOf(row.facts));
        CHECK(*refusalOf(row.facts) == row.wanted);
    }
    CHECK(refusalOf({}) == Refusal::noConsent);
}

TEST_CASE("without consent nothing further is asked of a course", "[bands][eligibility][property]")
{
    CHECK(rc::check("consent first", [] {
        const CourseFacts facts{false, *rc::gen::arbitrary<bool>(), *rc::gen::arbitrary<bool>(),
                                *rc::gen::arbitrary<bool>(), *rc::gen::inRange(0, 40)};
        RC_ASSERT(refusalOf(facts).value() == Refusal::noConsent);
    }));
}

TEST_CASE("the hash of what stands behind a band is the same in any order, and no other for other courses",
          "[bands][versions][property]")
{
    REQUIRE(crypto::initialise());
    CHECK(rc::check("canonical", [] {
        std::vector<Taught> courses = drawn(seedBand(), static_cast<std::uint32_t>(*rc::gen::inRange(1, 6)));
        const std::string hash = groundsHash(courses, seedBand());
        RC_ASSERT(hash.size() == 64U);
        std::vector<Taught> shuffled = courses;
        std::reverse(shuffled.begin(), shuffled.end());
        for (Taught& course : shuffled)
            std::reverse(course.days.begin(), course.days.end());
        RC_ASSERT(groundsHash(shuffled, seedBand()) == hash);

        // One score, one day, one name, something else that was told or one score less: another hash.
        Taught& changed = courses[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(courses.size())))];
        switch (*rc::gen::inRange(0, 5)) {
        case 0: changed.days[3].points = (changed.days[3].points + 1) % 11; break;
        case 1: changed.days[3].day += 1; break;
        case 2: changed.course.value[15] ^= 1; break;
        case 3: changed.told[31] ^= 1; break;
        default: changed.days.pop_back(); break;
        }
        RC_ASSERT(groundsHash(courses, seedBand()) != hash);
    }));
}

TEST_CASE("the content of a band changes its hash with the last bit of a number", "[bands][versions]")
{
    Movements movements = seedBand().movements();
    movements.sides.start = std::nextafter(movements.sides.start, 1.0);
    const auto other = Band::create(seedBand().provenance(), seedBand().table(), movements);
    REQUIRE(other);
    CHECK(contentHash(*other) != contentHash(seedBand()));
    CHECK(contentHash(seedBand()).size() == 64);
}

TEST_CASE("a version names its day, its courses and its hash, in whatever order they came", "[bands][versions]")
{
    std::vector<Taught> courses = drawn(seedBand(), 60);
    const Learned learned = learnedFrom(courses);
    std::reverse(courses.begin(), courses.end());
    const Learned again = learnedFrom(courses);

    CHECK(learned == again);
    CHECK(learned.version() == "clinic-2027-05-01-" + learned.band.provenance().hash.substr(0, 8));
    CHECK(learned.band.provenance().learnedOn == "2027-05-01");
    CHECK(learned.band.provenance().courses == 60);
    CHECK_FALSE(learned.band.provenance().assumption);
    CHECK(learned.band.provenance().hash == groundsHash(courses, seedBand()));
    CHECK(learned.courses.size() == 60);
    CHECK(std::is_sorted(learned.courses.begin(), learned.courses.end()));
    CHECK(learned.seed == "seed-1");
    CHECK(learned.refused.at(Refusal::stillOpen) == 2);
}

TEST_CASE("a band holds on courses that are as it says", "[bands][coverage]")
{
    const auto coverage = crossValidate(drawn(seedBand(), 200), seedBand());

    REQUIRE(coverage);
    CHECK_FALSE(objection(*coverage));
    CHECK(coverage->courses == 200);
    const SymptomCoverage& pain = coverage->symptoms[0];
    CHECK(pain.fit == Fit::holds);
    CHECK(pain.courses == 200);
    CHECK(pain.readings == 200 * courseDays);
    CHECK((pain.above90.low <= pain.above90.promised && pain.above90.promised <= pain.above90.high));
    CHECK(pain.above97.promised <= pain.above90.promised);
    // Nobody scored numbness: nothing is said, and least of all that it holds.
    CHECK(coverage->symptoms[6].fit == Fit::notEnough);
    CHECK(coverage->symptoms[6].readings == 0);
}

TEST_CASE("patients who vary more than the band between each other are noticed", "[bands][coverage]")
{
    // Four points higher: nine tenths of thirty such courses are too few to move a band that counts its seed as
    // thirty. The fewer readings lie above by themselves, the wider is the interval: pain alone would not show it.
    std::vector<Taught> courses = drawn(seedBand(), 30, 4);
    const auto coverage = crossValidate(courses, seedBand());

    REQUIRE(coverage);
    CHECK(coverage->symptoms[0].above90.seen > coverage->symptoms[0].above90.promised);
    CHECK(coverage->symptoms[1].fit == Fit::tooNarrow);
    const auto against = objection(*coverage);
    REQUIRE(against);
    CHECK(against->reason == Reason::refused);
    CHECK(against->detail.find("too narrow for swelling") != std::string::npos);
}

TEST_CASE("patients far more alike than the seed makes them show that the band is too wide", "[bands][coverage]")
{
    // Everybody on the seed's median, and one reading in four courses high above it.
    std::vector<Taught> courses = drawn(seedBand(), 48);
    for (std::size_t i = 0; i < courses.size(); ++i)
        for (DayScore& score : courses[i].days) {
            const bool high = i % 4 == 0 && score.day == static_cast<int>(i / 4);
            score.points = high ? 10 : seedBand().inner(score.symptom, score.day).median;
        }

    const auto coverage = crossValidate(courses, seedBand());

    REQUIRE(coverage);
    CHECK(coverage->symptoms[0].fit == Fit::tooWide);
    REQUIRE(objection(*coverage));
    CHECK(objection(*coverage)->detail.find("too wide for pain") != std::string::npos);
}

TEST_CASE("readings of zeros alone never prove a share of zero", "[bands][coverage]")
{
    std::vector<Taught> courses = drawn(seedBand(), 60);
    for (Taught& course : courses)
        for (DayScore& score : course.days)
            score.points = 0;

    const auto coverage = crossValidate(courses, seedBand());

    REQUIRE(coverage);
    CHECK(coverage->symptoms[0].above90.seen == 0);
    CHECK(coverage->symptoms[0].above90.high > 0.05);
}

TEST_CASE("fewer than thirty courses never make a band that may be used", "[bands][coverage]")
{
    const auto coverage = crossValidate(drawn(seedBand(), 29), seedBand());
    REQUIRE(coverage);
    const auto against = objection(*coverage);
    REQUIRE(against);
    CHECK(against->reason == Reason::notEnough);

    CHECK(crossValidate(drawn(seedBand(), 9), seedBand()).error().reason == Reason::notEnough);
    CHECK(crossValidate({}, seedBand()).error().reason == Reason::notEnough);
    std::vector<Taught> twice = drawn(seedBand(), 30);
    twice[4].course = twice[20].course;
    CHECK(crossValidate(twice, seedBand()).error().reason == Reason::alreadyExists);
    std::vector<Taught> empty(30);
    for (std::uint32_t i = 0; i < 30; ++i)
        empty[i].course = idOf(i);
    CHECK(crossValidate(empty, seedBand()).error().reason == Reason::notEnough);
}

TEST_CASE("a clinic begins with the seed, an assumption", "[bands][versions]")
{
    const History history;

    CHECK(history.activeVersion() == "seed-1");
    CHECK(history.active().provenance().assumption);
    CHECK_FALSE(history.previous());
    CHECK(history.versions().empty());
}

TEST_CASE("a version comes into use, another after it, and each can be gone back to", "[bands][versions]")
{
    const Learned first = learnedFrom(drawn(seedBand(), 60));
    const Learned second = learnedFrom(drawn(seedBand(), 90));
    History history;
    REQUIRE(history.add(first));
    REQUIRE(history.add(second));
    CHECK(history.activeVersion() == "seed-1");  // a learned version waits until somebody chooses it

    REQUIRE(history.choose(use(first.version())));
    REQUIRE(history.choose(use(second.version())));
    CHECK(history.active() == second.band);
    CHECK(history.previous() == first.version());

    REQUIRE(history.choose(goBack(first.version())));
    CHECK(history.active() == first.band);
    CHECK(history.previous() == "seed-1");
    REQUIRE(history.choose(goBack("seed-1")));
    CHECK(history.active() == seedBand());

    // Nothing is forgotten by going back.
    CHECK(history.versions().size() == 2);
    CHECK(history.choices().size() == 4);
    CHECK(history.choices()[2].reason == "too many alerts");
    CHECK(history.find(second.version())->band == second.band);
}

TEST_CASE("a version that failed its check is kept and cannot be used", "[bands][versions]")
{
    const Learned failed = learnedFrom(drawn(seedBand(), 30, 4));
    const Learned few = learnedFrom(drawn(seedBand(), 12));
    History history;
    REQUIRE(history.add(failed));
    REQUIRE(history.add(few));

    CHECK(history.choose(use(failed.version())).error().reason == Reason::refused);
    CHECK(history.choose(use(few.version())).error().reason == Reason::notEnough);
    CHECK(history.activeVersion() == "seed-1");
    CHECK(history.choices().empty());
    CHECK(history.find(failed.version()) != nullptr);
}

TEST_CASE("choices that do not fit what happened are refused by name", "[bands][versions][errors]")
{
    const Learned learned = learnedFrom(drawn(seedBand(), 60));
    History history;
    REQUIRE(history.add(learned));

    CHECK(history.add(learned).error().reason == Reason::alreadyExists);
    Learned seed = learned;
    seed.band = seedBand();
    CHECK(history.add(seed).error().reason == Reason::malformed);
    CHECK(history.choose(use("clinic-2031-01-01-00000000")).error().reason == Reason::notFound);
    CHECK(history.choose(use("seed-1")).error().reason == Reason::invalidState);
    CHECK(history.choose(goBack(learned.version())).error().reason == Reason::invalidState);
}

TEST_CASE("whatever is chosen in whatever order, what is in use passed its check", "[bands][versions][property]")
{
    const std::vector<Learned> pool{learnedFrom(drawn(seedBand(), 60)), learnedFrom(drawn(seedBand(), 30, 4)),
                                    learnedFrom(drawn(seedBand(), 12)), learnedFrom(drawn(seedBand(), 80))};
    CHECK(rc::check("sound", [&] {
        History history;
        for (const Learned& learned : pool)
            RC_ASSERT(history.add(learned).has_value());
        const auto steps = static_cast<std::size_t>(*rc::gen::inRange(0, 12));
        std::size_t held = 0;
        for (std::size_t i = 0; i < steps; ++i) {
            const int which = *rc::gen::inRange(-1, 4);
            const std::string version = which < 0 ? "seed-1" : pool[static_cast<std::size_t>(which)].version();
            held += history.choose({version, *rc::gen::arbitrary<bool>(), "a", "b", learnedAt}) ? 1 : 0;
            const Learned* active = history.find(history.activeVersion());
            const bool sound = active ? !objection(active->coverage) : history.activeVersion() == "seed-1";
            RC_ASSERT(sound);
        }
        RC_ASSERT(history.choices().size() == held);
    }));
}
