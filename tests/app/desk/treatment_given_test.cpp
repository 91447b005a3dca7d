// Needle or cannula, and where the anaesthetic held epinephrine: thread by thread, and for all at once; the plan beside it.
#include "app/desk/model/words.h"
#include "app/desk/sheet/sheet_content.h"
#include "tests/screens/demo_clinic.h"
#include "tests/screens/hands.h"
#include "tests/screens/screen_check.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using recovery::Drug;
using recovery::EpinephrineAt;
using recovery::Instrument;

namespace {

void drawTwo(deskapp::TreatmentEditor& editor)
{
    REQUIRE(editor.registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1));
    editor.draw({296, 170}, {252, 262});
    editor.setTrackMl(0.4);
    editor.mirrorSelected();
    editor.setWeight(QStringLiteral("61"));
    editor.setConsentGiven(true);
    editor.setCautionsGiven(true);
}

std::vector<std::optional<EpinephrineAt>> placesOf(const deskapp::TreatmentEditor& editor)
{
    std::vector<std::optional<EpinephrineAt>> places;
    for (const auto& placement : editor.treatment().placements)
        places.push_back(placement.epinephrineAt);
    return places;
}

}  // namespace

TEST_CASE("nothing is said of needle and epinephrine until somebody says it, and nothing asks for it", "[desk][treatment][given]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);

    CHECK(editor.instrument() == 0);
    CHECK(editor.instrumentLengthMm() == 0);
    CHECK(editor.epinephrine() == 0);
    CHECK(editor.epinephrineOfAll() == 0);
    CHECK(editor.instrumentNames() == QStringList{QStringLiteral("Not said"), QStringLiteral("Sharp needle"), QStringLiteral("Blunt cannula")});
    CHECK(editor.epinephrineNames().size() == 5);
    CHECK(editor.missing().isEmpty());
}

TEST_CASE("needle or cannula of a thread is kept with the draft, undone, taken back, and recorded", "[desk][treatment][given]")
{
    screens::DemoClinic clinic;
    {
        auto program = clinic.program(QStringLiteral("en"));
        program->openTreatment();
        auto& editor = *program->treatment();
        drawTwo(editor);
        editor.setInstrument(2);
        editor.setInstrumentLengthMm(90);
        editor.undo();
        CHECK(editor.instrumentLengthMm() == 0);
        editor.redo();
        CHECK(editor.instrumentLengthMm() == 90);
        CHECK(editor.placements()->rowCount() == 2);
    }
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.choose(2);
    CHECK(editor.instrument() == 2);
    CHECK(editor.instrumentLengthMm() == 90);
    editor.setInstrumentLengthMm(5);  // below what there is
    CHECK(editor.instrumentLengthMm() == 10);
    editor.setInstrumentLengthMm(0);
    CHECK_FALSE(editor.treatment().placements[1].instrumentLengthMm);
    editor.setInstrument(9);
    CHECK_FALSE(editor.treatment().placements[1].instrument);
    editor.setInstrument(1);
    const auto written = editor.treatment();
    REQUIRE(editor.missing().isEmpty());
    editor.save();

    const auto& kept = program->workplace().state().courses.at(written.course).treatment->treatment;
    CHECK(kept == written);
    CHECK_FALSE(kept.placements[0].instrument);
    CHECK(kept.placements[1].instrument == Instrument::sharpNeedle);
    program->openCourse(deskapp::keyOf(written.course));
    CHECK(program->course()->threads().last().contains(QLatin1String("Sharp needle")));
    CHECK_FALSE(program->course()->threads().first().contains(QLatin1String("eedle")));
}

