#include "core/clock/iso8601.h"
#include "core/exchange/tables.h"

#include <charconv>

namespace ebbline::exchange {

std::string writeScores(const std::vector<ScoreRow>& rows)
{
    CsvWriter out;
    out.row({"course", "treated_at", "entered_at", "symptom", "side", "score"});
    for (const ScoreRow& row : rows)
        out.row({guarded(row.course), clock::toIso8601(row.treatedAt), clock::toIso8601(row.enteredAt),
                 recovery::word(row.symptom), recovery::word(row.side), std::to_string(row.score.points())});
    return std::move(out).take();
}

std::string writeSigns(const std::vector<SignRow>& rows)
{
    CsvWriter out;
    out.row({"course", "treated_at", "entered_at", "sign", "present"});
    for (const SignRow& row : rows)
        out.row({guarded(row.course), clock::toIso8601(row.treatedAt), clock::toIso8601(row.enteredAt),
                 recovery::word(row.sign), row.present ? "yes" : "no"});
    return std::move(out).take();
}

std::string writeTemperatures(const std::vector<TemperatureRow>& rows)
{
    CsvWriter out;
    out.row({"course", "treated_at", "entered_at", "celsius"});
    for (const TemperatureRow& row : rows) {
        char digits[32];
        const auto written = std::to_chars(digits, digits + sizeof digits, row.temperature.celsius(), std::chars_format::fixed);
        out.row({guarded(row.course), clock::toIso8601(row.treatedAt), clock::toIso8601(row.enteredAt),
                 std::string_view(digits, static_cast<std::size_t>(written.ptr - digits))});
    }
    return std::move(out).take();
}

std::string writeTruth(const std::vector<TruthRow>& rows)
{
    CsvWriter out;
    out.row({"course", "kind", "onset_at", "side"});
    for (const TruthRow& row : rows)
        out.row({guarded(row.course), row.kind, row.onsetAt ? clock::toIso8601(*row.onsetAt) : std::string(),
                 recovery::word(row.side)});
    return std::move(out).take();
}

std::string writeFindings(const std::vector<FindingRow>& rows)
{
    CsvWriter out;
    out.row({"course", "raised_at", "trigger", "urgency", "symptom", "side", "reason"});
    for (const FindingRow& row : rows)
        out.row({guarded(row.course), clock::toIso8601(row.raisedAt), guarded(row.trigger),
                 recovery::word(row.urgency), row.symptom ? recovery::word(*row.symptom) : "-",
                 recovery::word(row.side), guarded(row.reason)});
    return std::move(out).take();
}

}  // namespace ebbline::exchange
