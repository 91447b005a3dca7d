#include "core/rehearsal/invented_scores.h"

#include <algorithm>
#include <cmath>

namespace ebbline::rehearsal {

namespace {

using std::chrono::days;
using std::chrono::minutes;

constexpr double baselineRecorded = 0.8;   // of treatments
constexpr double givesUp = 0.05;           // of patients, from day 5 on
constexpr int lastSilentDay = 20;          // the eve of the visit
constexpr double travels = 0.02;           // of patients: another zone from some day on
constexpr double extraEntry = 0.05;        // of written days: one more around noon

enum class Habit { evening, morning, both, anyTime, none };

Habit habitOf(Chance& chance, Rhythm rhythm)
{
    if (rhythm == Rhythm::daily)
        return Habit::evening;
    if (rhythm == Rhythm::twice || rhythm == Rhythm::plan)
        return Habit::both;
    const double draw = chance.uniform();
    return draw < 0.55 ? Habit::evening : draw < 0.65 ? Habit::morning : draw < 0.90 ? Habit::both : Habit::anyTime;
}

/// On a day of the default care plan.
Habit plannedOn(int day)
{
    if (day <= 3)
        return Habit::both;
    return day <= 14 || (day % 2 == 0 && day <= 20) ? Habit::evening : Habit::none;
}

/// People write nearly every day at first and less and less later (Semple et al. 2015: 96 % of the
/// first 14 days, 66 % and 38 % of days 15 to 30).
double missingOn(int day, double rate)
{
    return std::min(0.9, rate * (day < 14 ? 0.3 : 2.0));
}

/// Local minutes of day of the entries that she would make on a day.
std::vector<double> plannedMinutes(Chance& chance, Habit habit)
{
    std::vector<double> planned;
    if (habit == Habit::morning || habit == Habit::both)
        planned.push_back(std::clamp(chance.normal(8.5 * 60, 50), 330.0, 690.0));
    if (chance.happens(extraEntry) && habit != Habit::none)
        planned.push_back(chance.between(11.6 * 60, 15 * 60));
    if (habit == Habit::evening || habit == Habit::both)
        planned.push_back(std::clamp(chance.normal(20.5 * 60, 60), 1020.0, 1430.0));
    if (habit == Habit::anyTime)
        planned.push_back(chance.between(15.2 * 60, 23 * 60));
    return planned;
}

}  // namespace

Diary diaryOf(Chance& chance, Kind kind, Rhythm rhythm, int number)
{
    constexpr std::array offsets{0, 60, 120, 120, 330, -300};
    const int offset = offsets[static_cast<std::size_t>(chance.whole(0, 5))];
    const double treatedMinute = std::floor(chance.between(9.5 * 60, 16.5 * 60));

    Diary diary;
    const auto firstDay = std::chrono::sys_days(std::chrono::year(2025) / 1 / 6) + days(number % 300);
    diary.treated.offset = minutes(offset);
    diary.treated.at = firstDay + minutes(static_cast<int>(treatedMinute) - offset);
    diary.hasBaseline = chance.happens(baselineRecorded);

    const Habit habit = habitOf(chance, rhythm);
    const double rate = chance.beta(2, 10);
    int lastDay = inventedDays - 1;
    if (kind == Kind::silent)
        lastDay = chance.whole(0, lastSilentDay);
    else if (chance.happens(givesUp))
        lastDay = chance.whole(5, inventedDays - 1);
    const int awayFrom = chance.happens(travels) ? chance.whole(5, 15) : inventedDays;
    const int awayOffset = offset + 60 * chance.whole(-6, 6);

    for (int day = 0; day <= lastDay; ++day) {
        const Habit today = rhythm == Rhythm::plan ? plannedOn(day) : habit;
        const bool missed = chance.happens(day == 0 ? 0.05 : missingOn(day, rate));
        for (const double minute : plannedMinutes(chance, today)) {
            const bool skipped = today == Habit::both && chance.happens(missingOn(day, rate));
            const int zone = day >= awayFrom ? awayOffset : offset;
            const double since = 1440.0 * day + minute - treatedMinute - (zone - offset);
            // Nobody writes before she is home.
            if (missed || skipped || since < 120 || (!diary.hours.empty() && since / 60 <= diary.hours.back()))
                continue;
            clock::Moment at = diary.treated;
            at.at += minutes(static_cast<long>(since));
            at.offset = minutes(zone);
            diary.hours.push_back(since / 60);
            diary.moments.push_back(at);
        }
    }
    return diary;
}

}  // namespace ebbline::rehearsal
