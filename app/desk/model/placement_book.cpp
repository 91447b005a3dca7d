#include "app/desk/model/placement_book.h"

#include "app/face/placement_hint.h"

#include <algorithm>

namespace ebbline::deskapp {

void PlacementBook::load(std::vector<recovery::Placement> placements)
{
    m_now = std::move(placements);
}

int PlacementBook::draw(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end)
{
    if (isFull()) {
        return 0;
    }
    const auto hint = face::hintFor(view, entry, end);
    auto placement = m_now.empty() ? recovery::Placement{} : m_now.back();
    placement.view = view;
    placement.entry = entry;
    placement.end = end;
    placement.side = hint.side;
    placement.zone = hint.zone;
    placement.ending = hint.ending;
    placement.redone.reset();
    m_now.push_back(placement);
    return static_cast<int>(m_now.size());
}

void PlacementBook::move(int number, const recovery::ChartPoint& entry, const recovery::ChartPoint& end)
{
    if (!exists(number)) {
        return;
    }
    auto placement = m_now[static_cast<std::size_t>(number - 1)];
    const auto before = face::hintFor(placement.view, placement.entry, placement.end);
    const auto after = face::hintFor(placement.view, entry, end);
    placement.entry = entry;
    placement.end = end;
    if (placement.side == before.side) {
        placement.side = after.side;
    }
    if (placement.zone == before.zone) {
        placement.zone = after.zone;
    }
    if (placement.ending == before.ending) {
        placement.ending = after.ending;
    }
    change(number, placement);
}

void PlacementBook::change(int number, const recovery::Placement& placement)
{
    if (exists(number) && m_now[static_cast<std::size_t>(number - 1)] != placement) {
        m_now[static_cast<std::size_t>(number - 1)] = placement;
    }
}

void PlacementBook::remove(int number)
{
    if (exists(number)) {
        m_now.erase(m_now.begin() + (number - 1));
    }
}

int PlacementBook::duplicate(int number)
{
    if (!exists(number) || isFull()) {
        return 0;
    }
    auto copy = m_now[static_cast<std::size_t>(number - 1)];
    constexpr double lower = 12;  // frame units: near enough to belong, far enough to be seen
    copy.entry = face::clampedToChart(copy.entry.x, copy.entry.y + lower);
    copy.end = face::clampedToChart(copy.end.x, copy.end.y + lower);
    copy.redone.reset();
    m_now.push_back(copy);
    return static_cast<int>(m_now.size());
}

namespace {

/// The place of a thread that lies where this one would lie mirrored; which side it was said to be of does not matter to the eye.
auto whereMirrored(const std::vector<recovery::Placement>& all, const recovery::Placement& placement)
{
    const auto twin = recovery::mirrored(placement);
    return std::find_if(all.begin(), all.end(), [&](const recovery::Placement& other) {
        return other.view == twin.view && other.entry == twin.entry && other.end == twin.end;
    });
}

}  // namespace

int PlacementBook::twinOf(int number) const
{
    if (!exists(number)) {
        return 0;
    }
    const auto found = whereMirrored(m_now, m_now[static_cast<std::size_t>(number - 1)]);
    return found == m_now.end() ? 0 : static_cast<int>(found - m_now.begin()) + 1;
}

int PlacementBook::mirror(int number)
{
    if (!exists(number) || isFull() || twinOf(number) > 0) {
        return 0;
    }
    m_now.push_back(recovery::mirrored(m_now[static_cast<std::size_t>(number - 1)]));
    return static_cast<int>(m_now.size());
}

int PlacementBook::mirrorAll()
{
    Placements twins;
    for (const auto& placement : m_now) {
        if (whereMirrored(m_now, placement) == m_now.end() && m_now.size() + twins.size() < mostPlacements) {
            twins.push_back(recovery::mirrored(placement));
        }
    }
    if (!twins.empty()) {
        m_now.insert(m_now.end(), twins.begin(), twins.end());
    }
    return static_cast<int>(twins.size());
}

}  // namespace ebbline::deskapp
