// ebbline assess: judges anybody's table of scores and signs by the rules of the phone.

#include "app/tool/course_tables.h"
#include "app/tool/protocol_file.h"
#include "app/tool/subcommand.h"

#include "core/clock/instant.h"
#include "core/triggers/judge.h"
#include "core/warnings/warnings.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace ebbline::tool {

namespace {

struct Options {
    std::string scores;
    std::string signs;
    std::string protocol;
    std::string out;
};

/// A course of the tables: what triggers see, and the entries that warnings see.
struct TableCourse {
    triggers::CourseInput input;
    std::map<clock::Instant, recovery::Entry> entries;  ///< by the moment entered
};

recovery::Entry& entryAt(TableCourse& course, const clock::Moment& entered)
{
    recovery::Entry& entry = course.entries[entered.at];
    entry.at = entry.recordedAt = entered;
    return entry;
}

/// Warnings of each entry and triggers over the course, in time order, each judged on what had been
/// entered by then.
std::vector<exchange::FindingRow> judged(const std::string& name, const TableCourse& course,
                                         const triggers::Protocol& protocol, clock::Instant end)
{
    std::vector<exchange::FindingRow> rows;
    for (const auto& [at, entry] : course.entries)
        for (const warnings::Finding& finding : warnings::judge(entry, {.treated = course.input.treated})) {
            std::string reason;
            for (const std::string& each : finding.reasons)
                reason += (reason.empty() ? "" : ", ") + each;
            rows.push_back({name, entry.at, finding.rule, finding.urgency, {}, finding.side, reason});
        }
    // Silence is judged to the end of the table, and nobody is expected to write after the follow-up.
    clock::Moment until = course.input.treated;
    until.at = std::min(end, until.at + std::chrono::days(protocol.carePlan.followUpDay));
    if (!course.entries.empty())
        until.at = std::max(until.at, course.entries.rbegin()->first);
    for (const triggers::Finding& finding : triggers::judge(course.input, protocol, until))
        rows.push_back({name, finding.raisedAt, std::string(triggers::word(finding.trigger)), finding.urgency,
                        finding.trigger == triggers::Trigger::silence ? std::nullopt : std::optional(finding.stream.symptom),
                        finding.stream.side, triggers::explain(finding)});
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return a.raisedAt.at < b.raisedAt.at; });
    return rows;
}

/// The tables as courses. \returns Reason::malformed if they disagree on when a course began.
Result<std::map<std::string, TableCourse>> tableCourses(const std::vector<exchange::ScoreRow>& scores,
                                                        const std::vector<exchange::SignRow>& signs)
{
    std::map<std::string, TableCourse> courses;
    for (auto& [name, input] : coursesOf(scores))
        courses[name].input = std::move(input);
    // What stands at the very moment of the treatment is the practitioner's and no entry: no warning speaks of it.
    for (const exchange::ScoreRow& row : scores)
        if (row.enteredAt.at != row.treatedAt.at)
            entryAt(courses[row.course], row.enteredAt).scores.insert_or_assign({row.symptom, row.side}, row.score);
    for (const exchange::SignRow& row : signs) {
        const auto [place, fresh] = courses.try_emplace(row.course);
        TableCourse& course = place->second;
        if (fresh)
            course.input.treated = row.treatedAt;
        else if (course.input.treated != row.treatedAt)
            return fail(Reason::malformed, "course " + exchange::quotedCell(row.course)
                                               + " was treated at another time in the table of signs");
        recovery::Entry& entry = entryAt(course, row.enteredAt);
        (row.present ? entry.present : entry.absent).insert(row.sign);
        // An entry of signs alone is an entry: whoever answers them is not silent.
        const auto& known = course.input.observations;
        if (std::none_of(known.begin(), known.end(),
                         [&](const triggers::Observation& o) { return o.at.at == row.enteredAt.at; }))
            course.input.observations.push_back({row.enteredAt, {}});
    }
    return courses;
}

/// Up to when silence is judged: the last row of anybody. A row that lies in the future would make
/// everybody else silent, so it counts only where all rows do.
struct TableEnd {
    clock::Instant at{};
    std::size_t ahead = 0;  ///< rows more than a day after now
};

TableEnd tableEnd(const std::vector<exchange::ScoreRow>& scores, const std::vector<exchange::SignRow>& signs, clock::Instant now)
{
    TableEnd end;
    clock::Instant last{};
    const auto take = [&](clock::Instant entered) {
        last = std::max(last, entered);
        if (entered > now + std::chrono::days(1))
            ++end.ahead;
        else
            end.at = std::max(end.at, entered);
    };
    for (const exchange::ScoreRow& row : scores)
        take(row.enteredAt.at);
    for (const exchange::SignRow& row : signs)
        take(row.enteredAt.at);
    if (end.ahead == scores.size() + signs.size())
        end.at = last;
    return end;
}

int assess(const Options& options)
{
    const auto complain = [](const std::string& what) {
        std::cerr << "ebbline assess: " << what << "\n";
        return badInput;
    };
    const auto scores = rowsOf<exchange::ScoreRow>(options.scores, exchange::readScores, std::cerr);
    if (!scores)
        return badInput;
    std::vector<exchange::SignRow> signs;
    if (!options.signs.empty()) {
        auto read = rowsOf<exchange::SignRow>(options.signs, exchange::readSigns, std::cerr);
        if (!read)
            return badInput;
        signs = std::move(*read);
    }
    triggers::Protocol protocol = triggers::defaultProtocol();
    if (!options.protocol.empty()) {
        const auto text = readFile(options.protocol);
        auto read = text ? protocolFromText(*text) : fail(text.error());
        if (!read)
            return complain(options.protocol + ": " + read.error().detail);
        protocol = std::move(*read);
    }
    const auto courses = tableCourses(*scores, signs);
    if (!courses)
        return complain(courses.error().detail);

    const TableEnd end = tableEnd(*scores, signs, clock::SystemClock().now());
    if (end.ahead > 0)
        std::cerr << "ebbline assess: note: " << end.ahead
                  << " rows lie more than a day ahead of this computer's clock; they are judged as written, and nobody is called silent for them\n";
    std::vector<exchange::FindingRow> findings;
    for (const auto& [name, course] : *courses)
        for (exchange::FindingRow& row : judged(name, course, protocol, end.at))
            findings.push_back(std::move(row));
    if (const Done written = writeFile(options.out, exchange::writeFindings(findings)); !written) {
        std::cerr << "ebbline assess: " << options.out << ": " << written.error().detail << "\n";
        return failed;
    }
    std::cout << findings.size() << " findings in " << courses->size() << " courses\n";
    return fine;
}

}  // namespace

void addAssess(CLI::App& app, std::function<int()>& run)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("assess", "Judge a table of scores and signs by the rules of the phone");
    command->footer("A table has no temperature: fever, which the phone asks for, is not judged here.\n"
                    "Tables: docs/formats/tables.md. A bad row is named with line and column, and nothing is written.\n"
                    "Example: ebbline assess --scores scores.csv --signs signs.csv --out findings.csv");
    command->add_option("--scores", options->scores, "Table of scores (CSV)")->required();
    command->add_option("--signs", options->signs, "Table of warning signs (CSV)");
    command->add_option("--protocol", options->protocol, "Protocol to judge by (JSON); without it the default one");
    command->add_option("--out", options->out, "Where the findings go (CSV)")->required();
    command->callback([options, &run] { run = [options] { return assess(*options); }; });
}

}  // namespace ebbline::tool
