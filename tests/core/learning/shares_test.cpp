// How many courses were complicated, and when that cannot be said.

#include "core/learning/shares.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::learning;
using test::coursesOf;

TEST_CASE("a share comes with Wilson's limits, and none of twenty is no zero", "[learning][shares]")
{
    const auto shares = complicationShares(coursesOf("a", 0, 20), By::nothing);

    REQUIRE(shares.size() == 1);
    REQUIRE(shares[0].share);
    CHECK(shares[0].share->share == 0);
    // 0 of 20: 0 to 0.1611. Newcombe, Statistics in Medicine 1998;17:857, table I.
    CHECK_THAT(shares[0].share->limits.high, WithinAbs(0.1611, 5e-5));
}

TEST_CASE("fifteen of a hundred and forty-eight are between six and sixteen in a hundred", "[learning][shares]")
{
    // Newcombe, Statistics in Medicine 1998;17:857, table I: 0.0624 to 0.1605.
    const auto share = shareOf(15, 148);
    REQUIRE(share);
    CHECK_THAT(share->limits.low, WithinAbs(0.0624, 5e-5));
    CHECK_THAT(share->limits.high, WithinAbs(0.1605, 5e-5));
}

TEST_CASE("of few courses nothing is said, and how many it takes is", "[learning][shares]")
{
    for (const int known : {0, 1, 9}) {
        const auto shares = complicationShares(coursesOf("a", known / 3, known, 3), By::nothing);
        REQUIRE(shares.size() == 1);
        REQUIRE_FALSE(shares[0].share);
        CHECK(shares[0].share.error() == NotEnough{Lack::outcomes, known, 10});
        CHECK(sentence(shares[0].share.error())
              == "not enough to say: known outcomes " + std::to_string(known) + ", want 10");
    }
    CHECK(complicationShares({}, By::nothing).empty());
    CHECK(complicationKinds({}).empty());
}

TEST_CASE("a course without an outcome is counted and is in no share", "[learning][shares]")
{
    const auto with = complicationShares(coursesOf("a", 2, 20, 30), By::technique);
    const auto without = complicationShares(coursesOf("a", 2, 20), By::technique);

    CHECK(with[0].unknown == 30);
    CHECK(with[0].known == 20);
    CHECK(with[0].share->share == without[0].share->share);
    CHECK(with[0].share->limits.high == without[0].share->limits.high);
}

TEST_CASE("a course with two zones counts in both, one without a technique stands apart", "[learning][shares]")
{
    auto courses = coursesOf("a", 1, 12);
    for (auto& course : courses)
        course.zones = {"cheek", "neck"};
    courses[11].zones = {"neck"};
    courses[11].technique.clear();

    const auto zones = complicationShares(courses, By::zone);
    REQUIRE(zones.size() == 2);
    CHECK(zones[0].group == "cheek");
    CHECK(zones[0].known == 11);
    CHECK(zones[1].known == 12);
    const auto techniques = complicationShares(courses, By::technique);
    REQUIRE(techniques.size() == 2);
    CHECK(techniques[0].group.empty());
    CHECK(techniques[0].known == 1);
}

TEST_CASE("kinds of complications are shares of all courses, most frequent first", "[learning][shares]")
{
    auto courses = coursesOf("a", 3, 40);
    courses[0].outcome->kinds = {"infection", "infection"};
    courses[1].outcome->kinds = {"haematoma", "infection"};
    courses[2].outcome->kinds = {};

    const auto kinds = complicationKinds(courses);

    REQUIRE(kinds.size() == 2);
    CHECK(kinds[0].group == "infection");
    CHECK(kinds[0].complicated == 2);
    CHECK(kinds[0].known == 40);
    CHECK(kinds[1].group == "haematoma");
}

TEST_CASE("technique, zones and lots are read from the placements", "[learning]")
{
    recovery::Treatment treatment;
    recovery::Placement placement;
    placement.zone = recovery::Zone::jawline;
    placement.lot = "TH-4417";
    treatment.placements = {placement, placement};
    treatment.placements[1].zone = recovery::Zone::cheek;
    treatment.placements[1].lot.clear();

    CHECK(techniqueOf(treatment) == std::string(recovery::word(placement.material)) + " "
                                        + std::string(recovery::word(placement.form)));
    CHECK(zonesOf(treatment) == std::vector<std::string>{"cheek", "jawline"});
    CHECK(lotsOf(treatment) == std::vector{PackLot{"TH-4417"}});
    treatment.placements[1].material = recovery::Material::plla;
    CHECK(techniqueOf(treatment) == "mixed");
    CHECK(techniqueOf({}).empty());
}

TEST_CASE("shares lie within their limits, in any order of the courses, and every course is counted once",
          "[learning][shares][property]")
{
    CHECK(rc::check("laws", [] {
        auto courses = test::anyCourses(60);
        const By by = *rc::gen::elementOf(std::vector<By>{By::nothing, By::technique, By::clinic});
        const auto shares = complicationShares(courses, by);
        long counted = 0;
        for (const GroupShare& group : shares) {
            counted += group.known + group.unknown;
            RC_ASSERT(group.share.has_value() == (group.known >= fewestCourses));
            if (group.share) {
                RC_ASSERT(group.share->limits.low >= 0 && group.share->limits.low <= group.share->share);
                RC_ASSERT(group.share->limits.high <= 1 && group.share->limits.high >= group.share->share);
                RC_ASSERT(group.share->limits.high > group.share->limits.low);
            }
        }
        RC_ASSERT(counted == static_cast<long>(courses.size()));
        std::reverse(courses.begin(), courses.end());
        const auto again = complicationShares(courses, by);
        RC_ASSERT(again.size() == shares.size());
        for (std::size_t i = 0; i < shares.size(); ++i)
            RC_ASSERT(again[i].complicated == shares[i].complicated && again[i].group == shares[i].group);
    }));
}
