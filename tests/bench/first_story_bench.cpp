// What a person waits for, measured on the real parts: from the start of a program to its first
// frame, from a tap to the durable answer, and on to the clinic's queue over loopback.
//
//     first_story_bench [folder of the programs, default: the bench's own]
//
// Starting is measured from outside, in a process of its own, against a bare Qt Quick window.

#include "app/fonts/fonts.h"
#include "app/story/stage.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

using namespace ebbline;

namespace {

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

double largest(const std::vector<double>& values)
{
    return *std::max_element(values.begin(), values.end());
}

/// Resident memory of this process in MB.
double residentMegabytes()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmRSS:"))
            return line.mid(6).simplified().split(' ').first().toDouble() / 1024;
    return 0;
}

/// Says so on standard output once the window has drawn, and ends.
int reportFirstFrame(QQuickWindow* window)
{
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [] {
        std::printf("frame %.1f\n", residentMegabytes());
        std::fflush(stdout);
        QCoreApplication::exit(0);
    });
    window->update();
    return QApplication::exec();
}

int startOne(const QString& what, const QString& folder)
{
    if (what == QLatin1String("bare")) {
        QQuickWindow window;
        window.resize(390, 844);
        window.show();
        return reportFirstFrame(&window);
    }
    app::loadFonts();
    const clock::SystemClock clock;
    const auto zone = *aftercare::Zone::find("Europe/Berlin");
    if (what == QLatin1String("diary")) {
        app::DiaryProgram program({.folder = folder.toStdString(), .clock = clock, .zone = zone, .language = QStringLiteral("en")});
        return program.show(QSize(390, 844)) ? reportFirstFrame(program.window()) : 1;
    }
    app::DeskProgram program({.folder = folder.toStdString(), .clock = clock, .zone = zone, .language = QStringLiteral("en")});
    return program.show(QSize(1280, 800)) ? reportFirstFrame(program.window()) : 1;
}

void measureStart(const char* what, const QString& vault, double bareMs)
{
    constexpr int runs = 9;
    std::vector<double> times, memory;
    for (int run = 0; run < runs; ++run) {
        QProcess process;
        QElapsedTimer timer;
        timer.start();
        process.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--start"), QLatin1String(what), vault});
        if (!process.waitForReadyRead(30'000)) {
            std::printf("%s: did not start\n", what);
            return;
        }
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        memory.push_back(process.readAllStandardOutput().simplified().split(' ').last().toDouble());
        process.waitForFinished(30'000);
    }
    std::printf("%-6s start to first frame: median %.0f ms of %d, resident %.0f MB", what, median(times), runs, median(memory));
    if (bareMs > 0)
        std::printf(", %.2f x a bare window", median(times) / bareMs);
    std::printf("\n");
    std::fflush(stdout);
}

double bareStart()
{
    std::vector<double> times;
    for (int run = 0; run < 9; ++run) {
        QProcess process;
        QElapsedTimer timer;
        timer.start();
        process.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--start"), QStringLiteral("bare"), QString()});
        process.waitForReadyRead(30'000);
        times.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        process.waitForFinished(30'000);
    }
    return median(times);
}

/// Answers every question of an entry by the handlers that a tap calls.
void writeEntry(diaryapp::EntryBoard& board, std::vector<double>& taps, double& saved)
{
    QElapsedTimer timer;
    const auto timed = [&](auto&& tap) {
        timer.start();
        tap();
        taps.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    };
    board.open();
    while (board.step() == diaryapp::EntryBoard::Step::Score) {
        for (const diaryapp::SideAnswer& side : board.sides())
            timed([&] { board.answer(side.side, 8); });
        board.next();
    }
    timed([&] { board.tick(board.signLines().first().sign, true); });
    board.signsDone();
    timer.start();
    board.save();
    saved = static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

/// Whether this very entry stands at the desk, not opened by anybody, as the last of so many, and her row in the queue.
bool isInTheQueue(story::Stage& stage, const recovery::CourseId& course, const recovery::EntryId& entry, std::size_t sofar)
{
    desk::Desk& desk = stage.desk().workplace().desk();
    const auto view = desk.course(course);
    const auto queue = desk.queue();
    return view && view->state && view->state->entries.size() == sofar && view->state->entries.contains(entry) && view->summary.unopened == sofar
           && std::any_of(queue.begin(), queue.end(), [&](const triage::Row& row) { return row.course == course; });
}

int measureEntry(const QString& programs)
{
    QTemporaryDir folder;
    const story::Scenario scenario = story::inventedScenario();
    story::Stage stage(scenario, folder.path(), programs + QStringLiteral("/ebbline-hub"), QStringLiteral("en"));
    stage.setTime(scenario.firstDay, 10 * 60);
    if (!stage.setUp() || !stage.treat(scenario.patients.front(), [](story::Scene) {})) {
        std::printf("entry: the stage could not be set\n");
        return 1;
    }
    story::Phone& phone = *stage.phones().front();
    std::vector<double> taps, saves, carried, queued;
    constexpr int entries = 40;
    for (int i = 0; i < entries; ++i) {
        stage.setTime(scenario.firstDay, 12 * 60 + 10 * i);
        double saved = 0;
        QElapsedTimer whole;
        writeEntry(*phone.program->entry(), taps, saved);
        whole.start();
        if (stage.syncPhone(phone).problem) {
            std::printf("entry: the phone could not sync\n");
            return 1;
        }
        carried.push_back(saved + static_cast<double>(whole.nsecsElapsed()) / 1e6);
        if (stage.syncDesk().problem) {
            std::printf("entry: the desk could not sync\n");
            return 1;
        }
        queued.push_back(saved + static_cast<double>(whole.nsecsElapsed()) / 1e6);
        saves.push_back(saved);
        const auto& written = phone.program->entry()->savedEntry();
        if (!written || !isInTheQueue(stage, phone.course, *written, static_cast<std::size_t>(i) + 1)) {
            std::printf("entry: number %d did not reach the queue\n", i + 1);
            return 1;
        }
    }
    std::printf("tap to durable answer:     median %.2f ms, largest %.2f ms of %zu\n", median(taps), largest(taps), taps.size());
    std::printf("save to durable and judged: median %.2f ms, largest %.2f ms of %d\n", median(saves), largest(saves), entries);
    std::printf("save to the hub:           median %.1f ms, largest %.1f ms\n", median(carried), largest(carried));
    std::printf("save to the desk's queue:  median %.1f ms, largest %.1f ms\n", median(queued), largest(queued));
    return 0;
}

}  // namespace

int main(int argc, char* argv[])
{
    QApplication application(argc, argv);
    if (!crypto::initialise())
        return 1;
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 4 && arguments[1] == QLatin1String("--start"))
        return startOne(arguments[2], arguments[3]);
    const QString programs = arguments.size() > 1 ? arguments[1] : QCoreApplication::applicationDirPath();

    QTemporaryDir fresh;
    const double bare = bareStart();
    std::printf("bare   start to first frame: median %.0f ms\n", bare);
    measureStart("diary", fresh.path() + QStringLiteral("/diary"), bare);
    measureStart("desk", fresh.path() + QStringLiteral("/desk"), bare);
    return measureEntry(programs);
}
