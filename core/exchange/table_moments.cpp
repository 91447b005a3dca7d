#include "core/exchange/table_moments.h"

#include <algorithm>
#include <tuple>

namespace ebbline::exchange {

std::vector<TableEntry> inTables(const std::vector<const recovery::Entry*>& entries, const clock::Moment& treated)
{
    std::vector<TableEntry> placed;
    for (const recovery::Entry* entry : entries)
        placed.push_back({entry, entry->at.at > treated.at ? entry->at : treated});
    // Of those from before the treatment the earlier one stands first as well. The name decides where nothing else does.
    std::ranges::sort(placed, {}, [](const TableEntry& each) {
        return std::tuple(each.at.at, each.entry->at.at, each.entry->recordedAt.at, each.entry->id);
    });
    clock::Instant before = treated.at;
    for (TableEntry& each : placed) {
        each.at.at = std::max(each.at.at, before + std::chrono::milliseconds(1));
        before = each.at.at;
    }
    return placed;
}

}  // namespace ebbline::exchange
