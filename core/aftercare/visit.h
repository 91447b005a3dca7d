#pragma once
/// \file
/// The follow-up visit that the clinic agreed with a patient, and what of a care plan goes with it: a protocol names
/// the usual day, the course names the one that was chosen.

#include "core/aftercare/care_plan.h"

namespace ebbline::aftercare {

struct Visit {
    clock::LocalDay day{};
    std::optional<int> minute;  ///< of the local day, 1..1439; empty: only the day is agreed
    bool operator==(const Visit&) const = default;
};

inline constexpr int firstVisitDay = 1;   ///< day of recovery, as a care plan's followUpDay
inline constexpr int lastVisitDay = 60;

/// A visit is kept as the moment of its wall clock. Midnight, at which nobody is asked to come, says that only the day
/// is agreed. What was written before says a time, and keeps it.
Visit visitOf(const clock::Moment& kept);
clock::Moment momentOf(const Visit& visit, const Zone& zone);

/// \returns Reason::outOfRange for a day outside 1..60 after the treatment, or a minute that no day has.
Done check(const Visit& visit, const clock::Moment& treated);

/// The plan as this course has it: the follow-up and the instructions of its kind move to the visit's day, and asking
/// for entries, where the plan does so up to its own follow-up, goes on to the eve of a later one. A visit that check()
/// refuses, as an old record may hold, leaves the plan as it is.
CarePlan planFor(const CarePlan& plan, const clock::Moment& treated, const Visit& visit);

/// As the other, for planFor(). A reminder of the follow-up keeps the key that the plan gives it, whatever day it moves
/// to. One that would ring at the visit's time or later that day rings an hour before it.
std::vector<Reminder> remindersOf(const CarePlan& plan, const clock::Moment& treated, const Visit& visit, const Zone& zone,
                                  const QuietHours& quiet);

}  // namespace ebbline::aftercare
