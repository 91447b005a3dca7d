#include "app/controls/cost_meter.h"

#include <utility>

namespace ebbline::controls {

CostMeter::CostMeter(std::optional<crypto::StretchCost> known, Measure measure, QObject* parent)
    : QObject(parent), m_known(known), m_measure(std::move(measure))
{
    m_pool.setMaxThreadCount(1);
}

CostMeter::~CostMeter()
{
    m_pool.waitForDone();
}

void CostMeter::ask(Then then)
{
    if (m_busy) {
        return;
    }
    if (m_known) {
        return then(*m_known);
    }
    m_then = std::move(then);
    m_busy = true;
    Q_EMIT changed();
    if (!std::exchange(m_measuring, true)) {
        m_pool.start([this, measure = m_measure] {
            const auto cost = measure();
            QMetaObject::invokeMethod(this, [this, cost] { arrive(cost); }, Qt::QueuedConnection);
        });
    }
}

void CostMeter::arrive(const crypto::StretchCost& cost)
{
    m_measuring = false;
    m_known = cost;
    // Taken out first: what goes on may cancel, and must not be let go while it runs.
    if (const Then then = std::exchange(m_then, {})) {
        then(cost);
    }
    if (std::exchange(m_busy, false)) {
        Q_EMIT changed();
    }
}

void CostMeter::cancel()
{
    m_then = {};
    if (std::exchange(m_busy, false)) {
        Q_EMIT changed();
    }
}

crypto::StretchCost CostMeter::now()
{
    if (!m_known) {
        m_known = m_measure();
    }
    return *m_known;
}

}  // namespace ebbline::controls
