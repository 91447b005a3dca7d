// ebbline: the tool for auditors and owners.

#include "app/tool/subcommand.h"
#include "core/crypto/core_dumps.h"

#include <cstdio>
#include <iostream>
#include <optional>
#include <string>

namespace {

/// An answer that did not reach its reader is no answer.
int reached(int code)
{
    std::cout.flush();
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0 && std::cout)
        return code;
    std::cerr << "ebbline: the answer could not be written to the standard output\n";
    return code == ebbline::tool::fine ? ebbline::tool::failed : code;
}

/// Where a word is none of the subcommands, the parser says only that one is required. \returns a sentence that names the word.
std::optional<std::string> unknownWord(const CLI::App& app)
{
    const CLI::App* asked = &app;
    std::string command = "ebbline";
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

}  // namespace

int main(int argc, char** argv)
{
    using namespace ebbline;
    (void)crypto::refuseCoreDumps();  // a system that refuses keeps its own rule
    CLI::App app{"Ebbline's tool. Each subcommand has its own --help."};
    app.set_version_flag("--version", EBBLINE_VERSION);
    app.require_subcommand(1);
    std::function<int()> run;
    tool::addSimulate(app, run);
    tool::addCalibrate(app, run);
    tool::addAssess(app, run);
    tool::addLearn(app, run);
    tool::addRehearse(app, run);
    tool::addStats(app, run);
    tool::addVerify(app, run);
    tool::addBackup(app, run);
    tool::addRestore(app, run);
    tool::addExport(app, run);
    tool::addReadBundle(app, run);
#ifdef EBBLINE_WITH_STORY
    tool::addStory(app, run);
#endif
    try {
        app.parse(argc, argv);
    } catch (const CLI::RequiredError& problem) {
        const auto unknown = unknownWord(app);
        if (unknown)
            std::cerr << *unknown << '\n';
        else
            (void)app.exit(problem);
        return reached(tool::badInput);
    } catch (const CLI::ParseError& problem) {
        const int code = app.exit(problem);
        return reached(code == 0 ? tool::fine : tool::badInput);
    }
    return reached(run());
}
