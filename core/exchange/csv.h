#pragma once
/// \file
/// Tables as text: RFC 4180 (Shafranovich, "Common Format and MIME Type for CSV Files", 2005),
/// read strictly and within bounds, because a file comes from outside.
///
/// Accepted beside the letter of the RFC: UTF-8 with or without a byte order mark, LF as well as
/// CRLF, and empty lines at the very end. Everything else that is not the documented form is a
/// Problem with its place; nothing is guessed.

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ebbline::exchange {

/// Largest text that is read, bytes.
inline constexpr std::size_t maximumTableBytes = std::size_t{256} << 20;
/// Most records that are read, without the header.
inline constexpr std::size_t maximumTableRows = 4'000'000;
inline constexpr std::size_t maximumColumns = 64;
inline constexpr std::size_t maximumCellBytes = 4096;

/// What is wrong, and where.
struct Problem {
    std::size_t line = 0;    ///< counted from 1, the header is line 1; the record's first line
    std::size_t column = 0;  ///< cell of the record, counted from 1; 0: the record as a whole
    std::string name;        ///< of the column, if the header gave it one
    std::string reason;
    bool operator==(const Problem&) const = default;
};

/// `line 7, column 6 (score): want a whole number 0..10, found '11'`.
std::string text(const Problem& problem);

/// A cell of a file as it may stand in a message: in single quotes, at most 40 bytes, control
/// characters replaced.
std::string quotedCell(std::string_view cell);

/// Reads record by record. After a problem it goes on with the next line, so that one run can
/// name them all; after an unclosed quote or a broken bound there is nothing left to go on with.
class CsvReader {
public:
    enum class Step { record, problem, end };

    /// The text must outlive the reader.
    explicit CsvReader(std::string_view text);

    Step next();

    /// Of the last record.
    const std::vector<std::string>& cells() const { return m_cells; }
    std::size_t line() const { return m_recordLine; }
    /// Of the last problem.
    const Problem& problem() const { return m_problem; }

private:
    bool readCell();
    bool readQuoted(std::string& cell);
    bool fault(std::string reason);
    void skipLine();
    bool takeLineEnd();

    std::string_view m_rest;
    std::vector<std::string> m_cells;
    Problem m_problem;
    std::size_t m_line = 1;
    std::size_t m_recordLine = 1;
    std::size_t m_records = 0;
    std::size_t m_emptyLine = 0;  ///< first of a run of empty lines, 0: none
    bool m_tooLarge = false;
};

/// Writes records with CRLF, quoting a cell only where it must be.
class CsvWriter {
public:
    CsvWriter& row(std::initializer_list<std::string_view> cells);
    CsvWriter& row(const std::vector<std::string>& cells);
    std::string take() && { return std::move(m_out); }

private:
    void cell(std::string_view text, bool first);
    std::string m_out;
};

/// Free text as a cell that no spreadsheet takes for a formula: one apostrophe in front of text
/// that starts, after any apostrophes, with `=`, `+`, `-`, `@`, a tab or a line break.
std::string guarded(std::string_view freeText);

/// The text that guarded() was given.
std::string_view unguarded(std::string_view cell);

}  // namespace ebbline::exchange
