// What stands behind a learned band: every entry with its hour, and what the practitioner scored.

#include "core/rehearsal/taught.h"

#include "core/bands/versions.h"
#include "core/clock/iso8601.h"
#include "core/crypto/crypto.h"
#include "core/rehearsal/invented_course.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <functional>

using namespace ebbline;
using namespace ebbline::rehearsal;
using recovery::Side;
using recovery::Symptom;

namespace {

constexpr recovery::Stream pain{Symptom::pain, Side::left};

triggers::CourseInput told()
{
    const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");
    triggers::CourseInput course{treated, {{recovery::Stream{Symptom::swelling, Side::left}, *recovery::Score::of(3)}}, {}};
    for (const int hour : {10, 24, 34, 48}) {
        clock::Moment at = treated;
        at.at += std::chrono::hours(hour);
        course.observations.push_back({at, {{pain, *recovery::Score::of(4)}}});
    }
    return course;
}

std::string hashOf(const triggers::CourseInput& course)
{
    return bands::groundsHash(std::vector{taughtAs({}, course)}, bands::seedBand());
}

}  // namespace

TEST_CASE("what was told and does not move a day's median is in the hash of a version all the same", "[rehearsal][bands]")
{
    REQUIRE(crypto::initialise());
    const auto course = told();
    const std::string hash = hashOf(course);
    const std::vector<std::pair<const char*, std::function<void(triggers::CourseInput&)>>> changes{
        {"an hour later that day", [](auto& c) { c.observations[0].at.at += std::chrono::hours(1); }},
        {"one more answer of that day", [](auto& c) { c.observations.push_back(c.observations[0]); }},
        {"a higher answer of that day", [](auto& c) { c.observations[2].scores.insert_or_assign(pain, *recovery::Score::of(9)); }},
        {"what the practitioner scored", [](auto& c) { c.baseline.clear(); }},
        {"an hour of the treatment", [](auto& c) { c.treated.at += std::chrono::hours(1); }}};
    for (const auto& [what, change] : changes) {
        CAPTURE(what);
        auto other = course;
        change(other);
        CHECK(taughtBy(other).size() == taughtBy(course).size());
        CHECK(std::ranges::equal(taughtBy(other), taughtBy(course), {}, &bands::DayScore::points, &bands::DayScore::points));
        CHECK(hashOf(other) != hash);
    }
}

TEST_CASE("the same entries in another order, or an entry without a score more, are the same grounds", "[rehearsal][bands]")
{
    REQUIRE(crypto::initialise());
    auto course = told();
    const std::string hash = hashOf(course);
    std::ranges::reverse(course.observations);
    course.observations.push_back({course.treated, {}});
    CHECK(hashOf(course) == hash);
}
