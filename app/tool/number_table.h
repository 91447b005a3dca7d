#pragma once
/// \file
/// Any table of numbers with a header row (RFC 4180), of which a method takes some columns by name.
///
/// Other columns are left alone. A missing value is an empty cell or `NA`; in a table of one column
/// write `""`, because an empty line ends nothing and says nothing. Every fault is named with line and
/// column, and a single one fails the table.

#include "core/exchange/tables.h"

#include <expected>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ebbline::tool {

/// Which numbers a column may hold.
struct Range {
    double low;
    double high;
    bool open = false;           ///< the ends themselves are refused
    bool mayBeMissing = false;
    const char* wanted = "";     ///< how a message names it, e.g. "a number above 0 and below 1"
};

/// A finite number of at most 1e12 in size: larger ones would lose all digits in squares.
inline constexpr Range anyNumber{-1e12, 1e12, false, false, "a number"};
inline constexpr Range anyNumberOrNone{-1e12, 1e12, false, true, "a number, or nothing if it is missing"};

class NumberTable {
public:
    /// \returns what is wrong with the header or the shape.
    static std::expected<NumberTable, exchange::Problems> read(std::string_view text);

    std::size_t rowCount() const { return m_rows.size(); }
    /// Of a row in the file, counted from 1.
    std::size_t line(std::size_t row) const { return m_rows[row].line; }

    /// The numbers of a column; nothing where a cell is missing and may be.
    std::vector<std::optional<double>> numbers(const std::string& column, const Range& range);
    /// A column of `yes`, `true`, `1` and `no`, `false`, `0`; nothing where a cell is missing and may be.
    std::vector<std::optional<bool>> answers(const std::string& column, bool mayBeMissing);
    /// A column of words, none of them empty.
    std::vector<std::string> words(const std::string& column);

    /// A fault that a method finds in a cell.
    void fault(std::size_t row, const std::string& column, std::string reason);
    const exchange::Problems& problems() const { return m_problems; }

private:
    struct Row {
        std::size_t line;
        std::vector<std::string> cells;
    };
    /// The column's place. Names the fault if it is not there.
    std::optional<std::size_t> placeOf(const std::string& column);

    std::vector<std::string> m_header;
    std::vector<Row> m_rows;
    exchange::Problems m_problems;
};

}  // namespace ebbline::tool
