#include "core/bands/learn_band.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ebbline::bands {

namespace {

constexpr double anyScore = 0.05;  // added to every answer of a day: none is impossible

using Counts = std::array<std::array<std::array<double, 11>, lastDay + 1>, 7>;

std::size_t rowOf(recovery::Symptom symptom)
{
    return static_cast<std::size_t>(symptom) - 1;
}

/// Both sides of a course share the weight of one.
void add(Counts& counts, const TaughtCourse& course)
{
    std::array<std::array<int, lastDay + 1>, 7> sides{};
    for (const DayScore& score : course)
        if (score.day >= 0 && score.day <= lastDay)
            ++sides[rowOf(score.symptom)][static_cast<std::size_t>(score.day)];
    for (const DayScore& score : course)
        if (score.day >= 0 && score.day <= lastDay) {
            const std::size_t day = static_cast<std::size_t>(score.day);
            counts[rowOf(score.symptom)][day][static_cast<std::size_t>(score.points)] +=
                1.0 / sides[rowOf(score.symptom)][day];
        }
}

Distribution shrunk(const Counts& counts, std::size_t row, std::size_t day, const Distribution& seed)
{
    const auto& days = counts[row];
    const auto& before = days[day > 0 ? day - 1 : day];
    const auto& after = days[day < lastDay ? day + 1 : day];
    Distribution weights{};
    double total = 0;
    for (std::size_t k = 0; k < weights.size(); ++k) {
        weights[k] = seedCourses * seed[k] + days[day][k] / 2 + before[k] / 4 + after[k] / 4 + anyScore;
        total += weights[k];
    }
    for (double& weight : weights)
        weight /= total;
    return weights;
}

double logLikelihood(std::span<const Series> cohort, std::size_t stride, const Movement& movement)
{
    double sum = 0;
    for (std::size_t i = 0; i < cohort.size(); i += stride) {
        double mean = 0;
        double variance = movement.start;
        double last = cohort[i].empty() ? 0 : cohort[i].front().first;
        for (const auto& [day, value] : cohort[i]) {
            variance += movement.drift * std::max(0.0, day - last);
            last = day;
            const double total = variance + movement.noise;
            const double surprise = value - mean;
            sum -= (std::log(total) + surprise * surprise / total) / 2;
            const double gain = variance / total;
            mean += gain * surprise;
            variance *= 1 - gain;
        }
    }
    return sum;
}

}  // namespace

Movement fitMovement(std::span<const Series> cohort, const Movement& from)
{
    if (cohort.empty())
        return from;
    const std::size_t stride = (cohort.size() + mostSeries - 1) / mostSeries;
    Movement best = from;
    double bestLikelihood = logLikelihood(cohort, stride, best);
    constexpr double least = 1e-4;
    constexpr double most = 10;
    for (const double factor : {2.0, 1.4, 1.15}) {
        bool better = true;
        while (better) {
            better = false;
            for (double Movement::*part : {&Movement::noise, &Movement::drift, &Movement::start})
                for (const double by : {factor, 1 / factor}) {
                    Movement tried = best;
                    tried.*part = std::clamp(std::max(tried.*part, least) * by, least, most);
                    const double likelihood = logLikelihood(cohort, stride, tried);
                    if (likelihood > bestLikelihood + 1e-6) {
                        bestLikelihood = likelihood;
                        best = tried;
                        better = true;
                    }
                }
        }
    }
    return best;
}

Result<Band::Table> learnTable(std::span<const TaughtCourse> courses, const Band& seed)
{
    Counts counts{};
    for (const TaughtCourse& course : courses) {
        for (const DayScore& score : course)
            if (score.points < 0 || score.points > 10)
                return fail(Reason::outOfRange, "points: want 0..10");
        add(counts, course);
    }
    Band::Table table{};
    for (const recovery::Symptom symptom : recovery::allSymptoms)
        for (std::size_t day = 0; day <= lastDay; ++day)
            table[rowOf(symptom)][day] =
                shrunk(counts, rowOf(symptom), day, seed.at(symptom, static_cast<int>(day)));
    return table;
}

Result<Band> learnBand(std::span<const TaughtCourse> courses, const Band& seed, Provenance provenance,
                       const Movement& sides)
{
    if (courses.empty())
        return fail(Reason::notEnough, "courses: want at least one");
    const Result<Band::Table> table = learnTable(courses, seed);
    if (!table)
        return fail(table.error());

    Movements movements = seed.movements();
    movements.sides = sides;
    provenance.courses = static_cast<int>(courses.size());
    provenance.assumption = false;
    Result<Band> band = Band::create(provenance, *table, movements);
    if (!band || courses.size() < static_cast<std::size_t>(fewestCourses))
        return band;

    // The movements are those of z in the new band.
    std::array<std::vector<Series>, 7> cohorts;
    for (const TaughtCourse& course : courses) {
        std::array<std::array<Series, 3>, 7> streams;
        for (const DayScore& score : course)
            streams[rowOf(score.symptom)][static_cast<std::size_t>(score.side)].emplace_back(
                score.day, band->z(score.symptom, score.day, score.points));
        for (std::size_t row = 0; row < streams.size(); ++row)
            for (Series& series : streams[row]) {
                std::sort(series.begin(), series.end());
                if (series.size() > 1)
                    cohorts[row].push_back(std::move(series));
            }
    }
    for (std::size_t row = 0; row < cohorts.size(); ++row)
        movements.score[row] = fitMovement(cohorts[row], movements.score[row]);
    return Band::create(std::move(provenance), *table, movements);
}

}  // namespace ebbline::bands
