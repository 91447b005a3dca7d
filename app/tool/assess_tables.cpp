#include "app/tool/assess_tables.h"

#include "app/tool/course_tables.h"
#include "core/clock/iso8601.h"
#include "core/triggers/judge.h"
#include "core/warnings/warnings.h"

#include <algorithm>
#include <utility>

namespace ebbline::tool {

namespace {

/// A course of the tables: what triggers see, and the entries that warnings see.
struct TableCourse {
    triggers::CourseInput input;
    exchange::Place told;  ///< the first row that says when she was treated, in the table of scores if it stands there
    std::string_view toldIn;  ///< the table of that row: `scores`, `signs`, `temperatures`
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
    for (const auto& [at, entry] : course.entries)
        if (at <= end)
            until.at = std::max(until.at, at);
    for (const triggers::Finding& finding : triggers::judgeArrived(course.input, protocol, until))
        rows.push_back({name, finding.raisedAt, std::string(triggers::word(finding.trigger)), finding.urgency,
                        finding.trigger == triggers::Trigger::silence ? std::nullopt : std::optional(finding.symptom()),
                        finding.stream.side, triggers::explain(finding)});
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return a.raisedAt.at < b.raisedAt.at; });
    return rows;
}

/// Where a row of signs or temperatures and the course disagree on the treatment.
template <typename Row>
std::string otherTreatment(std::string_view table, const Row& row, const TableCourse& course)
{
    return "table of " + std::string(table) + ", line " + std::to_string(row.place.line) + ", column " + std::to_string(row.place.column)
           + " (treated_at): course " + exchange::quotedCell(row.course) + " was treated at " + clock::toIso8601(course.input.treated)
           + " by line " + std::to_string(course.told.line) + " of the table of " + std::string(course.toldIn) + ", here at "
           + clock::toIso8601(row.treatedAt);
}

/// The entry that a row of signs or temperatures belongs to, of a course that it may be the first to tell of.
/// \returns Reason::malformed if it was treated at another time by what was read before.
template <typename Row>
Result<recovery::Entry*> entryOf(std::map<std::string, TableCourse>& courses, std::string_view table, const Row& row)
{
    const auto [place, fresh] = courses.try_emplace(row.course);
    TableCourse& course = place->second;
    if (fresh) {
        course.input.treated = row.treatedAt;
        course.told = row.place;
        course.toldIn = table;
    }
    // Instants: the same moment told by another clock is the same treatment, and the table of scores says which day it was.
    if (course.input.treated.at != row.treatedAt.at)
        return fail(Reason::malformed, otherTreatment(table, row, course));
    // An entry without scores is an entry: whoever answers a sign or measures is not silent.
    const auto& known = course.input.observations;
    if (std::none_of(known.begin(), known.end(),
                     [&](const triggers::Observation& o) { return o.at.at == row.enteredAt.at; }))
        course.input.observations.push_back({row.enteredAt, {}});
    return &entryAt(course, row.enteredAt);
}

/// The tables as courses. \returns Reason::malformed if they disagree on when a course began.
Result<std::map<std::string, TableCourse>> tableCourses(const std::vector<exchange::ScoreRow>& scores,
                                                        const std::vector<exchange::SignRow>& signs,
                                                        const std::vector<exchange::TemperatureRow>& temperatures)
{
    std::map<std::string, TableCourse> courses;
    for (auto& [name, input] : coursesOf(scores))
        courses[name].input = std::move(input);
    // What stands at the very moment of the treatment is the practitioner's and no entry: no warning speaks of it.
    for (const exchange::ScoreRow& row : scores) {
        TableCourse& course = courses[row.course];
        if (course.toldIn.empty()) {
            course.told = row.place;
            course.toldIn = "scores";
        }
        if (row.enteredAt.at != row.treatedAt.at)
            entryAt(course, row.enteredAt).scores.insert_or_assign({row.symptom, row.side}, row.score);
    }
    for (const exchange::SignRow& row : signs) {
        const auto entry = entryOf(courses, "signs", row);
        if (!entry)
            return fail(entry.error());
        (row.present ? (*entry)->present : (*entry)->absent).insert(row.sign);
    }
    for (const exchange::TemperatureRow& row : temperatures) {
        const auto entry = entryOf(courses, "temperatures", row);
        if (!entry)
            return fail(entry.error());
        (*entry)->temperature = row.temperature;
    }
    return courses;
}

/// Up to when silence is judged: the last row of anybody. A row that lies in the future would make
/// everybody else silent, so it counts only where all rows do.
struct TableEnd {
    clock::Instant at{};
    std::size_t ahead = 0;  ///< rows more than a day after now
    bool allAhead = false;
};

TableEnd tableEnd(const std::vector<exchange::ScoreRow>& scores, const std::vector<exchange::SignRow>& signs,
                  const std::vector<exchange::TemperatureRow>& temperatures, clock::Instant now)
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
    for (const exchange::TemperatureRow& row : temperatures)
        take(row.enteredAt.at);
    end.allAhead = end.ahead > 0 && end.ahead == scores.size() + signs.size() + temperatures.size();
    if (end.allAhead)
        end.at = last;
    return end;
}

}  // namespace

Result<Assessed> assessTables(const std::vector<exchange::ScoreRow>& scores, const std::vector<exchange::SignRow>& signs,
                              const std::vector<exchange::TemperatureRow>& temperatures, const triggers::Protocol& protocol,
                              clock::Instant now)
{
    const auto courses = tableCourses(scores, signs, temperatures);
    if (!courses)
        return fail(courses.error());
    if (courses->empty())
        return fail(Reason::notEnough, "no course");
    const TableEnd end = tableEnd(scores, signs, temperatures, now);
    Assessed assessed{{}, courses->size(), end.ahead, end.allAhead};
    for (const auto& [name, course] : *courses)
        for (exchange::FindingRow& row : judged(name, course, protocol, end.at))
            assessed.findings.push_back(std::move(row));
    return assessed;
}

}  // namespace ebbline::tool
