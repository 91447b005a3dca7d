// tap_campaign [--kills N] [--seed S]
//
// A child writes an entry and a note to the clinic on the real view models, tap by tap, with ticks taken back, steps
// back and earlier moments among the taps, and says on a pipe before each tap what the drafts must be after it, and
// after each tap that it is done. The parent kills it with signal 9 at a random tap, opens the diary and compares: the
// drafts must be those of the last finished tap, or of the tap that was under way. Fails if anything that was typed is
// lost, if the kills did not fall where they should, or if in a long run a kind of tap never came.

#include "app/diary/model/entry_board.h"
#include "app/diary/model/history_board.h"
#include "app/diary/model/words.h"
#include "tests/screens/demo_patient.h"

#include <QApplication>
#include <QProcess>

#include <cmath>
#include <csignal>
#include <cstdio>
#include <map>
#include <random>
#include <unistd.h>

using namespace ebbline;
using diaryapp::EntryBoard;

namespace {

constexpr int mostTaps = 14;  ///< before the kill
constexpr int longRun = 200;  ///< kills, from which on each kind of tap has to have come
constexpr int steps = 7;      ///< of an entry: five questions, the signs, the rest
constexpr const char* kinds[] = {"answer", "next", "tick", "untick", "signs done", "words", "temperature", "save", "back", "earlier", "note"};

/// Both drafts and the count of entries as one line.
QByteArray lineOf(patient::Diary& diary, const std::optional<patient::Draft>& draft, const std::string& noteToClinic)
{
    QByteArray line = "entries " + QByteArray::number(static_cast<int>(diary.history().size())) + " m[" + QByteArray::fromStdString(noteToClinic).toHex() + "]";
    if (!draft || !EntryBoard::isBegun(*draft))
        return line + " nothing";
    line += " p:" + QByteArray::number(draft->step) + " at:" + QByteArray::number(static_cast<qlonglong>(draft->entry.at.at.time_since_epoch().count()));
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
    return lineOf(diary, kept ? std::optional(*kept) : std::nullopt, diary.noteDraft());
}

void say(char what, const QByteArray& line)
{
    const QByteArray whole = what + line + '\n';
    if (::write(1, whole.constData(), static_cast<std::size_t>(whole.size())) != whole.size())
        ::_exit(3);
}

/// What a tap does, and what the drafts must be after it.
struct Tap {
    const char* kind = "";
    std::function<void()> act;
    std::optional<patient::Draft> entry;  ///< empty: as it was
    std::optional<std::string> note;      ///< empty: as it was
    bool saves = false;
};

class Child {
public:
    Child(const std::filesystem::path& folder, clock::Instant now, std::uint64_t seed)
        : m_clock(now), m_home(folder, m_clock, *aftercare::Zone::find("Europe/Berlin"), crypto::StretchCost{1, 8 * 1024}, {}),
          m_settings(QString::fromStdString(folder.string() + ".ini")), m_random(seed)
    {
    }

    [[noreturn]] void live()
    {
        if (!m_home.unlock(bytes::viewOf(screens::DemoPatient::passphrase)) || !m_board.open())
            ::_exit(4);
        say('o', lineOf(m_home.diary()));
        for (;;) {
            const Tap tap = next();
            const auto kept = m_home.diary().draft();
            const auto after = tap.entry ? tap.entry : kept ? std::optional(*kept) : std::nullopt;
            const QByteArray wanted = lineOf(m_home.diary(), after, tap.note.value_or(m_home.diary().noteDraft()));
            say('k', tap.kind);
            say(tap.saves ? 's' : 'b', wanted);
            tap.act();
            const QByteArray found = lineOf(m_home.diary());
            if (!tap.saves && found != wanted) {
                say('w', found + " wanted " + wanted);
                ::_exit(5);
            }
            say('d', found);
            if (tap.saves && !m_board.open())
                ::_exit(4);
        }
    }

private:
    int pick(int count) { return static_cast<int>(m_random() % static_cast<std::uint64_t>(count)); }
    int place() const { return static_cast<int>(std::lround(m_board.share() * steps)) - 1; }

    /// What is kept now, at the question in sight and about the moment that stands.
    patient::Draft draft()
    {
        patient::Draft draft;
        if (const auto kept = m_home.diary().draft())
            draft = *kept;
        draft.step = place();
        draft.entry.at = m_board.moment()->at();
        return draft;
    }

    Tap next()
    {
        switch (pick(10)) {
        case 0: return noteToClinic();
        case 1: return earlier();
        case 2:
            if (place() > 0 && !m_board.moment()->isAsking()) {
                auto after = draft();
                --after.step;
                return {"back", [this] { m_board.back(); }, after, {}};
            }
            break;
        default: break;
        }
        switch (m_board.step()) {
        case EntryBoard::Step::Score: return score();
        case EntryBoard::Step::Signs: return signs();
        case EntryBoard::Step::Rest: break;
        }
        return rest();
    }

