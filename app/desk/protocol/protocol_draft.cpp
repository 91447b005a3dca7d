// The draft: taken up, kept at every change, undone, and begun from a file.

#include "app/desk/protocol/protocol_editor.h"

#include "app/desk/model/words.h"
#include "core/rehearsal/grounds.h"
#include "core/triggers/statistic.h"

#include <algorithm>
#include <utility>

namespace ebbline::deskapp {

namespace {

constexpr std::size_t mostSteps = 200;

/// Thresholds of the statistics, the budget, and what they rest on: they belong to a usual range.
void takeStatistics(triggers::Thresholds& into, const triggers::Thresholds& from)
{
    for (const auto statistic : triggers::allStatistics) {
        triggers::thresholdOf(into, statistic) = triggers::thresholdOf(from, statistic);
    }
    into.falseAlertBudget = from.falseAlertBudget;
    into.calibratedOn = from.calibratedOn;
}

bool sameStatistics(const triggers::Thresholds& a, const triggers::Thresholds& b)
{
    triggers::Thresholds other = b;
    takeStatistics(other, a);
    other.calibratedOn = b.calibratedOn;
    return other == b;
}

}  // namespace

ProtocolEditor::Draft ProtocolEditor::asInUse() const
{
    return {m_inUse.carePlan, m_inUse.thresholds, m_inUse.band, {}};
}

void ProtocolEditor::open(const std::string& name)
{
    for (const auto& protocol : m_workplace.desk().protocols()) {
        if (protocol.name == name) {
            m_inUse = protocol;
        }
    }
    drop();
    m_step = 0;
    m_outcome.clear();
    m_draft = asInUse();
    const auto kept = m_workplace.desk().protocolDraft();
    m_unread.reset();
    if (!kept && kept.error().reason != Reason::notFound) {
        m_unread = kept.error();
        sayUnread(kept.error());
    }
    if (kept && kept->name == name) {
        m_draft = {kept->carePlan, kept->thresholds, kept->band, {}};
        const bool same = kept->band == m_inUse.band && sameStatistics(kept->thresholds, m_inUse.thresholds);
        // Whatever was signed meanwhile brought its own range and thresholds.
        if (same || kept->version != m_inUse.version + 1) {
            m_draft.band = m_inUse.band;
            takeStatistics(m_draft.thresholds, m_inUse.thresholds);
        } else {
            m_draft.from = std::make_shared<const triggers::Protocol>(*kept);
        }
    }
    refresh();
}

void ProtocolEditor::take(const triggers::Protocol& file, const bands::Band& band, bool withPlan)
{
    Draft next{withPlan ? file.carePlan : m_draft.plan, file.thresholds, band, {}};
    if (band == m_inUse.band && sameStatistics(file.thresholds, m_inUse.thresholds)) {
        next.thresholds.calibratedOn = m_inUse.thresholds.calibratedOn;
    } else {
        next.thresholds.calibratedOn = rehearsal::withFile(file.thresholds.calibratedOn);
        next.from = std::make_shared<const triggers::Protocol>(file);
    }
    change(std::move(next));
}

void ProtocolEditor::keepRange()
{
    auto next = m_draft;
    next.band = m_inUse.band;
    takeStatistics(next.thresholds, m_inUse.thresholds);
    next.from.reset();
    change(std::move(next));
}

triggers::Protocol ProtocolEditor::protocol() const
{
    auto protocol = m_inUse;
    protocol.version = m_inUse.version + 1;
    protocol.carePlan = m_draft.plan;
    protocol.thresholds = m_draft.thresholds;
    protocol.band = m_draft.band;
    // The rules beside which the thresholds were calibrated.
    const auto& base = m_draft.from ? *m_draft.from : m_inUse;
    if (!rehearsal::sameRules(m_draft.thresholds, base.thresholds) || !rehearsal::sameAsking(m_draft.plan, base.carePlan)) {
        protocol.thresholds.calibratedOn = rehearsal::withChange(protocol.thresholds.calibratedOn);
    }
    protocol.former.reset();
    return protocol;
}

void ProtocolEditor::sayUnread(const Error& why)
{
    Q_EMIT m_workplace.failed(tr("A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1", "the reason").arg(errorText(why)));
}

void ProtocolEditor::keep()
{
    if (m_unread) {
        sayUnread(*m_unread);
    } else if (const auto kept = m_workplace.desk().keepProtocolDraft(protocol()); !kept) {
        m_workplace.settle(kept);
    }
    refresh();
}

void ProtocolEditor::change(Draft next)
{
    if (next == m_draft || !m_workplace.isOpen()) {
        return;
    }
    m_before.push_back(std::exchange(m_draft, std::move(next)));
    if (m_before.size() > mostSteps) {
        m_before.erase(m_before.begin());
    }
    m_after.clear();
    keep();
}

void ProtocolEditor::undo()
{
    if (canUndo()) {
        m_after.push_back(std::exchange(m_draft, m_before.back()));
        m_before.pop_back();
        keep();
    }
}

void ProtocolEditor::redo()
{
    if (canRedo()) {
        m_before.push_back(std::exchange(m_draft, m_after.back()));
        m_after.pop_back();
        keep();
    }
}

void ProtocolEditor::startOver()
{
    change(asInUse());
}

void ProtocolEditor::takeUp(int index)
{
    if (!m_workplace.isOpen()) {
        return;
    }
    const auto all = m_workplace.desk().protocolVersions(m_inUse.name);
    if (index < 0 || index >= static_cast<int>(all.size())) {
        return;
    }
    const auto& former = all[all.size() - 1 - static_cast<std::size_t>(index)].protocol;
    Draft next{former.carePlan, former.thresholds, m_inUse.band, {}};
    // The thresholds of the statistics belong to the range in use.
    takeStatistics(next.thresholds, m_inUse.thresholds);
    change(std::move(next));
}

}  // namespace ebbline::deskapp
