#include "tests/bench/pictures/picture.h"

#include "core/statistics/count_rate.h"
#include "core/statistics/paired_counts.h"

namespace ebbline::bench {

namespace {

constexpr long courses = 100;
constexpr long mostAlerts = 20;

/// Alerts of 100 courses, `each` of them on one course.
statistics::CountRate rateOf(long alerts, long each)
{
    std::vector<long> counts(courses, 0);
    for (long i = 0; i < alerts / each; ++i)
        counts[static_cast<std::size_t>(i)] = each;
    return statistics::countRate(counts).value();
}

Picture alerts()
{
    Picture picture("Alerts per 100 courses with limits: each on another course, and two on one.",
                    axis("alerts of 100 courses", 0, mostAlerts + 1, 5), axis("alerts per 100 courses", 0, 40, 10));
    struct Look { long each; double aside; Stroke stroke; Mark mark; const char* name; };
    for (const auto& [each, aside, stroke, mark, name] :
         {Look{1, -0.15, {ink::tide, Dash::solid, 2}, Mark::round, "each on another course"},
          Look{2, 0.15, {ink::right, Dash::dashed, 2}, Mark::square, "two on one course: they tell of half as many"}}) {
        Points rates;
        for (long count = 0; count <= mostAlerts; count += 2) {
            const statistics::CountRate rate = rateOf(count, each);
            const double x = static_cast<double>(count) + aside;
            picture.bar(x, courses * rate.interval.low, courses * rate.interval.high, stroke);
            rates.emplace_back(x, courses * rate.rate);
        }
        picture.marks(rates, mark, stroke.colour, name);
    }
    picture.note("none seen still has an upper limit");
    return picture;
}

Picture moved()
{
    Picture picture("Share of 100 courses that a changed protocol flags more or less, by how many moved.",
                    axis("courses of 100 that are no longer flagged", 0, mostAlerts + 1, 5), axis("change of the share flagged", -0.4, 0.2, 0.1, 1));
    struct Look { long other; double aside; Stroke stroke; Mark mark; const char* name; };
    for (const auto& [other, aside, stroke, mark, name] :
         {Look{0, -0.15, {ink::tide, Dash::solid, 2}, Mark::round, "none newly flagged"},
          Look{5, 0.15, {ink::right, Dash::dashed, 2}, Mark::square, "five newly flagged"}}) {
        Points shares;
        for (long count = 0; count <= mostAlerts; count += 2) {
            const statistics::PairedDifference share = statistics::pairedDifference(count, other, courses).value();
            const double x = static_cast<double>(count) + aside;
            picture.bar(x, share.interval.low, share.interval.high, stroke);
            shares.emplace_back(x, share.value);
        }
        picture.marks(shares, mark, stroke.colour, name);
    }
    picture.across(0, {ink::edge, Dash::dotted, 1.2}, "no change");
    return picture;
}

}  // namespace

std::vector<Named> practicePictures()
{
    return {{"alerts-per-course", alerts()}, {"rehearsal-moved", moved()}};
}

}  // namespace ebbline::bench
