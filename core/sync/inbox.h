#pragma once
/// \file
/// What comes out of one mailbox: verified, ordered, accepted or set apart; inside of core/sync only.

#include "core/sync/link_sync.h"
#include "core/sync/post.h"

namespace ebbline::sync {

/// For one mailbox, in one run. Errors are those of our own disk only: whatever a hub hands over is judged,
/// counted in the report and never stops the run.
class Inbox {
public:
    Inbox(vault::Vault& vault, Post post, Report& report) : m_vault(vault), m_post(std::move(post)), m_report(report) {}

    /// Takes the body of an answer: envelopes with lengths, in any order. \returns how many were new.
    Result<std::size_t> take(bytes::View body);

    /// Whose envelopes are to be acknowledged: operations came, or the sender must see that it forked.
    const std::set<envelope::DeviceId>& toAcknowledge() const { return m_acknowledge; }
    /// Who sealed to a key that was destroyed here, and has to seal anew.
    const std::set<envelope::DeviceId>& toAsk() const { return m_ask; }
    /// Who wrote anything that came, whatever became of it.
    const std::set<envelope::DeviceId>& seen() const { return m_seen; }
    /// Whose chain went on.
    const std::set<envelope::DeviceId>& advanced() const { return m_advanced; }

private:
    bool isClinic() const { return m_vault.owner() == vault::Vault::Owner::clinic; }
    Done takeOne(bytes::View sealed);
    bool isKnown(const std::optional<envelope::Header>& header) const;
    Done readRosterAgain();
    /// `tell`: a sender that is told what we hold, once for each envelope.
    Done keepAside(bytes::View sealed, const Error& why, const envelope::DeviceId* tell = nullptr);
    Done fork(bytes::View sealed, const envelope::DeviceId& sender, std::string_view why);
    Done accept(const envelope::Opened& opened, bytes::View sealed);
    Done setDisputedApart(std::vector<journal::Operation>& operations, const envelope::DeviceId& sender);
    /// Releases what the peer holds.
    Done acknowledged(const envelope::Opened& opened, bool& usable);
    Result<bool> isOurs(const envelope::Opened& opened);
    /// \returns an error for the envelope to be kept aside with; empty if the statement was taken.
    Result<std::optional<Error>> takeStatement(const envelope::Opened& opened);
    Result<std::optional<Error>> takeSigned(const envelope::Opened& opened, bytes::View signedBytes);
    Result<std::optional<Error>> forkOfStatements(const envelope::DeviceId& sender);
    bool isAllowed(const journal::Operation& operation, const envelope::DeviceId& sender) const;
    /// A link that another desk made is ours as well.
    Done takeLinks(const std::vector<journal::Operation>& operations);
    Done tellNewPhone(const recovery::CourseId& course, const envelope::MailboxId& mailbox);
    Done passOn(const std::vector<journal::Operation>& operations);
    Result<envelope::Opened> open(bytes::View sealed, const envelope::Header& peeked, const crypto::SigningPublicKey& sender);
    Result<envelope::Opened> openWithPrepared(bytes::View sealed, const envelope::Header& peeked, const crypto::SigningPublicKey& sender);
    bool isForDestroyedKey(const envelope::Header& header) const;
    /// What could not be opened: the sender is asked again, if the key was destroyed and it is the next of its chain.
    Done cannotOpen(bytes::View sealed, const Error& why, const crypto::SigningPublicKey& sender);
    /// Past what its sender seals anew, or beside the chain of a desk that is an older copy. \returns whether that is what it says.
    Result<bool> jump(const envelope::Opened& opened, bytes::View sealed, const vault::Cursor& head);
    Result<std::optional<Error>> takeAsk(const struct AskAgain& ask);
    Done oweAgain(std::uint64_t first);
    Done leaveBehind(std::uint64_t held);
    /// `next`: the mailbox that a phone which was paired again has now; null if there is none.
    Done settleLeft(const envelope::MailboxId& before, std::uint64_t held, const vault::Link* next);
    Done noteCourse(const std::vector<journal::Operation>& operations);
    Done noteSealedTo(const envelope::Header& header);

    vault::Vault& m_vault;
    Post m_post;
    bool m_rosterTaken = false;
    Report& m_report;
    std::size_t m_accepted = 0;
    std::set<envelope::DeviceId> m_acknowledge;
    std::set<envelope::DeviceId> m_ask;
    std::optional<std::uint32_t> m_sealedTo;
    std::set<envelope::DeviceId> m_advanced;
    std::set<envelope::DeviceId> m_seen;
};

}  // namespace ebbline::sync
