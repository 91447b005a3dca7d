// How a budget is divided: assumed trouble on ordinary courses, and shares that answer for it.

#include "core/rehearsal/allocate.h"
#include "core/rehearsal/assumed_trouble.h"

#include "core/triggers/course_watch.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::rehearsal;
using recovery::Side;
using recovery::Symptom;

namespace {

std::vector<KnownCourse> plainCourses(int count, std::uint64_t seed)
{
    std::vector<KnownCourse> courses;
    for (int i = 0; i < count; ++i)
        courses.push_back(invent({Model::steps, Rhythm::twice, seed}, Kind::plain, i));
    return courses;
}

}  // namespace

TEST_CASE("assumed trouble raises its side from its onset on and nothing else", "[rehearsal][allocate]")
{
    const Kind kind = GENERATE(Kind::infection, Kind::haematoma);
    int raised = 0;
    for (int i = 0; i < 40; ++i) {
        const KnownCourse plain = invent({Model::decay, Rhythm::twice, 41}, Kind::plain, i);
        Chance chance(5, static_cast<std::uint64_t>(i));
        const KnownCourse struck = troubled(plain, kind, chance);

        REQUIRE(struck.truth.onset);
        CHECK(struck.truth.kind == word(kind));
        REQUIRE(struck.input.observations.size() == plain.input.observations.size());
        for (std::size_t o = 0; o < plain.input.observations.size(); ++o) {
            const auto& before = plain.input.observations[o];
            const auto& after = struck.input.observations[o];
            for (const auto& [stream, score] : before.scores) {
                const int change = after.scores.at(stream).points() - score.points();
                CHECK(change >= 0);
                // Half a point shows, and one is there at the onset: what grows in 12 hours began 4 before.
                const bool tooEarly = before.at.at < struck.truth.onset->at - std::chrono::hours(kind == Kind::infection ? 30 : 4);
                if (stream.side != struck.truth.side || tooEarly || stream.symptom == Symptom::puckering)
                    CHECK(change == 0);
                raised += change;
            }
        }
    }
    CHECK(raised > 40);
}

TEST_CASE("an assumed slow course says later what was said earlier", "[rehearsal][allocate]")
{
    KnownCourse plain{"c", {invent({}, Kind::plain, 0).input.treated, {}, {}}, {}};
    const recovery::Stream stream{Symptom::swelling, Side::left};
    for (int day = 0; day <= 11; ++day) {
        triggers::Observation observation{plain.input.treated, {}};
        observation.at.at += std::chrono::hours(24 * day);
        observation.scores.insert_or_assign(stream, *recovery::Score::of(std::max(0, 10 - day)));
        plain.input.observations.push_back(observation);
    }
    Chance chance(5, 1);

    const KnownCourse slow = troubled(plain, Kind::slowRecovery, chance);

    const auto on = [&](std::size_t day) { return slow.input.observations[day].scores.at(stream).points(); };
    CHECK(on(0) == 10);
    CHECK(on(2) == 8);
    CHECK(on(5) == 7);    // a third of three days after day 2
    CHECK(on(8) == 6);
    CHECK(on(11) == 5);
}

TEST_CASE("a divided budget loses less where it would lose most", "[rehearsal][allocate]")
{
    const auto courses = plainCourses(600, 43);
    std::vector<const KnownCourse*> plain;
    std::vector<Peaks> peaks;
    const triggers::Protocol protocol = triggers::defaultProtocol();
    for (const KnownCourse& course : courses) {
        plain.push_back(&course);
        peaks.push_back(peaksOf(course.input, protocol, endOf(course.input)));
    }
    const Cohort cohort(std::move(peaks));
    const TroubledPeaks trouble = troubledPeaks(plain, protocol, 1, 200);
    REQUIRE(trouble.size() == troubledKinds.size());
    Shares lopsided = usualShares;
    lopsided[static_cast<std::size_t>(triggers::Statistic::slowOverall)] /= 10;

    const Shares shares = allocated(cohort, trouble, 0.1, lopsided);

    CHECK(shares[static_cast<std::size_t>(triggers::Statistic::slowOverall)]
          > lopsided[static_cast<std::size_t>(triggers::Statistic::slowOverall)]);
    CHECK(shares[static_cast<std::size_t>(triggers::Statistic::level)]
          == lopsided[static_cast<std::size_t>(triggers::Statistic::level)]);
    CHECK(allocated(cohort, trouble, 0.1, lopsided) == shares);
}

TEST_CASE("peaks between two moments leave out what was written before", "[rehearsal][allocate]")
{
    const KnownCourse course = invent({Model::decay, Rhythm::twice, 44}, Kind::infection, 2);
    const triggers::Protocol protocol = triggers::defaultProtocol();
    clock::Moment late = endOf(course.input);
    late.at += std::chrono::hours(1);

    const Peaks none = peaksBetween(course.input, protocol, late, late);
    const Peaks all = peaksBetween(course.input, protocol, course.input.treated, endOf(course.input));

    CHECK_FALSE(none.byRule);
    CHECK(std::all_of(none.values.begin(), none.values.end(), [](double value) { return value == never; }));
    CHECK(all.values == peaksOf(course.input, protocol, endOf(course.input)).values);
}
