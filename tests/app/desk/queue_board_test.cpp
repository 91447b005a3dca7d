// The opening page over a real vault: who is where, and what an act does.
#include "app/desk/model/times.h"
#include "app/desk/model/finding_words.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace ebbline;
using deskapp::QueueRow;

namespace {

QList<QueueRow> rowsOf(deskapp::QueueBoard& board)
{
    QList<QueueRow> rows;
    for (const auto& row : board.rows()->rows()) {
        rows << row.value.value<QueueRow>();
    }
    return rows;
}

QueueRow rowOf(deskapp::QueueBoard& board, const QString& name)
{
    for (const auto& row : rowsOf(board)) {
        if (row.name == name) {
            return row;
        }
    }
    FAIL("no row for " << name.toStdString());
    return {};
}

}  // namespace

TEST_CASE("rows stand by urgency, and who only fell silent stands apart at the end", "[desk][queue]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto rows = rowsOf(*program->queue());

    REQUIRE(rows.size() == 6);
    CHECK(rows.first().name == QLatin1String("Noor Castellan"));
    CHECK(rows.first().urgency == 1);
    int last = 0;
    for (const auto& row : rows) {
        if (!row.silent) {
            CHECK(row.urgency >= last);
            last = row.urgency;
        }
    }
    CHECK(rows.last().silent);
    CHECK(rows.last().name == QLatin1String("Jonas Weir"));
    CHECK_FALSE(rows.last().heading.isEmpty());
    CHECK(program->queue()->summary().contains(QLatin1String("1 not heard from")));
}

TEST_CASE("a row says urgency, name, day, reason and since when in one sentence", "[desk][queue][access]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto row = rowOf(*program->queue(), QStringLiteral("Noor Castellan"));

    for (const auto& part : {row.urgencyName, row.name, row.day, row.title, row.reason, row.since, row.taken}) {
        CHECK(row.spoken.contains(part));
    }
}

TEST_CASE("taking a row puts the name of the person at the desk on it", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    const auto before = rowOf(queue, QStringLiteral("Odile Brandt"));
    REQUIRE_FALSE(before.isTaken);

    queue.take(before.key);

    const auto after = rowOf(queue, QStringLiteral("Odile Brandt"));
    CHECK(after.isTaken);
    CHECK(after.taken.contains(QLatin1String("Dr Mara Lindqvist")));
}

TEST_CASE("what one person did is not offered to the next for taking back", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    queue.take(rowOf(queue, QStringLiteral("Odile Brandt")).key);
    REQUIRE_FALSE(queue.undoText().isEmpty());

    program->choosePerson(QStringLiteral("Ilan Osei"));

    CHECK(queue.undoText().isEmpty());
    CHECK(rowOf(queue, QStringLiteral("Odile Brandt")).isTaken);
}

TEST_CASE("taking, calling and bringing forward are taken back by undo, and both stay on record", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    const auto before = rowOf(queue, QStringLiteral("Odile Brandt"));
    const auto acts = [&] { return program->workplace().desk().course(clinic.course("Odile Brandt"))->state->acts.size(); };
    const auto known = acts();

    int times = 0;
    for (const auto act : {&deskapp::QueueBoard::take, &deskapp::QueueBoard::called}) {
        (queue.*act)(before.key);
        CHECK(rowOf(queue, QStringLiteral("Odile Brandt")).overdue.isEmpty());
        CHECK(queue.undoText().endsWith(QLatin1String("Odile Brandt")));

        queue.undo();

        const auto after = rowOf(queue, QStringLiteral("Odile Brandt"));
        CHECK_FALSE(after.isTaken);
        CHECK(after.overdue == before.overdue);
        CHECK(queue.undoText().isEmpty());
        CHECK(acts() > known + static_cast<std::size_t>(times++));
    }
    const auto visit = [&] { return program->workplace().desk().course(clinic.course("Odile Brandt"))->state->opened->followUp; };
    const auto agreed = visit();
    program->call()->startVisit(before.key);
    program->call()->setVisitDay(QStringLiteral("2027-03-24"));
    program->call()->broughtForward();
    CHECK(queue.undoText() == QLatin1String("Visit brought forward: Odile Brandt"));
    CHECK(deskapp::dateOf(visit()) == QDate(2027, 3, 24));
    queue.undo();
    CHECK(visit() == agreed);
    CHECK(rowOf(queue, QStringLiteral("Odile Brandt")).overdue == before.overdue);
    program->call()->start(before.key);
    program->call()->notReached();
    CHECK(queue.undoText() == QLatin1String("Not reached: Odile Brandt"));
    CHECK(rowOf(queue, QStringLiteral("Odile Brandt")).overdue == before.overdue);  // nobody was told anything
    queue.undo();
    CHECK(rowOf(queue, QStringLiteral("Odile Brandt")).overdue == before.overdue);
}

