// Who may do what by the roles that were given, and who could at the time.

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
const std::string ada = "Dr. Ada Lund";
const std::string jonas = "Dr. Jonas Feld";

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

RoleGiven role(const std::string& person, Role given) { return {person, given, ada, evening}; }
ClinicDescribed naming(std::vector<std::string> people) { return {{"Quay", "1", "", "112"}, "Europe/Berlin", std::move(people)}; }
FindingActed act(const std::string& by, Act what)
{
    return {test::sampleCourse, "w/fever/none/09", what, what == Act::closed ? Outcome::reassured : Outcome::none, by, {}, evening};
}

constexpr int tasks = static_cast<int>(newestTask);

}  // namespace

TEST_CASE("who has no role may do everything, and a role given last holds in whatever order it arrives", "[journal][roles]")
{
    Writer desk{2}, other{3};
    const Operation people = desk.write(naming({ada, jonas}), 5);
    const Operation first = desk.write(role(jonas, Role::assistant), 10);
    const Operation last = other.write(role(jonas, Role::onCall), 20);

    const State none = fold(std::vector{people});
    for (int task = 1; task <= tasks; ++task)
        CHECK(none.mayDo(jonas, static_cast<Task>(task)));
    CHECK_FALSE(none.roleOf(jonas));

    const State state = fold(std::vector{last, first, people});
    CHECK(state.roleOf(jonas) == Role::onCall);
    CHECK(state.mayDo(jonas, Task::close));
    CHECK_FALSE(state.mayDo(jonas, Task::treat));
    CHECK(state.mayDo(ada, Task::treat));
    CHECK(digest(state) == digest(fold(std::vector{people, first, last})));
    CHECK(digest(state) != digest(fold(std::vector{people, first})));
}

TEST_CASE("an act against a role is kept and shown as such, also when the role arrives after it", "[journal][roles]")
{
    Writer desk{2}, other{3};
    const Operation people = desk.write(naming({ada, jonas}), 5);
    const Operation before = other.write(act(jonas, Act::closed), 10);
    const Operation given = desk.write(role(jonas, Role::assistant), 20);
    FindingActed later = act(jonas, Act::closed);
    later.note = "again";
    const Operation after = other.write(later, 30);
    const Operation called = other.write(act(jonas, Act::called), 31);

    Journal journal;
    for (const Operation& operation : {called, after, before, people, given})
        journal.add(operation);

    const State& state = journal.state();
    const CourseState& course = state.courses.at(test::sampleCourse);
    REQUIRE(course.acts.size() == 3);
    CHECK(state.couldDo(course, course.acts[0]));
    CHECK_FALSE(state.couldDo(course, course.acts[1]));
    CHECK(state.couldDo(course, course.acts[2]));  // calling is open to everyone
    CHECK(state.unreadable == 0);
    CHECK(state.couldDo(jonas, Task::treat, before.id, before.stamp));
    CHECK_FALSE(state.couldDo(jonas, Task::treat, after.id, after.stamp));
}

TEST_CASE("two desks that take each other's right to name people leave it with everybody", "[journal][roles]")
{
    Writer desk{2}, other{3};
    std::vector<Operation> all{desk.write(naming({ada, jonas}), 5), desk.write(role(jonas, Role::practitioner), 10),
                               other.write(role(ada, Role::machines), 10)};
    const State state = fold(all);

    CHECK(state.mayDo(ada, Task::people));
    CHECK(state.mayDo(jonas, Task::people));
    CHECK_FALSE(state.mayDo(jonas, Task::protocol));  // that alone, and nothing else

    // One who has left counts no more; a fresh name without a role may.
    all.push_back(desk.write(naming({jonas, "Mina Roth"}), 40));
    const State later = fold(all);
    CHECK(later.mayDo("Mina Roth", Task::people));
    CHECK_FALSE(later.mayDo(jonas, Task::people));
    all.push_back(desk.write(role("Mina Roth", Role::inCharge), 50));
    CHECK_FALSE(fold(all).mayDo(jonas, Task::people));
}

TEST_CASE("who could do what follows from the operations before alone, in any order of arrival", "[journal][roles]")
{
    CHECK(rc::check([] {
        std::vector<Writer> writers{{1}, {2}, {3}};
        const std::vector<std::string> names{ada, jonas, "Mina Roth"};
        const auto someone = [&] { return names[*rc::gen::inRange<std::size_t>(0, names.size())]; };
        std::vector<Operation> written;
        const auto size = *rc::gen::inRange<std::size_t>(1, 20);
        while (written.size() < size) {
            Writer& writer = writers[*rc::gen::inRange<std::size_t>(0, writers.size())];
            const auto time = *rc::gen::inRange<std::uint64_t>(1, 30);
            switch (*rc::gen::inRange(0, 4)) {
            case 0: written.push_back(writer.write(naming({someone(), someone()}), time)); break;
            case 1: written.push_back(writer.write(act(someone(), Act::closed), time)); break;
            default: written.push_back(writer.write(role(someone(), static_cast<Role>(*rc::gen::inRange(1, static_cast<int>(newestRole) + 1))), time));
            }
        }
        std::vector<Operation> order = written;
        const std::string wanted = dump(fold(written));
        Journal journal;
        while (!written.empty()) {
            const auto at = *rc::gen::inRange<std::size_t>(0, written.size());
            journal.add(written[at]);
            journal.add(written[at]);
            written.erase(written.begin() + static_cast<std::ptrdiff_t>(at));
        }
        RC_ASSERT(dump(journal.state()) == wanted);

        std::sort(order.begin(), order.end(), before);
        std::vector<Operation> earlier;
        for (const Operation& operation : order) {
            const State then = fold(earlier);
            for (const std::string& name : names)
                for (int task = 1; task <= tasks; ++task)
                    RC_ASSERT(journal.state().couldDo(name, static_cast<Task>(task), operation.id, operation.stamp)
                              == then.mayDo(name, static_cast<Task>(task)));
            earlier.push_back(operation);
        }
        std::size_t acts = 0;
        for (const Operation& operation : order)
            acts += operation.kind == static_cast<std::uint16_t>(Kind::findingActed) ? 1 : 0;
        const auto& courses = journal.state().courses;
        RC_ASSERT((courses.empty() ? 0 : courses.at(test::sampleCourse).acts.size()) == acts);
    }));
}
