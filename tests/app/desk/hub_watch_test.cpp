// An open desk waits at its hub: what a phone sends is there at once, and a locked desk asks for nothing.
#include "core/patient/diary.h"
#include "core/patient/joining.h"
#include "core/sync/messages.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QTest>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

/// A hub that keeps who waits until it has something to say.
struct Hub {
    explicit Hub(screens::DemoClinic& clinic)
        : store(std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "waiting-hub"))), courier(service, clinic.clock())
    {
    }

    void look()
    {
        if (!held)
            return;
        auto [request, answer] = *std::exchange(held, {});
        answer(service.handle(request, "127.0.0.1", clock::SystemClock().now(), true));
    }

    std::unique_ptr<mailbox::MailStore> store;
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    test::LoopbackCourier courier;
    std::optional<std::pair<mailbox::Request, std::function<void(Result<mailbox::Response>)>>> held;
    int gone = 0;  ///< couriers that were let go
};

class Way final : public sync::Courier {
public:
    explicit Way(Hub& hub) : m_hub(hub) {}
    ~Way() override
    {
        ++m_hub.gone;
        m_hub.held.reset();
    }
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        if (!mailbox::Service::waitOf(request))
            return m_hub.courier.send(request, std::move(answer));
        ++m_hub.courier.requests;
        m_hub.held = {request, std::move(answer)};
    }

private:
    Hub& m_hub;
};

/// Passes requests on to a courier that lives longer.
class Passing final : public sync::Courier {
public:
    explicit Passing(sync::Courier& courier) : m_courier(courier) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        m_courier.send(request, std::move(answer));
    }

private:
    sync::Courier& m_courier;
};

struct OpenDesk {
    screens::DemoClinic clinic;
    Hub hub{clinic};
    std::unique_ptr<app::DeskProgram> program =
        clinic.program(QStringLiteral("en"), [this](const desk::Desk::Hub&) { return std::make_unique<Way>(hub); });
    recovery::CourseId course = clinic.course("Petra Halden");
    patient::Diary phone = *patient::Diary::create(clinic.folder().parent_path() / "phone", test::passphrase, test::cheap, clinic.clock(),
                                                   clinic.zone());

    OpenDesk()
    {
        REQUIRE(hub.store->addClinic(program->workplace().desk().vault().clinicRoot().publicKey(), "Quay"));
        program->openPairing(deskapp::keyOf(course));
        program->pairing()->start();
        patient::Joining joining{phone, clinic.clock()};
        REQUIRE(joining.start(program->pairing()->typedCode().toStdString(), "127.0.0.1:1"));
        for (int i = 0; i < 4; ++i) {
            joining.poll(hub.courier, [] {});
            program->pairing()->poll();
        }
        program->pairing()->confirm();
        joining.poll(hub.courier, [] {});
        for (int i = 0; i < 2; ++i) {
            program->hub()->syncNow();
            phone.syncNow(hub.courier, [](const sync::Report&) {});
        }
        REQUIRE(phone.joined());
        // No timer brings what the wait does not.
        program->hub()->every(1h);
        REQUIRE(waits());
    }
    bool waits()
    {
        return QTest::qWaitFor([this] { return hub.held.has_value(); }, 5000);
    }
    std::size_t entries() { return program->workplace().desk().course(course)->state->entries.size(); }
    /// The hub holds back the first of several envelopes, or does so no more.
    void holdBack(bool first)
    {
        hub.courier.tamper = {};
        if (!first)
            return;
        hub.courier.tamper = [](const mailbox::Request& request, mailbox::Response& response) {
            bytes::Reader reader(response.body);
            const bytes::View one = reader.block(envelope::maximumEnvelope);
            if (request.method == "GET" && request.path.starts_with("/v1/m/") && reader.ok() && !one.empty() && reader.left() > 0)
                response.body.erase(response.body.begin(), response.body.end() - static_cast<std::ptrdiff_t>(reader.left()));
        };
    }
    bool says(const char* words)
    {
        return program->hub()->trouble().contains(QLatin1String(words));
    }
    void tell()
    {
        auto entry = phone.blankEntry();
        entry.scores = {{{recovery::Symptom::pain, recovery::Side::left}, *recovery::Score::of(2)}};
        REQUIRE(phone.record(entry));
        phone.syncNow(hub.courier, [](const sync::Report&) {});
    }
};

}  // namespace

