// tap_campaign [--kills N] [--seed S]
//
// A child writes entries, corrections and a note to the clinic on the real view models, tap by tap, with ticks taken
// back, steps back and earlier moments among the taps, answers reminders, keeps photographs and takes them back. It says
// on a pipe before each tap what the vault must hold after it, and after each tap that it is done. The parent kills it
// with signal 9 at a random tap, opens the diary and compares: it must hold what it did after the last finished tap, or
// what the tap under way was to leave. Fails if anything that was typed is
// lost, if the kills did not fall where they should, or if in a long run a kind of tap never came.

#include "tests/app/diary/tap_child.h"
#include "tests/screens/demo_patient.h"

#include <QApplication>
#include <QProcess>

#include <csignal>
#include <cstdio>
#include <map>
#include <random>
#include <unistd.h>

using namespace ebbline;

namespace {

constexpr int mostTaps = 14;  ///< before the kill
constexpr int longRun = 200;  ///< kills, from which on each kind of tap has to have come

struct Counts {
    int kills = 0, insideTap = 0, betweenTaps = 0, insideSave = 0, taps = 0;
    std::map<QByteArray, int> kinds;
};

}  // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList words = QApplication::arguments();
    const auto option = [&](const char* name, qulonglong otherwise) {
        const auto place = words.indexOf(QLatin1String(name));
        return place < 0 || place + 1 >= words.size() ? otherwise : words[place + 1].toULongLong();
    };
    if (!crypto::initialise())
        return 2;
    if (words.size() == 5 && words[1] == QLatin1String("--live"))
        taps::live(words[2].toStdString(), clock::Instant{std::chrono::milliseconds{words[3].toLongLong()}}, words[4].toULongLong());

    const int wanted = static_cast<int>(option("--kills", 40));
    const std::uint64_t seed = option("--seed", 20270301);
    std::mt19937_64 random(seed);
    screens::DemoPatient patient;
    patient.joined(QStringLiteral("en")).reset();
    std::printf("tap campaign: %d kills, seed %llu\n", wanted, static_cast<unsigned long long>(seed));
    Counts counts;
    while (counts.kills < wanted) {
        patient.clock().advance(std::chrono::hours(2));  // an attempt cut off is no wrong passphrase; its wait passes
        QProcess child;
        child.setProcessChannelMode(QProcess::SeparateChannels);
        child.start(QApplication::applicationFilePath(),
                    {QStringLiteral("--live"), QString::fromStdString(patient.folder().string()),
                     QString::number(patient.clock().now().time_since_epoch().count()), QString::number(random() >> 1)});
        const int taps = 1 + static_cast<int>(random() % mostTaps);
        QByteArray last, begun;
        char state = 'o';
        int done = 0;
        const auto hear = [&] {
            while (child.canReadLine()) {
                const QByteArray line = child.readLine().trimmed();
                if (line.startsWith('k')) {
                    ++counts.kinds[line.mid(1)];
                    continue;
                }
                state = line.isEmpty() ? '?' : line.front();
                if (state == 'o' || state == 'd')
                    last = line.mid(1);
                else
                    begun = line.mid(1);
                done += state == 'd' ? 1 : 0;
            }
        };
        // Every second one falls where a tap has begun; the others wherever they fall.
        const bool inside = random() % 2 == 0;
        while ((done < taps || (inside && state != 'b' && state != 's')) && child.waitForReadyRead(30'000))
            hear();
        ::usleep(static_cast<useconds_t>(random() % 6'000));
        if (child.state() != QProcess::Running) {
            hear();
            std::printf("FAILED: the child ended by itself (%d), last heard %c %s\n", child.exitCode(), state, begun.constData());
            return 1;
        }
        ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
        child.waitForFinished();
        hear();
        ++counts.kills;
        counts.taps += done;
        counts.insideTap += state == 'b' ? 1 : 0;
        counts.insideSave += state == 's' ? 1 : 0;
        counts.betweenTaps += state == 'd' ? 1 : 0;

        auto diary = patient::Diary::unlock(patient.folder(), bytes::viewOf(screens::DemoPatient::passphrase), patient.clock(), patient.zone());
        if (!diary) {
            std::printf("FAILED: the diary does not open after kill %d: %s\n", counts.kills, diary.error().detail.c_str());
            return 1;
        }
        const QByteArray found = taps::Holds::of(*diary).line();
        // A save under way has recorded the entry, or has taken the temperature back, or done nothing yet.
        // Recorded means one entry more, with what was answered: a draft that is gone without it is lost.
        const bool untyped = state == 's' && QByteArray(found).replace("t[]", "") == QByteArray(last).replace(last.mid(last.indexOf("t["), last.indexOf("]", last.indexOf("t[")) - last.indexOf("t[") + 1), "");
        if (found != last && !((state == 'b' || state == 's') && found == begun) && !untyped) {
            std::printf("FAILED after kill %d (%c)\n  found  %s\n  last   %s\n  begun  %s\n", counts.kills, state, found.constData(),
                        last.constData(), begun.constData());
            return 1;
        }
    }
    std::printf("  taps finished before the kills   %d\n  inside a tap   %d\n  inside a save   %d\n  between two taps   %d\n", counts.taps,
                counts.insideTap, counts.insideSave, counts.betweenTaps);
    // Without these the campaign proves nothing.
    bool met = counts.insideTap * 10 >= wanted && counts.taps >= wanted;
    for (const char* kind : taps::kinds) {
        std::printf("  %s   %d\n", kind, counts.kinds[kind]);
        met = met && (counts.kinds[kind] > 0 || wanted < longRun);
    }
    std::printf(met ? "nothing that was typed was lost\n" : "FAILED: too few kills fell inside a tap, or a kind of tap never came\n");
    return met ? 0 : 1;
}
