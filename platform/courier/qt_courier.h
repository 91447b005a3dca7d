#pragma once
/// \file
/// Carries requests to a hub over Qt Network, without blocking: the answer comes through the event
/// loop. With a pinned key, a certificate whose public key differs is refused even if some
/// authority signed it; without one the authorities decide, but for fetchUnvouched(). Destroying it ends every request without an answer, one that waits at the hub too.

#include "core/sync/courier.h"

#include <QNetworkAccessManager>
#include <QObject>

#include <chrono>

namespace ebbline::courier {

class QtCourier final : public QObject, public sync::Courier {
    Q_OBJECT

public:
    /// `base`: "https://host:port" or, on one machine, "http://host:port". `pinnedKey`: SHA-256 of
    /// the hub's SPKI; zeros: no pin.
    explicit QtCourier(const QString& base, const bytes::Array<32>& pinnedKey = {}, QObject* parent = nullptr);

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override;

    /// Over a connection of its own, which nothing else ever uses.
    void fetchUnvouched(const std::string& path,
                        std::function<void(Result<mailbox::Response>, const bytes::Array<32>& met)> answer) override;

    /// A request is given up after this time without a byte, besides what it asks the hub to wait. \pre time > 0
    void setQuiet(std::chrono::milliseconds time);
    /// A request is given up after this time in all, whatever came of its answer. \pre time > 0
    void setLongest(std::chrono::milliseconds time) { m_longest = time; }

    static constexpr int timeoutMs = 20'000;  ///< without a byte, besides the time that a request asks the hub to wait
    static constexpr std::chrono::milliseconds longest{90'000};  ///< in all: room for the largest answer at 100 kbit/s
    static constexpr qint64 maximumResponse = 4 * 1024 * 1024;
    static constexpr qint64 maximumUnvouched = 4096;  ///< of fetchUnvouched(), for which anybody may answer

private:
    using Answer = std::function<void(Result<mailbox::Response>, const bytes::Array<32>& met)>;
    enum class Trust { pinOrAuthorities, anybody };

    void carry(QNetworkAccessManager& network, const mailbox::Request& request, Trust trust, Answer answer);
    bool isPinnedTo(const bytes::Array<32>& key) const;

    QString m_base;
    bytes::Array<32> m_pinnedKey;
    std::chrono::milliseconds m_quiet{timeoutMs};
    std::chrono::milliseconds m_longest = longest;
    QNetworkAccessManager m_network;
    QNetworkAccessManager m_unvouched;
};

}  // namespace ebbline::courier
