// Invented courses: reproducible, within bounds, and what they say they are.

#include "core/rehearsal/invented_course.h"

#include "tests/core/rehearsal/course_print.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/generators/catch_generators_range.hpp>

#include <algorithm>

using namespace ebbline;
using namespace ebbline::rehearsal;
using recovery::Side;
using recovery::Stream;
using recovery::Symptom;

namespace {

double meanOn(const Invention& invention, Kind kind, Symptom symptom, Side side, int day, int courses)
{
    double sum = 0;
    int count = 0;
    for (int i = 0; i < courses; ++i) {
        const KnownCourse course = invent(invention, kind, i);
        for (const auto& observation : course.input.observations)
            if (clock::dayOfRecovery(course.input.treated, observation.at) == day)
                if (const auto found = observation.scores.find({symptom, side}); found != observation.scores.end()) {
                    sum += found->second.points();
                    ++count;
                }
    }
    return count > 0 ? sum / count : 0;
}

}  // namespace

TEST_CASE("the same seed is the same course on every machine", "[rehearsal][invented]")
{
    // Recorded once; the arithmetic is sums and products alone, so another machine must agree.
    CHECK(printOf(invent({Model::decay, Rhythm::mixed, 7}, Kind::plain, 3)) == 1424510045627200237ULL);
    CHECK(printOf(invent({Model::steps, Rhythm::twice, 7}, Kind::haematoma, 3)) == 5701375128009352533ULL);
}

TEST_CASE("a course does not depend on what else was invented", "[rehearsal][invented]")
{
    const Invention invention{GENERATE(Model::decay, Model::steps), Rhythm::mixed, 11};
    const auto before = printOf(invent(invention, Kind::infection, 5));
    for (int i = 0; i < 20; ++i)
        (void)invent(invention, Kind::plain, i);

    CHECK(printOf(invent(invention, Kind::infection, 5)) == before);
    CHECK(printOf(invent(invention, Kind::infection, 6)) != before);
}

TEST_CASE("entries follow the treatment in order, on the days they should", "[rehearsal][invented]")
{
    const Invention invention{GENERATE(Model::decay, Model::steps),
                              GENERATE(Rhythm::mixed, Rhythm::daily, Rhythm::twice, Rhythm::plan), 3};
    std::vector<Kind> kinds(allKinds.begin(), allKinds.end());
    kinds.insert(kinds.end(), rareKinds.begin(), rareKinds.end());
    const Kind kind = GENERATE_COPY(from_range(kinds));
    for (int i = 0; i < 30; ++i) {
        const KnownCourse course = invent(invention, kind, i);
        clock::Instant last = course.input.treated.at;
        for (const auto& observation : course.input.observations) {
            CHECK(observation.at.at > last);
            last = observation.at.at;
            const int day = clock::dayOfRecovery(course.input.treated, observation.at);
            CHECK((day >= 0 && day <= inventedDays));
            if (invention.rhythm == Rhythm::plan)
                CHECK((day <= 14 || day % 2 == 0 || observation.at.offset != course.input.treated.offset));
        }
        CHECK(course.truth.isPlain() == (kind == Kind::plain));
        CHECK(course.truth.onset.has_value() == (kind != Kind::plain));
    }
}

TEST_CASE("a complication shows on its side after its onset and not before", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    double before = 0;
    double after = 0;
    int courses = 0;
    for (int i = 0; i < 300; ++i) {
        const KnownCourse course = invent({model, Rhythm::twice, 5}, Kind::haematoma, i);
        const Side other = recovery::mirrored(course.truth.side);
        const auto lead = [&](const triggers::Observation& o) -> std::optional<int> {
            const auto here = o.scores.find({Symptom::swelling, course.truth.side});
            const auto there = o.scores.find({Symptom::swelling, other});
            if (here == o.scores.end() || there == o.scores.end())
                return std::nullopt;
            return here->second.points() - there->second.points();
        };
        std::optional<int> first;
        std::optional<int> later;
        for (const auto& observation : course.input.observations) {
            if (observation.at.at < course.truth.onset->at)
                first = lead(observation);
            else if (!later && observation.at.at > course.truth.onset->at + std::chrono::hours(12))
                later = lead(observation);
        }
        if (first && later) {
            before += *first;
            after += *later;
            ++courses;
        }
    }
    REQUIRE(courses > 100);
    // The models add three to five points; some is lost at the top of the scale.
    CHECK(std::abs(before / courses) < 0.5);
    CHECK(after / courses > 2.5);
}

