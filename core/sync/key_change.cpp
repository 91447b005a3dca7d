#include "core/sync/key_change.h"

#include "core/sync/link_sync.h"

namespace ebbline::sync {

namespace {

/// The lowest number that any phone in use may still seal to; empty if none is known to be past the first.
Result<std::uint32_t> lowestInUse(const vault::Vault& vault)
{
    std::uint32_t lowest = vault.epochNumber();
    const auto links = vault.links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& link : *links) {
        if (link.ended)
            continue;
        const auto sealed = vault.sealedTo(link.mailbox);
        if (!sealed)
            return fail(sealed.error());
        lowest = std::min(lowest, *sealed);
    }
    return lowest;
}

}  // namespace

Result<bool> isKeyDue(vault::Vault& vault, std::chrono::hours longer)
{
    const auto ages = vault.keyAges();
    if (!ages)
        return fail(ages.error());
    return !ages->empty() && isOver(ages->back().begunAt, keyIsInForce + longer, vault.clock().now());
}

Done destroyOldKeys(vault::Vault& vault)
{
    const auto ages = vault.keyAges();
    if (!ages)
        return fail(ages.error());
    if (ages->size() < 2)
        return {};
    std::uint32_t passed = 0;
    if (vault.owner() == vault::Vault::Owner::clinic) {
        const auto lowest = lowestInUse(vault);
        if (!lowest)
            return fail(lowest.error());
        passed = *lowest;
    }
    const clock::Instant now = vault.clock().now();
    for (std::size_t i = 0; i + 1 < ages->size(); ++i) {
        const auto since = now - (*ages)[i + 1].begunAt;
        const bool over = since > oldKeyIsKept || ((*ages)[i].number < passed && since > passedKeyIsKept);
        if (!over)
            continue;
        if (const Done gone = vault.destroyKey((*ages)[i].number); !gone)
            return gone;
    }
    return {};
}

}  // namespace ebbline::sync
