// Calls, hand-over, what is new in a course, the plan beside the treatment, packs, and the demo clinic.
#include "app/desk/model/course_look.h"
#include "app/desk/model/words.h"
#include "core/clock/iso8601.h"
#include "core/exchange/fhir_bundle.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QDate>
#include <QFile>
#include <QLocale>
#include <QTemporaryDir>

#include <set>

using namespace ebbline;

namespace {

struct Open {
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    QString key(const char* patient) { return deskapp::keyOf(clinic.course(patient)); }
    deskapp::QueueRow row(const char* patient)
    {
        const int at = program->queue()->rows()->rowOf(key(patient));
        REQUIRE(at >= 0);
        return program->queue()->rows()->rows()[at].value.value<deskapp::QueueRow>();
    }
};

}  // namespace

TEST_CASE("a call shows number and questions, and notes nothing before somebody says so", "[desk][call]")
{
    Open open;
    auto& call = *open.program->call();
    const auto operations = open.program->workplace().state().operations;
    call.start(open.key("Tomas Reyl"));
    CHECK(call.isShown());
    CHECK(call.phone().contains(QLatin1String("+00 555")));
    CHECK(call.language() == QLatin1String("Her diary is in English."));
    CHECK(call.script().size() >= 4);
    CHECK(call.script().size() <= 7);
    CHECK(call.others() == QLatin1String("Ilan Osei called and did not reach her, Today 14:05. Ask before you call twice."));
    call.leave();
    CHECK(open.program->workplace().state().operations == operations);

    call.start(open.key("Tomas Reyl"));
    call.setNote(QStringLiteral("Temperature falling."));
    call.reached();
    CHECK_FALSE(call.isShown());
    const auto view = open.program->workplace().desk().course(open.clinic.course("Tomas Reyl"));
    REQUIRE(view);
    CHECK(view->state->acts.back().act == records::Act::called);
    CHECK(view->state->acts.back().note == "Temperature falling.");
    CHECK(view->state->acts.back().by == "Dr Mara Lindqvist");
}

TEST_CASE("a visit is brought forward to a day, which the panel asks for and says back before anything is noted", "[desk][call][follow-up]")
{
    Open open;
    auto& call = *open.program->call();
    const auto operations = [&] { return open.program->workplace().state().operations; };
    const auto before = operations();
    call.start(open.key("Tomas Reyl"));
    CHECK_FALSE(call.asksVisit());
    call.broughtForward();
    CHECK(call.asksVisit());
    const auto written = [](int month, int day) { return QLocale().toString(QDate(2027, month, day), QLocale::LongFormat); };
    CHECK(call.visitAgreed().contains(written(4, 6)));
    CHECK(call.visitProblem().isEmpty());
    CHECK(call.visitShows().isEmpty());

    for (const auto* wrong : {"next week", "2027-03-21", "2027-04-07"}) {
        call.setVisitDay(QString::fromLatin1(wrong));
        CAPTURE(wrong);
        CHECK_FALSE(call.visitProblem().isEmpty());
        call.broughtForward();
    }
    call.setVisitDay(QStringLiteral("2027-03-22"));
    call.setVisitTime(QStringLiteral("14:00"));  // five minutes ago
    CHECK_FALSE(call.visitProblem().isEmpty());
    call.broughtForward();
    CHECK(operations() == before);

    call.setVisitDay(QStringLiteral("2027-03-24"));
    call.setVisitTime(QStringLiteral("16:30"));
    CHECK(call.visitProblem().isEmpty());
    CHECK(call.visitShows().contains(written(3, 24)));
    call.broughtForward();
    CHECK_FALSE(call.isShown());
    const auto view = open.program->workplace().desk().course(open.clinic.course("Tomas Reyl"));
    CHECK(view->state->opened->followUp.minuteOfDay() == 16 * 60 + 30);
    CHECK(view->state->acts.back().act == records::Act::visitBroughtForward);

    call.start(open.key("Tomas Reyl"));
    CHECK_FALSE(call.asksVisit());
    CHECK(call.visitDay().isEmpty());
}

TEST_CASE("an emergency is asked about breath first", "[desk][call]")
{
    Open open;
    open.program->call()->start(open.key("Noor Castellan"));
    REQUIRE_FALSE(open.program->call()->script().isEmpty());
    CHECK(open.program->call()->script().first().contains(QLatin1String("emergency number")));
}

