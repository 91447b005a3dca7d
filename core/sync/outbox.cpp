#include "core/sync/outbox.h"

#include "core/bytes/reader.h"
#include "core/bytes/text.h"
#include "core/pairing/statement.h"
#include "core/sync/key_change.h"
#include "core/sync/least_version.h"
#include "core/sync/link_sync.h"
#include "core/sync/messages.h"

namespace ebbline::sync {

namespace {

std::string headsName(const envelope::MailboxId& mailbox)
{
    return "heads-told/" + bytes::toHex(mailbox.view());
}

}  // namespace

std::string sealedAgainName(const envelope::MailboxId& mailbox)
{
    return "sealed-again/" + bytes::toHex(mailbox.view());
}

std::string leftOwedName(const envelope::MailboxId& mailbox)
{
    return "left-owed/" + bytes::toHex(mailbox.view());
}

std::string statementName(const envelope::MailboxId& mailbox)
{
    return "statement/" + bytes::toHex(mailbox.view());
}

Done Outbox::seal(envelope::Kind kind, bytes::View contents, const std::vector<journal::OperationId>& carried)
{
    const Result<vault::Cursor> head = m_vault.ownHead(m_post.mailbox);
    if (!head)
        return fail(head.error());
    const envelope::Header header{kind, m_post.mailbox, m_vault.device(), head->sequence + 1, head->hash, m_post.epoch};
    auto sealed = envelope::seal(header, m_vault.signingKey(), {m_post.sealTo}, contents);
    if (!sealed)
        return fail(sealed.error());
    return m_post.channel ? m_vault.storeTold(m_post.mailbox, header.sequence, *sealed, carried)
                          : m_vault.storeSealed(m_post.mailbox, header.sequence, *sealed, carried);
}

Done Outbox::sealOperations(std::vector<journal::Operation> waiting)
{
    for (std::size_t from = 0; from < waiting.size();) {
        std::vector<journal::Operation> batch;
        std::vector<journal::OperationId> carried;
        std::size_t size = 0;
        for (; from < waiting.size() && batch.size() < mostInBatch; ++from) {
            journal::Operation& operation = waiting[from];
            if (!batch.empty() && size + operation.body.size() >= maximumBatch)
                break;
            size += operation.body.size() + 100;
            carried.push_back(operation.id);
            batch.push_back(std::move(operation));
        }
        if (const Done sealed = seal(envelope::Kind::operations, packOperations(batch), carried); !sealed)
            return sealed;
    }
    return {};
}

/// One that somebody made for this mailbox (desk::Desk leaves it), signed already.
Done Outbox::sealLeft()
{
    const auto left = m_vault.kept(statementName(m_post.mailbox));
    if (!left)
        return left.error().reason == Reason::notFound ? Done{} : Done(fail(left.error()));
    if (const Done sealed = seal(envelope::Kind::statement, packSigned(*left)); !sealed)
        return sealed;
    return m_vault.keep(statementName(m_post.mailbox), {});
}

Result<bool> Outbox::sealOwed()
{
    const auto again = m_vault.kept(sealedAgainName(m_post.mailbox));
    const auto left = m_vault.kept(leftOwedName(m_post.mailbox));
    for (const auto* each : {&again, &left})
        if (!*each && each->error().reason != Reason::notFound)
            return fail(each->error());
    if (!again && !left)
        return false;
    const Done sealed = m_vault.together([&]() -> Done {
        if (again) {
            // Up to here: what was sealed in between, acknowledgements, is passed over with it.
            const Result<vault::Cursor> head = m_vault.ownHead(m_post.mailbox);
            if (!head)
                return fail(head.error());
            if (const Done told = seal(envelope::Kind::statement, pack(SealedAgain{bytes::Reader(*again).u64(), head->sequence})); !told)
                return told;
            if (const Done paid = m_vault.keep(sealedAgainName(m_post.mailbox), {}); !paid)
                return paid;
        }
        if (!left)
            return {};
        const auto what = leftBehind(m_vault, m_post.mailbox);
        if (!what)
            return fail(what.error());
        if (const Done told = seal(envelope::Kind::statement, pack(what->value_or(LeftBehind{}))); !told)
            return told;
        return m_vault.keep(leftOwedName(m_post.mailbox), {});
    });
    return sealed ? Result<bool>(true) : fail(sealed.error());
}

Done Outbox::sealAsk(const envelope::DeviceId& of)
{
    const Result<vault::Cursor> held = m_vault.peerHead(m_post.mailbox, of);
    if (!held)
        return fail(held.error());
    const std::string name = "asked/" + bytes::toHex(m_post.mailbox.view()) + "/" + bytes::toHex(of.view());
    const auto asked = m_vault.kept(name);
    if (!asked && asked.error().reason != Reason::notFound)
        return fail(asked.error());
    const clock::Instant now = m_vault.clock().now();
    if (asked) {
        bytes::Reader reader(*asked);
        const bool same = reader.u64() == held->sequence;
        const clock::Instant at{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
        if (same && reader.atEnd() && !isOver(at, askAgainAfter, now))
            return {};
    }
    return m_vault.together([&]() -> Done {
        if (const Done sealed = seal(envelope::Kind::statement, pack(AskAgain{of, held->sequence})); !sealed)
            return sealed;
        return m_vault.keep(name, bytes::Writer().u64(held->sequence).u64(static_cast<std::uint64_t>(now.time_since_epoch().count())).bytes());
    });
}

Done Outbox::sealWaiting()
{
    if (const auto owed = sealOwed(); !owed)
        return fail(owed.error());
    if (const Done sealed = sealLeft(); !sealed)
        return sealed;
    if (const Done sealed = sealRoster(); !sealed)
        return sealed;
    if (const Done sealed = sealLeast(); !sealed)
        return sealed;
    // What is written here waits for the update.
    if (m_post.tooOld)
        return {};
    // A phone that was replaced sends nothing more: it would reach nobody. Nor is anything sealed for a phone that was replaced
    // or lost: whoever holds it could read it. What waits goes to the one that comes after.
    if (m_post.ended)
        return {};
    if (!m_post.channel) {
        auto waiting = m_vault.unsealed(m_post.mailbox);
        return waiting ? sealOperations(std::move(*waiting)) : Done(fail(waiting.error()));
    }
    for (;;) {
        auto waiting = m_vault.untold(m_post.mailbox, mostInBatch);
        if (!waiting)
            return fail(waiting.error());
        if (waiting->empty())
            return sealHeads();
        if (const Done sealed = sealOperations(std::move(*waiting)); !sealed)
            return sealed;
    }
}

bool Outbox::hasWaiting() const
{
    bytes::Bytes ignored;
    const auto waiting = m_post.channel ? m_vault.untold(m_post.mailbox, 1) : m_vault.unsealed(m_post.mailbox);
    const bool operations = !m_post.tooOld && !m_post.ended && (!waiting || !waiting->empty());
    return operations || untoldLeast() || unsentRoster(ignored) || m_vault.kept(statementName(m_post.mailbox))
           || m_vault.kept(sealedAgainName(m_post.mailbox)) || m_vault.kept(leftOwedName(m_post.mailbox));
}

Done Outbox::sealHeld(envelope::Kind kind, const envelope::DeviceId& of)
{
    const Result<vault::Cursor> held = m_vault.peerHead(m_post.mailbox, of);
    if (!held)
        return fail(held.error());
    return seal(kind, pack(Acknowledgement{of, *held, m_vault.clock().now()}));
}

std::optional<std::uint64_t> Outbox::unsentRoster(bytes::Bytes& signedBytes) const
{
    if (m_vault.owner() != vault::Vault::Owner::clinic || !m_vault.holdsRoot() || m_post.ended)
        return std::nullopt;
    auto kept = m_vault.roster(m_post.root);
    if (!kept)
        return std::nullopt;
    const auto statement = pairing::openStatement(*kept, m_post.root);
    const auto* roster = statement ? std::get_if<pairing::Roster>(&*statement) : nullptr;
    if (!roster || roster->number <= m_post.rosterSent)
        return std::nullopt;
    signedBytes = std::move(*kept);
    return roster->number;
}

/// Whoever holds the root tells everybody what the clinic is now; another desk gets the epoch's secret with it.
Done Outbox::sealRoster()
{
    bytes::Bytes signedBytes;
    const auto number = unsentRoster(signedBytes);
    if (!number)
        return {};
    if (m_post.channel)
        if (const Done sealed = seal(envelope::Kind::statement, pack(EpochSecret{m_vault.epochNumber(), m_vault.clinicEpoch().clone()})); !sealed)
            return sealed;
    if (const Done sealed = seal(envelope::Kind::statement, packSigned(signedBytes)); !sealed)
        return sealed;
    return m_vault.noteRosterSent(m_post.mailbox, *number);
}

std::optional<bytes::Bytes> Outbox::untoldLeast() const
{
    if (m_vault.owner() != vault::Vault::Owner::clinic || !m_vault.holdsRoot() || m_post.ended)
        return std::nullopt;
    auto least = signedLeastVersion(m_vault, m_post.root);
    if (!least || !*least)
        return std::nullopt;
    const auto told = m_vault.kept(toldLeastName(m_post.mailbox));
    return told && std::ranges::equal(*told, crypto::hash256(**least)) ? std::nullopt : std::move(*least);
}

Done Outbox::sealLeast()
{
    const auto least = untoldLeast();
    if (!least)
        return {};
    return m_vault.together([&]() -> Done {
        if (const Done sealed = seal(envelope::Kind::statement, packSigned(*least)); !sealed)
            return sealed;
        return m_vault.keep(toldLeastName(m_post.mailbox), crypto::hash256(*least));
    });
}

/// After the operations that they stand for: how far each phone's chain goes here.
Done Outbox::sealHeads()
{
    const auto heads = m_vault.peerHeads();
    if (!heads)
        return fail(heads.error());
    if (heads->empty())
        return {};
    std::vector<bytes::Bytes> messages;
    bytes::Writer all;
    for (std::size_t from = 0; from < heads->size(); from += mostHeads) {
        messages.push_back(pack(std::span(*heads).subspan(from, std::min(mostHeads, heads->size() - from))));
        all.raw(messages.back());
    }
    const bytes::Array<32> now = crypto::hash256(all.bytes());
    if (const auto told = m_vault.kept(headsName(m_post.mailbox)); told && std::ranges::equal(*told, now))
        return {};
    for (const bytes::Bytes& message : messages)
        if (const Done sealed = seal(envelope::Kind::statement, message); !sealed)
            return sealed;
    return m_vault.keep(headsName(m_post.mailbox), now);
}

}  // namespace ebbline::sync
