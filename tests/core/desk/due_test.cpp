// What is due on the phone: answered by what was written, in the list until then, and booked as the list has it.

#include "core/aftercare/booking.h"
#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

/// A phone whose treatment was on 1 March 2027 at nine.
struct Treated {
    test::ClinicWorld world;
    patient::Diary& phone = world.join(world.treat());

    void goTo(const char* when) { world.clock.set(test::momentAt(when).at); }
    void write() { REQUIRE(phone.record(world.entryOf(phone, 3, 3))); }
    bool isDue(const std::string& key) const
    {
        return std::ranges::any_of(phone.today().dueNow, [&](const auto& view) { return view.reminder.key == key; });
    }
    bool isComing(const std::string& key) const
    {
        return std::ranges::any_of(phone.upcoming(1000), [&](const auto& reminder) { return reminder.key == key; });
    }
    bool isForABell(const char* when) const
    {
        const auto moments = phone.bellMoments();
        return std::ranges::find(moments, test::momentAt(when).at) != moments.end();
    }
};

}  // namespace

TEST_CASE("a reminder to write that quiet hours move past midnight is answered by what is written before or after them", "[patient][reminders]")
{
    Treated it;
    const std::string evening = "diary-first-days/1/1200";
    const char* morning = "2027-03-03T07:00:00+01:00";
    REQUIRE(it.phone.setQuietHours({20 * 60, 7 * 60, true}));

    SECTION("written that evening: it does not ring")
    {
        it.goTo(GENERATE("2027-03-02T16:00:00+01:00", "2027-03-02T19:30:00+01:00", "2027-03-02T23:50:00+01:00", "2027-03-03T06:30:00+01:00"));
        REQUIRE(it.isComing(evening));
        REQUIRE(it.isForABell(morning));
        it.write();
        CHECK_FALSE(it.isComing(evening));
        CHECK_FALSE(it.isForABell(morning));
        it.goTo("2027-03-03T07:10:00+01:00");
        CHECK_FALSE(it.isDue(evening));
    }
    SECTION("written once it rang: it is not asked for any more")
    {
        it.goTo("2027-03-03T07:10:00+01:00");
        REQUIRE(it.isDue(evening));
        it.write();
        CHECK_FALSE(it.isDue(evening));
        CHECK_FALSE(it.isForABell(morning));
    }
    SECTION("written long before: it rings all the same")
    {
        it.goTo("2027-03-02T15:50:00+01:00");
        it.write();
        CHECK(it.isComing(evening));
        CHECK(it.isForABell(morning));
    }
}

TEST_CASE("a reminder to write that no quiet hours move is answered on its own day only", "[patient][reminders]")
{
    Treated it;
    it.goTo("2027-03-03T07:10:00+01:00");
    REQUIRE(it.isDue("diary-first-days/1/1200"));
    it.write();
    CHECK(it.isDue("diary-first-days/1/1200"));
    CHECK_FALSE(it.isComing("diary-first-days/2/540"));
}

TEST_CASE("dressings stay in the list until somebody says what became of them, and do not ring again", "[patient][reminders][safety]")
{
    Treated it;
    const std::string dressings = "dressings-off/0/1140";
    it.goTo("2027-03-06T12:00:00+01:00");
    CHECK(it.isDue(dressings));
    CHECK_FALSE(it.isDue("entry-points/0/1260"));  // the rest leaves it after a day
    CHECK_FALSE(it.isComing(dressings));
    const auto bells = aftercare::bookingsOf(it.phone.bellMoments(), it.world.clock.now());
    CHECK(std::ranges::all_of(bells, [&](const auto& bell) { return bell.at > it.world.clock.now(); }));

    REQUIRE(it.phone.answerReminder(dressings, GENERATE(records::ReminderAnswer::done, records::ReminderAnswer::notDone)));
    CHECK_FALSE(it.isDue(dressings));
}

TEST_CASE("what is due now and open is for a bell that may ring late; what left the list is not", "[patient][reminders]")
{
    Treated it;
    const char* writing = "2027-03-02T20:00:00+01:00";
    it.goTo("2027-03-02T20:01:00+01:00");
    CHECK(it.isForABell(writing));
    it.goTo("2027-03-03T20:01:00+01:00");
    CHECK_FALSE(it.isForABell(writing));
}

TEST_CASE("quiet hours that cannot be read move no reminder", "[patient][reminders][errors]")
{
    Treated it;
    const auto before = it.phone.upcoming(1000);
    REQUIRE(it.phone.vault().keep("quiet-hours", bytes::Writer().u16(20 * 60).u16(2000).u8(1).bytes()));
    CHECK(it.phone.quietHours() == aftercare::QuietHours{});
    CHECK(it.phone.upcoming(1000) == before);
}
