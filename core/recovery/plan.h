#pragma once
/// \file
/// What was done held against what was planned. Pure.

#include "core/recovery/treatment.h"

#include <span>

namespace ebbline::recovery {

/// Above this an end of a thread was moved, units of the chart's frame: less is a hand that shakes. Our own choice.
inline constexpr double movedUnits = 6;
/// From this on two tracks are not the same thread: the way between their entry points and that between their ends in all, units of the
/// chart's frame. Our own choice: between neighbouring threads it is less, from one cheek to the other it is more.
inline constexpr double strangeUnits = 120;

/// Numbers are counted from 1, in the plan and in what was done.
struct PlanMatch {
    int planned;
    int done;
    bool moved;      ///< an end lies elsewhere
    bool otherwise;  ///< another thread or another instrument; of one that was not moved also another side, zone or ending
    bool operator==(const PlanMatch&) const = default;
};

struct PlanComparison {
    std::vector<PlanMatch> matches;  ///< by their number in the plan
    std::vector<int> leftOut;        ///< numbers in the plan
    std::vector<int> added;          ///< numbers in what was done
    bool isAsPlanned() const;
};

/// Which thread of the plan became which. Two belong together only in one view and less than strangeUnits apart, and of
/// all ways to pair them the one is taken that leaves least distance in all, where a thread without a partner counts half of
/// strangeUnits: so no thread takes the partner of another one because it stands before it in a list. Of ways equally near
/// the one with more equal threads, then with more equal numbers. What a plan does not have (asPlanned()) is not compared.
PlanComparison compareWithPlan(std::span<const Placement> planned, std::span<const Placement> done);

/// What is recorded of a plan: its threads that can be recorded, each as asPlanned().
std::vector<Placement> plannedOf(std::span<const Placement> plan);

}  // namespace ebbline::recovery
