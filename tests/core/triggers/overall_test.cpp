// The statistics over all symptoms: what an entry offers where some symptoms were not answered, or with 0.

#include "core/triggers/course_watch.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace ebbline;
using namespace ebbline::triggers;
using recovery::Score;
using recovery::Side;
using recovery::Stream;
using recovery::Symptom;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

Score points(int value) { return *Score::of(value); }

/// An entry every evening from day 0 to a day, nothing answered yet.
CourseInput evenings(int lastDay)
{
    CourseInput course{treated, {}, {}};
    for (int day = 0; day <= lastDay; ++day) {
        clock::Moment at = treated;
        at.at += std::chrono::hours(24 * day + 10);
        course.observations.push_back({at, {}});
    }
    return course;
}

void answer(CourseInput& course, Symptom symptom, const std::vector<int>& scores)
{
    for (std::size_t day = 0; day < scores.size(); ++day)
        course.observations[day].scores.insert_or_assign({symptom, Side::left}, points(scores[day]));
}

/// What the last entry of a course offers of a statistic.
std::optional<Candidate> offeredAtLast(const CourseInput& course, Statistic statistic)
{
    const Protocol protocol = defaultProtocol();
    CourseWatch watch(course, protocol);
    std::optional<Candidate> offered;
    for (const Observation& observation : course.observations) {
        offered.reset();
        for (const Candidate& candidate : watch.take(observation))
            if (candidate.statistic == statistic)
                offered = candidate;
    }
    return offered;
}

/// What is judged, up to an evening, where everything over all symptoms fires as soon as its points say so, and of single
/// streams the level alone if it is asked for.
std::vector<Finding> judgedOverall(const CourseInput& course, Trigger trigger, bool streamsToo = false)
{
    Protocol protocol = defaultProtocol();
    protocol.thresholds.levelOverall = protocol.thresholds.slowOverall = -100;
    protocol.thresholds.level = streamsToo ? -100 : 100;
    protocol.thresholds.slowRecovery = 100;
    auto findings = judge(course, protocol, course.observations.back().at);
    std::erase_if(findings, [&](const Finding& finding) { return finding.trigger != trigger; });
    return findings;
}

}  // namespace

TEST_CASE("a level over all symptoms that goes on is one finding, whichever symptom leads", "[triggers]")
{
    CourseInput course = evenings(4);
    answer(course, Symptom::swelling, {8, 4, 8, 0, 4});
    answer(course, Symptom::tightness, {4, 8, 4, 0, 8});

    const auto findings = judgedOverall(course, Trigger::level);

    // Again after the quiet evening, and not because another symptom led.
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].day == 0);
    CHECK(findings[0].stream == Stream{Symptom::swelling, Side::none});
    CHECK(findings[1].day == 4);
    CHECK(findings[1].stream == Stream{Symptom::tightness, Side::none});
    for (const Finding& finding : findings)
        CHECK(isOverall(finding));
}

TEST_CASE("a slowness over all symptoms that goes on is one finding, whichever symptom leads", "[triggers]")
{
    CourseInput course = evenings(11);
    answer(course, Symptom::swelling, {5, 5, 5, 5, 5, 5, 5, 5, 5, 4, 5, 4});
    answer(course, Symptom::tightness, {4, 4, 4, 4, 4, 4, 4, 4, 4, 5, 4, 5});

    const auto findings = judgedOverall(course, Trigger::slowRecovery);

    REQUIRE(findings.size() == 1);
    CHECK(findings[0].day == 8);
    CHECK(findings[0].stream == Stream{Symptom::swelling, Side::none});
}

TEST_CASE("a symptom that was scored without sides is not all symptoms together, and what becomes more urgent rings", "[triggers][safety]")
{
    CourseInput course = evenings(1);
    course.observations[0].scores.insert_or_assign({Symptom::pain, Side::none}, points(5));
    course.observations[1].scores.insert_or_assign({Symptom::pain, Side::none}, points(7));

    const auto findings = judgedOverall(course, Trigger::level, true);

    REQUIRE(findings.size() == 3);
    CHECK_FALSE(isOverall(findings[0]));
    CHECK(explain(findings[0]).starts_with("pain is far above the usual: 5 of 10 on day 0"));
    CHECK(isOverall(findings[1]));
    CHECK(explain(findings[1]).starts_with("all symptoms together are far above the usual on day 0, among them pain with 5 of 10"));
    CHECK_FALSE(isOverall(findings[2]));
    CHECK(findings[2].day == 1);
    CHECK(findings[2].urgency == recovery::Urgency::callNow);
}

TEST_CASE("a finding of before findings over all symptoms were marked is one if it names no side", "[triggers]")
{
    Finding finding{.trigger = Trigger::level, .urgency = recovery::Urgency::nextWorkingDay, .stream = {Symptom::pain, Side::none},
                    .raisedAt = treated, .day = 3, .numbers = {{"score", 4}}};
    CHECK(isOverall(finding));
    finding.trigger = Trigger::slowRecovery;
    CHECK(isOverall(finding));
    finding.trigger = Trigger::silence;
    CHECK_FALSE(isOverall(finding));
    finding.trigger = Trigger::level;
    finding.stream.side = Side::left;
    CHECK_FALSE(isOverall(finding));
    finding.stream.side = Side::none;
    finding.numbers["overall"] = 0;
    CHECK_FALSE(isOverall(finding));
}

TEST_CASE("a 0 today does not hide that the last three days were high for so late a day", "[triggers]")
{
    CourseInput course = evenings(10);
    answer(course, Symptom::swelling, {4, 5, 5, 5, 5, 5, 5, 4, 4, 4, 0});

    const auto offered = offeredAtLast(course, Statistic::slowOverall);

    REQUIRE(offered);
    CHECK(offered->stream == Stream{Symptom::swelling, Side::none});
    CHECK(offered->score == 0);
}

TEST_CASE("a patient's own start includes her fourth day, also where a symptom was last answered on it", "[triggers]")
{
    // Swelling ends on day 4; pain goes on and shows the course on day 8.
    CourseInput course = evenings(8);
    answer(course, Symptom::swelling, {3, 3, 4, 5, 6});
    answer(course, Symptom::pain, {4, 4, 4, 4, 4, 4, 4, 4, 4});
    const bands::Band& band = bands::seedBand();
    const auto mean = [&](Symptom symptom, std::vector<std::pair<int, int>> scores) {
        double sum = 0;
        for (const auto& [day, score] : scores)
            sum += band.z(symptom, day, score);
        return sum / static_cast<double>(scores.size());
    };
    const double swelling = mean(Symptom::swelling, {{2, 4}, {3, 5}, {4, 6}})
                            - 0.55 * mean(Symptom::swelling, {{1, 3}, {2, 4}, {3, 5}, {4, 6}});
    const double pain = mean(Symptom::pain, {{6, 4}, {7, 4}, {8, 4}})
                        - 0.55 * mean(Symptom::pain, {{1, 4}, {2, 4}, {3, 4}, {4, 4}});

    const auto offered = offeredAtLast(course, Statistic::slowOverall);

    REQUIRE(offered);
    CHECK(std::abs(offered->value - (swelling + pain) / 3) < 1e-12);
}
