#include "core/sync/enrolment_way.h"

namespace ebbline::sync {

Courier* EnrolmentWay::to(const pairing::HubAddress& hub, const bytes::Array<32>& key)
{
    if (!m_courier || hub != m_hub || key != m_key) {
        m_courier.reset();
        m_courier = m_make(hub, key);
        m_hub = hub;
        m_key = key;
    }
    return m_courier.get();
}

}  // namespace ebbline::sync
