#pragma once
/// \file
/// Requests that a hub must not fall for, drawn from a seed.

#include "tests/faults/hub_load.h"

#include <array>
#include <string>

namespace ebbline::faults {

enum class Abuse : std::uint8_t {
    cutShort, headChanged, bodyChanged, noise, hugeHeader, hugeBody, unsignedRequest, strangersKey, stale, replayed,
    foreignMailbox, smuggled, halfOpen, wrongRoute, count
};
constexpr std::array<const char*, static_cast<std::size_t>(Abuse::count)> abuseNames{
    "cut short", "head changed", "body changed", "noise", "huge header", "huge body", "unsigned", "stranger's key", "stale",
    "replayed", "foreign mailbox", "smuggled", "half open", "wrong route"};

/// What an attacker has: a member of another clinic, a stranger's key, and requests of the victim
/// that he overheard and that were answered before.
struct Attacker {
    const Phone& victim;
    const bytes::Bytes& victimsEnvelope;
    const Member& ofAnotherClinic;
    Member stranger{};
    std::string overheard;  ///< a whole request of the victim, sent before

    /// Bytes for a socket.
    std::string request(Abuse kind, std::mt19937_64& random, clock::Instant now) const;
};

}  // namespace ebbline::faults