TEST_CASE("a thread that had epinephrine makes the solution one with it, in one step, and the plain maximum holds", "[desk][treatment][given][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    const auto plain = editor.doseMaximum();

    editor.setEpinephrine(static_cast<int>(EpinephrineAt::entryPoint));

    CHECK(editor.treatment().anaesthetic.drug == Drug::lidocaineWithEpinephrine);
    CHECK(editor.dilutionIndex() >= 0);
    CHECK(editor.epinephrineOfAll() == -1);
    CHECK(editor.missing().isEmpty());
    // The other thread does not say: no more than plain.
    CHECK(editor.doseMaximum() == plain);
    CHECK(editor.doseSource().contains(QLatin1String("as not all of it had epinephrine")));
    editor.undo();
    CHECK(editor.treatment().anaesthetic.drug == Drug::lidocaine);
    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>(2));
    editor.redo();
    CHECK(editor.treatment().anaesthetic.drug == Drug::lidocaineWithEpinephrine);
    CHECK(editor.epinephrine() == static_cast<int>(EpinephrineAt::entryPoint));
}

TEST_CASE("all threads are told at once, and undone at once", "[desk][treatment][given][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    const auto plain = editor.doseMaximum();

    editor.setEpinephrineOfAll(static_cast<int>(EpinephrineAt::both));
    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>(2, EpinephrineAt::both));
    CHECK(editor.epinephrineOfAll() == static_cast<int>(EpinephrineAt::both));
    CHECK(editor.doseMaximum() != plain);
    CHECK(editor.doseSource().contains(QLatin1String("with epinephrine: 7.0 mg/kg")));
    editor.undo();
    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>(2));
    CHECK(editor.doseMaximum() == plain);
    editor.setEpinephrineOfAll(static_cast<int>(EpinephrineAt::nowhere));
    CHECK(editor.treatment().anaesthetic.drug == Drug::lidocaine);
    editor.setEpinephrineOfAll(0);
    CHECK(editor.epinephrineOfAll() == 0);
}

TEST_CASE("a solution that is plain after all leaves no thread that had epinephrine of it, and no word that nobody said", "[desk][treatment][given][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    editor.setEpinephrine(static_cast<int>(EpinephrineAt::both));

    editor.setDrug(static_cast<int>(Drug::lidocaine));

    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>(2));
    CHECK(editor.missing().isEmpty());
    editor.undo();
    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>{std::nullopt, EpinephrineAt::both});
    CHECK(editor.treatment().anaesthetic.drug == Drug::lidocaineWithEpinephrine);

    // Plain by mistake, and back: nobody said "none". Who did say it is left her word.
    editor.choose(1);
    editor.setEpinephrine(static_cast<int>(EpinephrineAt::nowhere));
    editor.setDrug(static_cast<int>(Drug::lidocaine));
    editor.setDrug(static_cast<int>(Drug::lidocaineWithEpinephrine));
    CHECK(placesOf(editor) == std::vector<std::optional<EpinephrineAt>>{EpinephrineAt::nowhere, std::nullopt});
}

TEST_CASE("a thread that turns the solution into one with epinephrine says so, until it is looked after", "[desk][treatment][given][dose]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    editor.setEpinephrine(static_cast<int>(EpinephrineAt::nowhere));
    CHECK(editor.solutionSaid().isEmpty());

    editor.setEpinephrine(static_cast<int>(EpinephrineAt::track));
    const auto said = editor.solutionSaid();
    CHECK(said.startsWith(QLatin1String("The solution is now with epinephrine ")));
    CHECK(said.contains(editor.dilutionNames().at(editor.dilutionIndex())));
    CHECK(said.endsWith(QLatin1String(": check it under Anaesthetic.")));
    REQUIRE(program->show(QSize(1280, 900)));
    for (const int step : {1, 2}) {
        editor.setStep(step);
        screens::settle(*program->window());
        CHECK(screens::spoken(*program->window(), said) != nullptr);
    }
    editor.undo();
    CHECK(editor.solutionSaid().isEmpty());
    editor.setEpinephrineOfAll(static_cast<int>(EpinephrineAt::both));
    CHECK(editor.solutionSaid() == said);
    editor.setDrug(static_cast<int>(Drug::lidocaine));
    CHECK(editor.solutionSaid().isEmpty());
}