TEST_CASE("a row says who took it and when, and a colleague can take over", "[desk][queue]")
{
    Open open;
    auto row = open.row("Tomas Reyl");
    CHECK(row.isTaken);
    CHECK_FALSE(row.isMine);
    CHECK(row.taken.contains(QLatin1String("Ilan Osei called and did not reach her, Today")));
    open.program->queue()->take(row.key);
    row = open.row("Tomas Reyl");
    CHECK(row.isMine);
    CHECK(row.taken.contains(QLatin1String("Taken by Dr Mara Lindqvist, Today")));
    open.program->queue()->setWhose(2);
    CHECK(open.program->queue()->rows()->rowCount() == 1);
    open.program->queue()->setWhose(1);
    CHECK(open.program->queue()->rows()->rowOf(row.key) == -1);
    CHECK_FALSE(open.program->queue()->hidden().isEmpty());
}

TEST_CASE("what nobody touches in time is said aloud, with the number of who is on call", "[desk][queue][safety]")
{
    Open open;
    const auto row = open.row("Noor Castellan");
    CHECK_FALSE(row.overdue.isEmpty());
    CHECK(open.program->queue()->overdue().contains(QLatin1String("+00 555 0199")));
    for (int i = 0; i < open.program->queue()->rows()->rowCount(); ++i) {
        open.program->queue()->take(open.program->queue()->rows()->keyAt(i));
    }
    CHECK(open.program->queue()->overdue().isEmpty());
}

