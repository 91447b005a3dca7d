#pragma once
/// \file
/// What the methods of `ebbline stats` share: each adds itself with its options, its example and its
/// `--json`; each ends in an answer, in "not enough to say", or in a complaint with exit 2. Inside of app/tool
/// only.

#include "app/tool/number_table.h"
#include "app/tool/number_words.h"
#include "app/tool/subcommand.h"

#include "core/statistics/loess.h"
#include "core/statistics/proportions.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ebbline::tool {

/// An answer in both forms.
struct Answer {
    Json json;
    std::string text;  ///< ends with a line break
};

/// What went wrong, in words for the person who typed the command.
struct Complaint {
    std::string text;
};

/// An answer; an Error whose reason is notEnough (an answer too: nothing can be said) or another one
/// (bad input); or faults with their places.
using Answered = std::expected<Answer, std::variant<Error, Complaint>>;

inline std::unexpected<std::variant<Error, Complaint>> refused(const Error& error)
{
    return std::unexpected(std::variant<Error, Complaint>(error));
}

/// Prints it as was asked for; refuses an answer that holds anything but finite numbers. \returns the
/// exit code.
int finish(const std::string& method, bool json, const Answered& answered);

/// The table of a file. \returns Complaint with line, column and reason.
std::expected<NumberTable, std::variant<Error, Complaint>> tableIn(const std::string& file);

/// What reading its columns has found. \returns Complaint naming the file.
std::expected<void, std::variant<Error, Complaint>> faultsOf(const std::string& file, const NumberTable& table);

/// `-0.1500 to 0.7600`.
std::string rangeText(const statistics::Interval& limits);

/// `2 missing, left out` as a line; nothing if none is.
std::string missingText(std::size_t missing);

/// null where there is none.
Json orNull(const std::optional<double>& value);

/// Two values of a row.
struct PairColumns {
    std::string file;
    std::string first = "first";
    std::string second = "second";
};
/// first - second of each row that has both.
struct Differences {
    std::vector<double> values;
    std::size_t missing = 0;
};
void addPairColumns(CLI::App& command, PairColumns& columns);
std::expected<Differences, std::variant<Error, Complaint>> differencesIn(const PairColumns& columns);

/// A value of a row, and the group it belongs to.
struct GroupColumns {
    std::string file;
    std::string value = "value";
    std::string group = "group";
};
/// The first group is the one that is named first.
struct TwoGroups {
    std::vector<std::string> names;
    std::vector<double> values[2];
    std::size_t missing = 0;
};
void addGroupColumns(CLI::App& command, GroupColumns& columns);
/// \returns Reason::outOfRange for a third group, Reason::notEnough for a single one.
std::expected<TwoGroups, std::variant<Error, Complaint>> groupsIn(const GroupColumns& columns);

/// The place of a group among two, added if it is new. \returns Reason::outOfRange for a third.
Result<std::size_t> groupOf(std::vector<std::string>& names, const std::string& word);

/// Points of the plane; a row without one of both is missing.
struct PointColumns {
    std::string file;
    std::string x = "x";
    std::string y = "y";
};
struct Points {
    std::vector<statistics::Point> values;
    std::size_t missing = 0;
};
void addPointColumns(CLI::App& command, PointColumns& columns);
std::expected<Points, std::variant<Error, Complaint>> pointsIn(const PointColumns& columns);

/// A column of counts, 0..1e9. Names the fault of one that is not whole.
std::vector<long> countsIn(NumberTable& table, const std::string& column);

/// A method as a subcommand of `stats`. `answer` is called with the options read.
template <typename Options>
CLI::App* addMethod(CLI::App& stats, std::function<int()>& run, const std::string& name, const std::string& purpose,
                    const std::shared_ptr<Options>& options, Answered (*answer)(const Options&))
{
    auto* command = stats.add_subcommand(name, purpose);
    const auto json = std::make_shared<bool>(false);
    command->add_flag("--json", *json, "Print as JSON");
    command->callback([=, &run] { run = [=] { return finish(name, *json, answer(*options)); }; });
    return command;
}

void addCountMethods(CLI::App& stats, std::function<int()>& run);
void addChartMethods(CLI::App& stats, std::function<int()>& run);
void addRiskChart(CLI::App& stats, std::function<int()>& run);
void addCurveMethods(CLI::App& stats, std::function<int()>& run);
void addSurvivalMethods(CLI::App& stats, std::function<int()>& run);
void addAgreementMethods(CLI::App& stats, std::function<int()>& run);
void addRankMethods(CLI::App& stats, std::function<int()>& run);
void addLineMethods(CLI::App& stats, std::function<int()>& run);
void addScaleMethods(CLI::App& stats, std::function<int()>& run);
void addPoolingMethods(CLI::App& stats, std::function<int()>& run);
void addRateMethods(CLI::App& stats, std::function<int()>& run);
void addDistributionMethods(CLI::App& stats, std::function<int()>& run);

}  // namespace ebbline::tool
