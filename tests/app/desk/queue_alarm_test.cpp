// What the queue says outside of its page: on the rail, on the locked desk, on the desktop, and never a name.
#include "tests/screens/demo_clinic.h"
#include "tests/screens/spoken_bells.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;

namespace {

struct Alarmed {
    screens::SpokenBells bells;
    screens::DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program;
    deskapp::QueueAlarm* alarm = nullptr;

    Alarmed()
    {
        clinic.setBells(&bells);
        program = clinic.program(QStringLiteral("en"));
        alarm = program->alarm();
    }
    void takeAll()
    {
        for (int i = 0; i < program->queue()->rows()->rowCount(); ++i) {
            program->queue()->take(program->queue()->rows()->keyAt(i));
        }
    }
    /// A call that reached her holds longer than a taking.
    void speakWithAll()
    {
        for (int i = 0; i < program->queue()->rows()->rowCount(); ++i) {
            program->queue()->called(program->queue()->rows()->keyAt(i));
        }
    }
    void tell(const char* patient, recovery::Sign sign)
    {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = clinic.course(patient);
        entry.at = entry.recordedAt = program->workplace().now();
        entry.present = {sign};
        REQUIRE(program->workplace().desk().vault().append({records::EntryRecorded{entry}}, program->workplace().now()));
        program->workplace().settle(Done{});
    }
    void saysNoName()
    {
        for (const auto& said : {bells.said.title, bells.said.text, bells.said.asksToOpen, alarm->onRail(), alarm->onDoor()}) {
            for (const char* word : {"Noor", "Castellan", "Tomas", "Reyl", "Odile", "Brandt", "Aiko", "fever", "Fever", "pain", "Pain", "swell", "breath", "+00"}) {
                CHECK_FALSE(said.contains(QLatin1String(word)));
            }
        }
    }
};

}  // namespace

TEST_CASE("the rail says how many wait too long with nobody on them, and nothing once somebody is", "[desk][alarm]")
{
    Alarmed it;
    REQUIRE(it.alarm->overdue() > 0);
    CHECK(it.alarm->onRail().contains(QString::number(it.alarm->overdue())));
    it.takeAll();
    CHECK(it.alarm->overdue() == 0);
    CHECK(it.alarm->onRail().isEmpty());
    it.program->queue()->undo();
    it.saysNoName();
}

TEST_CASE("what comes and asks for a call now is told once on the desktop, without a name", "[desk][alarm]")
{
    Alarmed it;
    CHECK(it.bells.tries == 0);  // what was there at unlocking is on the screen
    it.tell("Aiko Brandvold", recovery::Sign::threadLump);
    CHECK(it.bells.tries == 0);

    it.tell("Aiko Brandvold", recovery::Sign::breathing);
    CHECK(it.bells.tries == 1);
    CHECK(it.bells.said.text == QLatin1String("Somebody is to be called now. Open the desk."));
    CHECK(it.bells.said.desktopEntry == QLatin1String("ebbline-desk"));
    it.program->queue()->refresh();
    CHECK(it.bells.tries == 1);
    it.saysNoName();
}

TEST_CASE("what nobody touches in time is told on the desktop, also while the desk is locked", "[desk][alarm]")
{
    Alarmed it;
    it.speakWithAll();
    it.tell("Aiko Brandvold", recovery::Sign::breathing);
    REQUIRE(it.bells.tries == 1);
    it.clinic.clock().advance(std::chrono::minutes(4));
    it.program->queue()->refresh();
    CHECK(it.bells.tries == 1);
    it.program->lock();
    CHECK(it.alarm->onRail().isEmpty());
    CHECK(it.alarm->onDoor().startsWith(QLatin1String("Locked since")));

    it.clinic.clock().advance(std::chrono::minutes(2));
    it.alarm->look();

    CHECK(it.bells.tries == 2);
    CHECK(it.alarm->onDoor().startsWith(QLatin1String("1 in the queue")));
    CHECK(it.alarm->onDoor().contains(QLatin1String("asks the hub for nothing")));
    it.alarm->look();
    CHECK(it.bells.tries == 2);
    it.saysNoName();
}

TEST_CASE("what was taken and forgotten rings again, on the desktop, at the rail and over a lock", "[desk][alarm][safety]")
{
    Alarmed it;
    it.takeAll();
    REQUIRE(it.alarm->overdue() == 0);
    it.clinic.clock().advance(std::chrono::minutes(4));
    it.alarm->look();
    CHECK(it.bells.tries == 0);

    it.clinic.clock().advance(std::chrono::minutes(2));
    it.alarm->look();
    CHECK(it.alarm->overdue() == 1);  // the one emergency
    CHECK(it.bells.tries == 1);
    CHECK(it.alarm->onRail().startsWith(QLatin1String("1 wait")));

    it.takeAll();
    CHECK(it.alarm->overdue() == 0);
    it.program->lock();
    it.clinic.clock().advance(std::chrono::minutes(6));
    it.alarm->look();
    CHECK(it.bells.tries == 2);
    CHECK(it.alarm->onDoor().startsWith(QLatin1String("1 in the queue")));
    it.saysNoName();
}

TEST_CASE("where notices are not possible the desk says so", "[desk][alarm]")
{
    Alarmed it;
    CHECK(it.alarm->onNotices().startsWith(QLatin1String("When somebody is to be called now")));
    it.bells.refuses = true;
    it.tell("Aiko Brandvold", recovery::Sign::breathing);
    CHECK(it.alarm->onNotices().startsWith(QLatin1String("The computer did not take the last notice")));
    it.bells.there = false;
    CHECK(it.alarm->onNotices().startsWith(QLatin1String("Notices on the desktop are not possible here")));

    screens::DemoClinic silent;
    CHECK(silent.program(QStringLiteral("en"))->alarm()->onNotices().contains(QLatin1String("not possible")));
}

TEST_CASE("invented patients ring for nobody and leave nothing on the door", "[desk][alarm]")
{
    Alarmed it;
    it.takeAll();
    it.program->lock();
    const auto rung = it.bells.tries;
    REQUIRE(it.program->unlocking()->openDemo());
    it.program->lock();
    it.clinic.clock().advance(std::chrono::hours(30));
    it.alarm->look();
    CHECK(it.bells.tries == rung);
}
