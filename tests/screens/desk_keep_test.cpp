// The page that keeps a desk's vault, used from end to end: with a mouse, with a keyboard, and with a screen reader.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QCoreApplication>
#include <QTest>

using namespace ebbline;

namespace {

QString said(const char* context, const char* words) { return QCoreApplication::translate(context, words); }

constexpr int mouse = 4, spaceKey = 1, reader = 3;  // screens::hands()

}  // namespace

TEST_CASE("a recovery code is read back from its paper at the desk, with each kind of hands", "[desk][flows][keep]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    const char* language = GENERATE("en", "ar");
    CAPTURE(kind, language);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    program->openKeep();
    REQUIRE(program->show(QSize(1280, 900)));
    auto& window = *program->window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);
    const auto act = screens::hands(kind, window);
    auto& keep = *program->keep();
    keep.makeCode(QString::fromLatin1(screens::DemoClinic::passphrase));
    while (keep.isBusy())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    screens::settle(window);

    const QString code = keep.code();
    REQUIRE_FALSE(code.isEmpty());
    REQUIRE(screens::spoken(window, code) != nullptr);
    REQUIRE(act.use(said("KeepPage", "It is written down")));
    CHECK(screens::spoken(window, code) == nullptr);
    REQUIRE(act.fill(keep.askedText(), QStringLiteral("2")));
    REQUIRE(act.use(said("CodeBack", "It is on my paper")));
    CHECK(screens::spoken(window, keep.askedProblem()) != nullptr);
    REQUIRE(act.use(said("CodeBack", "Show it once more")));
    CHECK(screens::spoken(window, code) != nullptr);
    REQUIRE(act.use(said("KeepPage", "It is written down")));
    REQUIRE(act.fill(keep.askedText(), code.section(QLatin1Char('-'), keep.askedGroup() - 1, keep.askedGroup() - 1)));
    REQUIRE(act.use(said("CodeBack", "It is on my paper")));
    CHECK(keep.code().isEmpty());
    CHECK(screens::spoken(window, keep.outcome()) != nullptr);
    CHECK(ear.take() == "");
}
