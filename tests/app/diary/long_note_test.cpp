// Notes that are longer than what is kept or sent: said, and nothing shows as if it were.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QSignalSpy>

using namespace ebbline;
using screens::DemoPatient;

TEST_CASE("a note that is full says that what comes after is not kept, until it is shorter again", "[diary][entry][safety]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openEntry();
    auto& board = *program->entry();
    const QString full = QStringLiteral("a").repeated(recovery::Entry::maximumNote);
    board.writeNote(full);
    CHECK(board.noteProblem().isEmpty());
    board.writeNote(full + QStringLiteral(" and I can not swallow"));
    CHECK(board.note() == full);
    CHECK(board.noteProblem() == QLatin1String("The note is full. What comes after this is not kept."));
    board.writeNote(full);  // the field takes back what was kept: what was too much is still not kept
    CHECK_FALSE(board.noteProblem().isEmpty());
    board.writeNote(full.chopped(1));
    CHECK(board.noteProblem().isEmpty());

    board.writeNote(full + QLatin1Char('b'));
    REQUIRE_FALSE(board.noteProblem().isEmpty());
    program->lockIdle();
    CHECK(board.noteProblem().isEmpty());
}

TEST_CASE("a note to the clinic that is too long to send says what to do, and stays to be made shorter", "[diary][notes]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    program->openNotes();
    auto& history = *program->history();
    QSignalSpy failed(&history, &diaryapp::HistoryBoard::failed);
    const QString note = QStringLiteral("a").repeated(2001);
    history.setNoteDraft(note);
    CHECK_FALSE(history.sendNote());
    REQUIRE(failed.size() == 1);
    CHECK(failed.front().front().toString() == QLatin1String("This note is too long to send. Send a part of it, and the rest as a second note."));
    CHECK(history.noteDraft() == note);
    CHECK(history.notes().isEmpty());
    history.setNoteDraft(note.chopped(1));
    CHECK(history.sendNote());
}
