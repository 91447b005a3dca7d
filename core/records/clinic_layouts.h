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
void serialize(Archive& archive, CallNoted& b)
{
    archive(b.course, b.contact, b.text, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, WordHandedOver& b)
{
    archive(b.text, b.replaces, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, anaesthesia::Limits& l)
{
    archive(l.plainMgPerKg, l.plainCapMg, l.epinephrineMgPerKg, l.epinephrineCapMg);
}

template <typename Archive>
void serialize(Archive& archive, DoseLimited& b)
{
    archive(b.limits, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, RoleGiven& b)
{
    archive(b.person, b.role, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, WorkDone& b)
{
    archive(b.task, b.course, b.by);
    field(archive, b.at);
}

}  // namespace ebbline::records
