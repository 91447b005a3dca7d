// Rehearsal: whom a protocol would have flagged, and figures over known courses.

#include "core/rehearsal/rehearse.h"

#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::rehearsal;

namespace {

const clock::Moment treated = *clock::parseIso8601("2027-03-01T10:00:00+01:00");

clock::Moment onDay(int day)
{
    clock::Moment at = treated;
    at.at += std::chrono::hours(24 * day + 10);
    return at;
}

/// Pain on the left, an entry every evening; whatever is unusual began on the given day.
KnownCourse course(const std::vector<int>& pain, const std::string& kind, std::optional<int> onsetDay)
{
    KnownCourse made{"c", {treated, {}, {}}, {kind, {}, recovery::Side::left}};
    for (std::size_t day = 0; day < pain.size(); ++day)
        made.input.observations.push_back(
            {onDay(static_cast<int>(day)),
             {{recovery::Stream{recovery::Symptom::pain, recovery::Side::left}, *recovery::Score::of(pain[day])}}});
    if (onsetDay)
        made.truth.onset = onDay(*onsetDay);
    return made;
}

/// The same of a fold, on a course that ended well.
KnownCourse foldsOf(const std::vector<int>& points)
{
    KnownCourse made = course(points, "plain", {});
    for (std::size_t day = 0; day < points.size(); ++day)
        made.input.observations[day].scores = {
            {recovery::Stream{recovery::Symptom::puckering, recovery::Side::left}, *recovery::Score::of(points[day])}};
    return made;
}

const std::vector<int> rebound{5, 4, 3, 2, 2, 5};
const std::vector<int> ordinary{3, 3, 2, 2, 1, 1, 0, 0};

}  // namespace

TEST_CASE("what is written after day 21 flags nobody, and a complication that began late is followed for three days", "[rehearsal]")
{
    KnownCourse plain = invent({Model::decay, Rhythm::daily, 5}, Kind::plain, 0);
    const auto before = verdictOn(plain, triggers::defaultProtocol());
    const auto tell = [&](KnownCourse& course, int day, int hour, int points) {
        triggers::Observation entry{course.input.treated, {}};
        entry.at.at += std::chrono::days(day) + std::chrono::hours(hour);
        for (const auto symptom : {recovery::Symptom::pain, recovery::Symptom::swelling})
            entry.scores.insert_or_assign({symptom, recovery::Side::left}, recovery::Score::of(points).value());
        course.input.observations.push_back(entry);
    };
    KnownCourse late = plain;
    tell(late, 25, 0, 9);
    CHECK(verdictOn(late, triggers::defaultProtocol()).raised == before.raised);

    late.truth.kind = "infection";
    late.truth.onset = plain.input.treated;
    late.truth.onset->at += std::chrono::days(24);
    late.truth.side = recovery::Side::left;
    const auto found = verdictOn(late, triggers::defaultProtocol());
    REQUIRE(found.sinceOnset);
    CHECK(found.delayHours == 24);
    // What came more than three days after the onset is no longer looked at.
    late.truth.onset->at -= std::chrono::days(2) + std::chrono::hours(12);
    CHECK_FALSE(verdictOn(late, triggers::defaultProtocol()).sinceOnset);
}

TEST_CASE("an alert after the onset counts with its delay", "[rehearsal]")
{
    const CourseVerdict verdict = verdictOn(course(rebound, "infection", 4), triggers::defaultProtocol());

    REQUIRE(verdict.sinceOnset);
    CHECK(verdict.sinceOnset->trigger == triggers::Trigger::rebound);
    REQUIRE(verdict.delayHours);
    CHECK_THAT(*verdict.delayHours, WithinAbs(24, 1e-9));
    CHECK(verdict.rightSide);
    CHECK(verdict.callNow);
    CHECK_FALSE(verdict.beforeOnset);
}

TEST_CASE("an alert before the onset is counted as that and not as a find", "[rehearsal]")
{
    const CourseVerdict verdict = verdictOn(course(rebound, "infection", 10), triggers::defaultProtocol());

    CHECK(verdict.beforeOnset);
    CHECK_FALSE(verdict.sinceOnset);
    const auto figures = figuresOf(std::vector{verdict});
    CHECK(figures.front().flagged == 0);
    CHECK(figures.front().beforeOnset == 1);
}

