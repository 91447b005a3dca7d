// ebbline: the tool for auditors and owners.

#include "app/tool/subcommand.h"
#include "core/crypto/core_dumps.h"

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
    } catch (const CLI::ParseError& problem) {
        const int code = app.exit(problem);
        return code == 0 ? tool::fine : tool::badInput;
    }
    return run();
}
