#pragma once
/// \file
/// What the methods of `ebbline stats` share: each adds itself with its options, its example and its
/// `--json`; each ends in an answer, in "not enough to say", or in a complaint with exit 2. Inside of app/tool
/// only.

#include "app/tool/number_table.h"
#include "app/tool/subcommand.h"

#include <nlohmann/json.hpp>

#include <functional>
#include <memory>
#include <string>
#include <variant>

namespace ebbline::tool {

using Json = nlohmann::ordered_json;

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

/// `0.3080`; `2.1e-05` rather than `0.0000`.
std::string shown(double value, int digits = 4);

/// `30.8 %`, `0.0057 %`; never 0 % nor 100 % for what is neither.
std::string percent(double share);

/// `p = 0.0312`, `p < 0.0001`.
std::string probabilityText(double p);

/// Sets `name`, or `nameBelow` where the probability is too small for a number: never 0.
void setProbability(Json& json, const std::string& name, double p);

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

}  // namespace ebbline::tool
