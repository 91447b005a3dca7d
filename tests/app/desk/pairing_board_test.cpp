// Linking a phone through a real hub's rules, in one process.
#include "app/desk/model/times.h"
#include "core/patient/diary.h"
#include "core/patient/joining.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QLocale>
#include <QTest>

#include <algorithm>

using namespace ebbline;

namespace {

/// Passes requests on to a courier that lives longer.
class Way final : public sync::Courier {
public:
    explicit Way(sync::Courier& courier) : m_courier(courier) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_courier.send(request, std::move(answer));
    }

private:
    sync::Courier& m_courier;
};

struct Room {
    screens::DemoClinic clinic;
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "another-hub"));
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    test::LoopbackCourier courier{service, clinic.clock()};
    std::unique_ptr<app::DeskProgram> program =
        clinic.program(QStringLiteral("en"), [this](const desk::Desk::Hub&) { return std::make_unique<Way>(courier); });
    patient::Diary phone = *patient::Diary::create(clinic.folder().parent_path() / "phone", test::passphrase, test::cheap,
                                                   clinic.clock(), clinic.zone());
    patient::Joining joining{phone, clinic.clock()};
    QString photographed;  ///< the code as somebody else may have seen it

    Room()
    {
        REQUIRE(store->addClinic(program->workplace().desk().vault().clinicRoot().publicKey(), "Quay"));
        program->openPairing(deskapp::keyOf(clinic.course("Petra Halden")));
        REQUIRE(program->page() == app::DeskProgram::Page::pairing);
    }

    deskapp::PairingBoard& board() { return *program->pairing(); }

    void meet()
    {
        board().start();
        REQUIRE(board().isCodeShown());
        photographed = board().typedCode();
        REQUIRE(joining.start(board().typedCode().toStdString(), "127.0.0.1:1"));
        for (int i = 0; i < 4; ++i) {
            joining.poll(courier, [] {});
            board().poll();
        }
    }
};

}  // namespace

TEST_CASE("the code is shown as a picture, as text, and with the time it has left", "[desk][pairing]")
{
    Room room;
    CHECK(room.board().isChoosing());
    CHECK(room.board().blocked().toStdString() == "");

    room.board().start();

    REQUIRE(room.board().isCodeShown());
    CHECK(room.board().qr().size >= 21);
    CHECK(room.board().typedCode().size() == 29);  // six groups of four with dashes
    CHECK(room.board().timeLeft().contains(QLatin1String("10:00")));
    room.clinic.clock().advance(std::chrono::seconds(61));
    CHECK(room.board().timeLeft().contains(QLatin1String("8:59")));
}

TEST_CASE("both show the same six digits, and only the desk's word links the phone", "[desk][pairing]")
{
    Room room;
    room.meet();

    REQUIRE(room.board().isComparing());
    CHECK(room.board().number().remove(QChar(0x00a0)).toStdString() == room.joining.confirmationNumber());
    CHECK_FALSE(room.program->workplace().desk().course(room.clinic.course("Petra Halden"))->summary.linked);

    room.board().confirm();

    CHECK(room.board().isLinked());
    CHECK(room.program->workplace().desk().course(room.clinic.course("Petra Halden"))->summary.linked);
}

TEST_CASE("a phone that was linked has its course at once, and not when the desk looks next", "[desk][pairing]")
{
    int runs = 0;
    Room room;
    auto& hub = *room.program->hub();
    QObject::connect(&hub.pulse(), &pulse::HubPulse::ended, [&runs] { ++runs; });
    hub.every(std::chrono::hours(1));
    REQUIRE(QTest::qWaitFor([&] { return runs == 1; }, 5000));
    room.meet();
    room.board().confirm();
    REQUIRE(room.board().isLinked());
    REQUIRE(QTest::qWaitFor([&] { return runs == 2; }, 5000));
    room.joining.poll(room.courier, [] {});
    REQUIRE(room.joining.step() == patient::Joining::Step::linked);

    room.phone.syncNow(room.courier, [](const sync::Report&) {});
    CHECK(room.phone.joined());
}

TEST_CASE("digits that differ link nothing", "[desk][pairing]")
{
    Room room;
    room.meet();
    REQUIRE(room.board().isComparing());

    room.board().refuse();

    CHECK(room.board().isEnded());
    CHECK(room.board().isAlarming());
    CHECK(room.board().title() == QLatin1String("Stop: the numbers were not the same"));
    CHECK(room.board().text().contains(QLatin1String("Nothing was linked. Make a new code")));
    CHECK(room.board().number().isEmpty());
    room.board().poll();
    CHECK(room.board().title() == QLatin1String("Stop: the numbers were not the same"));
    CHECK_FALSE(room.program->workplace().desk().course(room.clinic.course("Petra Halden"))->summary.linked);
    room.board().again();
    CHECK(room.board().isChoosing());
    CHECK_FALSE(room.board().isAlarming());
}

