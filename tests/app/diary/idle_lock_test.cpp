// A diary that nobody uses: it says so, locks, leaves no key in memory, loses nothing, and stays helpful while locked.
#include "tests/core/vault/needle.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QInputMethodEvent>
#include <QSettings>
#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;
using diaryapp::EntryBoard;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);

struct Idle {
    DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program;

    Idle()
    {
        patient.setLocksWhenIdle(true);
        program = patient.joined(QStringLiteral("en"));
    }
    bool open() const { return program->home().isOpen(); }
    void pass(std::chrono::milliseconds time)
    {
        patient.clock().advance(time);
        program->idle()->look();
    }
    void leaveAlone() { pass(std::chrono::minutes(program->settings()->lockMinutes())); }
    void unlock() { program->locking()->unlock(passphrase); }
    QQuickWindow& window()
    {
        REQUIRE(program->show(QSize(360, 780)));
        program->window()->requestActivate();
        REQUIRE(QTest::qWaitForWindowActive(program->window()));
        return *program->window();
    }
};

}  // namespace

TEST_CASE("a diary that nobody uses says half a minute before that it locks, and locks", "[diary][idle]")
{
    Idle it;
    it.pass(5min - 31s);
    CHECK_FALSE(it.program->idle()->isEnding());
    it.pass(1s);
    CHECK(it.program->idle()->isEnding());
    CHECK(it.open());
    it.pass(30s);
    CHECK_FALSE(it.program->idle()->isEnding());
    CHECK_FALSE(it.open());
    CHECK(it.program->page() == Page::lock);
    CHECK_FALSE(it.program->idle()->isWatching());

    it.program->locking()->unlock(QStringLiteral("three calm herons fly"));
    CHECK_FALSE(it.open());
    it.unlock();
    CHECK(it.open());
    CHECK(it.program->idle()->isWatching());
}

TEST_CASE("after a diary locked by itself no key of it is left in memory", "[diary][idle]")
{
    test::needsPlainMemory();
    Idle it;
    std::vector<test::Needle> needles;
    needles.emplace_back(it.program->home().diary().vault().signingKey().seed());
    needles.emplace_back(it.program->home().diary().vault().boxKey().secret());
    for (const auto& needle : needles)
        CHECK(needle.copies() >= 1);
    it.leaveAlone();
    for (const auto& needle : needles)
        CHECK(needle.copies() == 0);
}

TEST_CASE("two, five or fifteen minutes can be chosen, and five is what nobody chose", "[diary][idle]")
{
    Idle it;
    auto& settings = *it.program->settings();
    CHECK(settings.lockNames() == QStringList{QStringLiteral("2"), QStringLiteral("5"), QStringLiteral("15")});
    CHECK(settings.lockMinutes() == 5);
    const int choice = GENERATE(0, 1, 2);
    const std::array minutes{2min, 5min, 15min};
    settings.setLockChoice(choice);
    CHECK(settings.lockChoice() == choice);
    it.pass(minutes[static_cast<std::size_t>(choice)] - 1s);
    CHECK(it.open());
    it.pass(1s);
    CHECK_FALSE(it.open());
}

TEST_CASE("whatever stands in the file, the diary locks after one of its choices, rather sooner than later", "[diary][idle]")
{
    DemoPatient patient;
    const auto [kept, minutes] = GENERATE(std::pair(0, 2), std::pair(-3, 2), std::pair(3, 2), std::pair(10, 5), std::pair(4000, 15));
    QSettings(QString::fromStdString(patient.folder().string() + ".ini"), QSettings::IniFormat).setValue("lockMinutes", kept);
    CHECK(patient.program(QStringLiteral("en"))->settings()->lockMinutes() == minutes);
}

TEST_CASE("a key, a touch, words from an input method and a screen reader's act are use", "[diary][idle]")
{
    Idle it;
    auto& window = it.window();
    const int kind = GENERATE(0, 1, 2, 3, 4);
    CAPTURE(kind);
    it.pass(5min - 10s);
    REQUIRE(it.program->idle()->isEnding());
    switch (kind) {
    case 0: QTest::keyClick(&window, Qt::Key_Tab); break;
    case 1: QTest::mouseMove(&window, QPoint(12, 300)); QTest::mouseMove(&window, QPoint(14, 310)); break;
    case 2: {
        QInputMethodEvent typed;
        typed.setCommitString(QStringLiteral("a"));
        QCoreApplication::sendEvent(&window, &typed);
        break;
    }
    case 3: it.program->openHistory(); break;  // its button was pressed by other means
    default: it.program->idle()->used(); break;  // "Stay open"
    }
    CHECK_FALSE(it.program->idle()->isEnding());
    it.pass(5min - 31s);
    CHECK(it.open());
    CHECK_FALSE(it.program->idle()->isEnding());
}

