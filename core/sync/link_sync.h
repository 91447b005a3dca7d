#pragma once
/// \file
/// Carries one mailbox's operations both ways: seals what waits, offers it to the hub until the
/// peer's own signed acknowledgement, pulls, verifies and accepts what came, acknowledges.
/// A hub's 200 never counts as delivered. Photographs follow when nothing else waits, and never hold up the rest.

#include "core/sync/courier.h"
#include "core/vault/vault.h"

namespace ebbline::sync {

/// An envelope that the hub has taken is offered again while the peer has not acknowledged it: a hub may
/// lose what it said it holds. Our own choice.
inline constexpr std::chrono::hours offerAgainAfter{6};
/// A sign of life goes out if nothing else did for so long. Our own choice: once a day, with room.
inline constexpr std::chrono::hours heartbeatEvery{20};
/// After so long without anything new from the peer, or without its acknowledgement, it shows. Our own
/// choice: a day, and two hours for those who are late.
inline constexpr std::chrono::hours longestSilence{26};

/// What one run did and found; for the screens and the log. Vault::standing() says the same of one
/// mailbox at any time.
struct Report {
    std::size_t envelopesSent = 0;
    std::size_t envelopesReceived = 0;
    std::size_t operationsReceived = 0;
    std::size_t quarantined = 0;   ///< set apart in this run, each counted once
    bool gapSeen = false;          ///< a message is missing: say so
    bool forkSeen = false;         ///< two histories of one device: say so
    bool rolledBack = false;       ///< the peer holds more of ours than this vault: it is an older copy, say so
    bool tooOld = false;           ///< the clinic asks for a newer program, or says what this one does not know: say so
    std::size_t refused = 0;       ///< mailboxes of which the hub does not take what is sent (core/sync/refusals.h): say so
    std::size_t garbled = 0;       ///< answers of the hub that cannot be read to their end
    std::size_t silent = 0;        ///< open courses from whose other end nothing new came for longer than longestSilence
    std::size_t unproved = 0;      ///< links with operations unacknowledged for longer than longestSilence
    std::size_t photosSent = 0;           ///< given to the hub whole
    std::size_t photosReceived = 0;       ///< came whole, opened and checked
    std::size_t photosRefused = 0;        ///< came whole, and are none that may be shown
    std::size_t photoChunksSent = 0;
    std::size_t photoChunksReceived = 0;
    std::optional<Error> photoProblem;    ///< the first thing that stopped a photograph; everything else went on
    std::optional<Error> problem;  ///< the first thing that stopped it, e.g. Reason::unreachable
    bool reached = false;          ///< the hub said what lies there for at least one mailbox, or for all
    std::chrono::seconds retryAfter{0};  ///< the hub ended the run, and asked to be left alone for so long; 0: it did not ask
};

/// Runs once over all links of the vault, then calls `done`. Vault and courier outlive the run.
void run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done);

/// Under this name a vault keeps a statement, signed by the clinic's root, that the next run sends to a mailbox.
std::string statementName(const envelope::MailboxId& mailbox);

/// True if `since` lies longer back than `limit`, or ahead of us because somebody set the clock.
bool isOver(clock::Instant since, std::chrono::milliseconds limit, clock::Instant now);

}  // namespace ebbline::sync
