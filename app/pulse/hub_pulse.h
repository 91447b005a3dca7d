#pragma once
/// \file
/// Keeps a program in touch with its hub while it is open: runs, waits and pauses as sync::Rhythm decides. Both
/// programs use it; what a run carries and what is said about it is theirs. One thread.

#include "core/sync/listening.h"
#include "core/sync/rhythm.h"

#include <QDeadlineTimer>
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>

namespace ebbline::pulse {

/// What the program gives. They outlive the pulse.
struct Ways {
    std::function<sync::Courier*()> courier;  ///< null: there is no hub now
    std::function<vault::Vault&()> vault;     ///< asked for only while there is a courier
    std::function<void(sync::Courier&, std::function<void(const sync::Report&)>)> run;
};

class HubPulse : public QObject {
    Q_OBJECT

public:
    explicit HubPulse(Ways ways, QObject* parent = nullptr);
    ~HubPulse() override;

    /// Between two looks while all is well; zero: only when asked, and nothing waits.
    void setInterval(std::chrono::milliseconds interval);

    /// There is something open: looks at once, or when the hub may be asked again. Does nothing without an interval.
    void begin();
    /// Closed or locked: nothing is called any more, no timer runs. The requests end with their courier, which goes next.
    void end();
    /// The courier is going to be another one.
    void dropCourier();

    /// A person asks: now, whatever failed before. \returns whether a run began.
    bool runNow();
    /// Something was written that wants to go: now, unless the hub asked to be left alone; after the run that is under way.
    void nudge();
    /// The device has a network again, or somebody came back to the program: what failed before says nothing any more. Looks
    /// at once, unless it has just done so and all was well.
    void networkIsBack();

    bool isBusy() const { return m_busy; }      ///< a run is under way
    bool isWaiting() const;                     ///< at the hub, for what comes
    /// Until the next step by itself, or -1 if none is planned.
    std::chrono::milliseconds untilNext() const;

Q_SIGNALS:
    void began();
    void ended(const ebbline::sync::Report& report);

private:
    bool start();
    void step();
    void listen();
    void finished(const sync::Report& report);
    void heard(const sync::Heard& heard);
    void follow(const sync::Rhythm::Next& next);

    Ways m_ways;
    QTimer m_timer;
    std::chrono::milliseconds m_interval{0};
    std::optional<sync::Rhythm> m_rhythm;
    sync::Rhythm::Next m_next;
    std::unique_ptr<sync::Listening> m_listening;
    QElapsedTimer m_waitedSince;
    QDeadlineTimer m_leaveAlone;         ///< the hub asked for it until then; it outlasts a lock
    std::optional<sync::Heard> m_heard;  ///< during a run
    QElapsedTimer m_reachedSince;        ///< the last run, if it reached the hub
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
    bool m_open = false;
    bool m_busy = false;
    bool m_again = false;  ///< something was written during the run
};

}  // namespace ebbline::pulse
