// Acts that were taken back, and words from one shift to the next.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

const clock::Moment evening = test::momentAt("2027-03-02T21:00:00+01:00");

struct Writer {
    std::uint8_t device;
    std::uint64_t number = 0;

    Operation write(const Body& body, std::uint64_t time)
    {
        Operation operation;
        operation.id = {test::idOf<envelope::DeviceTag>(device), ++number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = evening;
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.course = courseOf(body);
        operation.body = encode(body);
        return operation;
    }
};

OperationName nameOf(const Operation& operation) { return {operation.id.device, operation.id.number}; }

FindingActed taken() { return {test::sampleCourse, "w/fever/none/09", Act::taken, Outcome::none, "Dr. Ada Lund", {}, evening}; }

std::vector<std::string> textsUp(const State& state)
{
    std::vector<std::string> texts;
    for (const auto& [id, word] : state.wordsUp())
        texts.push_back(word->text);
    return texts;
}

}  // namespace

TEST_CASE("an act that is taken back stays on record, and the same act noted again stands", "[journal]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(taken(), 10);
    const Operation back = other.write(ActTakenBack{test::sampleCourse, nameOf(first), "Dr. Jonas Feld", evening}, 20);
    const Operation again = desk.write(taken(), 30);

    const State state = fold(std::vector{again, back, first});

    const CourseState& course = state.courses.at(test::sampleCourse);
    REQUIRE(course.acts.size() == 2);
    REQUIRE(course.takenBack(0));
    CHECK(course.takenBack(0)->by == "Dr. Jonas Feld");
    CHECK_FALSE(course.takenBack(1));
    // Before the act itself has arrived there is nothing to take back, and nothing is lost of it.
    Journal early;
    early.add(back);
    early.add(first);
    CHECK(early.state().courses.at(test::sampleCourse).takenBack(0));
}

TEST_CASE("a call about no finding is of its course, touches no finding, and can be taken back before it arrives", "[journal]")
{
    Writer desk{2}, other{3};
    const Operation call = desk.write(CallNoted{test::sampleCourse, Contact::sheRang, "May she wash her hair?", "Dr. Ada Lund", evening}, 10);
    const Operation back = other.write(ActTakenBack{test::sampleCourse, nameOf(call), "Dr. Jonas Feld", evening}, 20);

    const State state = fold(std::vector{back, call});

    const CourseState& course = state.courses.at(test::sampleCourse);
    REQUIRE(course.calls.size() == 1);
    CHECK(course.acts.empty());
    CHECK(course.calls.front().value.text == "May she wash her hair?");
    CHECK(course.actsTakenBack.contains(course.calls.front().operation));
    const auto unknown = static_cast<Contact>(static_cast<int>(Contact::visitBroughtForward) + 1);
    CHECK(check(CallNoted{test::sampleCourse, unknown, {}, "Dr. Ada Lund", evening}).error().reason == Reason::outOfRange);
    CHECK(check(CallNoted{test::sampleCourse, Contact::spoken, std::string(2001, 'a'), "Dr. Ada Lund", evening}).error().reason == Reason::tooLarge);
}

TEST_CASE("a word is up until one that knew of it takes its place or takes it down", "[journal]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(WordHandedOver{"Ring the first two.", {}, "Dr. Ada Lund", evening}, 10);
    const Operation beside = other.write(WordHandedOver{"The left one has no phone.", {}, "Dr. Jonas Feld", evening}, 11);
    const Operation next = desk.write(WordHandedOver{"All rung.", {nameOf(first)}, "Dr. Ada Lund", evening}, 20);
    const Operation down = other.write(WordHandedOver{{}, {nameOf(beside), nameOf(next)}, "Dr. Jonas Feld", evening}, 30);

    CHECK(textsUp(fold(std::vector{first})) == std::vector<std::string>{"Ring the first two."});
    CHECK(textsUp(fold(std::vector{first, beside})).size() == 2);
    CHECK(textsUp(fold(std::vector{next, beside, first})) == std::vector<std::string>{"All rung.", "The left one has no phone."});
    CHECK(textsUp(fold(std::vector{down, next, beside, first})).empty());
}

TEST_CASE("the limit of lidocaine is the one that was set last, in whatever order it arrives, and describing the clinic leaves it", "[journal]")
{
    Writer desk{2}, other{3};
    const Operation first = desk.write(DoseLimited{{.plainMgPerKg = 4}, "Dr. Ada Lund", evening}, 10);
    const Operation last = other.write(DoseLimited{{.plainCapMg = 200}, "Dr. Jonas Feld", evening}, 20);
    const Operation described = desk.write(ClinicDescribed{{"Quay", "1", "", "112"}, "Europe/Berlin", {"Dr. Ada Lund"}}, 30);

    CHECK_FALSE(fold(std::vector{described}).doseLimited);
    const State state = fold(std::vector{described, last, first});
    REQUIRE(state.doseLimited);
    CHECK(state.doseLimited->by == "Dr. Jonas Feld");
    CHECK(state.doseLimited->limits == anaesthesia::Limits{.plainCapMg = 200});
    CHECK(digest(state) == digest(fold(std::vector{first, described, last})));
    CHECK(digest(state) != digest(fold(std::vector{first, described})));
}

TEST_CASE("acts, what was taken back and words fold to the same bytes in any order", "[journal]")
{
    CHECK(rc::check([] {
        std::vector<Writer> writers{{1}, {2}, {3}};
        std::vector<Operation> written;
        const auto size = *rc::gen::inRange<std::size_t>(1, 25);
        while (written.size() < size) {
            Writer& writer = writers[*rc::gen::inRange<std::size_t>(0, writers.size())];
            const auto time = *rc::gen::inRange<std::uint64_t>(1, 40);
            const OperationName some{test::idOf<envelope::DeviceTag>(*rc::gen::inRange<std::uint8_t>(1, 4)), *rc::gen::inRange<std::uint64_t>(1, 9)};
            switch (*rc::gen::inRange(0, 4)) {
            case 0: written.push_back(writer.write(taken(), time)); break;
            case 1: written.push_back(writer.write(ActTakenBack{test::sampleCourse, some, "Dr. Ada Lund", evening}, time)); break;
            case 2: written.push_back(writer.write(CallNoted{test::sampleCourse, Contact::sheRang, "a", "Dr. Ada Lund", evening}, time)); break;
            default: written.push_back(writer.write(WordHandedOver{*rc::gen::element<std::string>("", "a", "b"), {some}, "Dr. Ada Lund", evening}, time));
            }
        }
        const std::string wanted = dump(fold(written));
        Journal journal;
        while (!written.empty()) {
            const auto at = *rc::gen::inRange<std::size_t>(0, written.size());
            journal.add(written[at]);
            journal.add(written[at]);
            written.erase(written.begin() + static_cast<std::ptrdiff_t>(at));
        }
        RC_ASSERT(dump(journal.state()) == wanted);
    }));
}
