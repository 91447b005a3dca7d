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

TEST_CASE("a visit that is brought forward reaches the phone with its reminder, its bells and the rule of silence; taken back, the day before holds again", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.clock.advance(30h);
    auto entry = world.entryOf(phone, 3, 3);
    entry.present = {recovery::Sign::thickFluid};
    REQUIRE(phone.record(entry));
    world.syncPhone(phone);
    world.syncDesk();
    const auto agreed = phone.today().followUp;
    const auto openedAt = world.desk.course(course)->state->openedAt;
    const std::vector<std::string> keys{world.desk.queue().front().findings.front().key};
    const aftercare::Visit sooner{world.now().day() + std::chrono::days(2), 16 * 60 + 30};
    const auto visitOnPhone = [&] {
        world.syncDesk();
        world.syncPhone(phone);
        const auto bells = phone.upcomingMoments();
        return std::pair(aftercare::visitOf(phone.today().followUp), world.zone.moment(*std::max_element(bells.begin(), bells.end())).day());
    };

    const auto done = world.desk.moveVisit(course, aftercare::momentOf(sooner, world.zone), keys, "Comes on Thursday.");
    REQUIRE(done);
    CHECK(visitOnPhone().first == sooner);
    CHECK(visitOnPhone().second < agreed.day());
    CHECK(phone.today().formerVisit == agreed);
    const auto view = world.desk.course(course);
    CHECK(view->state->acts.back().act == records::Act::visitBroughtForward);
    CHECK(view->state->acts.back().note == "Comes on Thursday.");
    CHECK(view->state->openedAt == openedAt);
    // What was found and noted stays within the clinic.
    for (const auto& operation : phone.vault().operations())
        CHECK(operation.kind != static_cast<std::uint16_t>(records::Kind::findingActed));
    REQUIRE(view->state->visits.size() == 2);

    REQUIRE(world.desk.takeBack(course, *done));
    CHECK(visitOnPhone().first == aftercare::visitOf(agreed));
    CHECK(visitOnPhone().second == agreed.day());
    CHECK_FALSE(world.desk.queue().front().touched);
    CHECK(world.desk.course(course)->state->visits.size() == 3);
    CHECK(world.desk.takeBack(course, *done).error().reason == Reason::alreadyExists);
}

TEST_CASE("a visit is moved within its bounds, and an act that is taken back late does not undo what was agreed since", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto unlinked = world.treat("Lea Fontaine");
    CHECK(world.desk.moveVisit(unlinked, world.inDays(5), {}).error().reason == Reason::invalidState);
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto agreed = phone.today().followUp;
    CHECK(world.desk.moveVisit(course, world.inDays(61), {}).error().reason == Reason::outOfRange);
    CHECK(world.desk.moveVisit(course, agreed, {}).error().reason == Reason::alreadyExists);
    CHECK(world.desk.moveVisit(course, world.inDays(5), {"w/none"}).error().reason == Reason::notFound);
    CHECK(world.desk.course(course)->state->visits.size() == 1);

    const auto first = world.desk.moveVisit(course, world.inDays(12), {});
    REQUIRE(first);
    REQUIRE(first->size() == 1);
    world.clock.advance(1h);
    const auto second = world.desk.moveVisit(course, world.inDays(5), {});
    REQUIRE(second);
    CHECK_FALSE(world.desk.takeBack(course, *first));
    CHECK(world.desk.course(course)->state->opened->followUp.day() == world.inDays(5).day());
    REQUIRE(world.desk.takeBack(course, *second));
    CHECK(world.desk.course(course)->state->opened->followUp.day() == world.inDays(12).day());
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
