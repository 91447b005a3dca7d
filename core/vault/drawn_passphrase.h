#pragma once
/// \file
/// A passphrase that the program draws, for whoever can not think one up: 75 random bits as sixteen letters
/// and digits in four groups, the last of them a check. Kept on paper, typed to open. A slot knows no
/// difference to one that a person chose. Format: docs/formats/vault.md.

#include <array>
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

/// Two groups to ask for, as a proof that the whole is on paper: 1 to 4, the first before the second, by chance.
std::array<int, 2> groupsToAsk();

/// Whether somebody typed these groups of a drawn passphrase, one after the other, or all of it; read as passphraseAsDrawn()
/// reads. \pre `drawn` as drawPassphrase() gives it, `groups` as groupsToAsk() gives them
bool saysGroups(std::string_view drawn, const std::array<int, 2>& groups, std::string_view typed);

}  // namespace ebbline::vault
