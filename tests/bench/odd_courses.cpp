#include "tests/bench/odd_courses.h"

#include "core/rehearsal/chance.h"
#include "core/rehearsal/invented_course.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace ebbline::bench {

namespace {

using recovery::Score;
using recovery::Side;
using recovery::Stream;
using recovery::Symptom;
using rehearsal::Chance;
using triggers::Observation;

using recovery::Scores;

Score anyScore(Chance& chance)
{
    return Score::of(chance.whole(0, 10)).value();
}

/// Numbness, which nobody invents, and symptoms that are told without a side.
void addStreams(Chance& chance, bool numb, bool sideless, Scores& scores)
{
    if (numb)
        for (const Side side : recovery::bothSides)
            scores.insert_or_assign({Symptom::numbness, side}, Score::of(chance.whole(0, 4)).value());
    if (sideless && chance.happens(0.7))
        for (const Symptom symptom : {Symptom::pain, Symptom::tightness, Symptom::twinges})
            scores.insert_or_assign({symptom, Side::none}, Score::of(chance.whole(0, 6)).value());
}

void loseSome(Chance& chance, double share, Scores& scores)
{
    for (const auto& [stream, score] : Scores(scores))
        if (chance.happens(share))
            scores.erase(stream);
}

void jump(Chance& chance, double share, Scores& scores)
{
    scores.transform([&](const Stream&, Score score) { return chance.happens(share) ? anyScore(chance) : score; });
}

Observation later(Chance& chance, const Observation& first, int mostMinutes)
{
    Observation again = first;
    again.at.at += std::chrono::minutes(chance.whole(0, mostMinutes));
    loseSome(chance, 0.4, again.scores);
    jump(chance, 0.3, again.scores);
    return again;
}

}  // namespace

triggers::CourseInput oddCourse(int number)
{
    using namespace rehearsal;
    constexpr std::array rhythms{Rhythm::mixed, Rhythm::daily, Rhythm::twice, Rhythm::plan};
    Chance chance(29, static_cast<std::uint64_t>(number));
    const Invention invention{number % 2 == 0 ? Model::decay : Model::steps, rhythms[static_cast<std::size_t>(chance.whole(0, 3))], 31};
    triggers::CourseInput course = invent(invention, allKinds[static_cast<std::size_t>(number) % allKinds.size()], number).input;

    const bool numb = chance.happens(0.3), sideless = chance.happens(0.3), restless = chance.happens(0.5);
    const bool messy = chance.happens(0.5), travels = chance.happens(0.3);
    if (chance.happens(0.2))
        course.baseline.clear();
    else if (chance.happens(0.4))
        for (const Side side : recovery::bothSides)
            for (const Symptom symptom : {Symptom::pain, Symptom::tightness})
                course.baseline.insert_or_assign({symptom, side}, anyScore(chance));
    loseSome(chance, 0.1, course.baseline);
    const auto stretched = std::chrono::days(chance.happens(0.2) ? chance.whole(1, 20) : 0);
    const int stretchedFrom = chance.whole(1, 15);

    std::vector<Observation> written;
    for (Observation& observation : course.observations) {
        if (clock::dayOfRecovery(course.treated, observation.at) >= stretchedFrom)
            observation.at.at += stretched;
        addStreams(chance, numb, sideless, observation.scores);
        if (restless)
            jump(chance, 0.15, observation.scores);
        if (messy)
            loseSome(chance, chance.happens(0.05) ? 1 : 0.1, observation.scores);
        if (travels && chance.happens(0.2))
            observation.at.offset = std::chrono::minutes(60 * chance.whole(-12, 12));
        written.push_back(observation);
        while (messy && chance.happens(0.25))
            written.push_back(later(chance, written.back(), chance.happens(0.7) ? 175 : 400));
        if (chance.happens(0.02))
            written.push_back(written.back());
    }
    if (messy && !written.empty() && chance.happens(0.5)) {
        Observation early = later(chance, written.front(), 60);
        early.at.at = course.treated.at + std::chrono::minutes(chance.whole(-2000, 170));
        written.push_back(early);
    }
    for (std::size_t i = written.size(); i > 1; --i)
        std::swap(written[i - 1], written[static_cast<std::size_t>(chance.whole(0, static_cast<int>(i) - 1))]);
    course.observations = std::move(written);
    return course;
}

bands::Band narrowBand()
{
    constexpr double impossible = 0.004;
    bands::Band::Table table = bands::seedBand().table();
    for (auto& days : table)
        for (bands::Distribution& distribution : days) {
            double sum = 0;
            for (double& p : distribution) {
                p = p < impossible ? 0 : p * p;
                sum += p;
            }
            for (double& p : distribution)
                p /= sum;
        }
    bands::Movements movements = bands::assumedMovements();
    double more = 0.7;
    for (bands::Movement& movement : movements.score) {
        movement = {.noise = movement.noise * more, .drift = movement.drift / more, .start = movement.start * more};
        more += 0.1;
    }
    movements.score[2].drift = 0;
    movements.sides.noise *= 0.8;
    movements.sums.drift *= 1.3;
    const Result<bands::Band> band = bands::Band::create({"narrow", 0, true, {}, {}}, table, movements);
    if (!band)
        std::abort();  // made of the seed
    return *band;
}

}  // namespace ebbline::bench
