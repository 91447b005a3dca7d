// tap_campaign [--kills N] [--seed S]
//
// A child writes an entry on the real view model, tap by tap, and says on a pipe before each tap what the
// draft must be after it, and after each tap that it is done. The parent kills it with signal 9 at a random
// tap, opens the diary and compares: the draft must be the one of the last finished tap, or of the tap that
// was under way. Fails if anything that was typed is lost, or if the kills did not fall where they should.

#include "app/diary/model/entry_board.h"
#include "app/diary/model/words.h"
#include "tests/screens/demo_patient.h"

#include <QApplication>
#include <QProcess>

#include <csignal>
#include <cstdio>
#include <random>
#include <unistd.h>

using namespace ebbline;
using diaryapp::EntryBoard;

namespace {

constexpr int mostTaps = 14;  ///< before the kill

/// A draft and the count of entries as one line.
QByteArray lineOf(patient::Diary& diary, const std::optional<patient::Draft>& draft)
{
    QByteArray line = "entries " + QByteArray::number(static_cast<int>(diary.history().size()));
    if (!draft || !EntryBoard::isBegun(*draft))
        return line + " nothing";
    for (const auto& [stream, score] : draft->entry.scores)
        line += " " + QByteArray::fromStdString(std::string(recovery::word(stream.symptom)) + std::string(recovery::word(stream.side)))
                + "=" + QByteArray::number(score.points());
    for (const auto sign : draft->entry.present)
        line += " +" + QByteArray::number(static_cast<int>(sign));
    line += " no:" + QByteArray::number(static_cast<int>(draft->entry.absent.size()));
    line += " t[" + QByteArray::fromStdString(draft->temperatureText).toHex() + "]";
    line += " n[" + QByteArray::fromStdString(draft->entry.note).toHex() + "]";
    return line;
}

QByteArray lineOf(patient::Diary& diary)
{
    const auto kept = diary.draft();
    return lineOf(diary, kept ? std::optional(*kept) : std::nullopt);
}

void say(char what, const QByteArray& line)
{
    const QByteArray whole = what + line + '\n';
    if (::write(1, whole.constData(), static_cast<std::size_t>(whole.size())) != whole.size())
        ::_exit(3);
}

[[noreturn]] void live(const std::filesystem::path& folder, clock::Instant now, std::uint64_t seed)
{
    const clock::ManualClock clock(now);
    diaryapp::Home home(folder, clock, *aftercare::Zone::find("Europe/Berlin"), crypto::StretchCost{1, 8 * 1024}, {});
    diaryapp::DiarySettings settings(QString::fromStdString(folder.string() + ".ini"));
    if (!home.unlock(bytes::viewOf(screens::DemoPatient::passphrase)))
        ::_exit(4);
    EntryBoard board(home, settings);
    std::mt19937_64 random(seed);
    const auto pick = [&](int count) { return static_cast<int>(random() % static_cast<std::uint64_t>(count)); };
    if (!board.open())
        ::_exit(4);
    say('o', lineOf(home.diary()));
    for (;;) {
        patient::Draft next;  // what the draft must be after the tap
        if (const auto kept = home.diary().draft())
            next = *kept;
        std::function<void()> tap;
        const QString question = board.question();
        switch (board.step()) {
        case EntryBoard::Step::Score:
            if (pick(3) > 0) {
                const int side = 1 + pick(2);
                const int points = pick(11);
                for (const auto symptom : recovery::allSymptoms)
                    if (diaryapp::symptomQuestion(symptom) == question)
                        next.entry.scores.insert_or_assign({symptom, static_cast<recovery::Side>(side)}, *recovery::Score::of(points));
                tap = [&board, side, points] { board.answer(side, points); };
            } else {
                tap = [&board] { board.next(); };
            }
            break;
        case EntryBoard::Step::Signs:
            if (pick(3) > 0) {
                const auto sign = recovery::allSigns[static_cast<std::size_t>(pick(static_cast<int>(recovery::allSigns.size())))];
                next.entry.present.insert(sign);
                next.entry.absent.erase(sign);
                tap = [&board, sign] { board.tick(static_cast<int>(sign), true); };
            } else {
                for (const auto sign : recovery::allSigns)
                    if (!next.entry.present.contains(sign))
                        next.entry.absent.insert(sign);
                tap = [&board] { board.signsDone(); };
            }
            break;
        case EntryBoard::Step::Rest:
            if (const int what = pick(8); what < 4) {
                const QString note = board.note() + QChar(u'a' + pick(26));
                next.entry.note = note.toStdString();
                tap = [&board, note] { board.writeNote(note); };
            } else if (what < 7) {
                const QString text = board.temperature().size() > 3 ? QString() : board.temperature() + QChar(u'3' + pick(5));
                next.temperatureText = text.toStdString();
                tap = [&board, text] { board.typeTemperature(text); };
            } else {
                // Saved, or refused and still there: both are told by what is found.
                next = {};
                tap = [&board] {
                    board.typeTemperature({});
                    board.save();
                };
            }
            break;
        }
        const bool saving = board.step() == EntryBoard::Step::Rest && next == patient::Draft{};
        say(saving ? 's' : 'b', lineOf(home.diary(), next));
        tap();
        const QByteArray found = lineOf(home.diary());
        if (!saving && found != lineOf(home.diary(), next)) {
            say('w', found);
            ::_exit(5);
        }
        say('d', found);
        if (saving && !board.open())
            ::_exit(4);
    }
}

struct Counts {
    int kills = 0, insideTap = 0, betweenTaps = 0, insideSave = 0, taps = 0;
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
        live(words[2].toStdString(), clock::Instant{std::chrono::milliseconds{words[3].toLongLong()}}, words[4].toULongLong());

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
                state = line.isEmpty() ? '?' : line.front();
                if (state == 'o' || state == 'd')
                    last = line.mid(1);
                else
                    begun = line.mid(1);
                done += state == 'd' ? 1 : 0;
            }
        };
        while (done < taps && child.waitForReadyRead(30'000))
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
        const QByteArray found = lineOf(*diary);
        // A save under way has recorded the entry, or has taken the temperature back, or done nothing yet.
        // Recorded means one entry more: a draft that is gone without it is lost.
        const int before = last.split(' ').value(1).toInt();
        const bool saved = state == 's' && found == "entries " + QByteArray::number(before + 1) + " nothing";
        const bool untyped = state == 's' && QByteArray(found).replace("t[]", "") == QByteArray(last).replace(last.mid(last.indexOf("t["), last.indexOf("]", last.indexOf("t[")) - last.indexOf("t[") + 1), "");
        if (found != last && !(state == 'b' && found == begun) && !saved && !untyped) {
            std::printf("FAILED after kill %d (%c)\n  found  %s\n  last   %s\n  begun  %s\n", counts.kills, state, found.constData(),
                        last.constData(), begun.constData());
            return 1;
        }
    }
    std::printf("  taps finished before the kills   %d\n  inside a tap   %d\n  inside a save   %d\n  between two taps   %d\n", counts.taps,
                counts.insideTap, counts.insideSave, counts.betweenTaps);
    // Without these the campaign proves nothing.
    const bool met = counts.insideTap * 10 >= wanted && counts.taps >= wanted;
    std::printf(met ? "nothing that was typed was lost\n" : "FAILED: too few kills fell inside a tap\n");
    return met ? 0 : 1;
}
