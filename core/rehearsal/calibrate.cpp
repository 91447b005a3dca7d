#include "core/rehearsal/calibrate.h"

#include "core/bands/versions.h"
#include "core/clock/iso8601.h"
#include "core/crypto/crypto.h"
#include "core/rehearsal/allocate.h"
#include "core/rehearsal/chance.h"
#include "core/rehearsal/grounds.h"
#include "core/rehearsal/taught.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <utility>

namespace ebbline::rehearsal {

namespace {

using triggers::allStatistics;

constexpr int bisections = 24;
constexpr double assurance = 1.28;  // normal quantile of 90 %
constexpr std::size_t mostTroubled = 500;  // courses of each kind

constexpr std::size_t shownDigits = 8;  // of the hash, in a version's name

/// A course of a table has a name only; its id is made from it.
recovery::CourseId idOf(const std::string& name)
{
    return recovery::CourseId::from(bytes::View(crypto::hash256(bytes::viewOf(name))).first(16));
}

struct LearnedBand {
    bands::Band band;
    bands::Coverage coverage;
};

/// Always from the seed: courses that taught the band a protocol has would count twice, and check what they taught.
Result<LearnedBand> learned(const std::vector<const KnownCourse*>& plain)
{
    const bands::Band& seed = bands::seedBand();
    std::vector<bands::Taught> taught;
    std::vector<bands::TaughtCourse> courses;
    std::vector<const triggers::CourseInput*> inputs;
    clock::LocalDay last{};
    for (const KnownCourse* course : plain) {
        taught.push_back(taughtAs(idOf(course->name), course->input));
        courses.push_back(taught.back().days);
        inputs.push_back(&course->input);
        last = std::max(last, course->input.treated.day());
    }
    const auto coverage = bands::crossValidate(taught, seed);
    if (!coverage)
        return fail(coverage.error());
    bands::Provenance provenance;
    provenance.learnedOn = clock::toIso8601(last);
    provenance.hash = bands::groundsHash(taught, seed);
    provenance.version = "calibrated-" + provenance.learnedOn + "-" + provenance.hash.substr(0, shownDigits);
    const auto band = bands::learnBand(courses, seed, provenance, sidesMovement(inputs, seed));
    if (!band)
        return fail(band.error());
    auto whole = withSums(*band, inputs);
    if (!whole)
        return fail(whole.error());
    return LearnedBand{*whole, *coverage};
}

/// Whether anything was written after the evening of day 21.
bool goesOn(const triggers::CourseInput& course)
{
    const clock::Instant end = endOf(course).at;
    return std::any_of(course.observations.begin(), course.observations.end(), [&](const auto& one) { return one.at.at > end; });
}

/// The course as it stood that evening.
KnownCourse shortened(KnownCourse course)
{
    const clock::Instant end = endOf(course.input).at;
    std::erase_if(course.input.observations, [&](const triggers::Observation& one) { return one.at.at > end; });
    return course;
}

/// What comes of a cohort's own limits: with few courses they are drawn towards the thresholds it
/// started from, and a statistic that no ordinary course ever reaches keeps the threshold it had.
struct Blend {
    Limits start;
    double own;  ///< 0..1

