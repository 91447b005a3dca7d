#pragma once
/// \file
/// The tables of the vault; inside of core/vault only. A released migration is never changed:
/// what is new goes into the next one, which adds its own row to the table `schema`.

#include "core/store/database.h"

#include <array>

namespace ebbline::vault {

extern const std::array<store::Migration, 5> vaultMigrations;

/// From this version on the table `schema` names every version that the file went through.
inline constexpr int versionTableSince = 2;
/// From this version on it holds photographs.
inline constexpr int photosSince = 4;
/// From this version on operations share the ends of their bytes.
inline constexpr int tailsSince = 5;

}  // namespace ebbline::vault
