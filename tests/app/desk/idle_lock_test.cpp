// A desk that nobody uses: it says so, locks, leaves no key in memory and no patient on the screen, and loses nothing.
#include "tests/core/vault/needle.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <QAccessible>
#include <QApplication>
#include <QDialog>
#include <QSettings>
#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;
using screens::DemoClinic;
using Page = app::DeskProgram::Page;

namespace {

struct Idle {
    DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program;
    QString tomas = deskapp::keyOf(clinic.course("Tomas Reyl"));

    Idle()
    {
        clinic.setLocksWhenIdle(true);
        program = clinic.program(QStringLiteral("en"));
    }
    bool open() const { return program->isOpen(); }
    void pass(std::chrono::milliseconds time)
    {
        clinic.clock().advance(time);
        program->idle()->look();
    }
    void leaveAlone()
    {
        pass(std::chrono::minutes(program->settings()->lockMinutes()));
        REQUIRE_FALSE(open());
    }
    void comeBack()
    {
        REQUIRE(program->unlocking()->unlock(QString::fromLatin1(DemoClinic::passphrase)));
        REQUIRE(program->page() == Page::person);
        program->choosePerson(QStringLiteral("Ilan Osei"));
    }
};

void collect(QAccessibleInterface* at, QStringList& words)
{
    if (at == nullptr) {
        return;
    }
    for (const auto text : {QAccessible::Name, QAccessible::Description, QAccessible::Value}) {
        words << at->text(text);
    }
    for (int i = 0; i < at->childCount(); ++i) {
        collect(at->child(i), words);
    }
}

/// Everything that a screen reader could find in any window of the program.
QString spoken()
{
    QStringList words;
    for (QWindow* window : QGuiApplication::topLevelWindows()) {
        words << window->title();
        collect(QAccessible::queryAccessibleInterface(window), words);
    }
    return words.join(u'\n');
}

/// And everything that is painted.
QString painted(QQuickWindow& window)
{
    QStringList words;
    for (QQuickItem* item : screens::visibleItems(window)) {
        words << item->property("text").toString();
    }
    return words.join(u'\n');
}

}  // namespace

TEST_CASE("a desk that nobody uses says half a minute before that it locks, and locks", "[desk][idle]")
{
    Idle it;
    it.pass(5min - 30s - 1ms);
    CHECK_FALSE(it.program->idle()->isEnding());
    it.pass(1ms);
    CHECK(it.program->idle()->isEnding());
    it.program->idle()->used();
    CHECK_FALSE(it.program->idle()->isEnding());
    it.pass(5min - 1ms);
    CHECK(it.open());
    it.pass(1ms);
    CHECK_FALSE(it.open());
    CHECK(it.program->page() == Page::unlock);
}

TEST_CASE("after a desk locked by itself no key of it is left in memory", "[desk][idle]")
{
    test::needsPlainMemory();
    Idle it;
    const auto& vault = it.program->workplace().desk().vault();
    std::vector<test::Needle> needles;
    needles.emplace_back(vault.signingKey().seed());
    needles.emplace_back(vault.clinicRoot().seed());
    needles.emplace_back(vault.clinicEpoch().secret());
    CHECK(std::ranges::all_of(needles, [](const auto& needle) { return needle.copies() >= 1; }));
    it.leaveAlone();
    for (const auto& needle : needles) {
        CHECK(needle.copies() == 0);
    }
}

TEST_CASE("two, five, fifteen or thirty minutes can be chosen at the desk, and five is what nobody chose", "[desk][idle]")
{
    Idle it;
    auto& settings = *it.program->settings();
    CHECK(settings.lockNames() == QStringList{"2 minutes", "5 minutes", "15 minutes", "30 minutes"});
    CHECK(settings.lockMinutes() == 5);
    const int choice = GENERATE(0, 1, 2, 3);
    const std::array minutes{2min, 5min, 15min, 30min};
    settings.setLockChoice(choice);
    it.pass(minutes[static_cast<std::size_t>(choice)] - 1s);
    CHECK(it.open());
    it.pass(1s);
    CHECK_FALSE(it.open());
}

