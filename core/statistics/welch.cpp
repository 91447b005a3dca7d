#include "core/statistics/welch.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace ebbline::statistics {

namespace {

struct Sample {
    double count;
    double mean;
    double variance;  ///< of the mean
};

Sample sampleOf(std::span<const double> values)
{
    Sample sample{static_cast<double>(values.size()), 0, 0};
    for (const double value : values)
        sample.mean += value / sample.count;
    for (const double value : values)
        sample.variance += (value - sample.mean) * (value - sample.mean);
    sample.variance /= (sample.count - 1) * sample.count;
    return sample;
}

}  // namespace

Result<Welch> welch(std::span<const double> first, std::span<const double> second, double confidence)
{
    if (!(confidence > 0 && confidence < 1))
        return fail(Reason::outOfRange, "confidence: want above 0 and below 1");
    for (const std::span<const double> values : {first, second}) {
        if (values.size() < 2)
            return fail(Reason::notEnough, "values: want at least two in each group");
        if (!std::all_of(values.begin(), values.end(), [](double value) { return std::isfinite(value); }))
            return fail(Reason::notFinite, "values: want finite numbers");
    }
    const Sample one = sampleOf(first), other = sampleOf(second);
    const double variance = one.variance + other.variance;
    if (!std::isfinite(variance))
        return fail(Reason::notFinite, "values: too far apart");
    if (!(variance > 0))
        return fail(Reason::notEnough, "neither group varies");
    // As shares of the whole, so that tiny variances do not vanish when squared.
    const double a = one.variance / variance, b = other.variance / variance;
    Welch found{one.mean - other.mean, 0, 1 / (a * a / (one.count - 1) + b * b / (other.count - 1)), 0, {}};
    const double error = std::sqrt(variance);
    found.t = found.difference / error;
    const Result<double> probability = studentTwoSided(found.t, found.degrees);
    const Result<double> reach = studentQuantile(0.5 + confidence / 2, found.degrees);
    if (!probability)
        return fail(probability.error());
    if (!reach)
        return fail(reach.error());
    found.probability = *probability;
    found.limits = {found.difference - *reach * error, found.difference + *reach * error};
    return found;
}

}  // namespace ebbline::statistics
