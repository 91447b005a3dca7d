#include "core/aftercare/care_plan.h"

#include <algorithm>

namespace ebbline::aftercare {

namespace {

constexpr std::chrono::hours afterTreatment{1};

bool isQuiet(const QuietHours& quiet, int minute)
{
    if (!quiet.enabled || quiet.fromMinute == quiet.toMinute)
        return false;
    if (quiet.fromMinute < quiet.toMinute)
        return minute >= quiet.fromMinute && minute < quiet.toMinute;
    return minute >= quiet.fromMinute || minute < quiet.toMinute;
}

/// The next end of the quiet hours after a moment inside them.
clock::Instant endOfQuiet(const QuietHours& quiet, const clock::Moment& inside, const Zone& zone)
{
    const bool tomorrow = inside.minuteOfDay() >= quiet.toMinute;
    return zone.instantOf(inside.day() + std::chrono::days(tomorrow ? 1 : 0),
                          std::chrono::minutes(quiet.toMinute));
}

}  // namespace

std::vector<Reminder> remindersOf(const CarePlan& plan, const clock::Moment& treated, const Zone& zone,
                                  const QuietHours& quiet)
{
    std::vector<Reminder> reminders;
    for (const Instruction& instruction : plan.instructions) {
        for (int day = instruction.firstDay; day <= instruction.lastDay; day += instruction.everyDays) {
            for (const int minute : instruction.minutesOfDay) {
                Reminder reminder{instruction.id + "/" + std::to_string(day) + "/" + std::to_string(minute),
                                  instruction.id, instruction.kind, day, {}, false};
                reminder.due = zone.instantOf(treated.day() + std::chrono::days(day), std::chrono::minutes(minute));
                if (day == 0 && reminder.due < treated.at + afterTreatment) {
                    // A diary entry of that morning is past; what must be done that day is not.
                    if (instruction.kind == InstructionKind::diaryEntry && reminder.due < treated.at)
                        continue;
                    reminder.due = treated.at + afterTreatment;
                }
                const clock::Moment local = zone.moment(reminder.due);
                const bool waits = !instruction.ignoresQuietHours && isQuiet(quiet, local.minuteOfDay());
                const clock::Instant later = waits ? endOfQuiet(quiet, local, zone) : reminder.due;
                // Its words say "this evening": the next morning is not that, and dressings would stay on overnight.
                const bool thisEvening = instruction.kind == InstructionKind::dressingsOff && zone.moment(later).day() > treated.day() + std::chrono::days(day);
                if (waits && !thisEvening) {
                    reminder.due = later;
                    reminder.movedByQuietHours = true;
                }
                reminders.push_back(std::move(reminder));
            }
        }
    }
    std::stable_sort(reminders.begin(), reminders.end(),
                     [](const Reminder& a, const Reminder& b) { return a.due < b.due; });
    return reminders;
}

}  // namespace ebbline::aftercare
