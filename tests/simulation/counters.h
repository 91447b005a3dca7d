#pragma once
/// \file
/// What happened in many runs together, and whether everything did that they are about.

#include "tests/simulation/world.h"

namespace ebbline::simulation {

void add(NetworkCounters& to, const NetworkCounters& from);
void add(WorldCounters& to, const WorldCounters& from);

struct CounterRow {
    const char* name;
    std::uint64_t value;
    std::uint64_t from = 1;  ///< must be positive from so many schedules on
};
/// What people and devices did, what the network did to it, and what happened to the clinic.
std::vector<CounterRow> rowsOf(const NetworkCounters& network, const WorldCounters& world);

}  // namespace ebbline::simulation
