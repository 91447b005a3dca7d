#pragma once
/// \file
/// As layouts.h, for the bodies that desks write to desks alone.

#include "core/records/layouts.h"

namespace ebbline::records {

template <typename Archive>
void serialize(Archive& archive, OperationName& n)
{
    archive(n.device, n.number);
}

template <typename Archive>
void serialize(Archive& archive, ActTakenBack& b)
{
    archive(b.course, b.act, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, WordHandedOver& b)
{
    archive(b.text, b.replaces, b.by);
    field(archive, b.at);
}

}  // namespace ebbline::records
