// Every page of the desk, at the sizes, languages and text sizes it promises: names for screen
// readers, targets that can be hit, nothing cut off, nothing complained about by the pages.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/desk_pages.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QMetaEnum>
#include <QSet>
#include <QTest>

#include <optional>

using namespace ebbline;
using screens::listed;

namespace {

constexpr qreal leastTarget = 36;  ///< px at the desk, where a mouse points
constexpr int looks = 3;           ///< light, dark, high contrast

void checkLayout(QQuickWindow& window, int percent)
{
    CHECK(listed(screens::withoutName(window)) == "");
    CHECK(listed(screens::withoutAction(window)) == "");
    CHECK(listed(screens::smallTargets(window, leastTarget)) == "");
    CHECK(listed(screens::cutOff(window)) == "");
    CHECK(listed(screens::overEdge(window)) == "");
    CHECK(listed(screens::overlapping(window)) == "");
    // With letters of twice the size a narrow column of a table may break a word, an act may not.
    CHECK(listed(percent == 100 ? screens::brokenWords(window) : screens::brokenActs(window)) == "");
}

void checkLooks(app::DeskProgram& program)
{
    for (int look = looks - 1; look >= 0; --look) {
        CAPTURE(look);
        program.settings()->setLook(look);
        CHECK(listed(screens::faint(*program.window())) == "");
    }
}

/// `inEveryLook`: light, dark and high contrast as well, which costs a picture of the window each.
void walk(const char* language, int percent, QSize size, bool inEveryLook = true)
{
    CAPTURE(language, percent, size.width(), size.height());
    screens::Ear ear;
    screens::DemoClinic clinic(screens::pastCourses);
    auto program = clinic.program(QString::fromLatin1(language), clinic.hub());
    program->settings()->setTextPercent(percent);
    REQUIRE(program->show(size));

    QSet<QString> shown;
    for (const auto& page : screens::deskPages()) {
        page.show(*program, clinic);
        shown << program->pageName();
        auto& window = *program->window();
        screens::settle(window);
        CAPTURE(page.name.toStdString());
        CHECK(listed(screens::emptyPage(window)) == "");
        checkLayout(window, percent);
        if (percent == 100 && inEveryLook)
            checkLooks(*program);
        CHECK(ear.take() == "");
    }
    QStringList unseen;
    const auto pages = QMetaEnum::fromType<app::DeskProgram::Page>();
    for (int i = 0; i < pages.keyCount(); ++i)
        if (!shown.contains(QString::fromLatin1(pages.key(i))))
            unseen << QString::fromLatin1(pages.key(i));
    CHECK(listed(unseen) == "unlock\napply");  // at the door, and of a desk without a clinic: walkDoor()
}

void walkDoor(const char* language, int percent, QSize size)
{
    CAPTURE(language, percent, size.width(), size.height());
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto colleague = clinic.program(QStringLiteral("en"), clinic.hub());
    auto program = clinic.freshProgram(QString::fromLatin1(language), clinic.hub());
    program->settings()->setTextPercent(percent);
    REQUIRE(program->show(size));
    auto& window = *program->window();

    for (const auto& page : screens::deskDoorPages()) {
        page.show(*program, *colleague);
        screens::settle(window);
        CAPTURE(page.name.toStdString());
        CHECK(listed(screens::emptyPage(window)) == "");
        checkLayout(window, percent);
        if (percent == 100)
            checkLooks(*program);
        CHECK(ear.take() == "");
    }
    CHECK(program->page() == app::DeskProgram::Page::unlock);
}

}  // namespace

TEST_CASE("every page names its controls, gives room to hit them, and cuts no word off", "[desk][screens]")
{
    const auto language = GENERATE("en", "de", "ar");
    const auto percent = GENERATE(100, 200);
    walk(language, percent, GENERATE(QSize(1280, 720), QSize(1920, 1080), QSize(1024, 768)));
}

