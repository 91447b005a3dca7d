#pragma once
/// \file
/// A curve in words, for the line under it and for who cannot see it.

#include "core/curves/curve.h"

#include <QString>

namespace ebbline::diaryapp {

/// "Day 4: 3 of 10. Inside the usual range, 1 to 5. Highest so far: 6, on day 1."
QString curveText(const curves::Curve& curve);

}  // namespace ebbline::diaryapp
