#include "core/rehearsal/taught.h"

#include "core/triggers/course_watch.h"

#include <algorithm>
#include <map>

namespace ebbline::rehearsal {

bands::TaughtCourse taughtBy(const triggers::CourseInput& course)
{
    std::map<std::pair<recovery::Stream, int>, std::vector<int>> days;
    for (const triggers::Observation& observation : course.observations) {
        const int day = std::max(0, clock::dayOfRecovery(course.treated, observation.at));
        for (const auto& [stream, score] : observation.scores)
            days[{stream, day}].push_back(score.points());
    }
    bands::TaughtCourse scores;
    scores.reserve(days.size());
    for (auto& [key, points] : days) {
        const auto middle = points.begin() + static_cast<std::ptrdiff_t>((points.size() - 1) / 2);
        std::nth_element(points.begin(), middle, points.end());
        scores.push_back({key.first.symptom, key.first.side, key.second, *middle});
    }
    return scores;
}

bands::Movement sidesMovement(std::span<const triggers::CourseInput* const> courses, const bands::Band& seed)
{
    const bands::Movement& seedSides = seed.movements().sides;
    if (courses.size() < static_cast<std::size_t>(bands::fewestCourses))
        return seedSides;
    std::vector<bands::Series> sides;
    for (const triggers::CourseInput* course : courses)
        for (bands::Series& series : triggers::differencesIn(*course))
            if (series.size() > 1)
                sides.push_back(std::move(series));
    return bands::fitMovement(sides, seedSides);
}

bands::Movement sumsMovement(std::span<const triggers::CourseInput* const> courses, const bands::Band& band)
{
    const bands::Movement& assumed = band.movements().sums;
    if (courses.size() < static_cast<std::size_t>(bands::fewestCourses))
        return assumed;
    std::vector<bands::Series> sums;
    for (const triggers::CourseInput* course : courses)
        for (bands::Series& series : triggers::sumsIn(*course, band))
            if (series.size() > 1)
                sums.push_back(std::move(series));
    return bands::fitMovement(sums, assumed);
}

Result<bands::Band> withSums(const bands::Band& band, std::span<const triggers::CourseInput* const> courses)
{
    bands::Movements movements = band.movements();
    movements.sums = sumsMovement(courses, band);
    return bands::Band::create(band.provenance(), band.table(), movements);
}

}  // namespace ebbline::rehearsal
