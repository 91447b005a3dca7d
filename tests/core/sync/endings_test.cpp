// Lost desks and phones: the clinic's word reaches its hub, and a hub that forgot hears it again.

#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using desk::Inviting;
using patient::EntryState;

namespace {

struct Lost {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    int told = 0;  ///< how often the hub was told anything

    Lost()
    {
        world.courier.tamper = [this](const mailbox::Request& request, mailbox::Response&) { told += request.path == "/v1/ended" ? 1 : 0; };
    }
    patient::Diary& replace(Inviting::OldPhone old)
    {
        patient::Diary& fresh = world.newPhone();
        Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21), old);
        inviting.start(world.courier, [] {});
        patient::Joining joining(fresh, world.clock);
        REQUIRE(joining.start(inviting.qrText()));
        for (int i = 0; i < 4; ++i) {
            joining.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        inviting.confirm(world.courier, [] {});
        joining.poll(world.courier, [] {});
        REQUIRE(joining.step() == patient::Joining::Step::linked);
        world.syncDesk();
        world.syncPhone(fresh);
        return fresh;
    }
    Reason refusal(patient::Diary& diary)
    {
        const auto report = world.syncPhone(diary);
        REQUIRE(report.problem);
        return report.problem->reason;
    }
};

}  // namespace

TEST_CASE("a lost phone is refused by the hub from the next sync of the desk on, and what it holds stays on it", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.endPhone(clinic.course));
    REQUIRE(clinic.world.desk.endedDevices().size() == 1);
    CHECK(clinic.world.desk.endedDevices().front().phone);
    CHECK_FALSE(clinic.world.desk.endedDevices().front().toldAt);
    CHECK(clinic.world.desk.endPhone(clinic.course).error().reason == Reason::notFound);
    CHECK(clinic.world.syncDesk().problem == std::nullopt);
    CHECK(clinic.world.desk.endedDevices().front().toldAt == clinic.world.clock.now());

    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 5, 5)));
    CHECK(clinic.refusal(clinic.phone) == Reason::refused);
    CHECK(clinic.phone.history().front().state.place == EntryState::Place::savedHere);
    CHECK(clinic.world.syncDesk().operationsReceived == 0);
    CHECK(clinic.world.desk.course(clinic.course)->state->entries.empty());

    // Found again, it is set up anew: its old keys are over.
    Inviting inviting(clinic.world.desk, clinic.world.clock, clinic.course, triggers::defaultProtocol(), clinic.world.inDays(21));
    inviting.start(clinic.world.courier, [] {});
    patient::Joining joining(clinic.phone, clinic.world.clock);
    REQUIRE(joining.start(inviting.qrText()));
    for (int i = 0; i < 3; ++i) {
        joining.poll(clinic.world.courier, [] {});
        inviting.poll(clinic.world.courier, [] {});
    }
    CHECK(inviting.step() == Inviting::Step::failed);
    CHECK(inviting.problem()->reason == Reason::refused);
    patient::Diary& fresh = clinic.world.join(clinic.course);
    REQUIRE(fresh.record(clinic.world.entryOf(fresh, 1, 1)));
    clinic.world.syncPhone(fresh);
    CHECK(clinic.world.syncDesk().operationsReceived == 1);
}

TEST_CASE("without a network the hub is told later, and a hub that knows no such request is asked on", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.endPhone(clinic.course));
    clinic.world.courier.offline = true;
    CHECK(clinic.world.syncDesk().problem->reason == Reason::unreachable);
    CHECK_FALSE(clinic.world.desk.endedDevices().front().toldAt);
    clinic.world.courier.offline = false;
    const auto count = clinic.world.courier.tamper;
    clinic.world.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.path == "/v1/ended")
            response = {404, {}, 0, response.hubTime};
    };
    CHECK(clinic.world.syncDesk().problem == std::nullopt);  // the rest goes on
    CHECK_FALSE(clinic.world.desk.endedDevices().front().toldAt);
    clinic.world.courier.tamper = count;
    clinic.world.syncDesk();
    CHECK(clinic.world.desk.endedDevices().front().toldAt);
}

TEST_CASE("a hub is told once, and every day anew in case it forgot", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.endPhone(clinic.course));
    for (int i = 0; i < 5; ++i) {
        clinic.world.syncDesk();
        clinic.world.clock.advance(1h);
    }
    CHECK(clinic.told == 1);
    clinic.world.clock.advance(20h);
    clinic.world.syncDesk();
    CHECK(clinic.told == 2);
    // A clock that was far ahead and is set right does not keep it quiet.
    clinic.world.clock.advance(24h * 400);
    clinic.world.syncDesk();
    CHECK(clinic.told == 3);
    clinic.world.clock.advance(-24h * 400);
    clinic.world.syncDesk();
    CHECK(clinic.told == 4);
}

