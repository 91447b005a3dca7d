// The follow-up that was agreed goes to the phone, with everything that hangs on its day.

#include "core/aftercare/visit.h"
#include "tests/core/desk/clinic_world.h"

#include <catch2/generators/catch_generators.hpp>

#include <algorithm>

using namespace ebbline;
using namespace std::chrono_literals;

namespace {

/// Of every event of a calendar file; -1 if they differ or say nothing.
int sequenceOf(const std::string& calendar)
{
    int found = -1;
    for (auto at = calendar.find("\r\nSEQUENCE:"); at != std::string::npos; at = calendar.find("\r\nSEQUENCE:", at + 1)) {
        const int said = std::stoi(calendar.substr(at + 11));
        if (found != -1 && said != found)
            return -1;
        found = said;
    }
    return found;
}

}  // namespace

TEST_CASE("the phone gets the day that was agreed, and its reminder and its bells are of that day", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto before = phone.calendar("Diary", "en");
    REQUIRE(before.has_value());
    REQUIRE(sequenceOf(*before) >= 0);
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
    const auto bells = phone.bellMoments();
    CHECK(world.zone.moment(*std::max_element(bells.begin(), bells.end())).day() == later.day);
    const auto calendar = phone.calendar("Diary", "en");
    REQUIRE(calendar);
    CHECK(calendar->find("20270326T") != std::string::npos);
    CHECK(sequenceOf(*calendar) == sequenceOf(*before) + 1);
}

namespace {

/// Findings of silence that stand open in the desk's queue.
std::vector<triage::Finding> openSilences(desk::Desk& desk)
{
    std::vector<triage::Finding> silences;
    for (const triage::Row& row : desk.queue())
        for (const triage::Finding& finding : row.findings) {
            const auto* trigger = std::get_if<triggers::Finding>(&finding.what);
            if (trigger && trigger->trigger == triggers::Trigger::silence)
                silences.push_back(finding);
        }
    return silences;
}

/// A course with a visit on a day, whose patient wrote on one day and then no more; the clock stands there.
struct Quiet {
    test::ClinicWorld world;
    recovery::CourseId course = world.treat();
    patient::Diary& phone = world.join(course);

    Quiet(int visitDay, int lastDay)
    {
        const clock::Moment visit = world.inDays(visitDay);
        REQUIRE(world.desk.openCourse(course, triggers::defaultProtocol(), visit));
        for (int day = 0; day <= lastDay; day += 2) {
            REQUIRE(phone.record(world.entryOf(phone, 1, 1)));
            world.syncPhone(phone);
            world.clock.advance(24h * std::min(2, lastDay - day));
        }
        recordAndSync();
    }
    void recordAndSync()
    {
        REQUIRE(phone.record(world.entryOf(phone, 1, 1)));
        world.syncPhone(phone);
        world.syncDesk();
    }
    void wait(int days) { world.clock.advance(24h * days); }
};

const records::FollowUpRecorded goodEnd{{}, records::GlobalChange::muchBetter, 4, {}, true, "", "in a year", "", {}};

}  // namespace

TEST_CASE("silence is told of up to the day that was agreed", "[desk][follow-up]")
{
    Quiet late(30, 22);  // the protocol's day 21 is past
    late.wait(4);
    CHECK(openSilences(late.world.desk).size() == 1);

    Quiet early(14, 12);
    early.wait(2);
    CHECK(openSilences(early.world.desk).empty());
}

TEST_CASE("who falls silent near the visit and misses it stands on the silent list until somebody acts", "[desk][follow-up][safety]")
{
    Quiet patient(21, 19);
    patient.wait(2);
    CHECK(patient.world.desk.queue().empty());
    patient.wait(2);

    const auto queue = patient.world.desk.queue();
    REQUIRE(queue.size() == 1);
    CHECK(queue.front().silent);
    REQUIRE(queue.front().findings.size() == 1);
    CHECK(queue.front().findings.front().day == 22);
    const std::string key = queue.front().findings.front().key;
    REQUIRE(patient.world.desk.act(patient.course, key, records::Act::closed, records::Outcome::reassured, ""));
    CHECK(patient.world.desk.queue().empty());
    REQUIRE(patient.world.desk.act(patient.course, key, records::Act::reopened, records::Outcome::none, ""));
    CHECK(patient.world.desk.queue().size() == 1);
}

