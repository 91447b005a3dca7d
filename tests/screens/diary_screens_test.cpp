// Every page and state of the diary, at the sizes, languages, text sizes and looks it promises: names
// and acts for screen readers, targets under a thumb, nothing cut off, nothing faint, no complaints.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_pages.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QSet>

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
}

/// Plays a whole course in one language at every size, text size and look.
void walk(const char* language)
{
    const auto textSize = GENERATE(0, 2);  // 100 % and 200 %
    const auto size = GENERATE(QSize(320, 568), QSize(360, 780), QSize(390, 844));
    CAPTURE(textSize, size.width(), size.height());
    screens::Ear ear;
    screens::DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    program->settings()->setTextSize(textSize);
    REQUIRE(program->show(size));

    QSet<QString> shown;
    for (const auto& page : screens::diaryPages()) {
        page.show(*program, patient);
        auto& window = *program->window();
        screens::settle(window);
        shown << program->pageName();
        CAPTURE(page.name.toStdString());
        REQUIRE(window.size() == size);
        checkLayout(window);
        for (int look = looks - 1; look >= 0; --look) {
            CAPTURE(look);
            program->settings()->setLook(look);
            CHECK(listed(screens::faint(window)) == "");
        }
        CHECK(ear.take() == "");
    }
    CHECK(shown.size() == 9);  // each page of DiaryProgram::Page
}

}  // namespace

TEST_CASE("every page in English names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walk("en");
}

TEST_CASE("every page in German names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walk("de");
}

TEST_CASE("every page in Arabic names its controls, gives room to touch them, and cuts no word off", "[diary][screens]")
{
    walk("ar");
}
