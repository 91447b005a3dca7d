// Pooling over clinics: few courses are drawn towards the others, many stay.

#include "core/learning/clinics.h"

#include "tests/core/learning/sample_courses.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::learning;

namespace {

/// Tumours among rats in 71 groups: R. E. Tarone, Biometrics 1982;38:215, as printed in Gelman et al.,
/// Bayesian Data Analysis, section 5.1.
std::vector<ClinicCounts> rats()
{
    const std::vector<long> events{0,0,0,0,0,0,0,0,0,0,0,0,0,0,1,1,1,1,1,1,1,1,2,2,2,2,2,2,2,2,2,1,5,2,5,3,2,7,7,3,3,2,9,10,
                                   4,4,4,4,4,4,4,10,4,4,4,5,11,12,5,5,6,5,6,6,6,6,16,15,15,9,4};
    const std::vector<long> totals{20,20,20,20,20,20,20,19,19,19,19,18,18,17,20,20,20,20,19,19,18,18,25,24,23,20,20,20,20,20,20,
                                   10,49,19,46,27,17,49,47,20,20,13,48,50,20,20,20,20,20,20,20,48,19,19,19,22,46,49,20,20,23,19,
                                   22,20,20,20,52,46,47,24,14};
    std::vector<ClinicCounts> groups;
    for (std::size_t i = 0; i < events.size(); ++i)
        groups.push_back({std::to_string(i), events[i], totals[i]});
    return groups;
}

}  // namespace

TEST_CASE("the last group of rats is drawn towards the seventy others", "[learning][clinics]")
{
    const auto pool = poolClinics(rats());

    REQUIRE(pool);
    REQUIRE(pool->between);
    // Maximum likelihood over all 71 groups: 2.341608, 14.114769 (R 4.2.2, own).
    CHECK_THAT(pool->between->a, WithinAbs(2.341608, 1e-4));
    CHECK_THAT(pool->between->b, WithinAbs(14.114769, 1e-3));
    const PooledClinic& last = pool->clinics.back();
    REQUIRE(last.own);
    CHECK_THAT(last.own->share, WithinAbs(4.0 / 14, 1e-12));
    CHECK_THAT(last.share, WithinAbs((2.341608 + 4) / (2.341608 + 14.114769 + 14), 1e-5));
    CHECK((last.limits.low < last.share && last.share < last.limits.high));
    // A group without a tumour is not believed to have none.
    CHECK(pool->clinics.front().share > 0.05);
}

TEST_CASE("clinics that differ no more than chance share one figure", "[learning][clinics]")
{
    const auto pool = poolClinics(std::vector<ClinicCounts>{{"Mole", 1, 20}, {"Reed", 1, 20}, {"Weir", 1, 20}});

    REQUIRE(pool);
    CHECK_FALSE(pool->between);
    for (const PooledClinic& clinic : pool->clinics)
        CHECK_THAT(clinic.share, WithinAbs(3.5 / 61, 1e-12));
}

TEST_CASE("clinics that lie as far apart as can be are not called alike, and are not drawn together", "[learning][clinics]")
{
    const std::vector<ClinicCounts> opposites{{"Mole", 80, 80}, {"Reed", 0, 159}, {"Weir", 0, 159}};

    CHECK(poolClinics(opposites).error() == NotEnough{Lack::apart});
    CHECK(sentence({Lack::apart}) == "not enough to say: the groups lie too far apart to be drawn together");
}

TEST_CASE("clinics without one complication are alike as far as anybody can see", "[learning][clinics]")
{
    const auto pool = poolClinics(std::vector<ClinicCounts>{{"Mole", 0, 20}, {"Reed", 0, 20}, {"Weir", 0, 20}});

    REQUIRE(pool);
    CHECK_FALSE(pool->between);
    CHECK_THAT(pool->clinics.front().share, WithinAbs(0.5 / 61, 1e-12));
    CHECK(pool->clinics.front().limits.high > 0.02);
}

TEST_CASE("a clinic whose courses nobody closed gets what is known of clinics", "[learning][clinics]")
{
    auto groups = rats();
    groups.push_back({"new", 0, 0});
    const auto pool = poolClinics(groups);
    REQUIRE(pool);
    CHECK_FALSE(pool->clinics.back().own);
    CHECK_THAT(pool->clinics.back().share, WithinAbs(pool->between->mean(), 1e-12));
    CHECK(pool->clinics.back().limits.high - pool->clinics.back().limits.low > 0.2);
}

TEST_CASE("two clinics, or few courses, are not pooled", "[learning][clinics]")
{
    CHECK(poolClinics(std::vector<ClinicCounts>{{"Mole", 1, 200}, {"Reed", 1, 200}}).error()
          == NotEnough{Lack::groups, 2, 3});
    CHECK(poolClinics(std::vector<ClinicCounts>{{"Mole", 1, 3}, {"Reed", 0, 3}, {"Weir", 0, 3}}).error()
          == NotEnough{Lack::outcomes, 9, 10});
    CHECK_FALSE(poolClinics({}));
    CHECK_FALSE(poolClinics(std::vector<ClinicCounts>{{"a", 5, 3}, {"b", 0, 30}, {"c", 0, 30}}));
}

TEST_CASE("without a single complication anywhere nobody is promised none", "[learning][clinics]")
{
    const auto pool = poolClinics(std::vector<ClinicCounts>{{"Mole", 0, 20}, {"Reed", 0, 20}, {"Weir", 0, 20}});
    REQUIRE(pool);
    for (const PooledClinic& clinic : pool->clinics) {
        CHECK(clinic.share > 0);
        CHECK(clinic.limits.high > 0.03);
    }
}

TEST_CASE("a pooled share lies between the clinic's own and that of all", "[learning][clinics][property]")
{
    CHECK(rc::check("shrinks", [] {
        std::vector<ClinicCounts> counts;
        const int clinics = *rc::gen::inRange(3, 9);
        for (int i = 0; i < clinics; ++i) {
            const long known = *rc::gen::inRange(4L, 80L);
            counts.push_back({std::to_string(i), *rc::gen::inRange(0L, known + 1), known});
        }
        const auto pool = poolClinics(counts);
        RC_ASSERT(pool.has_value());
        for (const PooledClinic& clinic : pool->clinics) {
            RC_ASSERT(std::isfinite(clinic.share) && clinic.share > 0 && clinic.share < 1);
            RC_ASSERT(clinic.limits.low >= 0 && clinic.limits.high <= 1 && clinic.limits.low < clinic.limits.high);
            if (pool->between) {
                const double own = static_cast<double>(clinic.counts.complicated) / static_cast<double>(clinic.counts.known);
                const double mean = pool->between->mean();
                RC_ASSERT(clinic.share >= std::min(own, mean) - 1e-9 && clinic.share <= std::max(own, mean) + 1e-9);
            }
        }
    }));
}

TEST_CASE("counts by clinic leave out what is not known", "[learning][clinics]")
{
    auto courses = test::coursesOf("a", 2, 12, 3);
    for (auto& course : courses)
        course.clinic = "Mole";
    const auto counts = countsByClinic(courses);
    REQUIRE(counts.size() == 1);
    CHECK(counts[0].complicated == 2);
    CHECK(counts[0].known == 12);
}
