#include "tests/app/diary/tap_child.h"

#include "app/diary/model/entry_board.h"
#include "app/diary/model/history_board.h"
#include "app/diary/model/photo_board.h"
#include "app/diary/model/picture_board.h"
#include "app/diary/model/today_board.h"
#include "app/diary/model/words.h"
#include "app/face/portrait.h"
#include "tests/screens/demo_patient.h"

#include <QCoreApplication>
#include <QCryptographicHash>

#include <cmath>
#include <random>
#include <unistd.h>

namespace ebbline::taps {

using diaryapp::EntryBoard;

std::string scoresOf(const recovery::Entry& entry)
{
    std::string text;
    for (const auto& [stream, score] : entry.scores)
        text += std::string(recovery::word(stream.symptom)) + std::string(recovery::word(stream.side)) + "=" + std::to_string(score.points()) + ";";
    return text;
}

std::uint64_t hashOf(const recovery::Entry& entry)
{
    return QCryptographicHash::hash(QByteArray::fromStdString(scoresOf(entry)), QCryptographicHash::Sha256).left(16).toHex().left(15).toULongLong(nullptr, 16);
}

Holds Holds::of(const patient::Diary& diary)
{
    Holds holds;
    for (const patient::EntryView& view : diary.history()) {
        ++holds.entries;
        holds.versions += static_cast<int>(view.history.versions.size());
        holds.scores += hashOf(view.history.current());
    }
    holds.note = diary.noteDraft();
    if (const auto kept = diary.correctionDraft())
        holds.correction = scoresOf(kept->entry);
    const patient::Today today = diary.today();
    for (const patient::ReminderView& view : today.dueNow)
        if (view.reminder.kind != aftercare::InstructionKind::diaryEntry)
            holds.due.insert(view.reminder.key);
    for (const patient::ReminderView& view : today.answeredToday)
        if (view.reminder.kind != aftercare::InstructionKind::diaryEntry)
            holds.answered.emplace(view.reminder.key, static_cast<int>(*view.answer));
    holds.photos = static_cast<int>(diary.photos().size());
    if (const auto kept = diary.draft())
        holds.draft = *kept;
    return holds;
}

QByteArray Holds::line() const
{
    QByteArray line = "entries " + QByteArray::number(entries) + " versions " + QByteArray::number(versions) + " scores " + QByteArray::number(static_cast<qulonglong>(scores))
                      + " m[" + QByteArray::fromStdString(note).toHex() + "] c[" + QByteArray::fromStdString(correction) + "] due[";
    for (const std::string& key : due)
        line += QByteArray::fromStdString(key) + ";";
    line += "] answered[";
    for (const auto& [key, answer] : answered)
        line += QByteArray::fromStdString(key) + "=" + QByteArray::number(answer) + ";";
    line += "] photos " + QByteArray::number(photos);
    if (!draft || !EntryBoard::isBegun(*draft))
        return line + " nothing";
    line += " p:" + QByteArray::number(draft->step) + " at:" + QByteArray::number(static_cast<qlonglong>(draft->entry.at.at.time_since_epoch().count()));
    line += " " + QByteArray::fromStdString(scoresOf(draft->entry));
    for (const auto sign : draft->entry.present)
        line += " +" + QByteArray::number(static_cast<int>(sign));
    line += " no:" + QByteArray::number(static_cast<int>(draft->entry.absent.size()));
    line += " t[" + QByteArray::fromStdString(draft->temperatureText).toHex() + "]";
    line += " n[" + QByteArray::fromStdString(draft->entry.note).toHex() + "]";
    return line;
}

namespace {

constexpr int steps = 7;       ///< of an entry: five questions, the signs, the rest
constexpr int mostPhotos = 4;  ///< then one is taken back
constexpr int pictureSide = 720;

void say(char what, const QByteArray& line)
{
    const QByteArray whole = what + line + '\n';
    if (::write(1, whole.constData(), static_cast<std::size_t>(whole.size())) != whole.size())
        ::_exit(3);
}

/// What a tap does, and what must be held after it.
struct Tap {
    const char* kind = "";
    std::function<void()> act;
    Holds after;
    bool saves = false;  ///< and may be refused
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
        say('o', now().line());
        for (;;) {
            const Tap tap = next();
            const QByteArray wanted = tap.after.line();
            say('k', tap.kind);
            say(tap.saves ? 's' : 'b', wanted);
            tap.act();
            const QByteArray found = now().line();
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
    Holds now() { return Holds::of(m_home.diary()); }
    /// What is held now, but for the entry that is being typed.
    Holds with(const patient::Draft& draft)
    {
        Holds after = now();
        after.draft = draft;
        return after;
    }
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
        switch (pick(14)) {
        case 0: return noteToClinic();
        case 1: return earlier();
        case 2: return correct();
        case 3: return photograph();
        case 4:
        case 5:
            if (!now().due.empty())
                return answerReminder();
            break;
        case 6:
            if (place() > 0 && !m_board.moment()->isAsking()) {
                auto after = draft();
                --after.step;
                return {"back", [this] { m_board.back(); }, with(after)};
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
        Holds after = now();
        after.note = text.toStdString();
        return {"note", [this, text] { m_history.setNoteDraft(text); }, after};
    }

    /// Goes on with the correction that is typed, or begins one of the newest entry; saves it now and then.
    Tap correct()
    {
        const auto kept = m_home.diary().correctionDraft();
        const auto history = m_home.diary().history();
        if (history.empty())
            return noteToClinic();
        recovery::Entry entry = kept ? kept->entry : history.front().history.current();
        if (!m_correction.amend(entry.id))
            ::_exit(4);
        Holds after = now();
        if (kept && pick(3) == 0) {
            for (const patient::EntryView& view : history)
                if (view.history.current().id == entry.id)
                    after.scores += hashOf(entry) - hashOf(view.history.current());
            ++after.versions;
            after.correction.clear();
            return {"save correction", [this] { m_correction.save(); }, after};
        }
        const int side = 1 + pick(2);
        const int points = pick(11);
        for (const auto symptom : recovery::allSymptoms)
            if (diaryapp::symptomQuestion(symptom) == m_correction.question())
                entry.scores.insert_or_assign({symptom, static_cast<recovery::Side>(side)}, *recovery::Score::of(points));
        after.correction = scoresOf(entry);
        return {"correct", [this, side, points] { m_correction.answer(side, points); }, after};
    }

    Tap answerReminder()
    {
        Holds after = now();
        const std::string key = *after.due.begin();
        const QString line = QString::fromStdString(key);
        after.due.erase(key);
        switch (pick(3)) {
        case 0: return {"later", [this, line] { m_today.later(line, 0); }, after};
        case 1:
            after.answered[key] = static_cast<int>(records::ReminderAnswer::notDone);
            return {"not done", [this, line] { m_today.notDone(line); }, after};
        default:
            after.answered[key] = static_cast<int>(records::ReminderAnswer::done);
            return {"done", [this, line] { m_today.done(line); }, after};
        }
    }

    /// Keeps a picture that was taken before this touch; takes the oldest back where there are some.
    Tap photograph()
    {
        Holds after = now();
        if (after.photos >= mostPhotos) {
            --after.photos;
            if (!m_picture.open(diaryapp::photoLine(m_home.diary().photos().front(), m_home.now(), m_home.zone()).key))
                ::_exit(4);
            m_picture.askRemove();
            return {"take back", [this] { m_picture.remove(); }, after};
        }
        ++after.photos;
        m_photo.begin({});
        m_photo.useFrame(face::portrait(recovery::ChartView::front, pictureSide));
        while (m_photo.stage() == diaryapp::PhotoBoard::Stage::Working)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
        return {"photo", [this] { m_photo.keep(); }, after};
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
        return {"earlier", [&moment, goesOn] { goesOn ? moment.chooseTime(moment.time() + 1) : moment.choose(); }, with(after)};
    }

    Tap score()
    {
        auto after = draft();
        if (pick(3) == 0) {
            ++after.step;
            return {"next", [this] { m_board.next(); }, with(after)};
        }
        const int side = 1 + pick(2);
        const int points = pick(11);
        for (const auto symptom : recovery::allSymptoms)
            if (diaryapp::symptomQuestion(symptom) == m_board.question())
                after.entry.scores.insert_or_assign({symptom, static_cast<recovery::Side>(side)}, *recovery::Score::of(points));
        return {"answer", [this, side, points] { m_board.answer(side, points); }, with(after)};
    }

    Tap signs()
    {
        auto after = draft();
        if (pick(3) == 0) {
            for (const auto sign : recovery::allSigns)
                if (!after.entry.present.contains(sign))
                    after.entry.absent.insert(sign);
            ++after.step;
            return {"signs done", [this] { m_board.signsDone(); }, with(after)};
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
        return {untick ? "untick" : "tick", [this, sign, untick] { m_board.tick(static_cast<int>(sign), !untick); }, with(after)};
    }

    Tap rest()
    {
        auto after = draft();
        if (const int what = pick(8); what < 4) {
            const QString words = m_board.note() + QChar(u'a' + pick(26));
            after.entry.note = words.toStdString();
            return {"words", [this, words] { m_board.writeNote(words); }, with(after)};
        } else if (what < 7) {
            const QString text = m_board.temperature().size() > 3 ? QString() : m_board.temperature() + QChar(u'3' + pick(5));
            after.temperatureText = text.toStdString();
            return {"temperature", [this, text] { m_board.typeTemperature(text); }, with(after)};
        }
        // Saved, or refused and still there: both are told by what is found.
        const auto save = [this] {
            m_board.typeTemperature({});
            m_board.save();
        };
        Holds saved = now();
        ++saved.entries;
        ++saved.versions;
        saved.scores += hashOf(after.entry);
        saved.draft.reset();
        return {"save", save, saved, true};
    }

    const clock::ManualClock m_clock;
    diaryapp::Home m_home;
    diaryapp::DiarySettings m_settings;
    diaryapp::PhotoShelf m_shelf{m_home};
    EntryBoard m_board{m_home, m_settings};
    EntryBoard m_correction{m_home, m_settings};
    diaryapp::HistoryBoard m_history{m_home, m_settings, m_shelf};
    diaryapp::TodayBoard m_today{m_home, m_settings};
    diaryapp::PhotoBoard m_photo{m_home};
    diaryapp::PictureBoard m_picture{m_home, m_shelf};
    std::mt19937_64 m_random;
};

}  // namespace

void live(const std::filesystem::path& folder, clock::Instant now, std::uint64_t seed)
{
    Child(folder, now, seed).live();
}

}  // namespace ebbline::taps
