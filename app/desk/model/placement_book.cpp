#include "app/desk/model/placement_book.h"

#include "app/face/placement_hint.h"

#include <algorithm>

namespace ebbline::deskapp {

void PlacementBook::load(std::vector<recovery::Placement> placements)
{
    m_now = std::move(placements);
    m_before.clear();
    m_after.clear();
}

void PlacementBook::remember()
{
    m_before.push_back(m_now);
    if (m_before.size() > mostSteps) {
        m_before.erase(m_before.begin());
    }
    m_after.clear();
}

int PlacementBook::draw(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end)
{
    if (isFull()) {
        return 0;
    }
    remember();
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
        remember();
        m_now[static_cast<std::size_t>(number - 1)] = placement;
    }
}

void PlacementBook::remove(int number)
{
    if (exists(number)) {
        remember();
        m_now.erase(m_now.begin() + (number - 1));
    }
}

int PlacementBook::duplicate(int number)
{
    if (!exists(number) || isFull()) {
        return 0;
    }
    remember();
    auto copy = m_now[static_cast<std::size_t>(number - 1)];
    constexpr double lower = 12;  // frame units: near enough to belong, far enough to be seen
    copy.entry = face::clampedToChart(copy.entry.x, copy.entry.y + lower);
    copy.end = face::clampedToChart(copy.end.x, copy.end.y + lower);
    copy.redone.reset();
    m_now.push_back(copy);
    return static_cast<int>(m_now.size());
}

int PlacementBook::mirror(int number)
{
    if (!exists(number) || isFull()) {
        return 0;
    }
    remember();
    m_now.push_back(recovery::mirrored(m_now[static_cast<std::size_t>(number - 1)]));
    return static_cast<int>(m_now.size());
}

int PlacementBook::mirrorAll()
{
    Placements twins;
    for (const auto& placement : m_now) {
        const auto twin = recovery::mirrored(placement);
        const auto there = [&](const recovery::Placement& other) {
            return other.side == twin.side && other.view == twin.view && other.entry == twin.entry && other.end == twin.end;
        };
        if (std::none_of(m_now.begin(), m_now.end(), there) && m_now.size() + twins.size() < mostPlacements) {
            twins.push_back(twin);
        }
    }
    if (!twins.empty()) {
        remember();
        m_now.insert(m_now.end(), twins.begin(), twins.end());
    }
    return static_cast<int>(twins.size());
}

void PlacementBook::undo()
{
    if (canUndo()) {
        m_after.push_back(m_now);
        m_now = m_before.back();
        m_before.pop_back();
    }
}

void PlacementBook::redo()
{
    if (canRedo()) {
        m_before.push_back(m_now);
        m_now = m_after.back();
        m_after.pop_back();
    }
}

}  // namespace ebbline::deskapp
