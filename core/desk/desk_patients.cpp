// What is known of a patient beside her courses: her name, her number, her language, and their corrections.

#include "core/desk/inside.h"

#include <algorithm>

namespace ebbline::desk {

Result<journal::OperationId> Desk::correctPatient(const records::PatientRegistered& patient, const std::optional<journal::OperationId>& seen,
                                                  const std::optional<records::PatientRegistered>& inSight)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "patient: nobody is named at the desk");
    if (patient.name.empty())
        return fail(Reason::notEnough, "patient: a name is needed");
    const auto& known = m_inside->vault.state().patients;
    const auto holds = known.find(patient.patient);
    if (holds == known.end())
        return fail(Reason::notFound, "patient: unknown");
    const auto all = corrections(patient.patient);
    const auto from = seen ? std::ranges::find(all, *seen, &journal::PatientCorrection::operation) : all.end();
    std::optional<records::PatientRegistered> left;
    if (from != all.end())
        left = from->after;
    else if (!seen)
        left = all.empty() ? holds->second : all.front().before;

    records::PatientRegistered body = patient;
    bool bringsBack = false;
    for (const auto field : {&records::PatientRegistered::name, &records::PatientRegistered::phone, &records::PatientRegistered::language}) {
        // What arrived late may have changed what `seen` left since it was in sight.
        if (left && inSight && body.*field == (*inSight).*field)
            body.*field = (*left).*field;
        bringsBack = bringsBack || (from != all.end() && body.*field == from->written.*field && body.*field != (*left).*field);
    }
    if (holds->second == patient || holds->second == body)
        return fail(Reason::alreadyExists, "patient: that is what is on record");
    if (const Done checked = records::check(body); !checked)
        return fail(checked.error());
    // With who did it also where the clinic has given no roles: a number that is wrong has to be asked about.
    const clock::Moment now = m_inside->now();
    const records::WorkDone who{records::Task::treat, {}, m_inside->person, now};
    std::optional<journal::OperationId> upon = seen;
    if (bringsBack) {
        // Upon `seen` it would count as left alone.
        const auto said = m_inside->vault.append({who, *left}, now, {}, upon);
        if (!said)
            return fail(said.error());
        upon = said->back();
    }
    const auto appended = m_inside->vault.append({who, body}, now, {}, upon);
    if (!appended)
        return fail(appended.error());
    return appended->back();
}

Done Desk::takeBackCorrection(const recovery::PatientId& patient, const journal::OperationId& correction)
{
    const auto all = corrections(patient);
    if (std::ranges::find(all, correction, &journal::PatientCorrection::operation) == all.end())
        return fail(Reason::notFound, "patient: no such correction");
    if (all.back().operation != correction)
        return fail(Reason::alreadyExists, "patient: corrected again since");
    const auto back = correctPatient(all.back().before, correction);
    return back ? Done{} : Done(fail(back.error()));
}

std::vector<journal::PatientCorrection> Desk::corrections(const recovery::PatientId& patient) const
{
    const auto& all = m_inside->vault.state().patientCorrections;
    const auto found = all.find(patient);
    return found == all.end() ? std::vector<journal::PatientCorrection>{} : found->second;
}

}  // namespace ebbline::desk
