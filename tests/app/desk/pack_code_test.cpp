// A pack's code that can mean several things, and the thread that it was scanned for.
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <functional>

using namespace ebbline;

TEST_CASE("what a code may mean is asked about the thread that it was scanned for, and about no other", "[desk][treatment][pack][safety]")
{
    screens::DemoClinic clinic;
    const auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.startOver();
    editor.draw({296, 170}, {252, 262});
    editor.draw({300, 190}, {230, 330});
    const std::vector<std::function<void()>> ways{
        [&] { editor.choose(1); }, [&] { editor.draw({310, 200}, {240, 320}); }, [&] { editor.undo(); }, [&] { editor.redo(); },
        [&] { editor.move(1, {290, 172}, {250, 260}); }, [&] { editor.duplicateSelected(); }, [&] { editor.removeSelected(); }};
    for (const auto& leave : ways) {
        CHECK_FALSE(editor.takePackCode(QStringLiteral("10TH-441721A17")));
        REQUIRE(editor.packReadings().size() == 2);
        leave();
        CHECK(editor.packReadings().isEmpty());
        CHECK(editor.packProblem().isEmpty());
        editor.takePackReading(1);
        CHECK(editor.lot().isEmpty());
    }
}
