#pragma once
/// \file
/// What was ever written, held, opened and acknowledged in a simulated clinic, kept beside the devices: they may be put back
/// to an older copy, and forget.

#include "core/journal/operation.h"
#include "core/photos/manifest.h"

#include <map>
#include <set>
#include <string>

namespace ebbline::simulation {

struct Ledger {
    std::map<journal::OperationId, bytes::Array<32>> written;         ///< hash of its bytes, from the vault of who wrote it
    std::set<journal::OperationId> held;                              ///< by any desk at any time
    std::map<journal::OperationId, std::set<envelope::DeviceId>> heldInUse;  ///< by which desks while they were the clinic's
    std::map<journal::OperationId, std::set<std::string>> opened;     ///< versions of entries that stood on a desk's screen, and before whom
    std::set<journal::OperationId> acknowledged;                      ///< versions that a phone showed as with the clinic
    std::set<photos::PhotoId> pictures;                               ///< that a desk could show
};

/// A device that is over, and how things stood at that moment.
struct Ending {
    envelope::DeviceId device;
    bool isDesk = false;
    std::uint64_t written = 0;                ///< the highest number that it had written
    std::uint32_t epoch = 0;                  ///< of a desk: the first that it does not know
    envelope::MailboxId mailbox;              ///< the phone's, or the one between the first desk and this one
    std::uint64_t sealed = 0;                 ///< how far the first desk's chain went in it
};

}  // namespace ebbline::simulation
