#pragma once
/// \file
/// What was done, thread by thread, as an open table: docs/formats/tables.md. Beside scores and truth it
/// lets an auditor tell techniques, zones, clinics and lots apart. No person and no place on the face is
/// in it.

#include "core/exchange/tables.h"
#include "core/recovery/treatment.h"

namespace ebbline::exchange {

/// One thread: `course,clinic,technique,zone,lot`. Every cell but the course may be empty: not known.
struct PlacementRow {
    std::string course;     ///< any name of 1..100 bytes without control characters
    std::string clinic;     ///< the same in every row of a course, at most 100 bytes
    std::string technique;  ///< free, at most 100 bytes
    std::optional<recovery::Zone> zone;  ///< one of our words
    std::string lot;        ///< as printed, at most 40 bytes
    bool operator==(const PlacementRow&) const = default;
};

/// Rows in the order of the file.
Read<PlacementRow> readPlacements(std::string_view table);

/// With the header row, CRLF, free text guarded against spreadsheets.
std::string writePlacements(const std::vector<PlacementRow>& rows);

}  // namespace ebbline::exchange
