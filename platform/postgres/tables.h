#pragma once
/// \file
/// The tables, policies and functions in the database; inside of platform/postgres only. A released
/// migration is never changed: what is new goes into the next one, and works with hubs of the
/// version before, because hubs are replaced one after the other.

#include <array>
#include <string_view>

namespace ebbline::postgres {

extern const std::array<std::string_view, 6> migrations;

}  // namespace ebbline::postgres