TEST_CASE("before the onset of folds that stay an alert of another trigger is no find", "[rehearsal]")
{
    const CourseVerdict pain = verdictOn(course(rebound, "puckering", 10), triggers::defaultProtocol());
    CHECK(pain.beforeOnset);
    CHECK_FALSE(pain.sinceOnset);

    // The fold itself is noted on day 8, two days before it counts as one that stays: found.
    KnownCourse folds = foldsOf({3, 3, 3, 3, 3, 3, 3, 3, 3});
    folds.truth.kind = "puckering";
    folds.truth.onset = onDay(10);
    const CourseVerdict noted = verdictOn(folds, triggers::defaultProtocol());
    REQUIRE(noted.sinceOnset);
    CHECK(noted.sinceOnset->trigger == triggers::Trigger::persistentPuckering);
    CHECK(noted.delayHours == 0);
    CHECK_FALSE(noted.beforeOnset);
}

TEST_CASE("a note for the review finds folds that stay, and nothing that is only called by a like word", "[rehearsal]")
{
    KnownCourse folds = foldsOf({3, 3, 3, 3, 3, 3, 3, 3, 3});
    for (const char* kind : {"puckering", "worsening-puckering", "lasting puckering"}) {
        folds.truth.kind = kind;
        CHECK(verdictOn(folds, triggers::defaultProtocol()).sinceOnset);
    }
    for (const char* kind : {"other-puckered-scar", "other-dimpled-abscess", "infection", "plain"}) {
        folds.truth.kind = kind;
        const CourseVerdict verdict = verdictOn(folds, triggers::defaultProtocol());
        CHECK_FALSE(verdict.sinceOnset);
        CHECK(verdict.reviewNote);
    }
    // An alert before the onset is one, whatever the kind is called.
    CHECK(verdictOn(course(rebound, "other-dimpled-abscess", 10), triggers::defaultProtocol()).beforeOnset);
}

TEST_CASE("silence is no alert for anybody but a silent course", "[rehearsal]")
{
    const CourseVerdict plain = verdictOn(course(ordinary, "plain", {}), triggers::defaultProtocol());
    const CourseVerdict silent = verdictOn(course(ordinary, "silent", 7), triggers::defaultProtocol());

    CHECK(plain.silent);
    CHECK_FALSE(plain.first);
    REQUIRE(silent.sinceOnset);
    CHECK(silent.sinceOnset->trigger == triggers::Trigger::silence);
    CHECK_THAT(silent.delayHours.value_or(-1), WithinAbs(72, 1e-9));
}

TEST_CASE("a course that falls silent on the eve of the visit is found when the visit is missed", "[rehearsal]")
{
    const std::vector<int> upToDay20(21, 1);
    const CourseVerdict silent = verdictOn(course(upToDay20, "silent", 20), triggers::defaultProtocol());
    REQUIRE(silent.sinceOnset);
    CHECK(silent.sinceOnset->trigger == triggers::Trigger::silence);
    CHECK_THAT(silent.delayHours.value_or(-1), WithinAbs(72, 1e-9));

    // Whether anybody came is not known of another course, and none is silent for it.
    CHECK_FALSE(verdictOn(course(upToDay20, "plain", {}), triggers::defaultProtocol()).silent);
}

TEST_CASE("figures come one row a kind, plain first", "[rehearsal]")
{
    std::vector<CourseVerdict> verdicts;
    const auto protocol = triggers::defaultProtocol();
    verdicts.push_back(verdictOn(course(rebound, "infection", 4), protocol));
    verdicts.push_back(verdictOn(course(ordinary, "infection", 4), protocol));
    verdicts.push_back(verdictOn(course(ordinary, "plain", {}), protocol));

    const auto figures = figuresOf(verdicts);

    REQUIRE(figures.size() == 2);
    CHECK(figures[0].kind == "plain");
    CHECK(figures[0].flagged == 0);
    CHECK(figures[1].courses == 2);
    CHECK(figures[1].flagged == 1);
    CHECK(figures[1].withinDay == 1);
    CHECK_THAT(figures[1].medianDelayHours.value_or(0), WithinAbs(24, 1e-9));
}

TEST_CASE("a share has Wilson's interval, and none of nothing", "[rehearsal]")
{
    // Newcombe, Statistics in Medicine 17 (1998) 857, table I: 15 of 148 gives 0.0624 to 0.1605.
    const auto interval = share(15, 148);
    REQUIRE(interval);
    CHECK_THAT(interval->low, WithinAbs(0.0624, 0.00005));
    CHECK_THAT(interval->high, WithinAbs(0.1605, 0.00005));
    CHECK_FALSE(share(0, 0));
}

