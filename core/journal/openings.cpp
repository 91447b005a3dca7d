// Which version of an entry was opened.

#include "core/journal/state.h"

namespace ebbline::journal {

const Opening* CourseState::opening(const EntryHistory& history, std::size_t version) const
{
    const Version<recovery::Entry>& wanted = history.versions[version];
    const auto named = versionOpenings.find(wanted.operation);
    const auto old = history.first == wanted.operation ? openings.find(wanted.value.id) : openings.end();
    if (named == versionOpenings.end())
        return old == openings.end() ? nullptr : &old->second;
    return old == openings.end() || named->second.at.at <= old->second.at.at ? &named->second : &old->second;
}

const Opening* CourseState::earlierOpening(const EntryHistory& history) const
{
    for (std::size_t version = history.versions.size() - 1; version-- > 0;)
        if (const Opening* found = opening(history, version))
            return found;
    return nullptr;
}

std::vector<records::EntryVersion> CourseState::unopened() const
{
    std::vector<records::EntryVersion> versions;
    for (const auto& [entry, history] : entries)
        if (!opening(history)) {
            const OperationId& newest = history.versions.back().operation;
            versions.push_back({newest.device, newest.number});
        }
    return versions;
}

}  // namespace ebbline::journal
