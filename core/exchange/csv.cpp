#include "core/exchange/csv.h"

#include "core/recovery/utf8.h"

#include <algorithm>

namespace ebbline::exchange {

namespace {

constexpr std::string_view byteOrderMark = "\xef\xbb\xbf";

bool isControl(char c)
{
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

bool startsFormula(std::string_view text)
{
    const std::size_t first = text.find_first_not_of('\'');
    return first != std::string_view::npos
           && std::string_view("=+-@\t\r\n").find(text[first]) != std::string_view::npos;
}

}  // namespace

std::string text(const Problem& problem)
{
    std::string out = "line " + std::to_string(problem.line);
    if (problem.column > 0)
        out += ", column " + std::to_string(problem.column);
    if (!problem.name.empty())
        out += " (" + problem.name + ")";
    return out + ": " + problem.reason;
}

std::string quotedCell(std::string_view cell)
{
    constexpr std::size_t shown = 40;
    std::string out = "'";
    for (const char c : cell.substr(0, shown))
        out.push_back(isControl(c) ? '?' : c);
    // Never half a character: drop what a cut through a multi-byte one leaves behind.
    while (out.size() > 1 && !recovery::isUtf8(out))
        out.pop_back();
    return out + (cell.size() > shown ? "...'" : "'");
}

CsvReader::CsvReader(std::string_view text) : m_rest(text)
{
    m_tooLarge = text.size() > maximumTableBytes;
    if (m_rest.starts_with(byteOrderMark))
        m_rest.remove_prefix(byteOrderMark.size());
}

CsvReader::Step CsvReader::next()
{
    m_cells.clear();
    m_recordLine = m_line;
    if (m_tooLarge) {
        m_tooLarge = false;
        m_rest = {};
        fault("the table is larger than " + std::to_string(maximumTableBytes >> 20) + " MiB");
        return Step::problem;
    }
    while (!m_rest.empty() && (m_rest.front() == '\n' || m_rest.starts_with("\r\n"))) {
        if (m_emptyLine == 0)
            m_emptyLine = m_line;
        takeLineEnd();
    }
    if (m_rest.empty())
        return Step::end;
    if (m_emptyLine != 0) {
        m_recordLine = std::exchange(m_emptyLine, 0);
        fault("an empty line inside the table");
        return Step::problem;
    }
    m_recordLine = m_line;
    if (++m_records > maximumTableRows + 1) {
        m_rest = {};
        fault("more than " + std::to_string(maximumTableRows) + " rows");
        return Step::problem;
    }
    for (;;) {
        if (!readCell()) {
            skipLine();
            return Step::problem;
        }
        if (m_rest.empty() || takeLineEnd())
            return Step::record;
        m_rest.remove_prefix(1);  // the comma
    }
}

/// Reads one cell and stops before the comma, the line end or the end of the text.
bool CsvReader::readCell()
{
    if (m_cells.size() == maximumColumns)
        return fault("more than " + std::to_string(maximumColumns) + " cells in one row");
    std::string& cell = m_cells.emplace_back();
    if (m_rest.starts_with('"')) {
        if (!readQuoted(cell))
            return false;
    } else {
        const std::size_t end = std::min(m_rest.find_first_of(",\r\n\""), m_rest.size());
        cell = m_rest.substr(0, end);
        m_rest.remove_prefix(end);
        if (m_rest.starts_with('"'))
            return fault("a quote inside a cell that does not start with one");
    }
    if (m_rest.starts_with('\r') && !m_rest.starts_with("\r\n"))
        return fault("a carriage return without a line feed");
    if (cell.size() > maximumCellBytes)
        return fault("a cell longer than " + std::to_string(maximumCellBytes) + " bytes");
    if (!recovery::isUtf8(cell) || cell.find('\0') != std::string::npos)
        return fault("not UTF-8 text");
    return true;
}

bool CsvReader::readQuoted(std::string& cell)
{
    m_rest.remove_prefix(1);
    for (;;) {
        const std::size_t quote = m_rest.find('"');
        if (quote == std::string_view::npos) {
            m_rest = {};
            return fault("the quote that opens this cell is never closed");
        }
        for (const char c : m_rest.substr(0, quote))
            m_line += c == '\n' ? 1 : 0;
        cell.append(m_rest.substr(0, quote));
        m_rest.remove_prefix(quote + 1);
        if (!m_rest.starts_with('"'))
            break;
        cell.push_back('"');
        m_rest.remove_prefix(1);
    }
    if (!m_rest.empty() && m_rest.front() != ',' && m_rest.front() != '\n' && m_rest.front() != '\r')
        return fault("characters after the quote that closes this cell");
    return true;
}

bool CsvReader::fault(std::string reason)
{
    m_problem = {m_recordLine, m_cells.size(), {}, std::move(reason)};
    return false;
}

void CsvReader::skipLine()
{
    m_rest.remove_prefix(std::min(m_rest.find('\n'), m_rest.size()));
    takeLineEnd();
}

bool CsvReader::takeLineEnd()
{
    const std::size_t length = m_rest.starts_with("\r\n") ? 2 : m_rest.starts_with('\n') ? 1 : 0;
    m_rest.remove_prefix(length);
    m_line += length > 0 ? 1 : 0;
    return length > 0;
}

void CsvWriter::cell(std::string_view text, bool first)
{
    if (!first)
        m_out.push_back(',');
    const bool bare = text.find_first_of(",\"\r\n") == std::string_view::npos && !text.starts_with(' ') && !text.ends_with(' ');
    if (bare) {
        m_out.append(text);
        return;
    }
    m_out.push_back('"');
    for (const char c : text)
        m_out.append(c == '"' ? 2 : 1, c);
    m_out.push_back('"');
}

CsvWriter& CsvWriter::row(std::initializer_list<std::string_view> cells)
{
    bool first = true;
    for (const std::string_view text : cells)
        cell(text, std::exchange(first, false));
    m_out.append("\r\n");
    return *this;
}

CsvWriter& CsvWriter::row(const std::vector<std::string>& cells)
{
    bool first = true;
    for (const std::string& text : cells)
        cell(text, std::exchange(first, false));
    m_out.append("\r\n");
    return *this;
}

std::string guarded(std::string_view freeText)
{
    return startsFormula(freeText) ? "'" + std::string(freeText) : std::string(freeText);
}

std::string_view unguarded(std::string_view cell)
{
    return cell.starts_with('\'') && startsFormula(cell) ? cell.substr(1) : cell;
}

}  // namespace ebbline::exchange
