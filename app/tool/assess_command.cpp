// ebbline assess: judges anybody's table of scores and signs exactly as the phone would.

#include "app/tool/subcommand.h"

#include "core/exchange/tables.h"
#include "core/triage/queue.h"

#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
#include <memory>
#include <optional>

namespace ebbline::tool {

namespace {

struct Options {
    std::string scores;
    std::string signs;
    std::string out;
};

/// A course of the table, as the journal would hold it.
struct TableCourse {
    clock::Moment treated;
    std::map<clock::Instant, recovery::Entry> entries;  ///< by the moment entered
};

std::optional<std::string> contents(const std::string& file)
{
    std::ifstream input(file, std::ios::binary);
    if (!input)
        return std::nullopt;
    return std::string(std::istreambuf_iterator<char>(input), {});
}

template <typename Row>
std::optional<std::vector<Row>> rowsOf(const std::string& file, exchange::Read<Row> (*read)(std::string_view))
{
    const auto table = contents(file);
    if (!table) {
        std::cerr << "ebbline assess: " << file << ": cannot be read\n";
        return std::nullopt;
    }
    auto rows = read(*table);
    if (!rows) {
        std::cerr << "ebbline assess: " << file << ":\n" << exchange::text(rows.error());
        return std::nullopt;
    }
    return std::move(*rows);
}

recovery::Entry& entryAt(TableCourse& course, const clock::Moment& entered)
{
    recovery::Entry& entry = course.entries[entered.at];
    entry.at = entry.recordedAt = entered;
    return entry;
}

/// Warnings of each entry and triggers over the course, in time order, each judged on what had been
/// entered by then.
std::vector<exchange::FindingRow> judged(const std::string& name, const TableCourse& course, clock::Instant tableEnd)
{
    std::vector<exchange::FindingRow> rows;
    triggers::CourseInput input{course.treated, {}, {}};
    for (const auto& [at, entry] : course.entries) {
        for (const warnings::Finding& finding : warnings::judge(entry, {.treated = course.treated})) {
            std::string reason;
            for (const std::string& each : finding.reasons)
                reason += (reason.empty() ? "" : ", ") + each;
            rows.push_back({name, entry.at, finding.rule, finding.urgency, {}, finding.side, reason});
        }
        input.observations.push_back({entry.at, entry.scores});
    }
    const triggers::Protocol protocol = triggers::defaultProtocol();
    // Silence is judged to the end of the table, and nobody is expected to write after the follow-up.
    clock::Moment until = course.treated;
    until.at = std::min(tableEnd, course.treated.at + std::chrono::days(protocol.carePlan.followUpDay));
    if (!course.entries.empty())
        until.at = std::max(until.at, course.entries.rbegin()->first);
    for (const triggers::Finding& finding : triggers::judge(input, protocol, until))
        rows.push_back({name, finding.raisedAt, std::string(triggers::word(finding.trigger)), finding.urgency,
                        finding.trigger == triggers::Trigger::silence ? std::nullopt : std::optional(finding.stream.symptom),
                        finding.stream.side, triggers::explain(finding)});
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return a.raisedAt.at < b.raisedAt.at; });
    return rows;
}

int assess(const Options& options)
{
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores);
    if (!scores)
        return badInput;
    std::vector<exchange::SignRow> signs;
    if (!options.signs.empty()) {
        auto read = rowsOf<exchange::SignRow>(options.signs, exchange::readSigns);
        if (!read)
            return badInput;
        signs = std::move(*read);
    }

    std::map<std::string, TableCourse> courses;
    clock::Instant end{};
    for (const exchange::ScoreRow& row : *scores) {
        TableCourse& course = courses[row.course];
        course.treated = row.treatedAt;
        end = std::max(end, row.enteredAt.at);
        entryAt(course, row.enteredAt).scores.insert_or_assign(recovery::Stream{row.symptom, row.side}, row.score);
    }
    for (const exchange::SignRow& row : signs) {
        TableCourse& course = courses[row.course];
        if (!course.entries.empty() && course.treated != row.treatedAt) {
            std::cerr << "ebbline assess: course " << row.course << " was treated at another time in the table of signs\n";
            return badInput;
        }
        course.treated = row.treatedAt;
        end = std::max(end, row.enteredAt.at);
        recovery::Entry& entry = entryAt(course, row.enteredAt);
        (row.present ? entry.present : entry.absent).insert(row.sign);
    }

    std::vector<exchange::FindingRow> findings;
    for (const auto& [name, course] : courses)
        for (exchange::FindingRow& row : judged(name, course, end))
            findings.push_back(std::move(row));
    std::ofstream out(options.out, std::ios::binary | std::ios::trunc);
    out << exchange::writeFindings(findings);
    out.flush();
    if (!out) {
        std::cerr << "ebbline assess: " << options.out << ": cannot be written\n";
        return failed;
    }
    std::cout << findings.size() << " findings in " << courses.size() << " courses\n";
    return fine;
}

}  // namespace

void addAssess(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("assess", "Judge a table of scores and signs exactly as the phone would");
    command->footer("Tables: docs/formats/tables.md. A bad row is named with line and column, and nothing is written.\n"
                    "Example: ebbline assess --scores scores.csv --signs signs.csv --out findings.csv");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--signs", options->signs, "Table of warning signs (CSV)");
    command->add_option("--out", options->out, "Where the findings go (CSV)")->required();
    command->callback([options, &run] { run = [options] { return assess(*options); }; });
}

}  // namespace ebbline::tool
