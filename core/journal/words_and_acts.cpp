// Which acts stand, which words that were handed over are up, and whether a treatment was recorded by two at once.

#include "core/journal/state.h"

#include <algorithm>
#include <set>

namespace ebbline::journal {

const records::ActTakenBack* CourseState::takenBack(std::size_t act) const
{
    const auto found = act < actOperations.size() ? actsTakenBack.find(actOperations[act]) : actsTakenBack.end();
    return found == actsTakenBack.end() ? nullptr : &found->second;
}

bool CourseState::isTreatmentCrossed() const
{
    if (treatmentVersions.size() < 2)
        return false;
    const auto& corrected = treatmentVersions.back().value.treatment.corrected;
    return corrected && corrected->inSight < treatmentVersions.size() - 1;
}

bool CourseState::isCountedOtherwise() const
{
    return opened && treatment && (opened->treated != treatment->treatment.at || opened->baseline != treatment->treatment.baseline);
}

std::vector<std::pair<OperationId, const records::WordHandedOver*>> State::wordsUp() const
{
    std::set<OperationId> replaced;
    for (const auto& [id, word] : words)
        for (const records::OperationName& each : word.replaces)
            replaced.insert({each.device, each.number});
    std::vector<std::pair<OperationId, const records::WordHandedOver*>> up;
    for (const auto& [id, word] : words)
        if (!word.text.empty() && !replaced.contains(id))
            up.emplace_back(id, &word);
    std::stable_sort(up.begin(), up.end(), [](const auto& a, const auto& b) { return a.second->at.at < b.second->at.at; });
    return up;
}

}  // namespace ebbline::journal