TEST_CASE("a row names every reason for a call now, a sign before what was reckoned", "[desk][queue][safety]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto row = rowOf(*program->queue(), QStringLiteral("Tomas Reyl"));
    const auto view = program->workplace().desk().course(clinic.course("Tomas Reyl"));
    REQUIRE(view);

    CHECK(row.urgency == 2);
    int urgent = 0;
    for (const auto& finding : view->findings) {
        if (finding.open && finding.urgency <= recovery::Urgency::callNow) {
            ++urgent;
            const auto title = deskapp::findingTitle(finding);
            CHECK((row.title == title || row.others.contains(title)));
            CHECK(row.spoken.contains(title));
            CHECK((row.title != title || finding.entry));
        }
    }
    CHECK(urgent >= 3);
}

TEST_CASE("nothing is closed without an outcome", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    const auto key = rowOf(queue, QStringLiteral("Ines Varga")).key;

    queue.startClosing(key);
    REQUIRE(queue.isClosing());
    queue.close(0, QStringLiteral("looked fine"));
    queue.close(99, {});

    CHECK(queue.isClosing());
    CHECK(queue.rows()->rowOf(key) >= 0);
}

TEST_CASE("closing the only finding takes the row away, and undo brings it back", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    const auto key = rowOf(queue, QStringLiteral("Ines Varga")).key;

    queue.startClosing(key);
    queue.close(static_cast<int>(records::Outcome::advised), QStringLiteral("cover it, do not pull"));
    CHECK(queue.rows()->rowOf(key) < 0);
    REQUIRE_FALSE(queue.undoText().isEmpty());

    queue.undo();
    CHECK(queue.rows()->rowOf(key) >= 0);
    CHECK(queue.undoText().isEmpty());
}

TEST_CASE("closing one of several findings leaves the next one as the reason", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();
    const auto before = rowOf(queue, QStringLiteral("Noor Castellan"));

    queue.startClosing(before.key);
    queue.close(static_cast<int>(records::Outcome::sentToUrgentCare), {});

    const auto after = rowOf(queue, QStringLiteral("Noor Castellan"));
    CHECK(after.title != before.title);
    CHECK(after.urgency == 1);
}

TEST_CASE("without a name at the desk an act changes nothing and says why", "[desk][queue][acts]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->workplace().desk().setPerson({});
    const auto key = rowOf(*program->queue(), QStringLiteral("Odile Brandt")).key;

    program->queue()->take(key);

    CHECK_FALSE(rowOf(*program->queue(), QStringLiteral("Odile Brandt")).isTaken);
    CHECK_FALSE(program->notice().isEmpty());
}

TEST_CASE("search finds by name and by lot, and says how many it hides", "[desk][queue][search]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& queue = *program->queue();

    queue.setSearch(QStringLiteral("brandt"));
    CHECK(queue.rows()->rowCount() == 1);
    CHECK(queue.hidden().contains(QLatin1String("5")));
    queue.setSearch(QStringLiteral("th-4417"));
    CHECK(queue.rows()->rowCount() == 6);
    queue.setSearch(QStringLiteral("no such"));
    CHECK(queue.rows()->rowCount() == 0);
    CHECK(queue.emptyTitle() == QLatin1String("No match"));
    queue.setSearch({});
    queue.setUrgencyFilter(2);
    for (const auto& row : rowsOf(queue)) {
        CHECK(row.urgency == 2);
    }
    queue.setUrgencyFilter(5);
    CHECK(rowsOf(queue).size() == 1);
}

TEST_CASE("visits missed long ago stand as one line that says how many and opens them, and nobody else is folded away", "[desk][queue]")
{
    screens::DemoClinic clinic;
    clinic.clock().advance(std::chrono::days(120));
    auto program = clinic.program(QStringLiteral("en"));
    auto& board = *program->queue();
    auto& desk = program->workplace().desk();
    const auto open = desk.queue();
    const auto isPast = [&](const triage::Row& row) { return triage::isVisitOfLongAgo(row, program->workplace().now()); };
    const auto before = std::ranges::count_if(open, isPast);
    CHECK(board.pastVisits().isEmpty() == (before == 0));
    CHECK(rowsOf(board).size() == std::ssize(open) - before);  // who fell silent before the visit, or has more to be looked at
    // What was raised before the visit is answered, as it was in a clinic that never wrote a follow-up down.
    QStringList names;
    for (const auto& row : open) {
        const auto visit = [](const triage::Finding& finding) {
            const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
            return trigger != nullptr && trigger->numbers.contains("visit");
        };
        if (names.size() == 2 || isPast(row) || std::ranges::none_of(row.findings, visit)) {
            continue;
        }
        for (const auto& finding : row.findings) {
            if (!visit(finding)) {
                REQUIRE(desk.act(row.course, finding.key, records::Act::closed, records::Outcome::notReached));
            }
        }
        names << program->workplace().patientName(row.course);
    }
    REQUIRE(names.size() == 2);
    board.refresh();
    CHECK(board.pastVisits() == QStringLiteral("Visits missed more than 28 days ago, with nothing written down since: %1").arg(before + 2));
    CHECK(rowsOf(board).size() == std::ssize(open) - before - 2);
    for (const auto& row : rowsOf(board)) {
        CHECK_FALSE(names.contains(row.name));
    }
    CHECK(board.filters().first() == QStringLiteral("Everyone %1").arg(open.size()));  // they are counted

    board.setPastShown(true);
    CHECK(rowsOf(board).size() == std::ssize(open));
    board.setPastShown(false);
    board.setSearch(QStringLiteral("nobody of that name"));
    const auto rows = program->workplace().desk().queue();
    CHECK(std::ranges::count_if(rows, isPast) == before + 2);
    const auto urgent = std::ranges::count_if(rows, [&](const triage::Row& row) {
        return row.urgency <= recovery::Urgency::callNow || (!isPast(row) && triage::isOverdue(row, program->workplace().now()));
    });
    CHECK(std::ranges::any_of(rows, [&](const triage::Row& row) { return isPast(row) && triage::isOverdue(row, program->workplace().now()); }));
    REQUIRE(urgent > 0);
    CHECK(board.hiddenUrgent().startsWith(QStringLiteral("%1 ").arg(urgent)));
    board.setSearch(names.first());
    CHECK(rowsOf(board).size() == 1);
    board.showAll();
    // Somebody is on it: it stands in sight again.
    board.setPastShown(true);
    board.take(rowOf(board, names.first()).key);
    board.setPastShown(false);
    CHECK(board.pastVisits().endsWith(QStringLiteral(": %1").arg(before + 1)));
    CHECK(rowsOf(board).size() == std::ssize(open) - before - 1);
    CHECK(rowOf(board, names.first()).isTaken);
    program->lock();
    CHECK(board.pastVisits().isEmpty());
    CHECK_FALSE(board.isPastShown());
}

