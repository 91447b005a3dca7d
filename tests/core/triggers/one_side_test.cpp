// One side that goes its own way, and folds that stay.

#include "core/triggers/course_watch.h"
#include "tests/core/triggers/evenings.h"

#include <catch2/catch_test_macros.hpp>

#include <map>

using namespace ebbline;
using namespace ebbline::triggers;
using namespace ebbline::triggers::evenings;

namespace {

/// An evening's answers for left and right.
using Evening = std::map<Symptom, std::pair<int, int>>;

/// Evenings from day 0, judged so that a side fills as soon as its points say so: what is raised on that.
std::vector<Finding> filling(const std::vector<Evening>& evenings)
{
    CourseInput course{treated, {}, {}};
    for (std::size_t day = 0; day < evenings.size(); ++day) {
        Observation observation{onDay(static_cast<int>(day)), {}};
        for (const auto& [symptom, sides] : evenings[day]) {
            observation.scores.insert_or_assign(Stream{symptom, Side::left}, points(sides.first));
            observation.scores.insert_or_assign(Stream{symptom, Side::right}, points(sides.second));
        }
        course.observations.push_back(observation);
    }
    Protocol protocol = defaultProtocol();
    protocol.thresholds.oneSideFills = 0;
    std::vector<Finding> findings = judged(course, static_cast<int>(evenings.size()) - 1, protocol);
    std::erase_if(findings, [](const Finding& finding) { return !finding.numbers.contains("apart"); });
    return findings;
}

std::string toldAfterThrees(const Evening& evening)
{
    Evening threes = evening;
    for (auto& [symptom, sides] : threes)
        sides = {3, 3};
    const auto findings = filling({threes, evening});
    return findings.empty() ? "nothing" : explain(findings.front());
}

/// How strongly an entry with a full left side speaks for it, so many hours after the treatment; the practitioner had found
/// both sides alike, or had scored nothing. An earlier entry may stand before it.
double evidenceAt(int hour, bool scoredBefore, std::optional<int> earlierHour = {})
{
    const auto sides = [](int left) {
        return recovery::Scores{{Stream{Symptom::swelling, Side::left}, points(left)}, {Stream{Symptom::swelling, Side::right}, points(2)},
                                {Stream{Symptom::pain, Side::left}, points(left)}, {Stream{Symptom::pain, Side::right}, points(2)}};
    };
    const auto after = [](int hours) {
        clock::Moment at = treated;
        at.at += std::chrono::hours(hours);
        return at;
    };
    const CourseInput course{treated, scoredBefore ? sides(2) : recovery::Scores{}, {}};
    const Protocol protocol = defaultProtocol();
    CourseWatch watch(course, protocol);
    if (earlierHour)
        watch.take({after(*earlierHour), sides(4)});
    double evidence = -1;
    for (const Candidate& candidate : watch.take({after(hour), sides(7)}))
        if (candidate.statistic == Statistic::oneSideFills)
            evidence = candidate.value;
    return evidence;
}

}  // namespace

TEST_CASE("no entry takes the place of the practitioner's scores, however soon it follows", "[triggers][safety]")
{
    // Without them a side that filled within the hour would in part be the patient's own.
    CHECK(evidenceAt(1, true) > evidenceAt(1, false));
    CHECK(evidenceAt(2, true) > evidenceAt(2, false));
    // Of two entries within three hours the later stands, beside the practitioner's scores and not for them.
    CHECK(evidenceAt(4, true, 2) == evidenceAt(4, true));
    CHECK(evidenceAt(4, true, 2) > 0);
}

