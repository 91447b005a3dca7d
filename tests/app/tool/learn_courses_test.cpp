// Tables as courses that are over, and what is printed of them.

#include "app/tool/learn_courses.h"
#include "app/tool/learn_report.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <sstream>

using namespace ebbline;
using namespace ebbline::tool;

namespace {

exchange::ScoreRow score(const std::string& course, const char* entered, int points)
{
    return {course, *clock::parseIso8601("2027-03-01T10:00:00+01:00"), *clock::parseIso8601(entered), recovery::Symptom::pain,
            recovery::Side::left, *recovery::Score::of(points)};
}

exchange::TruthRow told(const std::string& course, const std::string& kind)
{
    return {course, kind, {}, recovery::Side::none};
}

std::vector<exchange::ScoreRow> scoresOf(const std::vector<std::string>& courses)
{
    std::vector<exchange::ScoreRow> rows;
    for (const std::string& course : courses)
        for (const auto& [entered, points] : {std::pair{"2027-03-01T20:00:00+01:00", 5}, std::pair{"2027-03-02T20:00:00+01:00", 1},
                                              std::pair{"2027-03-03T20:00:00+01:00", 0}})
            rows.push_back(score(course, entered, points));
    return rows;
}

}  // namespace

TEST_CASE("plain ended well, silent is not known, everything else is a complication", "[tool][learn]")
{
    const auto courses = pastCourses(scoresOf({"a", "b", "c", "d"}),
                                     {told("a", "plain"), told("b", "silent"), told("c", "infection"), told("c", "haematoma"),
                                      told("d", "silent"), told("d", "infection")},
                                     {});

    REQUIRE(courses);
    REQUIRE(courses->size() == 4);
    CHECK_FALSE((*courses)[0].outcome->complicated);
    CHECK_FALSE((*courses)[1].outcome);
    CHECK((*courses)[2].outcome->kinds == std::vector<std::string>{"infection", "haematoma"});
    CHECK((*courses)[3].outcome->complicated);
    CHECK((*courses)[0].days.size() == 3);
}

TEST_CASE("placements give technique, zones, lots and clinic; two techniques are mixed", "[tool][learn]")
{
    const auto courses = pastCourses(
        scoresOf({"a", "b"}), {told("a", "plain"), told("b", "plain")},
        {{"a", "Mole", "cones", recovery::Zone::cheek, "TH-1"}, {"a", "Mole", "cones", recovery::Zone::neck, "TH-1"},
         {"b", "", "cones", {}, "TH-2"}, {"b", "", "", {}, ""}, {"b", "", "long barbs", {}, ""}});

    REQUIRE(courses);
    CHECK((*courses)[0].technique == "cones");
    CHECK((*courses)[0].zones == std::vector<std::string>{"cheek", "neck"});
    CHECK((*courses)[0].lots == std::vector{learning::PackLot{"TH-1"}});
    CHECK((*courses)[0].clinic == "Mole");
    CHECK((*courses)[1].technique == "mixed");
}

TEST_CASE("a course in one table alone is named", "[tool][learn][errors]")
{
    CHECK(pastCourses(scoresOf({"a"}), {}, {}).error().detail.find("'a'") != std::string::npos);
    CHECK(pastCourses({}, {told("q", "plain")}, {}).error().detail.find("'q'") != std::string::npos);
    const auto stray = pastCourses(scoresOf({"a"}), {told("a", "plain")}, {{"z", "", "cones", {}, ""}});
    CHECK(stray.error().reason == Reason::notFound);
    CHECK(stray.error().detail.find("'z'") != std::string::npos);
}

