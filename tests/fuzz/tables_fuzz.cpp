// The open tables: files of anyone's making.

#include "tests/fuzz/fuzz_target.h"

#include "core/exchange/tables.h"

namespace ebbline::fuzz {

template <typename Row>
void survives(exchange::Read<Row> (*read)(std::string_view), std::string (*write)(const std::vector<Row>&),
              std::string_view table)
{
    const auto rows = read(table);
    if (!rows) {
        mustHold(rows.error().count > 0 && !exchange::text(rows.error()).empty(), "a refusal says why");
        return;
    }
    const auto again = read(write(*rows));
    mustHold(again.has_value() && again->size() == rows->size(), "a table survives writing and reading");
}

}  // namespace ebbline::fuzz

void ebbline::fuzz::tryInput(bytes::View input)
{
    const std::string_view table(reinterpret_cast<const char*>(input.data()), input.size());
    survives(exchange::readScores, exchange::writeScores, table);
    survives(exchange::readSigns, exchange::writeSigns, table);
    survives(exchange::readTruth, exchange::writeTruth, table);
    survives(exchange::readFindings, exchange::writeFindings, table);
    if (const auto risks = exchange::readRisks(table))
        for (const exchange::RiskRow& row : *risks)
            mustHold(row.risk > 0 && row.risk < 1, "a risk lies between 0 and 1");
}
