// The day, what was written, and what was said both ways: never ahead of the facts.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QFile>

#include <algorithm>

using namespace ebbline;
using recovery::Sign;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

QStringList titlesOf(const QList<diaryapp::DayLine>& lines)
{
    QStringList titles;
    for (const auto& line : lines)
        titles << line.title;
    return titles;
}

}  // namespace

TEST_CASE("the day counts from the day of the treatment, by the wall clock", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto dayAt = [&](int day, int hour, int minute) {
        patient.goTo(day, hour, minute);
        program->openToday();
        return program->pageTitle();
    };
    CHECK(dayAt(0, 23, 59) == QLatin1String("Day 0"));
    CHECK(dayAt(1, 0, 1) == QLatin1String("Day 1"));
    CHECK(dayAt(20, 12, 0) == QLatin1String("Day 20"));
    CHECK(program->today()->followUp() == QLatin1String("Follow-up visit: 22 March, 10:00 AM"));
}

TEST_CASE("one page names one time for the follow-up, or the day alone where no time is agreed", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto visitLine = [&] {
        program->openToday();
        for (const auto& line : program->today()->next())
            if (line.title == QLatin1String("Your follow-up visit"))
                return line.when;
        return QString();
    };
    patient.goTo(20, 22);
    CHECK(visitLine() == QLatin1String("tomorrow 10:00 AM"));
    CHECK(program->today()->visitMoved().isEmpty());

    patient.agrees({program->home().diary().course().treated.day() + std::chrono::days(25), {}});
    program->syncNow();
    patient.goTo(24, 22);
    CHECK(visitLine() == QLatin1String("26 March"));
    CHECK(program->today()->followUp() == QLatin1String("Follow-up visit: 26 March"));
    CHECK(program->today()->visitMoved().startsWith(QLatin1String("Your clinic moved the visit. Before, it was: ")));
    CHECK(program->today()->visitMoved().contains(QLatin1String("10:00")));
}

TEST_CASE("what is usual is said with its ground", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto& band = program->home().diary().course().protocol.band;
    const auto swelling = band.inner(recovery::Symptom::swelling, 0);
    const auto pain = band.inner(recovery::Symptom::pain, 0);
    CHECK(program->today()->usual()
          == QStringLiteral("Usual today, of 10: Swelling %1 to %2, Pain %3 to %4.").arg(swelling.low).arg(swelling.high).arg(pain.low).arg(pain.high));
    REQUIRE(band.provenance().assumption);
    CHECK(program->today()->usualGround().contains(QLatin1String("an assumption")));
}

TEST_CASE("an entry has three states, and each is shown only once it is true", "[diary][states]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    const auto states = [&] { return program->today()->sent() + QLatin1Char('|') + program->history()->entries().first().state; };
    CHECK(program->today()->sent() == QLatin1String("Nothing is written down yet."));

    patient.setOffline(true);
    DemoPatient::tell(*program, 3);
    CHECK(states() == QStringLiteral("1 entry is saved on this phone, not with the clinic yet. If it is urgent, call.|Saved on this phone"));

    // The hub has it: that alone proves nothing.
    patient.setOffline(false);
    program->syncNow();
    CHECK(program->history()->entries().first().state == QLatin1String("Saved on this phone"));

    patient.clock().advance(std::chrono::minutes(20));
    patient.sends();
    program->syncNow();
    CHECK(program->history()->entries().first().state.startsWith(QLatin1String("On the clinic's computer since today ")));
    CHECK(program->today()->sent().endsWith(QLatin1String("Nobody has opened it yet.")));

    patient.opens();
    CHECK(program->today()->sent().endsWith(QLatin1String("Nobody has opened it yet.")));
    program->syncNow();
    CHECK(program->history()->entries().first().state.startsWith(QLatin1String("Opened by Dr Mara Lindqvist, today ")));
    CHECK(program->today()->sent().startsWith(QLatin1String("Your last entry was opened by Dr Mara Lindqvist")));
}

TEST_CASE("a correction is on this phone only, although its first version was opened", "[diary][states]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 3);
    patient.opens();
    program->syncNow();
    REQUIRE(program->history()->entries().first().state.startsWith(QLatin1String("Opened by")));

    patient.setOffline(true);
    program->amend(program->history()->entries().first().key);
    program->entry()->answer(1, 4);
    program->entry()->save();

    const auto state = [&] { return program->history()->entries().first().state; };
    CHECK(state().startsWith(QLatin1String("Saved on this phone. Dr Mara Lindqvist opened what you wrote before, today ")));
    CHECK(state().endsWith(QLatin1String("Nobody has opened your correction yet.")));
    CHECK(program->history()->entries().first().marks.startsWith(QLatin1String("Corrected today ")));
    CHECK(program->today()->sent().contains(QLatin1String("not with the clinic yet")));

    // With the clinic and not opened: both are said, and neither is said of the other.
    patient.setOffline(false);
    program->syncNow();
    patient.clock().advance(std::chrono::minutes(20));
    patient.sends();
    program->syncNow();
    CHECK(state().startsWith(QLatin1String("On the clinic's computer since today ")));
    CHECK(state().endsWith(QLatin1String("Nobody has opened your correction yet.")));
    CHECK(program->today()->sent().startsWith(QLatin1String("Your correction is on the clinic's computer since today ")));
    CHECK(program->today()->sent().contains(QLatin1String("Nobody has opened it yet. Dr Mara Lindqvist opened what you wrote before")));

    patient.opens();
    program->syncNow();
    CHECK(state().startsWith(QLatin1String("Opened by Dr Mara Lindqvist, today ")));
    CHECK(program->today()->sent().startsWith(QLatin1String("Your last entry was opened by Dr Mara Lindqvist")));
}

