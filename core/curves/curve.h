#pragma once
/// \file
/// One stream of one course as a curve: what was scored, the smoothed course inside the band,
/// an honest forecast to the follow-up, and a few figures that describe it.

#include "core/bands/band.h"
#include "core/recovery/entry.h"

#include <optional>
#include <span>
#include <vector>

namespace ebbline::curves {

/// One scored moment.
struct Point {
    clock::Moment at;
    double day;          ///< days since the treatment, fractional, >= 0
    int points;          ///< 0..10
    bool late = false;   ///< recorded afterwards
    bool amended = false;
};

/// The smoothed course at a whole day.
struct Smoothed {
    int day;
    double points;       ///< 0..10
    bool observed;       ///< there was an entry that day
    double low = 0;      ///< the level lies between low and high with 80 %; wide where nothing was
    double high = 10;    ///< written
};

/// What an entry of the target day would say: how likely each score is, and what follows from it.
struct Forecast {
    int day;
    int low;     ///< 10th centile; from low to high it is at least 80 % likely
    int median;
    int high;    ///< 90th
    double probabilityOfThreeOrMore;
    bands::Distribution scores;
};

struct BandDay {
    int day;
    bands::Range inner;
    bands::Range outer;
};

struct Curve {
    recovery::Stream stream{recovery::Symptom::pain, recovery::Side::none};
    std::vector<Point> points;        ///< in time order
    std::vector<Smoothed> smoothed;   ///< from the first observed day to the last
    std::vector<BandDay> band;        ///< day 0..21
    bands::Provenance provenance;
    std::optional<Forecast> forecast;   ///< with at least three observed days
    std::optional<Point> peak;
    std::optional<double> halfLifeDays; ///< from the peak; empty if not falling or too few points
    std::optional<double> area;         ///< score-days from first to last observed day
    std::optional<int> resolvedOnDay;   ///< first of two consecutive observed days <= 1, lasting; none if no day was above
};

/// A scored moment as the journal has it.
struct Sample {
    clock::Moment at;
    recovery::Score score;
    bool late = false;
    bool amended = false;
};

/// The smoothed course alone, from the first observed day to the last; empty without a sample.
/// Samples in any order; those from before the treatment count as of day 0.
std::vector<Smoothed> smoothedCourse(const recovery::Stream& stream, const clock::Moment& treated,
                                     std::span<const Sample> samples, const bands::Band& band);

/// Left against right of one symptom, over the days on which both were scored.
struct Asymmetry {
    int days;               ///< with both sides
    double meanDifference;  ///< left minus right, points
    int largest;            ///< left minus right on the day it was largest in size, points
    int largestDay;
    /// (left - right) / (left + right) over all those days; empty below four points together, where
    /// it would say more than there is.
    std::optional<double> index;
};

/// Empty with fewer than three days on which both sides were scored: not enough to say.
std::optional<Asymmetry> asymmetryOf(std::span<const Sample> left, std::span<const Sample> right,
                                     const clock::Moment& treated);

Curve curveOf(const recovery::Stream& stream, const clock::Moment& treated, std::span<const Sample> samples,
              const bands::Band& band, int followUpDay);

}  // namespace ebbline::curves
