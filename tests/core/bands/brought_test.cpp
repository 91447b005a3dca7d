// A band that was learned elsewhere: kept as a version, checked on courses of this clinic, found again.

#include "tests/core/bands/drawn_courses.h"

#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::bands;
using namespace ebbline::test;

namespace {

/// As a colleague's file might bring it: what it says is the seed's, and it names 400 courses.
Band elsewhere(std::string hash = std::string(64, 'e'))
{
    return *Band::create({"clinic-2027-04-01-eeeeeeee", 400, false, "2027-04-01", std::move(hash)}, seedBand().table());
}

Learned brought(std::vector<Taught> unseen, bool ofOthersAlone = true)
{
    auto version = broughtVersion(elsewhere(), ofOthersAlone, std::move(unseen), "Dr. Ada Lund", learnedAt);
    REQUIRE(version);
    return std::move(*version);
}

}  // namespace

TEST_CASE("a version that was brought keeps what it says of itself, and is checked on courses that it has not seen", "[bands][brought]")
{
    REQUIRE(crypto::initialise());
    const Learned version = brought(drawn(seedBand(), 60));

    CHECK(version.version().starts_with("brought-2027-05-01-"));
    CHECK(version.band.provenance().courses == 400);
    CHECK(version.band.provenance().hash == std::string(64, 'e'));
    CHECK(version.band.provenance().learnedOn == "2027-04-01");
    CHECK(contentHash(version.band) == contentHash(elsewhere()));
    REQUIRE(version.brought);
    CHECK(version.brought->name == "clinic-2027-04-01-eeeeeeee");
    CHECK(version.courses.size() == 60);
    CHECK(version.coverage.courses == 60);
    CHECK(version.coverage.symptoms[0].readings == 60 * courseDays);
    CHECK_FALSE(objection(version.coverage));

    History history;
    REQUIRE(history.add(version));
    CHECK(history.activeVersion() == "seed-1");
    REQUIRE(history.choose(use(version.version())));
    REQUIRE(history.choose(goBack("seed-1")));
}

TEST_CASE("a version that was brought is refused where patients lie above it, or where too few have been seen", "[bands][brought][errors]")
{
    REQUIRE(crypto::initialise());
    History history;
    const Learned narrow = brought(drawn(seedBand(), 60, 2));
    REQUIRE(history.add(narrow));
    CHECK(history.allows(use(narrow.version())).error().reason == Reason::refused);

    for (const std::uint32_t courses : {0U, 1U, 29U}) {
        CAPTURE(courses);
        const Learned few = brought(drawn(seedBand(), courses));
        REQUIRE(history.add(few));
        CHECK(history.allows(use(few.version())).error().reason == Reason::notEnough);
    }
    for (const std::string& hash : {std::string(), std::string(63, 'e'), std::string(64, 'E')})
        CHECK(broughtVersion(elsewhere(hash), true, {}, "Dr. Ada Lund", learnedAt).error().reason == Reason::malformed);
}

TEST_CASE("the same band checked on more courses is another version, and one that may be used is found first", "[bands][brought]")
{
    REQUIRE(crypto::initialise());
    Movements movements = seedBand().movements();
    movements.sides.noise *= 1.01;
    const Band other = *Band::create(elsewhere().provenance(), seedBand().table(), movements);
    const auto checkedOn = [&](std::uint32_t courses) {
        auto version = broughtVersion(other, true, drawn(seedBand(), courses), "Dr. Ada Lund", learnedAt);
        REQUIRE(version);
        return std::move(*version);
    };
    const Learned enough = checkedOn(60);
    const Learned few = checkedOn(12);
    CHECK(enough.version() != few.version());
    CHECK(checkedOn(60).version() == enough.version());

    History history;
    CHECK_FALSE(history.saying(other));
    CHECK(history.saying(seedBand()) == "seed-1");
    REQUIRE(history.add(few));
    CHECK(history.saying(other) == few.version());
    REQUIRE(history.add(enough));
    REQUIRE(history.add(checkedOn(13)));
    CHECK(history.saying(other) == enough.version());
}