TEST_CASE("another needle differs from the plan, what was injected is no part of it", "[desk][treatment][given][plan]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    editor.keepAsPlan();
    const auto asPlanned = editor.planText();

    editor.setEpinephrineOfAll(static_cast<int>(EpinephrineAt::both));
    CHECK(editor.planText() == asPlanned);
    editor.setInstrument(2);
    CHECK(editor.planText().contains(QLatin1String("Otherwise than planned: 2.")));
}

TEST_CASE("the plan is recorded with the treatment, stands beside it, and is kept apart no longer", "[desk][treatment][plan]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    for (const double across : {280.0, 264.0}) {
        editor.draw({across, 190}, {across - 40, 282});
        editor.mirrorSelected();
    }
    editor.keepAsPlan();
    editor.choose(1);
    editor.removeSelected();
    CHECK(editor.planText() == QLatin1String("Planned: 6. Placed: 5. Left out: 1."));
    const auto course = editor.treatment().course;
    REQUIRE(editor.missing().isEmpty());
    editor.save();

    auto& desk = program->workplace().desk();
    CHECK_FALSE(desk.plan(course));
    const auto view = desk.course(course);
    REQUIRE(view);
    CHECK(view->state->treatment->treatment.planned.size() == 6);
    program->openCourse(deskapp::keyOf(course));
    const auto care = program->course()->care();
    CHECK(care.contains(QLatin1String("The plan: Planned: 6. Placed: 5. Left out: 1.")));
    CHECK(care.filter(QLatin1String("Planned thread 1: ")).join(u' ').endsWith(QLatin1String("Left out.")));
    CHECK(care.filter(QLatin1String("Planned thread 2: ")).join(u' ').endsWith(QLatin1String("Placed as thread 1.")));
    const auto sheet = deskapp::sheetOf(program->workplace(), course);
    REQUIRE(sheet);
    CHECK(sheet->plan.size() == 7);
    CHECK(sheet->asText().contains(sheet->plan.last()));
}

TEST_CASE("starting over leaves the plan beside the chart, and dropping it leaves none", "[desk][treatment][plan]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    editor.keepAsPlan();
    const auto course = editor.treatment().course;
    REQUIRE(program->workplace().desk().plan(course));
    editor.startOver();
    CHECK(editor.treatment().placements.empty());
    CHECK(editor.treatment().course == course);
    CHECK(editor.isPlanned());
    editor.dropPlan();
    CHECK_FALSE(program->workplace().desk().plan(course));
    CHECK_FALSE(editor.isPlanned());
}

TEST_CASE("mirroring a thread whose twin is there chooses the twin and says so", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    CHECK(editor.mirrorSaid().isEmpty());
    editor.mirrorSelected();
    CHECK(editor.treatment().placements.size() == 2);
    CHECK(editor.selected() == 1);
    CHECK(editor.mirrorSaid().contains(QLatin1String("thread 1 lies there already")));
    editor.choose(2);
    CHECK(editor.mirrorSaid().isEmpty());
}

TEST_CASE("another lot written by hand is of no known product", "[desk][treatment][pack]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    drawTwo(editor);
    REQUIRE(editor.takePackCode(QStringLiteral("(01)09506000134352(17)290630(10)TH-4417")));
    CHECK(editor.treatment().placements.back().article == "09506000134352");
    editor.setLot(QStringLiteral("TH-4417"));
    CHECK(editor.treatment().placements.back().article == "09506000134352");
    editor.setLot(QStringLiteral("QN-1"));
    CHECK_FALSE(editor.treatment().placements.back().article);
    REQUIRE(editor.takePackCode(QStringLiteral("(01)09506000134352(17)290630(10)TH-4417")));
    REQUIRE(editor.takePackCode(QStringLiteral("(17)290630(10)TH-9")));
    CHECK_FALSE(editor.treatment().placements.back().article);
}
