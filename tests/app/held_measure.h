#pragma once
/// \file
/// A measurement of a passphrase's cost that takes until a test lets it end, so that what the program does meanwhile
/// can be looked at.

#include "app/controls/cost_meter.h"

#include <QCoreApplication>
#include <QElapsedTimer>

#include <atomic>
#include <chrono>
#include <semaphore>
#include <thread>

namespace ebbline::tests {

class HeldMeasure {
public:
    static constexpr crypto::StretchCost cost{1, 8 * 1024};
    static constexpr std::chrono::seconds patience{20};  ///< for the program that waits in vain; then it goes on

    controls::CostMeter::Measure measure()
    {
        return [this] {
            ++m_begun;
            m_aside = std::this_thread::get_id() != m_interface;
            (void)m_gate.try_acquire_for(patience);
            return cost;
        };
    }
    int begun() const { return m_begun; }
    /// The last one ran beside the interface.
    bool wasAside() const { return m_aside; }
    void letEnd() { m_gate.release(); }
    /// Until this holds, while the program goes on. \returns whether it does
    template <typename Holds>
    static bool waitFor(Holds holds)
    {
        QElapsedTimer since;
        since.start();
        while (!holds() && !since.hasExpired(std::chrono::milliseconds(patience).count())) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        }
        return holds();
    }

private:
    std::atomic<int> m_begun = 0;
    std::atomic<bool> m_aside = false;
    std::binary_semaphore m_gate{0};
    std::thread::id m_interface = std::this_thread::get_id();
};

}  // namespace ebbline::tests
