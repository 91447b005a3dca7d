// A clinic with several desks: who they are, fresh epochs, lost desks, and a new desk's way in.

#include "core/desk/inside.h"

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
        ++next.epoch;
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
    const auto secret = crypto::BoxKey::generate();
    return m_inside->changeRoster([](pairing::Roster&) { return Done{}; }, &secret);
}

Done Desk::revokeDesk(const envelope::DeviceId& device)
{
    if (device == m_inside->vault.device())
        return fail(Reason::refused, "desk: it cannot revoke itself");
    const auto secret = crypto::BoxKey::generate();
    return m_inside->changeRoster(
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
}

Applying::Applying(Desk& desk, const clock::Clock& clock)
    : m_desk(desk), m_enrolling(desk.vault(), clock, pairing::Purpose::desk,
                                [this](const pairing::Offer& offer, bytes::View link) { return takeLink(offer, link); })
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
