#pragma once
/// \file
/// As layouts.h, for the bodies that say what was opened.

#include "core/records/layouts.h"

namespace ebbline::records {

template <typename Archive>
void serialize(Archive& archive, EntriesOpened& b)
{
    archive(b.course, b.entries, b.by);
    field(archive, b.at);
}

template <typename Archive>
void serialize(Archive& archive, EntryVersion& v)
{
    archive(v.device, v.number);
}

template <typename Archive>
void serialize(Archive& archive, VersionsOpened& b)
{
    archive(b.course, b.versions, b.by);
    field(archive, b.at);
}

}  // namespace ebbline::records
