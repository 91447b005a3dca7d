// Every page and state of the diary, at the sizes, languages, text sizes and looks it promises: names
// and acts for screen readers, targets under a thumb, nothing cut off, nothing faint, no complaints.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_pages.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QPointer>
#include <QSet>
#include <QTest>
#include <QTranslator>

using namespace ebbline;
using screens::listed;

namespace {

constexpr qreal leastTarget = 48;  ///< px, under a thumb
constexpr int looks = 3;           ///< light, dark, high contrast

void checkLayout(QQuickWindow& window)
{
    CHECK(listed(screens::withoutName(window)) == "");
    CHECK(listed(screens::withoutAction(window)) == "");
    CHECK(listed(screens::smallTargets(window, leastTarget)) == "");
    CHECK(listed(screens::cutOff(window)) == "");
    CHECK(listed(screens::overEdge(window)) == "");
    CHECK(listed(screens::overlapping(window)) == "");
    CHECK(listed(screens::brokenWords(window)) == "");
    CHECK(listed(screens::outOfOrder(window)) == "");
}

/// Plays a whole course in one language at one size and text size, in the looks given.
void walk(const QString& language, const QSize& size, int textSize, int looksTried)
{
    CAPTURE(language.toStdString(), textSize, size.width(), size.height());
    screens::Ear ear;
    screens::DemoPatient patient;
    auto program = patient.program(language);
    program->settings()->setTextSize(textSize);
    REQUIRE(program->show(size));

    QSet<QString> shown;
    for (const auto& page : screens::diaryPages()) {
        page.show(*program, patient);
        auto& window = *program->window();
        screens::settle(window);
        shown << program->pageName();
        CAPTURE(page.name.toStdString());
        if (page.name == QLatin1String("join_unprotected") || page.name == QLatin1String("join_stranger"))
            CHECK_FALSE(program->joining()->problem().isEmpty());
        if (page.name == QLatin1String("entry_note_full"))
            CHECK_FALSE(program->entry()->noteProblem().isEmpty());
        if (page.name == QLatin1String("today_visit_moved"))
            CHECK_FALSE(program->today()->visitMoved().isEmpty());
        REQUIRE(window.size() == size);
        CHECK(listed(screens::emptyPage(window, program->pageTitle())) == "");
        checkLayout(window);
        for (int look = looksTried - 1; look >= 0; --look) {
            CAPTURE(look);
            program->settings()->setLook(look);
            CHECK(listed(screens::faint(window)) == "");
        }
        CHECK(ear.take() == "");
    }
    CHECK(shown.size() == 16);  // each page of DiaryProgram::Page
}

/// On phones, at 100 % and 200 %, in every look.
void walkPhones(const char* language)
{
    const auto textSize = GENERATE(0, 2);
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780), QSize(390, 844));
    walk(QString::fromLatin1(language), size, textSize, looks);
}

}  // namespace

TEST_CASE("every page in English names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walkPhones("en");
}

TEST_CASE("every page in German names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walkPhones("de");
}

TEST_CASE("every page in Arabic names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walkPhones("ar");
}

TEST_CASE("every page in the other languages fits the smallest phone with the largest text", "[diary][screens]")
{
    const auto language = GENERATE("es", "fr", "pt_BR", "tr", "zh_CN");
    walk(QString::fromLatin1(language), QSize(320, 568), 2, 1);
}

TEST_CASE("every page fits a phone held sideways, and a tablet either way", "[diary][screens]")
{
    const auto size = GENERATE(QSize(568, 320), QSize(844, 390), QSize(768, 1024), QSize(1024, 768));
    const auto textSize = GENERATE(0, 2);
    walk(QStringLiteral("de"), size, textSize, 1);
}

