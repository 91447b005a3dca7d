// The fold: the state is a function of the set of operations, however they arrive.

#include "core/journal/state.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::journal;
using namespace ebbline::records;

namespace {

/// Writes operations as one device would.
class Pen {
public:
    explicit Pen(std::uint8_t device) : m_device(test::idOf<envelope::DeviceTag>(device)) {}

    Operation write(const Body& body, std::uint64_t time, recovery::CourseId course = test::sampleCourse)
    {
        Operation operation;
        operation.id = {m_device, ++m_number};
        operation.stamp = clock::HybridTime{time << 16};
        operation.entered = test::momentAt("2027-03-02T20:00:00+01:00");
        operation.kind = static_cast<std::uint16_t>(kindOf(body));
        operation.course = course;
        operation.body = encode(body);
        return operation;
    }

private:
    envelope::DeviceId m_device;
    std::uint64_t m_number = 0;
};

recovery::Entry entryWith(int swelling, std::uint8_t id = 9)
{
    auto entry = test::sampleEntry(id);
    entry.scores = {{{recovery::Symptom::swelling, recovery::Side::left}, *recovery::Score::of(swelling)}};
    return entry;
}

int swellingOf(const recovery::Entry& entry)
{
    return entry.scores.begin()->second.points();
}

}  // namespace

TEST_CASE("a correction shows and the first version stays in the history", "[journal]")
{
    Pen phone(1);
    const std::vector<Operation> operations{phone.write(EntryRecorded{entryWith(4)}, 10),
                                            phone.write(EntryRecorded{entryWith(7)}, 20)};

    const State state = fold(operations);

    const EntryHistory& history = state.courses.at(test::sampleCourse).entries.at(test::sampleEntry().id);
    REQUIRE(history.versions.size() == 2);
    CHECK(swellingOf(history.versions.front().value) == 4);
    CHECK(swellingOf(history.current()) == 7);
    CHECK(history.amended());
}

TEST_CASE("of two corrections at once the same one shows on every device, and both are kept", "[journal]")
{
    Pen phone(1), tablet(2);
    const Operation first = phone.write(EntryRecorded{entryWith(4)}, 10);
    const Operation one = phone.write(EntryRecorded{entryWith(5)}, 20);
    const Operation other = tablet.write(EntryRecorded{entryWith(6)}, 20);

    const State here = fold(std::vector{first, one, other});
    const State there = fold(std::vector{other, one, first});

    const auto& history = here.courses.at(test::sampleCourse).entries.at(test::sampleEntry().id);
    CHECK(history.versions.size() == 3);
    CHECK(swellingOf(history.current()) == 6);
    CHECK(dump(here) == dump(there));
}

TEST_CASE("the first opening of an entry counts", "[journal]")
{
    Pen desk(1), other(2);
    const auto opened = [](const char* who) {
        return EntriesOpened{test::sampleCourse, {test::sampleEntry().id}, who, test::momentAt("2027-03-02T21:00:00+01:00")};
    };

    const State state = fold(std::vector{desk.write(opened("Dr. Ada Lund"), 30), other.write(opened("Dr. Jonas Feld"), 20)});

    CHECK(state.courses.at(test::sampleCourse).openings.at(test::sampleEntry().id).by == "Dr. Jonas Feld");
}

TEST_CASE("what a newer program wrote is kept and counted, not dropped", "[journal]")
{
    Pen phone(1);
    Operation newer = phone.write(EntryRecorded{entryWith(4)}, 10);
    newer.kind = 900;
    Journal journal;

    journal.add(newer);

    CHECK(journal.state().unknown == 1);
    CHECK(journal.operations() == std::vector{newer});
    // Of which course it is stays known, whatever arrives before or after it.
    journal.add(phone.write(EntryRecorded{entryWith(5)}, 5));
    journal.add(phone.write(EntryRecorded{entryWith(6)}, 20));
    REQUIRE(journal.state().notUnderstood.size() == 1);
    CHECK(journal.state().notUnderstood.at(newer.course) == 1);
    CHECK(fold(journal.operations()).notUnderstood == journal.state().notUnderstood);
}

TEST_CASE("an operation may not speak of another course than it says", "[journal]")
{
    Pen phone(1);
    const State state =
        fold(std::vector{phone.write(EntryRecorded{entryWith(4)}, 10, test::idOf<recovery::CourseTag>(66))});

    CHECK(state.courses.empty());
    CHECK(state.unreadable == 1);
}

