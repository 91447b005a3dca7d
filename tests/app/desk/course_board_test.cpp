// One course over a real vault: opening, findings, curves and their table twin, messages.
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;

namespace {

template <typename Row>
QList<Row> valuesOf(const deskapp::RowList& list)
{
    QList<Row> values;
    for (const auto& row : list.rows()) {
        values << row.value.value<Row>();
    }
    return values;
}

}  // namespace

TEST_CASE("showing a course opens its entries in the name of the person at the desk", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));

    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));

    CHECK(program->course()->unopenedText().isEmpty());
    for (const auto& entry : valuesOf<deskapp::EntryRow>(*program->course()->entries())) {
        CHECK(entry.isOpened);
        CHECK(entry.opened.contains(QLatin1String("Dr Mara Lindqvist")));
    }
}

TEST_CASE("with nobody named, entries stay unopened: nothing is claimed", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->workplace().desk().setPerson({});

    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));

    CHECK_FALSE(program->course()->unopenedText().isEmpty());
    for (const auto& entry : valuesOf<deskapp::EntryRow>(*program->course()->entries())) {
        CHECK_FALSE(entry.isOpened);
        CHECK(entry.opened == QLatin1String("Not opened yet"));
    }
}

TEST_CASE("open findings stand before closed ones, each with what was done about it", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    const auto before = valuesOf<deskapp::FindingRow>(*course.findings());
    REQUIRE(before.size() > 2);

    course.startClosing(before.first().key);
    course.close(static_cast<int>(records::Outcome::treatedInClinic), QStringLiteral("seen at noon"));

    const auto after = valuesOf<deskapp::FindingRow>(*course.findings());
    CHECK(course.openFindings() == before.size() - 1);
    REQUIRE_FALSE(after.last().open);
    CHECK(after.last().key == before.first().key);
    CHECK(after.last().acts.last().contains(QLatin1String("seen at noon")));
    CHECK(after.last().acts.last().contains(QLatin1String("Treated in the clinic")));
}

TEST_CASE("taking all takes every open finding", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));

    program->course()->takeAll();

    for (const auto& finding : valuesOf<deskapp::FindingRow>(*program->course()->findings())) {
        REQUIRE_FALSE(finding.acts.isEmpty());
        CHECK(finding.acts.last().contains(QLatin1String("Dr Mara Lindqvist")));
    }
}

TEST_CASE("the table holds every score that the curves show", "[desk][course][charts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    auto& curves = *program->course()->curves();

    for (const auto symptom : recovery::allSymptoms) {
        curves.setSymptom(static_cast<int>(symptom));
        QStringList drawn;
        for (const auto& run : curves.leftCurve().runs) {
            for (const auto& point : run) {
                drawn << QString::number(static_cast<int>(point.y()));
            }
        }
        QStringList listed;
        for (const auto& row : valuesOf<deskapp::CurveTableRow>(*curves.table())) {
            if (row.left != QStringLiteral("–")) {
                listed << row.left;
            }
        }
        CHECK(listed == drawn);
    }
}

TEST_CASE("late entries are marked in the list and in the table", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    int inList = 0;
    for (const auto& entry : valuesOf<deskapp::EntryRow>(*program->course()->entries())) {
        inList += entry.marks.contains(QLatin1String("entered late")) ? 1 : 0;
    }
    int inTable = 0;
    for (const auto& row : valuesOf<deskapp::CurveTableRow>(*program->course()->curves()->table())) {
        inTable += row.note.contains(QLatin1String("entered late")) ? 1 : 0;
    }
    CHECK(inList == 1);
    CHECK(inTable == 1);
    CHECK(program->course()->curves()->leftCurve().hollowMarkers.size() == 1);
}

TEST_CASE("a message goes to a linked phone and is not called read before the phone says so", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));

    course.setMessageDraft(QStringLiteral("Please come in now."));
    course.send();

    const auto messages = valuesOf<deskapp::MessageRow>(*course.messages());
    REQUIRE(messages.size() == 1);
    CHECK(messages.first().ours);
    CHECK(messages.first().state == QLatin1String("Not read yet"));
    CHECK(course.messageDraft().isEmpty());
}

TEST_CASE("without a linked phone a message is neither sent nor lost", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(deskapp::keyOf(clinic.course("Petra Halden")));

    course.setMessageDraft(QStringLiteral("Hello"));
    course.send();

    CHECK(course.messages()->rowCount() == 0);
    CHECK(course.messageDraft() == QLatin1String("Hello"));
    CHECK_FALSE(course.messageProblem().isEmpty());
}

TEST_CASE("a message over the limit is held back, not cut", "[desk][course]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));

    course.setMessageDraft(QString(1001, QChar(0x00e4)));  // two bytes each
    course.send();

    CHECK(course.messages()->rowCount() == 0);
    CHECK_FALSE(course.messageProblem().isEmpty());
}
