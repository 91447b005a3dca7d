#pragma once
/// \file
/// The open tables and courses: files in, courses out, and the way back.

#include "core/exchange/tables.h"
#include "core/rehearsal/invented_course.h"

#include <cstdint>
#include <map>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

namespace ebbline::tool {

/// The largest file that the tool reads, and so the largest table that it writes; bytes.
inline constexpr std::uintmax_t maximumTable = exchange::maximumTableBytes;

/// The bytes of a file. \returns Reason::notFound, Reason::tooLarge above maximumTable, or Reason::storageFailed.
Result<std::string> readFile(const std::string& file);

/// Whether a table of so many bytes and rows, written of so many courses, would be read again.
/// \returns Reason::tooLarge naming the file and roughly how many such courses fit.
Done checkReadable(const std::string& file, std::uintmax_t bytes, std::size_t rows, std::size_t courses);

/// Written beside its place and moved there, so that a failure leaves the old file whole.
/// \returns Reason::storageFailed.
Done writeFile(const std::string& file, std::string_view bytes);

/// A file to write, and what goes into it.
struct Output {
    std::string file;
    std::string bytes;
};

/// Several files that belong together: each is written beside its place, and only when all are written is any moved
/// there, so that a failure leaves all the old ones. \returns Reason::storageFailed naming the file.
Done writeFiles(const std::vector<Output>& outputs);

/// Scores by course, in the order of the course names. Scores entered at the very moment of the
/// treatment are the practitioner's: they start the comparison of the sides and are no entry, as on the phone.
std::map<std::string, triggers::CourseInput> coursesOf(const std::vector<exchange::ScoreRow>& rows);

/// What the kind of another complication than ours begins with in a table of truth: `other-seroma`.
inline constexpr std::string_view otherKind = "other-";

/// Scores and truth of the same courses. A course with two complications takes the one that began
/// first. \returns Reason::malformed naming line and column of a kind that is neither one of rehearsal::kindFromWord()
///          nor begins with otherKind: a misspelt `plain` would count as a complication; Reason::notFound naming a course that has scores and no truth, or the reverse;
///          Reason::outOfRange naming line and course of an onset before the treatment, or after both the last
///          row of the course and the evening of day 21: nothing that was written can speak of it.
Result<std::vector<rehearsal::KnownCourse>> knownCourses(const std::vector<exchange::ScoreRow>& scores,
                                                         const std::vector<exchange::TruthRow>& truth);

std::vector<exchange::ScoreRow> scoreRowsOf(const rehearsal::KnownCourse& course);
/// Signs that were ticked; an entry at which none was has no row.
std::vector<exchange::SignRow> signRowsOf(const rehearsal::KnownCourse& course);
/// Temperatures that were measured; an entry without one has no row.
std::vector<exchange::TemperatureRow> temperatureRowsOf(const rehearsal::KnownCourse& course);
exchange::TruthRow truthRowOf(const rehearsal::KnownCourse& course);

/// Reads a table and names what is wrong with it on `complaints`.
template <typename Row>
std::optional<std::vector<Row>> rowsOf(const std::string& file, exchange::Read<Row> (*read)(std::string_view),
                                       std::ostream& complaints)
{
    const Result<std::string> table = readFile(file);
    if (!table) {
        complaints << file << ": " << table.error().detail << "\n";
        return std::nullopt;
    }
    auto rows = read(*table);
    if (!rows) {
        complaints << file << ":\n" << exchange::text(rows.error());
        return std::nullopt;
    }
    return std::move(*rows);
}

}  // namespace ebbline::tool
