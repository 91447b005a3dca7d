#pragma once
/// \file
/// The open tables, typed: docs/formats/tables.md. Anyone may write and read them, so that
/// scores recorded elsewhere can be judged, and our findings checked.
///
/// Columns may stand in any order; all of them must be there, and no other: a misspelt column
/// that is silently ignored could hide an answer. Times carry their offset; the zone of a
/// Moment read here is empty. A single problem fails the whole table.

#include "core/clock/instant.h"
#include "core/exchange/csv.h"
#include "core/recovery/entry.h"
#include "core/recovery/sign.h"
#include "core/recovery/symptom.h"

#include <expected>
#include <optional>

namespace ebbline::exchange {

/// Where a row was read, both counted from 1, 0 for one that was not read: for messages alone, so that it makes no two
/// rows differ.
struct Place {
    std::size_t line = 0;
    std::size_t column = 0;  ///< of `treated_at`; in a table of truth, of `kind`
    bool operator==(const Place&) const { return true; }
};

/// One score: `course,treated_at,entered_at,symptom,side,score`.
struct ScoreRow {
    std::string course;  ///< any name of 1..100 bytes without control characters
    clock::Moment treatedAt;  ///< of the course: as its first row has it, where others write the same instant with another offset
    clock::Moment enteredAt;  ///< not before treatedAt
    recovery::Symptom symptom = recovery::Symptom::pain;
    recovery::Side side = recovery::Side::none;  ///< `-`: recorded without telling the sides apart
    recovery::Score score;
    Place place = {};
    bool operator==(const ScoreRow&) const = default;
};

/// One answer to a warning sign: `course,treated_at,entered_at,sign,present`.
struct SignRow {
    std::string course;
    clock::Moment treatedAt;
    clock::Moment enteredAt;
    recovery::Sign sign = recovery::Sign::breathing;
    bool present = false;  ///< written `yes` or `no`; `true`, `false`, `1`, `0` are read as well
    Place place = {};
    bool operator==(const SignRow&) const = default;
};

/// What was measured: `course,treated_at,entered_at,celsius`.
struct TemperatureRow {
    std::string course;
    clock::Moment treatedAt;
    clock::Moment enteredAt;
    recovery::Temperature temperature;  ///< degrees Celsius with a decimal point, 30 to 45
    Place place = {};
    bool operator==(const TemperatureRow&) const = default;
};

/// What was really going on: `course,kind,onset_at,side`. A course with two complications has two
/// rows; one told as plain has that row only.
struct TruthRow {
    std::string course;
    std::string kind;  ///< a lower-case word, `plain` for an uncomplicated course
    std::optional<clock::Moment> onsetAt;  ///< empty for plain, or when nobody knows
    recovery::Side side = recovery::Side::none;
    Place place = {};
    bool operator==(const TruthRow&) const = default;
};

/// `plain`.
inline constexpr std::string_view plainKind = "plain";

/// A risk of a complication that was known before the treatment: `course,risk`, one row a course.
struct RiskRow {
    std::string course;
    double risk = 0;  ///< above 0 and below 1: digits with a decimal point
    Place place = {};  ///< the column is that of `course`
    bool operator==(const RiskRow&) const = default;
};

/// One firing: `course,raised_at,trigger,urgency,symptom,side,reason`.
struct FindingRow {
    std::string course;
    clock::Moment raisedAt;
    std::string trigger;  ///< name of the trigger or of the warning's rule
    recovery::Urgency urgency = recovery::Urgency::atReview;
    std::optional<recovery::Symptom> symptom;  ///< `-` if it is about none
    recovery::Side side = recovery::Side::none;
    std::string reason;  ///< a sentence
    bool operator==(const FindingRow&) const = default;
};

/// Everything that is wrong with a table: the first of them listed, all of them counted.
struct Problems {
    static constexpr std::size_t maximumListed = 20;

    std::vector<Problem> listed;  ///< in the order of the file
    std::size_t count = 0;

    void add(Problem problem)
    {
        ++count;
        if (listed.size() < maximumListed)
            listed.push_back(std::move(problem));
    }
};

/// One line a problem, and a last one if there are more than were listed.
std::string text(const Problems& problems);

template <typename Row>
using Read = std::expected<std::vector<Row>, Problems>;

/// Rows in the order of the file. The same stream scored twice at one moment of a course is a
/// problem if the scores differ.
Read<ScoreRow> readScores(std::string_view table);
/// The same sign answered yes and no at one moment is a problem.
Read<SignRow> readSigns(std::string_view table);
/// Two temperatures of one moment that differ are a problem.
Read<TemperatureRow> readTemperatures(std::string_view table);
Read<TruthRow> readTruth(std::string_view table);
/// A course told twice is a problem, and so is a risk of 0 or of 1: such a course would tell nothing, or everything.
Read<RiskRow> readRisks(std::string_view table);
Read<FindingRow> readFindings(std::string_view table);

/// With the header row, CRLF, columns in the order above, free text guarded against spreadsheets.
std::string writeScores(const std::vector<ScoreRow>& rows);
std::string writeSigns(const std::vector<SignRow>& rows);
/// In as many digits as give the same number back.
std::string writeTemperatures(const std::vector<TemperatureRow>& rows);
std::string writeTruth(const std::vector<TruthRow>& rows);
std::string writeFindings(const std::vector<FindingRow>& rows);

}  // namespace ebbline::exchange
