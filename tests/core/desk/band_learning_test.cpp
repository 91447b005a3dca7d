// A clinic learns its band, uses it, and goes back: through the vault and its journal.

#include "tests/core/desk/clinic_world.h"

#include "core/bytes/text.h"
#include "core/rehearsal/calibrate.h"
#include "core/rehearsal/grounds.h"
#include "core/rehearsal/taught.h"

#include <algorithm>

using namespace ebbline;
using namespace ebbline::test;

namespace {

struct Told {
    bool consent = true;
    bool close = true;
    bool uncomplicated = true;
    std::vector<std::string> complications = {};
    std::optional<records::Outcome> outcome = {};
};

/// An invented course as the desk would hold it after its follow-up.
recovery::CourseId enter(ClinicWorld& world, const rehearsal::KnownCourse& known, const Told& told = {})
{
    const auto patient = world.desk.registerPatient("Ines Varga", "+00 555 0101", "en");
    REQUIRE(patient);
    auto treatment = world.desk.blankTreatment(*patient);
    treatment.at = known.input.treated;
    treatment.placements = sampleTreatment().placements;
    treatment.learningConsent = told.consent;
    treatment.baseline = known.input.baseline;
    REQUIRE(world.desk.recordTreatment(treatment));
    std::vector<records::Body> bodies;
    for (const triggers::Observation& observation : known.input.observations) {
        recovery::Entry entry;
        entry.id = recovery::EntryId{crypto::randomArray<16>()};
        entry.course = treatment.course;
        entry.at = entry.recordedAt = observation.at;
        entry.scores = observation.scores;
        bodies.push_back(records::EntryRecorded{entry});
    }
    if (told.outcome)
        bodies.push_back(records::FindingActed{treatment.course, "t/level/pain/L/3", records::Act::closed, *told.outcome,
                                               "Dr. Ada Lund", "", world.now()});
    REQUIRE(world.desk.vault().append(bodies, world.now()));
    if (told.close)
        REQUIRE(world.desk.recordFollowUp({treatment.course, records::GlobalChange::better, 4, told.complications,
                                           told.uncomplicated, "", "", "", {}}));
    return treatment.course;
}

rehearsal::KnownCourse invented(int number)
{
    return rehearsal::invent({rehearsal::Model::decay, rehearsal::Rhythm::daily, 11}, rehearsal::Kind::plain, number);
}

/// Plain courses of which at least half the days are written.
void enterPlain(ClinicWorld& world, int from, int count)
{
    for (int number = from; count > 0; ++number) {
        const auto known = invented(number);
        std::set<int> days;
        for (const auto& observation : known.input.observations)
            days.insert(clock::dayOfRecovery(known.input.treated, observation.at));
        if (days.size() < 12)
            continue;
        enter(world, known);
        --count;
    }
}

}  // namespace

TEST_CASE("a course is asked for its consent, its end and its course before it teaches", "[bands][story]")
{
    ClinicWorld world;
    const auto known = invented(0);
    const auto may = enter(world, known);
    std::map<recovery::CourseId, bands::Refusal> wanted;
    wanted[enter(world, known, {.consent = false, .close = false})] = bands::Refusal::noConsent;
    wanted[enter(world, known, {.close = false})] = bands::Refusal::stillOpen;
    wanted[enter(world, known, {.uncomplicated = false})] = bands::Refusal::complicated;
    wanted[enter(world, known, {.complications = {"infection"}})] = bands::Refusal::complicated;
    wanted[enter(world, known, {.outcome = records::Outcome::treatedInClinic})] = bands::Refusal::treated;
    wanted[enter(world, known, {.outcome = records::Outcome::sentToUrgentCare})] = bands::Refusal::treated;
    auto brief = known;
    std::erase_if(brief.input.observations,
                  [&](const auto& each) { return clock::dayOfRecovery(known.input.treated, each.at) > 9; });
    wanted[enter(world, brief)] = bands::Refusal::tooFewDays;
    const auto reassured = enter(world, known, {.outcome = records::Outcome::reassured});

    const desk::Teaching teaching = world.desk.teaching();

    CHECK(std::map(teaching.refused.begin(), teaching.refused.end()) == wanted);
    REQUIRE(teaching.courses.size() == 2);
    for (const auto& course : teaching.courses)
        CHECK((course.taught.course == may || course.taught.course == reassured));
    CHECK(teaching.courses.front().taught.days.size() == rehearsal::taughtBy(known.input).size());
}

