// Bells ahead: never too many, never for what is done, and what does not ring still stands in the list.

#include "tests/core/aftercare/phone_systems.h"

#include "core/aftercare/care_plan.h"
#include "core/clock/iso8601.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <rapidcheck.h>

#include <functional>
#include <map>
#include <set>

using namespace ebbline;
using namespace ebbline::aftercare;
using namespace std::chrono_literals;

namespace {

const Zone berlin = *Zone::find("Europe/Berlin");
const clock::Moment treated = berlin.moment(clock::parseIso8601("2027-03-15T10:00:00+01:00")->at);

/// Three bells a day for each rule.
CarePlan crowdedPlan(int rules = 20)
{
    CarePlan plan;
    for (int i = 0; i < rules; ++i)
        plan.instructions.push_back({"rule-" + std::to_string(i), InstructionKind::custom, 0, 40,
                                     {9 * 60 + i, 12 * 60 + 2 * i, 18 * 60 + 3 * i}, 1, {}, false});
    return plan;
}

/// A diary as far as its reminders go.
struct Person {
    CarePlan plan;
    Zone zone = berlin;
    QuietHours quiet = {};
    std::set<std::string> answered = {};
    std::map<std::string, clock::Instant> later = {};

    std::vector<clock::Instant> dues() const
    {
        std::vector<clock::Instant> moments;
        for (const Reminder& reminder : remindersOf(plan, treated, zone, quiet))
            if (!answered.contains(reminder.key)) {
                const auto put = later.find(reminder.key);
                moments.push_back(put == later.end() ? reminder.due : put->second);
            }
        return moments;
    }
    std::vector<std::string> dueList(clock::Instant now) const
    {
        std::vector<std::string> keys;
        for (const Reminder& reminder : remindersOf(plan, treated, zone, quiet)) {
            const auto put = later.find(reminder.key);
            if (!answered.contains(reminder.key) && (put == later.end() ? reminder.due : put->second) <= now)
                keys.push_back(reminder.key);
        }
        return keys;
    }
};

}  // namespace

TEST_CASE("bells are soonest first, one a minute, at most 48, and the last asks to open the diary", "[booking]")
{
    const clock::Instant now = treated.at;
    CHECK(bookingsOf({now + 30s, now + 10s, now - 1h, now, now + 5min}, now)
          == std::vector<Booking>{{now + 10s, false}, {now + 5min, false}});
    std::vector<clock::Instant> many;
    for (int i = 1; i <= 49; ++i)
        many.push_back(now + i * 1h);
    const auto bookings = bookingsOf(many, now);
    REQUIRE(bookings.size() == mostBooked);
    CHECK(bookings.back() == Booking{now + 48h, true});
    many.pop_back();
    CHECK_FALSE(bookingsOf(many, now).back().asksToOpen);
    CHECK(bookingsOf(many, now, 0).empty());
}

TEST_CASE("the plan a clinic starts from fits into what is booked on the first day", "[booking]")
{
    const Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::cappedPhone, treated.at);
    const BellState state = bringUpToDate(phone, person.dues(), treated.at);
    CHECK(state.complete);
    CHECK_FALSE(state.problem);
    CHECK(state.booked <= mostBooked);
    CHECK(state.next == phone.pending()->front().at);
}

TEST_CASE("a crowded plan rings to its end if the diary is opened once a day", "[booking]")
{
    const auto& kind = GENERATE(std::cref(test::plainPhone), std::cref(test::cappedPhone), std::cref(test::sleepyPhone)).get();
    CAPTURE(kind.name);
    const Person person{.plan = crowdedPlan()};
    test::PhoneSystem phone(kind, treated.at);
    for (clock::Instant now = treated.at; now < treated.at + std::chrono::days(42); now += 20min) {
        phone.goTo(now);
        if ((now - treated.at) % std::chrono::days(1) < 20min)  // less than 48 bells a day
            (void)bringUpToDate(phone, person.dues(), now);
    }
    CHECK(phone.mostHeld() <= mostBooked);
    const auto all = bookingsOf(person.dues(), treated.at, 100'000);
    std::set<clock::Instant> rung;
    for (const auto& bell : phone.rung())
        rung.insert(bell.booking.at);
    std::size_t missed = 0;
    for (const Booking& booking : all)
        missed += rung.contains(booking.at) ? 0 : 1;
    CHECK(missed > 0);  // 60 bells a day do not fit into 48: the bell that asks to open says so
    CHECK(std::any_of(phone.rung().begin(), phone.rung().end(), [](const auto& bell) { return bell.booking.asksToOpen; }));
}

TEST_CASE("a reminder that was ticked, or put off, does not ring at its old time", "[booking]")
{
    Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::plainPhone, treated.at);
    (void)bringUpToDate(phone, person.dues(), treated.at);
    const clock::Instant evening = berlin.instantOf(treated.day(), 19h);
    const auto pending = *phone.pending();
    REQUIRE(std::any_of(pending.begin(), pending.end(), [&](const Booking& b) { return b.at == evening; }));

    person.answered.insert("dressings-off/0/1140");
    person.later["entry-points/0/1260"] = berlin.instantOf(treated.day(), 21h + 45min);
    (void)bringUpToDate(phone, person.dues(), treated.at + 1h);
    phone.goTo(berlin.instantOf(treated.day(), 23h));
    std::vector<std::string> times;
    for (const auto& bell : phone.rung())
        times.push_back(clock::toIso8601(berlin.moment(bell.at)).substr(11, 5));
    CHECK(times == std::vector<std::string>{"12:30", "20:00", "21:30", "21:45"});
}

