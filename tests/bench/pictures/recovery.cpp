#include "tests/bench/pictures/picture.h"

#include "core/bands/coverage.h"
#include "core/curves/curve.h"
#include "core/rehearsal/invented_course.h"
#include "core/rehearsal/taught.h"

#include <cmath>

namespace ebbline::bench {

namespace {

using recovery::Side;
using recovery::Symptom;

const Axis dayAxis{"day of recovery", 0, 22, {{0, "0"}, {1, "1"}, {3, "3"}, {7, "7"}, {14, "14"}, {21, "21"}}};
const Axis scoreAxis = axis("score", 0, 10, 2);

void draw(Picture& picture, const bands::Band& band, Symptom symptom, bool outer)
{
    Points outerLow, outerHigh, low, high, median;
    for (int day = 0; day <= 21; ++day) {
        const bands::Range wide = band.outer(symptom, day), range = band.inner(symptom, day);
        outerLow.emplace_back(day, wide.low);
        outerHigh.emplace_back(day, wide.high);
        low.emplace_back(day, range.low);
        high.emplace_back(day, range.high);
        median.emplace_back(day, range.median);
    }
    if (outer)
        picture.band(outerLow, outerHigh, ink::sand, "3rd to 97th centile");
    picture.band(low, high, outer ? ink::wetSand : ink::sand, "10th to 90th centile");
    picture.line(median, {ink::soft, Dash::dotted, 1.8}, "median");
}

Picture band()
{
    Picture picture("The seed band of swelling, day by day.", dayAxis, scoreAxis);
    draw(picture, bands::seedBand(), Symptom::swelling, true);
    picture.note("an assumption until a clinic's own courses replace it");
    return picture;
}

Picture zOfScores()
{
    Picture picture("z of each answer for swelling: the same score says more the later it comes.", axis("score", 0, 10, 2),
                    axis("z", -4, 4, 2));
    struct Day { int day; std::string_view colour; Mark mark; };
    for (const auto& [day, colour, mark] : {Day{1, ink::left, Mark::round}, Day{7, ink::right, Mark::square}, Day{14, ink::tide, Mark::hollow}}) {
        Points line;
        for (int score = 0; score <= 10; ++score)
            line.emplace_back(score, bands::seedBand().z(Symptom::swelling, day, score));
        picture.line(line, {colour, Dash::solid, 1});
        picture.marks(line, mark, colour, "day " + std::to_string(day));
    }
    return picture;
}

std::vector<rehearsal::KnownCourse> courses(rehearsal::Model model, rehearsal::Kind kind, int count)
{
    std::vector<rehearsal::KnownCourse> made;
    for (int i = 0; i < count; ++i)
        made.push_back(rehearsal::invent({model, rehearsal::Rhythm::daily, 7}, kind, i));
    return made;
}

std::vector<bands::TaughtCourse> taught(int count)
{
    std::vector<bands::TaughtCourse> courseDays;
    for (const auto& course : courses(rehearsal::Model::steps, rehearsal::Kind::plain, count))
        courseDays.push_back(rehearsal::taughtBy(course.input));
    return courseDays;
}

Picture learned()
{
    Picture picture("Share of scores of 3 or more for bruising: the seed, and what more and more courses make of it.", dayAxis,
                    axis("P(3 or more)", 0, 0.8, 0.2, 1));
    const auto share = [](const bands::Band::Table& table) {
        Points line;
        for (std::size_t day = 0; day <= 21; ++day) {
            double below = 0;
            for (std::size_t score = 0; score < 3; ++score)
                below += table[static_cast<std::size_t>(Symptom::bruising) - 1][day][score];
            line.emplace_back(static_cast<double>(day), 1 - below);
        }
        return line;
    };
    picture.line(share(bands::seedBand().table()), {ink::edge, Dash::dotted, 1.8}, "seed");
    struct Size { int count; Stroke stroke; };
    for (const auto& [count, stroke] : {Size{30, {ink::left, Dash::dashed, 1.6}}, Size{120, {ink::right, Dash::dashed, 2}},
                                        Size{1000, {ink::tide, Dash::solid, 2}}})
        picture.line(share(bands::learnTable(taught(count), bands::seedBand()).value()), stroke, std::to_string(count) + " courses");
    picture.note("invented courses, model of steps");
    return picture;
}

Picture coverage()
{
    std::vector<bands::Taught> all;
    int number = 0;
    for (bands::TaughtCourse& course : taught(120)) {
        recovery::CourseId id{};
        id.value[0] = static_cast<std::uint8_t>(number++);
        all.push_back({id, std::move(course)});
    }
    const bands::Coverage found = bands::crossValidate(all, bands::seedBand()).value();
    Axis across{"symptom", 0, 7, {}};
    Points promised, seen;
    Picture picture("Held-out readings above the 90th centile by symptom, against what the band promises.", across,
                    axis("share above the 90th centile", 0, 0.15, 0.05, 2));
    picture.note("1 pain, 2 swelling, 3 bruising, 4 tightness, 5 twinges, 6 puckering");
    for (std::size_t row = 0; row < 6; ++row) {
        const double x = static_cast<double>(row) + 1;
        picture.words(x, 0.004, std::to_string(row + 1));
        const bands::Above& above = found.symptoms[row].above90;
        picture.bar(x, above.low, above.high, {ink::tide, Dash::solid, 2});
        seen.emplace_back(x, above.seen);
        promised.emplace_back(x, above.promised);
    }
    picture.marks(seen, Mark::round, ink::tide, "seen, ten-fold, 120 courses, with its interval");
    picture.marks(promised, Mark::cross, ink::call, "promised for the same readings");
    return picture;
}

std::vector<curves::Sample> samplesOf(const triggers::CourseInput& course, const recovery::Stream& stream, int untilDay)
{
    std::vector<curves::Sample> samples;
    for (const triggers::Observation& observation : course.observations)
        if (const auto found = observation.scores.find(stream);
            found != observation.scores.end() && clock::dayOfRecovery(course.treated, observation.at) <= untilDay)
            samples.push_back({observation.at, found->second, false, false});
    return samples;
}

Picture curve()
{
    const recovery::Stream stream{Symptom::swelling, Side::left};
    curves::Curve made;
    // The first with something to see.
    for (const auto& course : courses(rehearsal::Model::decay, rehearsal::Kind::plain, 40)) {
        made = curves::curveOf(stream, course.input.treated, samplesOf(course.input, stream, 10), bands::seedBand(), 21);
        if (made.peak && made.peak->points >= 6)
            break;
    }
    Picture picture("One invented course up to day 10: scores, the smoothed curve with its interval, and the forecast to day 21.", dayAxis, scoreAxis);
    draw(picture, bands::seedBand(), Symptom::swelling, false);
    Points seen, level;
    for (const curves::Point& point : made.points)
        seen.emplace_back(point.day, point.points);
    for (const curves::Smoothed& day : made.smoothed) {
        level.emplace_back(day.day, day.points);
        picture.bar(day.day, day.low, day.high, {ink::tide, Dash::solid, 1});
    }
    picture.line(level, {ink::tide, Dash::solid, 2}, "smoothed; bars: 80 % for the level");
    picture.marks(seen, Mark::hollow, ink::tide, "what she wrote");
    if (made.forecast) {
        picture.bar(21, made.forecast->low, made.forecast->high, {ink::call, Dash::solid, 4});
        picture.marks({{21, made.forecast->median}}, Mark::square, ink::call, "forecast, at least 80 % likely");
    }
    return picture;
}

Picture sides()
{
    const auto course = courses(rehearsal::Model::decay, rehearsal::Kind::infection, 3).back();
    Picture picture("Both sides of one invented infection: while one side heals the other turns worse.", dayAxis, scoreAxis);
    draw(picture, bands::seedBand(), Symptom::pain, false);
    struct Look { Side side; Stroke stroke; Mark mark; const char* name; };
    for (const auto& [side, stroke, mark, name] :
         {Look{Side::left, {ink::left, Dash::solid, 1.8}, Mark::round, "left"}, Look{Side::right, {ink::right, Dash::dashed, 1.8}, Mark::square, "right"}}) {
        Points line;
        for (const curves::Sample& sample : samplesOf(course.input, {Symptom::pain, side}, 21))
            line.emplace_back(clock::dayOfRecovery(course.input.treated, sample.at), sample.score.points());
        picture.line(line, stroke);
        picture.marks(line, mark, stroke.colour, std::string("pain, ") + name);
    }
    picture.upright(std::chrono::duration<double, std::ratio<86400>>(course.truth.onset->at - course.input.treated.at).count(),
                    {ink::call, Dash::dotted, 1.6}, "onset");
    return picture;
}

}  // namespace

std::vector<Named> recoveryPictures()
{
    return {{"band", band()}, {"z", zOfScores()}, {"band-learned", learned()}, {"band-check", coverage()},
            {"curve", curve()}, {"sides", sides()}};
}

}  // namespace ebbline::bench
