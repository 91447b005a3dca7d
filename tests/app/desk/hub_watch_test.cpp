// An open desk waits at its hub: what a phone sends is there at once, and a locked desk asks for nothing.
#include "core/patient/diary.h"
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