TEST_CASE("the count of what waits is right without a network", "[diary][states]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.setOffline(true);
    for (int day = 0; day < 3; ++day) {
        patient.goTo(day, 20);
        DemoPatient::tell(*program, 2);
    }
    CHECK(program->today()->sent() == QLatin1String("3 entries are saved on this phone, not with the clinic yet. If it is urgent, call."));
}

TEST_CASE("a reminder that is due is answered once, and the answer holds", "[diary][reminders]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(0, 19, 40);
    program->openToday();
    auto& board = *program->today();
    const auto due = board.due();
    REQUIRE(due.size() >= 2);
    const auto first = due.first();
    const auto isDue = [&] {
        const auto now = board.due();
        return std::any_of(now.begin(), now.end(), [&](const auto& line) { return line.key == first.key; });
    };

    SECTION("done")
    {
        board.done(first.key);
        CHECK_FALSE(isDue());
        CHECK(board.due().size() == due.size() - 1);
    }
    SECTION("not done")
    {
        board.notDone(first.key);
        CHECK(board.due().size() == due.size() - 1);
    }
    SECTION("later: gone now, back at the time that was chosen")
    {
        CHECK(board.laterChoices() == QStringList{"Later, 8:10 PM", "Later, 9:40 PM"});
        board.later(first.key, 0);
        CHECK(board.due().size() == due.size() - 1);
        patient.goTo(0, 20, 9);
        board.refresh();
        CHECK_FALSE(isDue());
        patient.goTo(0, 20, 10);
        board.refresh();
        CHECK(isDue());
    }
    SECTION("an answer survives the phone")
    {
        board.done(first.key);
        program.reset();
        program = patient.program(QStringLiteral("en"));
        REQUIRE(program->home().unlock(bytes::viewOf(DemoPatient::passphrase)));
        CHECK(program->today()->due().size() == due.size() - 1);
    }
}

TEST_CASE("an entry that was put off is done once it is written", "[diary][reminders]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(1, 21);
    program->openToday();
    auto& board = *program->today();
    const auto asked = [&] { return titlesOf(board.due()).filter(QStringLiteral("Write down how it is")).size(); };
    REQUIRE(asked() > 0);
    for (const auto& line : board.due())
        if (line.isEntry)
            board.later(line.key, 0);
    CHECK(asked() == 0);

    DemoPatient::tell(*program, 2);
    patient.goTo(1, 21, 45);
    board.refresh();

    CHECK(asked() == 0);
}

TEST_CASE("rules are shown while they hold, with how long", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openToday();
    const auto first = program->today()->rules();
    CHECK(first.size() > 5);
    for (const auto& line : first) {
        CHECK_FALSE(line.when.isEmpty());
        CHECK_FALSE(line.text.isEmpty());
    }
    patient.goTo(20, 12);
    program->openToday();
    CHECK(program->today()->rules().size() < first.size());
}

TEST_CASE("what was just saved can be corrected for ten seconds and more, and from the list afterwards", "[diary][history]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    DemoPatient::tell(*program, 3);
    const auto isGone = [&] { return !program->isUndoShown(); };
    CHECK_FALSE(DemoPatient::waits(isGone));  // ten seconds
    CHECK(program->notice().startsWith(QLatin1String("Saved on this phone.")));
    CHECK(DemoPatient::waits(isGone));
    CHECK(program->notice().isEmpty());

    program->amend(program->history()->entries().first().key);
    CHECK(program->page() == Page::entry);
    CHECK(program->entry()->isAmending());
}

TEST_CASE("history is newest first, and says what was missing", "[diary][history]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    CHECK(program->history()->entries().isEmpty());
    DemoPatient::tell(*program, 4);
    patient.goTo(1, 20);
    program->openEntry();
    program->entry()->answer(1, 2);
    program->entry()->save();

    const auto entries = program->history()->entries();
    REQUIRE(entries.size() == 2);
    CHECK(entries[0].title == QLatin1String("Day 1, today 8:00 PM"));
    CHECK(entries[0].scores == QStringLiteral("Swelling: right –, left 2"));
    CHECK(entries[1].title.startsWith(QLatin1String("Day 0, yesterday")));
    CHECK(entries[1].scores.split(QLatin1Char('\n')).size() == 5);
    CHECK(program->history()->entryOf(entries[0].key).has_value());
    CHECK_FALSE(program->history()->entryOf(QStringLiteral("nonsense")).has_value());
}

