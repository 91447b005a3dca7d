// How it stands with the phones, at the desk: on the queue, at a course, and on the clinic's page.
#include "app/desk/model/course_rows.h"
#include "app/desk/model/times.h"
#include "core/sync/hub_time.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <map>

using namespace ebbline;
using namespace std::chrono_literals;
using screens::DemoClinic;

namespace {

struct Phones {
    DemoClinic clinic;
    std::unique_ptr<app::DeskProgram> program = clinic.program(QStringLiteral("en"));
    recovery::CourseId tomas = clinic.course("Tomas Reyl");

    vault::Vault& vault() { return program->workplace().desk().vault(); }
    deskapp::HubWatch& hub()
    {
        program->hub()->refresh();
        return *program->hub();
    }
    deskapp::QueueRow row()
    {
        program->queue()->refresh();
        const auto* rows = program->queue()->rows();
        return rows->rows()[rows->rowOf(deskapp::keyOf(tomas))].value.value<deskapp::QueueRow>();
    }
    vault::Link link()
    {
        const auto links = vault().links();
        REQUIRE(links);
        for (const auto& link : *links) {
            if (link.course == tomas) {
                return link;
            }
        }
        return {};
    }
    envelope::DeviceId phone() { return envelope::deviceIdOf(link().peerSigning); }
};

}  // namespace

TEST_CASE("a phone is not heard of from twenty-six hours on: its row, its course and the queue say so", "[desk][outlook]")
{
    Phones it;
    const auto heard = *sync::outlookOf(it.vault(), it.link().mailbox)->heardAt;
    it.clinic.clock().set(heard + sync::longestSilence - 1ms);
    CHECK(it.hub().unheard().toStdString() == "");
    CHECK(it.row().reach.toStdString() == "");

    it.clinic.clock().advance(1ms);
    CHECK(it.row().reach.startsWith(QLatin1String("Phone not heard of since Yesterday")));
    CHECK(it.row().spoken.contains(it.row().reach));
    CHECK(it.hub().unheard().startsWith(QLatin1String("Phones not heard of for more than a day: ")));
    CHECK(it.hub().unheard().endsWith(QLatin1String("What was written there may not be here.")));
    CHECK(it.hub().phones().contains(QLatin1String("phones not heard of for more than a day.")));
    it.program->openCourse(deskapp::keyOf(it.tomas));
    CHECK(it.program->course()->reach().contains(QLatin1String("Phone not heard of since Yesterday")));
}

TEST_CASE("what a phone has not confirmed is said, at once on the clinic's page and after a day on its row", "[desk][outlook]")
{
    Phones it;
    REQUIRE(it.program->workplace().desk().writeMessage(it.tomas, "Please take your temperature."));
    CHECK(it.hub().phones().contains(QLatin1String("has yet to confirm what was sent to it.")));
    CHECK(it.row().reach.toStdString() == "");
    it.clinic.clock().advance(sync::longestSilence + 1s);
    CHECK(it.hub().phones().contains(QLatin1String("has not confirmed for more than a day what was sent to it.")));
    CHECK(it.row().reach.contains(QLatin1String("It has not confirmed what was sent to it, ")));
}

TEST_CASE("what a phone has not taken for thirty, sixty or eighty-five days is trouble, with the patient's name", "[desk][outlook]")
{
    Phones it;
    REQUIRE(it.program->workplace().desk().writeMessage(it.tomas, "Please take your temperature."));
    const auto written = it.clinic.clock().now();
    it.clinic.clock().set(written + std::chrono::days(30) - 1s);
    CHECK_FALSE(it.hub().trouble().contains(QLatin1String("before anything is lost")));
    for (const int days : sync::overdueDays) {
        it.clinic.clock().set(written + std::chrono::days(days));
        CHECK(it.hub().trouble().contains(
            QStringLiteral("For more than %1 days a phone has not taken what was sent to it: Tomas Reyl. Call, before anything is lost.").arg(days)));
        it.program->openCourse(deskapp::keyOf(it.tomas));
        CHECK(it.program->course()->reach().contains(QStringLiteral("That is more than %1 days: the phone may be lost or out of use.").arg(days)));
    }
}

TEST_CASE("what a hub holds back, a phone that forked and an older desk are trouble until they are over", "[desk][outlook]")
{
    Phones it;
    const auto mailbox = it.link().mailbox;
    REQUIRE(it.hub().trouble().toStdString() == "");
    REQUIRE(it.vault().noteAhead(mailbox, it.phone(), 99));
    CHECK(it.hub().trouble().contains(QLatin1String("A message from a phone is missing.")));
    CHECK(it.row().reach.startsWith(QLatin1String("A message of the phone is missing")));
    REQUIRE(it.vault().noteFork(mailbox, it.phone()));
    CHECK(it.hub().trouble().contains(QLatin1String("two different histories")));
    CHECK(it.row().reach.startsWith(QLatin1String("The phone sent two different histories")));
    REQUIRE(it.vault().noteRolledBack(mailbox));
    CHECK(it.hub().trouble().contains(QLatin1String("This desk runs on older data: a phone holds more from it.")));
    CHECK(it.row().reach.startsWith(QLatin1String("The phone holds more from this desk")));
}