TEST_CASE("locking the desk leaves no patient in any view model", "[desk][privacy]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    const auto tomas = deskapp::keyOf(clinic.course("Tomas Reyl"));
    program->openCourse(tomas);
    program->openFollowUp(tomas);
    program->openSheet(tomas);
    program->openTreatment();
    program->openQueue();

    program->lock();

    CHECK(program->page() == app::DeskProgram::Page::unlock);
    CHECK(program->queue()->rows()->rowCount() == 0);
    CHECK(program->courses()->rows()->rowCount() == 0);
    CHECK(program->course()->name().isEmpty());
    CHECK(program->course()->entries()->rowCount() == 0);
    CHECK(program->course()->curves()->leftCurve().isEmpty());
    CHECK(program->followUp()->name().isEmpty());
    CHECK(program->sheet()->text().isEmpty());
    CHECK(program->sheet()->pageCount() == 0);
    CHECK(program->treatment()->patients()->rowCount() == 0);
}

TEST_CASE("what the phone told its patient is said only if the phone wrote it down", "[desk][queue]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    CHECK(rowOf(*program->queue(), QStringLiteral("Noor Castellan")).advice.startsWith(QLatin1String("The phone said to call the emergency number")));
    CHECK(rowOf(*program->queue(), QStringLiteral("Odile Brandt")).advice.startsWith(QLatin1String("The phone said to call the clinic")));

    // An entry that came with no word of a warning: of another program, or of a phone that lost it.
    auto& desk = program->workplace().desk();
    recovery::Entry entry;
    entry.id = recovery::EntryId{crypto::randomArray<16>()};
    entry.course = clinic.course("Aiko Brandvold");
    entry.at = entry.recordedAt = desk.now();
    entry.present = {recovery::Sign::thickFluid};
    REQUIRE(desk.vault().append({records::EntryRecorded{entry}}, desk.now()));
    program->workplace().settle({});
    auto advice = rowOf(*program->queue(), QStringLiteral("Aiko Brandvold")).advice;
    CHECK(advice == QLatin1String("It is not known whether the phone has shown this warning. Call the patient now."));

    entry.id = recovery::EntryId{crypto::randomArray<16>()};
    entry.present = {recovery::Sign::breathing};
    REQUIRE(desk.vault().append({records::EntryRecorded{entry}}, desk.now()));
    program->workplace().settle({});
    advice = rowOf(*program->queue(), QStringLiteral("Aiko Brandvold")).advice;
    CHECK(advice.contains(QLatin1String("not known")));
    CHECK(advice.contains(QLatin1String("help is on its way")));

    // A phone that showed something milder has not shown this.
    REQUIRE(desk.vault().append({records::WarningShown{entry.course, entry.id, desk.course(entry.course)->findings.front().key,
                                                       recovery::Urgency::nextWorkingDay, desk.now(), true}}, desk.now()));
    program->workplace().settle({});
    CHECK(rowOf(*program->queue(), QStringLiteral("Aiko Brandvold")).advice.contains(QLatin1String("not known")));

    // The page of the course says the same of each finding.
    program->openCourse(deskapp::keyOf(clinic.course("Aiko Brandvold")));
    for (const auto& row : program->course()->findings()->rows()) {
        const auto finding = row.value.value<deskapp::FindingRow>();
        CHECK((finding.urgency > 2 || finding.advice.contains(QLatin1String("not known"))));
    }
}
