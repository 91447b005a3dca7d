#include "core/clock/iso8601.h"
#include "core/exchange/table_reader.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

namespace ebbline::exchange {

namespace {

constexpr std::size_t maximumCourse = 100;
constexpr std::size_t maximumKind = 40;

template <typename T>
std::optional<T> taken(TableReader& reader, std::size_t column, Result<T> result, std::string_view wanted)
{
    if (result)
        return *std::move(result);
    reader.fault(column, "want " + std::string(wanted) + ", found " + quotedCell(reader.cell(column)));
    return std::nullopt;
}

std::optional<clock::Moment> momentOf(TableReader& reader, std::size_t column)
{
    auto parsed = clock::parseIso8601(reader.cell(column));
    const bool impossible = !parsed && parsed.error().reason == Reason::outOfRange;
    return taken(reader, column, std::move(parsed),
                 impossible ? "a date and time that exist" : "a time like 2027-03-28T14:05:00+02:00");
}

std::optional<recovery::Side> sideOf(TableReader& reader, std::size_t column)
{
    return taken(reader, column, recovery::sideFromWord(reader.cell(column)), "L, R or -");
}

template <typename T, std::size_t N>
std::string choice(const std::array<T, N>& all)
{
    std::string out = "one of";
    for (const T value : all)
        out.append(" ").append(recovery::word(value));
    return out;
}

std::optional<recovery::Symptom> symptomOf(TableReader& reader, std::size_t column)
{
    static const std::string wanted = choice(recovery::allSymptoms);
    return taken(reader, column, recovery::symptomFromWord(reader.cell(column)), wanted);
}

std::optional<recovery::Score> scoreOf(TableReader& reader, std::size_t column)
{
    const std::string_view cell = reader.cell(column);
    int points = -1;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), points);
    const bool whole = error == std::errc{} && end == cell.data() + cell.size();
    return taken(reader, column, recovery::Score::of(whole ? points : -1), "a whole number 0..10");
}

/// Digits and a decimal point: a comma, a unit or an exponent is a fault, and so is what a thermometer cannot show.
std::optional<recovery::Temperature> temperatureOf(TableReader& reader, std::size_t column)
{
    const std::string_view cell = reader.cell(column);
    double degrees = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), degrees, std::chars_format::fixed);
    const bool whole = error == std::errc{} && end == cell.data() + cell.size();
    return taken(reader, column, recovery::Temperature::celsius(whole ? degrees : 0), "degrees Celsius from 30 to 45, such as 38.2");
}

