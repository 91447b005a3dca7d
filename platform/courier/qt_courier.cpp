#include "platform/courier/qt_courier.h"

#include "core/mailbox/service.h"

#include <QCryptographicHash>
#include <QNetworkReply>
#include <QSslCertificate>
#include <QSslConfiguration>
#include <QSslKey>
#include <QTimer>

#include <memory>

namespace ebbline::courier {

QtCourier::QtCourier(const QString& base, const bytes::Array<32>& pinnedKey, QObject* parent)
    : QObject(parent), m_base(base), m_pinnedKey(pinnedKey)
{
    setQuiet(m_quiet);
    m_network.setRedirectPolicy(QNetworkRequest::ManualRedirectPolicy);
    m_network.setAutoDeleteReplies(true);
}

void QtCourier::setQuiet(std::chrono::milliseconds time)
{
    m_quiet = time;
    m_network.setTransferTimeout(static_cast<int>(time.count()));
}

bool QtCourier::isPinned(const QNetworkReply& reply) const
{
    if (m_pinnedKey == bytes::Array<32>{})
        return true;
    const QSslCertificate certificate = reply.sslConfiguration().peerCertificate();
    const QByteArray hash = QCryptographicHash::hash(certificate.publicKey().toDer(), QCryptographicHash::Sha256);
    return hash.size() == 32
           && crypto::equal(bytes::View(reinterpret_cast<const std::uint8_t*>(hash.constData()), 32), m_pinnedKey);
}

void QtCourier::send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer)
{
    QUrl url(m_base + QString::fromStdString(request.path));
    if (!request.query.empty())
        url.setQuery(QString::fromStdString(request.query));
    QNetworkRequest outgoing(url);
    outgoing.setHeader(QNetworkRequest::ContentTypeHeader, QByteArrayLiteral("application/octet-stream"));
    // A hub that was asked to wait says nothing for so long.
    if (const auto wait = mailbox::Service::waitOf(request))
        outgoing.setTransferTimeout(static_cast<int>((m_quiet + wait->time).count()));
    if (!request.authorisation.empty())
        outgoing.setRawHeader("EB-Auth", QByteArray::fromStdString(request.authorisation));
    const QByteArray body(reinterpret_cast<const char*>(request.body.data()), static_cast<qsizetype>(request.body.size()));
    QNetworkReply* reply =
        m_network.sendCustomRequest(outgoing, QByteArray::fromStdString(request.method),
                                    request.method == "GET" ? QByteArray() : body);
    // The pin replaces the authorities: a clinic's hub may sign its own certificate.
    if (m_pinnedKey != bytes::Array<32>{})
        connect(reply, &QNetworkReply::sslErrors, reply, [this, reply] {
            if (isPinned(*reply))
                reply->ignoreSslErrors();
        });
    const auto otherKey = std::make_shared<bool>(false);
    connect(reply, &QNetworkReply::encrypted, reply, [this, reply, otherKey] {
        if (!isPinned(*reply)) {
            *otherKey = true;
            reply->abort();
        }
    });
    // The other limit begins anew with each byte: one an hour would do.
    QTimer::singleShot(m_longest, reply, &QNetworkReply::abort);
    // No more is ever held than is allowed, however fast it comes.
    reply->setReadBufferSize(maximumResponse + 1);
    connect(reply, &QNetworkReply::readyRead, reply, [reply] {
        if (reply->bytesAvailable() > maximumResponse)
            reply->abort();
    });
    connect(reply, &QNetworkReply::finished, this, [reply, otherKey, answer = std::move(answer)] {
        const QVariant status = reply->attribute(QNetworkRequest::HttpStatusCodeAttribute);
        if (!status.isValid() || reply->error() == QNetworkReply::OperationCanceledError) {
            const bool tls = *otherKey || reply->error() == QNetworkReply::SslHandshakeFailedError;
            answer(fail(tls ? Reason::forged : Reason::unreachable, reply->errorString().toStdString()));
            return;
        }
        mailbox::Response response;
        response.status = status.toInt();
        const QByteArray contents = reply->readAll();
        response.body.assign(contents.begin(), contents.end());
        response.retryAfterSeconds = reply->rawHeader("Retry-After").toLongLong();
        response.hubTime = reply->rawHeader("EB-Time").toStdString();
        answer(std::move(response));
    });
}

}  // namespace ebbline::courier
