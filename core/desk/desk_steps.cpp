// Grave steps: the passphrase once more, a second person where the clinic names one, and a line of who took it.

#include "core/desk/inside.h"

#include "core/vault/ways_in.h"

#include <algorithm>

namespace ebbline::desk {

Done Desk::allowStep(bytes::View passphrase)
{
    m_inside->allowedAt.reset();
    const auto dataKey = vault::openDataKey(m_inside->folder, vault::Offered::passphrase(passphrase), m_inside->clock.readings());
    if (!dataKey)
        return fail(dataKey.error());
    m_inside->allowedAt = m_inside->clock.now();
    return {};
}

Done Desk::noteStep(records::Step step, const std::string& by, const std::optional<clock::Moment>& at)
{
    if (step != records::Step::backupMade && step != records::Step::passphraseChanged && step != records::Step::recoveryCodeMade)
        return fail(Reason::outOfRange, "step: it leaves its line where it is taken");
    return m_inside->append(records::StepTaken{step, {}, {}, by, {}, at.value_or(m_inside->now())});
}

std::optional<clock::Moment> Desk::lastBackup() const
{
    const auto& made = m_inside->vault.state().backups;
    const auto own = made.find(m_inside->vault.device());
    if (own == made.end())
        return std::nullopt;
    // One of a clock that ran ahead does not hide those that were made since; alone, it is what is on record.
    const auto credible = [until = m_inside->clock.now() + backupAhead](const clock::Moment& at) { return at.at <= until; };
    std::optional<clock::Moment> last;
    for (const clock::Moment& at : own->second)
        if (!last || (credible(at) == credible(*last) ? at.at > last->at : credible(at)))
            last = at;
    return last;
}

bool Desk::isBackupDue() const
{
    const auto& courses = m_inside->vault.state().courses;
    if (std::ranges::none_of(courses, [](const auto& each) { return each.second.treatment.has_value(); }))
        return false;
    const auto last = lastBackup();
    const clock::Instant now = m_inside->clock.now();
    return !last || now - last->at > backupHolds || last->at > now + backupAhead;
}

bool Desk::isStepAllowed() const { return m_inside->isAllowed(); }

void Desk::setSecond(std::string name) { m_inside->second = std::move(name); }

std::vector<std::string> Desk::seconds() const
{
    std::vector<std::string> names;
    if (const auto described = clinic(); described && described->people.size() > 1)
        std::ranges::copy_if(described->people, std::back_inserter(names), [&](const std::string& name) { return name != person(); });
    return names;
}

bool Desk::Inside::isAllowed() const
{
    return allowedAt && !sync::isOver(*allowedAt, stepHolds, clock.now());
}

Done Desk::Inside::needsStep() const
{
    return isAllowed() ? Done{} : Done(fail(Reason::locked, "step: it asks for the passphrase once more"));
}

Done Desk::Inside::needsSecond() const
{
    const auto& described = vault.state().clinic;
    if (!described || described->people.size() < 2)
        return {};
    const bool named = second != person && std::ranges::find(described->people, second) != described->people.end();
    return named ? Done{} : Done(fail(Reason::notEnough, "step: a second person of the clinic has to stand by"));
}

Done Desk::Inside::stepTaken(records::Step step, const envelope::DeviceId& device, const recovery::CourseId& course)
{
    allowedAt.reset();
    return append(records::StepTaken{step, device, course, person, std::exchange(second, {}), now()});
}

}  // namespace ebbline::desk
