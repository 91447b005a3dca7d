#pragma once
/// \file
/// Brings a database forward; inside of platform/postgres only.

#include "platform/postgres/connection.h"

namespace ebbline::postgres {

/// Refuses a server or a role with which the store would not hold its promises.
/// \returns Reason::unsupported, Reason::refused.
Done checkServer(Connection& connection);

/// Whether a hub's tables are there, of whatever version.
Result<bool> hasTables(Connection& connection);

/// Runs the migrations that are missing, in one transaction each, one hub at a time (advisory lock).
/// \returns Reason::unsupported if the database is newer than this program.
Done migrate(Connection& connection);

}  // namespace ebbline::postgres
