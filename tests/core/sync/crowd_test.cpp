// Many mailboxes, many desks, and a lost one that stands in the way: everybody's turn comes.

#include "tests/core/desk/clinic_world.h"

#include "core/bytes/text.h"

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

sync::Report syncOf(desk::Desk& desk, sync::Courier& courier)
{
    sync::Report report;
    desk.syncNow(courier, [&](const sync::Report& done) { report = done; });
    return report;
}

void enlist(test::ClinicWorld& world, desk::Desk& desk)
{
    REQUIRE(world.desk.allowStep(test::passphrase));
    desk::Inviting inviting(world.desk, world.clock, desk::Inviting::NewDesk::plain);
    inviting.start(world.courier, [] {});
    desk::Applying applying(desk, world.clock);
    REQUIRE(applying.start(inviting.qrText()));
    for (int i = 0; i < 4; ++i) {
        applying.poll(world.courier, [] {});
        inviting.poll(world.courier, [] {});
    }
    inviting.confirm(world.courier, [] {});
    applying.poll(world.courier, [] {});
    REQUIRE(applying.step() == desk::Applying::Step::linked);
}

desk::Desk newDesk(test::ClinicWorld& world, const std::string& name)
{
    auto desk = desk::Desk::create(world.folder.path() / name, test::passphrase, test::cheap, world.clock, world.zone);
    REQUIRE(desk);
    desk->setPerson("Dr. Jonas Feld");
    return std::move(*desk);
}

}  // namespace

TEST_CASE("what one desk writes to many phones costs another desk no questions", "[sync][clinic]")
{
    test::ClinicWorld world;
    std::vector<recovery::CourseId> courses;
    for (int i = 0; i < 6; ++i) {
        courses.push_back(world.treat());
        world.join(courses.back());
    }
    desk::Desk second = newDesk(world, "second");
    enlist(world, second);
    for (int i = 0; i < 3; ++i) {
        world.syncDesk();
        syncOf(second, world.courier);
        for (const auto& phone : world.phones)
            world.syncPhone(*phone);
    }
    for (const recovery::CourseId& course : courses)
        REQUIRE(world.desk.writeMessage(course, "How is it?"));
    world.syncDesk();
    syncOf(second, world.courier);

    world.courier.requests = 0;
    syncOf(second, world.courier);
    CHECK(world.courier.requests == 1);
}

TEST_CASE("a run that the hub's limit ends goes on where it stopped, and the last mailbox gets its turn", "[sync][clinic]")
{
    test::ClinicWorld world;
    for (int i = 0; i < 6; ++i)
        world.join(world.treat());
    world.syncDesk();
    // The first mailboxes take nothing, and so cost questions in each run; the last phone has something to say.
    std::ranges::sort(world.phones, {}, [](const auto& phone) { return phone->link()->mailbox; });
    patient::Diary& last = *world.phones.back();
    REQUIRE(last.record(world.entryOf(last, 3, 2)));
    world.syncPhone(last);
    for (std::size_t i = 0; i + 1 < world.phones.size(); ++i)
        REQUIRE(world.desk.writeMessage(world.phones[i]->course().course, "How is it?"));

    mailbox::Limits limits;
    limits.perDevice = {7, 1.0 / 60};
    mailbox::Service strict(*world.store, limits);
    test::LoopbackCourier courier(strict, world.clock);
    courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
        if (request.method == "PUT" && response.status == 200)
            response = {507, {}, 0, {}};
    };
    CHECK(syncOf(world.desk, courier).problem.has_value());
    CHECK(world.desk.course(last.course().course)->summary.unopened == 0);
    for (int i = 0; i < 2; ++i) {
        world.clock.advance(7min);
        syncOf(world.desk, courier);
    }
    CHECK(world.desk.course(last.course().course)->summary.unopened == 1);
}

