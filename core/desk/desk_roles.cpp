// Who may do what at the desk: roles are a rule of the house.

#include "core/desk/inside.h"

#include <algorithm>
#include <iterator>

namespace ebbline::desk {

bool Desk::mayDo(records::Task task) const { return m_inside->needsTask(task).has_value(); }

std::vector<std::string> Desk::whoMay(records::Task task) const
{
    std::vector<std::string> names;
    const journal::State& state = m_inside->vault.state();
    if (state.clinic)
        std::ranges::copy_if(state.clinic->people, std::back_inserter(names),
                             [&](const std::string& name) { return state.mayDo(name, task); });
    return names;
}

std::optional<records::Role> Desk::roleOf(const std::string& person) const { return m_inside->vault.state().roleOf(person); }

Done Desk::giveRole(const std::string& person, records::Role role)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "roles: nobody is named at the desk");
    if (const Done may = m_inside->needsTask(records::Task::people); !may)
        return may;
    const auto described = clinic();
    if (!described || std::ranges::find(described->people, person) == described->people.end())
        return fail(Reason::notFound, "roles: the clinic does not name that person");
    if (!m_inside->leavesSomebody(described->people, person, role))
        return fail(Reason::notEnough, "roles: somebody has to remain who may name people");
    if (roleOf(person) == role)
        return {};
    return m_inside->append(records::RoleGiven{person, role, m_inside->person, m_inside->now()});
}

Done Desk::Inside::needsTask(records::Task task) const
{
    const journal::State& state = vault.state();
    if (state.roles.empty())
        return {};
    if (person.empty())
        return fail(Reason::invalidState, "role: nobody is named at the desk");
    return state.mayDo(person, task) ? Done{} : Done(fail(Reason::refused, "role: it is not for the person at the desk"));
}

bool Desk::Inside::leavesSomebody(const std::vector<std::string>& people, const std::string& changed, records::Role role) const
{
    return std::ranges::any_of(people, [&](const std::string& each) {
        const auto has = each == changed ? std::optional(role) : vault.state().roleOf(each);
        return !has || records::allows(*has, records::Task::people);
    });
}

std::vector<records::Body> Desk::Inside::named(records::Task task, const recovery::CourseId& about, const records::Body& body) const
{
    if (vault.state().roles.empty())
        return {body};
    return {records::WorkDone{task, about, person, now()}, body};
}

Done Desk::Inside::appendNamed(records::Task task, const recovery::CourseId& about, const records::Body& body,
                               const std::vector<std::string_view>& finished)
{
    const auto appended = vault.append(named(task, about, body), now(), {}, {}, finished);
    return appended ? Done{} : Done(fail(appended.error()));
}

}  // namespace ebbline::desk
