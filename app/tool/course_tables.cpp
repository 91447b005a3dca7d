#include "app/tool/course_tables.h"

#include "core/clock/iso8601.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>

namespace ebbline::tool {

Result<std::string> readFile(const std::string& file)
{
    std::error_code error;
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    if (error)
        return fail(Reason::notFound, "cannot be read: " + error.message());
    if (size > maximumTable)
        return fail(Reason::tooLarge, "larger than " + std::to_string(maximumTable >> 20) + " MiB");
    std::ifstream input(file, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(input), {}};
    if (!input.good() && !input.eof())
        return fail(Reason::storageFailed, "cannot be read");
    return bytes;
}

Done checkReadable(const std::string& file, std::uintmax_t bytes, std::size_t rows, std::size_t courses)
{
    if (bytes <= maximumTable && rows <= exchange::maximumTableRows)
        return {};
    // Two digits, rounded down: courses differ in length.
    std::uintmax_t fitting = courses;
    if (bytes > maximumTable)
        fitting = courses * maximumTable / bytes;
    if (rows > exchange::maximumTableRows)
        fitting = std::min<std::uintmax_t>(fitting, courses * exchange::maximumTableRows / rows);
    std::uintmax_t step = 1;
    while (fitting / step >= 100)
        step *= 10;
    fitting -= fitting % step;
    return fail(Reason::tooLarge, file + ": would be larger than the " + std::to_string(maximumTable >> 20) + " MiB or have more than the "
                                      + std::to_string(exchange::maximumTableRows) + " rows that ebbline reads again; about " + std::to_string(fitting) + " such courses fit");
}

namespace {

/// A pipe or a device is written to as it is.
bool isTakenAsItIs(const std::string& file)
{
    std::error_code unknown;
    const auto kind = std::filesystem::status(file, unknown).type();
    return kind != std::filesystem::file_type::regular && kind != std::filesystem::file_type::not_found;
}

std::string besideOf(const std::string& file)
{
    return file + ".part";
}

bool put(const std::string& file, std::string_view bytes)
{
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    out.close();
    return static_cast<bool>(out);
}

std::unexpected<Error> unwritten(const Output& output, const std::string& why = {})
{
    return fail(Reason::storageFailed, output.file + ": cannot be written" + (why.empty() ? "" : ": " + why));
}

/// All beside their places, then the devices: \returns what cannot be written.
Done putBeside(const std::vector<Output>& outputs)
{
    for (const bool asItIs : {false, true})
        for (const Output& output : outputs)
            if (isTakenAsItIs(output.file) == asItIs && !put(asItIs ? output.file : besideOf(output.file), output.bytes))
                return unwritten(output);
    return {};
}

}  // namespace

Done writeFiles(const std::vector<Output>& outputs)
{
    Done done = putBeside(outputs);
    for (const Output& output : outputs) {
        if (isTakenAsItIs(output.file))
            continue;
        std::error_code error;
        if (done)
            std::filesystem::rename(besideOf(output.file), output.file, error);
        if (done && error)
            done = unwritten(output, error.message());
        if (!done)
            std::filesystem::remove(besideOf(output.file), error);
    }
    return done;
}

Done writeFile(const std::string& file, std::string_view bytes)
{
    if (const Done written = writeFiles({{file, std::string(bytes)}}); !written)
        return fail(Reason::storageFailed, written.error().detail.substr(file.size() + 2));
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
        for (auto& [at, entry] : entries[name]) {
            if (at == course.treated.at) {
                course.baseline = std::move(entry.scores);
                continue;
            }
            course.observations.push_back(std::move(entry));
        }
    }
    return courses;
}

namespace {

/// `table of truth, line 3`.
std::string lineOf(const exchange::TruthRow& row)
{
    return "table of truth, line " + std::to_string(row.place.line);
}

Done checkKind(const exchange::TruthRow& row)
{
    if (rehearsal::kindFromWord(row.kind) || (row.kind.starts_with(otherKind) && row.kind.size() > otherKind.size()))
        return {};
    std::string known;
    for (const auto kind : rehearsal::allKinds)
        known.append(rehearsal::word(kind)).append(" ");
    for (const auto kind : rehearsal::rareKinds)
        known.append(rehearsal::word(kind)).append(" ");
    return fail(Reason::malformed, lineOf(row) + ", column " + std::to_string(row.place.column) + " (kind): want one of " + known + "or "
                                       + std::string(otherKind) + " and a word for any other complication, found "
                                       + exchange::quotedCell(row.kind));
}

Done checkOnset(const exchange::TruthRow& row, const triggers::CourseInput& course)
{
    if (!row.onsetAt)
        return {};
    clock::Instant last = rehearsal::endOf(course).at;
    for (const triggers::Observation& observation : course.observations)
        last = std::max(last, observation.at.at);
    const bool early = row.onsetAt->at < course.treated.at;
    if (!early && row.onsetAt->at <= last)
        return {};
    return fail(Reason::outOfRange, lineOf(row) + ": the onset of course "
                                        + exchange::quotedCell(row.course) + ", " + clock::toIso8601(*row.onsetAt)
                                        + (early ? ", lies before its treatment" : ", lies after its last row and after day 21"));
}

}  // namespace

Result<std::vector<rehearsal::KnownCourse>> knownCourses(const std::vector<exchange::ScoreRow>& scores,
                                                         const std::vector<exchange::TruthRow>& truth)
{
    std::map<std::string, triggers::CourseInput> inputs = coursesOf(scores);
    for (const exchange::TruthRow& row : truth) {
        const auto course = inputs.find(row.course);
        const Done known = checkKind(row);
        const Done checked = known && course != inputs.end() ? checkOnset(row, course->second) : known;
        if (!checked)
            return fail(checked.error());
    }
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

std::vector<exchange::TemperatureRow> temperatureRowsOf(const rehearsal::KnownCourse& course)
{
    std::vector<exchange::TemperatureRow> rows;
    rows.reserve(course.temperatures.size());
    for (const rehearsal::MeasuredTemperature& measured : course.temperatures)
        rows.push_back({course.name, course.input.treated, measured.at, measured.temperature});
    return rows;
}

exchange::TruthRow truthRowOf(const rehearsal::KnownCourse& course)
{
    return {course.name, course.truth.kind, course.truth.onset, course.truth.side};
}

}  // namespace ebbline::tool
