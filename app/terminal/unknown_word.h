#pragma once
/// \file
/// What a program without windows says to a word that it does not know.

#include <CLI/CLI.hpp>

#include <optional>
#include <string>
#include <vector>

namespace ebbline::terminal {

/// Where a word is none of the subcommands, the parser says only that one is required.
/// \param program its name, as it is typed
/// \returns a sentence that names the word and says where those that exist are listed; empty if no word is unknown
inline std::optional<std::string> unknownWord(const CLI::App& app, const std::string& program)
{
    const CLI::App* asked = &app;
    std::string command = program;
    while (!asked->get_subcommands().empty()) {
        asked = asked->get_subcommands().front();
        command += ' ' + asked->get_name();
    }
    const std::vector<std::string> left = asked->remaining();
    if (asked->get_require_subcommand_min() == 0 || left.empty())
        return std::nullopt;
    return command + ": there is no " + (left.front().starts_with('-') ? "option" : "subcommand") + " '" + left.front() + "'; " + command
           + " --help lists what there is";
}

}  // namespace ebbline::terminal
