// The page that a window opens on, at the desk: everything is where it is when one comes to it from another page.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/desk_pages.h"
#include "tests/screens/first_page.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

using namespace ebbline;

TEST_CASE("a page of the desk that a window opens on is laid out as one that was come to", "[desk][screens]")
{
    const auto percent = GENERATE(100, 200);
    CAPTURE(percent);
    screens::DemoClinic clinic(screens::pastCourses);
    auto program = clinic.program(QStringLiteral("en"), clinic.hub());
    program->settings()->setTextPercent(percent);
    REQUIRE(program->show(QSize(1280, 720)));
    for (const auto& page : screens::deskPages()) {
        page.show(*program, clinic);
        CAPTURE(page.name.toStdString());
        CHECK(screens::listed(screens::otherWhenFirst(*program, QStringLiteral("qrc:/qt/qml/Ebbline/Desk/Main.qml"))) == "");
    }
}
