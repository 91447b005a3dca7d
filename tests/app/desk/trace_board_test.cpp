// Who did what: a line for each act at a desk, none for a patient's, searched and saved.
#include "core/clock/iso8601.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QTemporaryDir>

using namespace ebbline;

namespace {

QList<deskapp::TraceRow> rowsOf(deskapp::TraceBoard& board)
{
    QList<deskapp::TraceRow> rows;
    for (const auto& row : board.rows()->rows()) {
        rows << row.value.value<deskapp::TraceRow>();
    }
    return rows;
}

}  // namespace

TEST_CASE("an act at the desk stands first, with who did it and for whom", "[desk][traces]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTraces();
    const auto before = program->traces()->rows()->rowCount();
    REQUIRE(before > 0);

    clinic.clock().advance(std::chrono::minutes(5));
    program->openQueue();
    const auto row = program->queue()->rows()->keyAt(0);
    program->queue()->take(row);
    program->openTraces();

    const auto rows = rowsOf(*program->traces());
    REQUIRE(rows.size() > before);
    CHECK(rows.first().what == QStringLiteral("Finding: Taken"));
    CHECK(rows.first().who == QString::fromStdString(program->workplace().desk().person()));
    CHECK(rows.first().course == row);
    CHECK_FALSE(rows.first().whom.isEmpty());
}

TEST_CASE("what patients write leaves no line, and every line says when, who and what", "[desk][traces]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTraces();
    std::size_t patients = 0;
    for (const auto& operation : program->workplace().desk().vault().operations()) {
        patients += operation.kind == static_cast<std::uint16_t>(records::Kind::entryRecorded);
    }
    REQUIRE(patients > 0);

    for (const auto& row : rowsOf(*program->traces())) {
        CHECK_FALSE(row.when.isEmpty());
        CHECK_FALSE(row.who.isEmpty());
        CHECK_FALSE(row.what.isEmpty());
    }
}

TEST_CASE("the list is searched in every column and saved as it stands", "[desk][traces]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTraces();
    auto& board = *program->traces();
    const auto all = board.rows()->rowCount();
    board.setSearch(QStringLiteral("tomas reyl"));
    const auto some = board.rows()->rowCount();
    REQUIRE(some > 0);
    CHECK(some < all);
    for (const auto& row : rowsOf(board)) {
        CHECK(row.whom == QStringLiteral("Tomas Reyl"));
    }

    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("list.csv"));
    REQUIRE(board.write(path));
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const auto lines = QString::fromUtf8(file.readAll()).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
    CHECK(lines.size() == some + 1);
    CHECK(lines.first() == QStringLiteral("when,who,what,patient"));
    CHECK(board.outcome().contains(path));
    for (const auto& line : lines.mid(1)) {
        CHECK(clock::parseIso8601(line.section(u',', 0, 0).toStdString()));
    }

    CHECK_FALSE(board.write(folder.filePath(QStringLiteral("no/such/folder.csv"))));
    CHECK_FALSE(board.outcome().contains(QStringLiteral("no/such")));
}

TEST_CASE("every line is searched and saved, however many there are, and older ones are shown when asked for", "[desk][traces]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    auto& desk = program->workplace().desk();
    const auto course = clinic.course("Tomas Reyl");
    std::vector<records::Body> bodies(2100, records::FindingActed{course, "w/x", records::Act::seen, {}, "Ilan Osei", {}, desk.now()});
    REQUIRE(desk.vault().append(bodies, desk.now()));
    program->openTraces();
    auto& board = *program->traces();

    CHECK(board.hasMore());
    CHECK(board.rows()->rowCount() == 1000);
    CHECK(board.says().contains(QLatin1String("the newest 1000 are shown")));
    board.setSearch(QStringLiteral("treatment recorded"));  // older than all of them
    CHECK(board.rows()->rowCount() > 5);
    CHECK_FALSE(board.hasMore());
    board.setSearch(QStringLiteral("ilan osei"));
    board.showMore();
    CHECK(board.rows()->rowCount() == 2000);
    board.showMore();
    CHECK_FALSE(board.hasMore());
    CHECK(board.rows()->rowCount() >= 2100);

    const QTemporaryDir folder;
    board.setSearch({});
    REQUIRE(board.rows()->rowCount() == 1000);
    const auto path = folder.filePath(QStringLiteral("all.csv"));
    REQUIRE(board.write(path));
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.readAll().count('\n') > 2100);
}

TEST_CASE("nothing of it stays when the desk is locked", "[desk][traces][privacy]")
{
    screens::DemoClinic clinic;
    auto program = clinic.program(QStringLiteral("en"));
    program->openTraces();
    REQUIRE(program->traces()->rows()->rowCount() > 0);
    program->lock();
    CHECK(program->traces()->rows()->rowCount() == 0);
}
