// A treatment that is recorded anew: what holds, and what stays beside it, in whatever order it arrives.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

struct Writer {
    std::uint8_t device;
    std::uint64_t number = 0;

    Operation write(const Body& body, std::uint64_t time, std::optional<OperationId> supersedes = {})
    {
        Operation operation;
        operation.id = {test::idOf<envelope::DeviceTag>(device), ++number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = test::momentAt("2027-03-02T21:00:00+01:00");
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.course = courseOf(body);
        operation.supersedes = supersedes;
        operation.body = encode(body);
        return operation;
    }
};

TreatmentRecorded withLot(const char* lot, const char* reason = "", const char* by = "Dr. Ada Lund", std::uint32_t inSight = 1)
{
    TreatmentRecorded body{test::sampleTreatment()};
    body.treatment.placements[0].lot = lot;
    if (*reason != 0)
        body.treatment.corrected = recovery::Correction{reason, by, inSight};
    return body;
}

CourseOpened counted(const clock::Moment& treated, int swelling)
{
    for (const Body& body : test::sampleBodies())
        if (const auto* opened = std::get_if<CourseOpened>(&body)) {
            CourseOpened told = *opened;
            told.treated = treated;
            told.baseline = {{{recovery::Symptom::swelling, recovery::Side::left}, *recovery::Score::of(swelling)}};
            return told;
        }
    return {};
}

}  // namespace