TEST_CASE("a hand-over names who waits, why, and who is on it; its word stays until it is taken down", "[desk][handover]")
{
    Open open;
    auto& note = *open.program->handOver();
    open.program->openHandOver();
    const auto zone = deskapp::leftToRight(clock::offsetText(open.program->workplace().now()));
    CHECK(note.paper().stamp.endsWith(zone));
    for (const auto& row : note.paper().parts.first().rows) {
        CHECK(row[3].endsWith(zone));
    }
    for (const auto* name : {"Noor Castellan", "Odile Brandt", "Tomas Reyl", "Jonas Weir"}) {
        CHECK(note.text().contains(QLatin1String(name)));
    }
    CHECK(note.text().contains(QLatin1String("Ilan Osei")));
    CHECK(note.text().contains(QLatin1String("No answer, left a message.")));
    CHECK_FALSE(note.text().contains(QLatin1String("Petra Halden")));

    note.setWord(QStringLiteral("Call Odile again at six."));
    note.pin();
    CHECK(note.pinned().startsWith(QLatin1String("Call Odile again at six. (Dr Mara Lindqvist")));
    CHECK(note.pinned().contains(QLatin1String(":05")));  // when
    CHECK(note.text().contains(QLatin1String("Call Odile again at six.")));
    // What goes on paper says when, not "today".
    CHECK(note.paper().parts.first().lines.first().contains(zone));
    open.program->lock();
    CHECK(note.pinned().isEmpty());
    CHECK_FALSE(note.text().contains(QLatin1String("Odile")));
    REQUIRE(open.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    CHECK(note.pinned().startsWith(QLatin1String("Call Odile again at six.")));
    open.program->choosePerson(QStringLiteral("Dr Mara Lindqvist"));
    open.program->openHandOver();
    note.takeDown();
    CHECK(note.pinned().isEmpty());

    const QTemporaryDir files;
    REQUIRE(note.write(files.filePath(QStringLiteral("note.pdf"))));
    REQUIRE(note.write(files.filePath(QStringLiteral("note.txt"))));
    CHECK_FALSE(note.write(QStringLiteral("/nowhere/note.pdf")));
}

TEST_CASE("a course says what is new since this person last looked, and to each her own", "[desk][course]")
{
    Open open;
    auto& course = *open.program->course();
    open.program->openCourse(open.key("Tomas Reyl"));
    CHECK(course.news().contains(QLatin1String("not looked at this course before")));
    open.clinic.clock().advance(std::chrono::minutes(5));
    open.program->openQueue();
    open.program->openCourse(open.key("Tomas Reyl"));
    CHECK(course.news().startsWith(QLatin1String("Nothing new")));

    open.clinic.clock().advance(std::chrono::minutes(5));
    open.program->choosePerson(QStringLiteral("Ilan Osei"));
    open.program->openCourse(open.key("Tomas Reyl"));
    CHECK(course.news().contains(QLatin1String("not looked")));
    course.takeAll();
    open.clinic.clock().advance(std::chrono::minutes(5));
    open.program->choosePerson(QStringLiteral("Dr Mara Lindqvist"));
    open.program->openCourse(open.key("Tomas Reyl"));
    CHECK(course.news().contains(QLatin1String("Taken by Ilan Osei")));
}

TEST_CASE("a course says what is expected at the follow-up, and goes out as table and paper", "[desk][course][files]")
{
    Open open;
    auto& course = *open.program->course();
    open.program->openCourse(open.key("Tomas Reyl"));
    CHECK(course.forecast().startsWith(QLatin1String("Expected at the follow-up, day 21")));
    open.program->openCourse(open.key("Petra Halden"));
    CHECK(course.forecast().startsWith(QLatin1String("Too few entries")));

    open.program->openCourse(open.key("Tomas Reyl"));
    const QTemporaryDir files;
    const auto csv = files.filePath(QStringLiteral("c.csv"));
    REQUIRE(course.write(csv));
    QFile table(csv);
    REQUIRE(table.open(QIODevice::ReadOnly));
    CHECK(table.readLine() == QByteArray("course,treated_at,entered_at,symptom,side,score\r\n"));
    CHECK_FALSE(table.readAll().contains("Tomas"));
    const auto text = files.filePath(QStringLiteral("c.txt"));
    REQUIRE(course.write(text));
    QFile paper(text);
    REQUIRE(paper.open(QIODevice::ReadOnly));
    const auto said = QString::fromUtf8(paper.readAll());
    CHECK(said.contains(QLatin1String("Tomas Reyl")));
    CHECK(said.contains(QLatin1String("Left side hurts more since last night.")));
    const auto json = files.filePath(QStringLiteral("c.json"));
    REQUIRE(course.write(json));
    QFile bundle(json);
    REQUIRE(bundle.open(QIODevice::ReadOnly));
    const auto written = bundle.readAll();
    const auto read = exchange::readBundle(written.toStdString());
    REQUIRE(read);
    CHECK(read->course == open.clinic.course("Tomas Reyl"));
    CHECK((read->treatment && read->entries.size() > 5));
    CHECK_FALSE(written.contains("Reyl"));
    for (const auto* nowhere : {"/nowhere/c.csv", "/nowhere/c.json"}) {
        CHECK_FALSE(course.write(QString::fromLatin1(nowhere)));
    }
}

TEST_CASE("undo takes back every change of the record, not only the threads", "[desk][treatment][undo]")
{
    Open open;
    open.program->openTreatment();
    auto& editor = *open.program->treatment();
    editor.startOver();
    CHECK_FALSE(editor.canUndo());
    editor.draw({296, 170}, {252, 262});
    editor.setWeight(QStringLiteral("61"));
    editor.setNote(QStringLiteral("Calm."));
    editor.setBaseline(static_cast<int>(recovery::Symptom::swelling), static_cast<int>(recovery::Side::left), 3);
    editor.undo();
    CHECK(editor.treatment().baseline.empty());
    editor.undo();
    CHECK(editor.note().isEmpty());
    editor.undo();
    CHECK(editor.weight().isEmpty());
    editor.undo();
    CHECK(editor.treatment().placements.empty());
    while (editor.canRedo()) {
        editor.redo();
    }
    CHECK(editor.note() == QLatin1String("Calm."));
    CHECK(editor.treatment().placements.size() == 1);
    CHECK(editor.treatment().baseline.size() == 1);
}

TEST_CASE("the plan stays as it was while marks change, and says what differs", "[desk][treatment][plan]")
{
    Open open;
    open.program->openTreatment();
    auto& editor = *open.program->treatment();
    editor.startOver();
    editor.draw({296, 170}, {252, 262});
    editor.mirrorSelected();
    CHECK_FALSE(editor.isPlanned());
    editor.keepAsPlan();
    CHECK(editor.planText().contains(QLatin1String("As planned.")));
    editor.move(1, {310, 190}, {252, 262});
    editor.draw({300, 190}, {230, 330});
    CHECK(editor.planTracks().size() == 2);
    CHECK(editor.planText() == QLatin1String("Planned: 2. Placed: 3. Not in the plan: 3. Moved: 1."));
    open.program->openQueue();
    open.program->openTreatment();
    CHECK(editor.isPlanned());
    editor.dropPlan();
    CHECK_FALSE(editor.isPlanned());
}

TEST_CASE("a scanned pack gives lot and expiry to the thread, and nonsense gives nothing", "[desk][treatment][pack]")
{
    Open open;
    open.program->openTreatment();
    auto& editor = *open.program->treatment();
    editor.startOver();
    CHECK_FALSE(editor.takePackCode(QStringLiteral("(17)290630(10)TH-4417")));
    CHECK_FALSE(editor.packProblem().isEmpty());
    editor.draw({296, 170}, {252, 262});
    CHECK(editor.takePackCode(QStringLiteral("(01)09506000134352(17)290630(10)TH-4417")));
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    CHECK(editor.treatment().placements.back().article == "09506000134352");
    CHECK(editor.expiry() == QLatin1String("2029-06-30"));
    CHECK_FALSE(editor.takePackCode(QStringLiteral("(01)09506000134353(17)300630(10)TH-9999")));
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    editor.draw({300, 190}, {230, 330});
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    editor.undo();
    editor.undo();
    CHECK(editor.lot().isEmpty());
}

TEST_CASE("a code without the mark after its lot is asked about, never guessed", "[desk][treatment][pack]")
{
    Open open;
    open.program->openTreatment();
    auto& editor = *open.program->treatment();
    editor.startOver();
    editor.draw({296, 170}, {252, 262});

    CHECK(editor.takePackCode(QStringLiteral("10TH-4417\u001d21A17")));
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    editor.setLot({});

    CHECK_FALSE(editor.takePackCode(QStringLiteral("10TH-441721A17")));
    CHECK(editor.lot().isEmpty());
    CHECK(editor.packProblem().contains(QLatin1String("where the lot ends")));
    REQUIRE(editor.packReadings().size() == 2);
    CHECK(editor.packReadings().at(0).contains(QLatin1String("TH-441721A17")));
    editor.takePackReading(1);
    CHECK(editor.lot() == QLatin1String("TH-4417"));
    CHECK(editor.packReadings().isEmpty());
    CHECK(editor.packProblem().isEmpty());
}

TEST_CASE("the demo clinic shows every state, speaks to no hub, and leaves nothing behind", "[desk][demo]")
{
    screens::DemoClinic clinic;
    int couriers = 0;
    auto program = clinic.freshProgram(QStringLiteral("en"), [&](const desk::Desk::Hub&) -> std::unique_ptr<sync::Courier> {
        ++couriers;
        return nullptr;
    });
    REQUIRE(program->unlocking()->openDemo());
    CHECK(program->isDemo());
    CHECK(program->page() == app::DeskProgram::Page::queue);
    CHECK(program->workplace().desk().courses().size() >= 60);
    std::set<int> urgencies;
    bool silent = false;
    QStringList takenBy;
    QStringList unheard;
    for (const auto& row : program->queue()->rows()->rows()) {
        const auto words = row.value.value<deskapp::QueueRow>();
        urgencies.insert(words.urgency);
        silent = silent || words.silent;
        if (words.isTaken) {
            takenBy << words.name + QStringLiteral(": ") + words.taken;
        }
        if (words.reach.startsWith(QLatin1String("Phone not heard of since"))) {
            unheard << words.name;
        }
    }
    REQUIRE(takenBy.size() == 1);
    CHECK(takenBy.first().startsWith(QLatin1String("Ruta Calloway: Taken by Dr Mara Lindqvist")));
    CHECK(unheard == QStringList{QStringLiteral("Ulrik Fenwood")});
    CHECK(program->hub()->unheard().contains(QLatin1String("Ulrik Fenwood")));
    int unread = 0;
    int late = 0;
    int amended = 0;
    for (const auto& summary : program->workplace().desk().courses()) {
        const auto view = program->workplace().desk().course(summary.course);
        unread += static_cast<int>(summary.unread);
        for (const auto& [id, history] : view->state->entries) {
            late += history.current().isLate() ? 1 : 0;
            amended += history.amended() ? 1 : 0;
        }
    }
    CHECK(unread == 1);
    CHECK(late == 1);
    CHECK(amended == 1);
    CHECK(urgencies.contains(1));
    CHECK(urgencies.contains(2));
    CHECK(urgencies.contains(3));
    CHECK(silent);
    REQUIRE(program->workplace().desk().setHub("127.0.0.1:1", false, {}));
    program->hub()->syncNow();
    CHECK(couriers == 0);
    // The clinic's own vault was neither made nor opened.
    CHECK_FALSE(program->workplace().vaultExists());
    CHECK_FALSE(program->unlocking()->openDemo());
    const auto folder = program->workplace().demoFolder();
    program->lock();
    CHECK_FALSE(program->isDemo());
    CHECK_FALSE(std::filesystem::exists(folder));
}
