// What stands between her and the clinic, said on the day's page: never ahead of the proof, and with what to do.
#include "core/sync/hub_time.h"
#include "core/sync/least_version.h"
#include "core/sync/messages.h"
#include "tests/screens/demo_patient.h"

#include <catch2/catch_test_macros.hpp>

#include <map>

using namespace ebbline;
using namespace std::chrono_literals;
using screens::DemoPatient;

namespace {

const QString whatToDo = QStringLiteral("If you are worried, call. Do not wait for an answer here.");

struct Day {
    DemoPatient patient;
    std::unique_ptr<app::DiaryProgram> program = patient.joined(QStringLiteral("en"));
    QString outlook()
    {
        program->today()->refresh();
        return program->today()->outlook();
    }
    std::string plain() { return outlook().toStdString(); }
    envelope::MailboxId mailbox() { return program->home().diary().link()->mailbox; }
    envelope::DeviceId desk() { return envelope::deviceIdOf(program->home().diary().link()->peerSigning); }
};

}  // namespace

TEST_CASE("with everything acknowledged the day says nothing more", "[diary][outlook]")
{
    Day day;
    CHECK(day.plain() == "");
    day.patient.goTo(0, 14);
    DemoPatient::tell(*day.program, 3);
    day.program->syncNow();
    day.patient.sends();
    day.program->syncNow();
    CHECK(day.plain() == "");
}

TEST_CASE("an entry that waits is said not to be with the clinic, with since when and what to do", "[diary][outlook]")
{
    Day day;
    day.patient.setOffline(true);
    day.patient.goTo(0, 14, 5);
    DemoPatient::tell(*day.program, 3);
    day.patient.goTo(0, 18);
    const auto waiting = day.outlook();
    CHECK_FALSE(day.program->today()->isStuck());
    CHECK(waiting.startsWith(QLatin1String("As far as this phone knows, what you wrote is not with the clinic. It has waited since today 2:05")));
    CHECK(waiting.endsWith(whatToDo));

    // The hub takes it: that is no word from the clinic.
    day.patient.setOffline(false);
    day.program->syncNow();
    CHECK(day.outlook() == waiting);
    day.patient.sends();
    CHECK(day.outlook() == waiting);
    day.program->syncNow();
    CHECK(day.plain() == "");
}

TEST_CASE("a day without a word from the clinic is said, from twenty-six hours on", "[diary][outlook]")
{
    Day day;
    const auto heard = *day.program->home().diary().outlook()->heardAt;
    day.patient.clock().set(heard + sync::longestSilence - 1ms);
    CHECK(day.plain() == "");
    CHECK_FALSE(day.program->today()->isStuck());
    day.patient.clock().advance(1ms);
    CHECK(day.program->today()->isStuck());
    CHECK(day.outlook().startsWith(QLatin1String("This phone has heard nothing from the clinic since yesterday")));
    CHECK(day.outlook().endsWith(whatToDo));
    CHECK_FALSE(day.outlook().contains(QLatin1String("what you wrote")));

    day.patient.setOffline(true);
    DemoPatient::tell(*day.program, 3);
    CHECK(day.outlook().contains(QLatin1String("what you wrote is not with the clinic")));
}

TEST_CASE("what has waited for thirty, sixty or eighty-five days asks to keep the phone and to call", "[diary][outlook]")
{
    Day day;
    day.patient.setOffline(true);
    day.patient.goTo(0, 14, 5);
    DemoPatient::tell(*day.program, 3);
    const auto written = day.patient.clock().now();
    day.patient.clock().set(written + std::chrono::days(30) - 1s);
    CHECK_FALSE(day.outlook().contains(QLatin1String("Keep this phone")));
    for (const int days : sync::overdueDays) {
        day.patient.clock().set(written + std::chrono::days(days));
        CHECK(day.outlook().contains(QStringLiteral("That is more than %1 days. Call your clinic, please. Keep this phone and this program: "
                                                    "what you wrote may be nowhere else.")
                                         .arg(days)));
        CHECK(day.outlook().endsWith(whatToDo));
        CHECK(day.program->today()->isStuck());
    }
}

