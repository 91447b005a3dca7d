#include "core/bands/coverage.h"

#include "core/statistics/clustered_share.h"

#include <algorithm>

namespace ebbline::bands {

namespace {

/// Readings of one course.
struct Tally {
    long readings = 0;
    long above90 = 0;
    long above97 = 0;
    double promised90 = 0;  ///< sum over the readings
    double promised97 = 0;

    void add(const Tally& other)
    {
        readings += other.readings;
        above90 += other.above90;
        above97 += other.above97;
        promised90 += other.promised90;
        promised97 += other.promised97;
    }
};

using CourseTally = std::array<Tally, 7>;

double probabilityAbove(const Band& band, recovery::Symptom symptom, int day, int points)
{
    double above = 0;
    const Distribution& distribution = band.at(symptom, day);
    for (std::size_t k = static_cast<std::size_t>(points) + 1; k < distribution.size(); ++k)
        above += distribution[k];
    return above;
}

CourseTally tallyOf(const TaughtCourse& course, const Band& band)
{
    CourseTally tally{};
    for (const DayScore& score : course) {
        if (score.day < 0 || score.day > lastDay)
            continue;
        const int high90 = band.inner(score.symptom, score.day).high;
        const int high97 = band.outer(score.symptom, score.day).high;
        Tally& of = tally[static_cast<std::size_t>(score.symptom) - 1];
        ++of.readings;
        of.above90 += score.points > high90 ? 1 : 0;
        of.above97 += score.points > high97 ? 1 : 0;
        of.promised90 += probabilityAbove(band, score.symptom, score.day, high90);
        of.promised97 += probabilityAbove(band, score.symptom, score.day, high97);
    }
    return tally;
}

Above aboveOf(const std::vector<Tally>& courses, long Tally::*above, double Tally::*promised, double confidence)
{
    std::vector<statistics::Group> groups;
    Above result;
    double readings = 0;
    for (const Tally& course : courses) {
        groups.push_back({course.*above, course.readings});
        result.promised += course.*promised;
        readings += static_cast<double>(course.readings);
    }
    result.promised /= readings;
    if (const auto share = statistics::clusteredShare(groups, confidence)) {
        result.seen = share->share;
        result.low = share->interval.low;
        result.high = share->interval.high;
    }
    return result;
}

Fit fitOf(const Above& above, double tolerated)
{
    if (above.low > above.promised + tolerated)
        return Fit::tooNarrow;
    if (above.high < above.promised - tolerated)
        return Fit::tooWide;
    return Fit::holds;
}

/// Too narrow weighs more than too wide, either more than holding.
Fit worse(Fit one, Fit other)
{
    for (const Fit fit : {Fit::tooNarrow, Fit::tooWide})
        if (one == fit || other == fit)
            return fit;
    return Fit::holds;
}

/// In the order of the ids, so that the folds do not depend on the order of the file.
Result<std::vector<const Taught*>> ordered(std::span<const Taught> courses)
{
    std::vector<const Taught*> sorted;
    for (const Taught& course : courses)
        sorted.push_back(&course);
    std::sort(sorted.begin(), sorted.end(), [](const Taught* a, const Taught* b) { return a->course < b->course; });
    const auto twice = std::adjacent_find(sorted.begin(), sorted.end(),
                                          [](const Taught* a, const Taught* b) { return a->course == b->course; });
    if (twice != sorted.end())
        return fail(Reason::alreadyExists, "courses: one is given twice");
    return sorted;
}

/// What was counted, course by course.
struct Counted {
    std::array<std::vector<Tally>, 7> bySymptom;
    std::vector<Tally> overall;

