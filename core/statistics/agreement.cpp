#include "core/statistics/agreement.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ebbline::statistics {

namespace {

constexpr std::size_t mostCategories = 100;

Interval around(double middle, double half)
{
    return {middle - half, middle + half};
}

double square(double x)
{
    return x * x;
}

/// How much it is worth that one said i and the other j, 0..1.
double worth(Disagreement disagreement, std::size_t i, std::size_t j, std::size_t categories)
{
    const double apart = std::abs(static_cast<double>(i) - static_cast<double>(j));
    const double most = static_cast<double>(categories) - 1;
    switch (disagreement) {
    case Disagreement::any:
        return i == j ? 1 : 0;
    case Disagreement::linear:
        return 1 - apart / most;
    case Disagreement::quadratic:
        break;
    }
    return 1 - square(apart / most);
}

/// By Shrout and Fleiss's appendix; the distribution of the ratio is approximate.
std::optional<Interval> absoluteInterval(const IntraclassCorrelation& icc, double n, double k)
{
    const double rest = icc.residual;
    if (!(rest > 0) || !(icc.absolute < 1))
        return std::nullopt;
    const double raters = icc.betweenRaters / rest;
    const double free = (k - 1) * (n - 1)
                        * square(k * icc.absolute * raters + n * (1 + (k - 1) * icc.absolute) - k * icc.absolute)
                        / ((n - 1) * square(k * icc.absolute * raters)
                           + square(n * (1 + (k - 1) * icc.absolute) - k * icc.absolute));
    const Result<double> upper = fQuantile(0.975, n - 1, free);
    const Result<double> lower = fQuantile(0.975, free, n - 1);
    if (!upper || !lower)
        return std::nullopt;
    const double between = icc.betweenSubjects;
    const double others = k * icc.betweenRaters + (k * n - k - n) * rest;
    const Interval interval{n * (between - *upper * rest) / (*upper * others + n * between),
                            n * (*lower * between - rest) / (others + n * *lower * between)};
    if (!std::isfinite(interval.low) || !std::isfinite(interval.high))
        return std::nullopt;
    return interval;
}

}  // namespace

Result<LimitsOfAgreement> limitsOfAgreement(std::span<const double> differences, double coverage)
{
    if (!(coverage > 0 && coverage < 1))
        return fail(Reason::outOfRange, "coverage: want 0 < coverage < 1");
    if (std::ranges::any_of(differences, [](double d) { return !std::isfinite(d); }))
        return fail(Reason::notFinite, "differences: want finite numbers");
    if (differences.size() < 3)
        return fail(Reason::notEnough, "want at least three differences");
    if (std::ranges::all_of(differences, [&](double d) { return d == differences.front(); }))
        return fail(Reason::notEnough, "all differences are equal");
    const auto n = static_cast<double>(differences.size());
    const double bias = std::accumulate(differences.begin(), differences.end(), 0.0) / n;
    double squares = 0;
    for (const double difference : differences)
        squares += square(difference - bias);
    const double deviation = std::sqrt(squares / (n - 1));
    const Result<double> z = normalQuantile(0.5 + coverage / 2);
    const Result<double> t = studentQuantile(0.975, n - 1);
    if (!z || !t)
        return fail(z ? t.error() : z.error());
    if (!std::isfinite(deviation) || !(deviation > 0))
        return fail(Reason::notFinite, "differences: too far apart");
    const Interval limits = around(bias, *z * deviation);
    const double half = *t * deviation / std::sqrt(n), halfOfLimit = *t * deviation * std::sqrt(3 / n);
    return LimitsOfAgreement{static_cast<long>(differences.size()), bias, deviation, limits, around(bias, half),
                             around(limits.low, halfOfLimit), around(limits.high, halfOfLimit)};
}