TEST_CASE("so do the pages of a desk that is set up, or joins its colleagues' clinic", "[desk][screens]")
{
    const auto language = GENERATE("en", "de", "ar");
    const auto percent = GENERATE(100, 200);
    walkDoor(language, percent, GENERATE(QSize(1280, 720), QSize(1024, 768)));
}

TEST_CASE("so do all pages in the other languages, on a small screen with the largest text", "[desk][screens]")
{
    const auto language = GENERATE("es", "fr", "pt_BR");
    walk(language, 200, QSize(1024, 768));
    walkDoor(language, 200, QSize(1024, 768));
}

TEST_CASE("so do all pages on a large screen, and on a tablet that stands upright", "[desk][screens]")
{
    const auto language = GENERATE("en", "ar");
    walk(language, 100, GENERATE(QSize(2560, 1440), QSize(3840, 2160), QSize(1024, 1366)), false);
}

TEST_CASE("so do all pages in the narrowest window that the desk allows", "[desk][screens]")
{
    const auto language = GENERATE("de", "ar");
    walk(language, 100, QSize(800, 1280), false);
}

TEST_CASE("Tab reaches every control of the queue page and comes round again", "[desk][screens][keys]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 800)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);

    QList<QQuickItem*> visited;
    for (int i = 0; i < 120; ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
        auto* now = window.activeFocusItem();
        REQUIRE(now != nullptr);
        if (visited.contains(now)) {
            break;
        }
        visited << now;
    }
    QStringList missed;
    for (auto* item : screens::visibleItems(window)) {
        const auto frame = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
        if (item->inherits("QQuickAbstractButton") && item->isEnabled() && frame.bottom() < window.height()
            && !visited.contains(item)) {
            missed << item->property("text").toString();
        }
    }
    CHECK(visited.size() > 15);
    CHECK(listed(missed) == "");
}

TEST_CASE("the queue is worked with keys alone, and single keys can be turned off", "[desk][screens][keys]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 800)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);
    const auto row = [&](int index) { return program->queue()->rows()->rows()[index].value.value<deskapp::QueueRow>(); };

    program->settings()->setSingleKeys(false);
    QTest::keyClick(&window, Qt::Key_T);
    CHECK_FALSE(row(0).isTaken);

    program->settings()->setSingleKeys(true);
    QTest::keyClick(&window, Qt::Key_T);
    CHECK(row(0).isTaken);

    QTest::keyClick(&window, Qt::Key_Down);
    const auto second = row(1).key;
    QTest::keyClick(&window, Qt::Key_X);
    CHECK(program->queue()->isClosing());
    QTest::keyClick(&window, Qt::Key_Escape);
    screens::settle(window);
    CHECK_FALSE(program->queue()->isClosing());

    QTest::keyClick(&window, Qt::Key_Return);
    screens::settle(window);
    CHECK(program->page() == app::DeskProgram::Page::course);
    CHECK(program->course()->key() == second);
}

TEST_CASE("a call shows its number and the first question on a small screen before anything is scrolled", "[desk][screens][safety]")
{
    const char* language = GENERATE("en", "de", "ar");
    const int percent = GENERATE(100, 200);
    CAPTURE(language, percent);
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    program->settings()->setTextPercent(percent);
    REQUIRE(program->show(QSize(1280, 720)));
    auto& window = *program->window();
    program->call()->start(deskapp::keyOf(clinic.course("Tomas Reyl")));
    screens::settle(window);

    const auto frameOf = [&](const auto& wanted) -> std::optional<QRectF> {
        for (auto* item : screens::visibleItems(window)) {
            if (wanted(*item)) {
                return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
            }
        }
        return std::nullopt;
    };
    const auto says = [](const QString& text) { return [text](const QQuickItem& item) { return item.property("text").toString().endsWith(text); }; };
    const auto acts = frameOf([](const QQuickItem& item) { return item.objectName() == QLatin1String("reached"); });
    const auto number = frameOf(says(program->call()->phone()));
    const auto question = frameOf(says(program->call()->script().first()));
    REQUIRE(acts);
    REQUIRE(number);
    REQUIRE(question);
    CHECK(number->bottom() <= question->top());
    CHECK(question->bottom() <= acts->top());
}

