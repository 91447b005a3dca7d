// ebbline: the tool for auditors and owners.

#include "app/terminal/unknown_word.h"
#include "app/tool/subcommand.h"
#include "core/crypto/core_dumps.h"

#include <cstdio>
#include <iostream>

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
        const auto unknown = terminal::unknownWord(app, "ebbline");
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
