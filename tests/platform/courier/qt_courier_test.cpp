// Requests over a real network: a phone speaks to the hub whose key it was given, and to no other.

#include "platform/courier/qt_courier.h"

#include "core/mailbox/embedded_store.h"
#include "platform/server/certificate.h"
#include "platform/server/http_server.h"
#include "tests/core/vault/folder.h"
#include "tests/platform/courier/self_signed.h"

#include <catch2/catch_test_macros.hpp>

#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QSslCertificate>
#include <QSslConfiguration>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

const mailbox::Request health{"GET", "/v1/health", {}, {}, {}};

struct Hub {
    test::Folder folder;
    clock::SystemClock clock;
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(folder.path() / "store"));
    mailbox::Service service{*store, {}};
    test::SelfSigned identity = test::SelfSigned::in(folder.path());
    std::unique_ptr<server::HttpServer> server;

    explicit Hub(bool tls)
    {
        server::ServerSettings settings;
        if (tls) {
            settings.certificate = identity.certificate;
            settings.key = identity.key;
        }
        server = std::move(server::HttpServer::start(service, clock, settings).value());
    }
    QString base(const char* scheme) const { return QString("%1://127.0.0.1:%2").arg(scheme).arg(server->port()); }
};

Result<mailbox::Response> ask(courier::QtCourier& courier, const mailbox::Request& request)
{
    std::optional<Result<mailbox::Response>> answer;
    int answers = 0;
    QEventLoop loop;
    courier.send(request, [&](Result<mailbox::Response> given) {
        answer = std::move(given);
        ++answers;
        loop.quit();
    });
    QTimer::singleShot(15'000, &loop, &QEventLoop::quit);
    loop.exec();
    REQUIRE(answers == 1);
    return *answer;
}

struct Fetched {
    Result<mailbox::Response> response;
    bytes::Array<32> met{};
};

Fetched fetch(courier::QtCourier& courier, const std::string& path)
{
    std::optional<Fetched> fetched;
    QEventLoop loop;
    courier.fetchUnvouched(path, [&](Result<mailbox::Response> response, const bytes::Array<32>& met) {
        fetched = Fetched{std::move(response), met};
        loop.quit();
    });
    QTimer::singleShot(15'000, &loop, &QEventLoop::quit);
    loop.exec();
    REQUIRE(fetched);
    return std::move(*fetched);
}

/// Takes a certificate as an authority of this process while it lives.
class TrustedAuthority {
public:
    explicit TrustedAuthority(const std::filesystem::path& certificate)
    {
        auto trusting = m_before;
        QFile file(QString::fromStdString(certificate.string()));
        REQUIRE(file.open(QIODevice::ReadOnly));
        trusting.setCaCertificates({QSslCertificate(&file)});
        QSslConfiguration::setDefaultConfiguration(trusting);
    }
    ~TrustedAuthority() { QSslConfiguration::setDefaultConfiguration(m_before); }
    TrustedAuthority(const TrustedAuthority&) = delete;
    TrustedAuthority& operator=(const TrustedAuthority&) = delete;

private:
    QSslConfiguration m_before = QSslConfiguration::defaultConfiguration();
};

bytes::Array<32> otherKey(bytes::Array<32> hash)
{
    hash[0] ^= 1;
    return hash;
}

}  // namespace

TEST_CASE("on one machine plain HTTP carries the answer and the hub's time", "[courier]")
{
    Hub hub(false);
    courier::QtCourier courier(hub.base("http"));

    const auto response = ask(courier, health);

    REQUIRE(response);
    CHECK(response->status == 200);
    CHECK(std::stoll(response->hubTime) > 1'600'000'000);
}

TEST_CASE("a hub with its own certificate is believed if it has the key from the pairing code", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("https"), hub.identity.keyHash);

    const auto response = ask(courier, health);

    REQUIRE(response);
    CHECK(response->status == 200);
    CHECK(hub.server->figures().requests == 1);
}

TEST_CASE("a hub with another key is refused before it learns anything", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("https"), otherKey(hub.identity.keyHash));

    const auto response = ask(courier, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::forged);
    CHECK(hub.server->figures().requests == 0);
}

