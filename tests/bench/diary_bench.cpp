// How smooth the diary is on the page that holds most: every entry of 22 days with photographs under them. Scrolled from end
// to end, frame by frame, without a graphics card, as the tests run.
//
//     diary_bench [entries a day, default 2]
//
// The work of a frame is all that happens between moving the page and the frame that shows it: bindings, polishing,
// synchronising and rendering. Then the start of the program over that same vault, each time in a process of its own, against
// a bare Qt Quick window that is started in turn with it. Limits and last figures: docs/guides/diary_speed.md.

#include "app/fonts/fonts.h"
#include "tests/screens/demo_patient.h"
#include "tests/screens/screen_check.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QQuickItem>

#include <algorithm>
#include <cstdio>
#include <map>

using namespace ebbline;
using screens::DemoPatient;

namespace {

double quantile(std::vector<double> values, double share)
{
    std::sort(values.begin(), values.end());
    const auto at = static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5);
    return values[at];
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

/// Draws one frame now. \returns how long it took, ms.
double drawFrame(QQuickWindow& window)
{
    QElapsedTimer timer;
    timer.start();
    QEvent request(QEvent::UpdateRequest);
    QCoreApplication::sendEvent(&window, &request);
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

QQuickItem* pageArea(QQuickWindow& window)
{
    for (auto* item : screens::visibleItems(window))
        if (item->inherits("QQuickFlickable"))
            return item;
    return nullptr;
}

/// Scrolls the page of the program from its top to its end and back, this many px a frame.
std::vector<double> scroll(QQuickWindow& window, QQuickItem& area, double step)
{
    std::vector<double> frames;
    const double most = area.property("contentHeight").toDouble() - area.height();
    QElapsedTimer timer;
    const auto showAt = [&](double y) {
        timer.start();
        area.setProperty("contentY", y);
        const double moved = static_cast<double>(timer.nsecsElapsed()) / 1e6;
        frames.push_back(moved + drawFrame(window));
    };
    for (double y = 0; y < most; y += step)
        showAt(y);
    for (double y = most; y > 0; y -= step)
        showAt(y);
    return frames;
}

/// Lets go of the pages that were left: without a running loop nothing else does, and the bench would count them all.
void letGo()
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

/// 22 days of entries, three photographs on every second day, one warning that was read.
void live(DemoPatient& patient, app::DiaryProgram& program, int entriesADay)
{
    patient.setOffline(true);
    for (int day = 0; day <= 21; ++day) {
        for (int entry = 0; entry < entriesADay; ++entry) {
            patient.goTo(day, 12 + 2 * entry);
            DemoPatient::tell(program, std::max(0, 5 - day / 3));
            if (program.page() == app::DiaryProgram::Page::warning)
                program.warning()->confirm();
            program.dismissNotice();
            letGo();
        }
        if (day % 2 == 0) {
            patient.goTo(day, 21);
            program.openPhoto();
            for (int view = 0; view < 3; ++view) {
                DemoPatient::aims(program, 0.4);
                program.photo()->keep();
            }
            letGo();
        }
    }
}

/// Says so on standard output once the window has drawn, and ends.
int reportFrame(QQuickWindow& window)
{
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [] {
        std::printf("%.1f\n", residentMegabytes());
        std::fflush(stdout);
        QCoreApplication::exit(0);
    });
    window.update();
    return QApplication::exec();
}

/// In a process of its own: a bare window, the locked diary, or the diary opened before its first frame, so that the day's page
/// with its curves is what is drawn first. The vault stretches its passphrase at the least cost: waiting for that is meant.
int startOne(const QString& what, const QString& folder, qlonglong now)
{
    if (what == QLatin1String("bare")) {
        QQuickWindow window;
        window.resize(390, 844);
        window.show();
        return reportFrame(window);
    }
    app::loadFonts();
    const clock::ManualClock clock{clock::Instant{std::chrono::milliseconds{now}}};
    app::DiaryProgram program({.folder = folder.toStdString(), .clock = clock, .zone = *aftercare::Zone::find("Europe/Berlin"), .language = QStringLiteral("en")});
    if (what == QLatin1String("day"))
        program.locking()->unlock(QString::fromLatin1(DemoPatient::passphrase));
    const bool isThere = program.page() == (what == QLatin1String("day") ? app::DiaryProgram::Page::today : app::DiaryProgram::Page::lock);
    return isThere && program.show(QSize(390, 844)) ? reportFrame(*program.window()) : 1;
}

/// Starts each in turn, so that what slows the machine slows all of them. \returns false if one did not start.
bool measureStarts(DemoPatient& patient)
{
    constexpr int runs = 9;
    const QStringList kinds{QStringLiteral("bare"), QStringLiteral("locked"), QStringLiteral("day")};
    std::map<QString, std::vector<double>> times, memory;
    for (int run = 0; run < runs; ++run) {
        for (const QString& kind : kinds) {
            patient.clock().advance(std::chrono::minutes(1));
            QProcess process;
            QElapsedTimer timer;
            timer.start();
            process.start(QCoreApplication::applicationFilePath(),
                          {QStringLiteral("--start"), kind, QString::fromStdString(patient.folder().string()),
                           QString::number(patient.clock().now().time_since_epoch().count())});
            if (!process.waitForReadyRead(30'000)) {
                std::printf("%s: did not start\n", qPrintable(kind));
                return false;
            }
            times[kind].push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
            memory[kind].push_back(process.readAllStandardOutput().trimmed().toDouble());
            process.waitForFinished(30'000);
        }
    }
    const double bare = quantile(times[kinds.front()], 0.5);
    for (const QString& kind : kinds)
        std::printf("start to first frame, %-6s median %.0f ms of %d, %.2f x a bare window, resident %.0f MB\n", qPrintable(kind),
                    quantile(times[kind], 0.5), runs, quantile(times[kind], 0.5) / bare, quantile(memory[kind], 0.5));
    return true;
}

}  // namespace

int main(int argc, char* argv[])
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QApplication application(argc, argv);
    if (!crypto::initialise())
        return 1;
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 5 && arguments[1] == QLatin1String("--start"))
        return startOne(arguments[2], arguments[3], arguments[4].toLongLong());
    app::loadFonts();
    const int entriesADay = arguments.size() > 1 ? arguments[1].toInt() : 2;
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    if (!program->show(QSize(390, 844)))
        return 1;
    auto& window = *program->window();
    screens::settle(window);
    std::printf("resident, first page:    %.0f MB (with the clinic and the hub of the test in the same process)\n", residentMegabytes());
    live(patient, *program, entriesADay);

    QElapsedTimer opening;
    opening.start();
    program->openHistory();
    drawFrame(window);
    std::printf("history opens in:        %.0f ms, %lld entries and rows of photographs\n", static_cast<double>(opening.nsecsElapsed()) / 1e6,
                static_cast<long long>(program->history()->entries().size()));
    if (!DemoPatient::seesPhotos(*program)) {
        std::printf("the photographs did not come\n");
        return 1;
    }
    screens::settle(window);
    auto* area = pageArea(window);
    if (area == nullptr)
        return 1;
    for (const double step : {24.0, 96.0}) {  // a slow finger and a fast one, px a frame
        const auto frames = scroll(window, *area, step);
        std::printf("work of a frame, %2.0f px:  p50 %.2f ms, p99 %.2f ms, largest %.2f ms of %zu\n", step, quantile(frames, 0.5), quantile(frames, 0.99),
                    quantile(frames, 1), frames.size());
    }
    std::printf("resident, whole history: %.0f MB\n", residentMegabytes());
    program.reset();  // one program at a time has the vault
    return measureStarts(patient) ? 0 : 1;
}
