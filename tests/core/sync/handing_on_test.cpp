// What one device had told a part of the clinic only, when a phone is replaced or a desk is shut out: it reaches whoever comes
// after, and nothing is sealed for a device that is over.

#include "tests/core/desk/clinic_world.h"

#include "core/bytes/text.h"
#include "core/sync/messages.h"

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;
using desk::Applying;
using desk::Inviting;
using patient::EntryState;

namespace {

struct Clinic {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);
    desk::Desk second = *desk::Desk::create(world.folder.path() / "second", test::passphrase, test::cheap, world.clock, world.zone);

    Clinic()
    {
        second.setPerson("Dr. Jonas Feld");
        REQUIRE(world.desk.allowStep(test::passphrase));
        Inviting inviting(world.desk, world.clock, Inviting::NewDesk::plain);
        inviting.start(world.courier, [] {});
        Applying applying(second, world.clock);
        REQUIRE(applying.start(inviting.qrText()));
        compare(inviting, applying);
        everybody(phone);
    }
    void compare(Inviting& inviting, auto& joining)
    {
        for (int i = 0; i < 4; ++i) {
            joining.poll(world.courier, [] {});
            inviting.poll(world.courier, [] {});
        }
        inviting.confirm(world.courier, [] {});
        joining.poll(world.courier, [] {});
        REQUIRE(joining.step() == sync::Enrolling::Step::linked);
    }
    void pairWith(patient::Diary& diary)
    {
        Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(21));
        inviting.start(world.courier, [] {});
        patient::Joining joining(diary, world.clock);
        REQUIRE(joining.start(inviting.qrText()));
        compare(inviting, joining);
    }
    sync::Report syncSecond()
    {
        sync::Report report;
        second.syncNow(world.courier, [&](const sync::Report& done) { report = done; });
        return report;
    }
    void everybody(patient::Diary& diary)
    {
        for (int i = 0; i < 4; ++i) {
            world.syncPhone(diary);
            world.syncDesk();
            syncSecond();
        }
        world.syncPhone(diary);
    }
};

/// What of a mailbox's waiting envelopes is operations.
std::size_t waitingOperations(vault::Vault& vault, const envelope::MailboxId& mailbox)
{
    const auto waiting = vault.outgoing(mailbox);
    REQUIRE(waiting);
    return static_cast<std::size_t>(std::ranges::count_if(*waiting, [](const vault::Outgoing& each) {
        const auto header = envelope::peek(each.envelope);
        return header && header->kind == envelope::Kind::operations;
    }));
}

}  // namespace

TEST_CASE("nothing is sealed for a phone that is lost, and the one after it gets what was written meanwhile", "[sync][endings]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& lost = world.join(course);
    const auto mailbox = lost.link()->mailbox;
    for (int i = 0; i < 2; ++i) {
        world.syncPhone(lost);
        world.syncDesk();
    }
    REQUIRE(world.desk.allowStep(test::passphrase));
    REQUIRE(world.desk.endPhone(course));
    REQUIRE(world.desk.writeMessage(course, "for the patient alone"));
    // A hub that would give it to whoever holds the lost phone.
    world.courier.refuse = [](const mailbox::Request& request) { return request.method == "PUT" ? 503 : 0; };
    world.syncDesk();
    world.courier.refuse = {};
    CHECK(waitingOperations(world.desk.vault(), mailbox) == 0);
    patient::Diary& fresh = world.join(course);
    REQUIRE(fresh.messages().size() == 1);
    CHECK(fresh.messages().front().text == "for the patient alone");
}

TEST_CASE("what a colleague wrote while a phone was replaced reaches the new phone", "[sync][clinic]")
{
    Clinic clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 3, 2)));
    clinic.everybody(clinic.phone);
    REQUIRE(clinic.second.openEntries(clinic.course));
    REQUIRE(clinic.second.writeMessage(clinic.course, "We have seen it."));
    patient::Diary& fresh = clinic.world.newPhone();
    clinic.pairWith(fresh);
    // The new phone is told before the colleague hears of it.
    clinic.world.syncDesk();
    clinic.world.syncPhone(fresh);
    CHECK(fresh.messages().empty());
    clinic.everybody(fresh);
    REQUIRE(fresh.messages().size() == 1);
    REQUIRE(fresh.history().size() == 1);
    CHECK(fresh.history().front().state.place == EntryState::Place::opened);
    CHECK(fresh.history().front().state.openedBy == "Dr. Jonas Feld");
}

