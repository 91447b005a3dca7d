// The figures of both sides in the practitioner's words: what is known, and what there is too little for.
#include "app/desk/model/curve_figures.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::deskapp;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

/// Evening entries of one side; -1 is a day without one.
std::vector<curves::Sample> evenings(const std::vector<int>& days)
{
    std::vector<curves::Sample> samples;
    for (std::size_t day = 0; day < days.size(); ++day) {
        if (days[day] < 0) {
            continue;
        }
        clock::Moment at = treated;
        at.at += std::chrono::hours(24 * day + 10);
        samples.push_back({at, *recovery::Score::of(days[day]), false, false});
    }
    return samples;
}

QString figures(const std::vector<int>& left, const std::vector<int>& right)
{
    const auto curve = [](recovery::Side side, const std::vector<int>& days) {
        return curves::curveOf({recovery::Symptom::swelling, side}, treated, evenings(days), bands::seedBand(), 21);
    };
    return figuresOf({curve(recovery::Side::left, left), curve(recovery::Side::right, right),
                      curves::asymmetryOf(evenings(left), evenings(right), treated)});
}

}  // namespace

TEST_CASE("each side has its figures with the days they are of, and the sides are set against each other", "[figures]")
{
    // Area: trapezoids 6 + 7 + 5 + 3.5 + 2.5 + 1.5 + 1 + 0.5. Left - right: 1 2 3 2 2 1 0 0 0, of 47 points.
    CHECK(figures({4, 8, 6, 4, 3, 2, 1, 1, 0}, {3, 6, 3, 2, 1, 1, 1, 1, 0})
          == QStringLiteral("Left: highest 8 on day 1, halved in 1.9 days, settled on day 6, and area 27.0 points × days, day 0 to 8. "
                            "Right: highest 6 on day 1, halved in 2.5 days, settled on day 4, and area 16.5 points × days, "
                            "day 0 to 8. "
                            "Left against right, 9 days with both: left 1.2 higher on average, most on day 2 (left 3 higher), "
                            "and the difference is 23% of the sum."));
}

TEST_CASE("a side that never had the symptom is not said to have settled", "[figures]")
{
    const QString text = figures({0, 0, 0, 0}, {4, 2, 1, 0});
    CHECK(text.contains(QStringLiteral("settled on day 2")));
    CHECK(text.count(QStringLiteral("settled")) == 1);
}

TEST_CASE("exchanged sides are named the other way round, and no sign has to be remembered", "[figures]")
{
    const QString text = figures({3, 2, 3}, {4, 6, 5});
    CHECK(text.contains(QStringLiteral("right 2.3 higher on average, most on day 1 (right 4 higher)")));
    CHECK_FALSE(text.contains(u'-'));
}

TEST_CASE("sides that are level are said to be, without a day on which they were furthest apart", "[figures]")
{
    CHECK(figures({4, 5, 3}, {4, 5, 3})
              .endsWith(QStringLiteral("3 days with both: level on average and the difference is 0% of the sum.")));
}

TEST_CASE("too little for an area, for the sides or for a share is said, not left out", "[figures]")
{
    CHECK(figures({4}, {3})
          == QStringLiteral("Left: highest 4 on day 0 and area: not enough to say. "
                            "Right: highest 3 on day 0 and area: not enough to say. "
                            "Left against right: not enough to say."));
    CHECK(figures({1, 0, 0}, {0, 0, 1}).endsWith(QStringLiteral("and too few points for a share of the sum.")));
}

TEST_CASE("a side without an entry has no figures, and a symptom without one has none at all", "[figures]")
{
    const QString one = figures({4, 5, 3}, {});
    CHECK(one.startsWith(QStringLiteral("Left: ")));
    CHECK_FALSE(one.contains(QStringLiteral("Right: ")));
    CHECK(one.endsWith(QStringLiteral("Left against right: not enough to say.")));
    CHECK(figures({}, {}).isEmpty());
}

TEST_CASE("what was written after the axis ends is told in words, and nothing is where nothing lies beyond", "[figures]")
{
    const auto beyond = [](const std::vector<int>& left, const std::vector<int>& right) {
        const auto curve = [](recovery::Side side, const std::vector<int>& days) {
            return curves::curveOf({recovery::Symptom::swelling, side}, treated, evenings(days), bands::seedBand(), 35);
        };
        return beyondOf({curve(recovery::Side::left, left), curve(recovery::Side::right, right), {}});
    };
    std::vector<int> days(22, 1);  // the last on day 21
    CHECK(beyond(days, days).isEmpty());
    auto later = days;
    later.insert(later.end(), {2, -1, -1, 4});
    CHECK(beyond(later, days) == QStringLiteral("The axis ends with day 21. Last written after it: left 4 on day 25. The table has every score."));
    CHECK(beyond(later, later).contains(QStringLiteral("right 4 on day 25 and left 4 on day 25")));
}
