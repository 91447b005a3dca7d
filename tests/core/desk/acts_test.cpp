// What is noted at the desk can be taken back, and a word goes to every desk.

#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

#include <algorithm>

using namespace ebbline;
using records::Act;

TEST_CASE("taking, calling and bringing forward can be taken back, and stay on record", "[desk][acts]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(std::chrono::hours(30));
    auto entry = world.entryOf(phone, 3, 3);
    entry.present = {recovery::Sign::thickFluid, recovery::Sign::bleeding};
    REQUIRE(phone.record(entry));
    world.syncPhone(phone);
    world.syncDesk();
    std::vector<std::string> keys;
    const auto queue = world.desk.queue();
    for (const auto& finding : queue.front().findings)
        keys.push_back(finding.key);
    REQUIRE(keys.size() == 2);

    for (const Act act : {Act::taken, Act::called, Act::visitBroughtForward}) {
        const auto done = world.desk.actOn(course, keys, act);
        REQUIRE(done);
        REQUIRE(done->size() == 2);
        CHECK(world.desk.queue().front().touched);

        REQUIRE(world.desk.takeBack(course, *done));

        const auto row = world.desk.queue().front();
        CHECK_FALSE(row.touched);
        CHECK_FALSE(row.takenBy);
        CHECK(triage::isOverdue(row, world.inDays(1)));
        CHECK(world.desk.takeBack(course, *done).error().reason == Reason::alreadyExists);
    }
    CHECK(world.desk.course(course)->state->acts.size() == 6);
    // None of it goes to the phone, and what does go arrives.
    REQUIRE(world.desk.writeMessage(course, "We look at it today."));
    world.syncDesk();
    world.syncPhone(phone);
    CHECK(phone.messages().size() == 1);
    CHECK(phone.vault().state().courses.at(course).acts.empty());
    CHECK(world.desk.takeBack(course, {{world.desk.vault().device(), 900}}).error().reason == Reason::notFound);
    CHECK_FALSE(world.desk.actOn(course, {keys.front(), "w/none"}, Act::taken));
    CHECK(world.desk.course(course)->state->acts.size() == 6);
}

TEST_CASE("a call about a silence that ends while it is made is kept; beside others that are there still, the silence is left out", "[desk][acts][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const bool withSign = GENERATE(false, true);
    std::vector<std::string> keys;
    world.clock.advance(std::chrono::hours(2));
    auto entry = world.entryOf(phone, 3, 3);
    if (withSign)
        entry.present = {recovery::Sign::thickFluid};
    REQUIRE(phone.record(entry));
    world.syncPhone(phone);
    world.syncDesk();
    for (int day = 0; day < 5; ++day) {
        world.clock.advance(std::chrono::hours(24));
        REQUIRE(phone.record(world.entryOf(phone, 3, 3)));  // none of it has reached the clinic
    }
    const auto rows = world.desk.queue();
    REQUIRE(rows.size() == 1);
    for (const auto& finding : rows.front().findings)
        keys.push_back(finding.key);
    const auto silences = std::ranges::count_if(keys, triage::namesSilence);
    REQUIRE(silences > 0);
    REQUIRE((std::ssize(keys) > silences) == withSign);

    world.syncPhone(phone);
    world.syncDesk();
    for (const auto& finding : triage::findingsOf(*world.desk.course(course)->state, world.now()))
        REQUIRE_FALSE(triage::namesSilence(finding.key));
    if (!withSign) {
        CHECK(world.desk.actOn(course, keys, Act::taken).error().reason == Reason::notFound);
        CHECK(world.desk.actOn(course, {keys.front(), "w/none"}, Act::called).error().reason == Reason::notFound);
    }
    const auto done = world.desk.actOn(course, keys, Act::called, records::Outcome::none, "She is well.");

    REQUIRE(done);
    CHECK(std::ssize(*done) == (withSign ? std::ssize(keys) - silences : silences));
    const auto view = world.desk.course(course);
    CHECK(view->state->acts.back().act == Act::called);
    CHECK(view->state->acts.back().note == "She is well.");
    CHECK(triage::namesSilence(view->state->acts.back().finding) != withSign);
    // Nor does one that is gone stand in the way of a visit or of the follow-up.
    REQUIRE(world.desk.moveVisit(course, world.inDays(3), keys));
    records::FollowUpRecorded followUp;
    followUp.course = course;
    desk::Desk::Closings closings;
    for (const auto& key : keys)
        closings.emplace_back(key, records::Outcome::reassured);
    CHECK(world.desk.recordFollowUp(followUp, closings));
}

