#pragma once
/// \file
/// Marking the eyes in a photograph, before they are kept: one place after the other, each step back again.

#include "core/photos/alignment.h"

#include <optional>
#include <vector>

namespace ebbline::deskapp {

class EyeMarking {
public:
    enum class Eye { right, left };  ///< the patient's own

    /// From what was marked before, or from nothing.
    explicit EyeMarking(const std::optional<photos::Eyes>& known = {});

    /// The right eye first, since it stands on the left of a front picture, then the left one; once both are
    /// marked, the nearer one moves.
    void put(const photos::Spot& spot);
    bool canUndo() const { return m_steps.size() > 1; }
    void undo();

    std::optional<photos::Spot> right() const { return m_steps.back().right; }
    std::optional<photos::Spot> left() const { return m_steps.back().left; }
    /// Which one is marked next; empty once both are.
    std::optional<Eye> next() const;
    std::optional<photos::Eyes> eyes() const;
    /// Marked the other way round than in an upright picture that nobody mirrored.
    bool looksSwapped() const;

private:
    struct Step {
        std::optional<photos::Spot> right;
        std::optional<photos::Spot> left;
    };
    std::vector<Step> m_steps;  ///< never empty
};

}  // namespace ebbline::deskapp
