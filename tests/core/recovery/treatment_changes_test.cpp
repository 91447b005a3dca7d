// What differs between two records of one treatment, part by part.

#include "core/recovery/treatment_changes.h"

#include "tests/core/records/sample_bodies.h"

#include <catch2/catch_test_macros.hpp>

#include <functional>
#include <utility>

using namespace ebbline;
using namespace ebbline::recovery;

namespace {

using Part = TreatmentPart;
using Changes = std::vector<TreatmentChange>;

Changes after(const std::function<void(Treatment&)>& change)
{
    Treatment now = test::sampleTreatment();
    change(now);
    return changesOf(test::sampleTreatment(), now);
}

}  // namespace

TEST_CASE("each part of a record that is written otherwise is named, and nothing else", "[recovery][correction]")
{
    CHECK(after([](Treatment&) {}).empty());
    const std::vector<std::pair<Part, std::function<void(Treatment&)>>> whole{
        {Part::time, [](Treatment& t) { t.at.at += std::chrono::hours(24); }},
        {Part::solution, [](Treatment& t) { t.anaesthetic.percent = 2; }},
        {Part::solution, [](Treatment& t) { t.anaesthetic.extraMl = 3; }},
        {Part::otherwise, [](Treatment& t) { t.otherwiseMg = 0; }},
        {Part::weight, [](Treatment& t) { t.weightKg.reset(); }},
        {Part::placedBy, [](Treatment& t) { t.placedBy = "Dr. Ada Lund"; }},
        {Part::dressings, [](Treatment& t) { t.dressings = !t.dressings; }},
        {Part::cautions, [](Treatment& t) { t.cautionsGiven = !t.cautionsGiven; }},
        {Part::consent, [](Treatment& t) { t.consentGiven = !t.consentGiven; }},
        {Part::learningConsent, [](Treatment& t) { t.learningConsent = !t.learningConsent; }},
        {Part::baseline, [](Treatment& t) { t.baseline.clear(); }},
        {Part::plan, [](Treatment& t) { t.planned = {asPlanned(t.placements[0])}; }},
        {Part::note, [](Treatment& t) { t.note = "both sides even"; }},
    };
    for (const auto& [part, change] : whole) {
        CAPTURE(static_cast<int>(part));
        CHECK(after(change) == Changes{{part, 0, 0}});
    }
    const std::vector<std::pair<Part, std::function<void(Placement&)>>> ofThread{
        {Part::side, [](Placement& p) { p.side = Side::left; }},
        {Part::zone, [](Placement& p) { p.zone = Zone::neck; }},
        {Part::track, [](Placement& p) { p.end.y += 1; }},
        {Part::ending, [](Placement& p) { p.ending = Ending::pastMovingZone; }},
        {Part::thread, [](Placement& p) { p.material = Material::plla; }},
        {Part::thread, [](Placement& p) { p.form = Form::smooth; }},
        {Part::thread, [](Placement& p) { p.gauge = 21; }},
        {Part::thread, [](Placement& p) { p.lengthMm = 90; }},
        {Part::instrument, [](Placement& p) { p.instrument = Instrument::bluntCannula; }},
        {Part::instrument, [](Placement& p) { p.instrumentLengthMm = 90; }},
        {Part::lot, [](Placement& p) { p.lot = "TH-4418"; }},
        {Part::lot, [](Placement& p) { p.expiry.reset(); }},
        {Part::lot, [](Placement& p) { p.article = "09506000134352"; }},
        {Part::volume, [](Placement& p) { p.anaestheticMl = 0.5; }},
        {Part::epinephrine, [](Placement& p) { p.epinephrineAt = EpinephrineAt::nowhere; }},
        {Part::redoing, [](Placement& p) { p.redone = Redone{Redoing::added, "one side hung lower"}; }},
    };
    for (const auto& [part, change] : ofThread) {
        CAPTURE(static_cast<int>(part));
        CHECK(after([&](Treatment& t) { change(t.placements[1]); }) == Changes{{part, 2, 2}});
    }
}

TEST_CASE("a thread is the same where it lies, whatever number it has; one more and one less are named", "[recovery][correction]")
{
    CHECK(after([](Treatment& t) { t.placements.erase(t.placements.begin()); }) == Changes{{Part::threadRemoved, 1, 0}});
    CHECK(after([](Treatment& t) {
              t.placements.erase(t.placements.begin());
              t.placements[0].lot = "TH-4418";
          })
          == Changes{{Part::threadRemoved, 1, 0}, {Part::lot, 2, 1}});
    CHECK(after([](Treatment& t) {
              Placement neck = t.placements[0];
              neck.entry = {200, 420};
              neck.end = {200, 500};
              t.placements.push_back(neck);
          })
          == Changes{{Part::threadAdded, 0, 3}});
    CHECK(after([](Treatment& t) { std::swap(t.placements[0], t.placements[1]); }) == Changes{{Part::threadOrder, 0, 0}});
}

TEST_CASE("a thread that was recorded on the wrong side is that thread still", "[recovery][correction]")
{
    Treatment former = test::sampleTreatment();
    former.placements.resize(1);
    Treatment now = former;
    now.placements[0] = mirrored(now.placements[0]);
    CHECK(changesOf(former, now) == Changes{{Part::side, 1, 1}, {Part::track, 1, 1}});
}

TEST_CASE("why and by whom a record was corrected is no part that differs", "[recovery][correction]")
{
    CHECK(after([](Treatment& t) { t.corrected = Correction{"the lot of the other tray", "Dr. Ada Lund"}; }).empty());
}
