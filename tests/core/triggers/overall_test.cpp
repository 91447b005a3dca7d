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

}  // namespace

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
