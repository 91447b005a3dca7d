// What has to be in sight, and what must not be in reach before it was: the first number to call, and the no to all signs.
#include "tests/screens/demo_patient.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QTest>

using namespace ebbline;
using diaryapp::EntryBoard;
using recovery::Sign;
using screens::DemoPatient;
using Page = app::DiaryProgram::Page;

namespace {

QRectF boxOf(const QQuickItem& item)
{
    return item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
}

/// The button whose words hold these, wherever it is on the page.
QQuickItem* buttonSaying(QQuickWindow& window, const QString& words)
{
    for (auto* item : screens::visibleItems(window))
        if (item->inherits("QQuickAbstractButton") && item->property("text").toString().contains(words))
            return item;
    return nullptr;
}

struct Shown {
    DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program;

    Shown(const QString& language, const QSize& size, int textSize)
    {
        program = patient.joined(language);
        patient.setOffline(true);
        program->settings()->setTextSize(textSize);
        REQUIRE(program->show(size));
    }
    QQuickWindow& window() { return *program->window(); }
    EntryBoard& toSigns()
    {
        program->openEntry();
        while (program->entry()->step() == EntryBoard::Step::Score)
            program->entry()->next();
        screens::settle(window());
        return *program->entry();
    }
};

}  // namespace

TEST_CASE("the first number to call is in sight with every warning, and its reading is at the end", "[diary][screens][warning][safety]")
{
    const auto* language = GENERATE("en", "de", "es", "fr", "pt_BR", "ar", "tr", "zh_CN");
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780), QSize(390, 844), QSize(568, 320));
    const int textSize = GENERATE(0, 2);
    CAPTURE(language, size.width(), size.height(), textSize);
    Shown shown(QString::fromLatin1(language), size, textSize);
    for (const Sign sign : {Sign::breathing, Sign::fastSwelling}) {
        DemoPatient::tellSign(*shown.program, sign);
        REQUIRE(shown.program->page() == Page::warning);
        screens::settle(shown.window());

        auto& board = *shown.program->warning();
        QString number = board.calls().first().number;
        const auto* call = buttonSaying(shown.window(), number.replace(QLatin1Char(' '), QChar(0xa0)));
        REQUIRE(call != nullptr);
        CHECK(QRectF(QPointF(), size).contains(boxOf(*call)));
        const auto* read = buttonSaying(shown.window(), QCoreApplication::translate("WarningPage", "I have read this"));
        REQUIRE(read != nullptr);
        for (const auto* item : screens::visibleItems(shown.window()))
            if (item->inherits("QQuickText") && item->property("text").toString() == board.reason())
                CHECK(boxOf(*item).bottom() <= boxOf(*read).top());
        board.confirm();
        shown.patient.clock().advance(std::chrono::minutes(10));
    }
}

TEST_CASE("behind a lock the first number to call is in sight as long as nobody has read the warning", "[diary][screens][warning][safety]")
{
    const auto* language = GENERATE("en", "de", "ar");
    const auto size = GENERATE(QSize(320, 568), QSize(390, 844), QSize(568, 320));
    const int textSize = GENERATE(0, 2);
    CAPTURE(language, size.width(), size.height(), textSize);
    Shown shown(QString::fromLatin1(language), size, textSize);
    DemoPatient::tellSign(*shown.program, Sign::allergy);
    shown.program->lockIdle();
    REQUIRE(shown.program->page() == Page::call);
    screens::settle(shown.window());

    QString number = shown.program->warning()->calls().first().number;
    const auto* call = buttonSaying(shown.window(), number.replace(QLatin1Char(' '), QChar(0xa0)));
    REQUIRE(call != nullptr);
    CHECK(QRectF(QPointF(), size).contains(boxOf(*call)));
}

TEST_CASE("no can be said to the signs only where the last of them is in sight", "[diary][screens][entry][safety]")
{
    const auto* language = GENERATE("en", "de", "ar");
    const auto size = GENERATE(QSize(320, 568), QSize(390, 844), QSize(568, 320));
    const int textSize = GENERATE(0, 2);
    CAPTURE(language, size.width(), size.height(), textSize);
    Shown shown(QString::fromLatin1(language), size, textSize);
    auto& board = shown.toSigns();

    const auto* last = screens::named(shown.window(), board.signLines().last().text);
    const auto* none = screens::named(shown.window(), board.signsWord());
    REQUIRE(last != nullptr);
    REQUIRE(none != nullptr);
    CHECK(boxOf(*none).top() >= boxOf(*last).bottom());
    CHECK(boxOf(*none).top() >= size.height());  // not before scrolling
    REQUIRE(screens::touch(shown.window(), board.signsWord()));
    CHECK(board.step() == EntryBoard::Step::Rest);
    // The next question begins at its top.
    screens::settle(shown.window());
    const auto* unit = screens::named(shown.window(), QStringLiteral("°C"));
    if (QLatin1String(language) == QLatin1String("en") && size.height() > 500 && textSize == 0) {
        REQUIRE(unit != nullptr);
        CHECK(QRectF(QPointF(), size).contains(boxOf(*unit)));
    }
}

TEST_CASE("the keyboard passes every sign on its way to the no", "[diary][screens][entry][keys]")
{
    Shown shown(QStringLiteral("en"), QSize(320, 568), 2);
    auto& board = shown.toSigns();
    shown.window().requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&shown.window()));
    CHECK(screens::tabUntil(shown.window(), board.signLines().last().text).toStdString() == "");
    CHECK_FALSE(screens::named(shown.window(), board.signsWord())->hasActiveFocus());
    CHECK(screens::tabUntil(shown.window(), board.signsWord()).toStdString() == "");
}

TEST_CASE("advice that can wait stands on the day's page and with its entry, at every size", "[diary][screens][advice]")
{
    const auto* language = GENERATE("en", "de", "ar");
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780));
    const int textSize = GENERATE(0, 2);
    CAPTURE(language, size.width(), textSize);
    Shown shown(QString::fromLatin1(language), size, textSize);
    shown.patient.goTo(2, 12);
    auto& board = shown.toSigns();
    for (const Sign sign : {Sign::threadLump, Sign::threadOut})
        board.tick(static_cast<int>(sign), true);
    board.signsDone();
    board.save();
    REQUIRE(shown.program->page() == Page::today);
    screens::settle(shown.window());
    const auto saysIn = [&](const QString& words) {
        for (const auto* item : screens::visibleItems(shown.window()))
            if (item->inherits("QQuickText") && item->property("text").toString().contains(words))
                return true;
        return false;
    };
    const QString doNow = shown.program->today()->adviceDoNow();
    CHECK(saysIn(doNow));
    CHECK(saysIn(shown.program->today()->adviceReason()));
    REQUIRE(screens::press(shown.window(), QCoreApplication::translate("AdviceCard", "I have read this")));
    screens::settle(shown.window());
    CHECK_FALSE(saysIn(doNow));

    shown.program->openHistory();
    screens::settle(shown.window());
    CHECK_FALSE(saysIn(doNow));
    REQUIRE(screens::press(shown.window(), QCoreApplication::translate("EntryCard", "What to do")));
    screens::settle(shown.window());
    CHECK(saysIn(doNow));
}
