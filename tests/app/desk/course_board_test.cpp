// One course over a real vault: opening, findings, curves and their table twin, messages.
#include "app/desk/model/course_look.h"
#include "core/exchange/tables.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

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

TEST_CASE("what is taken or seen on the page of a course can be taken back there, for a while", "[desk][course][undo]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    auto& queue = *program->queue();
    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));
    const auto actsOf = [&] {
        QList<QStringList> acts;
        for (const auto& finding : valuesOf<deskapp::FindingRow>(*course.findings()))
            acts << finding.acts;
        return acts;
    };
    const auto untouched = actsOf();
    const auto first = valuesOf<deskapp::FindingRow>(*course.findings()).first().key;

    course.takeAll();
    CHECK(queue.undoText() == QLatin1String("Taken: Odile Brandt"));
    CHECK(actsOf() != untouched);
    queue.undo();
    CHECK(actsOf() == untouched);
    CHECK(queue.undoText().isEmpty());

    course.take(first);
    CHECK(queue.undoText() == QLatin1String("Taken: Odile Brandt"));
    queue.undo();
    CHECK(actsOf() == untouched);

    course.see(first);
    CHECK(queue.undoText() == QLatin1String("Seen: Odile Brandt"));
    queue.forgetUndo();
    CHECK(actsOf() != untouched);
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

namespace {

/// What the phone sends when she corrects her newest entry.
void correctNewest(desk::Desk& desk, const recovery::CourseId& course, int pain)
{
    const journal::CourseState& state = *desk.course(course)->state;
    const auto newest = std::ranges::max_element(state.entries, {}, [](const auto& each) { return each.second.current().at.at; });
    const journal::Version<recovery::Entry>& old = newest->second.versions.back();
    recovery::Entry entry = old.value;
    entry.scores.insert_or_assign({recovery::Symptom::pain, recovery::Side::left}, *recovery::Score::of(pain));
    entry.recordedAt = desk.now();
    journal::Operation operation;
    operation.id = {old.operation.device, 100};
    operation.stamp = clock::HybridTime::of(entry.recordedAt.at, 0);
    operation.entered = entry.recordedAt;
    operation.kind = static_cast<std::uint16_t>(records::Kind::entryRecorded);
    operation.audience = journal::Audience::patientAndClinic;
    operation.course = course;
    operation.supersedes = old.operation;
    operation.body = records::encode(records::EntryRecorded{entry});
    REQUIRE(desk.vault().accept(state.link->mailbox, old.operation.device, {2, {}}, {operation}));
}

}  // namespace

TEST_CASE("a correction that arrives is unopened beside the opening of what it replaces, until somebody opens it", "[desk][course][opening]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& desk = program->workplace().desk();
    const auto course = clinic.course("Tomas Reyl");
    program->openCourse(deskapp::keyOf(course));
    REQUIRE(program->course()->unopenedText().isEmpty());

    correctNewest(desk, course, 9);
    program->workplace().settle({});

    CHECK(program->course()->unopenedText() == QLatin1String("1 new or corrected entry, not opened yet"));
    const auto newest = [&] { return valuesOf<deskapp::EntryRow>(*program->course()->entries()).first(); };
    CHECK_FALSE(newest().isOpened);
    CHECK(newest().opened.startsWith(QLatin1String("Correction not opened yet; Dr Mara Lindqvist opened an earlier version, ")));
    CHECK(newest().spoken.contains(newest().opened));

    // Whoever opens it now is named; the other entries keep who opened them.
    program->choosePerson(QStringLiteral("Ilan Osei"));
    program->course()->openEntries();

    CHECK(program->course()->unopenedText().isEmpty());
    CHECK(newest().isOpened);
    CHECK(newest().opened.startsWith(QLatin1String("Opened by Ilan Osei")));
    CHECK(valuesOf<deskapp::EntryRow>(*program->course()->entries()).last().opened.startsWith(QLatin1String("Opened by Dr Mara Lindqvist")));
}

