// Writing down a treatment: the draft survives, what is missing is said, and the record is exact.
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>

using namespace ebbline;

namespace {

void writeDown(deskapp::TreatmentEditor& editor)
{
    REQUIRE(editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1));
    editor.draw({296, 170}, {252, 262});
    editor.setLot(QStringLiteral("TH-9"));
    editor.setTrackMl(0.4);
    editor.mirrorSelected();
    editor.setWeight(QStringLiteral("61"));
    editor.setConsentGiven(true);
    editor.setCautionsGiven(true);
}

}  // namespace

TEST_CASE("a treatment is recorded as it was written, and the desk goes on to link the phone", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    QSignalSpy recorded(&editor, &deskapp::TreatmentEditor::recorded);
    writeDown(editor);
    REQUIRE(editor.missing().isEmpty());
    const auto written = editor.treatment();

    editor.save();

    REQUIRE(recorded.count() == 1);
    const auto course = deskapp::courseFromKey(recorded[0][0].toString());
    const auto& kept = program->workplace().state().courses.at(course).treatment->treatment;
    CHECK(kept == written);
    CHECK(kept.placements.size() == 2);
    CHECK(kept.placements[1].side == recovery::Side::right);
    CHECK(program->page() == app::DeskProgram::Page::pairing);
    const auto drafted = program->workplace().desk().drafted();
    REQUIRE(drafted);
    CHECK(drafted->empty());
}

TEST_CASE("a draft outlives the program", "[desk][treatment][draft]")
{
    screens::DemoClinic clinic;
    {
        auto program = clinic.program(QStringLiteral("en"));
        program->openTreatment();
        writeDown(*program->treatment());
    }
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();

    CHECK(program->treatment()->isFromDraft());
    CHECK(program->treatment()->patientName() == QLatin1String("Lea Fontaine"));
    CHECK(program->treatment()->placements()->rowCount() == 2);
    CHECK(program->treatment()->weight() == QLatin1String("61"));
}

TEST_CASE("what is missing is named, and nothing is recorded without it", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    QSignalSpy recorded(&editor, &deskapp::TreatmentEditor::recorded);

    CHECK(editor.missing().size() == 4);
    editor.save();
    CHECK(recorded.isEmpty());

    writeDown(editor);
    editor.setConsentGiven(false);
    CHECK(editor.missing() == QStringList{QStringLiteral("Note that consent was given.")});
    editor.save();
    CHECK(recorded.isEmpty());
}

TEST_CASE("a weight that is no number, or cannot be right, stops the record", "[desk][treatment][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    writeDown(editor);

    editor.setWeight(QStringLiteral("sixty"));
    CHECK(editor.missing().size() == 1);
    CHECK(editor.doseShare().isEmpty());
    editor.setWeight(QStringLiteral("6"));
    CHECK(editor.missing().size() == 1);
    CHECK(editor.doseGiven().isEmpty());
    editor.setWeight(QStringLiteral("61,5"));  // a comma is not this language's sign
    editor.setWeight(QStringLiteral("61.5"));
    CHECK(editor.missing().isEmpty());
}

TEST_CASE("lidocaine given otherwise is counted, kept, undone, and no number is shown while it cannot be read", "[desk][treatment][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    writeDown(editor);
    const auto without = editor.doseGiven();
    CHECK(editor.otherwise().isEmpty());
    CHECK_FALSE(editor.treatment().otherwiseMg);  // nothing said is not none

    editor.setOtherwise(QStringLiteral("37.5"));
    CHECK(editor.treatment().otherwiseMg == 37.5);
    CHECK(editor.doseGiven().contains(QLatin1String("37.5 mg given otherwise")));
    for (const auto* unread : {"37.55", "-5", "1001", "some"}) {
        editor.setOtherwise(QLatin1String(unread));
        CAPTURE(unread);
        CHECK_FALSE(editor.otherwiseProblem().isEmpty());
        CHECK(editor.doseGiven().isEmpty());
        CHECK(editor.missing().contains(editor.otherwiseProblem()));
    }
    editor.setOtherwise(QStringLiteral("40"));
    CHECK(editor.otherwiseProblem().isEmpty());

    program.reset();
    auto again = clinic.program(QStringLiteral("en"));
    again->openTreatment();
    CHECK(again->treatment()->otherwise() == QLatin1String("40"));
    again->treatment()->setOtherwise({});
    CHECK(again->treatment()->doseGiven() == without);
    again->treatment()->undo();
    CHECK(again->treatment()->otherwise() == QLatin1String("40"));
    CHECK(again->treatment()->treatment().otherwiseMg == 40);
}

TEST_CASE("changing the drug keeps the record consistent", "[desk][treatment][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    writeDown(editor);

    editor.setDrug(2);
    REQUIRE(editor.dilutionIndex() >= 0);
    CHECK(editor.dilutionNames().at(editor.dilutionIndex()).contains(QLatin1String("200")));
    CHECK(editor.missing().isEmpty());
    editor.setDrug(1);
    CHECK(editor.dilutionIndex() == -1);
    CHECK(editor.missing().isEmpty());
}

