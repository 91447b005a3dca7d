// What a chart draws and what it says.
#include "app/charts/curve_picture.h"
#include "app/charts/curve_words.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::charts;

namespace {

curves::Point scored(double day, int points, bool late = false, bool amended = false)
{
    curves::Point point{};
    point.day = day;
    point.points = points;
    point.late = late;
    point.amended = amended;
    return point;
}

curves::Curve painLeft(std::vector<curves::Point> points)
{
    curves::Curve curve;
    curve.stream = {recovery::Symptom::pain, recovery::Side::left};
    curve.points = std::move(points);
    for (int day = 0; day <= 21; ++day) {
        curve.band.push_back({day, {0, 1, 3}, {0, 1, 5}});
    }
    curve.provenance = {"seed-1", 0, true, "", ""};
    return curve;
}

}  // namespace

TEST_CASE("a day without a score is a gap, two scores a day are not", "[charts]")
{
    const auto picture = pictureOf(painLeft({scored(0.4, 3), scored(1.3, 4), scored(1.8, 4), scored(3.4, 2)}));

    REQUIRE(picture.runs.size() == 2);
    CHECK(picture.runs[0].size() == 3);
    CHECK(picture.runs[1].size() == 1);
}

TEST_CASE("late and amended scores are hollow", "[charts]")
{
    const auto picture = pictureOf(painLeft({scored(0, 3), scored(1, 4, true), scored(2, 4, false, true)}));

    CHECK(picture.plainMarkers.size() == 1);
    CHECK(picture.hollowMarkers.size() == 2);
}

TEST_CASE("the band is drawn from day 0 to the end of day 21 and no further", "[charts]")
{
    auto curve = painLeft({});
    curve.band.push_back({22, {0, 0, 1}, {0, 0, 1}});

    const auto picture = pictureOf(curve);

    REQUIRE(picture.high.size() == 23);
    CHECK(picture.high.last() == QPointF(22, 3));
}

TEST_CASE("the sentence says the course and where it stands in the usual range", "[charts][words]")
{
    auto curve = painLeft({scored(0.4, 3), scored(1.4, 5)});
    curve.peak = curve.points[1];

    CHECK(curveSentence(curve).toStdString()
          == "Pain, patient's left: 2 score(s), day 0 to day 1. Highest 5 on day 1. Last 5 on day 1, above the usual range (0 to 3).");
    CHECK(curveSentence(painLeft({})).toStdString() == "Pain, patient's left: nothing recorded yet.");
}

TEST_CASE("the legend never hides that a band is an assumption or rests on too few", "[charts][words]")
{
    CHECK(bandLegend({"seed-1", 0, true, "", ""}).contains(QLatin1String("an assumption")));
    CHECK(bandLegend({"clinic-1", 12, false, "2027-03-01", ""}).contains(QLatin1String("too few")));
    const auto learned = bandLegend({"clinic-2", 64, false, "2027-03-01", ""});
    CHECK(learned.contains(QLatin1String("64")));
    CHECK(learned.contains(QLatin1String("2027-03-01")));
    CHECK_FALSE(learned.contains(QLatin1String("assumption")));
}