TEST_CASE("a call about no finding is noted on its course at the clinic alone, and can be taken back", "[desk][acts]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    CHECK(world.desk.noteCall({}, records::Contact::sheRang).error().reason == Reason::notFound);
    CHECK(world.desk.noteCall(course, records::Contact::sheRang, std::string(2001, 'a')).error().reason == Reason::tooLarge);

    const auto done = world.desk.noteCall(course, records::Contact::sheRang, "May she wash her hair?");

    REQUIRE(done);
    REQUIRE(world.desk.course(course)->state->calls.size() == 1);
    CHECK(world.desk.course(course)->state->calls.front().value.by == "Dr. Ada Lund");
    CHECK(world.desk.queue().empty());
    REQUIRE(world.desk.takeBack(course, *done));
    CHECK(world.desk.takeBack(course, *done).error().reason == Reason::alreadyExists);
    CHECK(world.desk.course(course)->state->calls.size() == 1);  // both stay on record

    // What is said of a visit that answers no finding is kept, and goes with it when it is taken back.
    const auto agreed = phone.today().followUp;
    const auto moved = world.desk.moveVisit(course, world.inDays(5), {}, "Comes on Saturday.");
    REQUIRE(moved);
    CHECK(world.desk.course(course)->state->calls.back().value.text == "Comes on Saturday.");
    REQUIRE(world.desk.takeBack(course, *moved));
    CHECK(world.desk.course(course)->state->opened->followUp == agreed);
    world.syncDesk();
    world.syncPhone(phone);
    CHECK(phone.vault().state().courses.at(course).calls.empty());
    world.desk.setPerson({});
    CHECK(world.desk.noteCall(course, records::Contact::spoken).error().reason == Reason::invalidState);
}

TEST_CASE("a word to who comes next is up with its author until the next one or until it is taken down", "[desk][acts]")
{
    test::ClinicWorld world;
    CHECK(world.desk.wordsUp().empty());
    CHECK_FALSE(world.desk.handOver(""));
    CHECK(world.desk.handOver(std::string(4001, 'a')).error().reason == Reason::tooLarge);

    REQUIRE(world.desk.handOver("Ring the first two."));
    REQUIRE(world.desk.handOver("All rung."));

    REQUIRE(world.desk.wordsUp().size() == 1);
    CHECK(world.desk.wordsUp().front().text == "All rung.");
    CHECK(world.desk.wordsUp().front().by == "Dr. Ada Lund");
    REQUIRE(world.desk.takeWordsDown());
    CHECK(world.desk.wordsUp().empty());
}

TEST_CASE("a word that an older program pinned at one desk goes into the journal with its author and its time", "[desk][acts]")
{
    test::ClinicWorld world;
    REQUIRE(world.desk.adoptPinnedWord());
    CHECK(world.desk.wordsUp().empty());
    const std::string_view by = "Dr. Jonas Feld", at = "2027-02-28T19:30:00+01:00", word = "The left one has no phone.";
    REQUIRE(world.desk.vault().keep("hand-over", bytes::Writer().block(bytes::viewOf(by)).block(bytes::viewOf(at)).block(bytes::viewOf(word)).bytes()));

    REQUIRE(world.desk.adoptPinnedWord());
    REQUIRE(world.desk.adoptPinnedWord());

    REQUIRE(world.desk.wordsUp().size() == 1);
    CHECK(world.desk.wordsUp().front().text == word);
    CHECK(world.desk.wordsUp().front().by == by);
    CHECK(world.desk.wordsUp().front().at.at == test::momentAt("2027-02-28T19:30:00+01:00").at);
    CHECK_FALSE(world.desk.vault().kept("hand-over"));
}

TEST_CASE("a warning that was read stands again on the phone when a correction makes it worse", "[desk][acts][safety]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(std::chrono::hours(30));
    auto entry = world.entryOf(phone, 3, 3);
    entry.temperature = *recovery::Temperature::celsius(38.0);
    const auto saved = phone.record(entry);
    REQUIRE(saved);
    REQUIRE(phone.today().standing.size() == 1);

    // As a program before this one wrote down that it was read: its subject, and the urgency beside it.
    const triage::Finding finding = phone.today().standing.front();
    REQUIRE(phone.vault().append({records::WarningShown{course, saved->entry, finding.subject, finding.urgency, world.now(), true}}, world.now()));
    CHECK(phone.today().standing.empty());

    entry.temperature = *recovery::Temperature::celsius(39.5);
    const auto hotter = phone.amend(saved->entry, entry);
    REQUIRE(hotter);
    REQUIRE(phone.today().standing.size() == 1);
    REQUIRE(phone.confirmWarning(phone.today().standing.front()));
    CHECK(phone.today().standing.empty());
}
