// The band: an ordinal distribution per symptom and day, and what is read off it.

#include "core/bands/band.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <limits>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::bands;
using recovery::Symptom;

namespace {

Band bandOf(const Distribution& distribution)
{
    Band::Table table{};
    for (auto& days : table)
        days.fill(distribution);
    const auto band = Band::create({"test", 40, false, "2027-01-01", "00"}, table);
    REQUIRE(band);
    return *band;
}

}  // namespace

TEST_CASE("the seed band gives the table it was made from", "[bands]")
{
    // docs/clinical/seed_band.md: median (10th-90th). All of it an assumption, and labelled so.
    struct Row { Symptom symptom; int day; Range wanted; };
    for (const Row& row : {Row{Symptom::pain, 0, {1, 3, 6}}, Row{Symptom::pain, 7, {0, 1, 3}},
                           Row{Symptom::swelling, 1, {2, 4, 6}}, Row{Symptom::swelling, 5, {0, 2, 4}},
                           Row{Symptom::bruising, 2, {0, 3, 6}}, Row{Symptom::bruising, 21, {0, 0, 0}},
                           Row{Symptom::tightness, 3, {1, 3, 6}}, Row{Symptom::twinges, 10, {0, 0, 3}},
                           Row{Symptom::puckering, 0, {0, 3, 5}}, Row{Symptom::puckering, 21, {0, 0, 1}}}) {
        const Range range = seedBand().inner(row.symptom, row.day);
        CAPTURE(recovery::word(row.symptom), row.day, range.low, range.median, range.high);
        CHECK(range.low == row.wanted.low);
        CHECK(range.median == row.wanted.median);
        CHECK(range.high == row.wanted.high);
    }
    CHECK(seedBand().provenance().assumption);
    CHECK(seedBand().provenance().courses == 0);
}

TEST_CASE("a centile is the lowest score that reaches it", "[bands]")
{
    Distribution distribution{};
    distribution[0] = 0.5;
    distribution[3] = 0.4;
    distribution[10] = 0.1;
    const Band band = bandOf(distribution);

    CHECK(band.centile(Symptom::pain, 5, 0.50) == 0);
    CHECK(band.centile(Symptom::pain, 5, 0.51) == 3);
    CHECK(band.centile(Symptom::pain, 5, 0.90) == 3);
    CHECK(band.centile(Symptom::pain, 5, 0.91) == 10);
}

TEST_CASE("z is the normal quantile of the middle of an answer's own share", "[bands]")
{
    Distribution distribution{};
    distribution[2] = 1.0;
    const Band band = bandOf(distribution);

    CHECK_THAT(band.z(Symptom::pain, 0, 2), WithinAbs(0.0, 1e-12));
    // Below and above everything expected: clipped to the quantile of 0.0005 (qnorm in R 4.2.2).
    CHECK_THAT(band.z(Symptom::pain, 0, 0), WithinAbs(-3.290526731491895, 1e-9));
    CHECK_THAT(band.z(Symptom::pain, 0, 9), WithinAbs(3.290526731491895, 1e-9));
}

TEST_CASE("z of three answers is R's qnorm of the middles of their shares", "[bands]")
{
    Distribution distribution{};
    distribution[0] = 0.5;
    distribution[3] = 0.4;
    distribution[10] = 0.1;
    const Band band = bandOf(distribution);

    // qnorm(c(0.25, 0.7, 0.95)), R 4.2.2.
    CHECK_THAT(band.z(Symptom::pain, 0, 0), WithinAbs(-0.6744897501960817, 1e-9));
    CHECK_THAT(band.z(Symptom::pain, 0, 3), WithinAbs(0.5244005127080407, 1e-9));
    CHECK_THAT(band.z(Symptom::pain, 0, 10), WithinAbs(1.644853626951472, 1e-9));
}

TEST_CASE("z grows with the score and drawing goes back to it", "[bands][property]")
{
    CHECK(rc::check("monotone and inverse", [] {
        const Symptom symptom = *rc::gen::elementOf(recovery::allSymptoms);
        const int day = *rc::gen::inRange(0, lastDay + 1);
        for (int score = 0; score < 10; ++score)
            RC_ASSERT(seedBand().z(symptom, day, score) <= seedBand().z(symptom, day, score + 1));
        const int score = *rc::gen::inRange(0, 11);
        const double z = seedBand().z(symptom, day, score);
        if (z > -3.2 && z < 3.2)
            RC_ASSERT(std::abs(seedBand().pointsAt(symptom, day, z) - score) < 1e-6);
    }));
}

TEST_CASE("centiles never cross and days outside take the nearest", "[bands]")
{
    for (const Symptom symptom : recovery::allSymptoms) {
        for (int day = 0; day <= lastDay; ++day) {
            const Range inner = seedBand().inner(symptom, day);
            const Range outer = seedBand().outer(symptom, day);
            CHECK((outer.low <= inner.low && inner.low <= inner.median));
            CHECK((inner.median <= inner.high && inner.high <= outer.high));
        }
        CHECK(seedBand().at(symptom, -3) == seedBand().at(symptom, 0));
        CHECK(seedBand().at(symptom, 90) == seedBand().at(symptom, lastDay));
    }
}

TEST_CASE("a table that is no distribution is refused with its place", "[bands][errors]")
{
    for (const double bad : {0.4, -0.1, std::numeric_limits<double>::quiet_NaN()}) {
        Band::Table table = seedBand().table();
        table[1][4][0] = bad;
        const auto refused = Band::create({}, table);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().detail.find("swelling on day 4") != std::string::npos);
    }
}
