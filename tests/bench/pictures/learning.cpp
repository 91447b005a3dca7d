#include "tests/bench/pictures/picture.h"

#include "core/learning/clinics.h"
#include "core/learning/comparison.h"
#include "core/learning/practice_watch.h"
#include "core/rehearsal/invented_course.h"
#include "core/rehearsal/taught.h"

namespace ebbline::bench {

namespace {

using recovery::Symptom;

/// Invented courses in the order of treatment; the technique changes half-way, and with it the rate.
std::vector<learning::PastCourse> practice()
{
    std::vector<learning::PastCourse> courses;
    for (int i = 0; i < 160; ++i) {
        const bool late = i >= 80;
        const bool complicated = late ? i % 7 == 0 : i % 20 == 10;
        const auto known = rehearsal::invent({rehearsal::Model::decay, rehearsal::Rhythm::daily, 17},
                                             complicated ? rehearsal::Kind::slowRecovery : rehearsal::Kind::plain, i);
        learning::PastCourse course;
        course.name = std::to_string(1000 + i);
        course.treated.at = clock::Instant{std::chrono::hours(24 * i)};
        course.technique = late ? "second" : "first";
        course.clinic = i % 3 == 0 ? "Mole" : i % 3 == 1 ? "Reed" : "Weir";
        course.outcome = learning::Outcome{complicated, {}};
        course.days = rehearsal::taughtBy(known.input);
        courses.push_back(std::move(course));
    }
    return courses;
}

Picture resolution(const std::vector<learning::PastCourse>& courses)
{
    Picture picture("Share of courses that still have a symptom, by day.",
                    {"day of recovery", 0, 22, {{0, "0"}, {1, "1"}, {3, "3"}, {7, "7"}, {14, "14"}, {21, "21"}}},
                    axis("share that still has it", 0, 1, 0.2, 1));
    struct Look { Symptom symptom; Stroke stroke; };
    for (const auto& [symptom, stroke] : {Look{Symptom::pain, {ink::tide, Dash::solid, 2}}, Look{Symptom::swelling, {ink::left, Dash::dashed, 1.8}},
                                          Look{Symptom::tightness, {ink::right, Dash::dotted, 2.2}}}) {
        const learning::Resolution found = learning::resolutionOf(courses, symptom);
        if (!found.times)
            continue;
        Points points{{0, 1}};
        for (const statistics::SurvivalStep& step : found.times->curve.steps)
            points.emplace_back(step.time, step.survival);
        picture.steps(points, stroke, std::string(recovery::word(symptom)));
    }
    picture.across(0.5, {ink::edge, Dash::dotted, 1.2}, "half");
    picture.note("160 invented courses");
    return picture;
}

Picture comparison(const std::vector<learning::PastCourse>& courses)
{
    Picture picture("Two techniques: shares of complicated courses with limits, and the difference.",
                    axis("share of complicated courses", -0.2, 0.3, 0.1, 1), {"", 0, 4, {{3, "first"}, {2, "second"}, {1, "less"}}});
    const learning::Comparison found = learning::compareTechniques(courses, "first", "second");
    picture.upright(0, {ink::edge, Dash::dotted, 1.2}, "no difference");
    struct Group { const learning::GroupShare& share; double y; std::string_view colour; const char* name; };
    for (const Group& group : {Group{found.first, 3, ink::left, "first technique, 80 courses"}, Group{found.second, 2, ink::right, "second, 80 courses"}})
        if (group.share.share) {
            picture.reach(group.y, group.share.share->limits.low, group.share.share->limits.high, {group.colour, Dash::solid, 2});
            picture.marks({{group.share.share->share, group.y}}, Mark::round, group.colour, group.name);
        }
    if (found.shares) {
        picture.reach(1, found.shares->difference.low, found.shares->difference.high, {ink::tide, Dash::solid, 2});
        picture.marks({{found.shares->difference.difference, 1}}, Mark::square, ink::tide, "first less second, Newcombe's limits");
    }
    picture.note(std::string(learning::caution));
    return picture;
}

Picture watch(const std::vector<learning::PastCourse>& courses)
{
    const learning::PracticeWatch found = learning::watchPractice(courses).value();
    Picture picture("Consecutive treatments: the sum, its signals, and where it began again.", axis("treatment", 0, 160, 20),
                    axis("sum", 0, 5, 1));
    Points sums{{0, 0}}, signals;
    double x = 0;
    for (const learning::WatchPoint& point : found.points) {
        sums.emplace_back(++x, point.sum);
        if (point.signal) {
            signals.emplace_back(x, point.sum);
            sums.emplace_back(x, 0);
        }
    }
    picture.across(learning::WatchDesign{}.decision, {ink::call, Dash::dotted, 1.6}, "decision value");
    picture.upright(80, {ink::edge, Dash::dotted, 1.2}, "from here on the second technique");
    picture.line(sums, {ink::tide, Dash::solid, 2}, "risk-adjusted sum");
    picture.marks(signals, Mark::square, ink::call, "signal: look, then it begins again");
    return picture;
}

Picture clinics()
{
    const std::vector<learning::ClinicCounts> counts{{"A", 0, 12}, {"B", 1, 20}, {"C", 3, 80}, {"D", 9, 90}, {"E", 4, 16}, {"F", 22, 120}};
    const learning::Answer<learning::Pool> pool = learning::poolClinics(counts);
    Picture picture("Six clinics: each one's own share, and what pooling makes of it.", axis("share of complicated courses", 0, 0.4, 0.1, 1),
                    {"clinic", 0, 7, {{6, "A"}, {5, "B"}, {4, "C"}, {3, "D"}, {2, "E"}, {1, "F"}}});
    Points own, pooled;
    double y = 6;
    for (const learning::PooledClinic& clinic : pool->clinics) {
        own.emplace_back(static_cast<double>(clinic.counts.complicated) / static_cast<double>(clinic.counts.known), y);
        pooled.emplace_back(clinic.share, y);
        picture.reach(y, clinic.limits.low, clinic.limits.high, {ink::tide, Dash::solid, 1.6});
        --y;
    }
    picture.marks(own, Mark::hollow, ink::right, "own share: 0 of 12, 1 of 20, 3 of 80, 9 of 90, 4 of 16, 22 of 120");
    picture.marks(pooled, Mark::round, ink::tide, "pooled, with 95 %");
    return picture;
}

}  // namespace

std::vector<Named> learningPictures()
{
    const std::vector<learning::PastCourse> courses = practice();
    return {{"resolution", resolution(courses)}, {"two-techniques", comparison(courses)}, {"practice-watch", watch(courses)},
            {"clinics", clinics()}};
}

}  // namespace ebbline::bench