TEST_CASE("a clinic learns a band, uses it for new courses, and goes back to the seed", "[bands][story]")
{
    ClinicWorld world;
    CHECK(world.desk.learnBand().error().reason == Reason::notEnough);
    enterPlain(world, 0, 40);
    enter(world, invented(900), {.complications = {"haematoma"}});

    const auto version = world.desk.learnBand();

    REQUIRE(version);
    const bands::Learned* learned = world.desk.bandHistory().find(*version);
    REQUIRE(learned);
    CHECK(learned->courses.size() == 40);
    CHECK(learned->refused.at(bands::Refusal::complicated) == 1);
    CHECK(learned->by == "Dr. Ada Lund");
    CHECK_FALSE(bands::objection(learned->coverage));
    // Learning alone changes nothing for a patient.
    CHECK(world.desk.bandHistory().activeVersion() == "seed-1");
    CHECK(world.desk.protocols().front().band == bands::seedBand());

    CHECK(world.desk.useBand(*version, "").error().reason == Reason::notEnough);
    REQUIRE(world.desk.useBand(*version, "forty courses of our own"));
    const triggers::Protocol used = world.desk.protocols().front();
    CHECK(used.band == learned->band);
    CHECK(used.version == triggers::defaultProtocol().version + 1);
    CHECK(used.thresholds.calibratedOn == "40 uncomplicated courses");
    CHECK(used.thresholds.levelGuard == triggers::Thresholds{}.levelGuard);
    CHECK(used.carePlan == triggers::defaultProtocol().carePlan);

    REQUIRE(world.desk.returnToBand("seed-1", "more alerts than expected"));
    const triggers::Protocol back = world.desk.protocols().front();
    CHECK(back.band == bands::seedBand());
    CHECK(back.thresholds == triggers::Thresholds{});
    CHECK(back.version == used.version + 1);
    CHECK(world.desk.bandHistory().choices().size() == 2);
    CHECK(world.desk.vault().verify());
}

TEST_CASE("the desk learns from the same courses the band that calibration learns from files, to the last bit", "[bands][calibrate]")
{
    desk::BandLesson lesson{{}, triggers::defaultProtocol(), "Dr. Ada Lund", *clock::parseIso8601("2027-05-01T10:00:00+02:00")};
    std::vector<rehearsal::KnownCourse> files;
    for (int number = 0; number < 60; ++number) {
        files.push_back(invented(number));
        const auto id = idOf<recovery::CourseTag>(static_cast<std::uint8_t>(number + 1));
        lesson.teaching.courses.push_back({rehearsal::taughtAs(id, files.back().input), files.back().input});
    }

    const auto atDesk = desk::learnFrom(std::move(lesson));
    const auto byFiles = rehearsal::calibrate(files, triggers::defaultProtocol(), {});

    REQUIRE(atDesk);
    REQUIRE(byFiles);
    REQUIRE(byFiles->bandObjection.empty());
    CHECK(bands::contentHash(atDesk->learned.band) == bands::contentHash(byFiles->protocol.band));
    CHECK_FALSE(atDesk->learned.band.movements().sums == bands::seedBand().movements().sums);
}

TEST_CASE("the same courses are no new version, one more course is", "[bands][story]")
{
    ClinicWorld world;
    enterPlain(world, 0, 12);
    const auto first = world.desk.learnBand();
    REQUIRE(first);

    CHECK(world.desk.learnBand().error().reason == Reason::alreadyExists);
    enterPlain(world, 400, 1);
    const auto second = world.desk.learnBand();
    REQUIRE(second);
    CHECK(*second != *first);

    // Twelve or thirteen are kept, and too few to be used by anybody.
    CHECK(world.desk.useBand(*second, "why not").error().reason == Reason::notEnough);
    CHECK(world.desk.protocols().front().band == bands::seedBand());
}

TEST_CASE("a version and what is in use survive locking the vault", "[bands][story]")
{
    ClinicWorld world;
    enterPlain(world, 0, 40);
    const auto version = world.desk.learnBand();
    REQUIRE(version);
    REQUIRE(world.desk.useBand(*version, "forty courses of our own"));
    const std::string content = bands::contentHash(world.desk.bandHistory().active());
    {
        const auto elsewhere = std::move(world.desk);
    }

    auto again = desk::Desk::unlock(world.folder.path() / "desk", passphrase, world.clock, world.zone);

    REQUIRE(again);
    CHECK(again->bandHistory().activeVersion() == *version);
    CHECK(bands::contentHash(again->bandHistory().active()) == content);
    CHECK(again->protocols().front().band.provenance().version == *version);
}

TEST_CASE("what the clinic has on record is what learning sees, and an open course has no outcome", "[learning][story]")
{
    ClinicWorld world;
    const auto known = invented(0);
    const auto well = enter(world, known);
    const auto infected = enter(world, known, {.complications = {"infection"}});
    const auto doubtful = enter(world, known, {.uncomplicated = false});
    const auto open = enter(world, known, {.consent = false, .close = false});

    std::map<std::string, learning::PastCourse> courses;
    for (auto& course : world.desk.pastCourses())
        courses[course.name] = course;

    const auto of = [&](const recovery::CourseId& id) { return courses.at(bytes::toHex(id.view())); };
    CHECK(courses.size() == 4);
    CHECK_FALSE(of(well).outcome->complicated);
    CHECK(of(infected).outcome->kinds == std::vector<std::string>{"infection"});
    CHECK(of(doubtful).outcome->complicated);
    CHECK_FALSE(of(open).outcome);
    CHECK(of(well).lots == std::vector{learning::PackLot{"TH-4417"}});
    CHECK(of(well).zones == learning::zonesOf(sampleTreatment()));
    CHECK(of(well).days.size() == rehearsal::taughtBy(known.input).size());
    // A name that leads to no person.
    CHECK(of(well).name.find("Ines") == std::string::npos);
}

