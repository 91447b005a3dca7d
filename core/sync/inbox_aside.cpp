// What is genuine and next in its chain, and cannot be read or taken here.

#include "core/sync/inbox.h"

namespace ebbline::sync {

/// The signature and the chain say that this is what the sender sent next: no hub can bring a good one here. Of what a
/// replaced phone still sent nothing is wanted, and what was sealed to a destroyed key is asked for: neither is counted.
Done Inbox::couldNotTake(bytes::View sealed, const envelope::Header& header, const Error& why)
{
    const vault::Cursor next{header.sequence, envelope::hashOf(sealed)};
    if (m_post.ended || !m_tried.insert(next.hash).second)
        return keepAside(sealed, why);
    const Result<int> tries = m_vault.noteTry(m_post.mailbox, header.sender, next);
    if (!tries)
        return fail(tries.error());
    if (*tries < vault::Vault::mostTries)
        return keepAside(sealed, why);
    const Result<bool> aside = m_vault.setAside(m_post.mailbox, header.sender, next, sealed, why.reason);
    if (!aside)
        return fail(aside.error());
    if (!*aside)
        return keepAside(sealed, why);
    ++m_report.setAside;
    ++m_accepted;
    m_advanced.insert(header.sender);
    return {};
}

Done Inbox::takeMeaning(const envelope::Header& header, const std::vector<journal::Operation>& operations)
{
    if (!m_post.channel)
        return noteSealedTo(header);
    const Done taken = takeLinks(operations);
    return taken ? m_vault.noteTold(m_post.mailbox, operations) : taken;
}

Done Inbox::tryAgain()
{
    const auto aside = m_vault.setAside(m_post.mailbox);
    if (!aside)
        return fail(aside.error());
    for (const vault::Vault::SetAside& each : *aside) {
        const auto peeked = envelope::peek(each.envelope);
        const crypto::SigningPublicKey* sender = m_post.peer(each.sender);
        if (!peeked || !sender || m_post.ended)
            continue;
        const auto opened = open(each.envelope, *peeked, *sender);
        if (!opened && opened.error().reason == Reason::storageFailed)
            return fail(opened.error());
        if (!opened)
            continue;
        std::vector<journal::Operation> operations;
        const auto refused = takeContents(*opened, operations);
        if (!refused)
            return fail(refused.error());
        if (*refused)
            continue;
        const Done taken = m_vault.takeUp(m_post.mailbox, each, operations, [&] { return takeMeaning(*peeked, operations); });
        if (!taken && taken.error().reason == Reason::alreadyExists)
            continue;
        if (!taken)
            return taken;
        ++m_report.envelopesReceived;
        m_report.operationsReceived += operations.size();
        m_acknowledge.insert(each.sender);
    }
    return {};
}

}  // namespace ebbline::sync
