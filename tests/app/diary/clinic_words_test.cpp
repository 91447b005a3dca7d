// What the clinic wrote itself stands with what is due, and nowhere that others may look.
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <QFile>
#include <QTemporaryDir>
#include <QUrl>

#include <algorithm>

using namespace ebbline;
using aftercare::InstructionKind;
using screens::DemoPatient;

namespace {

constexpr auto ownWords = "Take the small tablet with water.";
constexpr auto addedWords = "The grey ones on the jaw first.";

/// A reminder of the clinic's own at 19:30 of every day, and words beside ours on the dressings.
void addWords(aftercare::CarePlan& plan)
{
    plan.instructions.push_back({.id = "own", .kind = InstructionKind::custom, .firstDay = 0, .lastDay = 5, .minutesOfDay = {19 * 60 + 30}, .clinicText = ownWords});
    for (auto& instruction : plan.instructions)
        if (instruction.kind == InstructionKind::dressingsOff)
            instruction.clinicText = addedWords;
}

QString textUnder(const QList<diaryapp::DayLine>& lines, const char* title)
{
    const auto found = std::ranges::find(lines, QString::fromLatin1(title), &diaryapp::DayLine::title);
    return found == lines.end() ? QStringLiteral("(not there)") : found->text;
}

}  // namespace

TEST_CASE("the clinic's own words stand with what is due and with what comes next, after ours where there are any", "[diary][today]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.plans(addWords);
    program->syncNow();
    const auto& board = *program->today();

    program->openToday();
    CHECK(textUnder(board.next(), "From your clinic") == QLatin1String(ownWords));
    patient.goTo(0, 19, 40);
    program->openToday();
    CHECK(textUnder(board.due(), "From your clinic") == QLatin1String(ownWords));
    CHECK(textUnder(board.due(), "Dressings off")
          == QLatin1String("Leave them on until you are home this evening. They keep the entry points clean. The grey ones on the jaw first."));
    CHECK(textUnder(board.rules(), "Dressings off") == textUnder(board.due(), "Dressings off"));

    // Answered, only these words tell it from another one of the clinic's own.
    const auto due = board.due();
    program->today()->done(std::ranges::find(due, QLatin1String("From your clinic"), &diaryapp::DayLine::title)->key);
    CHECK(textUnder(board.answered(), "From your clinic") == QLatin1String("Take the small tablet with water. You said: done."));
}

TEST_CASE("the clinic's own words ring from no lock screen and stand in no calendar", "[diary][bells][privacy]")
{
    DemoPatient patient;
    auto program = patient.joined(QStringLiteral("en"));
    patient.plans(addWords);
    program->syncNow();
    program->reminders()->allow(true);
    REQUIRE_FALSE(patient.bells().booked.empty());

    const auto& said = patient.bells().said;
    QTemporaryDir folder;
    program->reminders()->saveCalendar(QUrl::fromLocalFile(folder.filePath(QStringLiteral("mine.ics"))));
    QFile calendar(folder.filePath(QStringLiteral("mine.ics")));
    REQUIRE(calendar.open(QIODevice::ReadOnly));
    const QString all = QStringList{said.name, said.title, said.text, said.asksToOpen, said.open, said.later, QString::fromUtf8(calendar.readAll())}.join(QLatin1Char(' '));
    REQUIRE(all.contains(QLatin1String("BEGIN:VEVENT")));
    for (const char* word : {"tablet", "grey", "jaw", "clinic"})
        CHECK_FALSE(all.contains(QLatin1String(word), Qt::CaseInsensitive));
}