TEST_CASE("slow courses are higher in the second week", "[rehearsal][invented]")
{
    const Invention invention{GENERATE(Model::decay, Model::steps), Rhythm::daily, 5};

    CHECK(meanOn(invention, Kind::slowRecovery, Symptom::swelling, Side::left, 12, 200)
          > 1 + meanOn(invention, Kind::plain, Symptom::swelling, Side::left, 12, 200));
}

TEST_CASE("plain courses of both models lie near the seed band", "[rehearsal][invented]")
{
    const Invention invention{GENERATE(Model::decay, Model::steps), Rhythm::daily, 5};
    struct Row { Symptom symptom; int day; };
    for (const Row& row : {Row{Symptom::pain, 1}, Row{Symptom::pain, 7}, Row{Symptom::swelling, 2},
                           Row{Symptom::swelling, 7}, Row{Symptom::bruising, 3}, Row{Symptom::tightness, 3},
                           Row{Symptom::twinges, 5}, Row{Symptom::puckering, 7}}) {
        CAPTURE(recovery::word(row.symptom), row.day);
        const double mean = meanOn(invention, Kind::plain, row.symptom, Side::right, row.day, 300);
        double expected = 0;
        for (std::size_t k = 0; k < 11; ++k)
            expected += static_cast<double>(k) * bands::seedBand().at(row.symptom, row.day)[k];
        CHECK(std::abs(mean - expected) < 0.9);
    }
}

TEST_CASE("a complication that a sign tells is ticked after its onset, nearly always, and not before", "[rehearsal][invented]")
{
    struct Row { Kind kind; recovery::Sign sign; };
    const auto row = GENERATE(Row{Kind::threadOut, recovery::Sign::threadOut}, Row{Kind::weakness, recovery::Sign::faceWeakness},
                              Row{Kind::salivaSwelling, recovery::Sign::salivaSwelling}, Row{Kind::paleSkin, recovery::Sign::paleSkin},
                              Row{Kind::airway, recovery::Sign::neckSwelling}, Row{Kind::allergy, recovery::Sign::allergy},
                              Row{Kind::severeIllness, recovery::Sign::severeIllness},
                              Row{Kind::strokeSigns, recovery::Sign::strokeSigns}, Row{Kind::vision, recovery::Sign::vision});
    CAPTURE(word(row.kind));
    int wrote = 0;
    int told = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({Model::steps, Rhythm::twice, 9}, row.kind, i);
        for (const TickedSigns& answer : course.signs)
            if (answer.signs.contains(row.sign))
                CHECK(answer.at.at >= course.truth.onset->at);
        const auto soon = [&](const clock::Moment& at) {
            return at.at >= course.truth.onset->at && at.at < course.truth.onset->at + std::chrono::hours(26);
        };
        wrote += std::count_if(course.input.observations.begin(), course.input.observations.end(),
                               [&](const auto& entry) { return soon(entry.at); }) >= 2;
        told += std::any_of(course.signs.begin(), course.signs.end(), [&](const TickedSigns& answer) {
            return soon(answer.at) && answer.signs.contains(row.sign);
        });
    }
    REQUIRE(wrote > 100);
    CHECK(told > 0.75 * wrote);
}

TEST_CASE("a reaction to the numbing is over within hours, and ticked by whoever writes in them", "[rehearsal][invented]")
{
    int wrote = 0;
    int told = 0;
    for (int i = 0; i < 400; ++i) {
        const KnownCourse course = invent({Model::decay, Rhythm::twice, 9}, Kind::numbingReaction, i);
        const auto since = [&](const clock::Moment& at) {
            return std::chrono::duration<double, std::ratio<3600>>(at.at - course.truth.onset->at).count();
        };
        CHECK(since(course.input.treated) <= -2 + 1.0 / 60);
        CHECK(since(course.input.treated) >= -12);
        const auto during = [&](const clock::Moment& at) { return since(at) >= 1 && since(at) < 6; };
        wrote += std::any_of(course.input.observations.begin(), course.input.observations.end(),
                             [&](const auto& entry) { return during(entry.at); });
        bool ticked = false;
        for (const TickedSigns& answer : course.signs)
            if (answer.signs.contains(recovery::Sign::numbingReaction)) {
                CHECK((since(answer.at) >= 0 && since(answer.at) < 7));
                ticked = ticked || during(answer.at);
            }
        told += ticked;
    }
    REQUIRE(wrote > 50);
    CHECK(told > 0.75 * wrote);
    CHECK(told <= wrote);
}