TEST_CASE("a lost desk that fills a mailbox does not keep a phone from learning that it was shut out", "[sync][clinic]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    // A hub hands out in the order of devices: the lost one comes first.
    std::optional<desk::Desk> lost;
    for (int i = 0; !lost || world.desk.vault().device() < lost->vault().device(); ++i)
        lost = newDesk(world, "lost" + std::to_string(i));
    enlist(world, *lost);
    for (int i = 0; i < 3; ++i) {
        world.syncDesk();
        syncOf(*lost, world.courier);
        world.syncPhone(phone);
    }
    const auto mailbox = phone.link()->mailbox;
    const std::string path = "/v1/m/" + bytes::toHex(mailbox.view()) + "/" + bytes::toHex(lost->vault().device().view()) + "/";
    for (std::uint64_t sequence = 100; sequence < 104; ++sequence) {
        const auto sealed = envelope::seal({envelope::Kind::operations, mailbox, lost->vault().device(), sequence, {}, 1},
                                           lost->vault().signingKey(), {phone.vault().boxKey().publicKey()}, bytes::Bytes(230'000));
        REQUIRE(sealed);
        mailbox::Request put{"PUT", path + std::to_string(sequence), {}, *sealed, {}};
        mailbox::signRequest(put, lost->vault().signingKey(), world.clock.now());
        REQUIRE(world.service.handle(put, "127.0.0.1", world.clock.now()).status == 200);
    }
    // The hub does not end its credential.
    world.courier.swallow = [](const mailbox::Request& request) { return request.path == "/v1/ended"; };
    REQUIRE(world.desk.allowStep(test::passphrase));
    REQUIRE(world.desk.revokeDesk(lost->vault().device()));
    world.syncDesk();

    world.syncPhone(phone);
    CHECK(phone.link()->epoch == 2);

    // From then on nothing of it is asked for, and it costs no question of its own.
    REQUIRE(world.desk.writeMessage(course, "How is it?"));
    world.syncDesk();
    int questions = 0;
    world.courier.tamper = [&](const mailbox::Request& request, mailbox::Response&) { questions += request.method == "GET" ? 1 : 0; };
    const auto report = world.syncPhone(phone);
    CHECK(questions == 1);
    CHECK(report.quarantined == 0);
    CHECK(phone.messages().size() == 1);
}

TEST_CASE("a new desk learns how far each phone's chain goes, however many there are", "[sync][clinic]")
{
    test::ClinicWorld world;
    constexpr std::size_t many = 2600;
    auto& vault = world.desk.vault();
    std::vector<vault::Vault::Head> heads;
    // Of phones that were replaced: they cost no questions of their own.
    REQUIRE(vault.together([&]() -> Done {
        for (std::size_t i = 0; i < many; ++i) {
            vault::Link link;
            link.mailbox.value = crypto::randomArray<16>();
            link.peerSigning.value = crypto::randomArray<32>();
            link.clinicRoot = vault.clinicRootKey();
            link.ended = true;
            if (const Done put = vault.putLink(link); !put)
                return put;
            heads.push_back({link.mailbox, envelope::deviceIdOf(link.peerSigning), {7, {}}});
        }
        return {};
    }));
    for (const vault::Vault::Head& head : heads)
        REQUIRE(vault.adoptHead(head));
    desk::Desk second = newDesk(world, "second");
    enlist(world, second);
    for (int i = 0; i < 2; ++i) {
        world.syncDesk();
        syncOf(second, world.courier);
    }
    std::size_t known = 0;
    for (const vault::Vault::Head& head : heads)
        known += second.vault().peerHead(head.mailbox, head.device)->sequence == 7 ? 1 : 0;
    CHECK(known == many);
}

TEST_CASE("three phones and two desks that all write end with one queue and one digest, and each phone with its own course", "[sync][clinic]")
{
    test::ClinicWorld world;
    std::vector<recovery::CourseId> courses;
    for (const char* name : {"Ines Varga", "Lea Fontaine", "Noor Castellan"}) {
        courses.push_back(world.treat(name));
        world.join(courses.back());
    }
    desk::Desk second = newDesk(world, "second");
    enlist(world, second);
    const auto everybody = [&] {
        for (int i = 0; i < 3; ++i) {
            for (const auto& phone : world.phones)
                world.syncPhone(*phone);
            world.syncDesk();
            syncOf(second, world.courier);
        }
        for (const auto& phone : world.phones)
            world.syncPhone(*phone);
    };
    everybody();

    // A day later each phone writes, two of them what asks for a call; nobody has a network meanwhile but the hub's own.
    world.clock.advance(30h);
    const std::vector<recovery::Signs> signs{{recovery::Sign::thickFluid}, {recovery::Sign::fastSwelling, recovery::Sign::bleeding}, {}};
    for (std::size_t i = 0; i < courses.size(); ++i) {
        auto entry = world.entryOf(*world.phones[i], 4 + static_cast<int>(i), 2);
        entry.present = signs[i];
        REQUIRE(world.phones[i]->record(entry));
    }
    everybody();
    const auto keysOf = [](const desk::Desk& desk, const recovery::CourseId& course) {
        std::vector<std::string> keys;
        for (const triage::Row& row : desk.queue())
            if (row.course == course)
                for (const triage::Finding& finding : row.findings)
                    keys.push_back(finding.key);
        return keys;
    };
    REQUIRE(keysOf(world.desk, courses[0]) == keysOf(second, courses[0]));
    REQUIRE(keysOf(second, courses[1]).size() == 2);

    // Both desks act before either hears of the other: on one course apart, on one the same, and on one against each other.
    REQUIRE(world.desk.actOn(courses[0], keysOf(world.desk, courses[0]), records::Act::called, {}, "Comes today."));
    REQUIRE(world.desk.act(courses[1], keysOf(world.desk, courses[1]).front(), records::Act::taken));
    REQUIRE(second.act(courses[1], keysOf(second, courses[1]).front(), records::Act::taken));
    REQUIRE(second.act(courses[1], keysOf(second, courses[1]).back(), records::Act::closed, records::Outcome::advised));
    REQUIRE(world.desk.moveVisit(courses[2], world.inDays(9), {}));
    world.clock.advance(2min);
    const auto later = second.moveVisit(courses[2], world.inDays(6), {});
    REQUIRE(later);
    REQUIRE(second.openEntries(courses[2]));
    REQUIRE(world.desk.writeMessage(courses[0], "We expect you at four."));
    REQUIRE(world.phones[1]->writeMessage("It is softer now."));
    everybody();

    const auto summaryOf = [](const desk::Desk& desk) {
        std::string all;
        for (const triage::Row& row : desk.queue()) {
            all += bytes::toHex(row.course.view()) + " " + std::to_string(static_cast<int>(row.urgency)) + " " + row.takenBy.value_or("-") + (row.touched ? " touched" : "");
            for (const triage::Finding& finding : row.findings)
                all += " " + finding.key;
            all += "\n";
        }
        return all;
    };
    CHECK_FALSE(summaryOf(world.desk).empty());
    CHECK(summaryOf(world.desk) == summaryOf(second));
    CHECK(journal::digest(world.desk.vault().state()) == journal::digest(second.vault().state()));
    CHECK(second.course(courses[2])->state->opened->followUp == world.phones[2]->today().followUp);
    CHECK(world.phones[2]->today().followUp.day() == world.inDays(6).day());
    CHECK(world.phones[0]->messages().size() == 1);
    CHECK(world.desk.course(courses[1])->summary.unread == 1);

    // What one desk did the other takes back, and both agree again.
    REQUIRE(world.desk.takeBack(courses[2], *later));
    everybody();
    CHECK(world.phones[2]->today().followUp.day() == world.inDays(9).day());
    CHECK(journal::digest(world.desk.vault().state()) == journal::digest(second.vault().state()));
    for (std::size_t i = 0; i < courses.size(); ++i) {
        CHECK(world.phones[i]->course().course == courses[i]);
        CHECK(world.phones[i]->vault().verify());
    }
    CHECK(world.desk.vault().verify());
    CHECK(second.vault().verify());
}
