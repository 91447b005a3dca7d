#include "core/aftercare/care_plan.h"

#include <algorithm>
#include <set>

namespace ebbline::aftercare {

namespace {

constexpr int lastPlannedDay = 60;
constexpr std::size_t maximumInstructions = 40;
constexpr std::size_t maximumTimes = 8;
constexpr std::size_t maximumText = 400;

constexpr int at(int hour, int minute = 0) { return hour * 60 + minute; }

}  // namespace

Done check(const CarePlan& plan)
{
    if (plan.instructions.size() > maximumInstructions)
        return fail(Reason::tooLarge, "care plan: more than 40 instructions");
    if (plan.followUpDay < 1 || plan.followUpDay > lastPlannedDay)
        return fail(Reason::outOfRange, "follow-up: want day 1..60");
    std::set<std::string> ids;
    for (const Instruction& instruction : plan.instructions) {
        const std::string name = "instruction " + instruction.id + ": ";
        if (instruction.id.empty() || instruction.id.size() > 40
            || instruction.id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") != std::string::npos)
            return fail(Reason::malformed, "instruction: want an id of a-z, 0-9 and dashes, at most 40");
        if (!ids.insert(instruction.id).second)
            return fail(Reason::malformed, name + "the id is used twice");
        if (instruction.kind < InstructionKind::dressingsOff || instruction.kind > InstructionKind::custom)
            return fail(Reason::outOfRange, name + "unknown kind");
        if (instruction.firstDay < 0 || instruction.lastDay < instruction.firstDay
            || instruction.lastDay > lastPlannedDay)
            return fail(Reason::outOfRange, name + "want 0 <= first day <= last day <= 60");
        if (instruction.everyDays < 1 || instruction.everyDays > lastPlannedDay)
            return fail(Reason::outOfRange, name + "want every 1..60 days");
        if (instruction.minutesOfDay.size() > maximumTimes)
            return fail(Reason::tooLarge, name + "more than 8 times a day");
        int before = -1;
        for (const int minute : instruction.minutesOfDay) {
            if (minute <= before || minute > 1439)
                return fail(Reason::outOfRange, name + "want ascending times within 0..1439 minutes");
            before = minute;
        }
        if (instruction.clinicText.size() > maximumText)
            return fail(Reason::tooLarge, name + "text longer than 400 bytes");
    }
    return {};
}

CarePlan defaultCarePlan()
{
    using enum InstructionKind;
    // Grounds and ranges of every window: docs/clinical/care_plan.md.
    return CarePlan{
        .instructions =
            {
                {"dressings-off", dressingsOff, 0, 0, {at(19)}, 1, {}, false},
                {"entry-points", cleanEntryPoints, 0, 4, {at(21)}, 1, {}, false},
                {"sleep-on-back", sleepOnBack, 0, 4, {at(21, 30)}, 1, {}, false},
                {"cold-pack", coldPack, 0, 1, {}, 1, {}, false},
                {"spare-face", spareFace, 0, 13, {at(12, 30)}, 1, {}, false},
                {"no-make-up", noMakeUp, 0, 0, {}, 1, {}, false},
                {"no-shaving", noShaving, 0, 4, {}, 1, {}, false},
                {"no-alcohol", noAlcohol, 0, 6, {}, 1, {}, false},
                {"no-smoking", noSmoking, 0, 13, {}, 1, {}, false},
                {"no-exercise", noExercise, 0, 13, {}, 1, {}, false},
                {"no-sun", noSun, 0, 13, {}, 1, {}, false},
                {"no-dentist", noDentist, 0, 20, {}, 1, {}, false},
                {"no-heat", noHeat, 0, 20, {}, 1, {}, false},
                {"no-massage", noMassage, 0, 27, {}, 1, {}, false},
                {"diary-first-days", diaryEntry, 0, 3, {at(9), at(20)}, 1, {}, false},
                {"diary-daily", diaryEntry, 4, 14, {at(20)}, 1, {}, false},
                {"diary-last-week", diaryEntry, 16, 20, {at(20)}, 2, {}, false},
                {"follow-up", followUp, 21, 21, {at(8)}, 1, {}, false},
            },
        .followUpDay = 21,
    };
}

std::vector<Instruction> inForce(const CarePlan& plan, int day)
{
    std::vector<Instruction> instructions;
    std::copy_if(plan.instructions.begin(), plan.instructions.end(), std::back_inserter(instructions),
                 [&](const Instruction& instruction) {
                     return day >= instruction.firstDay && day <= instruction.lastDay;
                 });
    return instructions;
}

}  // namespace ebbline::aftercare
