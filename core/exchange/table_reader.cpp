#include "core/exchange/table_reader.h"

#include <algorithm>

namespace ebbline::exchange {

namespace {

std::string joined(std::span<const std::string_view> words)
{
    std::string out;
    for (const std::string_view word : words)
        out.append(out.empty() ? "" : ", ").append(word);
    return out;
}

}  // namespace

std::string text(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems.listed)
        out += text(problem) + "\n";
    if (problems.count > problems.listed.size())
        out += "and " + std::to_string(problems.count - problems.listed.size()) + " more\n";
    return out;
}

TableReader::TableReader(std::string_view table, std::string_view tableName,
                         std::span<const std::string_view> columns)
    : m_csv(table), m_columns(columns)
{
    readHeader(tableName);
}

void TableReader::readHeader(std::string_view tableName)
{
    const CsvReader::Step step = m_csv.next();
    if (step == CsvReader::Step::problem) {
        m_problems.add(m_csv.problem());
        return;
    }
    const std::string wanted = "the table of " + std::string(tableName) + " has " + joined(m_columns);
    if (step == CsvReader::Step::end) {
        m_problems.add({1, 0, {}, "the header row is missing; " + wanted});
        return;
    }
    const std::vector<std::string>& header = m_csv.cells();
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (std::find(m_columns.begin(), m_columns.end(), header[i]) == m_columns.end())
            m_problems.add({1, i + 1, {}, "the column " + quotedCell(header[i]) + " is unknown; " + wanted});
        else if (std::find(header.begin(), header.begin() + static_cast<std::ptrdiff_t>(i), header[i])
                 != header.begin() + static_cast<std::ptrdiff_t>(i))
            m_problems.add({1, i + 1, {}, "the column " + quotedCell(header[i]) + " stands here twice"});
    }
    for (const std::string_view column : m_columns) {
        const auto found = std::find(header.begin(), header.end(), column);
        if (found == header.end())
            m_problems.add({1, 0, {}, "the column " + quotedCell(column) + " is missing; " + wanted});
        m_place.push_back(static_cast<std::size_t>(found - header.begin()));
    }
    m_headerHolds = ok();
}

bool TableReader::next()
{
    if (!m_headerHolds)
        return false;
    for (;;) {
        const CsvReader::Step step = m_csv.next();
        if (step == CsvReader::Step::end)
            return false;
        if (step == CsvReader::Step::problem) {
            m_problems.add(m_csv.problem());
            continue;
        }
        const std::size_t count = m_csv.cells().size();
        if (count == m_columns.size())
            return true;
        m_problems.add({m_csv.line(), std::min(count, m_columns.size()) + 1, {},
                        "the header has " + std::to_string(m_columns.size()) + " columns, this row "
                            + std::to_string(count)});
    }
}

void TableReader::fault(std::size_t column, std::string reason)
{
    faultAt(m_csv.line(), column, std::move(reason));
}

void TableReader::faultAt(std::size_t line, std::size_t column, std::string reason)
{
    m_problems.add({line, m_place[column] + 1, std::string(m_columns[column]), std::move(reason)});
}

}  // namespace ebbline::exchange
