#include "app/desk/model/hub_watch.h"

#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/sync/hub_time.h"

#include <QLocale>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

constexpr auto lastHeardName = "desk/last-heard";
constexpr qsizetype mostNames = 5;  ///< on one line

/// Milliseconds since 1970 and the offset in minutes, as text: "1796800000000 60".
std::string written(const clock::Moment& moment)
{
    return std::to_string(moment.at.time_since_epoch().count()) + ' ' + std::to_string(moment.offset.count());
}

std::optional<clock::Moment> readMoment(const bytes::Bytes& raw)
{
    const auto parts = QString::fromUtf8(reinterpret_cast<const char*>(raw.data()), static_cast<qsizetype>(raw.size()))
                           .split(u' ');
    if (parts.size() != 2) {
        return std::nullopt;
    }
    return clock::Moment{clock::Instant(std::chrono::milliseconds(parts[0].toLongLong())),
                         std::chrono::minutes(parts[1].toInt()), {}};
}

}  // namespace

void ListeningCourier::send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer)
{
    m_way->send(request, [heard = m_heard, answer = std::move(answer)](Result<mailbox::Response> response) {
        *heard = *heard || response.has_value();
        answer(std::move(response));
    });
}

HubWatch::HubWatch(Workplace& workplace, CourierMaker maker, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_maker(std::move(maker)),
      m_pulse({[this] { return courier(); }, [this]() -> vault::Vault& { return m_workplace.desk().vault(); },
               [this](sync::Courier& way, std::function<void(const sync::Report&)> done) { m_workplace.desk().syncNow(way, std::move(done)); }})
{
    connect(&m_pulse, &pulse::HubPulse::began, this, [this] {
        m_courier->forget();
        Q_EMIT changed();
    });
    connect(&m_pulse, &pulse::HubPulse::ended, this, &HubWatch::finished);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        m_pulse.end();  // an answer to a run before the lock finds nobody
        m_courier.reset();
        m_courierHub.reset();
        m_lastHeard.reset();
        m_problem.reset();
        if (m_workplace.isOpen()) {
            if (const auto kept = m_workplace.desk().vault().kept(lastHeardName)) {
                m_lastHeard = readMoment(*kept);
            }
            m_pulse.begin();
        }
        refresh();
    });
}

void HubWatch::refresh()
{
    m_phones = m_workplace.isOpen() ? PhoneOutlooks(m_workplace).count() : PhoneOutlooks::Count{};
    m_desks = {};
    m_newer = false;
    m_newerOf.clear();
    if (m_workplace.isOpen()) {
        m_desks = sync::otherDesksOf(m_workplace.desk().vault()).value_or(sync::OtherDesks{});
        m_quarantined = std::min(m_quarantined, setApart());
        m_newer = m_workplace.state().unknown + m_workplace.state().unreadable > 0;
        for (const auto& [course, count] : m_workplace.state().notUnderstood) {
            if (const auto name = m_workplace.patientName(course); !name.isEmpty()) {
                m_newerOf << tr("%1 (%2)", "a name, and how many").arg(name, QLocale().toString(static_cast<qulonglong>(count)));
            }
        }
    }
    m_refused.clear();
    m_clockAhead.reset();
    if (m_workplace.isOpen() && !m_workplace.isDemo()) {
        // Also of what goes from desk to desk, which is no phone's.
        m_refused = sync::refusals(m_workplace.desk().vault()).value_or(std::vector<sync::Refusal>{});
        m_clockAhead = sync::clockAhead(m_workplace.desk().vault());
    }
    Q_EMIT changed();
}

std::size_t HubWatch::setApart() const
{
    const vault::Vault& vault = m_workplace.desk().vault();
    std::size_t count = 0;
    for (const auto& link : vault.links().value_or(std::vector<vault::Link>{})) {
        count += vault.quarantined(link.mailbox);
    }
    for (const auto& channel : vault.channels().value_or(std::vector<vault::Channel>{})) {
        count += vault.quarantined(channel.mailbox);
    }
    return count;
}

sync::Courier* HubWatch::courier()
{
    if (!m_workplace.isOpen() || !m_maker || m_workplace.isDemo()) {
        return nullptr;
    }
    const auto hub = m_workplace.desk().hub();
    if (!hub) {
        return nullptr;
    }
    if (!m_courier || hub != m_courierHub) {
        m_pulse.dropCourier();
        auto way = m_maker(*hub);
        m_courier = way ? std::make_unique<ListeningCourier>(std::move(way)) : nullptr;
        m_courierHub = hub;
    }
    return m_courier.get();
}

void HubWatch::every(std::chrono::milliseconds interval)
{
    m_pulse.setInterval(interval);
    if (m_workplace.isOpen()) {
        m_pulse.begin();
    }
}

void HubWatch::syncNow()
{
    if (!m_pulse.runNow()) {
        Q_EMIT changed();
    }
}

