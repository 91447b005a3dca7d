// Who may do what by the roles of the clinic, now and at any place of the journal.

#include "core/journal/state.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace ebbline::journal {

namespace {

/// What was known of people and roles up to one place of the order.
struct House {
    std::span<const Version<records::RoleGiven>> roles;
    const std::vector<std::string>* people = nullptr;  ///< null: the clinic had named nobody

    std::optional<records::Role> roleOf(std::string_view person) const
    {
        for (std::size_t i = roles.size(); i-- > 0;)
            if (roles[i].value.person == person)
                return roles[i].value.role;
        return std::nullopt;
    }

    bool allowsTo(std::string_view person, records::Task task) const
    {
        const auto role = roleOf(person);
        return !role || records::allows(*role, task);
    }

    bool mayDo(std::string_view person, records::Task task) const
    {
        if (allowsTo(person, task))
            return true;
        return task == records::Task::people
               && (people == nullptr || std::ranges::none_of(*people, [&](const std::string& each) { return allowsTo(each, task); }));
    }
};

House houseOf(const State& state)
{
    return {state.roles, state.people.empty() ? nullptr : &state.people.back().value};
}

House houseBefore(const State& state, const OperationId& operation, clock::HybridTime stamp)
{
    const auto earlier = [&](const auto& version) { return std::tie(version.stamp, version.operation) < std::tie(stamp, operation); };
    const auto roles = std::ranges::partition_point(state.roles, earlier);
    const auto people = std::ranges::partition_point(state.people, earlier);
    return {{state.roles.begin(), roles}, people == state.people.begin() ? nullptr : &std::prev(people)->value};
}

}  // namespace

std::optional<records::Role> State::roleOf(std::string_view person) const { return houseOf(*this).roleOf(person); }

bool State::mayDo(std::string_view person, records::Task task) const { return houseOf(*this).mayDo(person, task); }

bool State::couldDo(std::string_view person, records::Task task, const OperationId& operation, clock::HybridTime stamp) const
{
    return houseBefore(*this, operation, stamp).mayDo(person, task);
}

bool State::couldDo(const CourseState& course, const records::FindingActed& act) const
{
    if (act.act != records::Act::closed)
        return true;
    const auto found = std::ranges::find(course.acts, act);
    if (found == course.acts.end())
        return true;
    const auto place = static_cast<std::size_t>(found - course.acts.begin());
    return couldDo(act.by, records::Task::close, course.actOperations[place], course.actStamps[place]);
}

}  // namespace ebbline::journal
