// The smoother against R's KalmanSmooth and statsmodels' KalmanSmoother on the same series: how far apart, and how long
// each takes in the same run on the same machine. Needs Rscript, or python3 with statsmodels; what is missing is not
// compared with, and that is said.

#include "core/statistics/level_table.h"
#include "core/statistics/local_level.h"
#include "core/statistics/local_level_fit.h"

#include "tests/core/statistics/nile.h"

#include <algorithm>
#include <array>
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

/// The largest difference from a peer's levels and variances, in parts of 1 or of the value if that is larger.
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

/// A program that smooths the same series and writes what it found and how long it took.
struct Peer {
    std::string name;
    std::string smoother;
    std::string fitter;
    std::string present;  ///< a command that succeeds if it is installed
    std::string command;  ///< wants the folder
    std::string missing;
};

const std::array peers{
    Peer{"R", "KalmanSmooth", "StructTS", "command -v Rscript", "Rscript --vanilla '" EBBLINE_R_SCRIPT "'",
         "Rscript is not installed (Debian: r-base-core): nothing was compared with R"},
    Peer{"statsmodels", "KalmanSmoother", "UnobservedComponents", "python3 -c 'import statsmodels'", "python3 '" EBBLINE_PYTHON_SCRIPT "'",
         "python3 has no statsmodels (Debian: python3-statsmodels): nothing was compared with it"}};

bool isPresent(const Peer& peer)
{
    return std::system((peer.present + " >/dev/null 2>&1").c_str()) == 0;
}

/// What came of ours, and how long it took.
struct Own {
    std::vector<std::vector<LevelEstimate>> table, many, longOne;
    LocalLevelFit fit{};
    double filledSeconds, tableSeconds, manySeconds, longSeconds, fitSeconds;
};

/// \returns whether it finished and found the same.
bool compare(const Peer& peer, const Own& own, const std::filesystem::path& folder)
{
    std::fflush(stdout);
    int code = std::system((peer.command + " '" + folder.string() + "'").c_str());
    double theirs[5]{};
    std::ifstream in(folder / (peer.name + "_figures.txt"));
    for (double& each : theirs)
        if (code == 0 && !(in >> each))
            code = 1;
    if (code != 0) {
        std::printf("%s did not finish: nothing was compared with it\n", peer.name.c_str());
        return false;
    }
    const double manyOff = furthest(folder / (peer.name + "_many.txt"), own.many);
    const double longOff = furthest(folder / (peer.name + "_long.txt"), own.longOne);
    const double tableOff = furthest(folder / (peer.name + "_many.txt"), own.table);
    const double whole = own.tableSeconds + own.filledSeconds;
    std::printf("%zu series of %zu days, 15 %% missing: %s %.1f ms\n", manySeries, manySteps, peer.smoother.c_str(), 1e3 * theirs[0]);
    std::printf("  as a table %.2f ms, ratio %.0f (with filling it %.2f ms, ratio %.0f), furthest %.1e\n", 1e3 * own.tableSeconds,
                theirs[0] / own.tableSeconds, 1e3 * whole, theirs[0] / whole, tableOff);
    std::printf("  one by one %.2f ms, ratio %.0f, furthest %.1e\n", 1e3 * own.manySeconds, theirs[0] / own.manySeconds, manyOff);
    std::printf("1 series of 50000 steps: ours %.1f ms, %s %.1f ms, ratio %.1f, furthest %.1e\n", 1e3 * own.longSeconds,
                peer.smoother.c_str(), 1e3 * theirs[1], theirs[1] / own.longSeconds, longOff);
    std::printf("variances of the Nile: ours %.3f ms (%.3f, %.3f), %s %.3f ms (%.3f, %.3f), ratio %.1f\n", 1e3 * own.fitSeconds,
                own.fit.variances.observation, own.fit.variances.drift, peer.fitter.c_str(), 1e3 * theirs[2], theirs[3], theirs[4],
                theirs[2] / own.fitSeconds);
    const bool same = tableOff < 1e-8 && manyOff < 1e-8 && longOff < 1e-8;
    std::printf("%s %s within 1e-8\n", same ? "equal to" : "NOT equal to", peer.name.c_str());
    return same;
}

}  // namespace

int main()
{
    std::vector<Peer> present;
    for (const Peer& peer : peers)
        if (isPresent(peer))
            present.push_back(peer);
        else
            std::printf("%s\n", peer.missing.c_str());
    if (present.empty())
        return skipped;
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

    Own own{};
    LevelTable table = tableOf(many);
    bool smoothed = true;
    own.filledSeconds = seconds([&] { table = tableOf(many); });
    own.tableSeconds = seconds([&] { smoothed = smoothed && table.smooth(model); }, 9);
    own.table = levelsIn(table, many);
    own.manySeconds = seconds([&] { own.many = smoothedAll(many); });
    own.longSeconds = seconds([&] { own.longOne = smoothedAll(longOne); });
    own.fitSeconds = seconds([&] { own.fit = fitLocalLevel(flow).value(); });

    bool same = smoothed;
    for (const Peer& peer : present)
        same = compare(peer, own, folder) && same;
    std::error_code ignored;
    std::filesystem::remove_all(folder, ignored);
    return same ? 0 : 1;
}
