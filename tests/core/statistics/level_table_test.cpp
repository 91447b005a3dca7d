// Many series side by side are smoothed as one by one, which is held against the published Nile.

#include "core/statistics/level_table.h"

#include "tests/core/statistics/nile.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>

using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

TEST_CASE("a table smooths each of its series as smooth() does by itself", "[statistics][property]")
{
    CHECK(rc::check("same levels", [] {
        const auto count = static_cast<std::size_t>(*rc::gen::inRange(1, 20));
        const auto length = static_cast<std::size_t>(*rc::gen::inRange(1, 30));
        const LocalLevelModel model{*rc::gen::inRange(1, 100) / 50.0, *rc::gen::inRange(0, 100) / 200.0,
                                    *rc::gen::inRange(-3, 4) / 1.0, *rc::gen::inRange(0, 100) / 50.0};
        std::vector<std::vector<std::vector<double>>> series(count, std::vector<std::vector<double>>(length));
        auto table = LevelTable::create(count, length);
        RC_ASSERT(table.has_value());
        for (std::size_t i = 0; i < count; ++i)
            for (std::size_t t = 0; t < length; ++t)
                for (int n = *rc::gen::inRange(0, 4); n > 1; --n) {
                    const double value = *rc::gen::inRange(-400, 401) / 100.0;
                    series[i][t].push_back(value);
                    RC_ASSERT(table->observe(i, t, value).has_value());
                }
        RC_ASSERT(table->smooth(model).has_value());
        for (std::size_t i = 0; i < count; ++i) {
            const auto alone = smooth(model, series[i]).value();
            for (std::size_t t = 0; t < length; ++t) {
                RC_ASSERT(std::abs(table->level(i, t).mean - alone[t].mean) < 1e-9);
                RC_ASSERT(std::abs(table->level(i, t).variance - alone[t].variance) < 1e-9);
            }
        }
    }));
}

TEST_CASE("in a table the smoothed Nile is the published one, in whichever place it stands", "[statistics][published]")
{
    // Durbin and Koopman 2012, chapter 2, recomputed with R's KalmanSmooth: see local_level_test.
    auto table = LevelTable::create(11, nile.size());
    REQUIRE(table);
    for (const std::size_t place : {std::size_t{0}, std::size_t{7}, std::size_t{10}})
        for (std::size_t t = 0; t < nile.size(); ++t)
            REQUIRE(table->observe(place, t, nile[t]));

    REQUIRE(table->smooth({.observation = 15099, .drift = 1469.1, .startMean = 0, .startVariance = 1e7}));

    struct Row { std::size_t year; double mean; double variance; };
    for (const std::size_t place : {std::size_t{0}, std::size_t{7}, std::size_t{10}})
        for (const Row row : {Row{1, 1111.220258, 4030.532767}, Row{2, 1110.529257, 3242.056999},
                              Row{50, 834.763259, 2326.75687}, Row{100, 798.3702926, 4032.157942}}) {
            CAPTURE(place, row.year);
            CHECK_THAT(table->level(place, row.year - 1).mean, WithinRel(row.mean, 1e-9));
            CHECK_THAT(table->level(place, row.year - 1).variance, WithinRel(row.variance, 1e-9));
        }
    // Its neighbours saw nothing: the start, and the drift of the steps.
    CHECK(table->level(5, 0).mean == 0);
    CHECK_THAT(table->level(5, 9).variance, WithinRel(1e7 + 9 * 1469.1, 1e-12));
}

TEST_CASE("a table refuses what smooth() refuses", "[statistics][errors]")
{
    auto table = LevelTable::create(2, 3);
    REQUIRE(table);
    CHECK(table->observe(0, 0, NAN).error().reason == Reason::notFinite);
    CHECK(table->smooth({0, 1, 0, 1}).error().reason == Reason::outOfRange);
    CHECK(table->smooth({1, -1, 0, 1}).error().reason == Reason::outOfRange);
    REQUIRE(table->smooth({1, 0, 3, 2}));
    // The observation that was refused has left nothing behind.
    CHECK(table->level(0, 0).mean == 3);
    CHECK(table->level(0, 0).variance == 2);
    CHECK(LevelTable::create(std::size_t{1} << 40, std::size_t{1} << 40).error().reason == Reason::tooLarge);
    CHECK(LevelTable::create(0, 5));
    CHECK(LevelTable::create(5, 0)->smooth({1, 1, 0, 1}));
}