TEST_CASE("two protocols are compared course by course", "[rehearsal]")
{
    const std::vector courses{course(rebound, "infection", 4), course(ordinary, "plain", {})};
    triggers::Protocol deaf = triggers::defaultProtocol();
    deaf.thresholds.reboundFirstDay = 20;

    const auto done = rehearse(courses, triggers::defaultProtocol(), deaf);

    REQUIRE(done);
    REQUIRE(done->differences.size() == 1);
    CHECK(done->differences[0].course == 0);
    CHECK(done->differences[0].before);
    CHECK_FALSE(done->differences[0].after);
    CHECK(rehearse(courses, deaf, deaf)->differences.empty());
    CHECK(rehearse({}, deaf, deaf).error().reason == Reason::notEnough);
}

TEST_CASE("the same alert at the same time with another urgency is a difference", "[rehearsal]")
{
    // A fold that grows from day 13 on is noted for the review; counted as late from day 15 on, it is worse than a week before.
    const auto folds = foldsOf({1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 3, 3});
    triggers::Protocol strict = triggers::defaultProtocol();
    strict.thresholds.puckeringDay = 15;

    const auto done = rehearse(std::vector{folds}, triggers::defaultProtocol(), strict);
    REQUIRE(done->differences.size() == 1);
    CHECK(done->differences[0].in == Respects{.urgency = true});
    CHECK(done->differences[0].before->urgency == recovery::Urgency::atReview);
    CHECK(done->differences[0].after->urgency == recovery::Urgency::nextWorkingDay);
    CHECK(done->differences[0].before->raisedAt == done->differences[0].after->raisedAt);
    CHECK(changesOf(*done).front().otherUrgency == 1);
}

TEST_CASE("who stands on the silent list, and who is noted for the review, are differences", "[rehearsal]")
{
    std::vector<KnownCourse> quiet{course(ordinary, "plain", {})};
    triggers::Protocol patient = triggers::defaultProtocol();
    patient.thresholds.silentDays = 6;
    const auto later = rehearse(quiet, triggers::defaultProtocol(), patient);
    REQUIRE(later->differences.size() == 1);
    CHECK(later->differences[0].in == Respects{.silentList = true});
    CHECK(later->differences[0].after->day == 13);
    CHECK(changesOf(*later).front().otherSilentList == 1);
    CHECK(changesOf(*later).front().otherAlerts == 0);

    const auto folds = foldsOf(std::vector<int>(22, 2));
    triggers::Protocol strict = triggers::defaultProtocol();
    strict.thresholds.puckeringDay = 14;
    const auto noted = rehearse(std::vector{folds}, triggers::defaultProtocol(), strict);
    REQUIRE(noted->differences.size() == 1);
    CHECK(noted->differences[0].in == Respects{.notes = true});
    CHECK(noted->differences[0].before->day == 21);
    CHECK(noted->differences[0].after->day == 14);
}

TEST_CASE("an alert before the onset that one protocol alone raises is a difference", "[rehearsal]")
{
    triggers::Protocol deaf = triggers::defaultProtocol();
    deaf.thresholds.reboundGuard = 10;
    const auto done = rehearse(std::vector{course(rebound, "infection", 10)}, triggers::defaultProtocol(), deaf);

    REQUIRE(done->differences.size() == 1);
    CHECK(done->differences[0].in.alerts);
    CHECK(done->differences[0].before->day == 5);
}

TEST_CASE("two protocols are compared kind by kind, with an interval for what moved", "[rehearsal]")
{
    std::vector<KnownCourse> courses;
    for (int i = 0; i < 6; ++i)
        courses.push_back(course(rebound, "infection", 4));
    for (int i = 0; i < 4; ++i)
        courses.push_back(course(ordinary, "plain", {}));
    triggers::Protocol deaf = triggers::defaultProtocol();
    deaf.thresholds.reboundGuard = 10;
    const auto done = rehearse(courses, triggers::defaultProtocol(), deaf);
    REQUIRE(done);

    const auto changes = changesOf(*done);
    REQUIRE(changes.size() == 2);
    CHECK(changes[0].kind == "plain");
    CHECK(changes[0].courses == 4);
    CHECK(changes[0].firstOnly + changes[0].secondOnly + changes[0].bothFlagged == 0);
    CHECK(changes[1].firstOnly == 6);
    REQUIRE(changes[1].flagged);
    CHECK(changes[1].flagged->value == -1);
    CHECK(changes[1].flagged->interval.high < 0);

    const auto figures = figuresOf(done->before);
    REQUIRE(figures[0].burden);
    CHECK(figures[0].burden->rate == 0);
    CHECK(figures[0].burden->interval.high > 0);
    CHECK(figures[1].burden->rate >= 1);
}
