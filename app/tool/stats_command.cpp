// ebbline stats: the core's methods on anybody's numbers, for the auditor.

#include "app/tool/course_tables.h"
#include "app/tool/stats_parts.h"

#include <algorithm>
#include <cmath>
#include <iostream>

namespace ebbline::tool {

namespace {

/// Whether every number in it is one.
bool isFinite(const Json& json)
{
    if (json.is_number_float())
        return std::isfinite(json.get<double>());
    return !json.is_structured() || std::all_of(json.begin(), json.end(), isFinite);
}

}  // namespace

int finish(const std::string& method, bool json, const Answered& answered)
{
    if (answered) {
        if (!isFinite(answered->json)) {
            std::cerr << "ebbline stats " << method << ": the numbers are too large or too small for an answer\n";
            return badInput;
        }
        Json named{{"method", method}};
        named.update(answered->json);
        std::cout << (json ? named.dump(1) + "\n" : answered->text);
        return fine;
    }
    if (const auto* complaint = std::get_if<Complaint>(&answered.error())) {
        std::cerr << complaint->text;
        return badInput;
    }
    const Error& error = std::get<Error>(answered.error());
    if (error.reason != Reason::notEnough) {
        std::cerr << "ebbline stats " << method << ": " << error.detail << "\n";
        return badInput;
    }
    if (json)
        std::cout << Json{{"method", method}, {"notEnough", error.detail}}.dump(1) << "\n";
    else
        std::cout << "not enough to say: " << error.detail << "\n";
    return fine;
}

std::expected<NumberTable, std::variant<Error, Complaint>> tableIn(const std::string& file)
{
    const Result<std::string> bytes = readFile(file);
    if (!bytes)
        return std::unexpected(Complaint{file + ": " + bytes.error().detail + "\n"});
    auto table = NumberTable::read(*bytes);
    if (!table)
        return std::unexpected(Complaint{file + ":\n" + exchange::text(table.error())});
    return std::move(*table);
}

std::expected<void, std::variant<Error, Complaint>> faultsOf(const std::string& file, const NumberTable& table)
{
    if (table.problems().count > 0)
        return std::unexpected(Complaint{file + ":\n" + exchange::text(table.problems())});
    return {};
}

void addStats(CLI::App& app, std::function<int()>& run)
{
    auto* stats = app.add_subcommand("stats", "The methods of the core on your own numbers");
    stats->require_subcommand(1);
    stats->footer("Each method's --help shows an example. Tables are CSV with a header row; columns are chosen by name, others\n"
                  "are left alone; a missing value is an empty cell or NA. A bad cell is named with line and column, exit 2.\n"
                  "Where the numbers do not suffice the answer is \"not enough to say\", with the reason.\n"
                  "Methods, assumptions, sources: docs/statistics.");
    addCountMethods(*stats, run);
    addChartMethods(*stats, run);
    addRiskChart(*stats, run);
    addCurveMethods(*stats, run);
    addSurvivalMethods(*stats, run);
    addAgreementMethods(*stats, run);
    addRankMethods(*stats, run);
    addLineMethods(*stats, run);
    addScaleMethods(*stats, run);
    addPoolingMethods(*stats, run);
    addRateMethods(*stats, run);
    addDistributionMethods(*stats, run);
}

}  // namespace ebbline::tool