TEST_CASE("an open desk has what a phone sends at once, and waits on", "[desk][hub]")
{
    OpenDesk it;
    CHECK(it.hub.held->first.path == "/v1/news");
    CHECK_FALSE(it.program->hub()->isBusy());
    for (std::size_t sent = 1; sent <= 2; ++sent) {
        it.tell();
        CHECK(it.entries() == sent - 1);
        it.hub.look();
        REQUIRE(QTest::qWaitFor([&] { return it.entries() == sent; }, 5000));
        REQUIRE(it.waits());
    }
}

TEST_CASE("a desk that locks while it waits lets the request go and asks for nothing; opened again it looks", "[desk][hub]")
{
    OpenDesk it;
    const int requests = it.hub.courier.requests, gone = it.hub.gone;
    it.program->lock();
    CHECK(it.hub.gone == gone + 1);
    CHECK_FALSE(it.hub.held);
    QTest::qWait(100);
    CHECK(it.hub.courier.requests == requests);

    it.tell();
    REQUIRE(it.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    REQUIRE(QTest::qWaitFor([&] { return it.entries() == 1; }, 5000));
    CHECK(it.waits());
}

TEST_CASE("a message that was missing is said while it is, and again when another one is", "[desk][hub]")
{
    OpenDesk it;
    for (std::size_t sent = 2; sent <= 4; sent += 2) {
        it.tell();
        it.tell();
        it.holdBack(true);
        it.program->hub()->syncNow();
        CHECK(it.entries() == sent - 2);
        CHECK(it.says("A message from a phone is missing."));
        CHECK(it.says("could not be verified"));

        it.holdBack(false);
        it.program->hub()->syncNow();
        CHECK(it.entries() == sent);
        CHECK_FALSE(it.says("A message from a phone is missing."));
        CHECK_FALSE(it.says("could not be verified"));
    }
}

TEST_CASE("what a newer program on a phone wrote cannot be shown, and the desk says so", "[desk][hub]")
{
    OpenDesk it;
    CHECK_FALSE(it.says("newer program"));
    vault::Vault& vault = it.phone.vault();
    const auto link = *it.phone.link();
    const auto head = vault.ownHead(link.mailbox);
    REQUIRE(head);
    journal::Operation newer;
    newer.id = {vault.device(), 900};
    newer.stamp = clock::HybridTime::of(it.clinic.clock().now(), 0);
    newer.entered = it.clinic.zone().moment(it.clinic.clock().now());
    newer.kind = 900;
    newer.audience = journal::Audience::patientAndClinic;
    newer.course = it.course;
    newer.body = {1, 2, 3};
    const auto sealed = envelope::seal({envelope::Kind::operations, link.mailbox, vault.device(), head->sequence + 1, head->hash, link.epoch},
                                       vault.signingKey(), {link.peerBox}, sync::packOperations({newer}));
    REQUIRE(sealed);
    REQUIRE(vault.storeSealed(link.mailbox, head->sequence + 1, *sealed, {}));
    it.phone.syncNow(it.hub.courier, [](const sync::Report&) {});
    it.program->hub()->syncNow();
    CHECK(it.says("Some of what arrived was written by a newer program and cannot be shown here. Update this desk. "
                  "Until then call patients whose phone was updated. It is of: Petra Halden (1)."));
    it.program->openCourse(deskapp::keyOf(it.course));
    CHECK(it.program->course()->reach().contains(QLatin1String("1 thing in this course was written by a newer program and cannot be shown here.")));
    // It stands for as long as it is so, and not only until the program is opened anew.
    it.program->lock();
    CHECK_FALSE(it.says("newer program"));
    REQUIRE(it.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    CHECK(it.says("newer program"));
}

TEST_CASE("the desk says when it last heard from its hub, and warns when that is long ago", "[desk][hub]")
{
    screens::DemoClinic clinic;
    auto store = std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "another-hub"));
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    test::LoopbackCourier courier{service, clinic.clock()};
    auto program = clinic.freshProgram(QStringLiteral("en"),
                                       [&](const desk::Desk::Hub&) { return std::make_unique<Passing>(courier); });
    REQUIRE(program->workplace().create(bytes::viewOf(screens::DemoClinic::passphrase), test::cheap));
    auto& desk = program->workplace().desk();
    REQUIRE(desk.setHub("127.0.0.1:1", false, {}));
    auto& hub = *program->hub();

    // Nothing to ask for: the run goes well, and nothing was heard.
    hub.syncNow();
    CHECK(courier.requests == 0);
    CHECK(hub.freshness() == QLatin1String("Not heard from the hub yet"));

    REQUIRE(store->addClinic(desk.vault().clinicRoot().publicKey(), "Quay"));
    desk.setPerson("Ilan Osei");
    REQUIRE(desk.describeClinic({{"Quay", "+00 555 0100", "", "112"}, "Europe/Berlin", {"Ilan Osei"}}));
    const auto patient = desk.registerPatient("Lea Fontaine", "", "en");
    REQUIRE(patient);
    auto treatment = desk.blankTreatment(*patient);
    recovery::Placement placement;
    placement.entry = {296, 170};
    placement.end = {252, 262};
    treatment.placements = {placement};
    REQUIRE(desk.recordTreatment(treatment));
    auto phone = *patient::Diary::create(clinic.folder().parent_path() / "phone", test::passphrase, test::cheap,
                                         clinic.clock(), clinic.zone());
    patient::Joining joining{phone, clinic.clock()};
    program->openPairing(deskapp::keyOf(treatment.course));
    program->pairing()->start();
    REQUIRE(joining.start(program->pairing()->typedCode().toStdString(), "127.0.0.1:1"));
    for (int i = 0; i < 4; ++i) {
        joining.poll(courier, [] {});
        program->pairing()->poll();
    }
    program->pairing()->confirm();
    REQUIRE(program->pairing()->isLinked());

    hub.syncNow();
    CHECK(hub.freshness().startsWith(QLatin1String("Last heard from the hub: Today 14:05")));
    CHECK_FALSE(hub.isStale());
    CHECK(hub.trouble().toStdString() == "");

    courier.offline = true;
    clinic.clock().advance(std::chrono::hours(27));
    hub.syncNow();
    CHECK(hub.isStale());
    CHECK(hub.freshness().startsWith(QLatin1String("Last heard from the hub: Yesterday 14:05")));
    CHECK(hub.trouble().contains(QLatin1String("out of date")));
    CHECK(hub.trouble().contains(QLatin1String("kept here and sent later")));
}