namespace {

std::vector<Operation> randomOperations()
{
    const auto bodies = test::sampleBodies();
    std::vector<Pen> pens{Pen(1), Pen(2), Pen(3)};
    std::vector<Operation> operations;
    const int count = *rc::gen::inRange(1, 30);
    for (int i = 0; i < count; ++i) {
        const auto time = *rc::gen::inRange<std::uint64_t>(1, 12);
        Pen& pen = pens[*rc::gen::inRange<std::size_t>(0, 3)];
        const std::size_t kind = *rc::gen::inRange<std::size_t>(0, bodies.size() + 2);
        if (kind >= bodies.size()) {
            operations.push_back(pen.write(EntryRecorded{entryWith(static_cast<int>(time) % 11, static_cast<std::uint8_t>(kind))}, time));
            continue;
        }
        operations.push_back(pen.write(bodies[kind], time, courseOf(bodies[kind])));
    }
    return operations;
}

}  // namespace

TEST_CASE("any order, any duplication and any batching give the same bytes", "[journal][property]")
{
    CHECK(rc::check("one state", [] {
        const std::vector<Operation> operations = randomOperations();
        const std::string wanted = dump(fold(operations));

        std::vector<Operation> shuffled = operations;
        const int duplicates = *rc::gen::inRange(0, 10);
        for (int i = 0; i < duplicates; ++i)
            shuffled.push_back(operations[*rc::gen::inRange<std::size_t>(0, operations.size())]);
        for (std::size_t i = shuffled.size(); i > 1; --i)
            std::swap(shuffled[i - 1], shuffled[*rc::gen::inRange<std::size_t>(0, i)]);

        Journal journal;
        for (const Operation& operation : shuffled)
            journal.add(operation);
        RC_ASSERT(dump(journal.state()) == wanted);
        RC_ASSERT(journal.operations().size() == operations.size());
        RC_ASSERT(digest(journal.state()) == digest(fold(journal.operations())));
    }));
}

namespace {

/// Gives each of them, then none.
auto oneByOne(std::vector<Operation> operations)
{
    return [given = std::move(operations), place = std::size_t{0}]() mutable -> Result<std::optional<Operation>> {
        return place == given.size() ? std::nullopt : std::optional(given[place++]);
    };
}

}  // namespace

TEST_CASE("many at once, also on top of what is there and under names that are taken, give the same as one by one", "[journal][property]")
{
    CHECK(rc::check("at once and one by one", [] {
        std::vector<Operation> operations = randomOperations();
        Operation fork = operations[*rc::gen::inRange<std::size_t>(0, operations.size())];
        fork.stamp.bits += *rc::gen::inRange<std::uint64_t>(0, 1 << 20);
        operations.push_back(fork);
        for (std::size_t i = operations.size(); i > 1; --i)
            std::swap(operations[i - 1], operations[*rc::gen::inRange<std::size_t>(0, i)]);
        const auto cut = operations.begin() + *rc::gen::inRange<std::ptrdiff_t>(0, std::ssize(operations) + 1);

        Journal single, atOnce;
        for (const Operation& operation : operations)
            single.add(operation);
        RC_ASSERT(atOnce.addAll(oneByOne({operations.begin(), cut})));
        RC_ASSERT(atOnce.addAll(oneByOne({cut, operations.end()})));

        RC_ASSERT(dump(atOnce.state()) == dump(single.state()));
        RC_ASSERT(atOnce.operations() == single.operations());
        RC_ASSERT(atOnce.state().operations == single.state().operations);
        RC_ASSERT(atOnce.state().unknown == single.state().unknown);
        RC_ASSERT(atOnce.state().notUnderstood == single.state().notUnderstood);
    }));
}

TEST_CASE("what came before a failure is in, and the failure is told", "[journal]")
{
    Pen phone(1);
    Journal journal;
    int asked = 0;
    const Done added = journal.addAll([&]() -> Result<std::optional<Operation>> {
        if (++asked == 2)
            return fail(Reason::storageFailed, "the disk");
        return phone.write(EntryRecorded{entryWith(4)}, 10);
    });
    REQUIRE_FALSE(added);
    CHECK(added.error().reason == Reason::storageFailed);
    CHECK(journal.state().courses.at(test::sampleCourse).entries.size() == 1);
}

TEST_CASE("one number with two stamps counts once, the same way in either order", "[journal][property]")
{
    CHECK(rc::check("forked device", [] {
        std::vector<Operation> operations = randomOperations();
        Operation fork = operations[*rc::gen::inRange<std::size_t>(0, operations.size())];
        fork.stamp.bits += *rc::gen::inRange<std::uint64_t>(1, 1 << 20);
        operations.push_back(fork);
        std::vector<Operation> reversed(operations.rbegin(), operations.rend());
        RC_ASSERT(dump(fold(operations)) == dump(fold(reversed)));
    }));
}