TEST_CASE("what cannot be read is said of the course whose phone sent it, with what to do, until it can", "[desk][outlook]")
{
    Phones it;
    const auto mailbox = it.link().mailbox;
    const auto envelopeOf = [](const envelope::DeviceId& sender, std::uint8_t mark) {
        return bytes::Writer().raw(bytes::Bytes(24, mark)).raw(sender.view()).raw(bytes::Bytes(100, mark)).bytes();
    };
    REQUIRE(it.hub().trouble().toStdString() == "");
    // What a stranger or the hub put there is nobody's word, and what waits for one before it is told as missing.
    REQUIRE(it.vault().quarantine(mailbox, envelopeOf({crypto::randomArray<16>()}, 1), {Reason::forged, "of nobody"}).has_value());
    REQUIRE(it.vault().quarantine(mailbox, envelopeOf(it.phone(), 2), {Reason::outOfOrder, "one is missing"}).has_value());
    CHECK(it.hub().trouble().toStdString() == "");
    CHECK(it.row().reach.toStdString() == "");

    REQUIRE(it.vault().quarantine(mailbox, envelopeOf(it.phone(), 3), {Reason::malformed, "it cannot be read"}).has_value());
    CHECK(it.hub().trouble()
          == QLatin1String("Messages from these patients' phones cannot be read here: Tomas Reyl (1). Call and ask what was written. If it stays so, have "
                           "the diary's data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again."));
    CHECK(it.row().reach.startsWith(QLatin1String("1 message of the phone cannot be read here. Call and ask what was written.")));
    const auto way = it.row().reach;
    CHECK(way.contains(QLatin1String("My data")));  // the diary takes no code while it holds a course, and deleting it is no way back
    CHECK(way.indexOf(QLatin1String("saved")) < way.indexOf(QLatin1String("delete")));
    CHECK(way.indexOf(QLatin1String("delete")) < way.indexOf(QLatin1String("link the phone again")));
    // The one that waited turns out to be no better.
    REQUIRE(it.vault().quarantine(mailbox, envelopeOf(it.phone(), 2), {Reason::wrongKey, "it does not open"}).has_value());
    CHECK(it.hub().trouble().contains(QLatin1String("Tomas Reyl (2)")));
    it.program->openCourse(deskapp::keyOf(it.tomas));
    CHECK(it.program->course()->reach().contains(QLatin1String("2 messages of the phone cannot be read here.")));
    REQUIRE(it.vault().endLink(mailbox));
    CHECK_FALSE(it.hub().trouble().contains(QLatin1String("cannot be read")));
}

TEST_CASE("what came of another desk is said of a desk, and ends with that desk", "[desk][outlook]")
{
    Phones it;
    vault::Channel channel{{crypto::randomArray<16>()}, crypto::SigningKey::generate().publicKey(), {crypto::randomArray<32>()}, {}, 0, false};
    const auto colleague = envelope::deviceIdOf(channel.peerSigning);
    REQUIRE(it.vault().putChannel(channel));
    REQUIRE(it.hub().trouble().toStdString() == "");
    REQUIRE(it.vault().noteAhead(channel.mailbox, colleague, 9));
    CHECK(it.hub().trouble()
          == QLatin1String("A message from another desk of yours is missing. What was written there may not be here."));
    REQUIRE(it.vault().noteFork(channel.mailbox, colleague));
    CHECK(it.hub().trouble().startsWith(QLatin1String("Another desk of yours sent two different histories.")));
    CHECK_FALSE(it.hub().trouble().contains(QLatin1String("patient")));
    REQUIRE(it.vault().notePeerOlder(channel.mailbox, colleague));
    CHECK(it.hub().trouble().startsWith(QLatin1String("Another desk of yours says that it runs on older data. What is written there now does "
                                                      "not arrive here. Copy it by hand. Then,")));
    CHECK(it.hub().trouble().contains(QLatin1String("two different histories")));
    REQUIRE(it.vault().noteRolledBack(channel.mailbox));
    CHECK(it.hub().trouble().startsWith(QLatin1String("This desk runs on older data: another desk of yours holds more from it.")));
    channel.ended = true;
    REQUIRE(it.vault().putChannel(channel));
    CHECK(it.hub().trouble().toStdString() == "");
}

