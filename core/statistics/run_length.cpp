#include "core/statistics/run_length.h"

#include "core/statistics/distributions.h"

#include <boost/math/special_functions/legendre.hpp>

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ebbline::statistics {

namespace {

constexpr double longestRun = 1e10;
constexpr int mostObservations = 100'000;

double normalDensity(double z)
{
    return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}

/// Nodes and weights over low..high. Each standard deviation of the kernel gets some nodes.
struct Nodes {
    Eigen::ArrayXd at;
    Eigen::ArrayXd weight;
};

Nodes nodesOver(double low, double high, double deviations)
{
    const int half = std::clamp(static_cast<int>(3 * deviations) + 16, 24, 240);
    const int n = 2 * half;
    const auto zeros = boost::math::legendre_p_zeros<double>(n);  // the positive ones
    Nodes nodes{Eigen::ArrayXd(n), Eigen::ArrayXd(n)};
    for (int i = 0; i < half; ++i) {
        const double zero = zeros[static_cast<std::size_t>(i)];
        const double slope = boost::math::legendre_p_prime(n, zero);
        const double weight = 2 / ((1 - zero * zero) * slope * slope);
        nodes.at[half - 1 - i] = -zero;
        nodes.at[half + i] = zero;
        nodes.weight[half - 1 - i] = nodes.weight[half + i] = weight;
    }
    nodes.at = (low + high) / 2 + (high - low) / 2 * nodes.at;
    nodes.weight *= (high - low) / 2;
    return nodes;
}

/// A chart as a Markov chain over the nodes (and zero, for the CUSUM): what goes on without a signal.
struct Chain {
    Eigen::MatrixXd stay;      ///< from row to column
    Eigen::VectorXd start;     ///< from the chart's start, to each column
};

Chain cusumChain(double slack, double decision, double shift)
{
    const Nodes nodes = nodesOver(0, decision, decision);
    const Eigen::Index n = nodes.at.size();
    Chain chain{Eigen::MatrixXd(n + 1, n + 1), {}};
    for (Eigen::Index row = 0; row <= n; ++row) {
        const double from = row == 0 ? 0 : nodes.at[row - 1];
        chain.stay(row, 0) = normalCdf(slack - shift - from);
        for (Eigen::Index column = 1; column <= n; ++column)
            chain.stay(row, column) =
                nodes.weight[column - 1] * normalDensity(nodes.at[column - 1] + slack - shift - from);
    }
    chain.start = chain.stay.row(0);
    return chain;
}

Chain ewmaChain(double weight, double width, double shift)
{
    const double limit = width * std::sqrt(weight / (2 - weight));
    const Nodes nodes = nodesOver(-limit, limit, 2 * limit / weight);
    const Eigen::Index n = nodes.at.size();
    Chain chain{Eigen::MatrixXd(n, n), Eigen::VectorXd(n)};
    const auto step = [&](double from, Eigen::Index to) {
        return nodes.weight[to] / weight * normalDensity((nodes.at[to] - (1 - weight) * from) / weight - shift);
    };
    for (Eigen::Index column = 0; column < n; ++column) {
        chain.start[column] = step(0, column);
        for (Eigen::Index row = 0; row < n; ++row)
            chain.stay(row, column) = step(nodes.at[row], column);
    }
    return chain;
}

Result<double> averageRun(const Chain& chain)
{
    const Eigen::Index n = chain.stay.rows();
    const Eigen::MatrixXd system = Eigen::MatrixXd::Identity(n, n) - chain.stay;
    const Eigen::VectorXd rest = system.partialPivLu().solve(Eigen::VectorXd::Ones(n));
    const double run = 1 + chain.start.dot(rest);
    if (!(run >= 1 - 1e-9) || run > longestRun)
        return fail(Reason::outOfRange, "the run is too long to be told from never");
    return std::max(1.0, run);
}

Result<double> signalled(const Chain& chain, int observations)
{
    if (observations < 0 || observations > mostObservations)
        return fail(Reason::outOfRange, "observations: want 0..100000");
    if (observations == 0)
        return 0.0;
    Eigen::VectorXd silent = Eigen::VectorXd::Ones(chain.stay.rows());
    for (int i = 1; i < observations; ++i)
        silent = chain.stay * silent;
    return std::clamp(1 - chain.start.dot(silent), 0.0, 1.0);
}

Done checkedCusum(double slack, double decision, double shift)
{
    if (!(slack >= 0 && slack <= 10))
        return fail(Reason::outOfRange, "slack: want 0..10");
    if (!(decision > 0 && decision <= 50))
        return fail(Reason::outOfRange, "decision: want above 0, at most 50");
    if (!(std::abs(shift) <= 50))
        return fail(Reason::outOfRange, "shift: want -50..50");
    return {};
}

Done checkedEwma(double weight, double width, double shift)
{
    if (!(weight >= 0.01 && weight <= 1))
        return fail(Reason::outOfRange, "weight: want 0.01..1");
    if (!(width > 0 && width <= 8))
        return fail(Reason::outOfRange, "width: want above 0, at most 8");
    if (!(std::abs(shift) <= 50))
        return fail(Reason::outOfRange, "shift: want -50..50");
    return {};
}

}  // namespace

Result<double> cusumRunLength(double slack, double decision, double shift)
{
    const Done fine = checkedCusum(slack, decision, shift);
    return fine ? averageRun(cusumChain(slack, decision, shift)) : fail(fine.error());
}

Result<double> cusumRunLengthBothWays(double slack, double decision, double shift)
{
    const Result<double> up = cusumRunLength(slack, decision, shift);
    const Result<double> down = cusumRunLength(slack, decision, -shift);
    if (up && down)
        return 1 / (1 / *up + 1 / *down);
    // One way may take for ever while the other does not.
    if (up && shift > 0)
        return up;
    return down && shift < 0 ? down : fail(up ? down.error() : up.error());
}

Result<double> cusumSignalProbability(double slack, double decision, double shift, int observations)
{
    const Done fine = checkedCusum(slack, decision, shift);
    return fine ? signalled(cusumChain(slack, decision, shift), observations) : fail(fine.error());
}

Result<double> ewmaRunLength(double weight, double width, double shift)
{
    const Done fine = checkedEwma(weight, width, shift);
    return fine ? averageRun(ewmaChain(weight, width, shift)) : fail(fine.error());
}

Result<double> ewmaSignalProbability(double weight, double width, double shift, int observations)
{
    const Done fine = checkedEwma(weight, width, shift);
    return fine ? signalled(ewmaChain(weight, width, shift), observations) : fail(fine.error());
}

}  // namespace ebbline::statistics