TEST_CASE("denied leave books nothing, is a state of its own, and is made good when it is given", "[booking]")
{
    const Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::plainPhone, treated.at);
    phone.setLeave(Leave::denied);
    const BellState denied = bringUpToDate(phone, person.dues(), treated.at);
    CHECK(denied.leave == Leave::denied);
    CHECK(denied.booked == 0);
    CHECK_FALSE(denied.complete);
    CHECK(phone.pending()->empty());

    phone.goTo(treated.at + std::chrono::days(2));
    CHECK(phone.rung().empty());
    CHECK(person.dueList(treated.at + std::chrono::days(2)).size() > 5);  // the list knows all the same

    phone.setLeave(Leave::granted);
    const BellState granted = bringUpToDate(phone, person.dues(), treated.at + std::chrono::days(2));
    CHECK(granted.complete);
    CHECK(granted.next > treated.at + std::chrono::days(2));

    phone.goTo(treated.at + std::chrono::days(3));
    phone.setLeave(Leave::denied);  // taken away again: nothing may ring on the day it comes back unseen
    (void)bringUpToDate(phone, person.dues(), treated.at + std::chrono::days(3));
    CHECK(phone.pending()->empty());
}

TEST_CASE("a phone that keeps fewer than it says is found out, and the state says how far the bells go", "[booking]")
{
    const Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::lyingPhone, treated.at);
    const BellState state = bringUpToDate(phone, person.dues(), treated.at);
    CHECK(state.booked == 10);
    CHECK_FALSE(state.complete);
    REQUIRE(state.problem);
    CHECK(state.goodUntil == phone.pending()->back().at);
}

TEST_CASE("a phone with little room is given what fits, and its last bell asks to open the diary", "[booking]")
{
    const Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::tinyPhone, treated.at);
    const BellState state = bringUpToDate(phone, person.dues(), treated.at);
    CHECK(state.booked == 8);
    CHECK_FALSE(state.problem);
    CHECK_FALSE(state.complete);
    CHECK(phone.pending()->back().asksToOpen);
}

TEST_CASE("the bells follow the wall clock to another zone and over a change of the clocks", "[booking]")
{
    Person person{.plan = {{{"evening", InstructionKind::custom, 0, 20, {20 * 60}, 1, {}, false}}, 21}};
    test::PhoneSystem phone(test::plainPhone, treated.at);
    (void)bringUpToDate(phone, person.dues(), treated.at);
    person.zone = *Zone::find("America/New_York");
    const clock::Instant landed = treated.at + std::chrono::days(3);
    phone.goTo(landed);
    (void)bringUpToDate(phone, person.dues(), landed);
    phone.goTo(treated.at + std::chrono::days(20));
    REQUIRE(phone.rung().size() >= 19);
    for (const auto& bell : phone.rung()) {
        const Zone& where = bell.at <= landed ? berlin : person.zone;
        CHECK(where.moment(bell.at).minuteOfDay() == 20 * 60);
    }
}

TEST_CASE("after a reboot the forgotten bells are booked again, and what was missed is in the list", "[booking]")
{
    const Person person{.plan = defaultCarePlan()};
    test::PhoneSystem phone(test::forgetfulPhone, treated.at);
    (void)bringUpToDate(phone, person.dues(), treated.at);
    const std::size_t before = phone.pending()->size();
    phone.switchOff();
    const clock::Instant on = berlin.instantOf(treated.day(), 20h + 10min);
    phone.goTo(on);
    phone.switchOn();
    CHECK(phone.pending()->empty());
    const BellState state = bringUpToDate(phone, person.dues(), on);
    CHECK(state.complete);
    CHECK(phone.pending()->size() < before);
    const auto list = person.dueList(on);
    CHECK(std::find(list.begin(), list.end(), "dressings-off/0/1140") != list.end());
}

