// Which key opens what came, and what becomes of envelopes for one that was destroyed.

#include "core/sync/inbox.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/sync/key_change.h"
#include "core/sync/least_version.h"
#include "core/sync/messages.h"
#include "core/sync/older_copy.h"
#include "core/sync/outbox.h"

#include <algorithm>

namespace ebbline::sync {

namespace {

/// Under this name a phone that was paired again keeps up to where the clinic holds its operations, until it knows what stays behind.
std::string unsettledName(const envelope::MailboxId& mailbox) { return "left-unsettled/" + bytes::toHex(mailbox.view()); }

}  // namespace

Result<envelope::Opened> Inbox::open(bytes::View sealed, const envelope::Header& peeked, const crypto::SigningPublicKey& sender)
{
    if (m_post.channel)
        return envelope::open(sealed, sender, m_vault.boxKey());
    if (m_vault.owner() == vault::Vault::Owner::clinic) {
        const crypto::BoxKey* named = m_vault.epochKey(peeked.recipientEpoch);
        auto opened = envelope::open(sealed, sender, named ? *named : m_vault.clinicEpoch());
        const bool next = peeked.recipientEpoch == m_vault.epochNumber() + 1;
        return !opened && opened.error().reason == Reason::wrongKey && next ? openWithPrepared(sealed, peeked, sender) : std::move(opened);
    }
    Result<envelope::Opened> opened = fail(Reason::wrongKey, "envelope: there is no key");
    for (const crypto::BoxKey* key : m_vault.boxKeys()) {
        opened = envelope::open(sealed, sender, *key);
        if (opened || opened.error().reason != Reason::wrongKey)
            break;
    }
    return opened;
}

/// A desk that was put back to a backup still holds the key that came after: it lay ready in it.
Result<envelope::Opened> Inbox::openWithPrepared(bytes::View sealed, const envelope::Header& peeked, const crypto::SigningPublicKey& sender)
{
    const auto secret = m_vault.kept(preparedKeyName);
    if (!secret || secret->size() != 32)
        return fail(Reason::wrongKey, "envelope: for a key that this desk does not hold");
    const auto prepared = crypto::BoxKey::fromSecret(*secret);
    auto opened = envelope::open(sealed, sender, prepared);
    if (opened)
        if (const Done put = m_vault.putEpoch(peeked.recipientEpoch, prepared); !put)
            return fail(put.error());
    return opened;
}

bool Inbox::isForDestroyedKey(const envelope::Header& header) const
{
    if (m_post.channel)
        return false;
    // What a desk writes into the header of a phone's envelope is no number of the phone's keys.
    return m_vault.owner() == vault::Vault::Owner::clinic ? m_vault.isDestroyed(header.recipientEpoch) : m_vault.hasDestroyed();
}

Done Inbox::cannotOpen(bytes::View sealed, const Error& why, const crypto::SigningPublicKey& sender)
{
    if (why.reason == Reason::storageFailed)
        return fail(why);
    const auto header = why.reason == Reason::wrongKey ? envelope::verify(sealed, sender) : fail(why);
    if (header && header->mailbox == m_post.mailbox && isForDestroyedKey(*header)) {
        const Result<vault::Cursor> head = m_vault.peerHead(m_post.mailbox, header->sender);
        if (!head)
            return fail(head.error());
        if (header->sequence == head->sequence + 1 && header->previous == head->hash)
            m_ask.insert(header->sender);
    }
    return keepAside(sealed, why);
}

/// A desk says that it is an older copy; or the sender says, under its signature, that everything between our head and this brings nothing: what it carried comes
/// anew. A hub cannot say that for it.
Result<bool> Inbox::jump(const envelope::Opened& opened, bytes::View sealed, const vault::Cursor& head)
{
    const envelope::Header& header = opened.header;
    if (header.kind != envelope::Kind::statement)
        return false;
    const auto statement = unpackStatement(opened.plaintext);
    // No part of the chain, and nothing is missing before it.
    if (m_post.channel && header.sequence == olderCopyNumber && statement && std::holds_alternative<OlderCopy>(*statement)) {
        // An older program kept it aside here.
        const Done noted = m_vault.together([&]() -> Done {
            const Done told = m_vault.notePeerOlder(m_post.mailbox, header.sender);
            return told ? m_vault.releaseQuarantine(m_post.mailbox, header.sender, header.sequence, header.sequence) : told;
        });
        return noted ? Result<bool>(true) : fail(noted.error());
    }
    if (m_post.channel)
        return false;
    const auto* again = statement ? std::get_if<SealedAgain>(&*statement) : nullptr;
    if (!again || again->first > head.sequence + 1 || again->last + 1 != header.sequence)
        return false;
    const Done accepted =
        m_vault.accept(m_post.mailbox, header.sender, {header.sequence, envelope::hashOf(sealed)}, {}, [&]() -> Done {
            // What a replaced phone still sent stays kept aside: it does not come again.
            const Done released = m_post.ended ? Done{} : m_vault.releaseQuarantine(m_post.mailbox, header.sender, again->first, again->last);
            return released ? noteSealedTo(header) : released;
        });
    if (!accepted)
        return fail(accepted.error());
    ++m_report.envelopesReceived;
    ++m_accepted;
    m_advanced.insert(header.sender);
    m_acknowledge.insert(header.sender);
    return true;
}

/// Our own operations past what the other end holds wait again, and stand in envelopes that say so first.
Result<std::optional<Error>> Inbox::takeAsk(const AskAgain& ask)
{
    using Answer = std::optional<Error>;
    if (m_post.channel || ask.of != m_vault.device())
        return Answer({Reason::forged, "statement: about another device"});
    const Done done = m_vault.together([&]() -> Done {
        const auto again = m_vault.sealAgain(m_post.mailbox, ask.held);
        if (!again)
            return fail(again.error());
        if (!*again)
            return {};
        // What the clinic asks for at least may stand among what is passed over.
        const Done told = m_vault.keep(toldLeastName(m_post.mailbox), {});
        return told ? oweAgain((*again)->first) : told;
    });
    return done ? Result<Answer>(Answer()) : fail(done.error());
}

/// The lowest number counts, if there was one before that was not told yet.
Done Inbox::oweAgain(std::uint64_t first)
{
    const auto before = m_vault.kept(sealedAgainName(m_post.mailbox));
    if (!before && before.error().reason != Reason::notFound)
        return fail(before.error());
    const std::uint64_t lowest = before ? std::min(first, bytes::Reader(*before).u64()) : first;
    return m_vault.keep(sealedAgainName(m_post.mailbox), bytes::Writer().u64(lowest).bytes());
}

/// This phone was replaced, or paired again: what is on its way is told to bring nothing, and what the clinic does not hold
/// stays behind or goes on in the mailbox that came after.
Done Inbox::leaveBehind(std::uint64_t held)
{
    return m_vault.together([&]() -> Done {
        if (const Done ended = m_vault.endLink(m_post.mailbox); !ended)
            return ended;
        const auto again = m_vault.sealAgain(m_post.mailbox, 0);
        if (!again)
            return fail(again.error());
        if (*again)
            if (const Done owed = oweAgain((*again)->first); !owed)
                return owed;
        const auto links = m_vault.links();
        if (!links)
            return fail(links.error());
        const auto next = std::ranges::find_if(*links, [&](const vault::Link& link) { return !link.ended && link.clinicRoot == m_post.root; });
        // Of which course that one is shows with the first operation in it: until then nobody knows what stays behind.
        if (next != links->end() && next->course.isNull())
            return m_vault.keep(unsettledName(m_post.mailbox), bytes::Writer().u64(held).bytes());
        return settleLeft(m_post.mailbox, held, next == links->end() ? nullptr : &*next);
    });
}

/// What was written for the course that this phone is still paired for goes to its present mailbox, if it was not acknowledged:
/// the clinic takes once what it holds already. Anything else past `held` is counted, kept for the screens, and told.
Done Inbox::settleLeft(const envelope::MailboxId& before, std::uint64_t held, const vault::Link* next)
{
    const auto isOwn = [&](const journal::Operation& operation) {
        return operation.id.device == m_vault.device() && operation.audience == journal::Audience::patientAndClinic
               && operation.kind != static_cast<std::uint16_t>(records::Kind::keyAnnounced);
    };
    const auto goesOn = [&](const journal::Operation& operation) { return next && operation.course == next->course; };
    LeftBehind left;
    for (const journal::Operation& operation : m_vault.operations()) {
        if (!isOwn(operation) || operation.id.number <= held || goesOn(operation))
            continue;
        const auto kind = static_cast<records::Kind>(operation.kind);
        left.first = left.isNothing() ? operation.entered.at : std::min(left.first, operation.entered.at);
        left.last = left.isNothing() ? operation.entered.at : std::max(left.last, operation.entered.at);
        ++(kind == records::Kind::entryRecorded ? left.entries : kind == records::Kind::messageWritten ? left.messages
           : kind == records::Kind::photoTaken ? left.photos : left.others);
    }
    if (next) {
        const auto waiting = m_vault.unsealed(before);
        if (!waiting)
            return fail(waiting.error());
        std::vector<journal::OperationId> again;
        for (const journal::Operation& operation : *waiting)
            if (isOwn(operation) && goesOn(operation))
                again.push_back(operation.id);
        if (const Done sent = m_vault.sendAgain(again, next->mailbox); !sent)
            return sent;
    }
    if (const Done kept = m_vault.keep(leftBehindName(before), pack(left)); !kept)
        return kept;
    return m_vault.keep(leftOwedName(before), bytes::Writer().u8(1).bytes());
}

/// The first operation that comes to a phone in a mailbox says of which course it is; what waited for that is settled.
Done Inbox::noteCourse(const std::vector<journal::Operation>& operations)
{
    auto links = m_vault.links();
    if (!links)
        return fail(links.error());
    const auto here = std::ranges::find(*links, m_post.mailbox, &vault::Link::mailbox);
    if (operations.empty() || operations.front().course.isNull() || here == links->end() || here->ended || !here->course.isNull())
        return {};
    here->course = operations.front().course;
    if (const Done put = m_vault.putLink(*here); !put)
        return put;
    for (const vault::Link& link : *links) {
        if (!link.ended || link.clinicRoot != here->clinicRoot)
            continue;
        const auto held = m_vault.kept(unsettledName(link.mailbox));
        if (!held && held.error().reason == Reason::notFound)
            continue;
        if (!held)
            return fail(held.error());
        if (const Done settled = settleLeft(link.mailbox, bytes::Reader(*held).u64(), &*here); !settled)
            return settled;
        if (const Done done = m_vault.keep(unsettledName(link.mailbox), {}); !done)
            return done;
    }
    return {};
}

/// What this desk wrote for the phone before it stands in that one's mailbox, and who made the new link may not have held it:
/// it goes to the new phone as well, which takes everything once.
Done Inbox::tellNewPhone(const recovery::CourseId& course, const envelope::MailboxId& mailbox)
{
    std::vector<journal::OperationId> own;
    for (const journal::Operation& operation : m_vault.operations())
        if (operation.course == course && operation.id.device == m_vault.device()
            && operation.audience == journal::Audience::patientAndClinic)
            own.push_back(operation.id);
    return m_vault.sendAgain(own, mailbox);
}

/// What a former phone had told a colleague alone reaches the phone after it through the desk that makes links.
Done Inbox::passOn(const std::vector<journal::Operation>& operations)
{
    if (!m_vault.holdsRoot())
        return {};
    const auto links = m_vault.links();
    if (!links)
        return fail(links.error());
    for (const vault::Link& current : *links) {
        if (current.ended)
            continue;
        std::vector<journal::OperationId> late;
        for (const journal::Operation& operation : operations) {
            const bool former = operation.course == current.course && std::ranges::any_of(*links, [&](const vault::Link& link) {
                return link.ended && link.course == current.course && link.peerSigning != current.peerSigning
                       && envelope::deviceIdOf(link.peerSigning) == operation.id.device;
            });
            if (former && operation.audience == journal::Audience::patientAndClinic
                && operation.kind != static_cast<std::uint16_t>(records::Kind::keyAnnounced))
                late.push_back(operation.id);
        }
        if (late.empty())
            continue;
        if (const Done sent = m_vault.sendAgain(late, current.mailbox); !sent)
            return sent;
    }
    return {};
}

/// To which epoch a phone sealed last. It never goes back, so none of an earlier one comes after this.
Done Inbox::noteSealedTo(const envelope::Header& header)
{
    if (m_vault.owner() != vault::Vault::Owner::clinic)
        return {};
    if (!m_sealedTo) {
        const auto known = m_vault.sealedTo(m_post.mailbox);
        if (!known)
            return fail(known.error());
        m_sealedTo = *known;
    }
    if (header.recipientEpoch <= *m_sealedTo || header.recipientEpoch > m_vault.epochNumber())
        return {};
    m_sealedTo = header.recipientEpoch;
    return m_vault.noteSealedTo(m_post.mailbox, header.recipientEpoch);
}

}  // namespace ebbline::sync
