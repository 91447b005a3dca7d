#pragma once
/// \file
/// The one way a core function says that it failed.
///
/// Core code does not throw across a module boundary: a function that can fail returns
/// Result<T>, and exceptions of a third-party library end in the module that owns it.

#include <expected>
#include <string>
#include <string_view>
#include <utility>

namespace ebbline {

/// What went wrong, as a reason that a caller can act on. The numbers are logged, stored and
/// sent: never renumber, never reuse.
enum class Reason {
    outOfRange = 1,      ///< a number lies outside the documented interval
    notFinite = 2,       ///< NaN or infinity where a measurement was expected
    malformed = 3,       ///< bytes or text do not have the documented form
    unsupported = 4,     ///< a version, suite or flag that this program does not know
    notFound = 5,        ///< what was asked for is not there
    alreadyExists = 6,   ///< there is one already, and it differs
    wrongKey = 7,        ///< a passphrase, code or key does not open this
    damaged = 8,         ///< the key is right, the stored bytes are not
    forged = 9,          ///< a signature, proof or authentication tag does not hold
    expired = 10,        ///< its time is over
    refused = 11,        ///< the other side, or a rule, said no
    tooSoon = 12,        ///< a back-off is running; the detail says how long
    tooLarge = 13,       ///< over a documented cap
    storageFull = 14,    ///< the disk or a quota is full
    storageFailed = 15,  ///< the disk or file system reported an error
    unreachable = 16,    ///< no network, or nobody answered
    locked = 17,         ///< the vault is closed
    outOfOrder = 18,     ///< a gap or fork in a chain
    notEnough = 19,      ///< too little data to say
    invalidState = 20,   ///< the call does not fit what happened before
    unprotected = 21,    ///< the way is not encrypted and leads to another machine
};

/// A failure. `detail` is for developers and logs: it names the argument and the rule, and
/// never holds a name, a word, a score or a key of a patient.
struct Error {
    Reason reason;
    std::string detail;

    bool operator==(const Error&) const = default;
};

/// Either a value or an Error. Callers must look.
template <typename T>
using Result = std::expected<T, Error>;

/// Success without a value.
using Done = Result<void>;

/// `return fail(Reason::outOfRange, "score: want 0..10");`
inline std::unexpected<Error> fail(Reason reason, std::string_view detail)
{
    return std::unexpected<Error>(Error{reason, std::string(detail)});
}

/// Passes another call's error on.
inline std::unexpected<Error> fail(Error error)
{
    return std::unexpected<Error>(std::move(error));
}

}  // namespace ebbline
