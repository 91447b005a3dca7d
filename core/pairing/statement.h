#pragma once
/// \file
/// What a clinic says about itself under its root key: which desks it has, which epoch is in force, which
/// phone took another's place. Layouts: docs/formats/statements.md.
///
/// A roster says all of it at once and replaces the one before, so there is nothing to apply in order: the
/// higher number counts, a lower one changes nothing, and two with one number are a fork.

#include "core/clock/instant.h"
#include "core/envelope/envelope.h"

#include <variant>

namespace ebbline::pairing {

inline constexpr std::size_t mostDesks = 16;
inline constexpr std::size_t mostRevoked = 200;

struct Roster {
    struct Desk {
        crypto::SigningPublicKey signing;
        crypto::BoxPublicKey box;
        bool owner = false;  ///< holds the root key as well
        bool operator==(const Desk&) const = default;
    };
    std::uint64_t number = 1;         ///< from 1
    bytes::Array<32> previous{};      ///< hash of the signed roster before, zeros at 1
    std::uint32_t epoch = 1;          ///< never lower than in the roster before
    crypto::BoxPublicKey epochKey;    ///< what patients seal to
    std::vector<Desk> desks;          ///< at least one, at most mostDesks
    std::vector<envelope::DeviceId> revoked;  ///< of all times, at most mostRevoked

    const Desk* find(const envelope::DeviceId& device) const;
    bool isRevoked(const envelope::DeviceId& device) const;
    bool operator==(const Roster&) const = default;
};

/// Another phone belongs to this course now; this mailbox is over.
struct PhoneReplaced {
    envelope::MailboxId mailbox;
    envelope::DeviceId phone;       ///< the one that was replaced
    std::uint64_t held = 0;         ///< the clinic holds its operations up to this number
    clock::Instant at{};
    bool operator==(const PhoneReplaced&) const = default;
};

/// What this program speaks, and what a clinic may ask for at least.
inline constexpr std::uint32_t ownProtocol = 1;

/// Programs that speak less than this send nothing until they are updated. They go on keeping, warning and reading.
struct LeastVersion {
    std::uint64_t number = 1;    ///< from 1; the higher one counts
    std::uint32_t protocol = 1;  ///< from 1
    clock::Instant at{};
    bool operator==(const LeastVersion&) const = default;
};

using Statement = std::variant<Roster, PhoneReplaced, LeastVersion>;

/// What a root's signature covers: a domain, a zero byte, and the hash of the body.
bytes::Bytes statementText(bytes::View body);

bytes::Bytes signStatement(const Statement& statement, const crypto::SigningKey& root);

/// \returns Reason::forged if it is not signed by this root, Reason::unsupported for a kind of a newer
///          program, Reason::malformed, Reason::outOfRange for a roster without desks, with one twice, or
///          with one that it revokes.
Result<Statement> openStatement(bytes::View signedStatement, const crypto::SigningPublicKey& root);

/// The next roster, as an owner makes it; the caller changes what is to be changed and signs it.
Roster following(const Roster& roster, bytes::View signedRoster);

}  // namespace ebbline::pairing