TEST_CASE("another phone takes the place of the one that is linked only after a question", "[desk][course][pairing]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"), clinic.hub());
    auto& course = *program->course();
    program->openCourse(deskapp::keyOf(clinic.course("Petra Halden")));
    REQUIRE_FALSE(course.isLinked());
    CHECK_FALSE(course.isPhoneChangeable());
    program->openPairing(course.key());
    CHECK(program->pairing()->replacingText().isEmpty());  // its first phone takes nobody's place

    program->openCourse(deskapp::keyOf(clinic.course("Odile Brandt")));
    REQUIRE(course.isPhoneChangeable());
    program->openPairing(course.key());
    CHECK(program->page() == app::DeskProgram::Page::pairing);
    // What happens stands where it is asked, once: beside who stands by, over the code.
    CHECK(program->pairing()->replacingText().contains(QLatin1String("let go of")));
    CHECK(program->pairing()->replacingText().contains(QLatin1String("Nothing changes before")));
    CHECK_FALSE(program->pairing()->seconds().isEmpty());
    program->pairing()->start({}, -1);
    CHECK_FALSE(program->pairing()->stepProblem().isEmpty());
    CHECK_FALSE(program->pairing()->isCodeShown());
    program->openCourse(course.key());
    CHECK(course.isLinked());  // nothing changes before six digits are confirmed
}

TEST_CASE("a reason leads to the entry that raised it, from the queue and from the finding", "[desk][course][queue]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& course = *program->course();
    const auto& rows = program->queue()->rows()->rows();
    int led = 0;
    for (int i = 0; i < rows.size(); ++i) {
        const auto row = rows[i].value.value<deskapp::QueueRow>();
        CHECK(program->queue()->entryAt(i) == row.entryKey);
        CHECK(row.entryKey.isEmpty() == row.silent);  // nobody wrote what a silence says
        if (!row.silent) {
            program->openCourse(row.key, row.entryKey);
            CHECK(course.lighted() == row.entryKey);
            CHECK(course.entries()->rowOf(row.entryKey) >= 0);
            ++led;
        }
    }
    REQUIRE(led >= 4);

    program->openCourse(deskapp::keyOf(clinic.course("Tomas Reyl")));
    CHECK(course.lighted().isEmpty());
    for (const auto& finding : valuesOf<deskapp::FindingRow>(*course.findings())) {
        course.light(finding.entryKey);
        CHECK(course.lighted() == finding.entryKey);
    }
    course.light(QStringLiteral("no such entry"));
    CHECK(course.lighted().isEmpty());
    CHECK(program->queue()->entryAt(99).isEmpty());
}

TEST_CASE("two entries about the same moment make a table of the course that is read again", "[desk][course][files]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& workplace = program->workplace();
    const auto course = clinic.course("Tomas Reyl");
    const auto before = exchange::readScores(deskapp::courseTable(workplace, course));
    REQUIRE(before);
    const auto& entries = workplace.state().courses.at(course).entries;
    const auto scored = std::ranges::find_if(entries, [](const auto& each) { return !each.second.current().scores.empty(); });
    REQUIRE(scored != entries.end());
    auto second = scored->second.current();
    second.id = recovery::EntryId{crypto::randomArray<16>()};
    second.recordedAt.at += std::chrono::hours(1);
    for (const auto& [stream, score] : scored->second.current().scores) {
        second.scores.insert_or_assign(stream, *recovery::Score::of((score.points() + 1) % 11));
    }
    REQUIRE(workplace.desk().vault().append({records::EntryRecorded{second}}, workplace.now()));

    const auto after = exchange::readScores(deskapp::courseTable(workplace, course));

    REQUIRE(after);
    CHECK(after->size() == before->size() + second.scores.size());
    CHECK(std::ranges::count_if(*after, [&](const auto& row) {
              return row.enteredAt.at == second.at.at + std::chrono::milliseconds(1);
          }) == static_cast<std::ptrdiff_t>(second.scores.size()));
}