TEST_CASE("a desk that was set to other minutes before locks after the next shorter choice", "[desk][idle]")
{
    DemoClinic clinic;
    const auto [kept, minutes] = GENERATE(std::pair(1, 2), std::pair(3, 2), std::pair(10, 5), std::pair(60, 30));
    QSettings(QString::fromStdString(clinic.folder().string() + ".ini"), QSettings::IniFormat).setValue("lockMinutes", kept);
    CHECK(clinic.program(QStringLiteral("en"))->settings()->lockMinutes() == minutes);
}

TEST_CASE("a touch that comes after the time locks the desk and does nothing else", "[desk][idle]")
{
    Idle it;
    REQUIRE(it.program->show(QSize(1280, 800)));
    screens::settle(*it.program->window());
    it.clinic.clock().advance(6min);  // no timer ran: the machine slept
    QTest::keyClick(it.program->window(), Qt::Key_2, Qt::ControlModifier);
    CHECK_FALSE(it.open());
    CHECK(it.program->page() == Page::unlock);
}

TEST_CASE("a desk of invented patients does not lock by itself: there is nothing to protect, and locking ends it", "[desk][idle]")
{
    Idle it;
    it.program->lock();
    REQUIRE(it.program->unlocking()->openDemo());
    it.pass(24h);
    CHECK(it.open());
}

TEST_CASE("the queue is what shows after a lock, unless a record was being written", "[desk][idle]")
{
    Idle it;
    it.program->openCourses();
    it.leaveAlone();
    it.comeBack();
    CHECK(it.program->page() == Page::queue);
}

TEST_CASE("a treatment that is being written is there as it was, at its step", "[desk][idle]")
{
    Idle it;
    it.program->openTreatment();
    auto& editor = *it.program->treatment();
    REQUIRE(editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1));
    editor.draw({296, 170}, {252, 262});
    editor.setLot(QStringLiteral("TH-4417"));
    editor.setWeight(QStringLiteral("61"));
    editor.setStep(2);
    it.leaveAlone();
    CHECK(editor.patientName().isEmpty());
    it.comeBack();
    REQUIRE(it.program->page() == Page::treatment);
    CHECK(editor.step() == 2);
    CHECK(editor.patientName() == QLatin1String("Lea Fontaine"));
    CHECK(editor.tracks().size() == 1);
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    CHECK(editor.weight() == QLatin1String("61"));
}

TEST_CASE("a patient who is being registered keeps name and phone over a lock, and leaves none once registered", "[desk][idle]")
{
    Idle it;
    it.program->openTreatment();
    auto& editor = *it.program->treatment();
    editor.keepOf(QStringLiteral("name"), QStringLiteral("Lea Fon"));
    editor.keepOf(QStringLiteral("phone"), QStringLiteral("+00 55"));
    it.leaveAlone();
    CHECK(editor.begunOf(QStringLiteral("name")).isEmpty());
    it.comeBack();
    CHECK(editor.begunOf(QStringLiteral("name")) == QLatin1String("Lea Fon"));
    CHECK(editor.begunOf(QStringLiteral("phone")) == QLatin1String("+00 55"));
    it.program->openTreatment();
    REQUIRE(editor.registerPatient(QStringLiteral("Lea Fontaine"), {}, 1));
    CHECK(editor.begunOf(QStringLiteral("name")).isEmpty());
    CHECK(editor.begunOf(QStringLiteral("phone")).isEmpty());
}