TEST_CASE("a missed visit goes when the follow-up is recorded, and none is missed that was recorded in time", "[desk][follow-up]")
{
    records::FollowUpRecorded followUp = goodEnd;
    Quiet late(21, 19);
    late.wait(8);
    REQUIRE(openSilences(late.world.desk).size() == 1);
    followUp.course = late.course;
    REQUIRE(late.world.desk.recordFollowUp(followUp));
    CHECK(late.world.desk.queue().empty());

    Quiet seen(21, 19);
    seen.wait(2);
    followUp.course = seen.course;
    REQUIRE(seen.world.desk.recordFollowUp(followUp));
    seen.wait(30);
    CHECK(seen.world.desk.queue().empty());
    CHECK(seen.world.desk.course(seen.course)->findings.empty());
}

TEST_CASE("a visit missed long ago is told apart; who fell silent before it, or was touched since, is not", "[desk][follow-up]")
{
    Quiet patient(21, 19);
    const auto isPast = [](Quiet& who) { return triage::isVisitOfLongAgo(who.world.desk.queue().front(), who.world.inDays(0)); };
    patient.wait(4);
    REQUIRE(patient.world.desk.queue().size() == 1);
    CHECK_FALSE(isPast(patient));
    patient.wait(26);
    CHECK_FALSE(isPast(patient));  // raised on day 22, 27 days ago
    patient.wait(2);
    CHECK(isPast(patient));
    const std::string key = patient.world.desk.queue().front().findings.front().key;
    REQUIRE(patient.world.desk.act(patient.course, key, records::Act::taken, records::Outcome::none, ""));
    CHECK_FALSE(isPast(patient));

    // She wrote again after the visit that she missed: she is no line of long ago.
    Quiet again(21, 19);
    again.wait(32);
    REQUIRE(isPast(again));
    again.recordAndSync();
    REQUIRE(again.world.desk.queue().size() == 1);
    CHECK(again.world.desk.queue().front().heardSince);
    CHECK_FALSE(isPast(again));

    Quiet before(21, 5);
    before.wait(60);
    REQUIRE(before.world.desk.queue().size() == 1);
    CHECK(before.world.desk.queue().front().silent);
    CHECK_FALSE(isPast(before));
}

TEST_CASE("a visit that was moved is missed on its new day", "[desk][follow-up]")
{
    Quiet sooner(14, 12);
    sooner.wait(4);
    REQUIRE(openSilences(sooner.world.desk).size() == 1);
    CHECK(openSilences(sooner.world.desk).front().day == 15);

    // Agreed anew: what was missed is awaited again.
    Quiet moved(21, 19);
    moved.wait(4);
    REQUIRE(openSilences(moved.world.desk).size() == 1);
    const clock::Moment visit = moved.world.inDays(2);  // day 25
    REQUIRE(moved.world.desk.openCourse(moved.course, triggers::defaultProtocol(), visit));
    const auto before = openSilences(moved.world.desk);
    REQUIRE(before.size() == 1);  // three days without a word, well before the new day
    CHECK_FALSE(std::get<triggers::Finding>(before.front().what).numbers.contains("visit"));
    moved.wait(3);
    REQUIRE(openSilences(moved.world.desk).size() == 2);
    CHECK(openSilences(moved.world.desk).front().day == 26);
}

