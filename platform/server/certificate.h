#pragma once
/// \file
/// What a clinic must know of a hub's certificate.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <filesystem>

namespace ebbline::server {

/// SHA-256 of the subject public key info of the first certificate in a PEM file: the hub's
/// fingerprint, which stays the same when a certificate is renewed with the same key.
/// \returns Reason::notFound, Reason::malformed.
Result<bytes::Array<32>> keyHashOf(const std::filesystem::path& certificate);

}  // namespace ebbline::server
