#pragma once
/// \file
/// The placements of a treatment being written. Plain values, no words.

#include "core/recovery/treatment.h"

#include <cstddef>
#include <vector>

namespace ebbline::deskapp {

class PlacementBook {
public:
    static constexpr std::size_t mostPlacements = 60;  ///< recovery::Treatment::placements

    /// Starts over with these.
    void load(std::vector<recovery::Placement> placements);
    const std::vector<recovery::Placement>& placements() const { return m_now; }
    bool isFull() const { return m_now.size() >= mostPlacements; }

    /// A line drawn on the chart: side, zone and ending are guessed from it, the thread is that of
    /// the placement written last. \returns its number, 0 if the book is full.
    int draw(recovery::ChartView view, const recovery::ChartPoint& entry, const recovery::ChartPoint& end);
    /// The same thread drawn elsewhere. Side, zone and ending are judged anew where they are what the old drawing said;
    /// what the practitioner chose otherwise stays hers.
    void move(int number, const recovery::ChartPoint& entry, const recovery::ChartPoint& end);
    /// Number counted from 1; what does not exist is left alone.
    void change(int number, const recovery::Placement& placement);
    void remove(int number);
    /// The same thread once more, a little lower. \returns its number, 0 if there is none.
    int duplicate(int number);
    /// The thread that lies where that one would on the other side, be it itself on the midline. \returns its number, 0 if there is none.
    int twinOf(int number) const;
    /// The same thread on the other side. \returns its number, 0 if there is none, or one lies there already.
    int mirror(int number);
    /// Mirrors each placement whose twin on the other side is missing. \returns how many.
    int mirrorAll();

private:
    using Placements = std::vector<recovery::Placement>;

    bool exists(int number) const { return number >= 1 && static_cast<std::size_t>(number) <= m_now.size(); }

    Placements m_now;
};

}  // namespace ebbline::deskapp
