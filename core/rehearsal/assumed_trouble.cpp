#include "core/rehearsal/assumed_trouble.h"

#include "core/triggers/course_watch.h"

#include <algorithm>
#include <cmath>

namespace ebbline::rehearsal {

namespace {

using recovery::Symptom;

constexpr double ln2 = 0.6931471805599453;
constexpr double dayHours = 24;
constexpr double slowFrom = 2;         // days; until then every course is alike
constexpr double slowBy = 3;           // it takes three times as long
constexpr double slowOnsetDay = 7;     // only then is it abnormal
constexpr double bruiseLaterHours = 12;
constexpr double halfLifeDays = 5;     // of what a bleeding added

struct Trouble {
    double onsetHour = 0;
    double size = 0;       ///< points
    double growHours = 1;
    double halfLifeDays = 0;  ///< 0: it stays
};

double shareOf(Kind kind, Symptom symptom)
{
    const bool blood = kind == Kind::haematoma;
    switch (symptom) {
    case Symptom::pain: return blood ? 0.8 : 1.0;
    case Symptom::swelling: return blood ? 1.0 : 0.85;
    case Symptom::tightness: return blood ? 0.65 : 0.5;
    case Symptom::bruising: return blood ? 0.65 : 0.0;
    default: return 0;
    }
}

/// Points added to the symptom at an hour; one point of the whole is there at the onset.
double added(const Trouble& trouble, double hour)
{
    const double since = hour - trouble.onsetHour + trouble.growHours / trouble.size;
    if (since <= 0)
        return 0;
    double size = trouble.size * std::min(1.0, since / trouble.growHours);
    if (trouble.halfLifeDays > 0 && since > trouble.growHours)
        size *= portableExp(-ln2 * (since - trouble.growHours) / (dayHours * trouble.halfLifeDays));
    return size;
}

recovery::Score scoreOf(double points)
{
    return *recovery::Score::of(std::clamp(static_cast<int>(std::floor(points + 0.5)), 0, 10));
}

void strike(KnownCourse& course, Kind kind, const Trouble& trouble)
{
    for (triggers::Observation& observation : course.input.observations) {
        const double hour = triggers::hoursSince(course.input.treated, observation.at);
        observation.scores.transform([&](const recovery::Stream& stream, recovery::Score score) {
            if (stream.side != course.truth.side)
                return score;
            const double later = kind == Kind::haematoma && stream.symptom == Symptom::bruising ? bruiseLaterHours : 0;
            return scoreOf(score.points() + shareOf(kind, stream.symptom) * added(trouble, hour - later));
        });
    }
}

/// From the third day on the answers of an earlier entry stand in: a third of the way further.
void slowDown(KnownCourse& course)
{
    const std::vector<triggers::Observation> was = course.input.observations;
    std::size_t source = 0;
    for (triggers::Observation& observation : course.input.observations) {
        const double day = triggers::hoursSince(course.input.treated, observation.at) / dayHours;
        if (day <= slowFrom)
            continue;
        const double then = dayHours * (slowFrom + (day - slowFrom) / slowBy);
        const auto distance = [&](std::size_t i) {
            return std::abs(triggers::hoursSince(course.input.treated, was[i].at) - then);
        };
        while (source + 1 < was.size() && distance(source + 1) <= distance(source))
            ++source;
        const recovery::Scores& before = was[source].scores;
        observation.scores.transform([&before](const recovery::Stream& stream, recovery::Score score) {
            const auto found = before.find(stream);
            return shareOf(Kind::haematoma, stream.symptom) > 0 && found != before.end() ? found->second : score;
        });
    }
}

}  // namespace

KnownCourse troubled(const KnownCourse& course, Kind kind, Chance& chance)
{
    KnownCourse struck = course;
    struck.truth.kind = word(kind);
    Trouble trouble;
    if (kind == Kind::slowRecovery) {
        trouble.onsetHour = slowOnsetDay * dayHours;
        std::stable_sort(struck.input.observations.begin(), struck.input.observations.end(),
                         [](const auto& a, const auto& b) { return a.at.at < b.at.at; });
        slowDown(struck);
    } else {
        struck.truth.side = recovery::bothSides[static_cast<std::size_t>(chance.whole(0, 1))];
        if (kind == Kind::infection) {
            trouble.onsetHour = dayHours * chance.between(3, 9);
            trouble.size = chance.between(4, 6);
            trouble.growHours = dayHours * trouble.size / chance.between(0.8, 1.6);
        } else {
            trouble = {chance.between(1, 72), chance.between(3, 5), chance.between(2, 12), halfLifeDays};
        }
        strike(struck, kind, trouble);
    }
    struck.truth.onset = struck.input.treated;
    struck.truth.onset->at += std::chrono::minutes(static_cast<long>(trouble.onsetHour * 60));
    return struck;
}

}  // namespace ebbline::rehearsal
