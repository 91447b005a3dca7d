#pragma once
/// \file
/// What FHIR R4 (4.0.1) asks of an Attachment: the SHA-1 of its bytes in base64 (datatypes, Attachment.hash). It finds a file
/// that was changed by accident, and no more: SHA-1 is broken as a proof against intent, and nothing else of ours uses it.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <string>
#include <string_view>

namespace ebbline::exchange {

/// FIPS 180-4 (NIST, "Secure Hash Standard", 2015), section 6.1.
bytes::Array<20> sha1(bytes::View input);

/// RFC 4648 (Josefsson, "The Base16, Base32, and Base64 Data Encodings", 2006), section 4, with padding.
std::string toBase64(bytes::View input);
/// \returns Reason::malformed for anything that toBase64() does not write.
Result<bytes::Bytes> fromBase64(std::string_view text);

}  // namespace ebbline::exchange
