// What triggers raised when the clinic corrects the day of the treatment: each stands once, with what was done about it.

#include "tests/core/triage/course_writer.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::test;
using records::Act;
using recovery::Side;
using recovery::Symptom;
using triage::Finding;

namespace {

/// Pain that falls for four days, then much of it on one side: a rebound by its points; what the desk opened is the first operation.
struct Painful {
    Writer phone{1}, desk{2};
    std::vector<journal::Operation> operations{desk.write(openedCourse(), 1)};
    std::uint64_t time = 10;
    clock::Moment painAt = hoursAfter(5 * 24 + 4);

    Painful()
    {
        for (std::uint8_t day = 1; const int points : {4, 3, 2, 2, 9})
            tell(day++, points);
    }
    void tell(std::uint8_t day, int points, std::optional<journal::OperationId> corrects = {})
    {
        auto entry = entryAt(day, day * 24 + 4);
        setScore(entry, Symptom::pain, Side::left, points);
        operations.push_back(phone.write(records::EntryRecorded{entry}, ++time, corrects));
    }
    void correctDay()
    {
        auto opened = openedCourse();
        opened.treated.at -= std::chrono::hours(24);
        operations.push_back(desk.write(opened, ++time, operations[0].id));
    }
    std::vector<Finding> ofPain() const
    {
        auto found = findingsIn(journal::fold(operations), hoursAfter(5 * 24 + 5));
        std::erase_if(found, [&](const Finding& each) { return each.entry || each.raisedAt.at != painAt.at; });
        return found;
    }
};

}  // namespace

TEST_CASE("what a trigger raised stands once when the day is corrected, with what was done about it by the old day", "[triage][correction]")
{
    Painful course;
    const auto before = course.ofPain();
    REQUIRE_FALSE(before.empty());
    for (const Finding& finding : before) {
        ++course.time;
        course.operations.push_back(course.desk.write(actOn(finding.key, Act::taken, hoursAfter(5 * 24 + 5)), course.time));
    }
    course.correctDay();
    const auto after = course.ofPain();
    for (const Finding& finding : before) {
        const auto& was = std::get<triggers::Finding>(finding.what);
        CAPTURE(finding.key);
        const auto same = [&](const Finding& each) {
            const auto& is = std::get<triggers::Finding>(each.what);
            return is.trigger == was.trigger && is.stream == was.stream;
        };
        REQUIRE(std::ranges::count_if(after, same) == 1);
        const Finding& stands = *std::ranges::find_if(after, same);
        CHECK(stands.urgency <= finding.urgency);
        CHECK(stands.open);
        CHECK(stands.acts.size() + stands.actsBefore.size() == 1);
    }
}

TEST_CASE("what she changed herself is not told as the doing of a corrected day", "[triage][correction]")
{
    Painful course;
    const auto before = course.ofPain();
    REQUIRE_FALSE(before.empty());
    course.tell(5, 2, course.operations.back().id);
    course.correctDay();
    const auto after = course.ofPain();
    REQUIRE_FALSE(after.empty());
    CHECK(std::ranges::any_of(after, [](const Finding& finding) { return finding.changedSince && !finding.recounted && finding.day == 6; }));
}