TEST_CASE("a message that is missing, two that do not fit, and an older copy are each said, the gravest alone", "[diary][outlook]")
{
    Day day;
    auto& vault = day.program->home().diary().vault();
    REQUIRE(vault.noteAhead(day.mailbox(), day.desk(), 99));
    CHECK(day.outlook().startsWith(QLatin1String("A message from the clinic is missing here. Call your clinic, please.")));
    REQUIRE(vault.noteFork(day.mailbox(), day.desk()));
    CHECK(day.outlook().startsWith(QLatin1String("Two messages from the clinic do not fit together.")));
    CHECK_FALSE(day.outlook().contains(QLatin1String("is missing")));
    REQUIRE(vault.noteRolledBack(day.mailbox()));
    CHECK(day.outlook().startsWith(QLatin1String("This phone holds an older copy of your diary.")));
}

TEST_CASE("the notice that a message is missing holds for as long as one is, and no longer", "[diary][outlook]")
{
    const QString missing = QStringLiteral("A message between you and the clinic is missing. Call the clinic, please.");
    Day day;
    auto& vault = day.program->home().diary().vault();
    const auto held = vault.peerHead(day.mailbox(), day.desk());
    REQUIRE(held.has_value());
    REQUIRE(vault.noteAhead(day.mailbox(), day.desk(), held->sequence + 1));
    day.program->askNow();
    CHECK(day.program->notice() == missing);
    day.program->syncNow();  // nothing new came
    CHECK(day.program->notice() == missing);
    day.patient.setOffline(true);
    day.program->askNow();
    CHECK(day.program->notice() == missing);  // before that nobody can be reached

    day.patient.setOffline(false);
    day.patient.writes("Please keep your head up tonight.");
    day.program->syncNow();
    CHECK(day.program->notice().isEmpty());

    // A notice of something else is not taken back with it.
    REQUIRE(vault.noteAhead(day.mailbox(), day.desk(), held->sequence + 99));
    day.program->askNow();
    REQUIRE(day.program->notice() == missing);
    DemoPatient::tell(*day.program, 3);
    const QString other = day.program->notice();
    REQUIRE(other != missing);
    day.program->syncNow();
    CHECK(day.program->notice() == other);
}

TEST_CASE("what the server does not take is said with its reason, at the top, until it is taken", "[diary][outlook]")
{
    using Why = sync::Refusal::Why;
    Day day;
    auto& vault = day.program->home().diary().vault();
    day.patient.setOffline(true);
    DemoPatient::tell(*day.program, 3);
    const std::map<Why, QString> said{{Why::full, QStringLiteral("The server between is full. What you write does not fit in.")},
                                      {Why::unknownThere, QStringLiteral("The server between does not know this phone any more.")},
                                      {Why::taken, QStringLiteral("The server between does not take what this phone sends.")},
                                      {Why::unreadable, QStringLiteral("The server between does not take what this phone sends.")}};
    for (const auto& [why, text] : said) {
        REQUIRE(sync::noteRefused(vault, day.mailbox(), 99, why));
        CHECK(day.outlook().startsWith(text + QStringLiteral(" It stays on this phone, and this phone tries again. Call your clinic, please.")));
        CHECK(day.outlook().contains(QLatin1String("what you wrote is not with the clinic")));
        CHECK(day.outlook().endsWith(whatToDo));
        CHECK(day.program->today()->isStuck());
    }
    REQUIRE(sync::forgetRefusal(vault, day.mailbox()));
    CHECK_FALSE(day.outlook().contains(QLatin1String("server")));
    CHECK_FALSE(day.program->today()->isStuck());
}

TEST_CASE("a wrong clock of the phone is said calmly, with how much and which way", "[diary][outlook][clocks]")
{
    Day day;
    auto& vault = day.program->home().diary().vault();
    REQUIRE(sync::noteClockAhead(vault, 14min));
    CHECK(day.plain() == "The clock of this phone is about 14 minutes fast. Please set it: it rings your reminders.");
    CHECK_FALSE(day.program->today()->isStuck());
    REQUIRE(sync::noteClockAhead(vault, -3h));
    CHECK(day.plain() == "The clock of this phone is about 3 hours slow. Please set it: it rings your reminders.");
    REQUIRE(sync::noteClockAhead(vault, 48h));
    CHECK(day.plain().starts_with("The clock of this phone is about 2 days fast."));
    REQUIRE(sync::noteClockAhead(vault, 10min));
    CHECK(day.plain() == "");
}

