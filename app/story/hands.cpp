#include "app/story/hands.h"

#include "app/diary/model/words.h"
#include "core/bytes/text.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::story {

namespace {

using diaryapp::EntryBoard;

constexpr int mostSteps = 40;
constexpr int mostWarnings = 5;

/// Which symptom the page asks for, read as a person reads it.
std::optional<recovery::Symptom> asked(const EntryBoard& board)
{
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        if (diaryapp::symptomQuestion(symptom) == board.question())
            return symptom;
    return std::nullopt;
}

Done answerQuestion(EntryBoard& board, const Telling& telling)
{
    const auto symptom = asked(board);
    if (!symptom)
        return fail(Reason::invalidState, "hand: the diary asks what nobody knows: " + board.question().toStdString());
    for (const recovery::Side side : recovery::bothSides)
        if (const auto score = telling.scores.find({*symptom, side}); score != telling.scores.end())
            board.answer(static_cast<int>(side), score->second.points());
    board.next();
    return {};
}

/// Question by question to the last page, with those that come on request.
Done answerAll(EntryBoard& board, const Telling& telling)
{
    for (int step = 0; step < mostSteps; ++step) {
        switch (board.step()) {
        case EntryBoard::Step::Score:
            if (const Done answered = answerQuestion(board, telling); !answered)
                return answered;
            break;
        case EntryBoard::Step::Signs:
            for (const recovery::Sign sign : telling.signs)
                board.tick(static_cast<int>(sign), true);
            board.signsDone();
            break;
        case EntryBoard::Step::Rest:
            if (!board.isMoreOffered())
                return {};
            board.askMore();
            break;
        }
    }
    return fail(Reason::invalidState, "hand: the questions do not end");
}

bool isWhatWasTold(const recovery::Entry& entry, const Telling& telling)
{
    recovery::Signs absent;
    for (const recovery::Sign sign : recovery::allSigns)
        if (!telling.signs.contains(sign))
            absent.insert(sign);
    const bool sameTemperature = telling.celsius ? entry.temperature && entry.temperature->celsius() == *telling.celsius : !entry.temperature;
    return entry.scores == telling.scores && entry.present == telling.signs && entry.absent == absent && sameTemperature && entry.note == telling.note;
}

bool isLoud(const triage::Finding& finding)
{
    return finding.urgency <= recovery::Urgency::callNow;
}

}  // namespace

Result<patient::Saved> writeByHand(app::DiaryProgram& phone, const Telling& telling)
{
    EntryBoard& board = *phone.entry();
    const auto before = board.savedEntry();
    phone.openEntry();
    if (phone.page() != app::DiaryProgram::Page::entry)
        return fail(Reason::invalidState, "hand: no page for an entry opens");
    if (const Done answered = answerAll(board, telling); !answered)
        return fail(answered.error());
    if (telling.celsius)
        board.writeTemperature(QLocale().toString(*telling.celsius, 'f', 1));
    board.writeNote(QString::fromStdString(telling.note));
    board.save();
    if (!board.savedEntry() || board.savedEntry() == before)
        return fail(Reason::invalidState, "hand: the entry is not saved: " + board.problem().toStdString());
    const auto history = phone.home().diary().history();
    const auto kept = std::find_if(history.begin(), history.end(), [&](const auto& view) { return view.history.current().id == *board.savedEntry(); });
    if (kept == history.end() || !isWhatWasTold(kept->history.current(), telling))
        return fail(Reason::invalidState, "hand: the diary keeps another entry than was tapped in");
    return patient::Saved{*board.savedEntry(), board.findings()};
}

Result<int> answerReminders(app::DiaryProgram& phone, bool done)
{
    diaryapp::TodayBoard& board = *phone.today();
    board.refresh();
    int answered = 0;
    const QList<diaryapp::DayLine> due = board.due();
    for (const diaryapp::DayLine& line : due) {
        if (line.isEntry)
            continue;
        if (done)
            board.done(line.key);
        else
            board.notDone(line.key);
        const QList<diaryapp::DayLine> left = board.due();
        if (std::ranges::find(left, line.key, &diaryapp::DayLine::key) != left.end())
            return fail(Reason::invalidState, "hand: a reminder that was answered is still due");
        ++answered;
    }
    return answered;
}

Done readWarning(app::DiaryProgram& phone)
{
    // One that stands from before comes next.
    for (int read = 0; read < mostWarnings && phone.page() == app::DiaryProgram::Page::warning; ++read)
        phone.warning()->confirm();
    return phone.home().diary().today().standing.empty() ? Done{} : Done(fail(Reason::invalidState, "hand: a warning that was read still stands"));
}

Done askByHand(app::DiaryProgram& phone)
{
    phone.dismissNotice();
    phone.askNow();
    return waitFor([&] { return !phone.notice().isEmpty(); }) ? Done{} : Done(fail(Reason::unreachable, "hand: asking has no end"));
}

QString stateShown(app::DiaryProgram& phone, const recovery::EntryId& entry)
{
    const QString key = QString::fromStdString(bytes::toHex(entry.view()));
    for (const diaryapp::EntryLine& line : phone.history()->entries())
        if (line.key == key)
            return line.state;
    return {};
}

Result<Answered> answerByHand(app::DeskProgram& desk, const triage::Row& row)
{
    const QString course = deskapp::keyOf(row.course);
    const QString note = QStringLiteral("Seen the same day.");
    constexpr int treated = static_cast<int>(records::Outcome::treatedInClinic);
    Answered answered;
    desk.openQueue();
    if (std::any_of(row.findings.begin(), row.findings.end(), isLoud)) {
        desk.queue()->take(course);
        desk.call()->start(course);
        desk.call()->setNote(QStringLiteral("Comes in today."));
        desk.call()->reached();
        ++answered.calls;
        desk.queue()->startClosing(course);
        desk.queue()->close(treated, note);
        ++answered.closedAtTheQueue;
    }
    desk.openCourse(course);
    deskapp::CourseBoard& page = *desk.course();
    for (const triage::Finding& finding : row.findings) {
        const QString key = QString::fromStdString(finding.key);
        const auto view = desk.workplace().desk().course(row.course);
        if (!view)
            return fail(view.error());
        const auto now = std::find_if(view->findings.begin(), view->findings.end(), [&](const auto& each) { return each.key == finding.key; });
        if (now == view->findings.end() || !now->open)
            continue;
        if (isLoud(finding)) {
            page.startClosing(key);
            page.close(treated, note);
            ++answered.closedOnThePage;
        } else if (finding.acts.empty()) {
            page.see(key);
            ++answered.seen;
        }
    }
    const auto after = desk.workplace().desk().course(row.course);
    if (!after || after->summary.unopened > 0)
        return fail(Reason::invalidState, "hand: a course was shown, and its entries are not opened");
    for (const triage::Finding& finding : row.findings) {
        const auto now = std::find_if(after->findings.begin(), after->findings.end(), [&](const auto& each) { return each.key == finding.key; });
        if (now == after->findings.end() || now->acts.empty() || (isLoud(finding) && now->open))
            return fail(Reason::invalidState, "hand: what was done about " + finding.key + " is not kept");
    }
    return answered;
}

}  // namespace ebbline::story
