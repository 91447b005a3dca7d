// Which role may do what.

#include "core/records/bodies.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

#include <set>

using namespace ebbline;
using namespace ebbline::records;

namespace {

std::set<Task> tasksOf(Role role)
{
    std::set<Task> tasks;
    for (int task = 1; task <= static_cast<int>(newestTask); ++task)
        if (allows(role, static_cast<Task>(task)))
            tasks.insert(static_cast<Task>(task));
    return tasks;
}

}  // namespace

TEST_CASE("each role may do what the clinic's work asks of it, and no more", "[records][roles]")
{
    CHECK(tasksOf(Role::inCharge).size() == static_cast<std::size_t>(newestTask));
    CHECK(tasksOf(Role::practitioner) == std::set<Task>{Task::treat, Task::close, Task::phones, Task::numbers, Task::figures});
    CHECK(tasksOf(Role::onCall) == std::set<Task>{Task::close, Task::phones});
    CHECK(tasksOf(Role::assistant) == std::set<Task>{Task::phones});
    CHECK(tasksOf(Role::machines) == std::set<Task>{Task::desks, Task::keep});
}

TEST_CASE("whoever may record a follow-up may close the findings that it answers", "[records][roles]")
{
    for (int role = 1; role <= static_cast<int>(newestRole); ++role)
        CHECK((!allows(static_cast<Role>(role), Task::treat) || allows(static_cast<Role>(role), Task::close)));
}

TEST_CASE("a role of nobody and a role that is not known are refused", "[records][roles][errors]")
{
    const auto at = test::momentAt("2027-03-02T20:00:00+01:00");
    CHECK(check(RoleGiven{"Dr. Jonas Feld", Role::assistant, "Dr. Ada Lund", at}));
    CHECK(check(RoleGiven{"", Role::assistant, "Dr. Ada Lund", at}).error().reason == Reason::notEnough);
    const auto unknown = static_cast<Role>(static_cast<int>(newestRole) + 1);
    CHECK(check(RoleGiven{"Dr. Jonas Feld", unknown, "Dr. Ada Lund", at}).error().reason == Reason::outOfRange);
    CHECK(decode(Kind::roleGiven, encode(RoleGiven{"Dr. Jonas Feld", unknown, "Dr. Ada Lund", at})).error().reason == Reason::outOfRange);
    const auto noTask = static_cast<Task>(static_cast<int>(newestTask) + 1);
    CHECK(check(WorkDone{noTask, {}, "Dr. Ada Lund", at}).error().reason == Reason::outOfRange);
}
