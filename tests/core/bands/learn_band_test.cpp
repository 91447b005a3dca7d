// Bands learned from courses: counts, smoothing over days, and the pull of the seed.

#include "core/bands/learn_band.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::bands;
using recovery::Side;
using recovery::Symptom;

namespace {

const Movement sides = assumedMovements().sides;

/// Pain on both sides with one score on every day.
TaughtCourse flatCourse(int points)
{
    TaughtCourse course;
    for (int day = 0; day <= lastDay; ++day)
        for (const Side side : recovery::bothSides)
            course.push_back({Symptom::pain, side, day, points});
    return course;
}

Band learnedFrom(const std::vector<TaughtCourse>& courses)
{
    const auto band = learnBand(courses, seedBand(), {"test", 0, false, "2027-05-01", "00"}, sides);
    REQUIRE(band);
    return *band;
}

}  // namespace

TEST_CASE("both sides of a course together weigh as one course against the seed's thirty", "[bands][learning]")
{
    const std::vector<TaughtCourse> courses(10, flatCourse(7));

    const Band band = learnedFrom(courses);

    // (30 seed + 10 counted + 0.05) / (30 + 10 + 11 x 0.05), the sum written in docs/statistics/band.md.
    const double seed = seedBand().at(Symptom::pain, 5)[7];
    CHECK_THAT(band.at(Symptom::pain, 5)[7], WithinAbs((30 * seed + 10.05) / 40.55, 1e-12));
    CHECK(band.provenance().courses == 10);
    CHECK_FALSE(band.provenance().assumption);
}

TEST_CASE("a symptom that nobody scored stays close to the seed", "[bands][learning]")
{
    const Band band = learnedFrom(std::vector<TaughtCourse>(200, flatCourse(7)));

    for (std::size_t k = 0; k < 11; ++k)
        CHECK_THAT(band.at(Symptom::swelling, 3)[k], WithinAbs(seedBand().at(Symptom::swelling, 3)[k], 0.02));
}

TEST_CASE("with many courses the band is theirs", "[bands][learning]")
{
    const Band band = learnedFrom(std::vector<TaughtCourse>(3000, flatCourse(4)));

    CHECK(band.inner(Symptom::pain, 10).low == 4);
    CHECK(band.inner(Symptom::pain, 10).high == 4);
}

TEST_CASE("a day borrows a quarter from each neighbour", "[bands][learning]")
{
    TaughtCourse course;
    course.push_back({Symptom::pain, Side::left, 10, 9});
    const Band band = learnedFrom({course});

    const auto nine = [&](int day) { return band.at(Symptom::pain, day)[9]; };
    const auto seed = [&](int day) { return seedBand().at(Symptom::pain, day)[9]; };
    CHECK_THAT(nine(10), WithinAbs((30 * seed(10) + 0.5 + 0.05) / (30 + 0.5 + 0.55), 1e-12));
    CHECK_THAT(nine(9), WithinAbs((30 * seed(9) + 0.25 + 0.05) / (30 + 0.25 + 0.55), 1e-12));
    CHECK_THAT(nine(8), WithinAbs((30 * seed(8) + 0.05) / (30 + 0.55), 1e-12));
}

TEST_CASE("no courses and impossible scores are refused by name", "[bands][learning][errors]")
{
    const auto none = learnBand({}, seedBand(), {}, sides);
    REQUIRE_FALSE(none);
    CHECK(none.error().reason == Reason::notEnough);

    const std::vector<TaughtCourse> wrong{{{Symptom::pain, Side::left, 3, 11}}};
    const auto refused = learnBand(wrong, seedBand(), {}, sides);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().reason == Reason::outOfRange);
    CHECK(refused.error().detail.starts_with("points"));
}

TEST_CASE("a single patient gives a band, and it is nearly the seed", "[bands][learning]")
{
    const Band band = learnedFrom({flatCourse(10)});

    CHECK(band.provenance().courses == 1);
    CHECK(band.inner(Symptom::pain, 7).median == seedBand().inner(Symptom::pain, 7).median);
    CHECK(band.movements().score == seedBand().movements().score);
}

TEST_CASE("learned distributions stay distributions, centiles never cross and z grows with the score", "[bands][learning][property]")
{
    CHECK(rc::check("sound", [] {
        std::vector<TaughtCourse> courses(static_cast<std::size_t>(*rc::gen::inRange(1, 40)));
        for (TaughtCourse& course : courses)
            for (int day = 0; day < 25; ++day)
                course.push_back({*rc::gen::elementOf(recovery::allSymptoms), *rc::gen::elementOf(recovery::bothSides),
                                  day, *rc::gen::inRange(0, 11)});
        const auto band = learnBand(courses, seedBand(), {}, sides);
        RC_ASSERT(band.has_value());
        for (const Symptom symptom : recovery::allSymptoms)
            for (int day = 0; day <= lastDay; ++day) {
                RC_ASSERT(band->outer(symptom, day).low <= band->inner(symptom, day).low);
                RC_ASSERT(band->inner(symptom, day).high <= band->outer(symptom, day).high);
                for (int score = 0; score < 10; ++score)
                    RC_ASSERT(band->z(symptom, day, score) <= band->z(symptom, day, score + 1));
            }
    }));
}

TEST_CASE("the movement of a simulated local level is found again", "[bands][learning]")
{
    // 400 series of 22 steps with noise 0.3, drift 0.05, start 0.5, from a linear congruence of our
    // own so that the test needs no library: the estimate of a variance from 8800 readings has a
    // relative spread of about 3 %; the start rests on 400 series, about 10 %.
    std::uint64_t state = 12345;
    const auto uniform = [&] {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state >> 11) * 0x1.0p-53;
    };
    const auto normal = [&] { return std::sqrt(-2 * std::log(1 - uniform())) * std::cos(6.283185307179586 * uniform()); };
    std::vector<Series> cohort(400);
    for (Series& series : cohort) {
        double level = std::sqrt(0.5) * normal();
        for (int day = 0; day < 22; ++day) {
            if (day > 0)
                level += std::sqrt(0.05) * normal();
            series.emplace_back(day, level + std::sqrt(0.3) * normal());
        }
    }

    const Movement found = fitMovement(cohort, {1, 0.01, 1});

    CHECK_THAT(found.noise, WithinAbs(0.3, 0.05));
    CHECK_THAT(found.drift, WithinAbs(0.05, 0.015));
    CHECK_THAT(found.start, WithinAbs(0.5, 0.15));
    CHECK(fitMovement({}, {1, 0.01, 1}) == Movement{1, 0.01, 1});
}

TEST_CASE("a movement without noise is no movement", "[bands][errors]")
{
    Movements movements = assumedMovements();
    movements.score[2].noise = 0;

    const auto band = Band::create({}, seedBand().table(), movements);

    REQUIRE_FALSE(band);
    CHECK(band.error().reason == Reason::outOfRange);
    CHECK(band.error().detail.find("bruising") != std::string::npos);
}
