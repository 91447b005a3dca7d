// When the treatment was: what the days of the course count from is said by a person, not by the draft's beginning.
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>

using namespace ebbline;

namespace {

using namespace std::chrono_literals;

/// A treatment that lacks nothing, begun at 14:05 on 22 March 2027.
struct Draft {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));

    Draft() { write(); }

    void write()
    {
        program->openTreatment();
        REQUIRE(editor().registerPatient(QStringLiteral("Lea Fontaine"), {}, 1));
        editor().draw({296, 170}, {252, 262});
        editor().setConsentGiven(true);
        editor().setCautionsGiven(true);
        REQUIRE(editor().missing().isEmpty());
    }

    deskapp::TreatmentEditor& editor() { return *program->treatment(); }

    void restart()
    {
        program.reset();
        program = clinic.program(QStringLiteral("en"));
        program->openTreatment();
    }

    /// The moment that was recorded; empty if nothing was.
    std::optional<clock::Moment> record()
    {
        QSignalSpy recorded(&editor(), &deskapp::TreatmentEditor::recorded);
        editor().save();
        if (recorded.isEmpty())
            return std::nullopt;
        const auto course = deskapp::courseFromKey(recorded[0][0].toString());
        return program->workplace().state().courses.at(course).treatment->treatment.at;
    }
};

}  // namespace

TEST_CASE("a treatment of today is of the moment at which it is recorded, however early its draft began", "[desk][treatment][when]")
{
    Draft draft;
    draft.clinic.clock().advance(3h);
    draft.editor().setStep(3);
    CHECK(draft.editor().time() == QLatin1String("17:05"));
    draft.clinic.clock().advance(10min);

    const auto at = draft.record();

    REQUIRE(at);
    CHECK(at->at == draft.clinic.clock().now());
}

TEST_CASE("a draft of another day is recorded only once somebody says when the treatment was", "[desk][treatment][when]")
{
    Draft draft;
    draft.clinic.clock().advance(48h);
    draft.restart();
    draft.editor().setStep(3);

    REQUIRE(draft.editor().missing().size() == 1);
    CHECK(draft.editor().missing().first().contains(QLatin1String("22 March 2027")));
    CHECK_FALSE(draft.record());

    SECTION("it was just now")
    {
        draft.editor().takeNow();
        CHECK(draft.editor().day() == QLatin1String("2027-03-24"));
        const auto at = draft.record();
        REQUIRE(at);
        CHECK(at->at == draft.clinic.clock().now());
    }
    SECTION("it was then")
    {
        draft.editor().confirmWhen();
        const auto at = draft.record();
        REQUIRE(at);
        CHECK(at->at == draft.clinic.clock().now() - 48h);
    }
    SECTION("it was yesterday at ten")
    {
        draft.editor().setDay(QStringLiteral("2027-03-23"));
        draft.editor().setTime(QStringLiteral("10:00"));
        const auto at = draft.record();
        REQUIRE(at);
        CHECK(deskapp::stampText(*at) == QStringLiteral("23 Mar 2027, 10:00 ") + deskapp::leftToRight(clock::offsetText(*at)));
    }
}

TEST_CASE("what somebody said outlives the program, and is not renewed", "[desk][treatment][when]")
{
    Draft draft;
    draft.editor().setTime(QStringLiteral("9:30"));
    draft.clinic.clock().advance(1h);
    draft.restart();
    draft.editor().setStep(3);
    CHECK(draft.editor().time() == QLatin1String("09:30"));

    const auto at = draft.record();
    REQUIRE(at);
    CHECK(at->minuteOfDay() == 9 * 60 + 30);

    // Of the next treatment nothing is said yet.
    draft.write();
    draft.clinic.clock().advance(24h);
    CHECK(draft.editor().missing().size() == 1);
}

TEST_CASE("no treatment lies in the future, and one of long ago is asked about", "[desk][treatment][when]")
{
    Draft draft;
    draft.editor().setDay(QStringLiteral("2027-03-23"));
    CHECK(draft.editor().missing().first().contains(QLatin1String("still to come")));
    CHECK_FALSE(draft.record());
    draft.editor().confirmWhen();
    CHECK_FALSE(draft.record());

    draft.editor().setDay(QStringLiteral("2027-03-15"));
    CHECK(draft.editor().missing().isEmpty());
    draft.editor().setDay(QStringLiteral("2026-03-22"));
    REQUIRE(draft.editor().missing().size() == 1);
    CHECK(draft.editor().missing().first().contains(QLatin1String("365 days ago")));
    CHECK_FALSE(draft.record());
    draft.editor().confirmWhen();
    CHECK(draft.record());
}

TEST_CASE("a day or a time that is none is named, and nothing is recorded", "[desk][treatment][when]")
{
    Draft draft;
    draft.editor().setDay(QStringLiteral("March"));
    CHECK(draft.editor().missing().first().contains(QLatin1String("year-month-day")));
    CHECK_FALSE(draft.record());
    draft.editor().setDay(QStringLiteral("2027-03-22"));
    draft.editor().setTime(QStringLiteral("25:00"));
    CHECK(draft.editor().missing().first().contains(QLatin1String("hours and minutes")));
    CHECK_FALSE(draft.record());
    draft.editor().setTime(QStringLiteral("13.45"));
    CHECK(draft.editor().missing().isEmpty());
}

TEST_CASE("undo turns back lines, never whose treatment it is or when it was", "[desk][treatment]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTreatment();
    auto& editor = *program->treatment();
    editor.draw({296, 170}, {252, 262});
    editor.draw({304, 172}, {262, 270});
    REQUIRE(editor.registerPatient(QStringLiteral("Mira Solberg"), {}, 1));
    const auto patient = editor.patientKey();
    editor.setTime(QStringLiteral("13:00"));

    editor.undo();

    CHECK(editor.patientKey() == patient);
    CHECK(editor.placements()->rowCount() == 1);
    CHECK(editor.treatment().at.minuteOfDay() == 13 * 60);
    while (editor.canUndo())
        editor.undo();
    CHECK(editor.patientKey() == patient);
    while (editor.canRedo())
        editor.redo();
    CHECK(editor.patientKey() == patient);
    CHECK(editor.placements()->rowCount() == 2);
    CHECK(editor.treatment().at.minuteOfDay() == 13 * 60);
}
