#pragma once
/// \file
/// Carries one mailbox's operations both ways: seals what waits, offers it to the hub until the
/// peer's own signed acknowledgement, pulls, verifies and accepts what came, acknowledges.
/// A hub's 200 never counts as delivered.

#include "core/sync/courier.h"
#include "core/vault/vault.h"

namespace ebbline::sync {

/// What one run did and found; for the screens and the log.
struct Report {
    std::size_t envelopesSent = 0;
    std::size_t envelopesReceived = 0;
    std::size_t operationsReceived = 0;
    std::size_t quarantined = 0;
    bool gapSeen = false;     ///< a message is missing: say so
    bool forkSeen = false;    ///< two histories of one device: say so
    std::optional<Error> problem;  ///< the first thing that stopped it, e.g. Reason::unreachable
};

/// Runs once over all links of the vault, then calls `done`. Vault and courier outlive the run.
void run(vault::Vault& vault, Courier& courier, std::function<void(Report)> done);

/// Full jitter back-off: 2 s doubled per failure up to 15 minutes; `random` in [0, 1).
std::chrono::milliseconds backOff(int failures, double random);

}  // namespace ebbline::sync
