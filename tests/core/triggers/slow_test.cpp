// A recovery that is slow: by its statistic, and by a high score that stays.

#include "core/triggers/stuck.h"
#include "tests/core/triggers/evenings.h"
#include "tests/core/triggers/random_course.h"

#include <catch2/catch_test_macros.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <map>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

TEST_CASE("swelling that stays through the second week is slow", "[triggers]")
{
    const auto findings = judged(series(Symptom::swelling, Side::left, {4, 5, 5, 5, 5, 5, 5, 4, 4, 4, 4, 4, 4, 4}), 13);

    CHECK(find(findings, Trigger::slowRecovery));
}

TEST_CASE("a high score that stays is slow from its day on, however high it began", "[triggers][safety]")
{
    for (const Symptom symptom : {Symptom::pain, Symptom::swelling, Symptom::bruising, Symptom::tightness})
        for (const Side side : {Side::left, Side::right, Side::none})
            for (int score = stuckOf(symptom)->from; score <= 10; ++score)
                for (const int beginning : {0, score, 10}) {
                    CAPTURE(recovery::word(symptom), static_cast<int>(side), score, beginning);
                    std::vector<int> scores(5, beginning);
                    scores.resize(16, score);
                    const auto findings = judged(series(symptom, side, scores), 15);
                    const auto slow = std::ranges::find_if(findings, [&](const Finding& finding) {
                        return finding.trigger == Trigger::slowRecovery && finding.stream == Stream{symptom, side} && !isOverall(finding);
                    });
                    REQUIRE(slow != findings.end());
                    CHECK(slow->day <= stuckOf(symptom)->firstDay);
                    CHECK(slow->urgency == Urgency::nextWorkingDay);
                }
}

TEST_CASE("before its day, below its points, or with one low answer of the last two, nothing is slow by its points", "[triggers]")
{
    Protocol protocol = defaultProtocol();
    protocol.thresholds.slowRecovery = protocol.thresholds.slowOverall = highestThreshold;
    const auto slow = [&](const std::vector<int>& scores, Symptom symptom = Symptom::pain) {
        const auto findings = judged(series(symptom, Side::left, scores), static_cast<int>(scores.size()) - 1, protocol);
        return find(findings, Trigger::slowRecovery) != nullptr;
    };
    CHECK_FALSE(slow(std::vector<int>(10, 9)));
    CHECK(slow(std::vector<int>(11, 5)));
    CHECK_FALSE(slow({8, 8, 8, 8, 7, 7, 6, 6, 5, 5, 4}));
    CHECK_FALSE(slow({8, 8, 8, 8, 8, 8, 8, 8, 8, 4, 9}));
    CHECK(slow({8, 8, 8, 8, 8, 8, 8, 8, 8, 5, 5}));
    for (const Symptom symptom : {Symptom::swelling, Symptom::bruising, Symptom::tightness}) {
        CHECK_FALSE(slow(std::vector<int>(14, 9), symptom));
        CHECK_FALSE(slow(std::vector<int>(22, 5), symptom));
        CHECK(slow(std::vector<int>(15, 6), symptom));
    }
    for (const Symptom symptom : {Symptom::twinges, Symptom::puckering, Symptom::numbness})
        CHECK_FALSE(slow(std::vector<int>(22, 9), symptom));
}

TEST_CASE("higher scores never lose what their points alone raised as slow", "[triggers][property]")
{
    CHECK(rc::check("no better, no quieter", [] {
        Protocol protocol = defaultProtocol();
        protocol.thresholds.slowRecovery = protocol.thresholds.slowOverall = highestThreshold;
        const CourseInput course = randomCourse();
        CourseInput worse = course;
        for (Observation& observation : worse.observations)
            for (const auto& [stream, score] : recovery::Scores(observation.scores))
                observation.scores.insert_or_assign(stream, points(std::min(10, score.points() + *rc::gen::inRange(0, 4))));
        const auto whose = [&](const CourseInput& input) {
            std::map<Stream, clock::Instant> raised;
            for (const Finding& finding : judge(input, protocol, onDay(80)))
                if (finding.trigger == Trigger::slowRecovery && !isOverall(finding))
                    raised.emplace(finding.stream, finding.raisedAt.at);
            return raised;
        };
        const auto later = whose(worse);
        for (const auto& [stream, at] : whose(course)) {
            RC_ASSERT(later.contains(stream));
            RC_ASSERT(later.at(stream) <= at);
        }
    }));
}
