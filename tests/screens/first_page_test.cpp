// The page that a window opens on, at the phone: everything is where it is when one comes to it from another page.
#include "tests/screens/complaints.h"
#include "tests/screens/diary_pages.h"
#include "tests/screens/first_page.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;

TEST_CASE("a page of the diary that a window opens on is laid out as one that was come to: the number to call is in sight", "[diary][screens][safety]")
{
    const auto* language = GENERATE("en", "ar");
    const auto textSize = GENERATE(0, 2);
    CAPTURE(language, textSize);
    screens::DemoPatient patient;
    auto program = patient.program(QString::fromLatin1(language));
    program->settings()->setTextSize(textSize);
    REQUIRE(program->show(QSize(390, 844)));
    for (const auto& page : screens::diaryPages()) {
        page.show(*program, patient);
        CAPTURE(page.name.toStdString());
        if (page.name == QLatin1String("lock_drawn"))
            continue;  // whether the new passphrase is shown is up to the window
        CHECK(screens::listed(screens::otherWhenFirst(*program, QStringLiteral("qrc:/qt/qml/Ebbline/Diary/Main.qml"))) == "");
    }
}
