// Complications of another size and pace than the models usually draw.

#include "core/rehearsal/invented_course.h"

#include "tests/core/rehearsal/course_print.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

#include <optional>

using namespace ebbline;
using namespace ebbline::rehearsal;
using recovery::Stream;
using recovery::Symptom;

namespace {

constexpr int courses = 300;

/// How far the struck side stands above the other one, in the mean over the entries from so many hours after the onset
/// on, for a day; points.
double leadAfter(const Invention& invention, Kind kind, Symptom symptom, int hours)
{
    double sum = 0;
    int entries = 0;
    for (int number = 0; number < courses; ++number) {
        const KnownCourse course = invent(invention, kind, number);
        for (const triggers::Observation& entry : course.input.observations) {
            const auto since = entry.at.at - course.truth.onset->at;
            if (since < std::chrono::hours(hours) || since >= std::chrono::hours(hours + 24))
                continue;
            const auto struck = entry.scores.find(Stream{symptom, course.truth.side});
            const auto spared = entry.scores.find(Stream{symptom, recovery::mirrored(course.truth.side)});
            if (struck == entry.scores.end() || spared == entry.scores.end())
                continue;
            sum += struck->second.points() - spared->second.points();
            ++entries;
        }
    }
    REQUIRE(entries > courses / 2);
    return sum / entries;
}

}  // namespace

TEST_CASE("a complication of the usual strength is the course that it was before there was any other", "[rehearsal][invented]")
{
    struct Row { Model model; Kind kind; std::uint64_t print; };
    // Recorded before strength could be set.
    const auto row = GENERATE(Row{Model::decay, Kind::infection, 13943617428597100414ULL},
                              Row{Model::decay, Kind::haematoma, 15387599794964556201ULL},
                              Row{Model::decay, Kind::puckering, 6613104410977335512ULL},
                              Row{Model::steps, Kind::infection, 9189133386847635187ULL},
                              Row{Model::steps, Kind::haematoma, 5701375128009352533ULL},
                              Row{Model::steps, Kind::puckering, 6611140167909540395ULL});
    CAPTURE(word(row.kind));
    CHECK(printOf(invent({row.model, Rhythm::twice, 7}, row.kind, 3)) == row.print);
    CHECK(printOf(invent({.model = row.model, .rhythm = Rhythm::twice, .seed = 7, .trouble = 1, .pace = 1}, row.kind, 3)) == row.print);
    CHECK(printOf(invent({.model = row.model, .rhythm = Rhythm::twice, .seed = 7, .trouble = 0.5}, row.kind, 3)) != row.print);
}

TEST_CASE("strength changes neither when a complication begins nor on which side, and no course without one", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    const Invention usual{model, Rhythm::mixed, 13};
    const Invention other{.model = model, .rhythm = Rhythm::mixed, .seed = 13, .trouble = 0.5, .pace = 0.5};
    for (int number = 0; number < 20; ++number) {
        for (const Kind kind : {Kind::infection, Kind::haematoma, Kind::puckering, Kind::lateHaematoma}) {
            const KnownCourse here = invent(usual, kind, number);
            const KnownCourse there = invent(other, kind, number);
            CHECK(here.truth.onset->at == there.truth.onset->at);
            CHECK(here.truth.side == there.truth.side);
            REQUIRE(here.input.observations.size() == there.input.observations.size());
            for (std::size_t i = 0; i < here.input.observations.size(); ++i)
                CHECK(here.input.observations[i].at.at == there.input.observations[i].at.at);
        }
        for (const Kind kind : {Kind::plain, Kind::slowRecovery, Kind::silent, Kind::fever, Kind::worseningFolds})
            CHECK(printOf(invent(usual, kind, number)) == printOf(invent(other, kind, number)));
    }
}

TEST_CASE("half the size adds about half", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    const Invention usual{model, Rhythm::twice, 5};
    const Invention half{.model = model, .rhythm = Rhythm::twice, .seed = 5, .trouble = 0.5};
    struct Row { Kind kind; Symptom symptom; int hours; };
    // Where each has grown to its full size, or nearly: an infection takes up to six days and three quarters.
    const auto row = GENERATE(Row{Kind::infection, Symptom::pain, 144}, Row{Kind::haematoma, Symptom::swelling, 12},
                              Row{Kind::lateHaematoma, Symptom::swelling, 12}, Row{Kind::puckering, Symptom::puckering, 168});
    CAPTURE(word(row.kind));
    const double whole = leadAfter(usual, row.kind, row.symptom, row.hours);
    const double halved = leadAfter(half, row.kind, row.symptom, row.hours);
    CHECK(whole > 2);
    CHECK(halved > 0.25 * whole);
    CHECK(halved < 0.75 * whole);
}

TEST_CASE("at half the pace a complication is behind on its way", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    const Invention usual{model, Rhythm::twice, 5};
    const Invention slow{.model = model, .rhythm = Rhythm::twice, .seed = 5, .pace = 0.5};
    // The second day of an infection, of which neither has reached its size: 1.8 to 4.4 points against 1.4 to 2.7.
    CHECK(leadAfter(slow, Kind::infection, Symptom::pain, 24) < leadAfter(usual, Kind::infection, Symptom::pain, 24) - 0.3);
    // The first day of a bleeding: what fills within half a day takes up to a whole one.
    CHECK(leadAfter(slow, Kind::haematoma, Symptom::swelling, 0) < leadAfter(usual, Kind::haematoma, Symptom::swelling, 0));
    // And in the end it is there all the same.
    CHECK(leadAfter(slow, Kind::haematoma, Symptom::swelling, 24) > 2);
}
