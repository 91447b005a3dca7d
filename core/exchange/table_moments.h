#pragma once
/// \file
/// The moments at which a course's entries stand in the open tables. A table knows a course's entries by their moments alone:
/// two of one moment would be one entry there, and one that answers itself twice is refused. The programs know better: a
/// patient may write two entries about seven in the evening.

#include "core/recovery/entry.h"

#include <vector>

namespace ebbline::exchange {

struct TableEntry {
    const recovery::Entry* entry;  ///< one of those that were given
    clock::Moment at;
};

/// The entries in the order of their moments and, of one moment, of their writing; each at its own moment or, where that is
/// not behind the one before, 1 ms behind it. A table holds no entry of before its treatment either: one from then, or of its very
/// moment, stands right behind it, as the phone judges it. The entries must outlive the answer.
std::vector<TableEntry> inTables(const std::vector<const recovery::Entry*>& entries, const clock::Moment& treated);

}  // namespace ebbline::exchange
