#include "app/terminal/unknown_word.h"

#include <CLI/CLI.hpp>

#include <vector>

namespace ebbline::terminal {

std::optional<std::string> unknownWord(const CLI::App& app, const std::string& program)
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
