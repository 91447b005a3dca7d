// A typed code at a hub whose certificate no authority signed: the diary and a second desk join, and a stranger between them and
// the hub gets nothing.
#include "app/diary/diary_program.h"
#include "core/mailbox/embedded_store.h"
#include "platform/courier/qt_courier.h"
#include "platform/server/http_server.h"
#include "tests/core/desk/clinic_world.h"
#include "tests/platform/courier/self_signed.h"
#include "tests/screens/demo_clinic.h"

#include <catch2/catch_test_macros.hpp>

#include <QCoreApplication>
#include <QElapsedTimer>

using namespace ebbline;
using diaryapp::JoinBoard;

namespace {

/// What a courier to a hub was made with.
struct Made {
    std::string base;
    bytes::Array<32> key{};
    bool operator==(const Made&) const = default;
};

/// A port of the hub with a certificate of its own.
struct Port {
    test::Folder folder;
    test::SelfSigned identity = test::SelfSigned::in(folder.path());
    std::unique_ptr<server::HttpServer> server;

    Port(mailbox::Service& service, const clock::Clock& clock)
    {
        server::ServerSettings settings;
        settings.certificate = identity.certificate;
        settings.key = identity.key;
        server = std::move(server::HttpServer::start(service, clock, settings).value());
    }
    std::string host() const { return "127.0.0.1:" + std::to_string(server->port()); }
    QString typed() const { return QString::fromStdString(host()); }
};

struct Clinic {
    screens::DemoClinic clinic;
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(clinic.folder().parent_path() / "another-hub"));
    mailbox::Service service{*store, test::ClinicWorld::limits()};
    Port hub{service, clinic.clock()};
    std::vector<Made> made;  ///< by those who join
    std::unique_ptr<app::DeskProgram> first = clinic.program(QStringLiteral("en"), [](const desk::Desk::Hub& named) {
        return std::make_unique<courier::QtCourier>(QString::fromStdString(named.address()), named.keyHash);
    });
    std::unique_ptr<app::DeskProgram> second = clinic.freshProgram(QStringLiteral("en"), [this](const desk::Desk::Hub& named) {
        return courierTo(named.address(), named.keyHash);
    });
    app::DiaryProgram diary{{.folder = clinic.folder().parent_path() / "diary",
                             .clock = clinic.clock(),
                             .zone = clinic.zone(),
                             .courier = [this](const std::string& base, const bytes::Array<32>& key) { return courierTo(base, key); },
                             .cost = test::cheap,
                             .language = QStringLiteral("en")}};

    Clinic()
    {
        desk::Desk& desk = first->workplace().desk();
        REQUIRE(store->addClinic(desk.vault().clinicRoot().publicKey(), "Quay"));
        REQUIRE(desk.setHub(hub.host(), true, hub.identity.keyHash));
        REQUIRE(second->workplace().create(bytes::viewOf("another clinic computer"), test::cheap));
        REQUIRE(diary.home().create(test::passphrase));
    }

    std::unique_ptr<sync::Courier> courierTo(const std::string& base, const bytes::Array<32>& key)
    {
        made.push_back({base, key});
        return std::make_unique<courier::QtCourier>(QString::fromStdString(base), key);
    }
    /// First whoever is at the address that was typed, then the clinic's hub and no other.
    std::vector<Made> pinnedAfter(const std::string& typed) const
    {
        return {{"https://" + typed, {}}, {"https://" + hub.host(), hub.identity.keyHash}};
    }

    deskapp::PairingBoard& inviting() { return *first->pairing(); }
    JoinBoard& joining() { return *diary.joining(); }
    deskapp::ApplyBoard& applying() { return *second->applying(); }

    void invitesPhone()
    {
        first->openPairing(deskapp::keyOf(clinic.course("Petra Halden")));
        inviting().start();
        REQUIRE(waits([this] { return inviting().isCodeShown(); }));
    }
    void invitesDesk()
    {
        first->openDeskPairing();
        inviting().start(QString::fromLatin1(screens::DemoClinic::passphrase), 0);
        REQUIRE(waits([this] { return inviting().isCodeShown(); }));
        second->openApply();
    }
    bool waits(const std::function<bool()>& ready)
    {
        QElapsedTimer passed, asked;
        passed.start();
        while (!ready()) {
            if (passed.hasExpired(15'000))
                return false;
            // The hub's clock stands still, so it counts all requests as those of one moment.
            if (!asked.isValid() || asked.hasExpired(200)) {
                asked.start();
                joining().poll();
                applying().poll();
                inviting().poll();
            }
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        }
        return true;
    }
};

}  // namespace

TEST_CASE("a diary joins by a typed code at a hub that signed its own certificate", "[joining][tls]")
{
    Clinic room;
    room.invitesPhone();

    room.joining().useText(room.inviting().typedCode(), room.hub.typed());

    REQUIRE(room.waits([&] { return room.inviting().isComparing() && room.joining().stage() == JoinBoard::Stage::Compare; }));
    CHECK(room.joining().problem().toStdString() == "");
    CHECK(room.made == room.pinnedAfter(room.hub.host()));
}

TEST_CASE("a second desk joins by a typed code at a hub that signed its own certificate", "[joining][tls]")
{
    Clinic room;
    room.invitesDesk();

    room.applying().start(room.inviting().typedCode(), room.hub.typed());

    REQUIRE(room.waits([&] { return room.inviting().isComparing() && room.applying().isComparing(); }));
    CHECK(room.applying().problem().toStdString() == "");
    CHECK(room.made == room.pinnedAfter(room.hub.host()));
    room.inviting().confirm();
    CHECK(room.waits([&] { return room.applying().isJoined(); }));
}

TEST_CASE("who hands a typed code's bundle on under another key is told from the clinic's hub, and learns nothing more", "[joining][tls]")
{
    Clinic room;
    Port between(room.service, room.clinic.clock());
    REQUIRE(between.identity.keyHash != room.hub.identity.keyHash);

    SECTION("by a diary")
    {
        room.invitesPhone();
        room.joining().useText(room.inviting().typedCode(), between.typed());
        REQUIRE(room.waits([&] { return room.joining().stage() == JoinBoard::Stage::Code; }));
        CHECK(room.joining().problem() == QLatin1String("This is not from your clinic. Nothing was joined. Tell your clinic."));
    }
    SECTION("by a desk")
    {
        room.invitesDesk();
        room.applying().start(room.inviting().typedCode(), between.typed());
        REQUIRE(room.waits([&] { return room.applying().isTyping(); }));
        CHECK(room.applying().problem() == QLatin1String("Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic."));
    }

    CHECK(between.server->figures().requests == 1);
    CHECK(room.inviting().isCodeShown());
    CHECK(room.made == std::vector<Made>{{"https://" + between.host(), {}}});
}
