// What else a diary can show: complications told by a temperature, by numbness, by severe pain, and by all at once.

#include "core/rehearsal/invented_course.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::rehearsal;
using recovery::Side;
using recovery::Symptom;

TEST_CASE("a fever is measured while it lasts by most who write, and never before", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    int wrote = 0;
    int told = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({model, Rhythm::twice, 9}, Kind::fever, i);
        CHECK(course.truth.side == Side::none);
        const auto during = [&](const clock::Moment& at) {
            return at.at >= course.truth.onset->at && at.at < course.truth.onset->at + std::chrono::hours(48);
        };
        bool hot = false;
        for (const MeasuredTemperature& measured : course.temperatures) {
            const bool fever = measured.temperature.celsius() >= 38.0;
            // Moments are cut to the minute.
            const auto later = measured.at.at - course.truth.onset->at;
            if (later < -std::chrono::minutes(1) || later > std::chrono::hours(48) + std::chrono::minutes(1))
                CHECK_FALSE(fever);
            else if (later > std::chrono::minutes(1) && later < std::chrono::hours(48) - std::chrono::minutes(1))
                CHECK(fever);
            hot = hot || fever;
        }
        wrote += std::count_if(course.input.observations.begin(), course.input.observations.end(),
                               [&](const auto& entry) { return during(entry.at); }) >= 2;
        told += hot;
    }
    REQUIRE(wrote > 100);
    CHECK(told > 0.9 * wrote);
}

TEST_CASE("ordinary courses measure now and then and have no fever, and the scores do not depend on it", "[rehearsal][invented]")
{
    int entries = 0;
    int measured = 0;
    for (int i = 0; i < 300; ++i) {
        const KnownCourse course = invent({Model::decay, Rhythm::mixed, 9}, Kind::plain, i);
        entries += static_cast<int>(course.input.observations.size());
        measured += static_cast<int>(course.temperatures.size());
        for (const MeasuredTemperature& each : course.temperatures) {
            CHECK(each.temperature.celsius() < 38.0);
            CHECK(std::any_of(course.input.observations.begin(), course.input.observations.end(),
                              [&](const auto& entry) { return entry.at.at == each.at.at; }));
        }
    }
    CHECK(measured > 0.03 * entries);
    CHECK(measured < 0.07 * entries);
}

TEST_CASE("numbness that spreads rises on its side after its onset, and no other kind scores numbness", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    double before = 0, after = 0, other = 0;
    int counted = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({model, Rhythm::daily, 9}, Kind::spreadingNumbness, i);
        std::optional<int> first, last, opposite;
        for (const auto& entry : course.input.observations) {
            const auto struck = entry.scores.find({Symptom::numbness, course.truth.side});
            const auto spared = entry.scores.find({Symptom::numbness, recovery::mirrored(course.truth.side)});
            REQUIRE(struck != entry.scores.end());
            REQUIRE(spared != entry.scores.end());
            if (entry.at.at < course.truth.onset->at) {
                first = struck->second.points();
            } else {
                last = struck->second.points();
                opposite = spared->second.points();
            }
        }
        if (first && last) {
            before += *first;
            after += *last;
            other += *opposite;
            ++counted;
        }
    }
    REQUIRE(counted > 100);
    CHECK(after / counted > before / counted + 1.5);
    CHECK(other / counted < before / counted);
    for (const Kind kind : {Kind::plain, Kind::infection, Kind::fever, Kind::weakness})
        for (const auto& entry : invent({model, Rhythm::daily, 9}, kind, 0).input.observations)
            CHECK(entry.scores.find({Symptom::numbness, Side::left}) == entry.scores.end());
}

TEST_CASE("severe pain stands at 7 or more on its side for two days and is the ordinary course's before and after", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    int during = 0, ordinary = 0, high = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({model, Rhythm::twice, 9}, Kind::severePain, i);
        for (const auto& entry : course.input.observations) {
            const auto pain = entry.scores.find({Symptom::pain, course.truth.side});
            if (pain == entry.scores.end())
                continue;
            // Moments are cut to the minute.
            const auto since = entry.at.at - course.truth.onset->at;
            if (since > std::chrono::minutes(1) && since < std::chrono::hours(48) - std::chrono::minutes(1)) {
                CHECK(pain->second.points() >= 7);
                ++during;
            } else if (since < -std::chrono::minutes(1) || since > std::chrono::hours(48) + std::chrono::minutes(1)) {
                high += pain->second.points() >= 7;
                ++ordinary;
            }
        }
    }
    CHECK(during > 400);
    CHECK(high < 0.05 * ordinary);
}

TEST_CASE("a febrile infection has an infection's scores, colour from the first day on and a fever from half a day on", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    double rise = 0;
    int counted = 0, coloured = 0, hot = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({model, Rhythm::twice, 9}, Kind::febrileInfection, i);
        const auto onset = course.truth.onset->at;
        std::optional<int> before, after;
        for (const auto& entry : course.input.observations) {
            const auto pain = entry.scores.find({Symptom::pain, course.truth.side});
            if (pain != entry.scores.end())
                (entry.at.at < onset ? before : after) = pain->second.points();
        }
        if (!before || !after)
            continue;
        ++counted;
        rise += *after - *before;
        coloured += std::any_of(course.signs.begin(), course.signs.end(), [&](const TickedSigns& ticked) {
            return ticked.at.at >= onset && ticked.signs.contains(recovery::Sign::colourChange);
        });
        bool fever = false;
        for (const MeasuredTemperature& measured : course.temperatures) {
            const bool high = measured.temperature.celsius() >= 38.0;
            if (measured.at.at < onset + std::chrono::hours(12) - std::chrono::minutes(1))
                CHECK_FALSE(high);
            fever = fever || high;
        }
        hot += fever;
    }
    REQUIRE(counted > 150);
    CHECK(rise / counted > 2);
    CHECK(coloured > 0.95 * counted);
    CHECK(hot > 0.85 * counted);
}
