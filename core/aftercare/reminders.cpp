#include "core/aftercare/care_plan.h"

#include <algorithm>

namespace ebbline::aftercare {

namespace {

constexpr std::chrono::hours afterTreatment{1};
constexpr std::chrono::minutes beforeQuiet{1};
constexpr int nightOver = 4 * 60;  ///< local minute of day; our choice, no source

/// What is of an evening or of the night after it: dressings come off then and would stay on overnight, entry points
/// are washed before bed, and how to lie is for that night. Told the next morning, it is told too late.
bool isOfTheEvening(InstructionKind kind)
{
    using enum InstructionKind;
    return kind == dressingsOff || kind == cleanEntryPoints || kind == sleepOnBack;
}

/// The day to whose evening, with its night, a moment belongs.
clock::LocalDay eveningOf(const clock::Moment& moment)
{
    return moment.day() - std::chrono::days(moment.minuteOfDay() < nightOver ? 1 : 0);
}

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

/// The last moment before the quiet hours that a moment lies inside.
clock::Instant lastBeforeQuiet(const QuietHours& quiet, const clock::Moment& inside, const Zone& zone)
{
    const bool yesterday = inside.minuteOfDay() < quiet.fromMinute;
    return zone.instantOf(inside.day() - std::chrono::days(yesterday ? 1 : 0),
                          std::chrono::minutes(quiet.fromMinute)) - beforeQuiet;
}

/// Where a reminder rings that was planned inside quiet hours.
clock::Instant outOfQuiet(InstructionKind kind, const clock::Moment& planned, const clock::Moment& treated,
                          const QuietHours& quiet, const Zone& zone)
{
    const clock::Instant after = endOfQuiet(quiet, planned, zone);
    const clock::LocalDay evening = eveningOf(planned);
    if (!isOfTheEvening(kind) || zone.moment(after).day() == evening)
        return after;
    const clock::Instant before = std::max(lastBeforeQuiet(quiet, planned, zone), treated.at + afterTreatment);
    // Where that evening has no other room, one bell within the quiet hours is the smaller harm.
    return eveningOf(zone.moment(before)) == evening ? std::min(before, planned.at) : planned.at;
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
                                  instruction.id, instruction.kind, day, {}, {}, false};
                reminder.planned = zone.instantOf(treated.day() + std::chrono::days(day), std::chrono::minutes(minute));
                if (day == 0 && reminder.planned < treated.at + afterTreatment) {
                    // A diary entry of that morning is past; what must be done that day is not.
                    if (instruction.kind == InstructionKind::diaryEntry && reminder.planned < treated.at)
                        continue;
                    reminder.planned = treated.at + afterTreatment;
                }
                const clock::Moment local = zone.moment(reminder.planned);
                const bool waits = !instruction.ignoresQuietHours && isQuiet(quiet, local.minuteOfDay());
                reminder.due = waits ? outOfQuiet(instruction.kind, local, treated, quiet, zone) : reminder.planned;
                reminder.movedByQuietHours = reminder.due != reminder.planned;
                reminders.push_back(std::move(reminder));
            }
        }
    }
    std::stable_sort(reminders.begin(), reminders.end(),
                     [](const Reminder& a, const Reminder& b) { return a.due < b.due; });
    return reminders;
}

}  // namespace ebbline::aftercare
