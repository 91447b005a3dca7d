#include "core/aftercare/visit.h"

#include <algorithm>

namespace ebbline::aftercare {

namespace {

constexpr int minutesADay = 24 * 60;
constexpr std::chrono::hours beforeVisit{1};  ///< our choice, no source

/// How many days later than in the plan the visit is.
int shiftOf(const CarePlan& plan, const clock::Moment& treated, const Visit& visit)
{
    return check(visit, treated) ? static_cast<int>((visit.day - treated.day()).count()) - plan.followUpDay : 0;
}

}  // namespace

Visit visitOf(const clock::Moment& kept)
{
    const int minute = kept.minuteOfDay();
    return {kept.day(), minute == 0 ? std::nullopt : std::optional(minute)};
}

clock::Moment momentOf(const Visit& visit, const Zone& zone)
{
    if (visit.minute)
        return zone.moment(zone.instantOf(visit.day, std::chrono::minutes(*visit.minute)));
    // Midnight as noon's clock has it: where the clocks change at midnight, that day has none of its own.
    clock::Moment moment = zone.moment(zone.instantOf(visit.day, std::chrono::hours(12)));
    moment.at -= std::chrono::hours(12);
    return moment;
}

Done check(const Visit& visit, const clock::Moment& treated)
{
    const auto days = (visit.day - treated.day()).count();
    if (days < firstVisitDay || days > lastVisitDay)
        return fail(Reason::outOfRange, "follow-up: want day 1..60 after the treatment");
    if (visit.minute && (*visit.minute < 1 || *visit.minute >= minutesADay))
        return fail(Reason::outOfRange, "follow-up: want a minute 1..1439 of the day");
    return {};
}

CarePlan planFor(const CarePlan& plan, const clock::Moment& treated, const Visit& visit)
{
    const int shift = shiftOf(plan, treated, visit);
    CarePlan own = plan;
    own.followUpDay += shift;
    for (Instruction& instruction : own.instructions) {
        if (instruction.kind == InstructionKind::followUp) {
            instruction.firstDay = std::clamp(instruction.firstDay + shift, 0, lastVisitDay);
            instruction.lastDay = std::clamp(instruction.lastDay + shift, instruction.firstDay, lastVisitDay);
        } else if (instruction.kind == InstructionKind::diaryEntry && shift > 0
                   && instruction.lastDay + instruction.everyDays >= plan.followUpDay) {
            instruction.lastDay = std::max(instruction.lastDay, own.followUpDay - 1);
        }
    }
    return own;
}

std::vector<Reminder> remindersOf(const CarePlan& plan, const clock::Moment& treated, const Visit& visit, const Zone& zone,
                                  const QuietHours& quiet)
{
    const int shift = shiftOf(plan, treated, visit);
    std::vector<Reminder> reminders = remindersOf(planFor(plan, treated, visit), treated, zone, quiet);
    const clock::Instant visitAt = visit.minute ? momentOf(visit, zone).at : clock::Instant::max();
    for (Reminder& reminder : reminders) {
        if (reminder.kind != InstructionKind::followUp)
            continue;
        const std::size_t minute = reminder.key.rfind('/');
        reminder.key = reminder.instruction + "/" + std::to_string(reminder.day - shift) + reminder.key.substr(minute);
        if (reminder.due >= visitAt && zone.moment(reminder.due).day() == visit.day) {
            reminder.planned = reminder.due = visitAt - beforeVisit;
            reminder.movedByQuietHours = false;
        }
    }
    std::stable_sort(reminders.begin(), reminders.end(),
                     [](const Reminder& a, const Reminder& b) { return a.due < b.due; });
    return reminders;
}

}  // namespace ebbline::aftercare