TEST_CASE("who is told of another key may end the courier at once", "[courier][tls]")
{
    Hub hub(true);
    auto courier = std::make_unique<courier::QtCourier>(hub.base("https"), otherKey(hub.identity.keyHash));
    std::optional<Reason> told;
    QEventLoop loop;
    courier->send(health, [&](const Result<mailbox::Response>& response) {
        told = response ? std::nullopt : std::optional(response.error().reason);
        courier.reset();
        loop.quit();
    });
    QTimer::singleShot(15'000, &loop, &QEventLoop::quit);
    loop.exec();

    CHECK(told == Reason::forged);
    CHECK_FALSE(courier);
}

TEST_CASE("another key is refused even if an authority signed for it", "[courier][tls]")
{
    Hub hub(true);
    const TrustedAuthority authority(hub.identity.certificate);
    courier::QtCourier believing(hub.base("https"));
    REQUIRE(ask(believing, health));  // the authority is in force

    courier::QtCourier pinned(hub.base("https"), otherKey(hub.identity.keyHash));
    const auto response = ask(pinned, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::forged);
    CHECK(hub.server->figures().requests == 1);
}

TEST_CASE("without a key from pairing, a certificate that nobody signed is refused", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("https"));

    const auto response = ask(courier, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::forged);
    CHECK(hub.server->figures().requests == 0);
}

TEST_CASE("what others authenticate is fetched under a certificate that nobody signed, with the key that was met", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("https"));

    for (int i = 0; i < 2; ++i) {
        const Fetched fetched = fetch(courier, "/v1/health");
        REQUIRE(fetched.response);
        CHECK(fetched.response->status == 200);
        CHECK(fetched.met == hub.identity.keyHash);
    }

    // The connection that nobody vouched for serves nothing else.
    const auto response = ask(courier, health);
    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::forged);
    CHECK(hub.server->figures().requests == 2);
}

TEST_CASE("a courier that is pinned fetches nothing from a hub with another key", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("https"), otherKey(hub.identity.keyHash));

    const Fetched fetched = fetch(courier, "/v1/health");

    REQUIRE_FALSE(fetched.response);
    CHECK(fetched.response.error().reason == Reason::forged);
    CHECK(hub.server->figures().requests == 0);
}

TEST_CASE("plain HTTP to a hub that speaks TLS ends in an error, not in a wait", "[courier][tls]")
{
    Hub hub(true);
    courier::QtCourier courier(hub.base("http"));

    const auto response = ask(courier, health);

    CHECK((!response || response->status >= 400));
}

TEST_CASE("a hub that is not there is unreachable", "[courier]")
{
    QTcpServer taken;
    REQUIRE(taken.listen(QHostAddress::LocalHost));
    const auto port = taken.serverPort();
    taken.close();
    courier::QtCourier courier(QString("http://127.0.0.1:%1").arg(port));

    const auto response = ask(courier, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::unreachable);
}

TEST_CASE("a refusal of the hub is an answer, not a failure of the network", "[courier]")
{
    Hub hub(false);
    courier::QtCourier courier(hub.base("http"));

    const auto response = ask(courier, {"GET", "/v1/news", {}, {}, "not an authorisation"});

    REQUIRE(response);
    CHECK(response->status >= 400);
    CHECK(response->status < 500);
}

TEST_CASE("an answer that comes drop by drop is given up, whatever still comes", "[courier]")
{
    QTcpServer slow;
    REQUIRE(slow.listen(QHostAddress::LocalHost));
    QTimer drops;
    QObject::connect(&slow, &QTcpServer::newConnection, [&] {
        QTcpSocket* socket = slow.nextPendingConnection();
        QObject::connect(socket, &QTcpSocket::readyRead, [socket, &drops] {
            socket->readAll();
            socket->write("HTTP/1.1 200 OK\r\nContent-Length: 100000\r\n\r\n");
            QObject::connect(&drops, &QTimer::timeout, socket, [socket] { socket->write("x"); });
            drops.start(20);
        });
    });
    courier::QtCourier courier(QString("http://127.0.0.1:%1").arg(slow.serverPort()));
    courier.setLongest(800ms);
    QElapsedTimer took;
    took.start();

    const auto response = ask(courier, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::unreachable);
    CHECK(took.elapsed() < 8000);
}

TEST_CASE("an answer that never ends is cut off", "[courier]")
{
    QTcpServer flood;
    REQUIRE(flood.listen(QHostAddress::LocalHost));
    qint64 sent = 0;
    QObject::connect(&flood, &QTcpServer::newConnection, [&] {
        QTcpSocket* socket = flood.nextPendingConnection();
        const auto more = [socket, &sent] {
            const QByteArray block(256 * 1024, 'x');
            while (socket->bytesToWrite() < 4 * block.size() && sent < 64 * 1024 * 1024)
                sent += socket->write(block);
        };
        QObject::connect(socket, &QTcpSocket::readyRead, [socket, more] {
            socket->readAll();
            socket->write("HTTP/1.1 200 OK\r\nContent-Length: 1000000000\r\n\r\n");
            more();
        });
        QObject::connect(socket, &QTcpSocket::bytesWritten, more);
    });
    courier::QtCourier courier(QString("http://127.0.0.1:%1").arg(flood.serverPort()));

    const auto response = ask(courier, health);

    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::unreachable);
    CHECK(sent < 64 * 1024 * 1024);
}

