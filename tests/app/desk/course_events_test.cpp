// What the line under the time axis tells of a course, and what is said of it where the line is not seen.
#include "app/desk/model/course_events.h"
#include "app/desk/model/course_rows.h"
#include "core/bytes/text.h"
#include "core/crypto/crypto.h"

#include <catch2/catch_test_macros.hpp>

using namespace ebbline;
using namespace ebbline::deskapp;

namespace {

clock::Moment at(int day, int hour)
{
    using namespace std::chrono;
    return {sys_days{year{2027} / 3 / 1} + days(day) + hours(hour - 1), minutes(60), "Europe/Berlin"};
}

journal::CourseState treated()
{
    journal::CourseState course;
    course.treatment.emplace();
    course.treatment->treatment.at = at(0, 11);
    return course;
}

void answer(journal::CourseState& course, const char* key, int day, int hour, records::ReminderAnswer given)
{
    records::ReminderAnswered answered;
    answered.key = key;
    answered.answer = given;
    answered.at = at(day, hour);
    course.reminders.emplace(key, answered);
}

QStringList onDay(const QList<charts::Event>& events, int day)
{
    QStringList labels;
    for (const auto& event : events)
        if (static_cast<int>(event.day) == day)
            labels << event.label;
    labels.sort();
    return labels;
}

}  // namespace

TEST_CASE("reminders that were done are counted by day; the dressings have a word of their own", "[desk][events]")
{
    auto course = treated();
    answer(course, "dressings-off/0", 0, 20, records::ReminderAnswer::done);
    answer(course, "sleep/0", 0, 22, records::ReminderAnswer::done);
    answer(course, "spare/1", 1, 9, records::ReminderAnswer::done);
    answer(course, "clean/1", 1, 12, records::ReminderAnswer::done);
    answer(course, "sleep/1", 1, 22, records::ReminderAnswer::notDone);

    const auto events = eventsOf(course);
    CHECK(onDay(events, 0) == QStringList{"1 reminder(s) done", "dressings off"});
    CHECK(onDay(events, 1) == QStringList{"2 reminder(s) done"});
}

TEST_CASE("everything that people do about findings is on the line, each word once a day", "[desk][events]")
{
    auto course = treated();
    using records::Act;
    int day = 1;
    for (const auto act : {Act::seen, Act::taken, Act::called, Act::visitBroughtForward, Act::closed, Act::reopened}) {
        records::FindingActed acted;
        acted.act = act;
        acted.at = at(day, 10);
        course.acts.push_back(acted);
        acted.at = at(day, 15);
        course.acts.push_back(acted);
        ++day;
    }

    const auto events = eventsOf(course);
    CHECK(onDay(events, 1) == QStringList{"seen"});
    CHECK(onDay(events, 2) == QStringList{"taken on"});
    CHECK(onDay(events, 3) == QStringList{"called"});
    CHECK(onDay(events, 4) == QStringList{"visit forward"});
    CHECK(onDay(events, 5) == QStringList{"closed"});
    CHECK(onDay(events, 6) == QStringList{"reopened"});
}

TEST_CASE("a call that reached nobody is not told as a call", "[desk][events]")
{
    auto course = treated();
    records::FindingActed acted;
    acted.act = records::Act::called;
    acted.outcome = records::Outcome::notReached;
    acted.at = at(2, 10);
    course.acts.push_back(acted);

    CHECK(onDay(eventsOf(course), 2) == QStringList{"not reached"});
}

TEST_CASE("warnings stand out, and an entry without scores is told as well", "[desk][events]")
{
    auto course = treated();
    records::WarningShown warning;
    warning.urgency = recovery::Urgency::emergency;
    warning.at = at(2, 3);
    course.warnings.push_back(warning);
    warning.confirmed = true;  // that she read it is no second warning
    warning.at = at(2, 4);
    course.warnings.push_back(warning);
    recovery::Entry entry;
    entry.at = at(2, 3);
    course.entries[entry.id].versions.push_back({entry, {}, entry.at});

    const auto events = eventsOf(course);
    REQUIRE(onDay(events, 2) == QStringList{"entry without scores", "warned"});
    for (const auto& event : events)
        CHECK(event.urgent == (event.label == QLatin1String("warned")));
}

TEST_CASE("the line is told day by day, in order of time", "[desk][events]")
{
    auto course = treated();
    answer(course, "dressings-off/0", 0, 20, records::ReminderAnswer::done);
    records::FindingActed called;
    called.act = records::Act::called;
    called.at = at(3, 9);
    course.acts.push_back(called);

    CHECK(eventsSentence(eventsOf(course)) == QLatin1String("Day 0: dressings off. Day 3: called."));
    CHECK(eventsSentence(eventsOf({})).isEmpty());
}

TEST_CASE("a fever that a phone under a decimal comma wrote down as shown is known as shown", "[desk][events]")
{
    triage::Finding fever;
    fever.urgency = recovery::Urgency::nextWorkingDay;
    fever.subject = "w/fever/none/00";
    fever.what = warnings::Finding{"fever", fever.urgency, recovery::Side::none, {"temperature 38.2 C"}};
    const auto keyOver = [&](const std::string& said) {
        return fever.subject + "/" + std::string(recovery::word(fever.urgency)) + "/"
               + bytes::toHex(bytes::View(crypto::hash256(bytes::viewOf(said))).first(8));
    };
    fever.key = keyOver("temperature 38.2 C\n");
    auto course = treated();
    records::WarningShown shown;
    shown.urgency = fever.urgency;
    shown.rule = keyOver("temperature 38,3 C\n");
    course.warnings = {shown};
    CHECK_FALSE(isShownByPhone(fever, course));
    course.warnings.front().rule = keyOver("temperature 38,2 C\n");
    CHECK(isShownByPhone(fever, course));
}