Result<Kappa> kappa(std::span<const std::vector<long>> counts, Disagreement disagreement)
{
    const std::size_t k = counts.size();
    if (k < 2 || k > mostCategories)
        return fail(Reason::outOfRange, "counts: want 2..100 categories");
    double total = 0;
    std::vector<double> rows(k, 0), columns(k, 0);
    for (std::size_t i = 0; i < k; ++i) {
        if (counts[i].size() != k)
            return fail(Reason::outOfRange, "counts: want a square table");
        for (std::size_t j = 0; j < k; ++j) {
            if (counts[i][j] < 0)
                return fail(Reason::outOfRange, "counts: want numbers >= 0");
            const auto count = static_cast<double>(counts[i][j]);
            rows[i] += count;
            columns[j] += count;
            total += count;
        }
    }
    if (!(total > 0))
        return fail(Reason::notEnough, "nothing was rated");
    for (double& share : rows)
        share /= total;
    for (double& share : columns)
        share /= total;
    double observed = 0, expected = 0;
    std::vector<double> rowWorth(k, 0), columnWorth(k, 0);
    for (std::size_t i = 0; i < k; ++i)
        for (std::size_t j = 0; j < k; ++j) {
            const double w = worth(disagreement, i, j, k);
            observed += w * static_cast<double>(counts[i][j]) / total;
            expected += w * rows[i] * columns[j];
            rowWorth[i] += w * columns[j];
            columnWorth[j] += w * rows[i];
        }
    if (!(expected < 1 - 1e-12))
        return fail(Reason::notEnough, "chance alone would always agree");
    double spread = 0;
    for (std::size_t i = 0; i < k; ++i)
        for (std::size_t j = 0; j < k; ++j)
            spread += static_cast<double>(counts[i][j]) / total
                      * square(worth(disagreement, i, j, k) * (1 - expected)
                               - (rowWorth[i] + columnWorth[j]) * (1 - observed));
    const double variance =
        (spread - square(observed * expected - 2 * expected + observed)) / (total * square(square(1 - expected)));
    Kappa result{(observed - expected) / (1 - expected), std::nullopt};
    // What is left of an exact zero by rounding is no spread.
    if (variance > 1e-14)
        result.standardError = std::sqrt(variance);
    return result;
}

Result<IntraclassCorrelation> intraclassCorrelation(std::span<const std::vector<double>> ratings)
{
    if (ratings.size() < 2 || ratings.front().size() < 2)
        return fail(Reason::notEnough, "want at least two subjects and two raters");
    const auto n = static_cast<double>(ratings.size()), k = static_cast<double>(ratings.front().size());
    double mean = 0;
    std::vector<double> subjects, raters(ratings.front().size(), 0);
    for (const auto& row : ratings) {
        if (row.size() != ratings.front().size())
            return fail(Reason::outOfRange, "ratings: want one of each rater for each subject");
        double sum = 0;
        for (std::size_t rater = 0; rater < row.size(); ++rater) {
            if (!std::isfinite(row[rater]))
                return fail(Reason::notFinite, "ratings: want finite numbers");
            sum += row[rater];
            raters[rater] += row[rater] / n;
        }
        subjects.push_back(sum / k);
        mean += sum / (n * k);
    }
    double total = 0, between = 0, byRater = 0;
    for (const auto& row : ratings)
        for (const double rating : row)
            total += square(rating - mean);
    for (const double subject : subjects)
        between += k * square(subject - mean);
    for (const double rater : raters)
        byRater += n * square(rater - mean);
    IntraclassCorrelation icc{};
    icc.betweenSubjects = between / (n - 1);
    icc.withinSubjects = (total - between) / (n * (k - 1));
    icc.betweenRaters = byRater / (k - 1);
    icc.residual = std::max(0.0, total - between - byRater) / ((n - 1) * (k - 1));
    const double b = icc.betweenSubjects, w = icc.withinSubjects, j = icc.betweenRaters, e = icc.residual;
    // What is left of equal means by rounding is no difference.
    if (!(b > 1e-14 * total) || !std::isfinite(total))
        return fail(Reason::notEnough, "the subjects do not differ");
    icc.oneWay = (b - w) / (b + (k - 1) * w);
    icc.absolute = (b - e) / (b + (k - 1) * e + k * (j - e) / n);
    icc.consistency = (b - e) / (b + (k - 1) * e);
    icc.oneWayMean = (b - w) / b;
    if (const double denominator = b + (j - e) / n; denominator > 1e-14 * (b + e))
        icc.absoluteMean = (b - e) / denominator;
    icc.consistencyMean = (b - e) / b;
    icc.absoluteInterval = absoluteInterval(icc, n, k);
    return icc;
}

}  // namespace ebbline::statistics
