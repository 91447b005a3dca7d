// What has to be in sight, and what must not be in reach before it was: the first number to call, and the no to all signs.
#include "app/face/face_chart.h"
#include "tests/screens/demo_patient.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QLocale>
#include <QMap>
#include <QTest>

#include <algorithm>

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
        // What to do comes first, then what it can mean, then why.
        QMap<QString, double> begins;
        for (const auto* item : screens::visibleItems(shown.window()))
            if (item->inherits("QQuickText"))
                begins.insert(item->property("text").toString(), boxOf(*item).top());
        REQUIRE(begins.contains(board.meaning()));
        REQUIRE(begins.contains(board.doNow()));
        REQUIRE(begins.contains(board.reason()));
        CHECK(begins.value(board.doNow()) < begins.value(board.meaning()));
        CHECK(begins.value(board.meaning()) < begins.value(board.reason()));
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

namespace {

/// The eleven marks of one side of the question in sight, 0 first, as boxes of the window. \returns fewer where some are missing.
QList<QRectF> marksOf(QQuickWindow& window, const EntryBoard& board, const diaryapp::SideAnswer& side)
{
    QList<QRectF> boxes;
    for (int points = 0; points <= 10; ++points)
        if (const auto* mark = screens::named(window, QCoreApplication::translate("GaugeMark", "%1: %2 of 10")
                                                          .arg(board.question() + QLatin1Char(' ') + side.name, QLocale().toString(points))))
            boxes << boxOf(*mark);
    return boxes;
}

/// What of the window shows the page: below its top line, above its foot.
QRectF roomOf(QQuickWindow& window)
{
    for (const auto* item : screens::visibleItems(window))
        if (item->inherits("QQuickFlickable"))
            return boxOf(*item);
    return {};
}

}  // namespace

TEST_CASE("0 is answered as easily as 7: on the smallest phone no number of a question is out of sight, and 0 is in sight in the largest text", "[diary][screens][entry]")
{
    const auto* language = GENERATE("en", "de", "es", "fr", "pt_BR", "ar", "tr", "zh_CN");
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780), QSize(390, 844));
    const int textSize = GENERATE(0, 2);
    CAPTURE(language, size.width(), textSize);
    Shown shown(QString::fromLatin1(language), size, textSize);
    shown.patient.goTo(0, 15);
    DemoPatient::tell(*shown.program, 4);  // so that last time's answers take their room
    shown.patient.goTo(1, 12);
    shown.program->dismissNotice();  // of that save; it goes by itself
    shown.program->openEntry();
    auto& board = *shown.program->entry();
    int questions = 0;
    for (; board.step() == EntryBoard::Step::Score; board.next(), ++questions) {
        screens::settle(shown.window());
        const QRectF room = roomOf(shown.window()).adjusted(-0.5, -0.5, 0.5, 0.5);
        CAPTURE(board.question().toStdString(), room.top(), room.bottom());
        bool first = true;
        for (const auto& side : board.sides()) {
            const auto boxes = marksOf(shown.window(), board, side);
            REQUIRE(boxes.size() == 11);
            double top = boxes.first().top();
            double bottom = boxes.first().bottom();
            for (const QRectF& box : boxes) {
                CHECK(box.width() >= 48);
                CHECK(box.height() >= 48);
                top = std::min(top, box.top());
                bottom = std::max(bottom, box.bottom());
            }
            CAPTURE(side.name.toStdString(), top, bottom);
            // Without scrolling at the usual size; with the largest text the row of 0 of the first side, and each side in one view.
            if (textSize == 0)
                CHECK((top >= room.top() && bottom <= room.bottom()));
            else if (first)
                CHECK((boxes.first().top() >= room.top() && boxes.first().bottom() <= room.bottom()));
            CHECK(bottom - top <= room.height());
            first = false;
        }
    }
    CHECK(questions == 5);
}

TEST_CASE("an ordinary entry, all questions on both sides and no sign, takes 18 touches from the day back to the day", "[diary][screens][entry]")
{
    Shown shown(QStringLiteral("en"), QSize(390, 844), 0);
    int touches = 0;
    const auto touch = [&](const QString& name) {
        CAPTURE(name.toStdString());
        REQUIRE(screens::touch(shown.window(), name));
        ++touches;
    };
    touch(QStringLiteral("Write down how it is"));
    auto& board = *shown.program->entry();
    while (board.step() == EntryBoard::Step::Score) {
        const auto sides = board.sides();
        for (const auto& side : sides)
            touch(QStringLiteral("%1 %2: 3 of 10").arg(board.question(), side.name));
        touch(board.nextWord());
    }
    touch(board.signsWord());
    touch(QStringLiteral("Save"));
    CHECK(shown.program->page() == Page::today);
    CHECK(shown.program->home().diary().history().front().history.current().scores.size() == 10);
    CHECK(touches == 18);
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

namespace {

/// The drawn faces in sight, as tinted side to where it begins, in px of the window.
QMap<int, double> facesIn(const QQuickItem& item)
{
    QMap<int, double> faces;
    for (const auto* child : item.childItems()) {
        if (!child->isVisible())
            continue;
        if (const auto* face = qobject_cast<const face::FaceChart*>(child))
            faces.insert(face->tintedSide(), face->mapToScene(QPointF()).x());
        faces.insert(facesIn(*child));
    }
    return faces;
}

}  // namespace

TEST_CASE("each side of a question shows its half of a drawn face where there is room", "[diary][flows][face]")
{
    const auto* language = GENERATE("en", "ar");
    CAPTURE(language);
    Shown shown(QString::fromLatin1(language), QSize(360, 780), 0);
    auto& program = shown.program;
    program->openEntry();
    screens::settle(*program->window());

    const auto faces = facesIn(*program->window()->contentItem());
    REQUIRE(faces.size() == 2);
    REQUIRE(faces.contains(static_cast<int>(recovery::Side::left)));
    REQUIRE(faces.contains(static_cast<int>(recovery::Side::right)));
    // As a face is seen from in front, in every language.
    CHECK(faces[static_cast<int>(recovery::Side::right)] < faces[static_cast<int>(recovery::Side::left)]);

    program->settings()->setTextSize(2);
    program->window()->resize(320, 640);
    screens::settle(*program->window());
    CHECK(facesIn(*program->window()->contentItem()).isEmpty());
}
