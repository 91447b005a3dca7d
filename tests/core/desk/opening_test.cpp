// Openings between a phone and its clinic: what was seen is said of the words that were seen.

#include "tests/core/desk/clinic_world.h"

using namespace ebbline;
using namespace std::chrono_literals;
using patient::EntryState;

TEST_CASE("a correction is opened anew: until then desk and phone say that only what was written before was opened", "[story][opening]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto exchange = [&] {
        world.clock.advance(5min);
        world.syncPhone(phone);
        world.syncDesk();
        world.syncPhone(phone);
    };
    const auto state = [&] { return phone.history().front().state; };
    const auto saved = phone.record(world.entryOf(phone, 3, 3));
    REQUIRE(saved);
    exchange();
    REQUIRE(world.desk.openEntries(course));
    exchange();
    REQUIRE(state().place == EntryState::Place::opened);

    // The correction is on its way, and on the way it was opened by nobody.
    REQUIRE(phone.amend(saved->entry, world.entryOf(phone, 8, 3)));
    CHECK(state().place == EntryState::Place::savedHere);
    REQUIRE(state().openedBefore);
    CHECK(state().openedBefore->by == "Dr. Ada Lund");
    CHECK(world.desk.summary(course)->unopened == 0);

    exchange();
    CHECK(world.desk.summary(course)->unopened == 1);
    CHECK(state().place == EntryState::Place::withClinic);
    CHECK(state().openedBy.empty());
    CHECK(state().openedBefore);

    world.desk.setPerson("Dr. Jonas Feld");
    REQUIRE(world.desk.openEntries(course));
    CHECK(world.desk.summary(course)->unopened == 0);
    exchange();
    CHECK(state().place == EntryState::Place::opened);
    CHECK(state().openedBy == "Dr. Jonas Feld");
    CHECK_FALSE(state().openedBefore);

    // Her own tables say the same of each version.
    const std::string table = phone.tables().at("entries.csv");
    CHECK(table.find("replaced,Dr. Ada Lund") != std::string::npos);
    CHECK(table.find("opened,Dr. Jonas Feld") != std::string::npos);
}

TEST_CASE("an opening that crosses a correction on the way is none of the correction", "[story][opening]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto saved = phone.record(world.entryOf(phone, 3, 3));
    REQUIRE(saved);
    world.syncPhone(phone);
    world.syncDesk();
    // Both at once: she corrects, the desk opens what it has, later by its clock.
    REQUIRE(phone.amend(saved->entry, world.entryOf(phone, 8, 3)));
    world.clock.advance(5min);
    world.syncPhone(phone);
    REQUIRE(world.desk.openEntries(course));
    world.syncDesk();
    world.clock.advance(5min);
    world.syncPhone(phone);

    CHECK(phone.history().front().state.place == EntryState::Place::withClinic);
    CHECK(phone.history().front().state.openedBefore);
    CHECK(world.desk.summary(course)->unopened == 1);
}
