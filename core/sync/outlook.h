#pragma once
/// \file
/// How it stands with the other end of a mailbox, in one look: what it has acknowledged, since when something
/// waits, when it was last heard, and what a hub keeps back. All of it is proved by signatures and timed by our own
/// clock (vault::Standing), and nothing counts as delivered before the other end has acknowledged it. What a hub says is
/// told as what it says: that it does not take an envelope. It makes nothing look better than it is.

#include "core/sync/link_sync.h"
#include "core/sync/refusals.h"

#include <array>

namespace ebbline::sync {

struct Outlook {
    /// Of all that holds, the gravest; in this order.
    enum class State : std::uint8_t {
        olderHere,  ///< the other end holds more of ours than this vault does: this vault is an older copy
        forked,     ///< two histories of one device were shown
        refused,    ///< the hub does not take what is sent from here
        withheld,   ///< a signed message is here that comes after one which the hub does not show, or shows no more
        unheard,    ///< nothing new from the other end for longestSilence or longer
        waiting,    ///< something that was written here is not acknowledged
        delivered,  ///< everything that was written here is acknowledged
    };
    State state = State::delivered;
    std::optional<clock::Instant> waitingSince;  ///< the oldest that is not acknowledged; empty: nothing waits
    std::optional<clock::Instant> heardAt;       ///< when something new of the other end was last accepted; empty: never
    std::optional<Refusal> refusal;              ///< what the hub does not take, whatever graver holds as well
    bool missing = false;                        ///< as State::forked or State::withheld, whatever graver holds as well
    bool unheard = false;                        ///< as State::unheard, whatever graver holds as well
};

/// Days without an acknowledgement at which it is said anew that something waits: before ninety, after which an operator
/// may want room (docs/decisions/0023-long-waits.md). Our own choice.
inline constexpr std::array<int, 3> overdueDays{30, 60, 85};

/// The highest of overdueDays that the oldest thing which was written here and is not acknowledged has waited; 0: none of
/// them, or nothing waits.
int overdueOf(const Outlook& outlook, clock::Instant now);

/// Of one mailbox, at this moment of the vault's clock. Whether a link that ended or a course that is closed still
/// matters is for the caller to say. \returns Reason::storageFailed.
Result<Outlook> outlookOf(const vault::Vault& vault, const envelope::MailboxId& mailbox);

/// How it stands with the other desks that belong to the clinic still: how many of them showed two histories, of how
/// many a message is missing, how many said that they were put back to an older copy, and how many hold more of this desk than it
/// does itself. Always nothing at a phone. \returns Reason::storageFailed.
struct OtherDesks {
    int forked = 0;
    int withheld = 0;
    int older = 0;
    int olderHere = 0;
};
Result<OtherDesks> otherDesksOf(const vault::Vault& vault);

}  // namespace ebbline::sync