TEST_CASE("the way to the hub is made anew when any of what it is made from changes, and only then", "[desk][hub]")
{
    std::vector<desk::Desk::Hub> made;
    screens::DemoClinic clinic;
    auto store = std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "another-hub"));
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    test::LoopbackCourier courier{service, clinic.clock()};
    auto program = clinic.program(QStringLiteral("en"), [&](const desk::Desk::Hub& hub) {
        made.push_back(hub);
        return std::make_unique<Passing>(courier);
    });
    auto& desk = program->workplace().desk();
    auto& hub = *program->hub();
    bytes::Array<32> key{};
    const auto isMadeFor = [&](const std::string& host, bool tls) {
        const auto before = made.size();
        REQUIRE(desk.setHub(host, tls, key));
        REQUIRE(hub.courier() != nullptr);
        REQUIRE(hub.courier() != nullptr);
        return made.size() == before + 1 && made.back() == desk::Desk::Hub{host, tls, key};
    };
    CHECK(isMadeFor("hub.example", true));
    key[0] = 7;  // the hub has another certificate
    CHECK(isMadeFor("hub.example", true));
    key[31] = 1;
    CHECK(isMadeFor("hub.example", true));
    CHECK(isMadeFor("hub.example", false));
    CHECK(isMadeFor("other.example", false));
    CHECK_FALSE(isMadeFor("other.example", false));
}