TEST_CASE("a phone that rings late does not ring for what has been answered", "[booking]")
{
    const clock::Instant due = treated.at + 1h;
    test::PhoneSystem phone(test::sleepyPhone, treated.at);
    (void)bringUpToDate(phone, {due}, treated.at);
    phone.goTo(due + 1min);

    SECTION("still open: it may ring")
    {
        (void)bringUpToDate(phone, {due}, due + 1min);
        phone.goTo(due + 10min);
        CHECK(phone.rung().size() == 1);
    }
    SECTION("answered in the list before it rang")
    {
        (void)bringUpToDate(phone, {}, due + 1min);
        phone.goTo(due + 10min);
        CHECK(phone.rung().empty());
    }
}

TEST_CASE("whatever happens on the way, what was promised rings and nothing else does", "[booking][property]")
{
    CHECK(rc::check("any course of events", [] {
        const test::SystemKind* kinds[] = {&test::plainPhone, &test::cappedPhone, &test::forgetfulPhone, &test::sleepyPhone, &test::tinyPhone};
        const auto& kind = *kinds[*rc::gen::inRange(0, 5)];
        const char* zones[] = {"Europe/Berlin", "America/New_York", "Asia/Kathmandu", "Australia/Lord_Howe"};
        Person person{.plan = *rc::gen::arbitrary<bool>() ? defaultCarePlan() : crowdedPlan(6)};
        test::PhoneSystem phone(kind, treated.at);
        clock::Instant now = treated.at;
        auto wanted = person.dues();
        auto promised = clock::Instant::min();  // all bells up to here are with the phone
        const auto open = [&] {
            wanted = person.dues();
            promised = phone.isOn() ? bringUpToDate(phone, wanted, now).goodUntil.value_or(clock::Instant::min()) : clock::Instant::min();
        };
        open();
        for (int step = *rc::gen::inRange(5, 60); step > 0; --step) {
            const std::size_t heardBefore = phone.rung().size();
            const clock::Instant before = now;
            now += std::chrono::minutes(*rc::gen::inRange(1, 2000));
            phone.goTo(now);
            std::set<std::chrono::sys_time<std::chrono::minutes>> rung;
            for (const auto& bell : phone.rung())
                rung.insert(std::chrono::floor<std::chrono::minutes>(bell.booking.at));
            for (const clock::Instant due : wanted)
                if (due > before && due <= promised && due + kind.lateBy <= now)
                    RC_ASSERT(rung.contains(std::chrono::floor<std::chrono::minutes>(due)));
            for (std::size_t i = heardBefore; i < phone.rung().size(); ++i) {
                // Even a bell that rings late is for something that is still open.
                const auto minute = std::chrono::floor<std::chrono::minutes>(phone.rung()[i].booking.at);
                RC_ASSERT(std::any_of(wanted.begin(), wanted.end(), [&](clock::Instant due) {
                    return std::chrono::floor<std::chrono::minutes>(due) == minute;
                }));
            }
            RC_ASSERT(phone.mostHeld() <= mostBooked);
            switch (*rc::gen::inRange(0, 6)) {
            case 0: person.zone = *Zone::find(zones[*rc::gen::inRange(0, 4)]); break;
            case 1:
                for (const std::string& key : person.dueList(now))
                    person.answered.insert(key);
                break;
            case 2:
                if (const auto list = person.dueList(now); !list.empty())
                    person.later[list.front()] = now + 30min;
                break;
            case 3: phone.switchOff(); break;
            case 4: phone.switchOn(); break;
            default: phone.setLeave(*rc::gen::arbitrary<bool>() ? Leave::granted : Leave::denied);
            }
            open();
        }
    }));
}

TEST_CASE("pending bells survive as text, and nothing else is taken for them", "[booking]")
{
    const std::vector<Booking> bookings{{treated.at, false}, {treated.at + 1h, true}};
    const auto read = readBookings(writeBookings(bookings));
    REQUIRE(read);
    CHECK(*read == bookings);
    CHECK(readBookings("")->empty());
    for (const char* wrong : {"x", "12 ", "12  13", "-5", "12+x", "12,13", "99999999999999999999999"}) {
        CAPTURE(wrong);
        CHECK_FALSE(readBookings(wrong));
    }
}
