#pragma once
/// \file
/// Where a hub is reached. Plain HTTP is for a hub on this very machine: on any other way others could read along
/// who writes to which mailbox, and when.

#include "core/result/result.h"

#include <string>
#include <string_view>

namespace ebbline::pairing {

/// `host` is host[:port].
struct HubAddress {
    std::string host;
    bool tls = true;
    bool operator==(const HubAddress&) const = default;
};

/// An address as people type it, with or without "https://" or "http://" in front; without, TLS is meant.
HubAddress hubAddressFromText(std::string_view text);

/// "localhost", an IPv4 address in 127.0.0.0/8 or "[::1]", with or without a port. Source: RFC 1122,
/// 3.2.1.3 (g); RFC 4291, 2.5.3; RFC 6761, 6.3.
bool isThisMachine(std::string_view hostAndPort);

/// \returns Reason::unprotected for plain HTTP to another machine.
Done checkWay(const HubAddress& address);

}  // namespace ebbline::pairing