void HubWatch::finished(const sync::Report& report)
{
    m_problem = report.problem;
    m_quarantined += report.quarantined;
    // A run with no phone to ask for goes well without a word from the hub: that is not "heard".
    if (!report.problem && m_courier && m_courier->heard()) {
        m_lastHeard = m_workplace.now();
        const auto text = written(*m_lastHeard);
        if (const auto kept = m_workplace.desk().vault().keep(lastHeardName, bytes::viewOf(text)); !kept) {
            m_problem = kept.error();
        }
    }
    if (report.operationsReceived > 0) {
        m_workplace.settle({});
    }
    refresh();
}

bool HubWatch::isStale() const
{
    return !m_lastHeard || m_workplace.now().at - m_lastHeard->at > staleAfter;
}

QString HubWatch::freshness() const
{
    if (!m_workplace.isOpen()) {
        return {};
    }
    if (!m_lastHeard) {
        return tr("Not heard from the hub yet");
    }
    const auto heard = tr("Last heard from the hub: %1").arg(whenText(*m_lastHeard, m_workplace.now()));
    if (!m_clockAhead) {
        return heard;
    }
    const auto clock = m_clockAhead->count() > 0 ? tr("The clock of this computer is about %1 fast: please set it.")
                                                 : tr("The clock of this computer is about %1 slow: please set it.");
    return QStringLiteral("%1. %2").arg(heard, clock.arg(lengthText(abs(*m_clockAhead))));
}

QString HubWatch::listText(const QStringList& names)
{
    const auto text = names.mid(0, mostNames).join(tr(", "));
    return names.size() > mostNames ? text + u' ' + tr("and %Ln more", nullptr, static_cast<int>(names.size() - mostNames)) : text;
}

QString HubWatch::unheard() const
{
    const auto& names = m_phones.unheard;
    if (names.isEmpty()) {
        return {};
    }
    return tr("%1. What was written there may not be here.")
        .arg(tr("Phones not heard of for more than a day: %1", "list of names").arg(listText(names)));
}

QString HubWatch::phones() const
{
    if (m_phones.linked == 0) {
        return {};
    }
    QStringList texts;
    if (!m_phones.unheard.isEmpty()) {
        texts << tr("%Ln phone(s) not heard of for more than a day.", nullptr, static_cast<int>(m_phones.unheard.size()));
    }
    if (m_phones.unproved > 0) {
        texts << tr("%Ln phone(s) have not confirmed for more than a day what was sent to them.", nullptr, m_phones.unproved);
    } else if (m_phones.waiting > 0) {
        texts << tr("%Ln phone(s) have yet to confirm what was sent to them.", nullptr, m_phones.waiting);
    }
    return texts.isEmpty() ? tr("All phones were heard of within a day or little more, and have confirmed what was sent to them.")
                           : texts.join(u' ');
}

QString HubWatch::trouble() const
{
    QStringList texts;
    if (m_phones.older > 0) {
        texts << tr("This desk runs on older data: a phone holds more from it. Write again what was written here in between.");
    }
    if (m_phones.forked > 0) {
        texts << tr("A phone sent two different histories. Do not rely on its entries; call the patient.");
    }
    if (m_phones.withheld > 0) {
        texts << tr("A message from a phone is missing. The queue may be incomplete.");
    }
    if (m_desks.olderHere > 0) {
        texts << tr("This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. "
                    "Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.");
    }
    if (m_desks.older > 0) {
        texts << tr("Another desk of yours says that it runs on older data. What is written there now does not arrive here. "
                    "Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.");
    }
    if (m_desks.forked > 0) {
        texts << tr("Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.");
    }
    if (m_desks.withheld > 0) {
        texts << tr("A message from another desk of yours is missing. What was written there may not be here.");
    }
    if (m_newer) {
        texts << tr("Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.");
        if (!m_newerOf.isEmpty()) {
            texts << tr("It is of: %1.", "list of names, each with how many").arg(listText(m_newerOf));
        }
    }
    if (!m_phones.unreadable.isEmpty()) {
        texts << tr("Messages from these patients' phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary's data saved on the phone (Settings, My data). "
                    "Only then delete the diary there and link the phone again.",
                    "list of names, each with how many")
                     .arg(listText(m_phones.unreadable));
    }
    if (m_phones.overdue > 0) {
        texts << tr("For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.")
                     .arg(m_phones.overdue)
                     .arg(m_phones.overdueNames.mid(0, mostNames).join(tr(", ")));
    }
    if (m_quarantined > 0) {
        texts << tr("%Ln message(s) could not be verified and were set apart.", nullptr, static_cast<int>(m_quarantined));
    }
    // What the hub refuses is said in words of its own: errorText() speaks of this computer.
    const auto refused = m_problem ? sync::refusedBecause(*m_problem) : std::nullopt;
    if (!m_refused.empty() || refused) {
        texts << refusedText(m_refused.empty() ? *refused : m_refused.front().why);
    }
    if (m_problem && !refused) {
        texts << errorText(*m_problem);
    }
    if (m_lastHeard && isStale()) {
        texts << tr("The queue may be out of date: nothing was heard for over a day.");
    }
    return texts.join(u' ');
}

}  // namespace ebbline::deskapp