TEST_CASE("a colour that spreads shows first, and its edge has moved from half a day after the onset on", "[rehearsal][invented]")
{
    int wrote = 0;
    int told = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse course = invent({Model::steps, Rhythm::twice, 9}, Kind::spreadingColour, i);
        const auto since = [&](const clock::Moment& at) {
            return std::chrono::duration<double, std::ratio<3600>>(at.at - course.truth.onset->at).count();
        };
        const auto later = [&](const clock::Moment& at) { return since(at) > 48 && since(at) < 96; };
        wrote += std::count_if(course.input.observations.begin(), course.input.observations.end(),
                               [&](const auto& entry) { return later(entry.at); }) >= 2;
        bool both = false;
        for (const TickedSigns& answer : course.signs)
            if (answer.signs.contains(recovery::Sign::edgeMoved)) {
                CHECK(since(answer.at) >= 12);
                both = both || (later(answer.at) && answer.signs.contains(recovery::Sign::colourChange));
            }
        told += both;
    }
    REQUIRE(wrote > 100);
    CHECK(told > 0.9 * wrote);
}

TEST_CASE("a thread lump is ticked to the end, far more often than by mistake", "[rehearsal][invented]")
{
    const auto sharesOf = [](Kind kind) {
        int entries = 0, ticks = 0;
        for (int i = 0; i < 200; ++i) {
            const KnownCourse course = invent({Model::decay, Rhythm::daily, 9}, kind, i);
            const auto late = [&](const clock::Moment& at) { return clock::dayOfRecovery(course.input.treated, at) >= 19; };
            entries += static_cast<int>(std::count_if(course.input.observations.begin(), course.input.observations.end(),
                                                      [&](const auto& entry) { return late(entry.at); }));
            ticks += static_cast<int>(std::count_if(course.signs.begin(), course.signs.end(), [&](const TickedSigns& answer) {
                return late(answer.at) && answer.signs.contains(recovery::Sign::threadLump);
            }));
        }
        REQUIRE(entries > 100);
        return ticks / static_cast<double>(entries);
    };
    CHECK(sharesOf(Kind::threadLump) > 0.8);
    CHECK(sharesOf(Kind::plain) < 0.03);
}

TEST_CASE("ordinary courses tick a sign by mistake now and then, and never a grave one", "[rehearsal][invented]")
{
    int entries = 0;
    int ticks = 0;
    for (int i = 0; i < 300; ++i) {
        const KnownCourse course = invent({Model::decay, Rhythm::mixed, 9}, Kind::plain, i);
        entries += static_cast<int>(course.input.observations.size());
        for (const TickedSigns& answer : course.signs) {
            ++ticks;
            CHECK_FALSE(answer.signs.contains(recovery::Sign::breathing));
            CHECK_FALSE(answer.signs.contains(recovery::Sign::threadOut));
        }
    }
    CHECK(ticks > 0);
    CHECK(ticks < 0.02 * entries);
}

TEST_CASE("a late bleeding begins in the second week, and folds that get worse rise on their side", "[rehearsal][invented]")
{
    const Model model = GENERATE(Model::decay, Model::steps);
    double rise = 0;
    int counted = 0;
    for (int i = 0; i < 200; ++i) {
        const KnownCourse late = invent({model, Rhythm::daily, 9}, Kind::lateHaematoma, i);
        const auto hours = std::chrono::duration<double, std::ratio<3600>>(late.truth.onset->at - late.input.treated.at).count();
        CHECK((hours >= 7 * 24 - 1 && hours <= 10 * 24));
        const KnownCourse folds = invent({model, Rhythm::daily, 9}, Kind::worseningFolds, i);
        std::optional<int> before;
        std::optional<int> last;
        for (const auto& entry : folds.input.observations)
            if (const auto found = entry.scores.find({Symptom::puckering, folds.truth.side}); found != entry.scores.end()) {
                if (entry.at.at < folds.truth.onset->at)
                    before = found->second.points();
                last = found->second.points();
            }
        if (before && last) {
            rise += *last - *before;
            ++counted;
        }
    }
    REQUIRE(counted > 100);
    CHECK(rise / counted > 1.5);
}

TEST_CASE("words of kinds go there and back", "[rehearsal][invented]")
{
    for (const Kind kind : allKinds)
        CHECK(kindFromWord(word(kind)) == kind);
    for (const Kind kind : rareKinds)
        CHECK(kindFromWord(word(kind)) == kind);
    const auto unknown = kindFromWord("toothache");
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().reason == Reason::malformed);
}
