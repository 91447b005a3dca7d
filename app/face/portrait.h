#pragma once
/// \file
/// A drawn face that stands in for a photograph where an invented patient takes one: stories, demos, pictures of the
/// guides. Nobody's face, and seen at once not to be a photograph.

#include "core/recovery/treatment.h"

#include <QImage>

namespace ebbline::face {

/// Of 3 by 4. The swelling of the patient's left cheek, 0..1, is what changes from day to day.
QImage portrait(recovery::ChartView view, int width, double swelling = 0);

}  // namespace ebbline::face
