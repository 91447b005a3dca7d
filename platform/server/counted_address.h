#pragma once
/// \file
/// Whom limits count a client as: its IPv4 address, or its IPv6 network of 64 bits, which whoever has one address
/// usually has the whole of (RFC 6177, section 2; RFC 7421).

#include <string>

namespace ebbline::server {

/// `address` as text. One that is no address counts as what it is; an IPv4 address within IPv6 as the former.
std::string countedAs(const std::string& address);

}  // namespace ebbline::server