TEST_CASE("a locked diary says nothing of its outlook", "[diary][outlook]")
{
    Day day;
    day.patient.setOffline(true);
    DemoPatient::tell(*day.program, 3);
    REQUIRE(day.plain() != "");
    day.program->lock();
    CHECK(day.plain() == "");
}

TEST_CASE("a phone that was replaced says so, with what did not get to the clinic and what to do", "[diary][outlook]")
{
    Day day;
    auto& vault = day.program->home().diary().vault();
    const auto mailbox = day.mailbox();
    REQUIRE(vault.endLink(mailbox));
    const auto said = [&] { return day.program->today()->replaced(); };
    CHECK(said().startsWith(QLatin1String("This phone is no longer linked with the clinic.")));
    CHECK_FALSE(said().contains(QLatin1String("did not get to the clinic")));
    sync::LeftBehind left;
    left.entries = 2;
    left.photos = 1;
    REQUIRE(vault.keep(sync::leftBehindName(mailbox), sync::pack(left)));
    CHECK(said().contains(QLatin1String("3 things that you wrote here did not get to the clinic.")));
    CHECK(said().contains(QLatin1String("call your clinic")));
    CHECK(day.outlook().isEmpty());
}

TEST_CASE("an app that is too old for the clinic says so, and what to do", "[diary][outlook]")
{
    Day day;
    auto& vault = day.program->home().diary().vault();
    REQUIRE(vault.keep(sync::newerStatementName(day.mailbox()), bytes::viewOf("of tomorrow")));
    CHECK(day.outlook().contains(QLatin1String("Please update it.")));
    CHECK(day.outlook().endsWith(whatToDo));
    CHECK(day.program->today()->isStuck());
}

TEST_CASE("a phone that another one replaced says so, and does not go on as if it were in use", "[diary][outlook][safety]")
{
    Day day;
    auto& today = *day.program->today();
    day.program->reminders()->allow(true);
    day.patient.goTo(0, 19, 40);
    DemoPatient::tell(*day.program, 3);
    day.program->openToday();
    REQUIRE_FALSE(today.due().isEmpty());
    REQUIRE(today.replaced().isEmpty());
    day.program->syncNow();
    day.patient.sends();

    const auto other = day.patient.joinedOnAnotherPhone(QStringLiteral("en"));
    CHECK(other->today()->replaced().isEmpty());
    CHECK(other->home().diary().history().size() == 1);
    day.patient.sends();
    day.program->syncNow();
    day.program->openToday();

    CHECK(today.replaced().startsWith(QLatin1String("This phone is no longer linked with the clinic.")));
    CHECK(day.plain() == "");
    CHECK(today.sent().isEmpty());
    CHECK(today.due().isEmpty());
    CHECK(today.next().isEmpty());
    CHECK(today.answered().isEmpty());
    CHECK_FALSE(day.program->history()->entries().isEmpty());  // what was written stays to read
    CHECK(day.program->warning()->calls().size() == 3);
    day.program->lock();
    CHECK(today.replaced().isEmpty());
}

TEST_CASE("the way to the hub follows the link: another address or key of the hub makes it anew, and only they do", "[diary][outlook]")
{
    Day day;
    auto& home = day.program->home();
    int gone = 0;
    QObject::connect(&home, &diaryapp::Home::courierGoes, &home, [&] { ++gone; });
    REQUIRE(home.courier() != nullptr);
    CHECK(gone == 0);
    auto link = *home.diary().link();
    link.hubKeyHash[0] = static_cast<std::uint8_t>(link.hubKeyHash[0] + 1);
    REQUIRE(home.diary().vault().putLink(link));
    REQUIRE(home.courier() != nullptr);
    CHECK(gone == 1);
    link.hub = "https://other.example";
    REQUIRE(home.diary().vault().putLink(link));
    REQUIRE(home.courier() != nullptr);
    CHECK(gone == 2);
    REQUIRE(home.courier() != nullptr);
    CHECK(gone == 2);
}