TEST_CASE("what the hub does not take is trouble with its reason, and stands on the row whose phone waits for it", "[desk][outlook]")
{
    using Why = sync::Refusal::Why;
    Phones it;
    REQUIRE(it.hub().trouble().toStdString() == "");
    const std::map<Why, QString> reasons{{Why::unknownThere, QStringLiteral("it does not know this desk or the mailbox")},
                                         {Why::taken, QStringLiteral("it holds something else under the same number")},
                                         {Why::full, QStringLiteral("the mailbox is full")},
                                         {Why::unreadable, QStringLiteral("it is too large or unreadable for it")}};
    for (const auto& [why, reason] : reasons) {
        REQUIRE(sync::noteRefused(it.vault(), it.link().mailbox, 99, why));
        const auto said = QStringLiteral("The hub does not take what this desk sends: %1. It stays here and is tried "
                                         "again. Tell whoever runs the hub.")
                              .arg(reason);
        CHECK(it.hub().trouble() == said);
        CHECK(it.row().reach.startsWith(said));
    }
    REQUIRE(sync::forgetRefusal(it.vault(), it.link().mailbox));
    CHECK(it.hub().trouble().toStdString() == "");
    CHECK(it.row().reach.toStdString() == "");
}

TEST_CASE("a wrong clock of the desk is said beside when the hub was heard, calmly", "[desk][outlook][clocks]")
{
    Phones it;
    const auto heard = "1796800000000 60";
    REQUIRE(it.vault().keep("desk/last-heard", bytes::viewOf(heard)));
    it.program->lock();
    REQUIRE(it.program->workplace().unlock(bytes::viewOf(DemoClinic::passphrase)));
    CHECK_FALSE(it.hub().freshness().contains(QLatin1String("clock")));
    REQUIRE(sync::noteClockAhead(it.vault(), 14min));
    CHECK(it.hub().freshness().endsWith(QLatin1String(". The clock of this computer is about 14 min fast: please set it.")));
    REQUIRE(sync::noteClockAhead(it.vault(), -3h));
    CHECK(it.hub().freshness().endsWith(QLatin1String(". The clock of this computer is about 3 h slow: please set it.")));
    CHECK_FALSE(it.hub().trouble().contains(QLatin1String("clock")));
}

TEST_CASE("an entry that came before the time that it bears says so, and nothing of the course is changed by it", "[desk][outlook][clocks]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(30h);
    const auto truly = world.clock.now();
    const auto entryFrom = [&](std::chrono::milliseconds ahead) {
        world.clock.turnWall(truly + ahead);
        REQUIRE(phone.record(world.entryOf(phone, 3, 2)));
        world.clock.turnWall(truly);
        world.syncPhone(phone);
        world.syncDesk();
    };
    entryFrom(10min);
    CHECK(world.desk.vault().cameEarly()->empty());
    entryFrom(10min + 1s);
    const auto early = world.desk.vault().cameEarly();
    REQUIRE(early->size() == 1);
    CHECK(early->begin()->second == truly);

    deskapp::CameEarly said;
    for (const auto& [operation, at] : *early) {
        said.emplace(operation, world.zone.moment(at));
    }
    const auto& state = *world.desk.course(course)->state;
    const auto rows = deskapp::entryRows(state, [now = world.now()](const clock::Moment& at) { return deskapp::whenText(at, now); }, said);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].value.value<deskapp::EntryRow>().marks.contains(QLatin1String("came before the time that it bears, Today")));
    CHECK(rows[1].value.value<deskapp::EntryRow>().marks.toStdString() == "");
    CHECK(world.desk.vault().verify());
}

TEST_CASE("a closed course asks for no word from its phone", "[desk][outlook]")
{
    Phones it;
    it.clinic.clock().advance(sync::longestSilence);
    REQUIRE(it.hub().unheard().contains(QLatin1String("more")));
    const auto linked = it.hub().phones();
    it.program->openFollowUp(deskapp::keyOf(it.tomas));
    it.program->followUp()->setChange(1);
    it.program->followUp()->setSatisfaction(5);
    it.program->followUp()->setUncomplicated(2);
    const auto asked = it.program->followUp()->answers()->rows();  // each answer makes them anew
    for (const auto& row : asked) {
        it.program->followUp()->answer(row.key, static_cast<int>(records::Outcome::treatedInClinic));
    }
    it.program->followUp()->save();
    CHECK(it.hub().phones() != linked);
}

TEST_CASE("a locked desk says nothing of phones, and one of invented patients speaks of the one that fell silent", "[desk][outlook]")
{
    Phones it;
    it.clinic.clock().advance(sync::longestSilence);
    it.program->lock();
    CHECK(it.hub().unheard().toStdString() == "");
    CHECK(it.hub().phones().toStdString() == "");
    REQUIRE(it.program->unlocking()->openDemo());
    CHECK(it.hub().unheard().contains(QLatin1String("Ulrik Fenwood")));
}
