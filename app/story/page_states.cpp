#include "app/story/page_states.h"

#include "app/story/sight.h"

#include <QCoreApplication>
#include <QHash>
#include <QMetaEnum>

namespace ebbline::story {

namespace {

using States = QHash<QString, QStringList>;

const States& deskStates()
{
    static const States states{
        {QStringLiteral("treatment"), {QStringLiteral("patient"), QStringLiteral("threads"), QStringLiteral("anaesthetic"), QStringLiteral("care")}},
        {QStringLiteral("pairing"), {QStringLiteral("choice"), QStringLiteral("code"), QStringLiteral("digits"), QStringLiteral("linked")}},
        {QStringLiteral("followUp"), {QStringLiteral("blank"), QStringLiteral("written"), QStringLiteral("recorded")}}};
    return states;
}

const States& phoneStates()
{
    static const States states{
        {QStringLiteral("join"), {QStringLiteral("code"), QStringLiteral("digits")}},
        {QStringLiteral("today"), {QStringLiteral("due"), QStringLiteral("next"), QStringLiteral("keep")}},
        {QStringLiteral("entry"), {QStringLiteral("scores"), QStringLiteral("signs"), QStringLiteral("rest")}}};
    return states;
}

template <typename Program>
QStringList everyStateOf(const States& states)
{
    QStringList all;
    const auto pages = QMetaEnum::fromType<typename Program::Page>();
    for (int i = 0; i < pages.keyCount(); ++i) {
        const auto page = QString::fromLatin1(pages.key(i));
        const auto found = states.find(page);
        if (found == states.end())
            all << page;
        else
            for (const QString& state : *found)
                all << page + QLatin1Char(' ') + state;
    }
    return all;
}

/// Of a page with states: this one if it holds.
void add(QStringList& shown, const QString& page, const char* state, bool holds)
{
    if (holds)
        shown << page + QLatin1Char(' ') + QLatin1String(state);
}

QString heading(const char* words)
{
    return QCoreApplication::translate("TodayPage", words);
}

}  // namespace

QStringList everyDeskState()
{
    return everyStateOf<app::DeskProgram>(deskStates());
}

QStringList everyPhoneState()
{
    return everyStateOf<app::DiaryProgram>(phoneStates());
}

QString dueHeading()
{
    return heading("Now");
}

QString nextHeading()
{
    return heading("Next");
}

QString keepHeading()
{
    return heading("To keep today");
}

QStringList statesShown(app::DeskProgram& program)
{
    using Page = app::DeskProgram::Page;
    const QString page = program.pageName();
    QStringList shown;
    if (program.page() == Page::treatment) {
        const deskapp::TreatmentEditor& editor = *program.treatment();
        add(shown, page, "patient", editor.step() == 0);
        add(shown, page, "threads", editor.step() == 1 && !editor.tracks().isEmpty() && !editor.lot().isEmpty());
        // Without a weight there is no share of a maximum.
        add(shown, page, "anaesthetic",
            editor.step() == 2 && isInSight(program.window(), editor.doseGiven()) && isInSight(program.window(), editor.doseShare())
                && isInSight(program.window(), editor.doseMaximum()));
        add(shown, page, "care", editor.step() == 3 && editor.missing().isEmpty());
    } else if (program.page() == Page::pairing) {
        const deskapp::PairingBoard& board = *program.pairing();
        add(shown, page, "choice", board.isChoosing() && board.protocols().size() > 1);
        add(shown, page, "code", board.isCodeShown() && isInSight(program.window(), board.typedCode()));
        add(shown, page, "digits", board.isComparing() && isInSight(program.window(), board.number()));
        add(shown, page, "linked", board.isLinked());
    } else if (program.page() == Page::followUp) {
        const deskapp::FollowUpEditor& editor = *program.followUp();
        add(shown, page, "blank", !editor.missing().isEmpty());
        add(shown, page, "written", editor.missing().isEmpty() && editor.recordedBy().isEmpty());
        add(shown, page, "recorded", !editor.recordedBy().isEmpty());
    } else {
        shown << page;
    }
    return shown;
}

QStringList statesShown(app::DiaryProgram& program)
{
    using Page = app::DiaryProgram::Page;
    using Stage = diaryapp::JoinBoard::Stage;
    using Step = diaryapp::EntryBoard::Step;
    const QString page = program.pageName();
    QStringList shown;
    if (program.page() == Page::join) {
        const diaryapp::JoinBoard& board = *program.joining();
        add(shown, page, "code", board.stage() == Stage::Code);
        add(shown, page, "digits", board.stage() == Stage::Compare && isInSight(program.window(), board.number()));
    } else if (program.page() == Page::today) {
        add(shown, page, "due", isInSight(program.window(), dueHeading()));
        add(shown, page, "next", isInSight(program.window(), nextHeading()));
        add(shown, page, "keep", isInSight(program.window(), keepHeading()));
    } else if (program.page() == Page::entry) {
        const Step step = program.entry()->step();
        add(shown, page, "scores", step == Step::Score);
        add(shown, page, "signs", step == Step::Signs);
        add(shown, page, "rest", step == Step::Rest);
    } else {
        shown << page;
    }
    return shown;
}

}  // namespace ebbline::story
