// The clinic's protocols at the desk: signing, what was signed before, and a change in the making.

#include "core/desk/inside.h"

#include "core/bytes/text.h"
#include "core/triage/course_curve.h"

#include <algorithm>

namespace ebbline::desk {

std::vector<triggers::Protocol> Desk::protocols() const
{
    std::vector<triggers::Protocol> protocols;
    for (const auto& [name, signedProtocol] : m_inside->vault.state().protocols)
        protocols.push_back(signedProtocol.protocol);
    if (protocols.empty())
        protocols.push_back(triggers::defaultProtocol());
    return protocols;
}

Done Desk::signProtocol(const triggers::Protocol& protocol)
{
    if (const Done may = m_inside->needsTask(records::Task::protocol); !may)
        return may;
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    const auto all = protocols();
    const bool used = protocol.band == bandHistory().active() || std::any_of(all.begin(), all.end(), [&](const triggers::Protocol& each) {
        return each.name == protocol.name && each.band == protocol.band;
    });
    if (!used)
        return fail(Reason::refused, "band: it is not in use");
    const auto signature = m_inside->vault.clinicRoot().sign(records::encodeProtocol(protocol));
    // A draft that cannot be read is not what is signed here.
    return m_inside->appendNamed(
        records::Task::protocol, {},
        records::ProtocolSigned{protocol, bytes::Bytes(signature.begin(), signature.end()), m_inside->now()},
        protocolDraft() ? std::vector<std::string_view>{protocolDraftName} : std::vector<std::string_view>{});
}

std::vector<records::ProtocolSigned> Desk::protocolVersions(const std::string& name) const
{
    const auto& all = m_inside->vault.state().protocolVersions;
    const auto found = all.find(name);
    return found == all.end() ? std::vector<records::ProtocolSigned>{} : found->second;
}

Result<triggers::Protocol> Desk::protocolDraft() const
{
    const auto stored = m_inside->vault.kept(protocolDraftName);
    if (!stored)
        return fail(stored.error());
    return records::decodeProtocolDraft(*stored);
}

Done Desk::keepProtocolDraft(const triggers::Protocol& protocol)
{
    return m_inside->vault.keep(protocolDraftName, records::encodeProtocol(protocol));
}

Done Desk::discardProtocolDraft()
{
    return m_inside->vault.keep(protocolDraftName, {});
}

RehearsalMaterial Desk::rehearsalMaterial() const
{
    RehearsalMaterial material;
    const clock::Moment now = m_inside->now();
    for (const auto& [id, course] : m_inside->vault.state().courses) {
        if (!course.opened || course.entries.empty())
            continue;
        rehearsal::KnownCourse known;
        known.name = bytes::toHex(id.view());
        known.input = triage::courseInput(course);
        if (now.at - known.input.treated.at < std::chrono::weeks(burdenWeeks))
            ++material.treatedLately;
        if (!course.followUp)
            continue;
        if (!course.followUp->uncomplicated || !course.followUp->complications.empty())
            known.truth.kind = course.followUp->complications.empty() ? "complicated" : course.followUp->complications.front();
        material.past.push_back(std::move(known));
    }
    std::stable_sort(material.past.begin(), material.past.end(),
                     [](const auto& a, const auto& b) { return a.input.treated.at > b.input.treated.at; });
    if (material.past.size() > mostRehearsed)
        material.past.resize(mostRehearsed);
    return material;
}

}  // namespace ebbline::desk
