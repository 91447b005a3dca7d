#include "core/sync/inbox.h"

#include "core/bytes/reader.h"
#include "core/mailbox/service.h"
#include "core/sync/messages.h"

#include <algorithm>
#include <tuple>

namespace ebbline::sync {

namespace {

/// The hub's own bound counts envelopes without their lengths.
constexpr std::size_t largestAnswer = mailbox::maximumAnswer + 64 * 1024;

}  // namespace

Inbox::Inbox(vault::Vault& vault, const vault::Link& link, Report& report)
    : m_vault(vault), m_link(link), m_peer(envelope::deviceIdOf(link.peerSigning)), m_report(report)
{
}

Result<std::size_t> Inbox::take(bytes::View body)
{
    m_accepted = 0;
    struct Piece {
        std::optional<envelope::Header> header;
        bytes::View sealed;
    };
    std::vector<Piece> pieces;
    bytes::Reader reader(body);
    while (body.size() <= largestAnswer && reader.ok() && reader.left() > 0) {
        const bytes::View sealed = reader.block(envelope::maximumEnvelope);
        if (!reader.ok())
            break;
        const auto header = envelope::peek(sealed);
        pieces.push_back({header ? std::optional(*header) : std::nullopt, sealed});
    }
    if (!reader.atEnd()) {
        ++m_report.garbled;
        if (!m_report.problem)
            m_report.problem = Error{Reason::malformed, "hub: its answer cannot be read to the end"};
    }
    // The chain says the order; the hub's is worth nothing.
    std::stable_sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) {
        if (!a.header || !b.header)
            return a.header.has_value() && !b.header;
        return std::tie(a.header->sender, a.header->sequence) < std::tie(b.header->sender, b.header->sequence);
    });
    for (const Piece& piece : pieces)
        if (const Done taken = takeOne(piece.sealed); !taken)
            return fail(taken.error());
    return m_accepted;
}

Done Inbox::keepAside(bytes::View sealed, const Error& why, bool tell)
{
    const Result<bool> fresh = m_vault.quarantine(m_link.mailbox, sealed, why);
    if (!fresh)
        return fail(fresh.error());
    m_report.quarantined += *fresh ? 1 : 0;
    if (tell && *fresh)
        m_acknowledge.insert(m_peer);
    return {};
}

/// The sender is told what we hold, so that an older copy of its vault learns that it is one.
Done Inbox::fork(bytes::View sealed, std::string_view why)
{
    m_report.forkSeen = true;
    if (const Done noted = m_vault.noteFork(m_link.mailbox, m_peer); !noted)
        return noted;
    return keepAside(sealed, {Reason::outOfOrder, std::string(why)}, true);
}

Done Inbox::takeOne(bytes::View sealed)
{
    const bool clinic = m_vault.owner() == vault::Vault::Owner::clinic;
    const auto opened = envelope::open(sealed, m_link.peerSigning, clinic ? m_vault.clinicEpoch() : m_vault.boxKey());
    if (!opened)
        return keepAside(sealed, opened.error());
    const envelope::Header& header = opened->header;
    if (header.mailbox != m_link.mailbox)
        return keepAside(sealed, {Reason::forged, "envelope: of another mailbox"});

    const Result<vault::Cursor> head = m_vault.peerHead(m_link.mailbox, header.sender);
    if (!head)
        return fail(head.error());
    const envelope::Hash hash = envelope::hashOf(sealed);
    if (header.sequence <= head->sequence) {
        const auto known = m_vault.passed(m_link.mailbox, header.sender, header.sequence);
        if (!known)
            return fail(known.error());
        const bool last = header.sequence == head->sequence;
        if ((*known && **known != hash) || (last && head->hash != hash))
            return fork(sealed, "envelope: another one with this number was accepted");
        return {};
    }
    if (header.sequence != head->sequence + 1) {
        m_report.gapSeen = true;
        if (const Done noted = m_vault.noteAhead(m_link.mailbox, header.sender, header.sequence); !noted)
            return noted;
        return keepAside(sealed, {Reason::outOfOrder, "envelope: one before it is missing"});
    }
    if (header.previous != head->hash)
        return fork(sealed, "envelope: it does not follow the one before");
    return accept(*opened, sealed);
}

Done Inbox::accept(const envelope::Opened& opened, bytes::View sealed)
{
    ++m_report.envelopesReceived;
    std::vector<journal::Operation> operations;
    if (opened.header.kind == envelope::Kind::operations) {
        auto unpacked = unpackOperations(opened.plaintext);
        if (!unpacked)
            return keepAside(sealed, unpacked.error());
        for (const journal::Operation& operation : *unpacked)
            if (!isAllowed(operation, opened.header.sender))
                return keepAside(sealed, {Reason::forged, "operation: not the sender's to write"});
        operations = std::move(*unpacked);
    } else if (opened.header.kind == envelope::Kind::acknowledgement || opened.header.kind == envelope::Kind::heartbeat) {
        bool usable = false;
        if (const Done noted = acknowledged(opened, usable); !noted)
            return noted;
        if (!usable)
            return keepAside(sealed, {Reason::malformed, "acknowledgement: it cannot be read"});
    }
    const vault::Cursor head{opened.header.sequence, envelope::hashOf(sealed)};
    if (const Done accepted = m_vault.accept(m_link.mailbox, opened.header.sender, head, operations); !accepted)
        return accepted;
    ++m_accepted;
    m_report.operationsReceived += operations.size();
    m_advanced.insert(opened.header.sender);
    if (!operations.empty())
        m_acknowledge.insert(opened.header.sender);
    return {};
}

/// Releases what the peer holds. A peer that holds more than we ever sealed, or something else under one of
/// our numbers, has seen a life of this device that this vault does not know.
Done Inbox::acknowledged(const envelope::Opened& opened, bool& usable)
{
    const auto said = unpackAcknowledgement(opened.plaintext);
    usable = said.has_value();
    if (!said || said->of != m_vault.device() || said->held.sequence == 0)
        return {};
    const Result<vault::Cursor> own = m_vault.ownHead(m_link.mailbox);
    if (!own)
        return fail(own.error());
    bool ours = said->held.sequence <= own->sequence;
    if (ours) {
        const auto known = m_vault.passed(m_link.mailbox, m_vault.device(), said->held.sequence);
        if (!known)
            return fail(known.error());
        ours = !*known || **known == said->held.hash;
    }
    if (ours)
        return m_vault.acknowledged(m_link.mailbox, said->held.sequence, said->at);
    m_report.rolledBack = true;
    return m_vault.noteRolledBack(m_link.mailbox);
}

/// A phone writes about its own course only, a clinic nothing in the patient's name.
bool Inbox::isAllowed(const journal::Operation& operation, const envelope::DeviceId& sender) const
{
    using records::Kind;
    if (operation.id.device != sender || operation.audience != journal::Audience::patientAndClinic)
        return false;
    const auto kind = static_cast<Kind>(operation.kind);
    const bool newer = operation.kind > static_cast<std::uint16_t>(records::newestKind);
    if (m_vault.owner() == vault::Vault::Owner::clinic) {
        const bool patients = kind == Kind::entryRecorded || kind == Kind::reminderAnswered
                              || kind == Kind::warningShown || kind == Kind::messageWritten || kind == Kind::messageRead;
        return (patients || newer) && operation.course == m_link.course;
    }
    return newer || kind == Kind::courseOpened || kind == Kind::entriesOpened || kind == Kind::messageWritten
           || kind == Kind::messageRead;
}

}  // namespace ebbline::sync