TEST_CASE("what the program does by itself is no use", "[diary][idle]")
{
    Idle it;
    it.pass(5min - 10s);
    it.program->syncNow();
    it.program->home().touch();
    CHECK(it.program->idle()->isEnding());
    it.pass(10s);
    CHECK_FALSE(it.open());
}

TEST_CASE("a phone that slept is locked before the touch that woke it acts", "[diary][idle]")
{
    Idle it;
    auto& window = it.window();
    it.patient.clock().advance(8h);  // no timer ran
    QTest::keyClick(&window, Qt::Key_Tab);
    CHECK_FALSE(it.open());
    CHECK(it.program->page() == Page::lock);
}

TEST_CASE("an entry that is being typed is where it was, at every step of it", "[diary][idle]")
{
    Idle it;
    auto& entry = *it.program->entry();
    it.program->openEntry();
    const int step = GENERATE(range(0, 8));
    CAPTURE(step);
    switch (step) {
    case 0: break;
    case 1: entry.answer(1, 4); break;
    case 2:
        entry.answer(1, 4);
        entry.answer(2, 3);
        break;
    case 3: entry.next(); break;  // skipped, and nothing said yet
    default:
        entry.answer(1, 7);
        while (entry.step() == EntryBoard::Step::Score)
            entry.next();
        entry.tick(static_cast<int>(recovery::Sign::warmer), true);
        if (step > 4)
            entry.signsDone();
        if (step > 5)
            entry.typeTemperature(QStringLiteral("38."));
        if (step > 6)
            entry.writeNote(QStringLiteral("Since lunch it"));
    }
    const auto seen = [&] {
        QStringList words{entry.question(), entry.progress(), entry.temperature(), entry.note(), entry.summary(), entry.signsWord()};
        for (const auto& side : entry.sides())
            words << QString::number(side.points);
        for (const auto& line : entry.signLines())
            words << (line.ticked ? line.text : QString());
        return words;
    };
    const auto before = seen();
    it.leaveAlone();
    REQUIRE_FALSE(it.open());
    CHECK(entry.note().isEmpty());  // nothing of it stays in memory
    CHECK(entry.temperature().isEmpty());
    it.patient.clock().advance(1h);
    it.unlock();
    CHECK(it.program->page() == Page::entry);
    CHECK(seen() == before);
}

TEST_CASE("a correction that was begun goes on after the diary locked by itself", "[diary][idle]")
{
    Idle it;
    DemoPatient::tell(*it.program, 5);
    it.program->amend(it.program->history()->entries().first().key);
    it.program->entry()->answer(1, 2);
    it.leaveAlone();
    it.unlock();
    REQUIRE(it.program->page() == Page::entry);
    CHECK(it.program->entry()->isAmending());
    it.program->entry()->save();
    CHECK(it.program->home().diary().history().size() == 1);
    CHECK(it.program->home().diary().history().front().history.amended());
}

TEST_CASE("a note that is being typed stays in its field over a lock, and leaves it once sent", "[diary][idle]")
{
    Idle it;
    it.program->openNotes();
    it.program->history()->setNoteDraft(QStringLiteral("May I wash my ha"));
    it.leaveAlone();
    CHECK(it.program->history()->noteDraft().isEmpty());
    it.unlock();
    CHECK(it.program->page() == Page::notes);
    CHECK(it.program->history()->noteDraft() == QLatin1String("May I wash my ha"));
    it.program->history()->setNoteDraft(QStringLiteral("May I wash my hair?"));
    CHECK(it.program->history()->sendNote());
    CHECK(it.program->history()->noteDraft().isEmpty());
    CHECK(it.program->home().diary().messages().back().text == "May I wash my hair?");
}

TEST_CASE("every page of the diary is there again after it locked by itself", "[diary][idle]")
{
    Idle it;
    (void)it.window();
    using Program = app::DiaryProgram;
    const auto [open, page] = GENERATE(std::pair(&Program::openHistory, Page::history), std::pair(&Program::openNotes, Page::notes),
                                       std::pair(&Program::openSettings, Page::settings), std::pair(&Program::openReminders, Page::reminders),
                                       std::pair(&Program::openKeys, Page::keys), std::pair(&Program::openMine, Page::mine),
                                       std::pair(&Program::openNotices, Page::notices), std::pair(&Program::openToday, Page::today));
    (it.program.get()->*open)();
    it.leaveAlone();
    CHECK(it.program->page() == Page::lock);
    it.unlock();
    CHECK(it.program->page() == page);
}