    void add(const CourseTally& tally)
    {
        Tally all;
        for (std::size_t row = 0; row < tally.size(); ++row) {
            if (tally[row].readings > 0)
                bySymptom[row].push_back(tally[row]);
            all.add(tally[row]);
        }
        if (all.readings > 0)
            overall.push_back(all);
    }
};

/// Without the share over all symptoms together.
Coverage bySymptoms(const Counted& counted, std::size_t courses)
{
    Coverage coverage;
    coverage.courses = static_cast<std::int32_t>(courses);
    const auto judged = [](const auto& tallies) {
        return tallies.size() >= static_cast<std::size_t>(fewestForSymptom);
    };
    const auto judgedSymptoms = std::count_if(counted.bySymptom.begin(), counted.bySymptom.end(), judged);
    const double confidence = 1 - 0.05 / static_cast<double>(std::max<std::ptrdiff_t>(1, 2 * judgedSymptoms));
    for (std::size_t row = 0; row < counted.bySymptom.size(); ++row) {
        const std::vector<Tally>& tallies = counted.bySymptom[row];
        SymptomCoverage& of = coverage.symptoms[row];
        of.symptom = recovery::allSymptoms[row];
        of.courses = static_cast<std::int32_t>(tallies.size());
        for (const Tally& course : tallies)
            of.readings += static_cast<std::int32_t>(course.readings);
        if (!judged(tallies))
            continue;
        of.above90 = aboveOf(tallies, &Tally::above90, &Tally::promised90, confidence);
        of.above97 = aboveOf(tallies, &Tally::above97, &Tally::promised97, confidence);
        of.fit = worse(fitOf(of.above90, tolerated90), fitOf(of.above97, tolerated97));
    }
    return coverage;
}

}  // namespace

Result<Coverage> crossValidate(std::span<const Taught> courses, const Band& seed)
{
    if (courses.size() < static_cast<std::size_t>(folds))
        return fail(Reason::notEnough, "courses: want at least " + std::to_string(folds) + " to leave a tenth out");
    const auto sorted = ordered(courses);
    if (!sorted)
        return fail(sorted.error());

    Counted counted;
    for (std::size_t fold = 0; fold < folds; ++fold) {
        std::vector<TaughtCourse> others;
        for (std::size_t i = 0; i < sorted->size(); ++i)
            if (i % folds != fold)
                others.push_back((*sorted)[i]->days);
        const auto table = learnTable(others, seed);
        if (!table)
            return fail(table.error());
        const auto band = Band::create({}, *table, seed.movements());
        if (!band)
            return fail(band.error());
        for (std::size_t i = fold; i < sorted->size(); i += folds)
            counted.add(tallyOf((*sorted)[i]->days, *band));
    }
    if (counted.overall.size() < 2)
        return fail(Reason::notEnough, "courses: none has a score on days 0 to " + std::to_string(lastDay));
    Coverage coverage = bySymptoms(counted, courses.size());
    coverage.overall90 = aboveOf(counted.overall, &Tally::above90, &Tally::promised90, 0.95);
    return coverage;
}

Result<Coverage> coverageOf(std::span<const Taught> courses, const Band& band)
{
    const auto sorted = ordered(courses);
    if (!sorted)
        return fail(sorted.error());
    Counted counted;
    for (const Taught* course : *sorted)
        counted.add(tallyOf(course->days, band));
    Coverage coverage = bySymptoms(counted, courses.size());
    // Of hardly anybody nothing is shown: everything may lie above.
    coverage.overall90 = counted.overall.size() < 2 ? Above{.high = 1}
                                                    : aboveOf(counted.overall, &Tally::above90, &Tally::promised90, 0.95);
    return coverage;
}

std::optional<Error> objection(const Coverage& coverage)
{
    if (coverage.courses < fewestCourses)
        return Error{Reason::notEnough, "band: " + std::to_string(coverage.courses) + " courses, want at least "
                                            + std::to_string(fewestCourses)};
    for (const SymptomCoverage& of : coverage.symptoms) {
        const std::string name(recovery::word(of.symptom));
        if (of.fit == Fit::tooNarrow)
            return Error{Reason::refused, "band: too narrow for " + name + " on courses that it has not seen"};
        if (of.fit == Fit::tooWide)
            return Error{Reason::refused, "band: too wide for " + name + " on courses that it has not seen"};
    }
    if (!(coverage.overall90.high <= mostAbove90))
        return Error{Reason::notEnough, "band: it is not shown that at most "
                                            + std::to_string(static_cast<int>(100 * mostAbove90))
                                            + " % of readings lie above its 90th centile"};
    return std::nullopt;
}

}  // namespace ebbline::bands
