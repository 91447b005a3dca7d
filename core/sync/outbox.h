#pragma once
/// \file
/// What goes into one mailbox: operations, acknowledgements, statements, each sealed and stored before anything
/// is sent; inside of core/sync only.

#include "core/sync/post.h"

namespace ebbline::sync {

/// Under these names a vault keeps that it owes a mailbox a word: the first number, 8 bytes, from which on envelopes bring
/// nothing; and, with any value, that it has to tell what it left behind.
std::string sealedAgainName(const envelope::MailboxId& mailbox);
std::string leftOwedName(const envelope::MailboxId& mailbox);

class Outbox {
public:
    Outbox(vault::Vault& vault, const Post& post) : m_vault(vault), m_post(post) {}

    /// Everything that waits; for another desk, everything that it does not know yet.
    Done sealWaiting();
    /// What is owed before anything else: which envelopes bring nothing, and what a replaced phone left behind.
    /// \returns whether anything was.
    Result<bool> sealOwed();
    /// What we hold of a device, as an acknowledgement or as a sign of life.
    Done sealHeld(envelope::Kind kind, const envelope::DeviceId& of);
    /// Asks for what is sealed past our head of a device to a key that is no more.
    Done sealAsk(const envelope::DeviceId& of);
    /// Whether sealWaiting() would seal anything. Errors of the disk count as yes: the run will meet them.
    bool hasWaiting() const;

private:
    Done sealOperations(std::vector<journal::Operation> waiting);
    Done sealLeft();
    Done sealRoster();
    Done sealLeast();
    /// What the clinic asks for at least, if this mailbox was not told yet.
    std::optional<bytes::Bytes> untoldLeast() const;
    Done sealHeads();
    Done seal(envelope::Kind kind, bytes::View contents, const std::vector<journal::OperationId>& carried = {});
    std::optional<std::uint64_t> unsentRoster(bytes::Bytes& signedBytes) const;

    vault::Vault& m_vault;
    const Post& m_post;
};

}  // namespace ebbline::sync
