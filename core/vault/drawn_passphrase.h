#pragma once
/// \file
/// A passphrase that the program draws, for whoever can not think one up: 75 random bits as sixteen letters
/// and digits in four groups, the last of them a check. Kept on paper, typed to open. A slot knows no
/// difference to one that a person chose. Format: docs/formats/vault.md.

#include <string>
#include <string_view>

namespace ebbline::vault {

inline constexpr int drawnPassphraseBits = 75;  ///< 15 characters of 32, each as likely as any other

/// A fresh one, e.g. to show once: "ABCD-EFGH-IJKL-MNOP". The caller wipes it.
std::string drawPassphrase();

/// What was typed, as it was drawn if it is one: either case, with or without the dashes or with spaces in
/// their place, 0, 1 and 8 for O, I and B, also as a Turkish, Arabic, Persian or Chinese keyboard writes them. Anything
/// else, and one whose check does not fit, comes back as it was typed. The caller wipes it.
std::string passphraseAsDrawn(std::string_view typed);

}  // namespace ebbline::vault
