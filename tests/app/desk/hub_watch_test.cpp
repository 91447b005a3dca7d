// An open desk waits at its hub: what a phone sends is there at once, and a locked desk asks for nothing.
#include "core/patient/diary.h"
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
                  "Until then call patients whose phone was updated."));
    // It stands for as long as it is so, and not only until the program is opened anew.
    it.program->lock();
    CHECK_FALSE(it.says("newer program"));
    REQUIRE(it.program->workplace().unlock(bytes::viewOf(screens::DemoClinic::passphrase)));
    CHECK(it.says("newer program"));
}
