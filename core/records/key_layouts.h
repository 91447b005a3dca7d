#pragma once
/// \file
/// As layouts.h, for the bodies that speak of keys and grave steps.

#include "core/records/layouts.h"

namespace ebbline::records {

template <typename Archive>
void serialize(Archive& archive, StepTaken& b)
{
    archive(b.step, b.device, b.course, b.by, b.with);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, KeyAnnounced& b)
{
    archive(b.course, b.number, b.boxKey);
}

}  // namespace ebbline::records
