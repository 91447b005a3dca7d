#pragma once
/// \file
/// Keeps in touch with the hub and says honestly how fresh everything on the screen is. An old
/// queue must never look current: from a day and two hours without a word on, the line warns.

#include "app/desk/model/phone_outlooks.h"
#include "app/pulse/hub_pulse.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>

namespace ebbline::deskapp {

/// Makes the way to a hub. Empty pointer: there is none.
using CourierMaker = std::function<std::unique_ptr<sync::Courier>(const desk::Desk::Hub& hub)>;

/// Passes requests on and remembers whether the hub answered any of them.
class ListeningCourier final : public sync::Courier {
public:
    explicit ListeningCourier(std::unique_ptr<sync::Courier> way) : m_way(std::move(way)) {}

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override;

    bool heard() const { return *m_heard; }
    void forget() { *m_heard = false; }

private:
    std::unique_ptr<sync::Courier> m_way;
    std::shared_ptr<bool> m_heard = std::make_shared<bool>(false);
};

class HubWatch : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString freshness READ freshness NOTIFY changed FINAL)  ///< "Last heard from the hub 14:05"
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)      ///< empty while all is well
    Q_PROPERTY(QString unheard READ unheard NOTIFY changed FINAL)      ///< whose phones were not heard of; empty: none
    Q_PROPERTY(QString phones READ phones NOTIFY changed FINAL)        ///< how it stands with all of them; empty: none is linked
    Q_PROPERTY(bool stale READ isStale NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed FINAL)

public:
    /// Without word for longer: the queue may be out of date (judgement, no source).
    static constexpr std::chrono::hours staleAfter{26};

    HubWatch(Workplace& workplace, CourierMaker maker, QObject* parent = nullptr);

    QString freshness() const;
    QString trouble() const;
    QString unheard() const;
    QString phones() const;
    bool isStale() const;
    bool isBusy() const { return m_pulse.isBusy(); }

    /// Looks at the phones anew: they grow silent without anything happening.
    void refresh();

    /// The courier to the clinic's hub; nullptr if no hub is named.
    sync::Courier* courier();

    /// Once now; does nothing while a run is under way.
    Q_INVOKABLE void syncNow();
    /// Every so often from now on, and at once when the hub has something; zero: only when asked.
    void every(std::chrono::milliseconds interval);
    /// The computer has a network again.
    void networkIsBack() { m_pulse.networkIsBack(); }
    pulse::HubPulse& pulse() { return m_pulse; }

Q_SIGNALS:
    void changed();

private:
    void finished(const sync::Report& report);
    std::size_t setApart() const;  ///< of all mailboxes, now
    static QString listText(const QStringList& names);  ///< the first of them, and how many more

    Workplace& m_workplace;
    CourierMaker m_maker;
    std::optional<desk::Desk::Hub> m_courierHub;  ///< what the courier was made from, all of it
    std::unique_ptr<ListeningCourier> m_courier;
    std::optional<clock::Moment> m_lastHeard;
    std::optional<Error> m_problem;
    std::size_t m_quarantined = 0;  ///< set apart since the program began, and still
    bool m_newer = false;           ///< something that arrived cannot be read here
    QStringList m_newerOf;          ///< of which patients that is, with how much
    PhoneOutlooks::Count m_phones;
    sync::OtherDesks m_desks;
    std::vector<sync::Refusal> m_refused;
    std::optional<std::chrono::minutes> m_clockAhead;  ///< of the hub's, where it is worth saying
    pulse::HubPulse m_pulse;  ///< ends before the courier that it uses
};

}  // namespace ebbline::deskapp