TEST_CASE("an entry begun before midnight and saved after says that it was written later", "[diary][history]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(0, 20);
    program->openEntry();
    program->entry()->answer(1, 2);
    patient.goTo(1, 7);
    program->entry()->save();

    CHECK(program->history()->entries().first().title.startsWith(QLatin1String("Day 0, ")));
    CHECK(program->history()->entries().first().marks.startsWith(QLatin1String("Written later, today 7:00 AM")));
}

TEST_CASE("notes go both ways, and count as new until the page was opened", "[diary][notes]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.writes("Please rest today.");
    program->syncNow();
    CHECK(program->today()->unread() == QLatin1String("1 new note from the clinic"));

    program->openNotes();
    CHECK(program->today()->unread().isEmpty());
    REQUIRE(program->history()->notes().size() == 1);
    CHECK_FALSE(program->history()->notes().first().mine);
    CHECK(program->history()->notes().first().from.startsWith(QLatin1String("Dr Mara Lindqvist, today")));

    CHECK_FALSE(program->history()->writeNote(QStringLiteral("  \n ")));
    CHECK(program->history()->writeNote(QStringLiteral("  I will. ")));
    REQUIRE(program->history()->notes().size() == 2);
    CHECK(program->history()->notes().last().mine);
    CHECK(program->history()->notes().last().text == QLatin1String("I will."));
}

TEST_CASE("asking for the clinic says how it went; the states never depend on it", "[diary][sync]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->dismissNotice();
    program->askNow();
    CHECK(program->notice() == QLatin1String("Done. All is sent and fetched."));
    patient.setOffline(true);
    program->askNow();
    CHECK(program->notice() == QLatin1String("No network right now. It will be sent later."));
    program->dismissNotice();
    program->syncNow();
    CHECK(program->notice().isEmpty());
}

TEST_CASE("all is never said to be sent by a phone that another one replaced", "[diary][sync][safety]")
{
    DemoPatient patient;
    auto former = patient.joined(QStringLiteral("en"));
    auto fresh = patient.joinedOnAnotherPhone(QStringLiteral("en"));
    former->askNow();
    former->askNow();
    CHECK(former->home().diary().replaced());
    CHECK(former->notice() == QLatin1String("Something that you wrote still waits on this phone. If it is urgent, call."));
}

TEST_CASE("settings are kept without unlocking, and hold no word of the patient", "[diary][settings]")
{
    DemoPatient patient;
    {
        auto program = patient.joined(QStringLiteral("en"));
        DemoPatient::tell(*program, 7);
        auto& settings = *program->settings();
        settings.setLanguage(1);
        settings.setTextSize(2);
        settings.setLook(1);
        settings.setReducedMotion(true);
        settings.setLanguageCode(QStringLiteral("xx"));
        CHECK(settings.languageCode() == QLatin1String("de"));
        CHECK(program->today()->day() == QLatin1String("Tag 0"));
    }
    auto program = patient.program({});
    CHECK(program->page() == Page::lock);
    CHECK(program->settings()->languageCode() == QLatin1String("de"));
    CHECK(program->settings()->textScale() == 2.0);
    CHECK(program->settings()->look() == 1);
    CHECK(program->settings()->isReducedMotion());
    program.reset();
    QFile file(QString::fromStdString(patient.folder().string() + ".ini"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    const auto lines = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    CHECK(lines.size() == 5);  // a heading and the four settings above
}

TEST_CASE("what was answered today stays in sight, and a mistaken done is taken back by a second answer", "[diary][reminders][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.goTo(0, 19, 40);
    program->openToday();
    auto& board = *program->today();
    const auto due = board.due();
    const auto dressings = std::find_if(due.begin(), due.end(), [](const auto& line) { return line.title == QLatin1String("Dressings off"); });
    REQUIRE(dressings != due.end());
    const QString key = dressings->key;
    CHECK(board.answered().isEmpty());

    board.done(key);
    REQUIRE(board.answered().size() == 1);
    CHECK(board.answered().first().isDone);
    CHECK(board.answered().first().text == QLatin1String("You said: done."));
    const auto operations = program->home().diary().vault().operations().size();

    board.notDone(key);
    REQUIRE(board.answered().size() == 1);
    CHECK_FALSE(board.answered().first().isDone);
    CHECK(board.answered().first().text == QLatin1String("You said: not done."));
    CHECK(program->home().diary().vault().operations().size() == operations + 1);  // the first answer stays in the history

    patient.goTo(1, 8);
    board.refresh();
    CHECK(board.answered().isEmpty());
}