TEST_CASE("a recovery code that was in sight is not shown again after a lock, and that is said", "[diary][idle]")
{
    Idle it;
    it.program->openKeys();
    it.program->keys()->makeCode(passphrase);
    REQUIRE_FALSE(it.program->keys()->code().isEmpty());
    it.leaveAlone();
    CHECK(it.program->keys()->code().isEmpty());
    it.unlock();
    CHECK(it.program->page() == Page::keys);
    CHECK(it.program->keys()->code().isEmpty());
    CHECK(it.program->keys()->outcome().startsWith(QLatin1String("The code is not shown any more.")));
}

TEST_CASE("a lock by hand leads to the day, and forgets where she was", "[diary][idle]")
{
    Idle it;
    it.program->openSettings();
    it.program->lock();
    it.unlock();
    CHECK(it.program->page() == Page::today);
}

TEST_CASE("whom to call stays in sight when the diary locks by itself", "[diary][idle]")
{
    Idle it;
    it.program->openCall();
    it.leaveAlone();
    CHECK_FALSE(it.open());
    CHECK(it.program->page() == Page::call);
    REQUIRE(it.program->warning()->calls().size() == 3);
    CHECK(it.program->warning()->calls().first().number == QLatin1String("+00 555 0100"));
    it.program->back();
    CHECK(it.program->page() == Page::lock);
}

TEST_CASE("a warning that is being read stays as urgent over a lock, names no sign, and comes first after unlocking", "[diary][idle][safety]")
{
    Idle it;
    it.patient.setOffline(true);
    DemoPatient::tellSign(*it.program, recovery::Sign::allergy);
    auto& board = *it.program->warning();
    REQUIRE(it.program->page() == Page::warning);
    const QString title = board.title();
    const QString doNow = board.doNow();
    REQUIRE(title == QLatin1String("Call the emergency number now"));
    REQUIRE(doNow.startsWith(QLatin1String("If you were given an adrenaline pen, use it. Lie flat")));

    const auto holds = [&] {
        CHECK_FALSE(it.open());
        CHECK(it.program->page() == Page::call);
        CHECK(board.isEmergency());
        CHECK(board.title() == title);
        CHECK(board.doNow() == doNow);
        CHECK(board.reason().isEmpty());
        REQUIRE(board.calls().size() == 3);
        CHECK(board.calls().first().number == QLatin1String("112"));
    };
    it.leaveAlone();
    holds();
    // Away from it and back to it, as often as she likes.
    it.program->back();
    CHECK(it.program->page() == Page::lock);
    it.program->openCall();
    holds();

    it.unlock();
    CHECK(it.program->page() == Page::warning);
    CHECK(board.isEmergency());
    CHECK(board.reason().contains(QLatin1String("My tongue or throat swells")));
}

TEST_CASE("after a warning was read, whom to call is for any worry again, locked or not", "[diary][idle]")
{
    Idle it;
    DemoPatient::tellSign(*it.program, recovery::Sign::breathing);
    it.program->warning()->confirm();
    it.program->openCall();
    it.leaveAlone();
    CHECK_FALSE(it.program->warning()->isLoud());
    CHECK(it.program->warning()->calls().first().number == QLatin1String("+00 555 0100"));
}

TEST_CASE("what was just said about her health leaves the screen when the diary locks", "[diary][idle][privacy]")
{
    Idle it;
    DemoPatient::tellSign(*it.program, recovery::Sign::threadLump);
    REQUIRE_FALSE(it.program->notice().isEmpty());
    const bool byHand = GENERATE(true, false);
    byHand ? it.program->lock() : it.leaveAlone();
    CHECK(it.program->notice().isEmpty());
    CHECK_FALSE(it.program->isUndoShown());
    it.program->openCall();
    CHECK(it.program->notice().isEmpty());
}

TEST_CASE("reminders that were booked ring on while the diary is locked", "[diary][idle]")
{
    Idle it;
    it.program->reminders()->allow(true);
    const auto booked = it.patient.bells().booked;
    REQUIRE_FALSE(booked.empty());
    it.leaveAlone();
    CHECK_FALSE(it.open());
    CHECK(it.patient.bells().booked == booked);
}

TEST_CASE("what is half typed in a field is kept when the diary locks", "[diary][idle]")
{
    Idle it;
    auto& window = it.window();
    it.program->openEntry();
    while (it.program->entry()->step() == EntryBoard::Step::Score)
        it.program->entry()->next();
    it.program->entry()->signsDone();
    QTest::qWait(50);
    for (int i = 0; i < 40 && it.program->entry()->note().isEmpty(); ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
        QTest::keyClick(&window, 'x');
    }
    REQUIRE(it.program->entry()->note() == QLatin1String("x"));
    it.leaveAlone();
    QTest::qWait(50);
    it.unlock();
    CHECK(it.program->entry()->note() == QLatin1String("x"));
}
