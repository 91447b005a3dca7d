#pragma once
/// \file
/// One typed table: finds the columns by their header, and collects problems with their place.

#include "core/exchange/tables.h"

#include <span>

namespace ebbline::exchange {

class TableReader {
public:
    /// `columns` must outlive the reader. Reads the header at once.
    TableReader(std::string_view table, std::string_view tableName, std::span<const std::string_view> columns);

    /// The next record with the right number of cells; false at the end, or if the header is wrong.
    bool next();

    /// The cell under a column, by its place in `columns`.
    std::string_view cell(std::size_t column) const { return m_csv.cells()[m_place[column]]; }
    std::size_t line() const { return m_csv.line(); }
    /// Where the column stands in the file, counted from 1.
    std::size_t placeOf(std::size_t column) const { return m_place[column] + 1; }

    void fault(std::size_t column, std::string reason);
    /// A fault about a row that was read before.
    void faultAt(std::size_t line, std::size_t column, std::string reason);
    bool ok() const { return m_problems.count == 0; }
    Problems problems() && { return std::move(m_problems); }

private:
    void readHeader(std::string_view tableName);

    CsvReader m_csv;
    std::span<const std::string_view> m_columns;
    std::vector<std::size_t> m_place;  ///< of each column in the file
    Problems m_problems;
    bool m_headerHolds = false;
};

}  // namespace ebbline::exchange
