#pragma once
/// \file
/// The clinic's instructions with their time windows, and the due moments computed from them.
///
/// Every window is a setting of the clinic: no trial compares aftercare durations after thread
/// lifting. The defaults of defaultCarePlan() carry their ground in docs/clinical/care_plan.md.

#include "core/clock/instant.h"
#include "core/result/result.h"

#include <optional>
#include <string>
#include <vector>

namespace ebbline::aftercare {

/// An IANA time zone. Cheap to copy.
class Zone {
public:
    /// \returns Reason::notFound for a name the tz database does not have.
    static Result<Zone> find(std::string_view name);
    const std::string& name() const { return m_name; }

    /// The wall clock at an instant.
    clock::Moment moment(clock::Instant at) const;

    /// The instant of a local wall-clock time. A time that a clock change skips becomes the
    /// first moment after the gap; one that happens twice, the first of the two.
    clock::Instant instantOf(clock::LocalDay day, std::chrono::minutes sinceMidnight) const;

private:
    explicit Zone(std::string name, const void* handle) : m_name(std::move(name)), m_handle(handle) {}
    std::string m_name;
    const void* m_handle;  ///< date::time_zone of the process-wide tz database
};

/// What an instruction asks for; its words are translated by the programs, the clinic may add
/// its own text. Stored: never renumber.
enum class InstructionKind : std::uint8_t {
    dressingsOff = 1,
    cleanEntryPoints = 2,
    sleepOnBack = 3,
    spareFace = 4,      ///< no wide yawns or laughs, small bites, little talking
    coldPack = 5,
    noMakeUp = 6,
    noMassage = 7,
    noDentist = 8,
    noExercise = 9,
    noHeat = 10,        ///< sauna, hammam, hot bath, pool
    noSun = 11,
    noAlcohol = 12,
    noSmoking = 13,
    noShaving = 14,
    diaryEntry = 15,    ///< write down how it is
    followUp = 16,
    custom = 17,        ///< only the clinic's own text
};

/// One instruction: valid on days firstDay..lastDay of recovery, reminded at the given local
/// times on those days (none: it is a rule to keep, shown but not rung).
struct Instruction {
    std::string id;              ///< stable within a plan, e.g. "dressings-off"
    InstructionKind kind;
    int firstDay = 0;            ///< day of recovery, 0..60
    int lastDay = 0;             ///< >= firstDay, <= 60
    std::vector<int> minutesOfDay;  ///< local, 0..1439, ascending
    int everyDays = 1;           ///< 1 daily, 2 every second day, ...
    std::string clinicText;      ///< the clinic's own words, shown as well
    bool ignoresQuietHours = false;

    bool operator==(const Instruction&) const = default;
};

struct QuietHours {
    int fromMinute = 22 * 60;  ///< local minute of day, start
    int toMinute = 7 * 60;     ///< end; the span may cross midnight
    bool enabled = true;
    bool operator==(const QuietHours&) const = default;
};

struct CarePlan {
    std::vector<Instruction> instructions;
    int followUpDay = 21;
    bool operator==(const CarePlan&) const = default;
};

/// \returns Reason::outOfRange or Reason::malformed naming instruction and field.
Done check(const CarePlan& plan);

/// The plan a new clinic starts from.
CarePlan defaultCarePlan();

/// One due moment of one instruction. `key` is stable over recomputing and travel
/// ("dressings-off/0/1140": instruction, day, planned minute), so an answer finds its reminder.
struct Reminder {
    std::string key;
    std::string instruction;
    InstructionKind kind;
    int day;                   ///< day of recovery
    clock::Instant planned;    ///< before quiet hours: what answers a reminder counts from here
    clock::Instant due;        ///< after quiet hours
    bool movedByQuietHours = false;
    bool operator==(const Reminder&) const = default;
};

/// All reminders of a course in order of due time, from the treatment on.
/// Reminders that would fall before the treatment itself are left out; day 0 reminders planned
/// earlier than the treatment's end are moved to one hour after it. Those inside quiet hours move
/// to their end. What is of an evening or its night, where the quiet hours end after it, moves to the
/// last minute before they begin, but never nearer to the treatment than that hour: then it rings within them.
std::vector<Reminder> remindersOf(const CarePlan& plan, const clock::Moment& treated, const Zone& zone,
                                  const QuietHours& quiet);

/// The instructions in force on a day of recovery, in the plan's order.
std::vector<Instruction> inForce(const CarePlan& plan, int day);

}  // namespace ebbline::aftercare
