// The line that tells something, on a living page: said at once by a screen reader, and gone while there is nothing to tell.
#include "tests/screens/diary_hands.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QAccessible>
#include <QFont>

using namespace ebbline;
using screens::DemoPatient;

TEST_CASE("what tells something is said at once, is strong, and is gone while there is nothing to tell", "[diary][screens][told]")
{
    const QString passphrase = QString::fromLatin1(DemoPatient::passphrase);
    const QString other = QStringLiteral("four grey geese rest here");
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openKeys();
    screens::open(*program);
    auto& window = *program->window();
    auto& keys = *program->keys();

    keys.change(passphrase, other, other);
    screens::settle(window);
    const QString outcome = keys.outcome();
    REQUIRE_FALSE(outcome.isEmpty());
    auto* line = screens::spoken(window, outcome);
    REQUIRE(line != nullptr);
    CHECK(QAccessible::queryAccessibleInterface(line)->role() == QAccessible::AlertMessage);
    CHECK(line->property("font").value<QFont>().weight() == QFont::DemiBold);
    const auto calm = line->property("color");

    keys.clear();
    screens::settle(window);
    CHECK_FALSE(line->isVisible());
    CHECK(screens::spoken(window, outcome) == nullptr);

    // What is wrong with a field is said in the same way, in the colour of what presses.
    keys.change(QStringLiteral("a wrong guess at it"), other, other);
    screens::settle(window);
    auto* wrong = screens::spoken(window, keys.oldProblem());
    REQUIRE(wrong != nullptr);
    CHECK(QAccessible::queryAccessibleInterface(wrong)->role() == QAccessible::AlertMessage);
    CHECK(wrong->property("font").value<QFont>().weight() == QFont::Normal);
    CHECK(wrong->property("color") != calm);
}
