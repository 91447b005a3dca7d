// What goes along with a request: nothing of the computer, whoever answers and whatever is asked for.
#include "platform/courier/qt_courier.h"

#include <catch2/catch_test_macros.hpp>

#include <QEventLoop>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

using namespace ebbline;

namespace {

/// Gives each request the same answer, and keeps what came.
struct Somebody {
    QTcpServer server;
    QList<QByteArray> requests;
    courier::QtCourier courier;

    explicit Somebody(const QByteArray& answer) : courier(listening())
    {
        QObject::connect(&server, &QTcpServer::newConnection, [this, answer] {
            QTcpSocket* socket = server.nextPendingConnection();
            QObject::connect(socket, &QTcpSocket::readyRead, [this, socket, answer] {
                requests << socket->readAll();
                socket->write(answer);
                socket->disconnectFromHost();
            });
        });
    }
    QString listening()
    {
        REQUIRE((server.isListening() || server.listen(QHostAddress::LocalHost)));
        return QStringLiteral("http://127.0.0.1:%1").arg(server.serverPort());
    }
    Result<mailbox::Response> fetched()
    {
        std::optional<Result<mailbox::Response>> given;
        QEventLoop loop;
        courier.fetchUnvouched("/v1/bundles/00000000", [&](Result<mailbox::Response> response, const bytes::Array<32>&) {
            given = std::move(response);
            loop.quit();
        });
        QTimer::singleShot(15'000, &loop, &QEventLoop::quit);
        loop.exec();
        REQUIRE(given.has_value());
        return *given;
    }
};

QByteArray answerOf(const QByteArray& status, const QByteArray& headers, const QByteArray& body)
{
    return "HTTP/1.1 " + status + "\r\n" + headers + "Content-Length: " + QByteArray::number(body.size()) + "\r\n\r\n" + body;
}

}  // namespace

TEST_CASE("who asks for a login gets none, and no second request", "[courier][safety]")
{
    for (const char* scheme : {"Basic realm=\"here\"", "Negotiate", "NTLM"}) {
        Somebody somebody(answerOf("401 Unauthorized", QByteArray("WWW-Authenticate: ") + scheme + "\r\nSet-Cookie: who=me\r\n", {}));
        const auto first = somebody.fetched();
        (void)somebody.fetched();
        REQUIRE(first);
        CHECK(first->status == 401);
        CHECK(somebody.requests.size() == 2);
        for (const QByteArray& request : somebody.requests) {
            const QByteArray said = request.toLower();
            CHECK_FALSE(said.contains("authorization"));
            CHECK_FALSE(said.contains("cookie"));
            CHECK(said.contains("accept-language: *"));
        }
    }
}

TEST_CASE("a redirection is followed nowhere", "[courier][safety]")
{
    Somebody elsewhere(answerOf("200 OK", {}, "here"));
    Somebody somebody(answerOf("302 Found", "Location: " + elsewhere.listening().toUtf8() + "/other\r\n", {}));
    const auto response = somebody.fetched();
    REQUIRE(response);
    CHECK(response->status == 302);
    CHECK(elsewhere.requests.isEmpty());
}

TEST_CASE("of a bundle no more is taken than a bundle can be", "[courier][safety]")
{
    Somebody right(answerOf("200 OK", {}, QByteArray(4096, 'x')));
    const auto whole = right.fetched();
    REQUIRE(whole);
    CHECK(whole->body.size() == 4096);
    Somebody more(answerOf("200 OK", {}, QByteArray(100'000, 'x')));
    const auto cut = more.fetched();
    REQUIRE_FALSE(cut);
    CHECK(cut.error().reason == Reason::unreachable);
}

TEST_CASE("an answer that broke off is no answer", "[courier]")
{
    Somebody somebody("HTTP/1.1 200 OK\r\nContent-Length: 1000\r\n\r\nhalf");
    const auto response = somebody.fetched();
    REQUIRE_FALSE(response);
    CHECK(response.error().reason == Reason::unreachable);
}