TEST_CASE("words that grow by two fifths, with marks above and below, are still not cut off", "[diary][screens]")
{
    // Longer words in a language that nobody speaks show what the ones at hand may hide.
    class Stretched final : public QTranslator {
    public:
        QString translate(const char*, const char* source, const char*, int count) const override
        {
            const QString plain = QString::fromUtf8(source);
            // Forms of dates and lists of file endings are no words.
            if (plain.contains(QLatin1String("MMMM")) || plain.contains(QLatin1String("*.")) || plain.size() < 3)
                return {};
            QString longer = plain;
            longer.replace(QLatin1String("a"), QStringLiteral("ä")).replace(QLatin1String("e"), QStringLiteral("ẽ"))
                .replace(QLatin1String("o"), QStringLiteral("ố")).replace(QLatin1String("g"), QStringLiteral("ģ"));
            if (count >= 0)
                longer.replace(QLatin1String("%n"), QString::number(count));
            for (qsizetype grown = 0; grown < plain.size() * 2 / 5; grown += 4)
                longer += QStringLiteral(" ỗẙ");
            return longer;
        }
        bool isEmpty() const override { return false; }
    };
    const auto size = GENERATE(QSize(320, 568), QSize(390, 844));
    Stretched stretched;
    screens::Ear ear;
    screens::DemoPatient patient;
    auto program = patient.program(QStringLiteral("en"));
    program->settings()->setTextSize(1);
    QCoreApplication::installTranslator(&stretched);
    REQUIRE(program->show(size));
    for (const auto& page : screens::diaryPages()) {
        page.show(*program, patient);
        screens::settle(*program->window());
        CAPTURE(page.name.toStdString(), size.width());
        CHECK(listed(screens::cutOff(*program->window())) == "");
        CHECK(listed(screens::overEdge(*program->window())) == "");
        CHECK(listed(screens::overlapping(*program->window())) == "");
    }
    QCoreApplication::removeTranslator(&stretched);
}

TEST_CASE("the keyboard reads the parts and a licence of the diary to their end", "[diary][screens][keys]")
{
    screens::DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    REQUIRE(program->show(QSize(360, 780)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    program->openNotices();
    CHECK(screens::tabUntil(window, program->notices()->parts().last().name).toStdString() == "");
    program->openLicence(QStringLiteral("MPL-2.0"));
    CHECK(screens::tabUntil(window, program->notices()->paragraphs().last()).toStdString() == "");
}

TEST_CASE("a keyboard on the screen never hides the field that is typed into", "[diary][screens]")
{
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780), QSize(844, 390));
    const auto textSize = GENERATE(0, 2);
    CAPTURE(size.width(), size.height(), textSize);
    screens::DemoPatient patient;
    auto program = patient.joined(QStringLiteral("de"));
    program->settings()->setTextSize(textSize);
    REQUIRE(program->show(size));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    const qreal keyboard = std::min(260.0, size.height() * 0.5);
    int fields = 0;
    const auto checkFields = [&] {
        program->setKeyboardHeight(0);
        screens::settle(window);
        QList<QPointer<QQuickItem>> found;
        for (auto* item : screens::visibleItems(window))
            if (item->inherits("QQuickTextField") || item->inherits("QQuickTextArea"))
                found << item;
        for (const auto& item : found) {
            program->setKeyboardHeight(0);
            screens::settle(window);
            REQUIRE(item);
            item->forceActiveFocus(Qt::MouseFocusReason);
            program->setKeyboardHeight(keyboard);
            screens::settle(window);
            const auto cursor = item->mapRectToScene(item->property("cursorRectangle").toRectF());
            CAPTURE(program->pageName().toStdString(), cursor.top(), cursor.bottom());
            CHECK(cursor.bottom() <= size.height() - keyboard + 1);
            CHECK(cursor.top() >= 0);
            ++fields;
        }
    };
    program->openKeys();
    checkFields();
    program->openNotes();
    checkFields();
    program->openEntry();
    while (program->entry()->step() != diaryapp::EntryBoard::Step::Rest)
        program->entry()->next();
    checkFields();
    program->lock();
    checkFields();
    CHECK(fields == 4 + 1 + 2 + 1);
}