TEST_CASE("what a phone had told a colleague alone reaches the phone after it", "[sync][clinic]")
{
    Clinic clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 3, 2)));
    clinic.world.syncPhone(clinic.phone);
    // Only the colleague comes for it before the phone is replaced, and cannot tell anybody yet.
    clinic.world.courier.refuse = [](const mailbox::Request& request) { return request.method == "PUT" ? 503 : 0; };
    CHECK(clinic.syncSecond().operationsReceived == 1);
    clinic.world.courier.refuse = {};
    patient::Diary& fresh = clinic.world.newPhone();
    clinic.pairWith(fresh);
    clinic.world.syncDesk();
    clinic.world.syncPhone(fresh);
    CHECK(fresh.history().empty());
    clinic.everybody(fresh);
    CHECK(clinic.world.desk.course(clinic.course)->state->entries.size() == 1);
    CHECK(fresh.history().size() == 1);
    CHECK(fresh.vault().verify());
}

TEST_CASE("what the clinic holds of a desk that is shut out reaches the phone all the same", "[sync][clinic]")
{
    Clinic clinic;
    REQUIRE(clinic.phone.record(clinic.world.entryOf(clinic.phone, 3, 2)));
    clinic.everybody(clinic.phone);
    REQUIRE(clinic.second.openEntries(clinic.course));
    REQUIRE(clinic.second.writeMessage(clinic.course, "We have seen it."));
    // Its colleague hears of it; the patient's mailbox takes nothing.
    const std::string mailbox = "/v1/m/" + bytes::toHex(clinic.phone.link()->mailbox.view());
    clinic.world.courier.refuse = [&](const mailbox::Request& request) {
        return request.method == "PUT" && request.path.starts_with(mailbox) ? 507 : 0;
    };
    clinic.syncSecond();
    clinic.world.courier.refuse = {};
    clinic.world.syncDesk();
    REQUIRE(clinic.world.desk.course(clinic.course)->state->messages.size() == 1);
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.revokeDesk(clinic.second.vault().device()));
    for (int i = 0; i < 3; ++i) {
        clinic.world.syncDesk();
        clinic.world.syncPhone(clinic.phone);
    }
    CHECK(clinic.phone.messages().size() == 1);
    CHECK(clinic.phone.history().front().state.openedBy == "Dr. Jonas Feld");
    CHECK(clinic.phone.vault().verify());
}

TEST_CASE("a desk that is shut out while a sync is under way gets nothing of the fresh epoch", "[sync][clinic]")
{
    Clinic clinic;
    vault::Vault& vault = clinic.world.desk.vault();
    const auto channels = vault.channels();
    REQUIRE(channels);
    REQUIRE(channels->size() == 1);
    const auto before = vault.ownHead(channels->front().mailbox);
    REQUIRE(before);
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    bool shutOut = false;
    clinic.world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) {
        if (request.path == "/v1/news" && !shutOut)
            shutOut = clinic.world.desk.revokeDesk(clinic.second.vault().device()).has_value();
    };
    clinic.world.syncDesk();
    CHECK(shutOut);
    const auto after = vault.ownHead(channels->front().mailbox);
    REQUIRE(after);
    CHECK(after->sequence == before->sequence);
}

TEST_CASE("a desk that is shut out while it is first heard, and cannot be, gets nothing of the fresh epoch either", "[sync][clinic]")
{
    Clinic clinic;
    vault::Vault& vault = clinic.world.desk.vault();
    const auto channels = vault.channels();
    REQUIRE(channels);
    REQUIRE(channels->size() == 1);
    // Nobody was heard for so long that the desk listens before it speaks, and something waits to be said.
    clinic.world.clock.advance(24h * 6);
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "Are you well?"));
    const auto before = vault.ownHead(channels->front().mailbox);
    REQUIRE(before);
    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    const std::string channel = "/v1/m/" + bytes::toHex(channels->front().mailbox.view());
    bool shutOut = false;
    clinic.world.courier.refuse = [&](const mailbox::Request& request) {
        if (request.method != "GET" || !request.path.starts_with(channel) || shutOut)
            return 0;
        shutOut = clinic.world.desk.revokeDesk(clinic.second.vault().device()).has_value();
        return 404;
    };
    clinic.world.syncDesk();
    CHECK(shutOut);
    const auto after = vault.ownHead(channels->front().mailbox);
    REQUIRE(after);
    CHECK(after->sequence == before->sequence);
}

