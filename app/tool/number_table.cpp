#include "app/tool/number_table.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ebbline::tool {

namespace {

bool isMissing(const std::string& cell)
{
    return cell.empty() || cell == "NA";
}

std::optional<double> numberIn(std::string_view cell)
{
    if (cell.starts_with('+'))
        cell.remove_prefix(1);
    double value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

bool within(double value, const Range& range)
{
    return range.open ? value > range.low && value < range.high : value >= range.low && value <= range.high;
}

}  // namespace

std::expected<NumberTable, exchange::Problems> NumberTable::read(std::string_view text)
{
    NumberTable table;
    exchange::CsvReader csv(text);
    bool headerSeen = false;
    for (auto step = csv.next(); step != exchange::CsvReader::Step::end; step = csv.next()) {
        if (step == exchange::CsvReader::Step::problem) {
            table.m_problems.add(csv.problem());
            if (!headerSeen)
                break;
            continue;
        }
        const std::vector<std::string>& cells = csv.cells();
        if (!headerSeen) {
            headerSeen = true;
            table.m_header = cells;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                const auto before = cells.begin() + static_cast<std::ptrdiff_t>(i);
                if (cells[i].empty())
                    table.m_problems.add({1, i + 1, {}, "the column has no name"});
                else if (std::find(cells.begin(), before, cells[i]) != before)
                    table.m_problems.add({1, i + 1, {}, "the column " + exchange::quotedCell(cells[i]) + " stands here twice"});
            }
            continue;
        }
        if (cells.size() != table.m_header.size())
            table.m_problems.add({csv.line(), std::min(cells.size(), table.m_header.size()) + 1, {},
                                  "want " + std::to_string(table.m_header.size()) + " cells, found "
                                      + std::to_string(cells.size())});
        else
            table.m_rows.push_back({csv.line(), cells});
    }
    if (!headerSeen && table.m_problems.count == 0)
        table.m_problems.add({1, 0, {}, "the header row is missing"});
    if (table.m_problems.count > 0)
        return std::unexpected(std::move(table.m_problems));
    return table;
}

std::optional<std::size_t> NumberTable::placeOf(const std::string& column)
{
    const auto found = std::find(m_header.begin(), m_header.end(), column);
    if (found != m_header.end())
        return static_cast<std::size_t>(found - m_header.begin());
    std::string names;
    for (const std::string& name : m_header)
        names += (names.empty() ? "" : ", ") + exchange::quotedCell(name);
    m_problems.add({1, 0, {}, "the column " + exchange::quotedCell(column) + " is missing; here are " + names});
    return std::nullopt;
}

void NumberTable::fault(std::size_t row, const std::string& column, std::string reason)
{
    const auto found = std::find(m_header.begin(), m_header.end(), column);
    m_problems.add({m_rows[row].line, static_cast<std::size_t>(found - m_header.begin()) + 1, column, std::move(reason)});
}

std::vector<std::optional<double>> NumberTable::numbers(const std::string& column, const Range& range)
{
    std::vector<std::optional<double>> values;
    const auto place = placeOf(column);
    if (!place)
        return values;
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const std::string& cell = m_rows[row].cells[*place];
        std::optional<double> value;
        if (!(isMissing(cell) && range.mayBeMissing)) {
            value = numberIn(cell);
            if (value && !within(*value, anyNumber))
                fault(row, column, "want a number of at most 1e12 in size, found " + exchange::quotedCell(cell));
            else if (!value || !within(*value, range))
                fault(row, column, "want " + std::string(range.wanted) + ", found " + exchange::quotedCell(cell));
        }
        values.push_back(value);
    }
    return values;
}

std::vector<std::optional<bool>> NumberTable::answers(const std::string& column, bool mayBeMissing)
{
    std::vector<std::optional<bool>> values;
    const auto place = placeOf(column);
    if (!place)
        return values;
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const std::string& cell = m_rows[row].cells[*place];
        if (cell == "yes" || cell == "true" || cell == "1")
            values.emplace_back(true);
        else if (cell == "no" || cell == "false" || cell == "0")
            values.emplace_back(false);
        else {
            values.emplace_back();
            if (!(isMissing(cell) && mayBeMissing))
                fault(row, column, "want yes or no" + std::string(mayBeMissing ? ", or nothing if it is not known" : "")
                                       + ", found " + exchange::quotedCell(cell));
        }
    }
    return values;
}

std::vector<std::string> NumberTable::words(const std::string& column)
{
    std::vector<std::string> values;
    const auto place = placeOf(column);
    if (!place)
        return values;
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        values.push_back(m_rows[row].cells[*place]);
        if (isMissing(values.back()))
            fault(row, column, "want a word, found nothing");
    }
    return values;
}

}  // namespace ebbline::tool
