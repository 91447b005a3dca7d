#include "app/tool/course_tables.h"

#include "core/clock/iso8601.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>

namespace ebbline::tool {

namespace {

constexpr auto maximumFile = std::uintmax_t{300} << 20;

}  // namespace

Result<std::string> readFile(const std::string& file)
{
    std::error_code error;
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error)
        return fail(Reason::notFound, "cannot be read: " + error.message());
    if (size > maximumFile)
        return fail(Reason::tooLarge, "larger than 300 MiB");
    std::ifstream input(file, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(input), {}};
    if (!input.good() && !input.eof())
        return fail(Reason::storageFailed, "cannot be read");
    return bytes;
}

Done writeFile(const std::string& file, std::string_view bytes)
{
    std::error_code unknown;
    const auto kind = std::filesystem::status(file, unknown).type();
    // A pipe or a device is written to as it is.
    const bool asItIs = kind != std::filesystem::file_type::regular && kind != std::filesystem::file_type::not_found;
    const std::string beside = asItIs ? file : file + ".part";
    {
        std::ofstream out(beside, std::ios::binary | std::ios::trunc);
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        out.flush();
        if (!out) {
            std::error_code ignored;
            if (!asItIs)
                std::filesystem::remove(beside, ignored);
            return fail(Reason::storageFailed, "cannot be written");
        }
    }
    if (asItIs)
        return {};
    std::error_code error;
    std::filesystem::rename(beside, file, error);
    if (error)
        return fail(Reason::storageFailed, "cannot be written: " + error.message());
    return {};
}

std::map<std::string, triggers::CourseInput> coursesOf(const std::vector<exchange::ScoreRow>& rows)
{
    std::map<std::string, std::map<clock::Instant, triggers::Observation>> entries;
    std::map<std::string, triggers::CourseInput> courses;
    for (const exchange::ScoreRow& row : rows) {
        courses[row.course].treated = row.treatedAt;
        triggers::Observation& entry = entries[row.course][row.enteredAt.at];
        entry.at = row.enteredAt;
        entry.scores.insert_or_assign({row.symptom, row.side}, row.score);
    }
    for (auto& [name, course] : courses) {
        bool ownDayZero = false;
        for (const auto& [at, entry] : entries[name]) {
            ownDayZero = ownDayZero || (at != course.treated.at && clock::dayOfRecovery(course.treated, entry.at) <= 0);
        }
        for (auto& [at, entry] : entries[name]) {
            if (at == course.treated.at) {
                course.baseline = entry.scores;
                if (ownDayZero)
                    continue;
            }
            course.observations.push_back(std::move(entry));
        }
    }
    return courses;
}

namespace {

/// `line` of the table of truth: its cells hold no line breaks, so a row is a line.
Done checkOnset(const exchange::TruthRow& row, std::size_t line, const triggers::CourseInput& course)
{
    if (!row.onsetAt)
        return {};
    clock::Instant last = rehearsal::endOf(course).at;
    for (const triggers::Observation& observation : course.observations)
        last = std::max(last, observation.at.at);
    const bool early = row.onsetAt->at < course.treated.at;
    if (!early && row.onsetAt->at <= last)
        return {};
    return fail(Reason::outOfRange, "table of truth, line " + std::to_string(line) + ": the onset of course "
                                        + exchange::quotedCell(row.course) + ", " + clock::toIso8601(*row.onsetAt)
                                        + (early ? ", lies before its treatment" : ", lies after its last row and after day 21"));
}

}  // namespace

Result<std::vector<rehearsal::KnownCourse>> knownCourses(const std::vector<exchange::ScoreRow>& scores,
                                                         const std::vector<exchange::TruthRow>& truth)
{
    std::map<std::string, triggers::CourseInput> inputs = coursesOf(scores);
    for (std::size_t i = 0; i < truth.size(); ++i)
        if (const auto course = inputs.find(truth[i].course); course != inputs.end())
            if (const Done checked = checkOnset(truth[i], i + 2, course->second); !checked)
                return fail(checked.error());
    std::map<std::string, rehearsal::Truth> truths;
    for (const exchange::TruthRow& row : truth) {
        const auto [place, fresh] = truths.try_emplace(row.course, rehearsal::Truth{row.kind, row.onsetAt, row.side});
        const auto& known = place->second.onset;
        if (!fresh && row.onsetAt && (!known || row.onsetAt->at < known->at))
            place->second = {row.kind, row.onsetAt, row.side};
    }
    std::vector<rehearsal::KnownCourse> courses;
    for (auto& [name, input] : inputs) {
        const auto found = truths.find(name);
        if (found == truths.end())
            return fail(Reason::notFound, "course " + exchange::quotedCell(name) + " has scores and no row in the table of truth");
        courses.push_back({name, std::move(input), std::move(found->second)});
        truths.erase(found);
    }
    if (!truths.empty())
        return fail(Reason::notFound, "course " + exchange::quotedCell(truths.begin()->first)
                                          + " has a truth and no row in the table of scores");
    return courses;
}

std::vector<exchange::ScoreRow> scoreRowsOf(const rehearsal::KnownCourse& course)
{
    std::vector<exchange::ScoreRow> rows;
    const auto add = [&](const clock::Moment& at, const auto& scores) {
        for (const auto& [stream, score] : scores)
            rows.push_back({course.name, course.input.treated, at, stream.symptom, stream.side, score});
    };
    add(course.input.treated, course.input.baseline);
    for (const triggers::Observation& observation : course.input.observations)
        add(observation.at, observation.scores);
    return rows;
}

std::vector<exchange::SignRow> signRowsOf(const rehearsal::KnownCourse& course)
{
    std::vector<exchange::SignRow> rows;
    for (const rehearsal::TickedSigns& ticked : course.signs)
        for (const recovery::Sign sign : ticked.signs)
            rows.push_back({course.name, course.input.treated, ticked.at, sign, true});
    return rows;
}

exchange::TruthRow truthRowOf(const rehearsal::KnownCourse& course)
{
    return {course.name, course.truth.kind, course.truth.onset, course.truth.side};
}

}  // namespace ebbline::tool
