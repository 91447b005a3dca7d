#pragma once
/// \file
/// How costly the stretching of a passphrase may be on this machine. Finding out takes a second or two, and is done
/// beside the interface, once: the answer is kept for as long as the program runs.

#include "core/crypto/crypto.h"

#include <QObject>
#include <QThreadPool>

#include <functional>
#include <optional>

namespace ebbline::controls {

class CostMeter : public QObject {
    Q_OBJECT

public:
    using Measure = std::function<crypto::StretchCost()>;  ///< called in a thread of its own
    using Then = std::function<void(const crypto::StretchCost&)>;

    /// \param known  what needs no measuring; empty: it is measured when it is asked for
    CostMeter(std::optional<crypto::StretchCost> known, Measure measure, QObject* parent = nullptr);
    /// Waits for a measurement that is under way.
    ~CostMeter() override;

    /// Somebody waits for the answer, or for what was to be done with it.
    bool isBusy() const { return m_busy; }

    /// Goes on with the cost: before this returns where it is known, else later, in the caller's thread.
    /// Does nothing while another one waits: a second touch starts nothing twice.
    void ask(Then then);
    /// What was asked for is not gone on with, and what it holds is let go.
    void cancel();
    /// The cost at once. Where it is not known yet, the caller waits for the measurement.
    crypto::StretchCost now();

Q_SIGNALS:
    void changed();

private:
    void arrive(const crypto::StretchCost& cost);

    std::optional<crypto::StretchCost> m_known;
    Measure m_measure;
    Then m_then;
    bool m_busy = false;
    bool m_measuring = false;  ///< goes on after a cancel, for whoever asks next
    QThreadPool m_pool;
};

}  // namespace ebbline::controls
