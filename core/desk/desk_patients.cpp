// What is known of a patient beside her courses: her name, her number, her language, and their corrections.

#include "core/desk/inside.h"

#include <algorithm>

namespace ebbline::desk {

Result<journal::OperationId> Desk::correctPatient(const records::PatientRegistered& patient, const std::optional<journal::OperationId>& seen)
{
    if (m_inside->person.empty())
        return fail(Reason::invalidState, "patient: nobody is named at the desk");
    if (patient.name.empty())
        return fail(Reason::notEnough, "patient: a name is needed");
    const auto& known = m_inside->vault.state().patients;
    const auto holds = known.find(patient.patient);
    if (holds == known.end())
        return fail(Reason::notFound, "patient: unknown");
    if (holds->second == patient)
        return fail(Reason::alreadyExists, "patient: that is what is on record");
    // With who did it also where the clinic has given no roles: a number that is wrong has to be asked about.
    const auto appended = m_inside->vault.append({records::WorkDone{records::Task::treat, {}, m_inside->person, m_inside->now()}, patient},
                                                 m_inside->now(), {}, seen);
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