TEST_CASE("nobody changes the band without a name", "[bands][story][errors]")
{
    ClinicWorld world;
    enterPlain(world, 0, 12);
    world.desk.setPerson("");
    CHECK(world.desk.learnBand().error().reason == Reason::invalidState);
    CHECK(world.desk.useBand("seed-1", "because").error().reason == Reason::invalidState);
}

namespace {

/// What another clinic calibrated on three hundred courses of its own.
triggers::Protocol calibratedElsewhere()
{
    std::vector<rehearsal::KnownCourse> files;
    for (int number = 0; number < 300; ++number)
        files.push_back(invented(number));
    rehearsal::CalibrationSettings settings;
    settings.resamples = 10;
    const auto done = rehearsal::calibrate(files, triggers::defaultProtocol(), settings);
    REQUIRE(done);
    REQUIRE(done->bandObjection.empty());
    return done->protocol;
}

triggers::Protocol learnedOn(const triggers::Protocol& protocol, const std::string& day)
{
    triggers::Protocol other = protocol;
    bands::Provenance provenance = protocol.band.provenance();
    provenance.learnedOn = day;
    other.band = *bands::Band::create(provenance, protocol.band.table(), protocol.band.movements());
    return other;
}

}  // namespace

TEST_CASE("a band from a file is checked on courses that were treated after it was learned, or on all if somebody says so", "[bands][brought]")
{
    ClinicWorld world;
    enterPlain(world, 1000, 12);
    const auto file = calibratedElsewhere();
    const auto checkedOn = [&](const std::string& day, bool ofOthersAlone) {
        const auto version = world.desk.checkBrought(learnedOn(file, day), ofOthersAlone);
        REQUIRE(version);
        return version->learned.courses.size();
    };

    CHECK(checkedOn("2999-12-31", false) == 0);
    CHECK(checkedOn("2999-12-31", true) == 12);
    CHECK(checkedOn("1999-12-31", false) == 12);
    for (const char* none : {"", "soon", "1999-13-01"})
        CHECK(checkedOn(none, false) == 0);
    CHECK(world.desk.bandHistory().versions().empty());
    CHECK(world.desk.checkBrought(learnedOn(file, "a day too long"), true).error().reason == Reason::tooLarge);
}

TEST_CASE("a protocol whose band came in a file goes live only with a band that held here, and goes back", "[bands][brought][story]")
{
    ClinicWorld world;
    const auto file = calibratedElsewhere();
    auto draft = world.desk.protocols().front();
    ++draft.version;

    // Without courses of its own a clinic cannot check it.
    const auto unchecked = world.desk.checkBrought(file, true);
    REQUIRE(unchecked);
    REQUIRE(world.desk.keepBand(*unchecked));
    draft.band = unchecked->learned.band;
    CHECK(world.desk.signProtocol(draft).error().reason == Reason::refused);
    CHECK(world.desk.signWithBand(draft, "from a colleague").error().reason == Reason::notEnough);

    enterPlain(world, 1000, 40);
    const auto checked = world.desk.checkBrought(file, true);
    REQUIRE(checked);
    REQUIRE_FALSE(bands::objection(checked->learned.coverage));
    draft.band = checked->learned.band;
    draft.thresholds = file.thresholds;
    draft.thresholds.calibratedOn = checked->thresholds.calibratedOn;
    CHECK(world.desk.signWithBand(draft, "from a colleague").error().reason == Reason::notFound);
    REQUIRE(world.desk.keepBand(*checked));
    CHECK(world.desk.keepBand(*checked).error().reason == Reason::alreadyExists);
    CHECK(world.desk.signWithBand(draft, "").error().reason == Reason::notEnough);
    auto stranger = draft;
    stranger.name = "Of nobody here";
    CHECK(world.desk.signWithBand(stranger, "from a colleague").error().reason == Reason::notFound);
    CHECK(world.desk.bandHistory().activeVersion() == "seed-1");

    REQUIRE(world.desk.keepProtocolDraft(draft));
    REQUIRE(world.desk.signWithBand(draft, "from a colleague"));
    CHECK_FALSE(world.desk.protocolDraft());
    CHECK(world.desk.protocols().front() == draft);
    CHECK(world.desk.bandHistory().activeVersion() == checked->learned.version());
    CHECK_FALSE(rehearsal::groundsOf(draft.thresholds.calibratedOn).isBudgetShown());

    auto former = triggers::defaultProtocol();
    former.version = draft.version + 1;
    REQUIRE(world.desk.signWithBand(former, "more alerts than expected"));
    CHECK(world.desk.bandHistory().activeVersion() == "seed-1");
    CHECK(world.desk.bandHistory().choices().back().back);
    CHECK(world.desk.protocols().front().band == bands::seedBand());
    CHECK(world.desk.vault().verify());
}
