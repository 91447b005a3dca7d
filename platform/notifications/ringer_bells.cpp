#include "platform/notifications/ringer_bells.h"

namespace ebbline::notifications {

RingerBells::RingerBells(std::unique_ptr<Ringer> ringer, QObject* parent) : Bells(parent), m_ringer(std::move(ringer))
{
    m_ringer->listen([this](RingerEvent event) { hear(event); });
}

void RingerBells::allow(bool ring)
{
    const bool again = ring && m_allowed == true;
    m_allowed = ring;
    if (ring && m_ringer->leave() == SystemLeave::notAsked)
        m_ringer->ask();
    else if (again && m_ringer->leave() == SystemLeave::denied)
        m_ringer->openSettings();
    Q_EMIT leaveChanged();
}

aftercare::Leave RingerBells::leave() const
{
    if (!m_allowed)
        return aftercare::Leave::notAsked;
    return *m_allowed && m_ringer->leave() == SystemLeave::granted ? aftercare::Leave::granted : aftercare::Leave::denied;
}

void RingerBells::ringNow()
{
    if (m_ringer->ringNow())
        Q_EMIT rang();
    else
        Q_EMIT failed();
}

void RingerBells::hear(RingerEvent event)
{
    switch (event) {
    case RingerEvent::openTouched: return Q_EMIT openAsked();
    case RingerEvent::laterTouched: return Q_EMIT laterAsked();
    case RingerEvent::leaveChanged: return Q_EMIT leaveChanged();
    case RingerEvent::rang: return Q_EMIT rang();
    case RingerEvent::zoneChanged: return Q_EMIT zoneChanged();
    }
}

}  // namespace ebbline::notifications