TEST_CASE("one side that fills is told by a symptom that stands apart, never by one that is level or was not answered", "[triggers]")
{
    CHECK(toldAfterThrees({{Symptom::pain, {8, 3}}, {Symptom::tightness, {7, 3}}, {Symptom::swelling, {4, 4}}, {Symptom::bruising, {3, 3}}})
          == "the sides part: pain left 8, right 3 on day 1; all symptoms together 9 points apart");
    CHECK(toldAfterThrees({{Symptom::tightness, {7, 3}}, {Symptom::bruising, {6, 3}}})
          == "the sides part: tightness left 7, right 3 on day 1; all symptoms together 7 points apart");
    // Swelling speaks first where it stands apart itself.
    CHECK(toldAfterThrees({{Symptom::pain, {7, 3}}, {Symptom::swelling, {5, 3}}})
          == "the sides part: swelling left 5, right 3 on day 1; all symptoms together 6 points apart");
}

TEST_CASE("one side that goes on filling is one finding, whichever symptom leads", "[triggers]")
{
    const auto findings = filling({{{Symptom::pain, {3, 3}}, {Symptom::tightness, {3, 3}}, {Symptom::swelling, {3, 3}}},
                                   {{Symptom::pain, {8, 3}}, {Symptom::tightness, {7, 3}}, {Symptom::swelling, {4, 4}}},
                                   {{Symptom::pain, {6, 3}}, {Symptom::tightness, {9, 3}}, {Symptom::swelling, {4, 4}}}});

    REQUIRE(findings.size() == 1);
    CHECK(findings.front().symptom() == Symptom::pain);
    CHECK(findings.front().stream == Stream{Symptom::swelling, Side::left});
    CHECK(findings.front().urgency == Urgency::callNow);
}

TEST_CASE("one side that stays behind while the other recovers is found though no score rises", "[triggers]")
{
    // Left pain, swelling and tightness stop falling on day 4; the right goes on to nothing.
    CourseInput course{treated, {}, {}};
    const std::vector<int> left{5, 5, 4, 4, 4, 4, 4, 5, 5};
    const std::vector<int> right{5, 5, 4, 4, 3, 2, 1, 1, 0};
    for (std::size_t day = 0; day < left.size(); ++day) {
        Observation observation{onDay(static_cast<int>(day)), {}};
        for (const Symptom symptom : {Symptom::pain, Symptom::swelling, Symptom::tightness}) {
            observation.scores.insert_or_assign(Stream{symptom, Side::left}, points(left[day]));
            observation.scores.insert_or_assign(Stream{symptom, Side::right}, points(right[day]));
        }
        course.observations.push_back(observation);
    }

    const auto findings = judged(course, 8);

    const Finding* sides = find(findings, Trigger::sideDivergence);
    REQUIRE(sides);
    CHECK(sides->stream.side == Side::left);
    CHECK(sides->day <= 7);
    CHECK(sides->urgency == Urgency::callNow);
    CHECK(sides->numbers.at("apart") >= 6);
    CHECK(sides->numbers.at("statistic") > sides->numbers.at("threshold"));
}

TEST_CASE("a fold that keeps its depth is noted from day 8, one that smooths out is not", "[triggers]")
{
    const auto kept = series(Symptom::puckering, Side::left, {3, 3, 3, 3, 3, 3, 3, 3, 3, 3});
    const auto smooth = series(Symptom::puckering, Side::left, {6, 6, 5, 5, 5, 4, 4, 3, 3, 2, 2, 2, 1, 1});

    const auto findings = judged(kept, 9);
    const Finding* note = find(findings, Trigger::persistentPuckering);
    REQUIRE(note);
    CHECK(note->day == 8);
    CHECK(note->urgency == Urgency::atReview);
    CHECK_FALSE(find(judged(smooth, 13), Trigger::persistentPuckering));
}

TEST_CASE("a deep fold is noted from day 12 whatever it was", "[triggers]")
{
    const auto course = series(Symptom::puckering, Side::left, {8, 8, 7, 7, 6, 6, 5, 5, 4, 4, 3, 3, 3, 2});

    const auto findings = judged(course, 13);
    const Finding* note = find(findings, Trigger::persistentPuckering);
    REQUIRE(note);
    CHECK(note->day == 12);
}