TEST_CASE("the newest record of a treatment holds, and all stay with why and by whom, in any order of arrival", "[journal][correction]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(withLot("TH-1"), 10);
    const Operation second = desk.write(withLot("TH-2", "misread"), 20, first.id);
    const Operation third = other.write(withLot("TH-3", "the other tray", "Dr. Ito", 2), 30, second.id);
    std::vector<Operation> all{first, second, third};
    const State expected = fold(all);
    const auto& course = expected.courses.at(test::sampleCourse);
    REQUIRE(course.treatmentVersions.size() == 3);
    CHECK(course.treatment->treatment.placements[0].lot == "TH-3");
    CHECK(course.treatment == course.treatmentVersions.back().value);
    CHECK_FALSE(course.treatmentVersions[0].value.treatment.corrected);
    CHECK(course.treatmentVersions[1].value.treatment.corrected == recovery::Correction{"misread", "Dr. Ada Lund"});
    CHECK(course.treatmentVersions[2].value.treatment.corrected == recovery::Correction{"the other tray", "Dr. Ito", 2});
    CHECK_FALSE(course.isTreatmentCrossed());

    std::ranges::sort(all, {}, &Operation::id);
    do {
        const State state = fold(all);
        CHECK(digest(state) == digest(expected));
        CHECK(state.courses.at(test::sampleCourse).treatmentVersions == course.treatmentVersions);
    } while (std::next_permutation(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
}

TEST_CASE("of two desks that correct at once the newest holds, both stay in sight, and that they crossed is known", "[journal][correction]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(withLot("TH-1"), 10);
    const Operation here = desk.write(withLot("TH-2", "misread"), 20, first.id);
    const Operation there = other.write(withLot("TH-3", "the other tray", "Dr. Ito"), 21, first.id);
    const State crossed = fold(std::vector{there, first, here});
    const auto& course = crossed.courses.at(test::sampleCourse);
    CHECK(course.treatment->treatment.placements[0].lot == "TH-3");
    CHECK(course.treatmentVersions.size() == 3);
    CHECK(course.isTreatmentCrossed());

    // Whoever corrects after that has both in sight.
    const Operation last = desk.write(withLot("TH-2", "asked the maker", "Dr. Ada Lund", 3), 30, there.id);
    CHECK_FALSE(fold(std::vector{there, first, here, last}).courses.at(test::sampleCourse).isTreatmentCrossed());
    // One whose former record has not arrived holds alone, and an older program's second record crosses nothing.
    CHECK_FALSE(fold(std::vector{there}).courses.at(test::sampleCourse).isTreatmentCrossed());
    CHECK_FALSE(fold(std::vector{first, desk.write(withLot("TH-9"), 40)}).courses.at(test::sampleCourse).isTreatmentCrossed());
}

TEST_CASE("a correction holds over the record that it names, also where that one's clock runs ahead, in any order of arrival", "[journal][correction]")
{
    Writer desk{2}, fast{3};
    const Operation first = desk.write(withLot("TH-1"), 10);
    const Operation ahead = fast.write(withLot("TH-2", "misread", "Dr. Ito"), 900, first.id);
    const Operation second = desk.write(withLot("TH-3", "asked the maker", "Dr. Ada Lund", 2), 20, ahead.id);
    const Operation third = desk.write(withLot("TH-4", "and once more", "Dr. Ada Lund", 3), 30, second.id);
    std::vector<Operation> all{first, ahead, second, third};
    const State expected = fold(all);
    std::ranges::sort(all, {}, &Operation::id);
    do {
        const State state = fold(all);
        CHECK(digest(state) == digest(expected));
        const auto& course = state.courses.at(test::sampleCourse);
        CHECK(course.treatment->treatment.placements[0].lot == "TH-4");
        CHECK(course.treatmentVersions[1].operation == ahead.id);
        CHECK_FALSE(course.isTreatmentCrossed());
    } while (std::next_permutation(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
}

TEST_CASE("that corrections crossed is in sight until somebody who knew of all corrects again, in any order of arrival", "[journal][correction]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(withLot("TH-1"), 10);
    const Operation here = desk.write(withLot("TH-2", "misread"), 20, first.id);
    const Operation there = other.write(withLot("TH-3", "the other tray", "Dr. Ito"), 21, first.id);
    const Operation again = other.write(withLot("TH-4", "the expiry too", "Dr. Ito", 2), 22, there.id);
    const Operation last = desk.write(withLot("TH-4", "both compared", "Dr. Ada Lund", 4), 30, again.id);
    std::vector<Operation> all{first, here, there, again};
    std::ranges::sort(all, {}, &Operation::id);
    const auto byId = [](const auto& a, const auto& b) { return a.id < b.id; };
    do {
        Journal journal;
        for (const Operation& operation : all)
            journal.add(operation);
        CHECK(journal.state().courses.at(test::sampleCourse).isTreatmentCrossed());
        journal.add(last);
        CHECK_FALSE(journal.state().courses.at(test::sampleCourse).isTreatmentCrossed());
    } while (std::next_permutation(all.begin(), all.end(), byId));
}

TEST_CASE("a corrected day holds over the opening that it stands in place of, also where that one's clock runs ahead", "[journal][correction]")
{
    const auto right = test::momentAt("2027-03-01T10:00:00+01:00");
    const auto wrong = test::momentAt("2027-02-28T10:00:00+01:00");
    Writer desk{2}, fast{3};
    auto moved = counted(wrong, 2);
    moved.followUp.at += std::chrono::hours(24);
    auto corrected = moved;
    corrected.treated = right;
    const Operation first = desk.write(counted(wrong, 2), 10);
    const Operation ahead = fast.write(moved, 900, first.id);
    const Operation then = desk.write(corrected, 20, ahead.id);
    std::vector<Operation> all{first, ahead, then};
    const State expected = fold(all);
    std::ranges::sort(all, {}, &Operation::id);
    do {
        const State state = fold(all);
        CHECK(digest(state) == digest(expected));
        const auto& course = state.courses.at(test::sampleCourse);
        CHECK(course.opened->treated == right);
        CHECK(course.opened->followUp == moved.followUp);
        CHECK(course.visits.back().followUp == moved.followUp);
        // What was raised by the wrong day stays, up to the stamp of whoever counted by it last.
        REQUIRE_FALSE(course.formerCounts.empty());
        CHECK(course.formerCounts.back().treated == wrong);
        CHECK(course.formerCounts.back().until == ahead.stamp);
    } while (std::next_permutation(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
}

TEST_CASE("from when a course was counted before stays known, a moved visit is none of it", "[journal][correction]")
{
    const auto right = test::momentAt("2027-03-01T10:00:00+01:00");
    const auto wrong = test::momentAt("2027-02-28T10:00:00+01:00");
    Writer desk{2};
    auto moved = counted(wrong, 2);
    moved.followUp.at += std::chrono::hours(24);
    const std::vector all{desk.write(counted(wrong, 2), 10), desk.write(moved, 20), desk.write(counted(right, 2), 30), desk.write(counted(right, 3), 40)};
    const State state = fold(all);
    const auto& course = state.courses.at(test::sampleCourse);
    REQUIRE(course.formerCounts.size() == 2);
    CHECK(course.formerCounts[0].treated == wrong);
    CHECK(course.formerCounts[0].until == all[2].stamp);
    CHECK(course.formerCounts[1].treated == right);
    CHECK(course.formerCounts[1].baseline.begin()->second.points() == 2);
    CHECK(course.opened->treated == right);
    CHECK(fold(std::vector{all[0], all[1]}).courses.at(test::sampleCourse).formerCounts.empty());

    std::vector<Operation> shuffled = all;
    do {
        const State again = fold(shuffled);
        CHECK(again.courses.at(test::sampleCourse).formerCounts == course.formerCounts);
        CHECK(digest(again) == digest(state));
    } while (std::next_permutation(shuffled.begin(), shuffled.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
}
