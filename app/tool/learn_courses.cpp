#include "app/tool/learn_courses.h"

#include "app/tool/course_tables.h"

#include "core/rehearsal/taught.h"

#include <algorithm>
#include <map>

namespace ebbline::tool {

namespace {

constexpr std::string_view unknownKind = "silent";

void addOnce(std::vector<std::string>& words, std::string_view word)
{
    if (!word.empty() && std::find(words.begin(), words.end(), word) == words.end())
        words.emplace_back(word);
}

std::map<std::string, learning::Outcome> outcomesOf(const std::vector<exchange::TruthRow>& truth)
{
    std::map<std::string, learning::Outcome> outcomes;
    for (const exchange::TruthRow& row : truth) {
        learning::Outcome& outcome = outcomes[row.course];
        if (row.kind == exchange::plainKind || row.kind == unknownKind)
            continue;
        outcome.complicated = true;
        addOnce(outcome.kinds, row.kind);
    }
    // Who fell silent and had nothing else told of her: nobody knows.
    for (const exchange::TruthRow& row : truth)
        if (row.kind == unknownKind && !outcomes[row.course].complicated)
            outcomes[row.course].kinds = {std::string(unknownKind)};
    return outcomes;
}

}  // namespace

Result<std::vector<learning::PastCourse>> pastCourses(const std::vector<exchange::ScoreRow>& scores,
                                                      const std::vector<exchange::TruthRow>& truth,
                                                      const std::vector<exchange::PlacementRow>& placements,
                                                      const std::vector<exchange::RiskRow>& risks)
{
    // The same pairing of scores and truth as for every other subcommand.
    const auto known = knownCourses(scores, truth);
    if (!known)
        return fail(known.error());
    const auto outcomes = outcomesOf(truth);
    std::vector<learning::PastCourse> courses;
    std::map<std::string, std::size_t> place;
    for (const rehearsal::KnownCourse& one : *known) {
        learning::PastCourse course;
        course.name = one.name;
        course.treated = one.input.treated;
        course.days = rehearsal::taughtBy(one.input);
        const learning::Outcome& outcome = outcomes.at(one.name);
        if (outcome.complicated || outcome.kinds.empty())
            course.outcome = outcome;
        place[course.name] = courses.size();
        courses.push_back(std::move(course));
    }
    for (const exchange::PlacementRow& row : placements) {
        const auto found = place.find(row.course);
        if (found == place.end())
            return fail(Reason::notFound, "course '" + row.course + "' has placements and no row in the table of scores");
        learning::PastCourse& course = courses[found->second];
        course.clinic = row.clinic;
        if (course.technique.empty())
            course.technique = row.technique;
        else if (!row.technique.empty() && course.technique != row.technique)
            course.technique = "mixed";
        if (row.zone)
            addOnce(course.zones, recovery::word(*row.zone));
        // The table names no product.
        if (const learning::PackLot lot{row.lot}; !lot.printed.empty() && std::ranges::find(course.lots, lot) == course.lots.end())
            course.lots.push_back(lot);
    }
    for (const exchange::RiskRow& row : risks) {
        const auto found = place.find(row.course);
        if (found == place.end())
            return fail(Reason::notFound, "table of risks, line " + std::to_string(row.place.line) + ": course "
                                              + exchange::quotedCell(row.course) + " has no row in the table of scores");
        courses[found->second].risk = row.risk;
    }
    return courses;
}

}  // namespace ebbline::tool