    Tap noteToClinic()
    {
        const QString text = m_history.noteDraft().size() > 8 ? QString() : m_history.noteDraft() + QChar(u'a' + pick(26));
        return {"note", [this, text] { m_history.setNoteDraft(text); }, {}, text.toStdString()};
    }

    /// Half an hour earlier than what stands, or the half hour before it; at the treatment there is nothing before.
    Tap earlier()
    {
        auto after = draft();
        auto& moment = *m_board.moment();
        const clock::Moment at = moment.at();
        const bool goesOn = moment.isChoosing() && moment.time() + 1 < moment.times().size();
        const int minute = at.minuteOfDay() - (goesOn ? 30 : at.minuteOfDay() % 30);
        after.entry.at = m_home.zone().moment(m_home.zone().instantOf(at.day(), std::chrono::minutes(minute)));
        after.entry.recordedAt = m_home.now();
        return {"earlier", [&moment, goesOn] { goesOn ? moment.chooseTime(moment.time() + 1) : moment.choose(); }, after, {}};
    }

    Tap score()
    {
        auto after = draft();
        if (pick(3) == 0) {
            ++after.step;
            return {"next", [this] { m_board.next(); }, after, {}};
        }
        const int side = 1 + pick(2);
        const int points = pick(11);
        for (const auto symptom : recovery::allSymptoms)
            if (diaryapp::symptomQuestion(symptom) == m_board.question())
                after.entry.scores.insert_or_assign({symptom, static_cast<recovery::Side>(side)}, *recovery::Score::of(points));
        return {"answer", [this, side, points] { m_board.answer(side, points); }, after, {}};
    }

    Tap signs()
    {
        auto after = draft();
        if (pick(3) == 0) {
            for (const auto sign : recovery::allSigns)
                if (!after.entry.present.contains(sign))
                    after.entry.absent.insert(sign);
            ++after.step;
            return {"signs done", [this] { m_board.signsDone(); }, after, {}};
        }
        auto sign = recovery::allSigns[static_cast<std::size_t>(pick(static_cast<int>(recovery::allSigns.size())))];
        const bool untick = !after.entry.present.empty() && pick(2) == 0;
        if (untick)
            sign = *after.entry.present.begin();
        after.entry.absent.erase(sign);
        if (untick)
            after.entry.present.erase(sign);
        else
            after.entry.present.insert(sign);
        return {untick ? "untick" : "tick", [this, sign, untick] { m_board.tick(static_cast<int>(sign), !untick); }, after, {}};
    }

    Tap rest()
    {
        auto after = draft();
        if (const int what = pick(8); what < 4) {
            const QString words = m_board.note() + QChar(u'a' + pick(26));
            after.entry.note = words.toStdString();
            return {"words", [this, words] { m_board.writeNote(words); }, after, {}};
        } else if (what < 7) {
            const QString text = m_board.temperature().size() > 3 ? QString() : m_board.temperature() + QChar(u'3' + pick(5));
            after.temperatureText = text.toStdString();
            return {"temperature", [this, text] { m_board.typeTemperature(text); }, after, {}};
        }
        // Saved, or refused and still there: both are told by what is found.
        const auto save = [this] {
            m_board.typeTemperature({});
            m_board.save();
        };
        return {"save", save, patient::Draft{}, {}, true};
    }

    const clock::ManualClock m_clock;
    diaryapp::Home m_home;
    diaryapp::DiarySettings m_settings;
    diaryapp::PhotoShelf m_shelf{m_home};
    EntryBoard m_board{m_home, m_settings};
    diaryapp::HistoryBoard m_history{m_home, m_settings, m_shelf};
    std::mt19937_64 m_random;
};

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
        Child(words[2].toStdString(), clock::Instant{std::chrono::milliseconds{words[3].toLongLong()}}, words[4].toULongLong()).live();

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
        const bool saved = state == 's' && found == "entries " + QByteArray::number(before + 1) + ' ' + last.split(' ').value(2) + " nothing";
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
    bool met = counts.insideTap * 10 >= wanted && counts.taps >= wanted;
    for (const char* kind : kinds) {
        std::printf("  %s   %d\n", kind, counts.kinds[kind]);
        met = met && (counts.kinds[kind] > 0 || wanted < longRun);
    }
    std::printf(met ? "nothing that was typed was lost\n" : "FAILED: too few kills fell inside a tap, or a kind of tap never came\n");
    return met ? 0 : 1;
}
