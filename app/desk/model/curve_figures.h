#pragma once
/// \file
/// The figures of a symptom's two curves in words: highest score, half-life, when it settled, area, and
/// how far the sides are apart. What cannot be said is said to be that; a side without an entry is left out.
/// Definitions: docs/statistics/curve.md.

#include "core/curves/curve.h"

#include <QString>

#include <optional>

namespace ebbline::deskapp {

/// Both sides of a symptom.
struct CurvePair {
    curves::Curve left;
    curves::Curve right;
    std::optional<curves::Asymmetry> asymmetry;  ///< empty: not enough to say
};

/// Sentences for the left, the right, and the two against each other; empty without an entry.
QString figuresOf(const CurvePair& pair);

/// What was scored after the axis of the curves ends, on day 22 or later; empty: nothing.
QString beyondOf(const CurvePair& pair);

}  // namespace ebbline::deskapp