TEST_CASE("photographs are found, compared and marked with keys alone", "[desk][screens][keys][photos]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 800)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    screens::settle(window);

    REQUIRE(screens::tabUntil(window, QStringLiteral("Day 0, Front")).toStdString() == "");
    QTest::keyClick(&window, Qt::Key_Return);
    screens::await(*program);
    screens::settle(window);
    REQUIRE(program->page() == app::DeskProgram::Page::photos);

    auto& comparison = *program->photos()->comparison();
    REQUIRE(screens::tabUntil(window, QStringLiteral("Mark the eyes")).toStdString() == "");
    QTest::keyClick(&window, Qt::Key_Return);
    CHECK(comparison.marking() == deskapp::PhotoComparison::Earlier);
    QTest::keyClick(&window, Qt::Key_Plus);
    CHECK(comparison.zoomText() == QLatin1String("125%"));
    QTest::keyClick(&window, Qt::Key_Left);
    QTest::keyClick(&window, Qt::Key_Space);
    for (int i = 0; i < 10; ++i) {
        QTest::keyClick(&window, Qt::Key_Right);
    }
    QTest::keyClick(&window, Qt::Key_Space);
    CHECK(comparison.canKeep());
    QTest::keyClick(&window, Qt::Key_Backspace);
    CHECK_FALSE(comparison.canKeep());
    QTest::keyClick(&window, Qt::Key_Space);
    REQUIRE(screens::tabUntil(window, QStringLiteral("Keep the marks")).toStdString() == "");
    QTest::keyClick(&window, Qt::Key_Return);
    CHECK(comparison.marking() == -1);
    CHECK(comparison.earlier().marked);
}

TEST_CASE("the language changes while the program runs, and the pages turn with it", "[desk][screens]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 800)));
    screens::settle(*program->window());
    const auto before = program->queue()->summary();
    CHECK_FALSE(program->isRightToLeft());

    program->settings()->setLanguage(QStringLiteral("ar"));
    screens::settle(*program->window());

    CHECK(program->isRightToLeft());
    CHECK(program->queue()->summary() != before);
    CHECK(program->page() == app::DeskProgram::Page::queue);
    program->settings()->setLanguage(QStringLiteral("en"));
}

TEST_CASE("the keyboard reads the parts and a licence of the desk to their end", "[desk][screens][keys]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1024, 768)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    program->openNotices();
    CHECK(screens::tabUntil(window, program->notices()->parts().last().name).toStdString() == "");
    program->openLicence(QStringLiteral("MPL-2.0"));
    CHECK(screens::tabUntil(window, program->notices()->paragraphs().last()).toStdString() == "");
}

TEST_CASE("a line that opens a course is reached with Tab and opened with Enter", "[desk][screens][keys]")
{
    const bool ofALot = GENERATE(true, false);
    screens::DemoClinic clinic(screens::pastCourses);
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 800)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    if (ofALot) {
        program->openPractice();
        screens::await(*program);
        program->practice()->setPart(deskapp::PracticeBoard::Lots);
        program->lots()->choose(QStringLiteral("QN2208"));
    } else {
        program->openTraces();
        program->traces()->setSearch(QStringLiteral("Tomas Reyl"));
    }
    screens::settle(window);
    const auto before = program->page();
    for (int i = 0; i < 60 && !(window.activeFocusItem() && window.activeFocusItem()->property("opens").toBool()); ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
    }
    REQUIRE(window.activeFocusItem()->property("opens").toBool());
    REQUIRE(program->page() == before);
    QTest::keyClick(&window, Qt::Key_Return);
    CHECK(program->page() == app::DeskProgram::Page::course);
}

TEST_CASE("no title of a window ever names a patient", "[desk][screens][privacy]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"), clinic.hub());
    REQUIRE(program->show(QSize(1280, 800)));
    for (const auto& page : screens::deskPages()) {
        page.show(*program, clinic);
        screens::settle(*program->window());
        CHECK(program->window()->title().toStdString() == "Ebbline, desk");
    }
}