TEST_CASE("a follow-up half written is there as it was, and is let go once recorded", "[desk][idle]")
{
    Idle it;
    it.program->openFollowUp(it.tomas);
    auto& editor = *it.program->followUp();
    const QString word = editor.complications()->keyAt(1);
    editor.setChange(2);
    editor.setSatisfaction(4);
    editor.tick(word, true);
    editor.setManagement(QStringLiteral("Cooled, seen again on Monda"));
    editor.setNextPlan(QStringLiteral("Call on Fri"));
    it.leaveAlone();
    CHECK(editor.management().isEmpty());
    it.comeBack();
    REQUIRE(it.program->page() == Page::followUp);
    CHECK(editor.name() == QLatin1String("Tomas Reyl"));
    CHECK(editor.change() == 2);
    CHECK(editor.satisfaction() == 4);
    CHECK(editor.complications()->rows()[1].value.value<deskapp::TickRow>().ticked);
    CHECK(editor.uncomplicated() == 2);
    CHECK(editor.management() == QLatin1String("Cooled, seen again on Monda"));
    CHECK(editor.nextPlan() == QLatin1String("Call on Fri"));

    for (const auto& row : QList(editor.answers()->rows())) { editor.answer(row.key, static_cast<int>(records::Outcome::treatedInClinic)); }
    editor.save();
    CHECK(deskapp::begunWords(it.program->workplace(), QStringLiteral("followUp/") + it.tomas).isEmpty());
    editor.open(it.clinic.course("Tomas Reyl"));
    CHECK(editor.management() == QLatin1String("Cooled, seen again on Monda"));
    CHECK_FALSE(editor.recordedBy().isEmpty());
}

TEST_CASE("messages and notes that were begun are where they were begun, each at its own course", "[desk][idle]")
{
    Idle it;
    const QString ines = deskapp::keyOf(it.clinic.course("Ines Varga"));
    it.program->openCourse(it.tomas);
    it.program->course()->setMessageDraft(QStringLiteral("Please come tom"));
    it.program->openQueue();
    it.program->call()->start(ines);
    it.program->call()->setNote(QStringLiteral("No answer, but"));
    it.program->handOver()->setWord(QStringLiteral("Mirela calls ba"));
    it.program->begun()->keep(QStringLiteral("close/x"), QStringLiteral("Healed"));
    it.leaveAlone();
    CHECK(it.program->course()->messageDraft().isEmpty());
    CHECK_FALSE(it.program->call()->isShown());
    CHECK(it.program->call()->note().isEmpty());
    CHECK(it.program->handOver()->word().isEmpty());
    CHECK(it.program->begun()->words(QStringLiteral("close/x")).isEmpty());

    it.comeBack();
    CHECK(it.program->begun()->words(QStringLiteral("close/x")) == QLatin1String("Healed"));
    CHECK(it.program->handOver()->word() == QLatin1String("Mirela calls ba"));
    it.program->call()->start(it.tomas);
    CHECK(it.program->call()->note().isEmpty());
    it.program->call()->start(ines);
    CHECK(it.program->call()->note() == QLatin1String("No answer, but"));
    it.program->call()->notReached();
    it.program->call()->start(ines);
    CHECK(it.program->call()->note().isEmpty());
    it.program->call()->leave();
    it.program->openCourse(ines);
    CHECK(it.program->course()->messageDraft().isEmpty());
    it.program->openCourse(it.tomas);
    CHECK(it.program->course()->messageDraft() == QLatin1String("Please come tom"));
    it.program->course()->send();
    it.program->openCourse(ines);
    it.program->openCourse(it.tomas);
    CHECK(it.program->course()->messageDraft().isEmpty());
}

TEST_CASE("coming back from a lock does not tell a patient that her entry was opened", "[desk][idle]")
{
    Idle it;
    it.program->openCourse(it.tomas);
    it.program->course()->setMessageDraft(QStringLiteral("Please come tom"));
    it.leaveAlone();
    it.comeBack();
    CHECK(it.program->page() == Page::queue);
    CHECK(it.program->course()->key().isEmpty());
}

