#pragma once
/// \file
/// Whether a text from outside is UTF-8 (RFC 3629): no overlong forms, no surrogates, nothing
/// past U+10FFFF.

#include <string_view>

namespace ebbline::recovery {

bool isUtf8(std::string_view text);

}  // namespace ebbline::recovery