TEST_CASE("a course's own risk adjusts the chart over time, and without one every course has the same", "[tool][learn]")
{
    // R 4.2.2, recomputed from Steiner et al., Biostatistics 2000;1:441, with odds ratio 2.
    const std::vector<double> values{.02, .05, .10, .04, .08, .03, .15, .05, .06, .02};
    std::vector<std::string> names;
    std::vector<exchange::TruthRow> truth;
    std::vector<exchange::RiskRow> risks;
    for (std::size_t i = 0; i < values.size(); ++i) {
        names.push_back("c" + std::to_string(i));
        truth.push_back(told(names[i], i == 2 || i == 4 || i == 7 ? "infection" : "plain"));
        risks.push_back({names[i], values[i]});
    }
    const auto reported = [&](const std::vector<exchange::RiskRow>& own) {
        const auto courses = pastCourses(scoresOf(names), truth, {}, own);
        REQUIRE(courses);
        auto report = learnReport(*courses, {});
        REQUIRE(report);
        return *report;
    };
    const auto textOf = [](const LearnReport& report) {
        std::ostringstream text;
        printText(report, text);
        return text.str();
    };

    const LearnReport adjusted = reported(risks);
    CHECK_THAT(adjusted.watch.points.back().sum, Catch::Matchers::WithinAbs(1.5717672, 5e-7));
    CHECK_THAT(adjusted.watch.points.back().expectedMinusObserved, Catch::Matchers::WithinAbs(-2.40, 1e-9));
    REQUIRE(adjusted.risks);
    CHECK(adjusted.risks->lowest == .02);
    CHECK(adjusted.risks->highest == .15);
    CHECK(adjusted.risks->falseSignal.first <= adjusted.risks->falseSignal.second);
    CHECK(textOf(adjusted).find("10 of 10 courses have a risk of their own (all risks: 0.02 to 0.15)") != std::string::npos);
    CHECK(textOf(adjusted).find("the same risk is taken") == std::string::npos);
    std::ostringstream json;
    printJson(adjusted, json);
    CHECK(json.str().find("\"ownRisks\": 10") != std::string::npos);
    CHECK(json.str().find("\"falseSignal\": null") != std::string::npos);
    CHECK(json.str().find("\"falseSignalMost\": ") != std::string::npos);

    const LearnReport some = reported({{"c7", .15}});
    CHECK_THAT(some.watch.points.back().expectedMinusObserved, Catch::Matchers::WithinAbs(9 * .05 + .15 - 3, 1e-9));
    CHECK(textOf(some).find("1 of 10 courses have a risk of their own (all risks: 0.05 to 0.15)") != std::string::npos);

    const LearnReport none = reported({});
    CHECK_FALSE(none.risks);
    CHECK_THAT(none.watch.points.back().expectedMinusObserved, Catch::Matchers::WithinAbs(10 * .05 - 3, 1e-9));
    CHECK(textOf(none).find("the same risk is taken for every course") != std::string::npos);

    const auto stray = pastCourses(scoresOf({"a"}), {told("a", "plain")}, {}, {{"z", .1, {2, 1}}});
    CHECK(stray.error().reason == Reason::notFound);
    CHECK(stray.error().detail == "table of risks, line 2: course 'z' has no row in the table of scores");
}

TEST_CASE("a report of nothing, or of one course, holds no number that is none", "[tool][learn]")
{
    for (const auto& names : {std::vector<std::string>{}, std::vector<std::string>{"a"}}) {
        std::vector<exchange::TruthRow> truth;
        for (const std::string& name : names)
            truth.push_back(told(name, "plain"));
        const auto courses = pastCourses(scoresOf(names), truth, {});
        REQUIRE(courses);
        auto report = learnReport(*courses, {});
        REQUIRE(report);
        report->comparison = learning::compareTechniques(*courses, "cones", "long barbs");
        std::ostringstream text;
        std::ostringstream json;
        printText(*report, text);
        printJson(*report, json);
        for (const std::string& printed : {text.str(), json.str()}) {
            CHECK(printed.find("nan") == std::string::npos);
            CHECK(printed.find("inf") == std::string::npos);
            CHECK(printed.find("not enough to say") != std::string::npos);
            CHECK(printed.find(learning::caution) != std::string::npos);
        }
    }
}

TEST_CASE("a probability too small for a number is printed as below one, never as 0", "[tool][learn]")
{
    learning::Comparison comparison;
    // As of 1,000 complicated of 1,000 against none of 1,000.
    learning::ShareComparison shares{};
    shares.probability = 0;
    comparison.shares = shares;
    learning::TimeComparison times{};
    times.probability = 0;
    comparison.symptoms.front().times = times;
    LearnReport report;
    report.comparison = comparison;

    std::ostringstream text;
    printText(report, text);
    CHECK(text.str().find("Fisher's p < 0.0001; ") != std::string::npos);
    CHECK(text.str().find("log-rank p < 0.0001; ") != std::string::npos);
    std::ostringstream json;
    printJson(report, json);
    CHECK(json.str().find("\"fisherBelow\": 1e-15") != std::string::npos);
    CHECK(json.str().find("\"logRankBelow\": 1e-15") != std::string::npos);
    CHECK(json.str().find("\"fisher\"") == std::string::npos);
}