TEST_CASE("a code that is called off is over without a word", "[desk][pairing]")
{
    Room room;
    room.board().start();
    REQUIRE(room.board().isCodeShown());
    room.board().refuse();
    CHECK(room.board().isChoosing());
    CHECK_FALSE(room.board().isAlarming());
}

TEST_CASE("a code that two phones used raises an alarm and links neither", "[desk][pairing]")
{
    Room room;
    room.meet();
    REQUIRE(room.board().isComparing());
    auto stranger = *patient::Diary::create(room.clinic.folder().parent_path() / "stranger", test::passphrase, test::cheap,
                                            room.clinic.clock(), room.clinic.zone());
    patient::Joining second{stranger, room.clinic.clock()};
    // A photograph of the code is as good as the code; what it buys is an alarm.
    REQUIRE(second.start(room.photographed.toStdString(), "127.0.0.1:1"));
    for (int i = 0; i < 4; ++i) {
        second.poll(room.courier, [] {});
        room.board().poll();
    }

    CHECK(room.board().isAlarming());
    CHECK(room.board().isEnded());
    CHECK(room.board().title() == QLatin1String("Stop: this code was used twice"));
    CHECK(room.board().text().contains(QLatin1String("Nothing was linked")));

    room.board().confirm();

    CHECK_FALSE(room.board().isLinked());
    CHECK_FALSE(room.program->workplace().desk().course(room.clinic.course("Petra Halden"))->summary.linked);
    room.board().again();
    CHECK(room.board().isChoosing());
    CHECK_FALSE(room.board().isAlarming());
}

TEST_CASE("a code that ran out says so and links nothing", "[desk][pairing]")
{
    Room room;
    room.board().start();
    room.clinic.clock().advance(std::chrono::minutes(11));
    room.board().poll();

    CHECK(room.board().isEnded());
    CHECK(room.board().title() == QLatin1String("The code has run out"));
    room.board().again();
    CHECK(room.board().isChoosing());
}

TEST_CASE("without the numbers to call no code is made", "[desk][pairing]")
{
    Room room;
    records::ClinicDescribed bare;
    bare.contacts.clinicName = "Bare";
    bare.people = {"Dr Mara Lindqvist"};
    REQUIRE(room.program->workplace().desk().allowStep(bytes::viewOf(screens::DemoClinic::passphrase)));
    REQUIRE(room.program->workplace().desk().describeClinic(bare));

    room.board().start();

    CHECK(room.board().isChoosing());
    CHECK(room.board().blocked().contains(QLatin1String("Clinic page")));
}

TEST_CASE("a run that did not reach the hub never counts as heard from it", "[desk][hub]")
{
    Room room;
    auto& hub = *room.program->hub();
    room.courier.offline = true;

    hub.syncNow();

    CHECK(hub.freshness() == QLatin1String("Not heard from the hub yet"));
    CHECK(hub.trouble().contains(QLatin1String("kept here and sent later")));
}

TEST_CASE("a phone in another's place is for two, and one that is lost ends with the passphrase alone", "[desk][pairing]")
{
    Room room;
    room.meet();
    room.board().confirm();
    room.board().poll();
    REQUIRE(room.board().isLinked());
    const auto key = deskapp::keyOf(room.clinic.course("Petra Halden"));
    room.program->openPairing(key);
    REQUIRE(room.board().isReplacing());
    REQUIRE(room.board().seconds().size() == 1);
    room.board().start();
    CHECK(room.board().isChoosing());
    CHECK(room.board().stepProblem().contains(QLatin1String("two people")));
    room.board().start(QString(), 0);
    CHECK(room.board().isCodeShown());

    room.program->openPairing(key);
    room.board().endPhone(QStringLiteral("another sea altogether"));
    CHECK(room.program->workplace().desk().endedDevices().empty());
    CHECK_FALSE(room.board().stepProblem().isEmpty());
    CHECK(room.board().phoneEnded().isEmpty());
    room.board().endPhone(QString::fromLatin1(screens::DemoClinic::passphrase));
    CHECK(room.board().stepProblem().isEmpty());
    CHECK(room.board().phoneEnded().contains(QLatin1String("next sync")));
    CHECK(room.program->workplace().desk().endedDevices().size() == 1);
    CHECK(room.board().former().contains(QLatin1String("has not said")));
}

TEST_CASE("without a time the phone gets the day alone, and with one that time", "[desk][pairing][follow-up]")
{
    for (const bool timed : {false, true}) {
        Room room;
        CHECK(room.board().followUp() == QLatin1String("2027-04-12"));
        CHECK(room.board().followUpTime().isEmpty());
        CHECK(room.board().followUpText().contains(QLatin1String("without a time")));
        room.board().setFollowUp(QStringLiteral("2027-04-15"));
        if (timed) {
            room.board().setFollowUpTime(QStringLiteral("10:30"));
            CHECK(room.board().followUpText().contains(QLatin1String("15 April 2027")));
            CHECK(room.board().followUpText().contains(QLatin1String("10:30")));
        }
        room.meet();
        room.board().confirm();
        REQUIRE(room.board().isLinked());

        const auto& opened = room.program->workplace().state().courses.at(room.clinic.course("Petra Halden")).opened;
        REQUIRE(opened);
        const auto visit = aftercare::visitOf(opened->followUp);
        CHECK(deskapp::dayField(visit.day) == QLatin1String("2027-04-15"));
        CHECK(visit.minute == (timed ? std::optional(10 * 60 + 30) : std::nullopt));
    }
}

