// The follow-up that was agreed goes to the phone, with everything that hangs on its day.

#include "core/aftercare/visit.h"
#include "tests/core/desk/clinic_world.h"

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

TEST_CASE("the phone gets the day that was agreed, and its reminder and its bells are of that day", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const aftercare::Visit later{world.now().day() + std::chrono::days(25), {}};
    REQUIRE(world.desk.openCourse(course, triggers::defaultProtocol(), aftercare::momentOf(later, world.zone)));
    world.syncDesk();
    world.syncPhone(phone);

    CHECK(aftercare::visitOf(phone.today().followUp) == later);
    const auto coming = phone.upcoming(1000);
    const auto visit = std::find_if(coming.begin(), coming.end(), [](const auto& reminder) {
        return reminder.kind == aftercare::InstructionKind::followUp;
    });
    REQUIRE(visit != coming.end());
    CHECK(world.zone.moment(visit->due).day() == later.day);
    const auto bells = phone.upcomingMoments();
    CHECK(world.zone.moment(*std::max_element(bells.begin(), bells.end())).day() == later.day);
    const auto calendar = phone.calendar("Diary", "en");
    REQUIRE(calendar);
    CHECK(calendar->find("20270326T") != std::string::npos);
}

TEST_CASE("silence is told of up to the day that was agreed, and no longer", "[desk][follow-up]")
{
    const auto silentOn = [](int visitDay, int day) {
        test::ClinicWorld world;
        const auto course = world.treat();
        patient::Diary& phone = world.join(course);
        REQUIRE(world.desk.openCourse(course, triggers::defaultProtocol(), world.inDays(visitDay)));
        world.clock.advance(24h * (day - 4));
        REQUIRE(phone.record(world.entryOf(phone, 1, 1)));
        world.syncPhone(phone);
        world.syncDesk();
        world.clock.advance(24h * 4);
        const auto queue = world.desk.queue();
        return std::any_of(queue.begin(), queue.end(), [](const auto& row) {
            return std::any_of(row.findings.begin(), row.findings.end(), [](const auto& finding) {
                const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
                return trigger && trigger->trigger == triggers::Trigger::silence && finding.day > 10;
            });
        });
    };
    CHECK(silentOn(30, 26));        // the protocol's day 21 is past
    CHECK_FALSE(silentOn(14, 16));  // written on day 12, seen on day 14
    CHECK(silentOn(21, 18));
}

TEST_CASE("a course cannot be opened with a follow-up before, or long after, its treatment", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    world.join(course);
    for (const int day : {-2, 0, 61}) {
        const Done refused = world.desk.openCourse(course, triggers::defaultProtocol(), world.inDays(day));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().reason == Reason::outOfRange);
        desk::Inviting inviting(world.desk, world.clock, course, triggers::defaultProtocol(), world.inDays(day));
        inviting.start(world.courier, [] {});
        CHECK(inviting.step() == desk::Inviting::Step::failed);
    }
}