TEST_CASE("a desk that tells two stories does not keep a phone from what the honest one says", "[sync][clinic]")
{
    Clinic clinic;
    const auto pathOf = [](const envelope::MailboxId& mailbox) { return "/v1/m/" + bytes::toHex(mailbox.view()); };
    const auto channels = clinic.world.desk.vault().channels();
    REQUIRE(channels);
    REQUIRE(channels->size() == 1);
    const std::string phones = pathOf(clinic.phone.link()->mailbox), channel = pathOf(channels->front().mailbox);
    const auto refusing = [&](const std::string& path) {
        clinic.world.courier.refuse = [path](const mailbox::Request& request) {
            return request.method == "PUT" && request.path.starts_with(path) ? 507 : 0;
        };
    };
    const auto home = clinic.world.folder.path() / "second", copy = clinic.world.folder.path() / "thief";
    const auto open = [&](const std::filesystem::path& folder) {
        auto desk = desk::Desk::unlock(folder, test::passphrase, clinic.world.clock, clinic.world.zone);
        REQUIRE(desk);
        desk->setPerson("Dr. Jonas Feld");
        return std::move(*desk);
    };
    {
        const desk::Desk closing = std::move(clinic.second);
    }
    std::filesystem::copy(home, copy, std::filesystem::copy_options::recursive);
    clinic.second = open(home);
    desk::Desk thief = open(copy);
    const auto newest = [](vault::Vault& vault, const envelope::DeviceId& author) {
        std::optional<journal::Operation> found;
        for (const journal::Operation& operation : vault.operations())
            if (operation.id.device == author && (!found || operation.id.number > found->id.number))
                found = operation;
        REQUIRE(found);
        return *found;
    };
    // One story for the colleague, another one for the patient.
    REQUIRE(clinic.second.writeMessage(clinic.course, "You may walk."));
    refusing(phones);
    clinic.syncSecond();
    REQUIRE(thief.writeMessage(clinic.course, "You may run."));
    refusing(channel);
    thief.syncNow(clinic.world.courier, [](const sync::Report&) {});
    clinic.world.courier.refuse = {};
    clinic.world.syncPhone(clinic.phone);
    clinic.world.syncDesk();
    const auto author = clinic.second.vault().device();
    const auto atDesk = newest(clinic.world.desk.vault(), author), onPhone = newest(clinic.phone.vault(), author);
    REQUIRE(atDesk.id == onPhone.id);
    REQUIRE(journal::encode(atDesk) != journal::encode(onPhone));

    REQUIRE(clinic.world.desk.allowStep(test::passphrase));
    REQUIRE(clinic.world.desk.revokeDesk(author));
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "Please call us."));
    const auto round = [&] {
        clinic.world.syncDesk();
        clinic.world.syncPhone(clinic.phone);
    };
    round();
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "Today, please."));
    round();
    std::vector<std::string> texts;
    for (const auto& message : clinic.phone.messages())
        texts.push_back(message.text);
    std::ranges::sort(texts);
    CHECK(texts == std::vector<std::string>{"Please call us.", "Today, please.", "You may run."});
    // The other story is beside it, and the phone says that there are two.
    const auto mailbox = clinic.phone.link()->mailbox;
    CHECK(clinic.phone.vault().quarantined(mailbox) == 1);
    CHECK(clinic.phone.vault().standing(mailbox)->fork);
    CHECK_FALSE(clinic.phone.vault().standing(mailbox)->gap);
    CHECK(clinic.phone.vault().verify());
    // What an author itself says twice is still refused as a whole: tests/core/sync/numbers_test.cpp.
}

TEST_CASE("what a colleague's newer program wrote is handed on to a phone, and nothing stops behind it", "[sync][clinic]")
{
    Clinic clinic;
    vault::Vault& desk = clinic.world.desk.vault();
    const vault::Vault& phone = clinic.phone.vault();
    const auto mailbox = clinic.phone.link()->mailbox;
    const auto handOn = [&](const envelope::DeviceId& author) {
        journal::Operation newer;
        newer.id = {author, 900};
        newer.stamp = clock::HybridTime::of(clinic.world.clock.now(), 0);
        newer.entered = clinic.world.now();
        newer.kind = static_cast<std::uint16_t>(records::newestKind) + 1;
        newer.audience = journal::Audience::patientAndClinic;
        newer.course = clinic.course;
        newer.body = {1, 2, 3};
        const auto head = desk.ownHead(mailbox);
        REQUIRE(head);
        const auto sealed = envelope::seal({envelope::Kind::operations, mailbox, desk.device(), head->sequence + 1, head->hash,
                                            clinic.phone.link()->epoch},
                                           desk.signingKey(), {phone.boxKey().publicKey()}, sync::packOperations({newer}));
        REQUIRE(sealed);
        REQUIRE(desk.storeSealed(mailbox, head->sequence + 1, *sealed, {}));
    };
    handOn(clinic.second.vault().device());
    REQUIRE(clinic.world.desk.writeMessage(clinic.course, "Please call us."));
    clinic.world.syncDesk();
    CHECK(clinic.world.syncPhone(clinic.phone).quarantined == 0);
    CHECK(phone.state().unknown == 1);
    CHECK(clinic.phone.messages().size() == 1);

    // Nobody writes in this phone's own name, in whatever program.
    handOn(phone.device());
    clinic.world.syncDesk();
    CHECK(clinic.world.syncPhone(clinic.phone).quarantined == 1);
    CHECK(phone.state().unknown == 1);
}
