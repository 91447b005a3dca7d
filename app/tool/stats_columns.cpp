// Columns that several methods of `ebbline stats` read alike: pairs of a row, two groups, points.

#include "app/tool/stats_parts.h"

#include <algorithm>
#include <cmath>

namespace ebbline::tool {

void addPairColumns(CLI::App& command, PairColumns& columns)
{
    command.add_option("FILE", columns.file, "Table (CSV), one row a pair")->required();
    command.add_option("--first", columns.first, "Its column of first values")->capture_default_str();
    command.add_option("--second", columns.second, "Its column of second values")->capture_default_str();
}

std::expected<Differences, std::variant<Error, Complaint>> differencesIn(const PairColumns& columns)
{
    auto table = tableIn(columns.file);
    if (!table)
        return std::unexpected(table.error());
    const auto first = table->numbers(columns.first, anyNumberOrNone);
    const auto second = table->numbers(columns.second, anyNumberOrNone);
    if (const auto sound = faultsOf(columns.file, *table); !sound)
        return std::unexpected(sound.error());
    Differences differences;
    for (std::size_t row = 0; row < first.size(); ++row)
        if (first[row] && second[row])
            differences.values.push_back(*first[row] - *second[row]);
        else
            ++differences.missing;
    return differences;
}

void addGroupColumns(CLI::App& command, GroupColumns& columns)
{
    command.add_option("FILE", columns.file, "Table (CSV), one row a value")->required();
    command.add_option("--column", columns.value, "Its column of values")->capture_default_str();
    command.add_option("--group", columns.group, "Its column of groups, two of them")->capture_default_str();
}

std::expected<TwoGroups, std::variant<Error, Complaint>> groupsIn(const GroupColumns& columns)
{
    auto table = tableIn(columns.file);
    if (!table)
        return std::unexpected(table.error());
    const auto values = table->numbers(columns.value, anyNumberOrNone);
    const auto words = table->words(columns.group);
    if (const auto sound = faultsOf(columns.file, *table); !sound)
        return std::unexpected(sound.error());
    TwoGroups groups;
    for (std::size_t row = 0; row < values.size(); ++row) {
        const auto place = groupOf(groups.names, words[row]);
        if (!place)
            return refused(place.error());
        if (values[row])
            groups.values[*place].push_back(*values[row]);
        else
            ++groups.missing;
    }
    if (groups.names.size() < 2)
        return refused({Reason::notEnough, "only one group was seen"});
    return groups;
}

Result<std::size_t> groupOf(std::vector<std::string>& names, const std::string& word)
{
    const auto found = std::find(names.begin(), names.end(), word);
    if (found == names.end() && names.size() == 2)
        return fail(Reason::outOfRange, "want two groups, found a third: " + exchange::quotedCell(word));
    const auto place = static_cast<std::size_t>(found - names.begin());
    if (place == names.size())
        names.push_back(word);
    return place;
}

void addPointColumns(CLI::App& command, PointColumns& columns)
{
    command.add_option("FILE", columns.file, "Table (CSV), one row a point")->required();
    command.add_option("--x", columns.x, "Its column of x")->capture_default_str();
    command.add_option("--y", columns.y, "Its column of y")->capture_default_str();
}

std::expected<Points, std::variant<Error, Complaint>> pointsIn(const PointColumns& columns)
{
    auto table = tableIn(columns.file);
    if (!table)
        return std::unexpected(table.error());
    const auto xs = table->numbers(columns.x, anyNumberOrNone);
    const auto ys = table->numbers(columns.y, anyNumberOrNone);
    if (const auto sound = faultsOf(columns.file, *table); !sound)
        return std::unexpected(sound.error());
    Points points;
    for (std::size_t row = 0; row < xs.size(); ++row)
        if (xs[row] && ys[row])
            points.values.push_back({*xs[row], *ys[row]});
        else
            ++points.missing;
    return points;
}

std::vector<long> countsIn(NumberTable& table, const std::string& column)
{
    constexpr Range range{0, 1e9, false, false, "a whole number of 0 or more"};
    const auto numbers = table.numbers(column, range);
    std::vector<long> whole;
    for (std::size_t row = 0; row < numbers.size(); ++row) {
        if (numbers[row] && *numbers[row] != std::floor(*numbers[row]))
            table.fault(row, column, "want " + std::string(range.wanted) + ", found " + exchange::quotedCell(shown(*numbers[row])));
        whole.push_back(numbers[row] ? std::lround(*numbers[row]) : 0);
    }
    return whole;
}

std::string missingText(std::size_t missing)
{
    return missing > 0 ? std::to_string(missing) + " missing, left out\n" : "";
}

std::string rangeText(const statistics::Interval& limits)
{
    return shown(limits.low) + " to " + shown(limits.high);
}

Json orNull(const std::optional<double>& value)
{
    return value ? Json(*value) : Json(nullptr);
}

}  // namespace ebbline::tool
