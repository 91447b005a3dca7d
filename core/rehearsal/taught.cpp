#include "core/rehearsal/taught.h"

#include "core/bands/eligibility.h"
#include "core/bytes/reader.h"
#include "core/crypto/crypto.h"
#include "core/triggers/course_watch.h"

#include <algorithm>
#include <map>
#include <set>

namespace ebbline::rehearsal {

namespace {

constexpr std::string_view toldName = "ebbline course told 1";

void write(bytes::Writer& writer, const clock::Moment& moment)
{
    writer.u64(static_cast<std::uint64_t>(moment.at.time_since_epoch().count())).u16(static_cast<std::uint16_t>(moment.offset.count()));
}

void write(bytes::Writer& writer, const recovery::Scores& scores)
{
    writer.u32(static_cast<std::uint32_t>(scores.size()));
    for (const auto& [stream, score] : scores)
        writer.u8(static_cast<std::uint8_t>(stream.symptom))
            .u8(static_cast<std::uint8_t>(stream.side))
            .u8(static_cast<std::uint8_t>(score.points()));
}

}  // namespace

bytes::Array<32> toldBy(const triggers::CourseInput& course)
{
    std::vector<bytes::Bytes> entries;
    for (const triggers::Observation& observation : course.observations) {
        if (observation.scores.empty())
            continue;
        bytes::Writer writer;
        write(writer, observation.at);
        write(writer, observation.scores);
        entries.push_back(std::move(writer).bytes());
    }
    std::sort(entries.begin(), entries.end());
    bytes::Writer writer;
    writer.raw(bytes::viewOf(toldName));
    write(writer, course.treated);
    write(writer, course.baseline);
    writer.u32(static_cast<std::uint32_t>(entries.size()));
    for (const bytes::Bytes& entry : entries)
        writer.raw(entry);
    return crypto::hash256(writer.bytes());
}

bands::Taught taughtAs(const recovery::CourseId& name, const triggers::CourseInput& course)
{
    return {name, taughtBy(course), toldBy(course)};
}

int observedDays(const triggers::CourseInput& course)
{
    std::set<int> days;
    for (const triggers::Observation& observation : course.observations)
        if (!observation.scores.empty())
            days.insert(std::max(0, clock::dayOfRecovery(course.treated, observation.at)));
    return static_cast<int>(std::distance(days.begin(), days.lower_bound(bands::courseDays)));
}

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
