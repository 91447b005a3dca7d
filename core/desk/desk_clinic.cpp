// A clinic with several desks: who they are, fresh epochs, lost desks, and a new desk's way in.

#include "core/desk/inside.h"
#include "core/desk/inviting.h"

#include "core/sync/key_change.h"
#include "core/sync/least_version.h"

#include <algorithm>

namespace ebbline::desk {

bool Desk::isOwner() const { return m_inside->vault.holdsRoot(); }

Done Desk::Inside::needsRoot() const
{
    return vault.holdsRoot() ? Done{} : Done(fail(Reason::refused, "desk: it does not hold the clinic's root key"));
}

pairing::Roster Desk::Inside::roster(bytes::Bytes* signedBytes) const
{
    if (auto kept = vault.roster(vault.clinicRootKey()); kept) {
        auto statement = pairing::openStatement(*kept, vault.clinicRootKey());
        if (auto* known = statement ? std::get_if<pairing::Roster>(&*statement) : nullptr) {
            if (signedBytes)
                *signedBytes = std::move(*kept);
            return std::move(*known);
        }
    }
    pairing::Roster first;
    first.number = 0;
    first.epoch = vault.epochNumber();
    first.epochKey = vault.clinicEpoch().publicKey();
    first.desks.push_back({vault.signingKey().publicKey(), vault.boxKey().publicKey(), vault.holdsRoot()});
    return first;
}

Done Desk::Inside::changeRoster(const std::function<Done(pairing::Roster&)>& change, const crypto::BoxKey* epochSecret)
{
    if (const Done may = needsRoot(); !may)
        return may;
    bytes::Bytes before;
    const pairing::Roster known = roster(&before);
    pairing::Roster next = pairing::following(known, before);
    if (before.empty())
        next.previous = {};
    if (const Done changed = change(next); !changed)
        return changed;
    if (epochSecret) {
        // A desk that was put back to a backup may hold a later key than its roster says.
        next.epoch = std::max(next.epoch, vault.epochNumber()) + 1;
        next.epochKey = epochSecret->publicKey();
    }
    const bytes::Bytes signedBytes = pairing::signStatement(next, vault.clinicRoot());
    const auto put = vault.putRoster(vault.clinicRootKey(), {next.number, next.epoch, next.epochKey, signedBytes}, epochSecret);
    return put ? Done{} : Done(fail(put.error()));
}

std::vector<DeskView> Desk::desks() const
{
    std::vector<DeskView> views;
    for (const pairing::Roster::Desk& each : m_inside->roster().desks) {
        const envelope::DeviceId device = envelope::deviceIdOf(each.signing);
        views.push_back({device, device == m_inside->vault.device(), each.owner});
    }
    return views;
}

Done Desk::beginEpoch()
{
    if (const Done may = m_inside->needsTask(records::Task::desks); !may)
        return may;
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    if (const Done may = m_inside->needsStep(); !may)
        return may;
    const auto secret = crypto::BoxKey::generate();
    const Done begun = m_inside->changeRoster([](pairing::Roster&) { return Done{}; }, &secret);
    if (!begun)
        return begun;
    const Done prepared = m_inside->prepareKey(true);
    return prepared ? m_inside->stepTaken(records::Step::freshKey, {}, {}) : prepared;
}

/// The key of the next epoch lies ready, so that a backup opens what patients seal until the one after. One that somebody may
/// have seen is made anew with the epoch.
Done Desk::Inside::prepareKey(bool anew)
{
    const auto kept = vault.kept(sync::preparedKeyName);
    if (!kept && kept.error().reason != Reason::notFound)
        return fail(kept.error());
    const bool usable = kept && kept->size() == 32 && !anew
                        && crypto::BoxKey::fromSecret(*kept).publicKey() != vault.clinicEpoch().publicKey();
    return usable ? Done{} : vault.keep(sync::preparedKeyName, crypto::BoxKey::generate().secret());
}

/// In the order of the roster: two owners that begin one epoch each at the same time would contradict each other.
bool Desk::Inside::isFirstOwner() const
{
    const auto desks = roster().desks;
    const auto first = std::ranges::find(desks, true, &pairing::Roster::Desk::owner);
    return first != desks.end() && first->signing == vault.signingKey().publicKey();
}

Done Desk::Inside::keepKeys()
{
    if (vault.holdsRoot()) {
        if (const Done prepared = prepareKey(false); !prepared)
            return prepared;
        const auto due = sync::isKeyDue(vault, isFirstOwner() ? std::chrono::hours{0} : sync::otherOwnerWaits);
        if (!due)
            return fail(due.error());
        if (*due) {
            auto secret = vault.kept(sync::preparedKeyName);
            if (!secret)
                return fail(secret.error());
            const auto next = crypto::BoxKey::fromSecret(*secret);
            crypto::wipe(*secret);
            const Done begun = changeRoster([](pairing::Roster&) { return Done{}; }, &next);
            if (!begun)
                return begun;
            if (const Done prepared = prepareKey(true); !prepared)
                return prepared;
        }
    }
    return sync::destroyOldKeys(vault);
}

Done Desk::requireVersion(std::uint32_t protocol)
{
    if (const Done may = m_inside->needsTask(records::Task::desks); !may)
        return may;
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    if (protocol == 0 || protocol > pairing::ownProtocol)
        return fail(Reason::outOfRange, "version: this program does not speak it");
    if (const Done may = m_inside->needsStep(); !may)
        return may;
    vault::Vault& vault = m_inside->vault;
    const auto known = sync::leastVersion(vault, vault.clinicRootKey());
    const pairing::LeastVersion least{known ? known->number + 1 : 1, protocol, m_inside->clock.now()};
    const Done kept = sync::keepLeastVersion(vault, vault.clinicRootKey(), least, pairing::signStatement(least, vault.clinicRoot()));
    return kept ? m_inside->stepTaken(records::Step::leastVersion, {}, {}) : kept;
}

std::uint32_t Desk::requiredVersion() const
{
    const auto known = sync::leastVersion(m_inside->vault, m_inside->vault.clinicRootKey());
    return known ? known->protocol : 1;
}

bool Desk::tooOld() const { return sync::isTooOld(m_inside->vault, m_inside->vault.clinicRootKey()); }

Done Desk::revokeDesk(const envelope::DeviceId& device)
{
    if (device == m_inside->vault.device())
        return fail(Reason::refused, "desk: it cannot revoke itself");
    if (const Done may = m_inside->needsTask(records::Task::desks); !may)
        return may;
    if (const Done may = m_inside->needsRoot(); !may)
        return may;
    if (!m_inside->roster().find(device))
        return fail(Reason::notFound, "desk: it is none of the clinic's");
    if (const Done may = m_inside->needsStep(); !may)
        return may;
    if (const Done may = m_inside->needsSecond(); !may)
        return may;
    // Phones take nothing more from it, also not what is on its way: what the clinic holds of it they get from here. First,
    // because to hear it twice harms nobody, and a roster that is changed is not changed again.
    if (const Done passed = m_inside->passOnFrom(device); !passed)
        return passed;
    const auto secret = crypto::BoxKey::generate();
    const Done revoked = m_inside->changeRoster(
        [&](pairing::Roster& roster) -> Done {
            const auto gone = std::erase_if(roster.desks, [&](const pairing::Roster::Desk& each) {
                return envelope::deviceIdOf(each.signing) == device;
            });
            if (gone == 0)
                return fail(Reason::notFound, "desk: it is none of the clinic's");
            if (roster.revoked.size() == pairing::mostRevoked)
                return fail(Reason::storageFull, "desk: too many were revoked");
            roster.revoked.push_back(device);
            return {};
        },
        &secret);
    if (!revoked)
        return revoked;
    // Said at once on the page of desks, and told to the hub at the next sync.
    if (const Done noted = m_inside->noteEndings(); !noted)
        return noted;
    const Done prepared = m_inside->prepareKey(true);
    return prepared ? m_inside->stepTaken(records::Step::deskShutOut, device, {}) : prepared;
}

Done Desk::Inside::passOnFrom(const envelope::DeviceId& device)
{
    const auto links = vault.links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& link : *links) {
        if (link.ended)
            continue;
        std::vector<journal::OperationId> written;
        for (const journal::Operation& operation : vault.operations())
            if (operation.id.device == device && operation.course == link.course && operation.audience == journal::Audience::patientAndClinic)
                written.push_back(operation.id);
        if (const Done sent = written.empty() ? Done{} : vault.sendAgain(written, link.mailbox); !sent)
            return sent;
    }
    return {};
}

Applying::Applying(Desk& desk, const clock::Clock& clock)
    : Enrolling(desk.vault(), clock, pairing::Purpose::desk,
                [this](const pairing::Offer& offer, bytes::View link) { return takeLink(offer, link); }),
      m_desk(desk)
{
}

Done Applying::takeLink(const pairing::Offer& offer, bytes::View link)
{
    auto opened = pairing::openDeskLink(link, offer.clinicRoot);
    if (!opened)
        return fail(opened.error());
    vault::Vault& vault = m_desk.vault();
    if (opened->newDesk != vault.signingKey().publicKey())
        return fail(Reason::forged, "desk link: it is for another desk");
    const Done joined = vault.joinClinic(offer.clinicRoot, opened->rootSeed);
    crypto::wipe(opened->rootSeed);
    if (!joined)
        return joined;
    if (const Done put = vault.putEpoch(opened->epoch, opened->epochKey); !put)
        return put;
    if (const Done named = m_desk.setHub(offer.hub, offer.tls, offer.hubKeyHash); !named)
        return named;
    return vault.putChannel({opened->mailbox, opened->desk, opened->box, (offer.tls ? "https://" : "http://") + offer.hub, 0, false});
}

}  // namespace ebbline::desk
