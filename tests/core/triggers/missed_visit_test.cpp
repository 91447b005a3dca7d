// Silence near the visit: the visit answers for it, unless nobody came.

#include "tests/core/triggers/evenings.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

namespace {

constexpr int visitDay = 21;  // of the default plan

/// One entry every evening up to a day, then nothing.
CourseInput writtenUpTo(int day)
{
    return series(Symptom::pain, Side::left, std::vector<int>(static_cast<std::size_t>(day) + 1, 2));
}

std::vector<Finding> silences(const CourseInput& course, const clock::Moment& now, Visit visit = Visit::awaited)
{
    std::vector<Finding> findings = judgeArrived(course, defaultProtocol(), now, visit);
    std::erase_if(findings, [](const Finding& finding) { return finding.trigger != Trigger::silence; });
    return findings;
}

}  // namespace

TEST_CASE("who falls silent near the visit and misses it is raised once the visit's day is over", "[triggers][safety]")
{
    // The third day of each of these ends on the visit's day or after it.
    for (const int lastDay : {18, 19, 20, 21}) {
        CAPTURE(lastDay);
        const auto course = writtenUpTo(lastDay);
        const clock::Moment raised = lastDay == 18 ? onDay(visitDay + 1, 0) : onDay(lastDay + 3);

        CHECK(silences(course, onDay(visitDay, 23)).empty());
        clock::Moment before = raised;
        before.at -= std::chrono::minutes(1);
        CHECK(silences(course, before).empty());
        const auto found = silences(course, raised);
        REQUIRE(found.size() == 1);
        CHECK(found.front().raisedAt.at == raised.at);
        CHECK(found.front().urgency == Urgency::nextWorkingDay);
        CHECK(found.front().numbers.at("visit") == visitDay);
        CHECK(silences(course, onDay(60)).size() == 1);
    }
    CHECK(explain(silences(writtenUpTo(20), onDay(30)).front())
          == "no entry for 3 days by day 23, and no follow-up recorded by then; the visit was to be on day 21");
}

TEST_CASE("a visit of which nothing is known is missed by nobody", "[triggers]")
{
    CHECK(silences(writtenUpTo(19), onDay(40), Visit::unknown).empty());
}

TEST_CASE("a silence that was raised long before the visit is raised again when the visit is missed", "[triggers][safety]")
{
    const auto course = writtenUpTo(8);

    CHECK(silences(course, onDay(visitDay, 23)).size() == 1);
    const auto found = silences(course, onDay(visitDay + 1, 0));
    REQUIRE(found.size() == 2);
    CHECK(found.back().day == visitDay + 1);
    CHECK(found.back().numbers.at("waited") == 13);
}

TEST_CASE("who still writes after the visit's day is raised when she falls silent, and one time only", "[triggers]")
{
    auto course = writtenUpTo(22);
    CHECK(silences(course, onDay(25, 19)).empty());
    CHECK(silences(course, onDay(25)).size() == 1);

    course.observations.push_back({onDay(27), {{Stream{Symptom::pain, Side::left}, points(1)}}});
    CHECK(silences(course, onDay(60)).size() == 1);
    CHECK(silences(course, onDay(60)).front().day == 25);
}