std::optional<bool> presentOf(TableReader& reader, std::size_t column)
{
    std::string word(reader.cell(column));
    std::ranges::transform(word, word.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    if (word == "yes" || word == "true" || word == "1")
        return true;
    if (word == "no" || word == "false" || word == "0")
        return false;
    reader.fault(column, "want yes or no, found " + quotedCell(reader.cell(column)));
    return std::nullopt;
}

/// A name without control characters, freed from its guard.
std::optional<std::string> nameOf(TableReader& reader, std::size_t column)
{
    const std::string_view name = unguarded(reader.cell(column));
    const bool control = std::ranges::any_of(
        name, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
    if (!name.empty() && name.size() <= maximumCourse && !control)
        return std::string(name);
    reader.fault(column, "want a name of 1 to 100 bytes without control characters, found "
                             + quotedCell(reader.cell(column)));
    return std::nullopt;
}

/// Course, treated_at and entered_at, which scores, signs and temperatures begin with.
struct Head {
    std::size_t course;  ///< number of the course in the order of appearance
    std::string name;
    clock::Moment treatedAt;  ///< as the first row of the course tells it
    clock::Moment enteredAt;
    Place place;
};

class HeadReader {
public:
    static constexpr std::size_t course = 0, treatedAt = 1, enteredAt = 2;

    std::optional<Head> read(TableReader& reader)
    {
        auto name = nameOf(reader, course);
        auto treated = momentOf(reader, treatedAt);
        auto entered = momentOf(reader, enteredAt);
        if (treated && entered && entered->at < treated->at) {
            reader.fault(enteredAt, "before the treatment of " + clock::toIso8601(*treated));
            return std::nullopt;
        }
        if (!name || !treated || !entered)
            return std::nullopt;
        const auto [place, fresh] = m_courses.try_emplace(*name, Seen{m_courses.size(), *treated, reader.line()});
        // The same instant told by another clock is the same treatment.
        if (place->second.treatedAt.at != treated->at) {
            reader.fault(treatedAt, "differs from line " + std::to_string(place->second.line)
                                        + ", the first row of this course");
            return std::nullopt;
        }
        return Head{place->second.number, std::move(*name), place->second.treatedAt, *entered, {reader.line(), reader.placeOf(treatedAt)}};
    }

private:
    struct Seen {
        std::size_t number;
        clock::Moment treatedAt;
        std::size_t line;
    };
    std::map<std::string, Seen, std::less<>> m_courses;
};

/// What was answered when: two rows with the same key must agree.
struct Answer {
    std::tuple<std::size_t, clock::Instant, int, int> key;
    int value;
    std::size_t line;
};

void faultContradictions(TableReader& reader, std::vector<Answer> answers, std::size_t column)
{
    if (!reader.ok())
        return;
    std::ranges::stable_sort(answers, {}, &Answer::key);
    std::vector<std::pair<std::size_t, std::size_t>> lines;
    for (std::size_t i = 1; i < answers.size(); ++i)
        if (answers[i].key == answers[i - 1].key && answers[i].value != answers[i - 1].value)
            lines.emplace_back(answers[i].line, answers[i - 1].line);
    std::ranges::sort(lines);
    for (const auto& [line, earlier] : lines)
        reader.faultAt(line, column,
                       "the same was answered differently for the same moment in line " + std::to_string(earlier));
}

template <typename Row>
Read<Row> finished(TableReader& reader, std::vector<Row> rows)
{
    if (reader.ok())
        return rows;
    return std::unexpected(std::move(reader).problems());
}

}  // namespace

Read<ScoreRow> readScores(std::string_view table)
{
    static constexpr std::array<std::string_view, 6> columns{"course",  "treated_at", "entered_at",
                                                             "symptom", "side",       "score"};
    TableReader reader(table, "scores", columns);
    HeadReader heads;
    std::vector<ScoreRow> rows;
    std::vector<Answer> answers;
    while (reader.next()) {
        auto head = heads.read(reader);
        const auto symptom = symptomOf(reader, 3);
        const auto side = sideOf(reader, 4);
        const auto score = scoreOf(reader, 5);
        if (!head || !symptom || !side || !score)
            continue;
        answers.push_back({{head->course, head->enteredAt.at, static_cast<int>(*symptom), static_cast<int>(*side)},
                           score->points(), reader.line()});
        rows.push_back({std::move(head->name), head->treatedAt, head->enteredAt, *symptom, *side, *score, head->place});
    }
    faultContradictions(reader, std::move(answers), 5);
    return finished(reader, std::move(rows));
}

Read<SignRow> readSigns(std::string_view table)
{
    static constexpr std::array<std::string_view, 5> columns{"course", "treated_at", "entered_at", "sign",
                                                             "present"};
    static const std::string wanted = choice(recovery::allSigns);
    TableReader reader(table, "signs", columns);
    HeadReader heads;
    std::vector<SignRow> rows;
    std::vector<Answer> answers;
    while (reader.next()) {
        auto head = heads.read(reader);
        const auto sign = taken(reader, 3, recovery::signFromWord(reader.cell(3)), wanted);
        const auto present = presentOf(reader, 4);
        if (!head || !sign || !present)
            continue;
        answers.push_back({{head->course, head->enteredAt.at, static_cast<int>(*sign), 0}, *present ? 1 : 0,
                           reader.line()});
        rows.push_back({std::move(head->name), head->treatedAt, head->enteredAt, *sign, *present, head->place});
    }
    faultContradictions(reader, std::move(answers), 4);
    return finished(reader, std::move(rows));
}

Read<TemperatureRow> readTemperatures(std::string_view table)
{
    static constexpr std::array<std::string_view, 4> columns{"course", "treated_at", "entered_at", "celsius"};
    constexpr double millionths = 1e6;  // finer than any thermometer, and a whole number
    TableReader reader(table, "temperatures", columns);
    HeadReader heads;
    std::vector<TemperatureRow> rows;
    std::vector<Answer> answers;
    while (reader.next()) {
        auto head = heads.read(reader);
        const auto temperature = temperatureOf(reader, 3);
        if (!head || !temperature)
            continue;
        answers.push_back({{head->course, head->enteredAt.at, 0, 0},
                           static_cast<int>(std::lround(millionths * temperature->celsius())), reader.line()});
        rows.push_back({std::move(head->name), head->treatedAt, head->enteredAt, *temperature, head->place});
    }
    faultContradictions(reader, std::move(answers), 3);
    return finished(reader, std::move(rows));
}

Read<TruthRow> readTruth(std::string_view table)
{
    static constexpr std::array<std::string_view, 4> columns{"course", "kind", "onset_at", "side"};
    TableReader reader(table, "truth", columns);
    struct Told {
        bool plain;
        std::size_t line;
    };
    std::map<std::string, Told, std::less<>> told;
    std::vector<TruthRow> rows;
    while (reader.next()) {
        TruthRow row;
        auto name = nameOf(reader, 0);
        row.kind = reader.cell(1);
        const bool word = !row.kind.empty() && row.kind.size() <= maximumKind
                          && row.kind.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
        if (!word)
            reader.fault(1, "want a lower-case word, found " + quotedCell(row.kind));
        const bool plain = row.kind == plainKind;
        bool sound = word && name;
        if (!reader.cell(2).empty()) {
            row.onsetAt = momentOf(reader, 2);
            sound = sound && row.onsetAt;
            if (plain && row.onsetAt)
                reader.fault(2, "an uncomplicated course has no onset");
        }
        if (!reader.cell(3).empty()) {
            const auto side = sideOf(reader, 3);
            sound = sound && side;
            row.side = side.value_or(recovery::Side::none);
        }
        if (!sound)
            continue;
        const auto [place, fresh] = told.try_emplace(*name, Told{plain, reader.line()});
        if (!fresh && (plain || place->second.plain))
            reader.fault(1, "this course was told in line " + std::to_string(place->second.line)
                                + " already, and plain stands alone");
        row.course = std::move(*name);
        row.place = {reader.line(), reader.placeOf(1)};
        rows.push_back(std::move(row));
    }
    return finished(reader, std::move(rows));
}

Read<RiskRow> readRisks(std::string_view table)
{
    static constexpr std::array<std::string_view, 2> columns{"course", "risk"};
    TableReader reader(table, "risks", columns);
    std::map<std::string, std::size_t, std::less<>> told;
    std::vector<RiskRow> rows;
    while (reader.next()) {
        auto name = nameOf(reader, 0);
        const std::string_view cell = reader.cell(1);
        double risk = 0;
        const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), risk, std::chars_format::fixed);
        const bool sound = error == std::errc{} && end == cell.data() + cell.size() && risk > 0 && risk < 1;
        if (!sound)
            reader.fault(1, "want a risk above 0 and below 1, such as 0.05, found " + quotedCell(cell));
        if (!name || !sound)
            continue;
        const auto [place, fresh] = told.try_emplace(*name, reader.line());
        if (!fresh) {
            reader.fault(0, "this course was told in line " + std::to_string(place->second) + " already");
            continue;
        }
        rows.push_back({std::move(*name), risk, {reader.line(), reader.placeOf(0)}});
    }
    return finished(reader, std::move(rows));
}

Read<FindingRow> readFindings(std::string_view table)
{
    static constexpr std::array<std::string_view, 7> columns{"course",  "raised_at", "trigger", "urgency",
                                                             "symptom", "side",      "reason"};
    TableReader reader(table, "findings", columns);
    std::vector<FindingRow> rows;
    while (reader.next()) {
        auto name = nameOf(reader, 0);
        auto raised = momentOf(reader, 1);
        auto trigger = nameOf(reader, 2);
        const auto urgency = taken(reader, 3, recovery::urgencyFromWord(reader.cell(3)),
                                   "emergency, call-now, next-working-day or at-review");
        const bool anySymptom = reader.cell(4) != "-";
        const auto symptom = anySymptom ? symptomOf(reader, 4) : std::nullopt;
        const auto side = sideOf(reader, 5);
        if (!name || !raised || !trigger || !urgency || (anySymptom && !symptom) || !side)
            continue;
        rows.push_back({std::move(*name), std::move(*raised), std::move(*trigger), *urgency, symptom, *side,
                        std::string(unguarded(reader.cell(6)))});
    }
    return finished(reader, std::move(rows));
}

}  // namespace ebbline::exchange