TEST_CASE("a phone that was replaced learns it first, and is refused a week later; one that is lost at once", "[sync][endings]")
{
    Lost clinic;
    clinic.replace(Inviting::OldPhone::atHand);
    clinic.world.syncPhone(clinic.phone);
    CHECK(clinic.phone.replaced());
    CHECK(clinic.told == 0);
    clinic.world.clock.advance(desk::replacedPhoneMayAnswer + 1min);
    clinic.world.syncDesk();
    CHECK(clinic.told == 1);
    CHECK(clinic.refusal(clinic.phone) == Reason::refused);

    Lost other;
    patient::Diary& fresh = other.replace(Inviting::OldPhone::lost);
    CHECK(other.told == 1);
    CHECK(other.refusal(other.phone) == Reason::refused);
    CHECK_FALSE(other.phone.replaced());
    REQUIRE(fresh.record(other.world.entryOf(fresh, 2, 2)));
    CHECK(other.world.syncPhone(fresh).problem == std::nullopt);
    CHECK(other.world.syncDesk().operationsReceived == 1);
}

TEST_CASE("a phone that is taken into use again before its time was up is not refused", "[sync][endings]")
{
    Lost clinic;
    patient::Diary& fresh = clinic.replace(Inviting::OldPhone::atHand);
    // The old one after all.
    Inviting inviting(clinic.world.desk, clinic.world.clock, clinic.course, triggers::defaultProtocol(), clinic.world.inDays(21));
    inviting.start(clinic.world.courier, [] {});
    patient::Joining joining(clinic.phone, clinic.world.clock);
    REQUIRE(joining.start(inviting.qrText()));
    for (int i = 0; i < 4; ++i) {
        joining.poll(clinic.world.courier, [] {});
        inviting.poll(clinic.world.courier, [] {});
    }
    inviting.confirm(clinic.world.courier, [] {});
    joining.poll(clinic.world.courier, [] {});
    REQUIRE(joining.step() == patient::Joining::Step::linked);
    clinic.world.clock.advance(desk::replacedPhoneMayAnswer * 2);
    clinic.world.syncDesk();
    CHECK(clinic.told == 1);
    CHECK(clinic.world.syncPhone(clinic.phone).problem == std::nullopt);
    CHECK(clinic.refusal(fresh) == Reason::refused);
    const auto ended = clinic.world.desk.endedDevices();
    REQUIRE(ended.size() == 1);
    CHECK(ended.front().device == fresh.vault().device());
}

TEST_CASE("the clinic sees what a replaced phone held that never arrived, once the phone has said so, and not before", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 1, 1)));
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    clinic.world.syncPhone(clinic.phone);
    clinic.world.clock.advance(1h);
    const auto first = clinic.world.clock.now();
    for (int i = 0; i < 3; ++i)
        REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, i, i)));
    clinic.world.clock.advance(2h);
    REQUIRE(clinic.phone.writeMessage("Is that normal?"));
    const auto last = clinic.world.clock.now();
    clinic.replace(Inviting::OldPhone::atHand);

    // Nobody knows yet.
    REQUIRE(clinic.world.desk.formerPhones(clinic.course).size() == 1);
    CHECK_FALSE(clinic.world.desk.formerPhones(clinic.course).front().left);
    CHECK_FALSE(clinic.phone.leftBehind());

    clinic.world.syncPhone(clinic.phone);
    REQUIRE(clinic.phone.leftBehind());
    clinic.world.syncDesk();
    const auto left = clinic.world.desk.formerPhones(clinic.course).front().left;
    REQUIRE(left);
    CHECK(left->entries == 3);
    CHECK(left->messages == 1);
    CHECK(left->photos == 0);
    CHECK(left->first == first);
    CHECK(left->last == last);
    CHECK(left == clinic.phone.leftBehind());
    // They are counted and not taken: whoever holds that phone may not be the patient.
    CHECK(clinic.world.desk.course(clinic.course)->state->entries.size() == 1);
    for (std::size_t i = 0; i < 3; ++i)
        CHECK(clinic.phone.history()[i].state.place == EntryState::Place::savedHere);
    // It has said all that it had to say: the hub is told to refuse it, and need not wait a week.
    CHECK(clinic.told == 0);
    clinic.world.syncDesk();
    CHECK(clinic.told == 1);
    CHECK(clinic.refusal(clinic.phone) == Reason::refused);
    CHECK(clinic.phone.vault().verify());
    CHECK(clinic.world.desk.vault().verify());
}

TEST_CASE("a replaced phone that had sent everything says that nothing is left on it", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 1, 1)));
    for (int i = 0; i < 2; ++i) {
        clinic.world.syncPhone(clinic.phone);
        clinic.world.syncDesk();
    }
    clinic.replace(Inviting::OldPhone::atHand);
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    const auto former = clinic.world.desk.formerPhones(clinic.course);
    REQUIRE(former.size() == 1);
    REQUIRE(former.front().left);
    CHECK(former.front().left->isNothing());
}

TEST_CASE("what a phone was still sending when it was replaced is kept aside, and counted as not arrived", "[sync][endings]")
{
    Lost clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 1, 1)));
    clinic.replace(Inviting::OldPhone::atHand);
    const auto mailbox = clinic.phone.link()->mailbox;
    // Sealed and put before the phone hears of it.
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    CHECK(clinic.world.desk.vault().quarantined(mailbox) == 1);
    REQUIRE(clinic.world.desk.formerPhones(clinic.course).front().left);
    CHECK(clinic.world.desk.formerPhones(clinic.course).front().left->entries == 1);
    CHECK_FALSE(clinic.world.desk.vault().standing(mailbox)->fork);
    // Written after that, it stays on the phone and is on no way to anybody.
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 2, 2)));
    CHECK(clinic.world.syncPhone(clinic.phone).envelopesSent == 0);
}
