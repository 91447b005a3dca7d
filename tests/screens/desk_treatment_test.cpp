// The page of a treatment: what it says quietly, what it says aloud, and what stays within reach.
#include "tests/screens/complaints.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <QColor>
#include <QCoreApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>

#include <memory>

using namespace ebbline;

namespace {

/// What the pages say in the language of the program.
QString said(const char* context, const char* words) { return QCoreApplication::translate(context, words); }

constexpr int mouse = 4, spaceKey = 1, reader = 3;  // screens::hands()

/// The item of that name which is on show; none: nullptr.
QQuickItem* shownItem(QQuickItem& root, const QString& name)
{
    if (!root.isVisible())
        return nullptr;
    if (root.objectName() == name)
        return &root;
    for (auto* child : root.childItems())
        if (auto* found = shownItem(*child, name))
            return found;
    return nullptr;
}

void open(app::DeskProgram& program)
{
    REQUIRE(program.show(QSize(1280, 900)));
    auto& window = *program.window();
    window.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    screens::settle(window);
}

}  // namespace

TEST_CASE("the note on the volume along one track is quiet wherever it stands, for it is common practice and no limit", "[desk][flows][treatment]")
{
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.draw({296, 170}, {252, 262});
    editor.setTrackMl(0.6);
    REQUIRE_FALSE(editor.doseTracks().isEmpty());
    auto& window = *program->window();
    const int step = GENERATE(1, 2);
    editor.setStep(step);
    screens::settle(window);

    auto* note = shownItem(*window.contentItem(), QStringLiteral("trackNote"));
    REQUIRE(note != nullptr);
    CHECK(note->property("text").toString() == editor.doseTracks());
    QQmlComponent component(qmlEngine(note));
    component.setData("import QtQuick\nimport Ebbline.Theme\nQtObject { readonly property color quiet: Theme.inkSoft }", {});
    const std::unique_ptr<QObject> tokens(component.create());
    REQUIRE(tokens);
    CHECK(note->property("color").value<QColor>() == tokens->property("quiet").value<QColor>());
    CHECK(ear.take() == "");
}

TEST_CASE("the plan can be dropped when the last thread is gone, and a second twin is refused in words", "[desk][flows][treatment]")
{
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.setStep(1);
    editor.draw({296, 170}, {252, 262});
    editor.mirrorSelected();
    auto& window = *program->window();
    screens::settle(window);
    REQUIRE(shownItem(*window.contentItem(), QStringLiteral("mirrorSaid")) == nullptr);
    REQUIRE(screens::click(window, QStringLiteral("Mirror")));
    CHECK(editor.treatment().placements.size() == 2);
    screens::settle(window);
    auto* told = shownItem(*window.contentItem(), QStringLiteral("mirrorSaid"));
    REQUIRE(told != nullptr);
    CHECK(told->property("text").toString() == editor.mirrorSaid());

    editor.keepAsPlan();
    editor.removeSelected();
    editor.choose(1);
    editor.removeSelected();
    REQUIRE(editor.treatment().placements.empty());
    screens::settle(window);
    REQUIRE(screens::click(window, QStringLiteral("Drop the plan")));
    CHECK_FALSE(editor.isPlanned());
    CHECK(ear.take() == "");
}

TEST_CASE("where epinephrine was is said for six threads in one act, with each kind of hands", "[desk][flows][treatment]")
{
    const int kind = GENERATE(mouse, spaceKey, reader);
    const char* language = GENERATE("en", "ar");
    CAPTURE(kind, language);
    screens::Ear ear;
    screens::DemoClinic clinic;
    auto program = clinic.program(QString::fromLatin1(language));
    open(*program);
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1);
    for (const double across : {296.0, 280.0, 264.0})
        editor.draw({across, 170}, {across - 40, 262});
    editor.mirrorAll();
    editor.setStep(2);
    auto& window = *program->window();
    screens::settle(window);

    REQUIRE(screens::hands(kind, window).use(said("TreatmentAnaesthetic", "Where it held epinephrine, all threads at once") + QStringLiteral(": ")
                                             + said("ebbline::deskapp::TreatmentEditor", "At the entry point")));

    const auto treatment = editor.treatment();
    REQUIRE(treatment.placements.size() == 6);
    for (const auto& thread : treatment.placements)
        CHECK(thread.epinephrineAt == recovery::EpinephrineAt::entryPoint);
    CHECK(treatment.anaesthetic.drug == recovery::Drug::lidocaineWithEpinephrine);
    CHECK(ear.take() == "");
}
