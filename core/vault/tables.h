#pragma once
/// \file
/// The tables of the vault; inside of core/vault only. A released migration is never changed:
/// what is new goes into the next one.

#include "core/store/database.h"

#include <array>

namespace ebbline::vault {

extern const std::array<store::Migration, 1> vaultMigrations;

}  // namespace ebbline::vault
