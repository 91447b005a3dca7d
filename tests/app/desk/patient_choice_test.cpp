// Whose treatment it is: the chosen patient is told apart by more than a colour.
#include "tests/screens/demo_clinic.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

#include <QAccessible>

using namespace ebbline;

namespace {

struct Seen {
    QStringList names;
    QStringList checked;  ///< as a screen reader says it
    QStringList marked;   ///< as the eye sees it, in any colour
};

Seen patientsOn(QQuickWindow& window)
{
    Seen seen;
    for (QQuickItem* item : screens::visibleItems(window)) {
        auto* accessible = QAccessible::queryAccessibleInterface(item);
        if (accessible == nullptr || accessible->role() != QAccessible::RadioButton
            || !accessible->text(QAccessible::Name).contains(QLatin1String("555")))
            continue;
        const auto name = accessible->text(QAccessible::Name).section(QStringLiteral(" · "), 0, 0);
        seen.names << name;
        if (accessible->state().checked)
            seen.checked << name;
        const auto* mark = item->findChild<QQuickItem*>(QStringLiteral("mark"));
        if (mark != nullptr && mark->isVisible())
            seen.marked << name;
    }
    return seen;
}

}  // namespace

TEST_CASE("the chosen patient carries a mark and is said to be checked, and nobody else", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    REQUIRE(program->show(QSize(1280, 720)));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.setStep(0);
    screens::settle(*program->window());
    auto seen = patientsOn(*program->window());
    REQUIRE(seen.names.size() >= 3);
    CHECK(seen.checked.isEmpty());
    CHECK(seen.marked.isEmpty());

    for (const int number : {1, 2}) {
        const auto row = editor.patients()->rows()[number].value.value<deskapp::PatientRow>();
        editor.choosePatient(row.key);
        screens::settle(*program->window());
        seen = patientsOn(*program->window());
        CHECK(seen.checked == QStringList{row.name});
        CHECK(seen.marked == QStringList{row.name});
    }
}
