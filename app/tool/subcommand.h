#pragma once
/// \file
/// One subcommand of the tool: a file of its own, listed in main.cpp; inside of app/tool only.

#include <CLI/CLI.hpp>

#include <functional>

namespace ebbline::tool {

/// Exit codes: 0 fine, 1 something failed while running, 2 bad input or usage.
inline constexpr int fine = 0;
inline constexpr int failed = 1;
inline constexpr int badInput = 2;

/// Adds the subcommand; `run` is called if it was chosen.
using Adder = void (*)(CLI::App& app, std::function<int()>& run);

void addAssess(CLI::App& app, std::function<int()>& run);
void addBackup(CLI::App& app, std::function<int()>& run);
void addCalibrate(CLI::App& app, std::function<int()>& run);
void addExport(CLI::App& app, std::function<int()>& run);
void addLearn(CLI::App& app, std::function<int()>& run);
void addReadBundle(CLI::App& app, std::function<int()>& run);
void addRehearse(CLI::App& app, std::function<int()>& run);
void addRestore(CLI::App& app, std::function<int()>& run);
void addSimulate(CLI::App& app, std::function<int()>& run);
void addStats(CLI::App& app, std::function<int()>& run);
void addStory(CLI::App& app, std::function<int()>& run);
void addVerify(CLI::App& app, std::function<int()>& run);

}  // namespace ebbline::tool
