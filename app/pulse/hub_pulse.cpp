#include "app/pulse/hub_pulse.h"

#include <QRandomGenerator>

#include <utility>

namespace ebbline::pulse {

namespace {

constexpr qint64 justNowMs = 10'000;  ///< our own choice: who goes to and fro between windows causes no run each time

double chance()
{
    return QRandomGenerator::global()->generateDouble();
}

}  // namespace

HubPulse::HubPulse(Ways ways, QObject* parent) : QObject(parent), m_ways(std::move(ways))
{
    m_timer.setSingleShot(true);
    // A coarse timer may ring a twentieth early: a hub that asked for two minutes would be asked again within them.
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &HubPulse::step);
}

HubPulse::~HubPulse()
{
    end();
}

void HubPulse::setInterval(std::chrono::milliseconds interval)
{
    m_interval = interval;
    m_rhythm.reset();
    if (interval.count() > 0)
        m_rhythm.emplace(interval);
    else
        m_timer.stop();
}

void HubPulse::begin()
{
    m_open = true;
    if (m_rhythm)
        follow({sync::Rhythm::What::run, std::chrono::milliseconds(m_leaveAlone.remainingTime())});
}

void HubPulse::end()
{
    m_alive = std::make_shared<bool>(true);
    m_listening.reset();
    m_timer.stop();
    m_heard.reset();
    m_open = m_busy = m_again = false;
}

void HubPulse::dropCourier()
{
    const bool interrupted = m_busy || isWaiting();
    m_alive = std::make_shared<bool>(true);
    m_listening.reset();
    m_heard.reset();
    m_busy = m_again = false;
    if (interrupted && m_open && m_rhythm)
        follow({});
}

bool HubPulse::isWaiting() const
{
    return m_listening && m_listening->isWaiting();
}

std::chrono::milliseconds HubPulse::untilNext() const
{
    return m_timer.isActive() ? m_timer.remainingTimeAsDuration() : std::chrono::milliseconds(-1);
}

bool HubPulse::runNow()
{
    if (m_rhythm)
        m_rhythm->forgetFailures();
    return start();
}

void HubPulse::nudge()
{
    m_again = m_busy;
    if (m_leaveAlone.hasExpired())
        (void)start();
}

void HubPulse::networkIsBack()
{
    if (!m_open || !m_rhythm || m_busy || !m_leaveAlone.hasExpired())
        return;
    if (m_reachedSince.isValid() && m_reachedSince.elapsed() < justNowMs)
        return;
    m_rhythm->forgetFailures();
    m_listening.reset();  // what it waits by may lead nowhere any more
    follow({});
}

bool HubPulse::start()
{
    sync::Courier* courier = m_busy ? nullptr : m_ways.courier();
    if (courier == nullptr)
        return false;
    m_busy = true;
    m_timer.stop();
    m_leaveAlone = QDeadlineTimer();
    Q_EMIT began();
    m_ways.run(*courier, [this, alive = std::weak_ptr<bool>(m_alive)](const sync::Report& report) {
        if (!alive.expired())
            finished(report);
    });
    return true;
}

void HubPulse::finished(const sync::Report& report)
{
    m_busy = false;
    if (report.reached)
        m_reachedSince.start();
    else
        m_reachedSince.invalidate();
    if (m_rhythm) {
        auto next = m_rhythm->afterRun(report, chance());
        // Whoever cannot reach the hub waits there no longer, whatever became of the wait.
        if (next.what == sync::Rhythm::What::run && report.problem)
            m_listening.reset();
        else if (m_heard)
            next = m_rhythm->afterWait(*m_heard, std::chrono::milliseconds(m_waitedSince.elapsed()), chance());
        else if (std::exchange(m_again, false))
            next = {};
        m_heard.reset();
        m_again = false;
        follow(next);
    } else if (std::exchange(m_again, false)) {
        QTimer::singleShot(0, this, [this, alive = std::weak_ptr<bool>(m_alive)] {
            if (!alive.expired())
                (void)start();
        });
    }
    Q_EMIT ended(report);
}

void HubPulse::follow(const sync::Rhythm::Next& next)
{
    m_next = next;
    if (next.leaveAlone)
        m_leaveAlone.setRemainingTime(next.in.count());
    m_timer.start(next.in);
}

void HubPulse::step()
{
    if (m_next.what == sync::Rhythm::What::wait)
        return listen();
    // Not paired yet, say: there may be a hub later.
    if (!start() && !m_busy)
        follow({sync::Rhythm::What::run, m_interval});
}

void HubPulse::listen()
{
    sync::Courier* courier = m_ways.courier();
    if (courier == nullptr || isWaiting())
        return follow({sync::Rhythm::What::run, m_interval});
    if (!m_listening)
        m_listening = std::make_unique<sync::Listening>(m_ways.vault(), *courier);
    m_waitedSince.start();
    m_listening->wait(m_next.atMost, [this, alive = std::weak_ptr<bool>(m_alive)](const sync::Heard& said) {
        if (!alive.expired())
            heard(said);
    });
}

void HubPulse::heard(const sync::Heard& said)
{
    if (m_busy)
        m_heard = said;
    else if (m_rhythm)
        follow(m_rhythm->afterWait(said, std::chrono::milliseconds(m_waitedSince.elapsed()), chance()));
}

}  // namespace ebbline::pulse
