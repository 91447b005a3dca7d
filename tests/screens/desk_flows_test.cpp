// The desk used from end to end on its real pages: with a mouse, with a keyboard, and with a screen reader.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QTest>

using namespace ebbline;
using screens::hands;
using screens::typeKeys;
using Page = app::DeskProgram::Page;

namespace {

constexpr QSize desk(1280, 900);

void open(app::DeskProgram& program)
{
    REQUIRE(program.show(desk));
    auto& window = *program.window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);
}

}  // namespace

TEST_CASE("a scanner that types the mark after the lot is heard: the lot ends where it ends", "[desk][flows][pack]")
{
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1);
    editor.setStep(1);
    editor.draw({296, 170}, {252, 262});
    auto& window = *program->window();
    screens::settle(window);

    REQUIRE(screens::click(window, QStringLiteral("Code on the pack: scan it, or type it with its brackets")));
    typeKeys(window, QStringLiteral("10TH-4417"));
    QKeyEvent mark(QEvent::KeyPress, Qt::Key_BracketRight, Qt::ControlModifier, QStringLiteral("\u001d"));
    QCoreApplication::sendEvent(&window, &mark);
    typeKeys(window, QStringLiteral("21A17"));
    QTest::keyClick(&window, Qt::Key_Return);
    screens::settle(window);

    CHECK(editor.packProblem().isEmpty());
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    CHECK(ear.take() == "");
}
