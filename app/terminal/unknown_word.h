#pragma once
/// \file
/// What a program without windows says to a word that it does not know.

#include <optional>
#include <string>

namespace CLI {
class App;
}

namespace ebbline::terminal {

/// Where a word is none of the subcommands, the parser says only that one is required.
/// \param program its name, as it is typed
/// \returns a sentence that names the word and says where those that exist are listed; empty if no word is unknown
std::optional<std::string> unknownWord(const CLI::App& app, const std::string& program);

}  // namespace ebbline::terminal
