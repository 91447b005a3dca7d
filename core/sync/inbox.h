#pragma once
/// \file
/// What comes out of one mailbox: verified, ordered, accepted or set apart; inside of core/sync only.

#include "core/sync/link_sync.h"

#include <set>

namespace ebbline::sync {

/// For one link, in one run. Errors are those of our own disk only: whatever a hub hands over is judged,
/// counted in the report and never stops the run.
class Inbox {
public:
    Inbox(vault::Vault& vault, const vault::Link& link, Report& report);

    /// Takes the body of an answer: envelopes with lengths, in any order. \returns how many were new.
    Result<std::size_t> take(bytes::View body);

    /// Whose envelopes are to be acknowledged: operations came, or the sender must see that it forked.
    const std::set<envelope::DeviceId>& toAcknowledge() const { return m_acknowledge; }
    /// Whose chain went on.
    const std::set<envelope::DeviceId>& advanced() const { return m_advanced; }

private:
    Done takeOne(bytes::View sealed);
    Done keepAside(bytes::View sealed, const Error& why, bool tell = false);
    Done fork(bytes::View sealed, std::string_view why);
    Done accept(const envelope::Opened& opened, bytes::View sealed);
    Done acknowledged(const envelope::Opened& opened, bool& usable);
    bool isAllowed(const journal::Operation& operation, const envelope::DeviceId& sender) const;

    vault::Vault& m_vault;
    const vault::Link& m_link;
    envelope::DeviceId m_peer;
    Report& m_report;
    std::size_t m_accepted = 0;
    std::set<envelope::DeviceId> m_acknowledge;
    std::set<envelope::DeviceId> m_advanced;
};

}  // namespace ebbline::sync
