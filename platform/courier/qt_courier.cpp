#include "platform/courier/qt_courier.h"

#include "core/mailbox/service.h"

#include <QCryptographicHash>
#include <QNetworkReply>
#include <QSslCertificate>
#include <QSslConfiguration>
#include <QSslKey>
#include <QTimer>

#include <algorithm>
#include <memory>

namespace ebbline::courier {

namespace {

constexpr bytes::Array<32> noKey{};

/// SHA-256 of the SPKI that the other side showed; zeros without one.
bytes::Array<32> keyMet(const QNetworkReply& reply)
{
    const QSslCertificate certificate = reply.sslConfiguration().peerCertificate();
    bytes::Array<32> key{};
    if (certificate.isNull())
        return key;
    const QByteArray hash = QCryptographicHash::hash(certificate.publicKey().toDer(), QCryptographicHash::Sha256);
    std::copy_n(hash.cbegin(), std::min<qsizetype>(hash.size(), 32), key.begin());
    return key;
}

}  // namespace

QtCourier::QtCourier(const QString& base, const bytes::Array<32>& pinnedKey, QObject* parent)
    : QObject(parent), m_base(base), m_pinnedKey(pinnedKey)
{
    setQuiet(m_quiet);
    for (QNetworkAccessManager* network : {&m_network, &m_unvouched}) {
        network->setRedirectPolicy(QNetworkRequest::ManualRedirectPolicy);
        network->setAutoDeleteReplies(true);
    }
}

void QtCourier::setQuiet(std::chrono::milliseconds time)
{
    m_quiet = time;
    for (QNetworkAccessManager* network : {&m_network, &m_unvouched})
        network->setTransferTimeout(static_cast<int>(time.count()));
}

bool QtCourier::isPinnedTo(const bytes::Array<32>& key) const
{
    return m_pinnedKey == noKey || crypto::equal(key, m_pinnedKey);
}

void QtCourier::send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer)
{
    carry(m_network, request, Trust::pinOrAuthorities,
          [answer = std::move(answer)](Result<mailbox::Response> response, const bytes::Array<32>&) { answer(std::move(response)); });
}

void QtCourier::fetchUnvouched(const std::string& path, std::function<void(Result<mailbox::Response>, const bytes::Array<32>& met)> answer)
{
    if (m_pinnedKey != noKey)
        return Courier::fetchUnvouched(path, std::move(answer));
    // Each time by a new connection: the key is told only where one begins.
    m_unvouched.clearConnectionCache();
    carry(m_unvouched, {"GET", path, {}, {}, {}}, Trust::anybody, std::move(answer));
}

void QtCourier::carry(QNetworkAccessManager& network, const mailbox::Request& request, Trust trust, Answer answer)
{
    QUrl url(m_base + QString::fromStdString(request.path));
    if (!request.query.empty())
        url.setQuery(QString::fromStdString(request.query));
    QNetworkRequest outgoing(url);
    outgoing.setHeader(QNetworkRequest::ContentTypeHeader, QByteArrayLiteral("application/octet-stream"));
    // Nothing of this computer goes along: no cookie, no login of its system, whatever is asked for, and no language.
    for (const auto attribute : {QNetworkRequest::AuthenticationReuseAttribute, QNetworkRequest::CookieLoadControlAttribute, QNetworkRequest::CookieSaveControlAttribute})
        outgoing.setAttribute(attribute, QNetworkRequest::Manual);
    outgoing.setRawHeader("Accept-Language", "*");
    const qint64 limit = trust == Trust::anybody ? maximumUnvouched : maximumResponse;
    if (trust == Trust::anybody)
        outgoing.setRawHeader("Accept-Encoding", "identity");  // and nothing that unpacks to more than came
    // A hub that was asked to wait says nothing for so long.
    if (const auto wait = mailbox::Service::waitOf(request))
        outgoing.setTransferTimeout(static_cast<int>((m_quiet + wait->time).count()));
    if (!request.authorisation.empty())
        outgoing.setRawHeader("EB-Auth", QByteArray::fromStdString(request.authorisation));
    const QByteArray body(reinterpret_cast<const char*>(request.body.data()), static_cast<qsizetype>(request.body.size()));
    QNetworkReply* reply =
        network.sendCustomRequest(outgoing, QByteArray::fromStdString(request.method),
                                    request.method == "GET" ? QByteArray() : body);
    // The pin replaces the authorities: a clinic's hub may sign its own certificate.
    if (m_pinnedKey != noKey || trust == Trust::anybody)
        connect(reply, &QNetworkReply::sslErrors, reply, [this, reply] {
            if (isPinnedTo(keyMet(*reply)))
                reply->ignoreSslErrors();
        });
    const auto otherKey = std::make_shared<bool>(false);
    const auto met = std::make_shared<bytes::Array<32>>();
    connect(reply, &QNetworkReply::encrypted, reply, [this, reply, otherKey, met] {
        *met = keyMet(*reply);
        if (!isPinnedTo(*met)) {
            *otherKey = true;
            reply->abort();
        }
    });
    // The other limit begins anew with each byte: one an hour would do.
    QTimer::singleShot(m_longest, reply, &QNetworkReply::abort);
    // No more is ever held than is allowed, however fast it comes.
    reply->setReadBufferSize(limit + 1);
    connect(reply, &QNetworkReply::readyRead, reply, [reply, limit] {
        if (reply->bytesAvailable() > limit)
            reply->abort();
    });
    // From the event loop: whoever is answered may end the courier, and abort() still uses the reply.
    auto later = [this, met, answer = std::move(answer)](Result<mailbox::Response> result) {
        QMetaObject::invokeMethod(this, [met, answer, result = std::move(result)] { answer(result, *met); }, Qt::QueuedConnection);
    };
    connect(reply, &QNetworkReply::finished, this, [reply, otherKey, later = std::move(later)] {
        const QVariant status = reply->attribute(QNetworkRequest::HttpStatusCodeAttribute);
        // From 201 on an error is a status of the hub's; below it the connection, and with it the answer, broke off.
        const bool brokeOff = reply->error() != QNetworkReply::NoError && reply->error() < QNetworkReply::ContentAccessDenied;
        if (!status.isValid() || brokeOff) {
            const bool tls = *otherKey || reply->error() == QNetworkReply::SslHandshakeFailedError;
            later(fail(tls ? Reason::forged : Reason::unreachable, reply->errorString().toStdString()));
            return;
        }
        mailbox::Response response;
        response.status = status.toInt();
        const QByteArray contents = reply->readAll();
        response.body.assign(contents.begin(), contents.end());
        response.retryAfterSeconds = reply->rawHeader("Retry-After").toLongLong();
        response.hubTime = reply->rawHeader("EB-Time").toStdString();
        later(std::move(response));
    });
}

}  // namespace ebbline::courier
