#include "core/journal/patient_corrections.h"

#include <algorithm>

namespace ebbline::journal {

namespace {

/// A desk that brings back what the correction before had written and did not bring about first says what it has in sight
/// (Desk::correctPatient()). The two are one step of one person: the second says nothing of what the first did not know.
bool isOneStepWith(const Operation& operation, const PatientCorrection& last)
{
    return last.operation.device == operation.id.device && last.operation.number + 2 == operation.id.number
           && last.entered == operation.entered && last.before == last.after;
}

}  // namespace

PatientCorrection correctionOf(const Operation& operation, const records::PatientRegistered& body, const records::PatientRegistered& holds,
                               const std::vector<PatientCorrection>& corrections)
{
    PatientCorrection correction{holds, holds, body, operation.id, operation.entered, {}, false};
    const auto& named = operation.supersedes;
    const auto found = named ? std::ranges::find(corrections, *named, &PatientCorrection::operation) : corrections.end();
    const bool upon = found != corrections.end();
    const auto& registered = corrections.empty() ? holds : corrections.front().before;
    for (const auto field : {&records::PatientRegistered::name, &records::PatientRegistered::phone, &records::PatientRegistered::language}) {
        // Left alone is what its writer may have had in sight: of the correction that it names, what that wrote and what it left to
        // hold; or what was registered. One that it names and that has not arrived: nothing.
        const bool leftAlone = upon ? body.*field == found->written.*field || body.*field == found->after.*field
                                    : !named && body.*field == registered.*field;
        if (!leftAlone)
            correction.after.*field = body.*field;
    }
    correction.crossed = named ? corrections.empty() || corrections.back().operation != *named : !corrections.empty();
    if (!corrections.empty() && !correction.crossed)
        correction.crossed = corrections.back().crossed && isOneStepWith(operation, corrections.back());
    return correction;
}

}  // namespace ebbline::journal