TEST_CASE("a visit that is brought forward reaches the phone with its reminder, its bells and the rule of silence; taken back, the day before holds again", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    world.tellOfFluid(phone);
    const auto agreed = phone.today().followUp;
    const auto openedAt = world.desk.course(course)->state->openedAt;
    const std::vector<std::string> keys{world.desk.queue().front().findings.front().key};
    const aftercare::Visit sooner{world.now().day() + std::chrono::days(2), 16 * 60 + 30};
    const auto visitOnPhone = [&] {
        world.syncDesk();
        world.syncPhone(phone);
        const auto bells = phone.bellMoments();
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

    // What people note stays at the clinic, and nothing of it stands in the way of what comes after.
    CHECK(phone.vault().state().courses.at(course).acts.empty());
    REQUIRE(world.desk.writeMessage(course, "See you on the day that we agreed."));
    visitOnPhone();
    CHECK(phone.messages().size() == 1);
    CHECK(sync::outlookOf(phone.vault(), phone.link()->mailbox)->state == sync::Outlook::State::delivered);
}

TEST_CASE("a visit that moves after its reminder was answered is reminded of again", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto due = [&]() -> std::optional<std::string> {
        for (const patient::ReminderView& view : phone.today().dueNow)
            if (view.reminder.kind == aftercare::InstructionKind::followUp)
                return view.reminder.key;
        return std::nullopt;
    };
    const auto waitUntilDue = [&] {
        for (int hour = 0; hour < 60 * 24 && !due(); ++hour)
            world.clock.advance(1h);
        return due();
    };
    const auto key = waitUntilDue();
    REQUIRE(key);
    const auto answer = GENERATE(records::ReminderAnswer::done, records::ReminderAnswer::later);
    REQUIRE(phone.answerReminder(*key, answer, answer == records::ReminderAnswer::later ? std::optional(world.now().at + 240h) : std::nullopt));
    REQUIRE_FALSE(due());
    world.syncPhone(phone);
    world.syncDesk();
    world.clock.advance(1h);
    const aftercare::Visit next{world.now().day() + std::chrono::days(4), 9 * 60};
    REQUIRE(world.desk.moveVisit(course, aftercare::momentOf(next, world.zone), {}));
    world.syncDesk();
    world.syncPhone(phone);

    REQUIRE(waitUntilDue() == key);
    CHECK(world.now().day() <= next.day);
    REQUIRE(phone.answerReminder(*key, records::ReminderAnswer::done, std::nullopt));
    CHECK_FALSE(due());
}

TEST_CASE("a phone says that a visit moved only if it is on another day or hour than was agreed at first", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto agreed = phone.today().followUp;
    const auto day = aftercare::visitOf(agreed).day;
    const auto movesTo = [&](const aftercare::Visit& visit) {
        world.clock.advance(1h);
        REQUIRE(world.desk.moveVisit(course, aftercare::momentOf(visit, world.zone), {}));
        world.syncDesk();
        world.syncPhone(phone);
        return phone.today().formerVisit;
    };
    CHECK_FALSE(phone.today().formerVisit);
    CHECK(movesTo({day - std::chrono::days(1), {}}) == agreed);
    // An hour is added to the day: it is still the move from the first.
    CHECK(movesTo({day - std::chrono::days(1), 15 * 60}) == agreed);
    CHECK(movesTo({day - std::chrono::days(1), 16 * 60}) == aftercare::momentOf({day - std::chrono::days(1), 15 * 60}, world.zone));
    // Back to what was agreed.
    CHECK_FALSE(movesTo(aftercare::visitOf(agreed)));
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

TEST_CASE("a phone says that the visit was moved until the day of the visit is over", "[desk][follow-up]")
{
    test::ClinicWorld world;
    const auto course = world.treat();
    patient::Diary& phone = world.join(course);
    const auto agreed = phone.today().followUp;
    CHECK_FALSE(phone.today().formerVisit);
    REQUIRE(world.desk.moveVisit(course, world.inDays(5), {}));
    world.syncDesk();
    world.syncPhone(phone);
    CHECK(phone.today().formerVisit == agreed);

    const auto midnight = world.zone.instantOf(world.inDays(6).day(), std::chrono::minutes(0));
    world.clock.advance(midnight - world.clock.now() - 1min);
    CHECK(phone.today().formerVisit == agreed);
    world.clock.advance(1min);
    CHECK_FALSE(phone.today().formerVisit);
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
