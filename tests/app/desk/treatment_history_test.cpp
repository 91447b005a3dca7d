// What can be undone of a treatment being written.
#include "app/desk/model/treatment_history.h"

#include <catch2/catch_test_macros.hpp>

#include <rapidcheck.h>

using namespace ebbline;
using deskapp::TreatmentHistory;
using deskapp::TypedField;
using deskapp::WhenSaid;

namespace {

recovery::Treatment noted(const recovery::Treatment& before, const std::string& note)
{
    auto next = before;
    next.note = note;
    return next;
}

recovery::Treatment drawn(const recovery::Treatment& before)
{
    auto next = before;
    next.placements.push_back({});
    return next;
}

}  // namespace

TEST_CASE("a long note is one step, and takes no thread from what can be undone", "[desk][treatment][undo]")
{
    TreatmentHistory history;
    history.take(drawn(history.now()));
    std::string words;
    for (std::size_t letter = 0; letter < 2 * TreatmentHistory::mostSteps; ++letter) {
        words += 'a';
        history.take(noted(history.now(), words), TypedField::note);
    }
    history.undo(WhenSaid::no);
    CHECK(history.now().note.empty());
    CHECK(history.now().placements.size() == 1);
    REQUIRE(history.canUndo());
    history.undo(WhenSaid::no);
    CHECK(history.now().placements.empty());
    CHECK_FALSE(history.canUndo());
    history.redo(WhenSaid::no);
    history.redo(WhenSaid::no);
    CHECK(history.now().note == words);
}

TEST_CASE("typing ends with another field, another act, an undo, and where the field is left", "[desk][treatment][undo]")
{
    TreatmentHistory history;
    history.take(noted(history.now(), "a"), TypedField::note);
    SECTION("another act")
    {
        history.take(drawn(history.now()));
    }
    SECTION("another field")
    {
        auto weighed = history.now();
        weighed.weightKg = 61;
        history.take(weighed, TypedField::weight);
    }
    SECTION("left")
    {
        history.endTyping();
    }
    SECTION("undone and done again")
    {
        history.undo(WhenSaid::no);
        history.redo(WhenSaid::no);
    }
    history.take(noted(history.now(), "ab"), TypedField::note);
    history.undo(WhenSaid::no);
    CHECK(history.now().note == "a");
}

TEST_CASE("what was typed and taken back is no step", "[desk][treatment][undo]")
{
    TreatmentHistory history;
    history.take(noted(history.now(), "a"), TypedField::note);
    history.take(noted(history.now(), ""), TypedField::note);
    CHECK_FALSE(history.canUndo());
    history.take(noted(history.now(), "b"), TypedField::note);
    CHECK(history.canUndo());
}

TEST_CASE("the time goes with a step only where all of it was emptied, whose it is never", "[desk][treatment][undo]")
{
    const recovery::PatientId patient{{7}};
    const clock::Moment then{clock::Instant(std::chrono::hours(10)), std::chrono::minutes(60), {}};
    const clock::Moment later{clock::Instant(std::chrono::hours(99)), std::chrono::minutes(60), {}};
    TreatmentHistory history;
    history.setAt(then);
    history.take(drawn(history.now()));
    auto blank = recovery::Treatment{};
    blank.at = later;
    history.takeWhole(blank, WhenSaid::said);
    history.setPatient(patient);

    const auto step = history.undo(WhenSaid::no);
    CHECK(step.whole);
    CHECK(step.when == WhenSaid::said);
    CHECK(step.treatment.at == then);
    CHECK(step.treatment.patient == patient);
    history.setAt(later);
    const auto line = history.undo(WhenSaid::confirmed);
    CHECK_FALSE(line.whole);
    CHECK(line.when == WhenSaid::confirmed);
    CHECK(line.treatment.at == later);
    CHECK(line.treatment.patient == patient);
}

TEST_CASE("undoing everything gives what was loaded, redoing everything what was there", "[desk][treatment][undo][property]")
{
    CHECK(rc::check("undo and redo", [] {
        TreatmentHistory history;
        history.load(noted({}, "loaded"));
        const auto loaded = history.now();
        for (const int step : *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 5))) {
            auto next = history.now();
            switch (step) {
            case 0:
                history.take(drawn(next));
                break;
            case 1:
                next.placements.clear();
                history.take(next);
                break;
            case 2:
                history.take(noted(next, next.note + "x"), TypedField::note);
                break;
            case 3:
                next.dressings = !next.dressings;
                history.take(next);
                break;
            default:
                history.endTyping();
            }
        }
        const auto done = history.now();
        while (history.canUndo()) {
            history.undo(WhenSaid::no);
        }
        RC_ASSERT(history.now() == loaded);
        while (history.canRedo()) {
            history.redo(WhenSaid::no);
        }
        RC_ASSERT(history.now() == done);
    }));
}
