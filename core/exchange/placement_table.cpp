#include "core/exchange/placement_table.h"

#include "core/exchange/table_reader.h"

#include <algorithm>
#include <array>
#include <map>

namespace ebbline::exchange {

namespace {

constexpr std::size_t maximumName = 100;
constexpr std::size_t maximumLot = 40;
constexpr std::array<std::string_view, 5> columns{"course", "clinic", "technique", "zone", "lot"};

/// Free text without control characters, freed from its guard.
std::optional<std::string> textOf(TableReader& reader, std::size_t column, std::size_t least, std::size_t most)
{
    const std::string_view text = unguarded(reader.cell(column));
    const bool control =
        std::ranges::any_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
    if (text.size() >= least && text.size() <= most && !control)
        return std::string(text);
    reader.fault(column, "want " + std::to_string(least) + " to " + std::to_string(most)
                             + " bytes without control characters, found " + std::to_string(text.size()) + " bytes");
    return std::nullopt;
}

/// Whether the cell is empty or a zone; `zone` is set to it.
bool zoneOf(TableReader& reader, std::size_t column, std::optional<recovery::Zone>& zone)
{
    const std::string_view cell = reader.cell(column);
    if (cell.empty())
        return true;
    std::string wanted = "one of";
    for (const recovery::Zone one : recovery::allZones) {
        if (recovery::word(one) == cell) {
            zone = one;
            return true;
        }
        wanted.append(" ").append(recovery::word(one));
    }
    reader.fault(column, "want " + wanted);
    return false;
}

}  // namespace

Read<PlacementRow> readPlacements(std::string_view table)
{
    TableReader reader(table, "placements", columns);
    struct First {
        std::string clinic;
        std::size_t line;
    };
    std::map<std::string, First, std::less<>> clinics;
    std::vector<PlacementRow> rows;
    while (reader.next()) {
        PlacementRow row;
        auto course = textOf(reader, 0, 1, maximumName);
        auto clinic = textOf(reader, 1, 0, maximumName);
        auto technique = textOf(reader, 2, 0, maximumName);
        const bool zone = zoneOf(reader, 3, row.zone);
        auto lot = textOf(reader, 4, 0, maximumLot);
        if (!course || !clinic || !technique || !zone || !lot)
            continue;
        const auto [place, fresh] = clinics.try_emplace(*course, First{*clinic, reader.line()});
        if (!fresh && place->second.clinic != *clinic) {
            reader.fault(1, "differs from line " + std::to_string(place->second.line) + ", the first row of this course");
            continue;
        }
        row.course = std::move(*course);
        row.clinic = std::move(*clinic);
        row.technique = std::move(*technique);
        row.lot = std::move(*lot);
        rows.push_back(std::move(row));
    }
    if (reader.ok())
        return rows;
    return std::unexpected(std::move(reader).problems());
}

std::string writePlacements(const std::vector<PlacementRow>& rows)
{
    CsvWriter out;
    out.row({"course", "clinic", "technique", "zone", "lot"});
    for (const PlacementRow& row : rows)
        out.row({guarded(row.course), guarded(row.clinic), guarded(row.technique),
                 row.zone ? recovery::word(*row.zone) : std::string_view(), guarded(row.lot)});
    return std::move(out).take();
}

}  // namespace ebbline::exchange