TEST_CASE("a follow-up before the treatment, or long after it, is refused with the days that can be chosen", "[desk][pairing][follow-up]")
{
    Room room;
    for (const auto* day : {"2027-03-20", "2027-03-22", "2027-05-22"}) {
        room.board().setFollowUp(QString::fromLatin1(day));
        CHECK(room.board().blocked().contains(QLatin1String("1 to 60 days after the treatment")));
        CHECK(room.board().blocked().contains(QLatin1String("23 March 2027")));
        CHECK(room.board().blocked().contains(QLatin1String("21 May 2027")));
        room.board().start();
        CHECK(room.board().isChoosing());
    }
    room.board().setFollowUp(QStringLiteral("2027-05-21"));
    CHECK(room.board().blocked().isEmpty());
    room.board().setFollowUp(QStringLiteral("May"));
    CHECK(room.board().blocked().contains(QLatin1String("year-month-day")));
    room.board().setFollowUp(QStringLiteral("2027-04-12"));
    room.board().setFollowUpTime(QStringLiteral("morning"));
    CHECK(room.board().blocked().contains(QLatin1String("hours and minutes")));
    room.board().start();
    CHECK(room.board().isChoosing());
}

TEST_CASE("another protocol proposes its own follow-up, unless one was typed", "[desk][pairing][follow-up]")
{
    Room room;
    auto& desk = room.program->workplace().desk();
    auto longer = triggers::defaultProtocol();
    longer.name = "Neck alone";
    longer.carePlan.followUpDay = 28;
    for (auto& instruction : longer.carePlan.instructions)
        if (instruction.kind == aftercare::InstructionKind::followUp)
            instruction.firstDay = instruction.lastDay = 28;
    REQUIRE(desk.signProtocol(triggers::defaultProtocol()));
    REQUIRE(desk.signProtocol(longer));
    room.program->openPairing(deskapp::keyOf(room.clinic.course("Petra Halden")));
    const int other = room.board().protocols()[0].contains(QLatin1String("Neck alone")) ? 0 : 1;
    room.board().setProtocol(1 - other);
    REQUIRE(room.board().followUp() == QLatin1String("2027-04-12"));

    room.board().setProtocol(other);
    CHECK(room.board().followUp() == QLatin1String("2027-04-19"));
    room.board().setFollowUp(QStringLiteral("2027-04-14"));
    room.board().setProtocol(1 - other);
    CHECK(room.board().followUp() == QLatin1String("2027-04-14"));
}

TEST_CASE("another phone for a course keeps the follow-up that was agreed", "[desk][pairing][follow-up]")
{
    Room room;
    room.board().setFollowUp(QStringLiteral("2027-04-15"));
    room.board().setFollowUpTime(QStringLiteral("16:00"));
    room.meet();
    room.board().confirm();
    REQUIRE(room.board().isLinked());

    room.program->openPairing(deskapp::keyOf(room.clinic.course("Petra Halden")));

    CHECK(room.board().followUp() == QLatin1String("2027-04-15"));
    CHECK(room.board().followUpTime() == QLatin1String("16:00"));
}

TEST_CASE("a hub that does not know the clinic is told apart, with what its keeper must do", "[desk][pairing][hub]")
{
    screens::DemoClinic clinic;
    auto store = std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "another-hub"));
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    test::LoopbackCourier courier{service, clinic.clock()};
    auto program = clinic.program(QStringLiteral("en"), [&](const desk::Desk::Hub&) { return std::make_unique<Way>(courier); });
    program->openPairing(deskapp::keyOf(clinic.course("Petra Halden")));
    auto& board = *program->pairing();

    board.start();

    CHECK(board.isEnded());
    CHECK(board.text().contains(QLatin1String("does not know this clinic")));
    CHECK(board.text().contains(QLatin1String("ebbline-hub add-clinic")));
    CHECK(board.text().contains(QLatin1String("Clinic page")));

    REQUIRE(store->addClinic(program->workplace().desk().vault().clinicRoot().publicKey(), "Quay"));
    board.again();
    board.start();
    CHECK(board.isCodeShown());
}

TEST_CASE("the time that a code has left is written in the digits of the language alone", "[desk][pairing]")
{
    Room room;
    room.board().start();
    room.clinic.clock().advance(std::chrono::seconds(55));
    const QLocale before;
    QLocale::setDefault(QLocale(QStringLiteral("ar_EG")));
    const auto left = room.board().timeLeft();
    QLocale::setDefault(before);
    CHECK(left.contains(QStringLiteral("٩:٠٥")));
    CHECK_FALSE(std::any_of(left.begin(), left.end(), [](QChar letter) { return letter >= u'0' && letter <= u'9'; }));
}