TEST_CASE("a recovery code that was in sight at the desk is not shown again after a lock, and that is said", "[desk][idle]")
{
    Idle it;
    it.program->openKeep();
    it.program->keep()->makeCode(QString::fromLatin1(DemoClinic::passphrase));
    while (it.program->keep()->isBusy()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
    REQUIRE_FALSE(it.program->keep()->code().isEmpty());
    it.leaveAlone();
    CHECK(it.program->keep()->code().isEmpty());
    it.comeBack();
    CHECK(it.program->page() == Page::keep);
    CHECK(it.program->notice().startsWith(QLatin1String("The recovery code is not shown any more.")));
}

TEST_CASE("work on the vault that was asked for is waited for, and the desk locks after it", "[desk][idle]")
{
    Idle it;
    it.program->openKeep();
    it.program->keep()->makeCode(QString::fromLatin1(DemoClinic::passphrase));
    REQUIRE(it.program->keep()->isBusy());
    it.pass(6min);
    CHECK(it.open());
    while (it.program->keep()->isBusy()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
    CHECK(it.open());
    it.leaveAlone();
}

TEST_CASE("the clinic's page keeps what was typed over a lock, and only until it is saved", "[desk][idle]")
{
    Idle it;
    it.program->openClinic();
    it.program->clinic()->setProperty("onCallPhone", QStringLiteral("+00 555 01"));
    Q_EMIT it.program->clinic()->changed();
    it.leaveAlone();
    it.comeBack();
    REQUIRE(it.program->page() == Page::clinic);
    CHECK(it.program->clinic()->property("onCallPhone").toString() == QLatin1String("+00 555 01"));
    REQUIRE(it.program->clinic()->save(QString::fromLatin1(screens::DemoClinic::passphrase)));
    it.program->openClinic();
    CHECK(it.program->clinic()->property("onCallPhone").toString() == QLatin1String("+00 555 01"));
    CHECK(it.program->begun()->words(QStringLiteral("clinic")).isEmpty());
}

TEST_CASE("no patient is left on the screen or for a screen reader when the desk locks, whatever was open", "[desk][idle]")
{
    const int open = GENERATE(range(0, 8));
    CAPTURE(open);
    Idle it;
    REQUIRE(it.program->show(QSize(1280, 800)));
    auto& program = *it.program;
    switch (open) {
    case 0: program.openQueue(); break;
    case 1: program.openQueue(); program.queue()->startClosing(it.tomas); break;
    case 2: program.openQueue(); program.call()->start(it.tomas); break;
    case 3: program.openCourse(it.tomas); break;
    case 4:
        program.openCourse(it.tomas);
        program.course()->startClosing(program.course()->findings()->keyAt(0));
        break;
    case 5: program.openFollowUp(it.tomas); break;
    case 6: program.openSheet(it.tomas); break;
    default:
        program.openCourse(it.tomas);
        program.setHelpShown(true);
        program.course()->saveAs();
    }
    screens::settle(*program.window());
    if (open == 5 || open == 3) {
        REQUIRE((spoken() + painted(*program.window())).contains(QLatin1String("Tomas Reyl")));
    }
    it.leaveAlone();
    screens::settle(*program.window());

    const QString left = spoken() + painted(*program.window());
    CHECK(left.contains(QLatin1String("Unlock the desk")));
    for (const char* name : {"Tomas Reyl", "Noor Castellan", "Odile Brandt", "Ines Varga", "+00 555 01"}) {
        CAPTURE(name);
        CHECK_FALSE(left.contains(QLatin1String(name)));
    }
    for (const QWidget* widget : QApplication::topLevelWidgets()) {
        CHECK((qobject_cast<const QDialog*>(widget) == nullptr || !widget->isVisible()));
    }
}

TEST_CASE("the word that the desk locks stands over an open panel, and staying is one act", "[desk][idle]")
{
    Idle it;
    REQUIRE(it.program->show(QSize(1280, 800)));
    it.program->openQueue();
    it.program->call()->start(it.tomas);
    screens::settle(*it.program->window());
    it.pass(5min - 20s);
    screens::settle(*it.program->window());
    CHECK(painted(*it.program->window()).contains(QLatin1String("It locks in half a minute.")));
    QQuickItem* stay = nullptr;
    for (QQuickItem* item : screens::visibleItems(*it.program->window())) {
        const bool named = item->property("text").toString() == QLatin1String("Stay open");
        stay = named && stay == nullptr ? item : stay;
    }
    REQUIRE(stay != nullptr);
    const auto middle = stay->mapToScene({stay->width() / 2, stay->height() / 2}).toPoint();
    QTest::mouseClick(it.program->window(), Qt::LeftButton, {}, middle);
    CHECK_FALSE(it.program->idle()->isEnding());
    CHECK(it.program->call()->isShown());
}
