#include "platform/courier/network_watch.h"

#include <QNetworkInformation>

namespace ebbline::courier {

NetworkWatch::NetworkWatch(QObject* parent) : QObject(parent)
{
    m_told = QNetworkInformation::loadBackendByFeatures(QNetworkInformation::Feature::Reachability);
    if (!m_told)
        return;
    connect(QNetworkInformation::instance(), &QNetworkInformation::reachabilityChanged, this,
            [this](QNetworkInformation::Reachability now) {
                if (now != QNetworkInformation::Reachability::Disconnected && now != QNetworkInformation::Reachability::Unknown)
                    Q_EMIT back();
            });
}

}  // namespace ebbline::courier
