// ebbline story, ebbline demo: the invented clinic, played headless or left for opening.

#include "app/tool/subcommand.h"

#include "app/fonts/fonts.h"
#include "app/story/demo.h"
#include "app/story/story.h"
#include "app/story/story_folder.h"
#include "core/crypto/crypto.h"

#include <QApplication>
#include <QFileInfo>

#include <clocale>
#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

/// `out` is looked at before anything starts.
int inApplication(const std::string& out, const std::function<Done(const QString& hubProgram)>& work)
{
    if (const Done may = story::mayEmpty(QString::fromStdString(out)); !may) {
        std::cerr << "ebbline: " << may.error().detail << '\n';
        return badInput;
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
        qputenv("QT_QUICK_BACKEND", "software");
    int argc = 1;
    char name[] = "ebbline";
    char* argv[] = {name, nullptr};
    QApplication application(argc, argv);
    // Qt has set the locale of the system: under a decimal comma C functions would write numbers that no other machine reads.
    std::setlocale(LC_NUMERIC, "C");
    app::loadFonts();
    if (const Done ready = crypto::initialise(); !ready) {
        std::cerr << "ebbline: " << ready.error().detail << '\n';
        return failed;
    }
    const Done done = work(QCoreApplication::applicationDirPath() + QStringLiteral("/ebbline-hub"));
    if (!done) {
        std::cerr << "ebbline: " << done.error().detail << '\n';
        return failed;
    }
    return fine;
}

}  // namespace

void addStory(CLI::App& app, std::function<int()>& run)
{
    struct Options {
        std::string out;
        bool noScreens = false;
    };
    auto story = std::make_shared<Options>();
    auto* playing = app.add_subcommand("story", "Play the invented clinic through the real programs and a real hub");
    playing->footer("Example: ebbline story --out build/story");
    playing->add_option("--out", story->out, "Folder for screens, sheet and summary.json: a new one, an empty one, or one of an earlier story, which is emptied")->required();
    playing->add_flag("--no-screens", story->noScreens, "Only the summary");
    playing->callback([story, &run] {
        run = [story] {
            return inApplication(story->out, [&](const QString& hub) {
                const auto played = story::playStory({QString::fromStdString(story->out), hub, !story->noScreens});
                return played ? Done{} : Done(fail(played.error()));
            });
        };
    });

    auto demo = std::make_shared<Options>();
    auto* seeding = app.add_subcommand("demo", "Make a demo clinic of the last eight days, for the programs to open");
    seeding->footer("Example: ebbline demo --out build/demo");
    seeding->add_option("--out", demo->out, "Folder, new, empty or of an earlier story, which is emptied; gets work/desk, work/phone-*, hub.port, passphrase.txt")
        ->required();
    seeding->callback([demo, &run] {
        run = [demo] {
            return inApplication(demo->out, [&](const QString& hubProgram) {
                return story::seedDemo(QString::fromStdString(demo->out), hubProgram);
            });
        };
    });
}

}  // namespace ebbline::tool