TEST_CASE("the fingerprint that a hub prints is the one that a phone checks", "[courier][tls]")
{
    Hub hub(true);
    const auto printed = server::keyHashOf(hub.identity.certificate);
    REQUIRE(printed);
    CHECK(*printed == hub.identity.keyHash);

    courier::QtCourier courier(hub.base("https"), *printed);
    CHECK(ask(courier, health));

    CHECK(server::keyHashOf(hub.identity.key).error().reason == Reason::malformed);
    CHECK(server::keyHashOf(hub.folder.path() / "nothing.pem").error().reason == Reason::notFound);
}

TEST_CASE("a renewed certificate is taken up while the hub runs, and a bad one is not", "[courier][tls]")
{
    Hub hub(true);
    const auto oldKey = hub.identity.keyHash;
    REQUIRE(ask(*std::make_unique<courier::QtCourier>(hub.base("https"), oldKey), health));

    const auto renewed = test::SelfSigned::in(hub.folder.path());  // other key, same file names
    REQUIRE(renewed.keyHash != oldKey);
    CHECK(ask(*std::make_unique<courier::QtCourier>(hub.base("https"), oldKey), health));
    REQUIRE(hub.server->reloadCertificate());
    CHECK(ask(*std::make_unique<courier::QtCourier>(hub.base("https"), renewed.keyHash), health));
    CHECK_FALSE(ask(*std::make_unique<courier::QtCourier>(hub.base("https"), oldKey), health));

    std::filesystem::resize_file(renewed.certificate, 20);
    CHECK(hub.server->reloadCertificate().error().reason == Reason::malformed);
    CHECK(ask(*std::make_unique<courier::QtCourier>(hub.base("https"), renewed.keyHash), health));
}

TEST_CASE("a courier that goes while a request waits at the hub calls nobody any more", "[courier]")
{
    QTcpServer silent;
    REQUIRE(silent.listen(QHostAddress::LocalHost));
    int answers = 0;
    {
        courier::QtCourier courier(QString("http://127.0.0.1:%1").arg(silent.serverPort()));
        courier.send({"GET", "/v1/news", "wait=25", {}, {}}, [&](const Result<mailbox::Response>&) { ++answers; });
        QEventLoop loop;
        QObject::connect(&silent, &QTcpServer::newConnection, &loop, &QEventLoop::quit);
        QTimer::singleShot(5'000, &loop, &QEventLoop::quit);
        loop.exec();
    }
    REQUIRE(silent.hasPendingConnections());
    QTcpSocket* socket = silent.nextPendingConnection();
    QEventLoop loop;
    QObject::connect(socket, &QTcpSocket::disconnected, &loop, &QEventLoop::quit);
    QTimer::singleShot(5'000, &loop, &QEventLoop::quit);
    if (socket->state() == QAbstractSocket::ConnectedState)
        loop.exec();
    CHECK(socket->state() != QAbstractSocket::ConnectedState);
    CHECK(answers == 0);
}

TEST_CASE("a request that asks the hub to wait is given that time on top; one that does not is given up", "[courier]")
{
    QTcpServer slow;
    REQUIRE(slow.listen(QHostAddress::LocalHost));
    // Says nothing for a second and a half, as a hub that waits.
    QObject::connect(&slow, &QTcpServer::newConnection, &slow, [&] {
        QTcpSocket* socket = slow.nextPendingConnection();
        QTimer::singleShot(1'500, socket, [socket] { socket->write("HTTP/1.1 200 OK\r\nContent-Length: 0\r\n\r\n"); });
    });
    courier::QtCourier courier(QString("http://127.0.0.1:%1").arg(slow.serverPort()));
    courier.setQuiet(400ms);
    const auto waited = ask(courier, {"GET", "/v1/news", "wait=20", {}, {}});
    REQUIRE(waited);
    CHECK(waited->status == 200);
    const auto other = ask(courier, health);
    REQUIRE_FALSE(other);
    CHECK(other.error().reason == Reason::unreachable);
}
