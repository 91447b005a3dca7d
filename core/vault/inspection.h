#pragma once
/// \file
/// Whether a vault is whole: key files, pages, structure, tables, every operation, the chain over this
/// device's own ones, the outbox, and that refolding gives what is shown. Looks only; a vault that is
/// too damaged to be unlocked can still be inspected.

#include "core/vault/ways_in.h"

#include <string>
#include <vector>

namespace ebbline::vault {

/// One thing that is wrong. The detail names a page, a table or a number, never what a patient wrote.
struct Fault {
    enum class Kind : std::uint8_t {
        keyFile,        ///< the newest generation of the key file
        keyFileBefore,  ///< the generation before
        unreadable,     ///< the database does not open with its proved key
        page,           ///< a page's authentication tag does not hold
        structure,      ///< what SQLite finds
        version,        ///< the version that the file says and its table of versions differ
        deviceKeys,     ///< the device's own keys are missing
        operation,      ///< an operation cannot be read, or stands in another's place
        gap,            ///< an own operation is missing
        chain,          ///< the chain over own operations breaks
        contents,       ///< an own operation's body is refused
        outbox,         ///< sealed envelopes with a gap, or other than the head says
        fold,           ///< refolding does not give what is shown
        openInfo,       ///< whom to call cannot be read
        photo,          ///< a photograph's chunk is not the one that was sealed, or its only copy has a gap
    } kind;
    std::string detail;

    bool operator==(const Fault&) const = default;
};

struct Inspection {
    std::vector<Fault> faults;
    int version = 0;                ///< of the tables
    std::size_t operations = 0;     ///< of all devices
    std::size_t own = 0;            ///< of this device
    std::size_t courses = 0;
    std::size_t waiting = 0;        ///< own operations that no envelope carries yet
    std::size_t unacknowledged = 0; ///< envelopes without the peer's acknowledgement
    std::size_t photos = 0;         ///< whole ones
    std::size_t quarantined = 0;    ///< envelopes kept because they could not be accepted
    bytes::Array<32> folded{};      ///< digest of what the operations add up to

    bool sound() const { return faults.empty(); }
};

/// Opens and inspects. Counts as an attempt to open.
/// \returns as openDataKey(); every other thing that is wrong is a fault.
Result<Inspection> inspect(const std::filesystem::path& folder, const Offered& offered, const clock::Readings& now);

/// The same with the data key at hand.
Inspection inspect(const std::filesystem::path& folder, const crypto::Secret& dataKey);

}  // namespace ebbline::vault
