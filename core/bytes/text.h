#pragma once
/// \file
/// Bytes as text: lower-case hexadecimal, base32 of RFC 4648 section 6, and the checksum that
/// catches typing errors.

#include "core/bytes/bytes.h"
#include "core/result/result.h"

#include <string>
#include <string_view>

namespace ebbline::bytes {

std::string toHex(View input);

/// \returns Reason::malformed for an odd length or a character that is not a hexadecimal digit.
Result<Bytes> fromHex(std::string_view text);

/// RFC 4648 base32, upper case, without padding.
std::string toBase32(View input);

/// Accepts upper and lower case, with or without padding at the end.
/// \returns Reason::malformed for other characters, an impossible length, or set bits that no
///          encoder would leave.
Result<Bytes> fromBase32(std::string_view text);

/// Groups of four characters with dashes between, for paper and for reading aloud.
std::string inGroups(std::string_view letters);

/// What a person typed of a base32 code: spaces and dashes left out, and 0, 1 and 8, which base32
/// never has, taken for O, I and B. Reads at most `atMost` + 1 characters of it.
std::string fromTyped(std::string_view text, std::size_t atMost);

/// CRC-16/CCITT-FALSE (polynomial 0x1021, start 0xffff): "123456789" gives 0x29b1.
std::uint16_t crc16(View input);

}  // namespace ebbline::bytes
