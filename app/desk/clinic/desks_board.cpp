#include "app/desk/clinic/desks_board.h"

#include "app/desk/model/grave_step.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "core/bytes/text.h"

#include <algorithm>
#include <map>
#include <utility>

namespace ebbline::deskapp {

namespace {

QString idText(const envelope::DeviceId& device)
{
    return QString::fromStdString(bytes::toHex(device.view()));
}

/// Enough of it to tell the desks of one clinic apart by eye.
QString shortText(const envelope::DeviceId& device)
{
    const auto id = idText(device);
    return leftToRight((id.left(4) + QLatin1Char('-') + id.mid(4, 4)).toStdString());
}

}  // namespace

DesksBoard::DesksBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::openChanged, this, &DesksBoard::open);
}

void DesksBoard::open()
{
    m_removing.reset();
    m_renewing = false;
    m_problem.clear();
    m_outcome.clear();
    refresh();
}

void DesksBoard::refresh()
{
    QList<RowList::Row> rows;
    if (m_workplace.isOpen()) {
        const bool owner = isOwner();
        std::map<envelope::DeviceId, clock::Moment> last;
        for (const auto& operation : m_workplace.desk().vault().operations()) {
            const auto [known, fresh] = last.try_emplace(operation.id.device, operation.entered);
            if (!fresh && known->second.at < operation.entered.at) {
                known->second = operation.entered;
            }
        }
        for (const auto& desk : m_workplace.desk().desks()) {
            DeskRow row;
            row.id = idText(desk.device);
            row.title = desk.own ? tr("This desk, %1").arg(shortText(desk.device)) : tr("Desk %1").arg(shortText(desk.device));
            row.holds = desk.owner ? tr("Holds the clinic's root key: may add and shut out desks, and link phones")
                                   : tr("Reads and writes; links no phones and adds no desks");
            const auto wrote = last.find(desk.device);
            row.wrote = wrote == last.end() ? tr("Nothing from it has arrived here yet")
                                            : tr("Last wrote: %1").arg(whenText(wrote->second, m_workplace.now()));
            row.removable = owner && !desk.own;
            rows.append({row.id, {}, QVariant::fromValue(row)});
        }
    }
    m_desks.setRows(std::move(rows));
    Q_EMIT changed();
}

bool DesksBoard::isOwner() const
{
    return m_workplace.isOpen() && m_workplace.desk().isOwner();
}

QString DesksBoard::askTitle() const
{
    return m_removing ? tr("Shut out desk %1?").arg(shortText(*m_removing)) : m_renewing ? tr("Begin a fresh key?") : QString();
}

QString DesksBoard::askText() const
{
    if (m_removing) {
        return tr("For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes "
                  "anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its "
                  "passphrase. This cannot be undone: a desk that is found again must be set up anew.");
    }
    return m_renewing ? tr("Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written "
                           "before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.")
                      : QString();
}

QString DesksBoard::askAct() const
{
    return m_removing ? tr("Shut it out") : tr("Begin a fresh key");
}

void DesksBoard::askRemove(const QString& id)
{
    if (!m_workplace.isOpen() || !m_workplace.mayDo(records::Task::desks)) {
        return;
    }
    const auto desks = m_workplace.desk().desks();
    const auto found = std::find_if(desks.begin(), desks.end(), [&](const auto& desk) { return idText(desk.device) == id; });
    if (found != desks.end() && !found->own) {
        m_removing = found->device;
        m_renewing = false;
        m_outcome.clear();
        Q_EMIT changed();
    }
}

void DesksBoard::askFreshKey()
{
    if (m_workplace.isOpen() && !m_workplace.mayDo(records::Task::desks)) {
        return;
    }
    m_removing.reset();
    m_renewing = m_workplace.isOpen();
    m_outcome.clear();
    Q_EMIT changed();
}

QStringList DesksBoard::seconds() const
{
    return m_removing ? secondsOf(m_workplace) : QStringList();
}

QStringList DesksBoard::ended() const
{
    QStringList lines;
    if (!m_workplace.isOpen()) {
        return lines;
    }
    for (const auto& device : m_workplace.desk().endedDevices()) {
        const auto name = device.phone ? tr("Phone %1").arg(shortText(device.device)) : tr("Desk %1").arg(shortText(device.device));
        if (device.toldAt) {
            lines << tr("%1: the hub refuses it, said %2").arg(name, whenText(m_workplace.zone().moment(*device.toldAt), m_workplace.now()));
        } else if (device.due > m_workplace.now().at) {
            lines << tr("%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2")
                         .arg(name, whenText(m_workplace.zone().moment(device.due), m_workplace.now()));
        } else {
            lines << tr("%1: the hub has not been told yet, and may still let it in. It is told at every sync.").arg(name);
        }
    }
    return lines;
}

void DesksBoard::decide(const QString& passphrase, int second)
{
    if (!m_workplace.isOpen() || !isAsking()) {
        return;
    }
    m_problem = prepareStep(m_workplace, true, passphrase, m_removing.has_value(), second);
    if (!m_problem.isEmpty()) {
        Q_EMIT changed();
        return;
    }
    const auto removed = std::exchange(m_removing, std::nullopt);
    m_renewing = false;
    const auto done = removed ? m_workplace.desk().revokeDesk(*removed) : m_workplace.desk().beginEpoch();
    if (m_workplace.settle(done)) {
        refresh();
    }
    if (!done) {
        m_outcome = errorText(done.error());
    } else if (removed) {
        m_outcome = tr("Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it "
                       "can refuse the desk by this number: %1. If it held the clinic's root key, whoever opens it can still sign as the "
                       "clinic: then set up a new clinic.")
                        .arg(leftToRight(idText(*removed).toStdString()));
    } else {
        m_outcome = tr("A fresh key holds from the next time each phone asks the hub.");
    }
    Q_EMIT changed();
}

void DesksBoard::cancel()
{
    m_removing.reset();
    m_renewing = false;
    m_problem.clear();
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