TEST_CASE("a thread past its expiry is pointed out, one without a date is not", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    writeDown(editor);

    CHECK(editor.expiryProblem().isEmpty());
    editor.setExpiry(QStringLiteral("2027-03-21"));
    CHECK(editor.expiryProblem().contains(QLatin1String("past its expiry")));
    editor.setExpiry(QStringLiteral("2027-03-22"));
    CHECK(editor.expiryProblem().isEmpty());
    editor.setExpiry(QStringLiteral("June"));
    CHECK(editor.expiryProblem().contains(QLatin1String("2029-06-30")));
}

TEST_CASE("undo and redo go through drawing, moving and removing", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.draw({296, 170}, {252, 262});
    editor.move(1, {290, 175}, {252, 262});
    editor.removeSelected();
    REQUIRE(editor.placements()->rowCount() == 0);

    editor.undo();
    REQUIRE(editor.placements()->rowCount() == 1);
    CHECK(editor.tracks().first().entry == QPointF(290, 175));
    editor.undo();
    CHECK(editor.tracks().first().entry == QPointF(296, 170));
    editor.redo();
    CHECK(editor.tracks().first().entry == QPointF(290, 175));
}

TEST_CASE("a thread moved to the other side is of that side, unless she chose hers: then the drawing is said to differ", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.draw({296, 170}, {262, 268});
    REQUIRE(editor.side() == static_cast<int>(recovery::Side::left));
    CHECK(editor.drawnOtherwise().isEmpty());

    editor.move(1, {104, 170}, {138, 268});
    CHECK(editor.side() == static_cast<int>(recovery::Side::right));
    CHECK(editor.drawnOtherwise().isEmpty());

    editor.setSide(static_cast<int>(recovery::Side::left));
    CHECK(editor.drawnOtherwise().contains(QLatin1String("Right")));
    editor.move(1, {110, 170}, {144, 268});
    CHECK(editor.side() == static_cast<int>(recovery::Side::left));
    CHECK(editor.drawnOtherwise().contains(QLatin1String("Right")));
    editor.undo();
    editor.undo();
    editor.undo();
    CHECK(editor.side() == static_cast<int>(recovery::Side::left));
    CHECK(editor.tracks().first().entry == QPointF(296, 170));
    CHECK(editor.drawnOtherwise().isEmpty());
}

TEST_CASE("a baseline score can be given and taken back: a dash is not a zero", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();

    editor.setBaseline(1, 2, 0);
    CHECK(editor.treatment().baseline.size() == 1);
    editor.setBaseline(1, 2, -1);
    CHECK(editor.treatment().baseline.empty());
}

TEST_CASE("a thread that was redone says how and why, in the record and on the course, and is not recorded without a reason", "[desk][treatment][redone]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& editor = *program->treatment();
    program->openTreatment();
    editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 0);
    editor.draw({296, 170}, {252, 262});
    CHECK(editor.redone() == 0);
    editor.setRedone(1);
    CHECK_FALSE(editor.redoneProblem().isEmpty());
    CHECK(editor.missing().contains(QStringLiteral("Thread 1 was redone: say why.")));
    editor.setRedoneReason(QStringLiteral("it stood under the skin"));
    CHECK(editor.redoneProblem().isEmpty());
    CHECK_FALSE(editor.missing().contains(QStringLiteral("Thread 1 was redone: say why.")));
    editor.draw({300, 190}, {230, 330});
    CHECK(editor.redone() == 0);  // the next thread was not redone by that

    editor.setConsentGiven(true);
    editor.setCautionsGiven(true);
    CHECK(editor.placedBy() == 0);  // whoever types is not presumed to have placed the threads
    editor.setPlacedBy(1);
    CHECK_FALSE(editor.treatment().placedBy.empty());
    editor.setPlacedBy(0);
    CHECK(editor.treatment().placedBy.empty());
    editor.setPlacedBy(static_cast<int>(editor.placedByNames().indexOf(QStringLiteral("Ilan Osei"))));
    const auto course = editor.treatment().course;
    editor.save();

    const auto view = program->workplace().desk().course(course);
    REQUIRE(view);
    const auto& treatment = view->state->treatment->treatment;
    CHECK(treatment.placedBy == "Ilan Osei");
    REQUIRE(treatment.placements.size() == 2);
    CHECK(treatment.placements[0].redone == recovery::Redone{recovery::Redoing::replaced, "it stood under the skin"});
    CHECK_FALSE(treatment.placements[1].redone);
    program->openCourse(deskapp::keyOf(course));
    CHECK(program->course()->threads().first().contains(QLatin1String("Taken out and placed anew: it stood under the skin")));
    CHECK(program->course()->care().contains(QLatin1String("Threads placed by: Ilan Osei")));
}
