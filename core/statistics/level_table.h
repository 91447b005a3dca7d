#pragma once
/// \file
/// The local-level smoother (core/statistics/local_level.h) over many series at once, all of the same
/// model: the streams of a clinic's courses, an auditor's table.
///
/// The same levels as smooth() gives, to rounding; the series lie side by side, so that one instruction
/// serves several of them. Several observations of a step enter as their mean with a share of the
/// noise, which is the same as one after the other. Backwards it needs no division:
///
///     precision_t = n_t / (n_t P_t + observation),  L_t = 1 - P_t precision_t
///     r = precision_t (x_t - a_t) + L_t r,  N = precision_t + L_t^2 N,  level = a_t + P_t r,  variance = P_t - P_t^2 N
///
/// Source: J. Durbin, S. J. Koopman, "Time Series Analysis by State Space Methods", 2nd ed., Oxford 2012,
/// section 2.4.

#include "core/statistics/local_level.h"

#include <array>
#include <cmath>

namespace ebbline::statistics {

class LevelTable {
public:
    static constexpr std::size_t mostCells = std::size_t{1} << 28;

    /// Nothing is observed yet. \returns Reason::tooLarge if it has more than mostCells cells.
    static Result<LevelTable> create(std::size_t series, std::size_t steps);

    /// One observation more at a step of a series. \pre both lie within the table
    /// \returns Reason::notFinite, and then nothing has changed.
    Result<void> observe(std::size_t series, std::size_t step, double value)
    {
        if (!std::isfinite(value))
            return fail(Reason::notFinite, "observation: want a finite number");
        Cell& cell = m_cells[rowOf(series, step)];
        const std::size_t lane = series % lanes;
        const double count = cell.count[lane] += 1;
        cell.value[lane] += count > 1 ? (value - cell.value[lane]) / count : value;
        return {};
    }

    /// Every series, at every step. \returns Reason::outOfRange naming the field of the model.
    Result<void> smooth(const LocalLevelModel& model);

    /// Smoothed level; of nothing before smooth().
    LevelEstimate level(std::size_t series, std::size_t step) const noexcept
    {
        const Level& row = m_levels[rowOf(series, step)];
        return {row.mean[series % lanes], row.variance[series % lanes]};
    }

private:
    static constexpr std::size_t lanes = 8;
    using Lanes = std::array<double, lanes>;
    struct alignas(64) Cell {
        Lanes value;  ///< mean of the observations of the step, 0 if there is none
        Lanes count;
    };
    struct alignas(64) Level {
        Lanes mean;
        Lanes variance;
    };

    LevelTable(std::size_t blocks, std::size_t steps)
        : m_steps(steps), m_cells(blocks * steps), m_levels(blocks * steps)
    {
    }
    std::size_t rowOf(std::size_t series, std::size_t step) const noexcept { return series / lanes * m_steps + step; }

    std::size_t m_steps;
    std::vector<Cell> m_cells;    ///< block of series by block, step by step
    std::vector<Level> m_levels;
};

}  // namespace ebbline::statistics
