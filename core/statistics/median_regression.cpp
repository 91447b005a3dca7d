#include "core/statistics/median_regression.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace ebbline::statistics {

namespace {

std::optional<Error> faultIn(std::span<const std::vector<double>> rows, std::span<const double> values)
{
    if (rows.size() != values.size())
        return Error{Reason::outOfRange, "rows: want one for each value"};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].size() != rows.front().size())
            return Error{Reason::outOfRange, "rows: want all of one length"};
        if (!std::isfinite(values[i])
            || !std::all_of(rows[i].begin(), rows[i].end(), [](double x) { return std::isfinite(x); }))
            return Error{Reason::notFinite, "rows and values: want finite numbers"};
    }
    const std::size_t coefficients = rows.empty() ? 1 : rows.front().size() + 1;
    if (rows.size() <= coefficients)
        return Error{Reason::notEnough, "rows: want more than there are coefficients"};
    double planes = 1;
    for (std::size_t i = 0; i < coefficients; ++i)
        planes *= static_cast<double>(rows.size() - i) / static_cast<double>(i + 1);
    if (planes > mostPlanes)
        return Error{Reason::tooLarge, "rows: too many planes to try"};
    return std::nullopt;
}

/// The next choice of `chosen.size()` of `count` rows, ascending. \returns whether there was one.
bool advance(std::vector<Eigen::Index>& chosen, Eigen::Index count)
{
    const auto size = static_cast<Eigen::Index>(chosen.size());
    for (Eigen::Index i = size; i-- > 0;) {
        auto& place = chosen[static_cast<std::size_t>(i)];
        if (place < count - size + i) {
            ++place;
            for (auto after = static_cast<std::size_t>(i) + 1; after < chosen.size(); ++after)
                chosen[after] = chosen[after - 1] + 1;
            return true;
        }
    }
    return false;
}

}  // namespace

Result<std::vector<double>> medianRegression(std::span<const std::vector<double>> rows, std::span<const double> values)
{
    if (const auto fault = faultIn(rows, values))
        return fail(*fault);
    const auto count = static_cast<Eigen::Index>(rows.size());
    const auto width = static_cast<Eigen::Index>(rows.front().size()) + 1;
    Eigen::MatrixXd x(count, width);
    const Eigen::Map<const Eigen::VectorXd> y(values.data(), count);
    for (Eigen::Index i = 0; i < count; ++i) {
        x(i, 0) = 1;
        for (Eigen::Index j = 1; j < width; ++j)
            x(i, j) = rows[static_cast<std::size_t>(i)][static_cast<std::size_t>(j) - 1];
    }
    std::vector<Eigen::Index> chosen(static_cast<std::size_t>(width));
    std::iota(chosen.begin(), chosen.end(), Eigen::Index{0});
    double least = std::numeric_limits<double>::infinity();
    Eigen::VectorXd best;
    do {
        const Eigen::FullPivLU<Eigen::MatrixXd> through(x(chosen, Eigen::all));
        if (!through.isInvertible())
            continue;
        const Eigen::VectorXd plane = through.solve(y(chosen));
        if (const double distance = (y - x * plane).cwiseAbs().sum(); distance < least) {
            least = distance;
            best = plane;
        }
    } while (advance(chosen, count));
    if (best.size() == 0)
        return fail(Reason::notEnough, "rows: the x do not vary independently");
    return std::vector<double>(best.begin(), best.end());
}

}  // namespace ebbline::statistics