    Limits operator()(Limits limits) const
    {
        for (std::size_t j = 0; j < statisticCount; ++j)
            limits[j] = limits[j] > never ? own * limits[j] + (1 - own) * start[j] : start[j];
        return limits;
    }
};

/// Share of the courses left out of a resample that alert under the thresholds that would come of it.
double heldOutRate(const Cohort& cohort, const std::vector<std::vector<int>>& resamples, double alpha,
                   const Shares& shares, const Blend& blend)
{
    double alerting = 0;
    double outside = 0;
    for (const std::vector<int>& weights : resamples) {
        const Limits limits = blend(cohort.limits(alpha, shares, weights));
        for (std::size_t course = 0; course < weights.size(); ++course)
            if (weights[course] == 0) {
                outside += 1;
                alerting += alerts(cohort.peaks()[course], limits) ? 1 : 0;
            }
    }
    return outside > 0 ? alerting / outside : 0;
}

}  // namespace

Result<Calibration> calibrate(std::span<const KnownCourse> courses, const triggers::Protocol& start,
                              const CalibrationSettings& settings)
{
    if (!(settings.budget >= triggers::smallestBudget && settings.budget <= triggers::largestBudget))
        return fail(Reason::outOfRange, "budget: want 0.5..50 alerts per 100 courses");
    if (settings.resamples < 10 || settings.resamples > 1000)
        return fail(Reason::outOfRange, "resamples: want 10..1000");
    for (const double share : settings.shares.value_or(usualShares))
        if (!std::isfinite(share) || share < 0)
            return fail(Reason::outOfRange, "shares: want 0 or more");
    std::deque<KnownCourse> cut;  // of long courses, where their addresses stay
    std::vector<const KnownCourse*> plain;
    for (const KnownCourse& course : courses) {
        if (!course.truth.isPlain())
            continue;
        const KnownCourse& within = goesOn(course.input) ? cut.emplace_back(shortened(course)) : course;
        if (!within.input.observations.empty())
            plain.push_back(&within);
    }
    if (plain.size() < static_cast<std::size_t>(fewestToCalibrate))
        return fail(Reason::notEnough, "uncomplicated courses with entries: want at least "
                                           + std::to_string(fewestToCalibrate) + ", have "
                                           + std::to_string(plain.size()));

    Calibration result{.protocol = start, .plainCourses = static_cast<int>(plain.size())};
    result.protocol.former.reset();
    const auto progress = [&](int done) {
        if (settings.progress)
            settings.progress(done, 100);
    };
    progress(0);
    if (settings.learnBand) {
        Result<LearnedBand> band = learned(plain);
        if (!band)
            return fail(band.error());
        result.coverage = band->coverage;
        if (const auto against = bands::objection(band->coverage))
            result.bandObjection = against->detail;
        else
            result.protocol.band = band->band;
    }
    progress(30);

    std::vector<Peaks> peaks;
    peaks.reserve(plain.size());
    for (std::size_t i = 0; i < plain.size(); ++i) {
        peaks.push_back(peaksOf(plain[i]->input, result.protocol, endOf(plain[i]->input)));
        if (i % 256 == 0)
            progress(30 + static_cast<int>(40 * i / plain.size()));
    }
    const Cohort cohort(std::move(peaks));
    const double courseCount = static_cast<double>(plain.size());
    for (const Peaks& course : cohort.peaks())
        result.ruleRate += course.byRule ? 1 / courseCount : 0;
    const double budget = settings.budget / 100;
    if (result.ruleRate > budget)
        return fail(Reason::refused, "the rules in points alone alert in more courses than the budget allows");

    const bool enough = plain.size() >= static_cast<std::size_t>(enoughForThresholds);
    // Whole courses are drawn, never days: what happens within a course belongs together.
    Chance chance(settings.seed, 0);
    std::vector<std::vector<int>> resamples(static_cast<std::size_t>(settings.resamples),
                                            std::vector<int>(plain.size(), 0));
    for (std::vector<int>& weights : resamples)
        for (std::size_t i = 0; i < plain.size(); ++i)
            ++weights[static_cast<std::size_t>(chance.whole(0, static_cast<int>(plain.size()) - 1))];

    // A rate read off so many courses is itself uncertain: aim below, so that the budget holds.
    const double spread = std::sqrt(budget * (1 - budget) / courseCount);
    const double aim = std::max(budget - assurance * spread, (budget + result.ruleRate) / 2);
    if (settings.shares)
        result.shares = *settings.shares;
    else if (enough)
        result.shares = allocated(cohort, troubledPeaks(plain, result.protocol, settings.seed, mostTroubled), aim, usualShares);
    progress(75);

    triggers::Thresholds& thresholds = result.protocol.thresholds;
    Blend blend{{}, std::min(1.0, courseCount / enoughForThresholds)};
    for (std::size_t j = 0; j < statisticCount; ++j)
        blend.start[j] = triggers::thresholdOf(std::as_const(thresholds), allStatistics[j]);
    // The cohort's own limits are sought by themselves: sought through the blend they would undo it.
    const Blend unblended{blend.start, 1};
    double low = 0;
    double high = mostAlpha;
    for (int i = 0; i < bisections; ++i) {
        const double middle = (low + high) / 2;
        (heldOutRate(cohort, resamples, middle, result.shares, unblended) <= aim ? low : high) = middle;
        progress(75 + 25 * (i + 1) / bisections);
    }
    result.heldOutRate = heldOutRate(cohort, resamples, low, result.shares, blend);

    if (enough && result.heldOutRate > budget)
        return fail(Reason::refused, "no thresholds hold the budget: even the strictest alert in "
                                         + std::to_string(std::lround(100 * result.heldOutRate))
                                         + " of 100 courses that they were not fitted to");

    // Bisection came down to nothing: the strictest thresholds that these courses give.
    result.strictest = low == 0;
    const Limits used = blend(cohort.limits(low, result.shares, std::vector<int>(plain.size(), 1)));
    result.ownThresholds = enough;
    for (std::size_t j = 0; j < statisticCount; ++j)
        triggers::thresholdOf(thresholds, allStatistics[j]) = used[j];
    for (std::size_t course = 0; course < plain.size(); ++course) {
        result.fittedRate += alerts(cohort.peaks()[course], used) ? 1 / courseCount : 0;
        for (std::size_t j = 0; j < statisticCount; ++j)
            result.statisticRate[j] += cohort.peaks()[course].values[j] > used[j] ? 1 / courseCount : 0;
    }
    thresholds.falseAlertBudget = settings.budget;
    thresholds.calibratedOn = calibratedOn(plain.size());
    if (const Done possible = triggers::check(thresholds); !possible)
        return fail(Reason::refused, "these courses give no thresholds that make sense: " + possible.error().detail);
    return result;
}

}  // namespace ebbline::rehearsal
