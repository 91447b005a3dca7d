// The smoother against R's KalmanSmooth on the same series: how far apart, and how long each takes in
// the same run on the same machine. Needs Rscript; without it nothing is compared, and that is said.

#include "core/statistics/level_table.h"
#include "core/statistics/local_level.h"
#include "core/statistics/local_level_fit.h"

#include "tests/core/statistics/nile.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <string>

using namespace ebbline::statistics;

namespace {

using Steps = std::vector<std::vector<double>>;

constexpr LocalLevelModel model{.observation = 0.30, .drift = 0.02, .startMean = 0, .startVariance = 0.40};
constexpr int skipped = 77;
constexpr double missingShare = 0.15;
constexpr std::size_t manySeries = 12'000;  // 1,000 courses, six symptoms on two sides
constexpr std::size_t manySteps = 22;

std::vector<Steps> invented(std::size_t count, std::size_t length, std::mt19937_64& random)
{
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> share;
    std::vector<Steps> series(count, Steps(length));
    for (Steps& steps : series) {
        double level = std::sqrt(model.startVariance) * normal(random);
        for (auto& step : steps) {
            if (share(random) >= missingShare)
                step.push_back(level + std::sqrt(model.observation) * normal(random));
            level += std::sqrt(model.drift) * normal(random);
        }
    }
    return series;
}

void write(const std::filesystem::path& file, const std::vector<Steps>& series)
{
    std::ofstream out(file);
    out.precision(17);
    for (const Steps& steps : series) {
        for (std::size_t t = 0; t < steps.size(); ++t) {
            out << (t > 0 ? " " : "");
            if (steps[t].empty())
                out << "NA";
            else
                out << steps[t].front();
        }
        out << "\n";
    }
}

template <typename Work>
double seconds(Work work, int runs = 3)
{
    double best = 1e9;
    for (int run = 0; run < runs; ++run) {
        const auto start = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    return best;
}

/// The largest difference from R's levels and variances, in parts of 1 or of the value if that is larger.
double furthest(const std::filesystem::path& file, const std::vector<std::vector<LevelEstimate>>& own)
{
    std::ifstream in(file);
    std::string line;
    double worst = 0;
    std::size_t values = 0;
    for (const auto& levels : own)
        for (const bool variances : {false, true}) {
            if (!std::getline(in, line))
                return INFINITY;
            std::istringstream cells(line);
            for (const LevelEstimate& level : levels) {
                double other = 0;
                if (!(cells >> other))
                    return INFINITY;
                const double ours = variances ? level.variance : level.mean;
                worst = std::max(worst, std::abs(ours - other) / std::max(1.0, std::abs(other)));
                ++values;
            }
        }
    return values > 0 ? worst : INFINITY;
}

/// Filling the table is part of it.
LevelTable tableOf(const std::vector<Steps>& series)
{
    LevelTable table = LevelTable::create(series.size(), series.front().size()).value();
    for (std::size_t i = 0; i < series.size(); ++i)
        for (std::size_t t = 0; t < series[i].size(); ++t)
            for (const double value : series[i][t])
                (void)table.observe(i, t, value);
    return table;
}

std::vector<std::vector<LevelEstimate>> levelsIn(const LevelTable& table, const std::vector<Steps>& series)
{
    std::vector<std::vector<LevelEstimate>> levels(series.size());
    for (std::size_t i = 0; i < series.size(); ++i)
        for (std::size_t t = 0; t < series[i].size(); ++t)
            levels[i].push_back(table.level(i, t));
    return levels;
}

std::vector<std::vector<LevelEstimate>> smoothedAll(const std::vector<Steps>& series)
{
    std::vector<std::vector<LevelEstimate>> levels;
    levels.reserve(series.size());
    for (const Steps& steps : series)
        levels.push_back(smooth(model, steps).value());
    return levels;
}

}  // namespace

int main()
{
    if (std::system("command -v Rscript >/dev/null 2>&1") != 0) {
        std::printf("Rscript is not installed (Debian: r-base-core): nothing was compared\n");
        return skipped;
    }
    std::error_code error;
    const auto folder = std::filesystem::temp_directory_path(error) / ("local_level_" + std::to_string(std::random_device()()));
    if (error || !std::filesystem::create_directory(folder, error)) {
        std::printf("no folder for the series could be made\n");
        return 1;
    }
    std::mt19937_64 random(11);
    const auto many = invented(manySeries, manySteps, random), longOne = invented(1, 50'000, random);
    Steps flow;
    for (const double value : nile)
        flow.push_back({value});
    write(folder / "many.txt", many);
    write(folder / "long.txt", longOne);
    write(folder / "fit.txt", {flow});
    {
        std::ofstream out(folder / "model.txt");
        out.precision(17);
        out << model.observation << "\n" << model.drift << "\n" << model.startMean << "\n" << model.startVariance << "\n";
    }

    std::vector<std::vector<LevelEstimate>> ownMany, ownLong;
    LocalLevelFit fit{};
    LevelTable table = tableOf(many);
    bool smoothed = true;
    const double filledSeconds = seconds([&] { table = tableOf(many); });
    const double tableSeconds = seconds([&] { smoothed = smoothed && table.smooth(model); }, 9);
    const auto ownTable = levelsIn(table, many);
    const double manySeconds = seconds([&] { ownMany = smoothedAll(many); });
    const double longSeconds = seconds([&] { ownLong = smoothedAll(longOne); });
    const double fitSeconds = seconds([&] { fit = fitLocalLevel(flow).value(); });

    const std::string command = "Rscript --vanilla '" EBBLINE_R_SCRIPT "' '" + folder.string() + "'";
    std::fflush(stdout);
    int code = std::system(command.c_str());
    double theirs[5]{};
    if (code == 0) {
        std::ifstream in(folder / "r_figures.txt");
        for (double& each : theirs)
            if (!(in >> each))
                code = 1;
    }
    if (code == 0) {
        const double manyOff = furthest(folder / "r_many.txt", ownMany), longOff = furthest(folder / "r_long.txt", ownLong);
        const double tableOff = furthest(folder / "r_many.txt", ownTable);
        std::printf("%zu series of %zu days, 15 %% missing: KalmanSmooth %.1f ms\n", manySeries, manySteps, 1e3 * theirs[0]);
        std::printf("  as a table %.2f ms, ratio %.0f (with filling it %.2f ms, ratio %.0f), furthest %.1e\n", 1e3 * tableSeconds,
                    theirs[0] / tableSeconds, 1e3 * (tableSeconds + filledSeconds), theirs[0] / (tableSeconds + filledSeconds), tableOff);
        std::printf("  one by one %.2f ms, ratio %.0f, furthest %.1e\n", 1e3 * manySeconds, theirs[0] / manySeconds, manyOff);
        std::printf("1 series of 50000 steps: ours %.1f ms, KalmanSmooth %.1f ms, ratio %.1f, furthest %.1e\n",
                    1e3 * longSeconds, 1e3 * theirs[1], theirs[1] / longSeconds, longOff);
        std::printf("variances of the Nile: ours %.3f ms (%.3f, %.3f), StructTS %.3f ms (%.3f, %.3f), ratio %.1f\n",
                    1e3 * fitSeconds, fit.variances.observation, fit.variances.drift, 1e3 * theirs[2], theirs[3], theirs[4],
                    theirs[2] / fitSeconds);
        const bool same = smoothed && tableOff < 1e-8 && manyOff < 1e-8 && longOff < 1e-8;
        std::printf("%s\n", same ? "equal to R within 1e-8" : "NOT equal to R within 1e-8");
        code = same ? 0 : 1;
    } else {
        std::printf("R did not finish: nothing was compared\n");
    }
    std::error_code ignored;
    std::filesystem::remove_all(folder, ignored);
    return code == 0 ? 0 : 1;
}
